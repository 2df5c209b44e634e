import { recalled } from '../../kernel/cite.ts';
import { aboveTheLoins } from './above-the-loins.ts';
import { at, atLeast, atRoot, type Cause, inKind, reads, shows, showsAt, tempos, told } from './cause.ts';

const limbNerves = recalled('preston-shapiro', 'mononeuropathies');
const injury = ['trauma', 'limb-fracture-or-dislocation', 'neck-trauma'] as const;
const operation = ['recent-surgery', 'hip-replacement'] as const;
const armPain = ['arm-pain', 'radicular-arm-pain', 'shoulder-pain'] as const;

const swollenAtOneSite = reads('nerve-ultrasound', [
  ['focal-swelling', 3],
  ['mass-or-cyst', 1.5],
  ['normal', 0.6],
]);
const massAtTheNerve = reads('nerve-ultrasound', [
  ['mass-or-cyst', 12],
  ['normal', 0.2],
]);

/** Lesions of single nerves, each with the place, posture or injury that belongs to it. */
export const nerveCauses: readonly Cause[] = [
  // Neck and shoulder
  {
    key: 'accessory-nerve-injury-in-the-neck',
    group: 'traumatic',
    label: 'Injury of the accessory nerve in the posterior triangle',
    produces: [at(['spinal-accessory-nerve'], 'very-common')],
    tempo: tempos.sudden,
    courses: { progressive: 0.3, static: 1.3 },
    history: [
      told(['heavy-exertion', 'external-pressure'], 1.3, 1),
      told(['cancer', 'face-or-neck-lump'], 1.5, 1),
      told('shoulder-pain', 1.3, 0.9),
      // One operation is often told by both.
      told(['neck-or-chest-surgery', 'recent-surgery'], 10, 0.3),
      told('neck-or-chest-surgery', 3, 0.8),
      told('neck-trauma', 4, 0.9),
      told('radiotherapy', 3, 0.95),
    ],
    signs: [shows(['inspection/shoulder-droop', 'inspection/scapular-winging'], 1.5, 0.8)],
    source: recalled('brazis', 'accessory nerve: lymph-node biopsy is the usual cause'),
  },
  {
    key: 'occipital-neuralgia',
    group: 'compressive',
    label: 'Occipital neuralgia',
    produces: [atRoot('C2', 'common'), atRoot('C3', 'uncommon'), at(['greater-occipital-nerve'], 'very-common')],
    tempo: tempos.subacuteOrChronic,
    courses: { 'relapsing-remitting': 2 },
    age: { from: 12, to: 110, outside: 0.4 },
    history: [
      told(['headache', 'neck-pain'], 3, 0.15),
      told('neuropathic-pain', 1.5, 1),
      told('neck-trauma', 2, 0.9),
      told(['foot-pain', 'leg-pain', 'thigh-pain', 'burning-feet', 'arm-pain', 'hand-pain', 'leg-weakness'], 0.2, 1),
    ],
    source: recalled('adams-victor', 'occipital neuralgia'),
  },
  {
    key: 'suprascapular-entrapment-or-cyst',
    group: 'compressive',
    label: 'Suprascapular nerve entrapment or paralabral cyst',
    produces: [
      at(['upper-trunk', 'axillary-nerve'], 'rare'),
      at(['suprascapular-nerve-spinoglenoid'], 'very-common'),
      at(['suprascapular-nerve'], 'common'),
    ],
    tempo: { hyperacute: 0.1, acute: 0.15, subacute: 0.3, chronic: 0.45 },
    courses: { progressive: 1.3 },
    age: { from: 16, to: 60, outside: 0.6 },
    sex: { male: 1.4, female: 0.6 },
    history: [
      told(['trauma', 'arm-weakness'], 1.3, 1),
      told('neck-pain', 0.7, 1),
      told('shoulder-pain', 1.5, 0.8),
      told('heavy-exertion', 3, 0.95),
      told('repetitive-hand-use', 1.5, 1),
      told('preceding-infection', 0.6, 1),
    ],
    values: [massAtTheNerve],
    source: limbNerves,
  },
  {
    key: 'shoulder-dislocation-or-humeral-fracture',
    group: 'traumatic',
    label: 'Nerve injury from shoulder dislocation or humeral fracture',
    produces: [
      at(['upper-trunk', 'lower-trunk', 'ulnar-nerve-elbow', 'median-nerve-forearm'], 'uncommon'),
      at(['axillary-nerve', 'musculocutaneous-nerve'], 'very-common'),
      at(['radial-nerve-axilla', 'radial-nerve-spiral-groove', 'posterior-cord', 'brachial-plexus'], 'common'),
      at(
        [
          'suprascapular-nerve',
          'ulnar-nerve-upper-arm',
          'medial-cord',
          'lateral-cord',
          'median-nerve-upper-arm',
          'median-nerve-elbow',
        ],
        'uncommon',
      ),
      // A break of the humerus above the elbow in a child bruises this branch oftener than the trunk of the nerve.
      at(['anterior-interosseous-nerve'], 'common'),
    ],
    tempo: tempos.sudden,
    courses: { progressive: 0.2, improving: 1.3 },
    history: [told('limb-fracture-or-dislocation', 25, 0.15), told('trauma', 5, 0.2)],
    source: limbNerves,
  },
  {
    key: 'phrenic-nerve-injury',
    group: 'traumatic',
    label: 'Phrenic nerve injury by operation or tumour of neck or chest',
    produces: [at(['phrenic-nerve'], 'very-common')],
    tempo: tempos.suddenOrAcute,
    history: [
      told('shoulder-dystocia', 4, 1),
      told(['shoulder-pain', 'aortic-disease', 'ischaemic-heart-disease'], 1.3, 1),
      told(['breathlessness', 'orthopnoea'], 1.4, 0.7),
      told(['recent-surgery', 'neck-or-chest-surgery', 'needle-near-nerve'], 10, 0.4),
      told(['cancer', 'lymphoma'], 4, 0.8),
      told('neck-trauma', 3, 0.95),
    ],
    quantities: [atLeast('vital-capacity-fall-supine', 15, '%', 6, 0.2)],
    values: [
      reads('ct-chest', [
        ['tumour', 6],
        ['normal', 0.7],
      ]),
    ],
    source: recalled('amato-russell', 'phrenic neuropathy'),
  },

  // Arm
  {
    key: 'radial-compression-in-the-axilla',
    group: 'compressive',
    label: 'Radial nerve compression in the axilla',
    produces: [
      at(['posterior-cord', 'radial-nerve-spiral-groove'], 'uncommon'),
      at(['radial-nerve-axilla', 'posterior-cutaneous-nerve-of-arm'], 'very-common'),
    ],
    tempo: tempos.suddenOrAcute,
    courses: { improving: 1.5, progressive: 0.6 },
    history: [
      told(['prolonged-immobility', 'loss-of-consciousness'], 2, 1),
      told(['external-pressure', 'deep-sleep-on-arm'], 8, 0.5),
      told('alcohol-excess', 2, 0.95),
      told(injury, 0.4, 1.1),
    ],
    source: limbNerves,
  },
  {
    key: 'posterior-interosseous-entrapment',
    group: 'compressive',
    label: 'Posterior interosseous nerve entrapment',
    produces: [
      at(['radial-nerve-spiral-groove', 'lower-motor-neuron-system'], 'rare'),
      at(['posterior-interosseous-nerve'], 'very-common'),
      at(['radial-nerve-elbow'], 'common'),
    ],
    tempo: tempos.subacuteOrChronic,
    age: { from: 15, to: 110, outside: 0.4 },
    history: [
      told('limb-lump', 2, 1),
      told(['arm-pain', 'heavy-exertion', 'trauma', 'limb-fracture-or-dislocation'], 1.3, 1),
      told(['numbness', 'paraesthesiae'], 0.6, 1.1),
      told('repetitive-hand-use', 2.5, 0.8),
      told(['rheumatoid-arthritis', 'joint-pain'], 2, 0.95),
      told('shoulder-pain', 0.3, 1.05),
    ],
    signs: [
      showsAt(['inspection/palpable-mass'], ['elbow', 'forearm'], 2.5, 1),
      shows(['inspection/finger-drop'], 1.3, 0.9),
    ],
    values: [swollenAtOneSite],
    source: limbNerves,
  },
  {
    key: 'superficial-radial-compression',
    group: 'compressive',
    label: 'Compression of the superficial radial nerve at the wrist',
    produces: [
      at(['lateral-cutaneous-nerve-of-forearm', 'radial-nerve-elbow'], 'rare'),
      at(['superficial-radial-nerve'], 'very-common'),
    ],
    tempo: tempos.any,
    history: [
      told(['trauma', 'needle-near-nerve', 'recent-surgery', 'neuropathic-pain', 'numbness'], 1.4, 1),
      told('external-pressure', 8, 0.5),
      told('repetitive-hand-use', 1.5, 0.95),
    ],
    source: limbNerves,
  },
  {
    key: 'median-entrapment-at-the-elbow',
    group: 'compressive',
    label: 'Median nerve entrapment at the elbow (pronator syndrome)',
    produces: [
      at(['median-nerve-upper-arm'], 'uncommon'),
      at(['median-nerve-wrist'], 'rare'),
      at(['median-nerve-elbow'], 'very-common'),
      at(['median-nerve-forearm'], 'common'),
      at(['anterior-interosseous-nerve'], 'common'),
    ],
    tempo: tempos.subacuteOrChronic,
    age: { from: 15, to: 110, outside: 0.4 },
    history: [
      told(['heavy-exertion', 'trauma'], 1.3, 1),
      told('repetitive-hand-use', 2.5, 0.8),
      told('arm-pain', 2, 0.7),
      told('nocturnal-hand-paraesthesiae', 0.4, 1.2),
      told('shoulder-pain', 0.3, 1.05),
    ],
    values: [
      reads('nerve-conduction-site', [
        ['median-wrist', 0.2],
        ['none', 1],
      ]),
    ],
    source: limbNerves,
  },
  {
    key: 'ulnar-compression-at-wrist',
    group: 'compressive',
    label: 'Ulnar nerve compression at the wrist',
    produces: [
      at(['ulnar-nerve-forearm', 'ulnar-nerve-elbow', 'palmar-branch-of-ulnar-nerve'], 'rare'),
      at(['ulnar-nerve-wrist', 'deep-branch-of-ulnar-nerve', 'superficial-branch-of-ulnar-nerve'], 'very-common'),
    ],
    tempo: tempos.subacuteOrChronic,
    age: { from: 12, to: 110, outside: 0.4 },
    sex: { male: 1.3, female: 0.7 },
    history: [
      told(['limb-lump', 'limb-fracture-or-dislocation'], 1.5, 1),
      told(['trauma', 'clumsiness', 'muscle-thinning'], 1.2, 1),
      told(['external-pressure', 'repetitive-hand-use'], 4, 0.6),
      told('elbow-leaning', 0.6, 1),
    ],
    signs: [shows(['special-tests/tinel-ulnar-wrist'], 2.5, 0.8)],
    values: [
      reads('nerve-conduction-site', [
        ['ulnar-wrist', 10],
        ['ulnar-elbow', 0.2],
        ['none', 0.5],
      ]),
    ],
    source: limbNerves,
  },

  // Trunk, pelvis and thigh
  {
    key: 'femoral-nerve-injury-at-operation-or-delivery',
    group: 'traumatic',
    label: 'Femoral nerve injury at operation, catheterisation or delivery',
    // After a lithotomy or a labour it may be on both sides; then it looks like several nerves or the lumbar plexus.
    produces: [
      at(['femoral-nerve-pelvis', 'femoral-nerve-groin'], 'very-common'),
      at(['multiple-mononeuropathy', 'lumbar-plexus'], 'rare'),
    ],
    tempo: tempos.sudden,
    courses: { progressive: 0.2, improving: 1.4 },
    age: { from: 15, to: 110, outside: 0.4 },
    history: [
      told('surgical-positioning', 5, 1),
      told('difficult-delivery', 6, 1),
      told(
        ['peripheral-arterial-disease', 'ischaemic-heart-disease', 'lumbar-puncture-or-epidural', 'leg-weakness'],
        1.2,
        1,
      ),
      told(['needle-near-nerve', 'anticoagulant'], 1.3, 1),
      told('fever', 0.4, 1),
      told('recent-surgery', 15, 0.3),
      // Of an artificial hip it is not said when it was put in.
      told('hip-replacement', 4, 1),
      told('pregnancy', 8, 0.95),
      told('diabetes-mellitus', 0.8, 1),
    ],
    source: limbNerves,
  },
  {
    key: 'obturator-nerve-injury',
    group: 'traumatic',
    label: 'Obturator nerve injury at pelvic operation, delivery or fracture',
    produces: [at(['lumbar-plexus'], 'rare'), at(['obturator-nerve'], 'very-common')],
    tempo: tempos.suddenOrAcute,
    courses: { progressive: 0.4 },
    history: [
      told('surgical-positioning', 4, 1),
      told('difficult-delivery', 6, 1),
      told(['thigh-pain', 'flank-pain'], 1.3, 1),
      told(['cancer', 'weight-loss'], 0.7, 1),
      told(operation, 8, 0.5),
      told('pregnancy', 6, 0.95),
      told(injury, 4, 0.9),
    ],
    source: limbNerves,
  },
  {
    key: 'pudendal-neuropathy',
    group: 'compressive',
    label: 'Pudendal neuropathy by pressure or stretch',
    produces: [
      at(['cauda-equina'], 'exceptional'),
      atRoot('S3', 'uncommon'),
      atRoot('S4', 'uncommon'),
      at(['pudendal-nerve'], 'very-common'),
    ],
    tempo: tempos.subacuteOrChronic,
    age: { from: 16, to: 110, outside: 0.4 },
    history: [
      told('surgical-positioning', 4, 1),
      told('difficult-delivery', 6, 1),
      told(['neuropathic-pain', 'prolonged-immobility', 'heavy-exertion', 'bowel-disturbance'], 1.3, 1),
      told(['sexual-dysfunction', 'numbness'], 1.4, 1),
      told(['leg-weakness', 'back-pain'], 0.5, 1.05),
      told('external-pressure', 5, 0.7),
      told('pregnancy', 4, 0.95),
      told('hip-replacement', 3, 0.95),
      told('saddle-numbness', 1.5, 0.6),
    ],
    source: limbNerves,
  },
  {
    key: 'sciatic-nerve-injury',
    group: 'traumatic',
    label: 'Sciatic nerve injury by hip operation, fracture, injection or pressure',
    produces: [
      at(['common-fibular-nerve', 'tibial-nerve-popliteal-fossa'], 'rare'),
      at(['lumbosacral-plexus', 'sacral-plexus', 'lumbosacral-trunk'], 'rare'),
      at(['superior-gluteal-nerve', 'inferior-gluteal-nerve'], 'uncommon'),
      at(['sciatic-nerve', 'sciatic-nerve-fibular-division'], 'very-common'),
      at(['sciatic-nerve-tibial-division'], 'very-common'),
    ],
    tempo: tempos.sudden,
    courses: { progressive: 0.2, improving: 1.3 },
    history: [
      told('surgical-positioning', 4, 1),
      // A haematoma of the buttock, above all after an injection or a new hip.
      told(['anticoagulant', 'bleeding-disorder'], 1.5, 1),
      told(['alcohol-excess', 'opioid', 'leg-pain', 'critical-illness'], 1.3, 1),
      told(['hip-replacement', 'recent-surgery', 'needle-near-nerve'], 12, 0.4),
      told(injury, 8, 0.6),
      // A leg that was stretched or flung too far.
      told('heavy-exertion', 3, 1),
      told(
        [
          'prolonged-immobility',
          'injecting-drug-use',
          'loss-of-consciousness',
          'external-pressure',
          'leg-crossing',
          'prolonged-squatting',
        ],
        6,
        0.9,
      ),
      told(['back-pain', 'pain-on-straining'], 0.5, 1.1),
    ],
    source: recalled('preston-shapiro', 'sciatic neuropathy: hip surgery is the commonest cause'),
  },

  // Leg and foot
  {
    key: 'popliteal-cyst-or-mass',
    group: 'compressive',
    label: 'Cyst, aneurysm or mass in the popliteal fossa',
    produces: [
      at(['tibial-nerve-popliteal-fossa'], 'very-common'),
      at(['tibial-nerve-calf', 'lateral-sural-cutaneous-nerve', 'sural-nerve'], 'common'),
      at(['common-fibular-nerve'], 'uncommon'),
    ],
    tempo: tempos.subacuteOrChronic,
    courses: { progressive: 1.5 },
    history: [
      told(['foot-pain', 'paraesthesiae', 'numbness'], 1.2, 1),
      told('leg-pain', 1.4, 0.9),
      told(['joint-pain', 'rheumatoid-arthritis'], 2.5, 0.8),
      told('peripheral-arterial-disease', 1.5, 1),
      told('limb-lump', 1.5, 1),
      told(injury, 0.5, 1.1),
    ],
    signs: [
      showsAt(['inspection/palpable-mass'], ['knee', 'leg-below-knee'], 6, 0.1),
      shows(['inspection/oedema'], 1.5, 1),
    ],
    values: [massAtTheNerve],
    source: limbNerves,
  },
  {
    key: 'compartment-syndrome',
    group: 'vascular',
    label: 'Compartment syndrome',
    produces: [
      // Pain comes before the nerves fail.
      at(['no-lesion'], 'rare'),
      at(
        ['tibial-nerve-tarsal-tunnel', 'median-nerve-wrist', 'radial-nerve-spiral-groove', 'femoral-nerve-groin'],
        'rare',
      ),
      at(['multiple-mononeuropathy', 'brachial-plexus', 'posterior-interosseous-nerve'], 'rare'),
      at(['lumbosacral-plexus', 'sacral-plexus'], 'rare'),
      at(['tibial-nerve-calf'], 'very-common'),
      at(['deep-fibular-nerve', 'superficial-fibular-nerve', 'median-nerve-forearm'], 'common'),
      at(['ulnar-nerve-forearm', 'sciatic-nerve', 'common-fibular-nerve'], 'uncommon'),
    ],
    tempo: { hyperacute: 0.6, acute: 0.34, subacute: 0.04, chronic: 0.02 },
    courses: { progressive: 2, improving: 0.3 },
    durationDays: { to: 3, outside: 0.3, source: recalled('adams-victor', 'compartment syndromes: hours to days') },
    history: [
      told('surgical-positioning', 2, 1),
      told(
        [
          'alcohol-excess',
          'opioid',
          'limb-fracture-or-dislocation',
          'bleeding-disorder',
          'critical-illness',
          'dark-urine',
          'peripheral-arterial-disease',
        ],
        1.4,
        1,
      ),
      told('tense-painful-limb', 12, 0.7),
      told('cocaine-or-stimulants', 1.5, 1),
      told(
        [
          ...injury,
          'recent-surgery',
          'prolonged-immobility',
          'injecting-drug-use',
          'loss-of-consciousness',
          'heavy-exertion',
          'external-pressure',
        ],
        8,
        0.2,
      ),
      told(['leg-pain', 'arm-pain', 'muscle-pain', 'thigh-pain', 'foot-pain', 'hand-pain'], 4, 0.15),
      told('anticoagulant', 2, 1),
    ],
    signs: [
      shows(['inspection/oedema', 'inspection/muscle-tenderness', 'inspection/colour-or-temperature-change'], 6, 0.4),
    ],
    // Muscle that is starved dies.
    quantities: [atLeast('creatine-kinase', 1000, 'U/L', 4, 0.4)],
    source: recalled('adams-victor', 'compartment syndromes'),
  },
  {
    key: 'anterior-tarsal-tunnel-syndrome',
    group: 'compressive',
    label: 'Compression of the deep fibular nerve at the ankle',
    produces: [at(['deep-fibular-nerve-ankle'], 'very-common')],
    tempo: tempos.subacuteOrChronic,
    history: [told(['external-pressure', 'prolonged-squatting'], 4, 0.7), told('foot-pain', 1.5, 0.7)],
    source: limbNerves,
  },
  {
    key: 'morton-neuroma',
    group: 'compressive',
    label: 'Interdigital (Morton) neuroma',
    produces: [
      at(['no-lesion', 'tibial-nerve-tarsal-tunnel'], 'rare'),
      at(['medial-plantar-nerve', 'lateral-plantar-nerve'], 'very-common'),
    ],
    tempo: tempos.chronic,
    age: { from: 25, to: 75, outside: 0.6 },
    sex: { male: 0.4, female: 1.6 },
    history: [
      told(['paraesthesiae', 'numbness'], 1.2, 1),
      told(['diabetes-mellitus', 'back-pain'], 0.6, 1),
      told('foot-pain', 3, 0.2),
    ],
    signs: [shows(['inspection/wasting'], 0.3, 1.1)],
    values: [
      massAtTheNerve,
      reads('nerve-conduction-site', [
        ['tarsal-tunnel', 0.2],
        ['none', 1.5],
      ]),
    ],
    source: limbNerves,
  },
  {
    key: 'sural-compression-or-injury',
    group: 'traumatic',
    label: 'Sural nerve injury or compression at ankle or calf',
    produces: [
      at(['superficial-fibular-nerve-ankle', 'lateral-sural-cutaneous-nerve'], 'rare'),
      at(['sural-nerve'], 'very-common'),
    ],
    tempo: tempos.any,
    history: [
      told(['recent-surgery', ...injury], 5, 0.5),
      told('external-pressure', 3, 0.9),
      told('known-neuropathy', 0.7, 1),
    ],
    source: limbNerves,
  },
  {
    key: 'arteriovenous-access-neuropathy',
    group: 'vascular',
    label: 'Ischaemic neuropathy of a dialysis fistula',
    produces: [
      at(['median-nerve-upper-arm', 'ulnar-nerve-forearm', 'median-nerve-forearm'], 'uncommon'),
      // Every nerve of forearm and hand at once, which looks like the plexus.
      at(['multiple-mononeuropathy', 'median-nerve-elbow', 'lower-trunk', 'medial-cord', 'brachial-plexus'], 'rare'),
    ],
    // Within hours of the operation; a fistula that steals blood does it over weeks.
    tempo: { hyperacute: 0.55, acute: 0.2, subacute: 0.15, chronic: 0.1 },
    age: { from: 18, to: 110, outside: 0.4 },
    history: [
      told('dialysis', 2, 1),
      told(['peripheral-arterial-disease', 'numbness', 'clumsiness'], 1.3, 1),
      told('diabetes-mellitus', 1.6, 0.9),
      told(['chronic-kidney-disease', 'dialysis'], 10, 0.05),
      told('recent-surgery', 4, 0.4),
      told(armPain, 2, 0.5),
    ],
    source: limbNerves,
  },
  {
    key: 'pelvic-tumour-at-the-nerve',
    group: 'neoplastic',
    label: 'Pelvic or retroperitoneal tumour at the nerve',
    produces: [
      at(['obturator-nerve'], 'common'),
      at(
        [
          'femoral-nerve-pelvis',
          'genitofemoral-nerve',
          'pudendal-nerve',
          'superior-gluteal-nerve',
          'inferior-gluteal-nerve',
          'sciatic-nerve',
        ],
        'uncommon',
      ),
      inKind(['plexus'], 'rare'),
    ],
    tempo: tempos.subacuteOrChronic,
    courses: { progressive: 2, improving: 0.2 },
    age: { from: 16, to: 110, outside: 0.4 },
    history: [
      told(['thigh-pain', 'leg-pain', 'radicular-leg-pain'], 1.3, 1),
      told('hip-replacement', 2.5, 1),
      told(['cancer', 'lymphoma'], 8, 0.4),
      told(['weight-loss', 'recent-weight-loss'], 2.5, 0.8),
      told(['flank-pain', 'back-pain'], 1.5, 0.8),
    ],
    signs: [aboveTheLoins],
    values: [
      reads('mri-lumbosacral-plexus', [
        ['mass', 12],
        ['normal', 0.1],
      ]),
    ],
    source: limbNerves,
  },
];
