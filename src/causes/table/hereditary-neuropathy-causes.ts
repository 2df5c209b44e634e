import { fromMemory, read, recalled } from '../../kernel/cite.ts';
import {
  at,
  atLeast,
  type Cause,
  inKind,
  longStandingSigns,
  mondo,
  reads,
  shows,
  tempos,
  told,
  under,
} from './cause.ts';
import { armVelocity, conduction, demyelinating, slowArm } from './conduction.ts';

const types = read('saporta-2011', 'types and genetic testing');

/** Relatives who are affected, in the words in which people tell of them. */
const kin = (present: number, absent: number) => told('family/similar-disorder', present, absent);
const kinOrTheirFeet = (present: number, absent: number) =>
  told(['family/similar-disorder', 'family/high-arched-feet', 'family/peripheral-neuropathy'], present, absent);

/** Lost fibres since childhood tingle little: numb feet that nobody complains of. */
const fewPositiveSymptoms = told(['paraesthesiae', 'neuropathic-pain', 'burning-feet'], 0.6, 1.4);

/** A high arch is common; with bent toes it tells of muscles weak since childhood. */
const oldFeet = (absent: number) => [
  shows(['inspection/pes-cavus'], 6, absent),
  shows(['inspection/hammer-toes', 'inspection/claw-toes'], 4, 0.8),
];

/** What took less than two years is not called hereditary lightly. */
const overYears = { from: 730, outside: 0.25, source: fromMemory };

/** Hereditary diseases of many nerves. */
export const hereditaryNeuropathyCauses: readonly Cause[] = [
  {
    key: 'charcot-marie-tooth-disease-type-1',
    group: 'hereditary',
    label: 'Charcot-Marie-Tooth disease type 1 (demyelinating)',
    inheritance: ['autosomal-dominant', 'autosomal-recessive'],
    mondo: mondo('MONDO:0019011', 'Charcot-Marie-Tooth disease type 1'),
    produces: [
      at(['motor-polyneuropathy'], 'common'),
      at(['length-dependent-polyneuropathy'], 'uncommon'),
      at(['sensory-polyneuropathy'], 'rare'),
      inKind(['polyradiculoneuropathy'], 'uncommon'),
    ],
    tempo: tempos.lifelong,
    courses: { progressive: 1.2, static: 1.2, 'relapsing-remitting': 0.2, improving: 0.1 },
    durationDays: overYears,
    age: { from: 0, to: 40, outside: 0.3 },
    history: [
      told(['family/consanguinity', 'hearing-loss', 'tremor', 'family/tremor'], 1.4, 1),
      told(['diabetes-mellitus', 'alcohol-excess', 'cancer'], 0.6, 1),
      told(['falls', 'difficulty-walking', 'cramps'], 1.2, 1),
      kinOrTheirFeet(14, 0.4),
      fewPositiveSymptoms,
    ],
    signs: [
      shows(
        ['cranial-nerves/vocal-cord-paralysis', 'cranial-nerves/tonic-pupil', 'cranial-nerves/hearing-loss'],
        1.4,
        1,
      ),
      ...oldFeet(0.25),
      shows(['inspection/thickened-nerve'], 4, 0.95),
      shows(['inspection/wasting'], 1.4, 0.7),
      shows(['inspection/scoliosis'], 2, 1),
      shows(['involuntary-movements/postural-tremor'], 1.5, 1),
    ],
    quantities: [atLeast('creatine-kinase', 1000, 'U/L', 0.15, 1.05), slowArm(8, 0.08)],
    values: [
      reads('nerve-biopsy', [
        ['demyelination', 4],
        ['vasculitis', 0.05],
        ['amyloid', 0.05],
      ]),
      reads(
        'genetic-test',
        [
          ['pmp22-duplication', 300],
          ['mpz-variant', 60],
          ['gjb1-variant', 0.05],
          ['mfn2-variant', 0.05],
          ['pmp22-deletion', 0.05],
          ['negative', 0.25],
        ],
        types,
      ),
      reads(
        conduction,
        [...demyelinating(0.5, 15), ['mixed', 0.3], ['axonal', 0.1], ['motor-conduction-block', 0.2], ['normal', 0.02]],
        read('szigeti-2009', 'uniform slowing'),
      ),
      reads('nerve-ultrasound', [
        ['diffuse-enlargement', 4],
        ['normal', 0.4],
      ]),
    ],
    source: read('saporta-2011', 'PMP22 duplication is 60 % of all types that were confirmed'),
  },
  {
    key: 'charcot-marie-tooth-disease-type-2',
    group: 'hereditary',
    label: 'Charcot-Marie-Tooth disease type 2 (axonal)',
    inheritance: ['autosomal-dominant', 'autosomal-recessive'],
    mondo: mondo('MONDO:0018993', 'Charcot-Marie-Tooth disease type 2'),
    produces: [
      at(['motor-polyneuropathy'], 'common'),
      at(['length-dependent-polyneuropathy', 'sensory-polyneuropathy'], 'rare'),
    ],
    tempo: tempos.lifelong,
    courses: { progressive: 1.3, static: 1, 'relapsing-remitting': 0.2, improving: 0.1 },
    durationDays: overYears,
    age: { from: 0, to: 65, outside: 0.5 },
    history: [
      told(['visual-loss', 'hearing-loss', 'voice-change', 'restless-legs'], 1.4, 1),
      told(['diabetes-mellitus', 'alcohol-excess', 'cancer'], 0.6, 1),
      told(['falls', 'difficulty-walking', 'cramps'], 1.2, 1),
      told('family/consanguinity', 1.6, 1),
      kinOrTheirFeet(14, 0.4),
      fewPositiveSymptoms,
    ],
    signs: [
      shows(
        ['cranial-nerves/tonic-pupil', 'cranial-nerves/hearing-loss', 'inspection/scoliosis', 'inspection/foot-ulcer'],
        1.4,
        1,
      ),
      shows(['cranial-nerves/vocal-cord-paralysis', 'cranial-nerves/dysphonia'], 2, 1),
      ...oldFeet(0.35),
      shows(['cranial-nerves/optic-disc-pallor'], 3, 1),
      shows(['inspection/wasting'], 1.4, 0.7),
    ],
    quantities: [
      atLeast('creatine-kinase', 1000, 'U/L', 0.15, 1.05),
      // Between 38 and 45 m/s it is seldom the second type.
      atLeast(armVelocity, 45, 'm/s', 1.1, 0.6, types),
      slowArm(0.1, 2),
      under(armVelocity, 45, 'm/s', 0.6, 1.4, types),
    ],
    values: [
      reads('nerve-biopsy', [
        ['axonal', 1.5],
        ['demyelination', 0.3],
        ['vasculitis', 0.05],
        ['amyloid', 0.1],
      ]),
      reads(
        'genetic-test',
        [
          ['mfn2-variant', 300],
          ['mpz-variant', 40],
          ['gjb1-variant', 0.05],
          ['pmp22-duplication', 0.02],
          ['pmp22-deletion', 0.05],
          ['other', 20],
          ['negative', 0.7],
        ],
        types,
      ),
      reads(conduction, [...demyelinating(0.1, 0.1), ['axonal', 4], ['mixed', 0.5], ['normal', 0.2]], types),
    ],
    source: read('saporta-2011', 'MFN2 is the commonest of the axonal types'),
  },
  {
    key: 'charcot-marie-tooth-disease-x-linked',
    group: 'hereditary',
    label: 'X-linked Charcot-Marie-Tooth disease',
    inheritance: ['x-linked'],
    mondo: mondo('MONDO:0018994', 'Charcot-Marie-Tooth disease type X'),
    produces: [
      at(['motor-polyneuropathy'], 'uncommon'),
      at(['length-dependent-polyneuropathy', 'sensory-polyneuropathy'], 'rare'),
      inKind(['polyradiculoneuropathy'], 'rare'),
    ],
    tempo: tempos.lifelong,
    courses: { progressive: 1.2, static: 1, 'relapsing-remitting': 0.3, improving: 0.1 },
    durationDays: overYears,
    age: { from: 0, to: 45, outside: 0.3 },
    sex: { male: 1.4, female: 0.7 },
    history: [
      told(['slurred-speech', 'dysphagia', 'travel', 'hearing-loss'], 1.3, 1),
      told(['diabetes-mellitus', 'alcohol-excess', 'cancer'], 0.6, 1),
      told(['falls', 'difficulty-walking', 'cramps'], 1.2, 1),
      kinOrTheirFeet(14, 0.4),
      fewPositiveSymptoms,
      told(['transient-ischaemic-attack', 'stroke', 'resolved-deficit'], 4, 1),
    ],
    signs: [...oldFeet(0.3), shows(['inspection/wasting'], 1.4, 0.7), shows(['cranial-nerves/hearing-loss'], 1.5, 1)],
    quantities: [
      atLeast('creatine-kinase', 1000, 'U/L', 0.15, 1.05),
      under(armVelocity, 30, 'm/s', 0.15, 1.3, types),
      // Women with one changed gene often have normal velocities.
      atLeast(armVelocity, 45, 'm/s', 0.4, 2.5, types),
    ],
    values: [
      reads('mri-brain', [['white-matter-disease', 3]]),
      reads(
        'genetic-test',
        [
          ['gjb1-variant', 400],
          ['pmp22-duplication', 0.02],
          ['mfn2-variant', 0.05],
          ['mpz-variant', 0.05],
          ['negative', 0.15],
        ],
        types,
      ),
      reads(
        conduction,
        [
          ['mixed', 8],
          ['demyelinating-non-uniform', 2],
          ['demyelinating-uniform', 1],
          ['axonal', 1.2],
          ['normal', 0.2],
        ],
        types,
      ),
    ],
    source: read('saporta-2011', 'GJB1 is 17 % of the types that were confirmed; velocities of 30 to 45 m/s'),
  },
  {
    key: 'hereditary-neuropathy-with-liability-to-pressure-palsies',
    group: 'hereditary',
    label: 'Hereditary neuropathy with liability to pressure palsies',
    inheritance: ['autosomal-dominant'],
    mondo: mondo('MONDO:0008087', 'hereditary neuropathy with liability to pressure palsies'),
    produces: [
      at(
        [
          'radial-nerve-axilla',
          'posterior-interosseous-nerve',
          'ulnar-nerve-wrist',
          'lateral-femoral-cutaneous-nerve',
          'long-thoracic-nerve',
          'tibial-nerve-popliteal-fossa',
          'deep-fibular-nerve',
        ],
        'rare',
      ),
      inKind(['multiple-nerves'], 'common'),
      at(['common-fibular-nerve', 'ulnar-nerve-elbow', 'radial-nerve-spiral-groove'], 'uncommon'),
      inKind(['plexus'], 'uncommon'),
      at(['sciatic-nerve', 'sciatic-nerve-fibular-division', 'axillary-nerve', 'median-nerve-wrist'], 'rare'),
      at(['length-dependent-polyneuropathy'], 'rare'),
    ],
    // Each palsy comes at once; the disease as a whole may be told as one of years.
    tempo: { hyperacute: 0.4, acute: 0.3, subacute: 0.1, chronic: 0.2 },
    courses: { 'relapsing-remitting': 4, improving: 1.5, progressive: 0.5 },
    age: { from: 8, to: 50, outside: 0.4 },
    history: [
      told(['resolved-deficit', 'similar-attacks-before', 'carpal-tunnel-syndrome'], 1.6, 1),
      kin(15, 0.4),
      told('previous-pressure-palsy', 8, 0.5),
      told('family/pressure-palsies', 8, 0.8),
      told(['external-pressure', 'leg-crossing', 'deep-sleep-on-arm', 'elbow-leaning', 'prolonged-squatting'], 2, 0.8),
      told(['neuropathic-pain', 'arm-pain', 'leg-pain'], 0.5, 1.3),
      told(['fever', 'weight-loss', 'rash'], 0.4, 1.1),
    ],
    signs: [shows(longStandingSigns, 2.5, 0.9)],
    quantities: [slowArm(0.5, 1.1), atLeast('crp', 10, 'mg/L', 0.4, 1.1)],
    values: [
      reads('nerve-ultrasound', [
        ['focal-swelling', 2],
        ['mass-or-cyst', 0.2],
      ]),
      reads(
        'genetic-test',
        [
          ['pmp22-deletion', 300],
          ['negative', 0.1],
        ],
        read('szigeti-2009', 'PMP22 deletion'),
      ),
      reads('nerve-conduction-site', [
        ['several-entrapments', 5],
        ['none', 0.3],
      ]),
      reads(conduction, [
        ['focal-entrapment', 3],
        ['demyelinating-non-uniform', 2],
        ['multifocal-axonal', 0.2],
        ['axonal', 0.3],
        ['normal', 0.1],
      ]),
    ],
    source: read('szigeti-2009', 'PMP22 deletion'),
  },
  {
    key: 'distal-hereditary-motor-neuropathy',
    group: 'hereditary',
    label: 'Distal hereditary motor neuropathy',
    inheritance: ['autosomal-dominant', 'autosomal-recessive'],
    mondo: mondo('MONDO:0018894', 'distal hereditary motor neuropathy'),
    produces: [
      at(['distal-myopathy', 'motor-neuron-system', 'upper-motor-neuron-system'], 'exceptional'),
      at(['motor-polyneuropathy'], 'common'),
      inKind(['anterior-horn'], 'rare'),
    ],
    tempo: tempos.lifelong,
    courses: { progressive: 1.2, static: 1.2, 'relapsing-remitting': 0.2, improving: 0.1 },
    durationDays: overYears,
    age: { from: 0, to: 50, outside: 0.4 },
    history: [
      told(['falls', 'difficulty-walking', 'cramps', 'muscle-thinning'], 1.2, 1),
      told(['voice-change', 'breathlessness'], 1.5, 1),
      told('family/consanguinity', 2, 1),
      kinOrTheirFeet(10, 0.5),
      told(['numbness', 'paraesthesiae'], 0.4, 1.3),
    ],
    signs: [
      shows(['inspection/foot-drop'], 1.2, 1),
      shows(['plantars/plantar-response', 'autonomic/paradoxical-breathing'], 1.3, 1),
      // Sensation that is lost anywhere belongs to another type; that it was tested and kept is the point.
      shows(['sensation/pinprick', 'sensation/light-touch', 'sensation/vibration', 'sensation/joint-position'], 0.3, 2),
      shows(longStandingSigns, 5, 0.5),
      shows(['cranial-nerves/vocal-cord-paralysis'], 4, 1),
    ],
    quantities: [atLeast('creatine-kinase', 1000, 'U/L', 0.15, 1.05), slowArm(0.1, 1.2)],
    values: [
      reads('genetic-test', [
        ['other', 20],
        ['negative', 0.7],
        ['pmp22-duplication', 0.02],
        ['mfn2-variant', 0.1],
      ]),
      reads(conduction, [['motor-only-axonal', 6], ['axonal', 0.4], ...demyelinating(0.1, 0.1), ['normal', 0.3]]),
    ],
    source: recalled('saporta-2011'),
  },
  {
    key: 'hereditary-sensory-autonomic-neuropathy',
    group: 'hereditary',
    label: 'Hereditary sensory and autonomic neuropathy',
    inheritance: ['autosomal-dominant', 'autosomal-recessive'],
    mondo: mondo('MONDO:0015364', 'hereditary sensory and autonomic neuropathy'),
    produces: [
      at(['multiple-mononeuropathy', 'sensory-ganglionopathy'], 'exceptional'),
      at(['small-fibre-polyneuropathy', 'sensory-polyneuropathy'], 'uncommon'),
      at(['autonomic-neuropathy', 'length-dependent-polyneuropathy'], 'rare'),
      inKind(['ganglion'], 'rare'),
    ],
    tempo: tempos.lifelong,
    courses: { progressive: 1.2, static: 1.2, improving: 0.1 },
    durationDays: overYears,
    age: { from: 0, to: 45, outside: 0.2 },
    history: [
      told(['fever', 'developmental-delay', 'altered-sweating', 'vomiting', 'dysphagia'], 1.5, 1),
      told(['hearing-loss', 'dementia', 'cognitive-change'], 1.3, 1),
      kin(10, 0.5),
      told('painless-injury', 10, 0.3),
      told('family/consanguinity', 4, 1),
      told('diabetes-mellitus', 0.2, 1.1),
    ],
    signs: [
      shows(
        [
          'autonomic/orthostatic-hypotension',
          'autonomic/blood-pressure-lability',
          'autonomic/dry-eyes',
          'cranial-nerves/absent-corneal-reflex',
          'inspection/scoliosis',
        ],
        1.8,
        1,
      ),
      shows(['inspection/trophic-skin-change'], 2, 1),
      shows(['inspection/foot-ulcer', 'inspection/amputation', 'inspection/neuropathic-joint'], 8, 0.4),
      shows(['autonomic/anhidrosis'], 2, 0.9),
      shows(longStandingSigns, 2, 0.9),
    ],
    values: [
      reads('autonomic-tests', [
        ['sweat-loss', 2.5],
        ['orthostatic-hypotension', 1.6],
        ['normal', 0.5],
      ]),
      reads('genetic-test', [
        ['other', 30],
        ['negative', 0.5],
      ]),
      reads(conduction, [['sensory-only', 2], ['axonal', 1.3], ...demyelinating(0.2)]),
    ],
    source: recalled('adams-victor', 'hereditary sensory neuropathies'),
  },
];
