import { commonPractice, read, recalled } from '../../kernel/cite.ts';
import { at, atLeast, atRoot, type Cause, inKind, mondo, reads, shows, tempos, told } from './cause.ts';

const limbNerves = recalled('preston-shapiro', 'mononeuropathies');
const plexusChapter = recalled('preston-shapiro', 'plexopathies');
const rootChapter = recalled('preston-shapiro', 'radiculopathy');

/** Nerves that are pressed on where they lie and have no entrapment of a name of its own below. */
const openToCompression = [
  'dorsal-scapular-nerve',
  'lateral-cutaneous-nerve-of-forearm',
  'ulnar-nerve-upper-arm',
  'superficial-fibular-nerve',
  'saphenous-nerve',
  'medial-calcaneal-nerve',
  'posterior-femoral-cutaneous-nerve',
] as const;

/** Nerves whose usual entrapment is a row of its own, so that the general one adds little. */
const withEntrapmentOfTheirOwn = [
  'median-nerve-wrist',
  'median-nerve-elbow',
  'ulnar-nerve-elbow',
  'ulnar-nerve-wrist',
  'deep-branch-of-ulnar-nerve',
  'superficial-branch-of-ulnar-nerve',
  'radial-nerve-axilla',
  'radial-nerve-spiral-groove',
  'posterior-interosseous-nerve',
  'anterior-interosseous-nerve',
  'superficial-radial-nerve',
  'suprascapular-nerve-spinoglenoid',
  'greater-occipital-nerve',
  'lateral-femoral-cutaneous-nerve',
  'pudendal-nerve',
  'common-fibular-nerve',
  'deep-fibular-nerve-ankle',
  'tibial-nerve-popliteal-fossa',
  'tibial-nerve-tarsal-tunnel',
  'medial-plantar-nerve',
  'lateral-plantar-nerve',
] as const;

/** Nerves that lie free, so that they are cut or stretched far more often than they are pressed on. */
const hurtRatherThanPressedOn = [
  'lateral-pectoral-nerve',
  'medial-pectoral-nerve',
  'subscapular-nerves',
  'thoracodorsal-nerve',
  'median-nerve-upper-arm',
  'median-nerve-forearm',
  'ulnar-nerve-forearm',
  'dorsal-branch-of-ulnar-nerve',
  'tibial-nerve-calf',
  'superficial-fibular-nerve-ankle',
] as const;

/** Nerves that the surgeon's knife, a port or a needle reaches: neck, axilla, groin, buttock and the skin of the limbs. */
const cutAtOperation = [
  'great-auricular-nerve',
  'transverse-cervical-nerve',
  'supraclavicular-nerves',
  'intercostobrachial-nerve',
  'medial-cutaneous-nerve-of-arm',
  'medial-cutaneous-nerve-of-forearm',
  'palmar-branch-of-median-nerve',
  'palmar-branch-of-ulnar-nerve',
  'iliohypogastric-nerve',
  'ilioinguinal-nerve',
  'genitofemoral-nerve',
  'saphenous-nerve',
  'superior-gluteal-nerve',
  'inferior-gluteal-nerve',
] as const;

/** Causes of a lesion at one nerve, plexus part or root, and of the cauda equina. */
export const focalCauses: readonly Cause[] = [
  {
    key: 'carpal-tunnel-syndrome',
    group: 'compressive',
    label: 'Carpal tunnel syndrome',
    mondo: mondo('MONDO:0007275', 'carpal tunnel syndrome'),
    produces: [at(['median-nerve-wrist'], 'very-common')],
    tempo: tempos.subacuteOrChronic,
    sex: { male: 0.7, female: 1.3 },
    history: [told('nocturnal-hand-paraesthesiae', 3, 0.6), told('pregnancy', 3, 1), told('hypothyroidism', 1.5, 1)],
    signs: [shows(['special-tests/tinel-wrist', 'special-tests/phalen'], 2, 0.7)],
    values: [
      reads('nerve-conduction-site', [
        ['median-wrist', 8],
        ['none', 0.4],
      ]),
    ],
    source: read('dabbagh-2023', 'provocative tests'),
  },
  {
    key: 'ulnar-entrapment-at-elbow',
    group: 'compressive',
    label: 'Ulnar nerve compression at the elbow',
    produces: [at(['ulnar-nerve-elbow'], 'very-common')],
    tempo: tempos.subacuteOrChronic,
    sex: { male: 1.3, female: 0.7 },
    history: [told('elbow-leaning', 4, 0.8)],
    signs: [shows(['special-tests/tinel-elbow', 'special-tests/elbow-flexion-test'], 2.5, 0.7)],
    values: [
      reads('nerve-conduction-site', [
        ['ulnar-elbow', 8],
        ['none', 0.4],
      ]),
    ],
    source: limbNerves,
  },
  {
    key: 'fibular-compression-at-fibular-neck',
    group: 'compressive',
    label: 'Compression of the common fibular nerve at the fibular neck',
    produces: [
      at(['common-fibular-nerve'], 'very-common'),
      at(['deep-fibular-nerve'], 'very-common'),
      at(['superficial-fibular-nerve'], 'common'),
    ],
    tempo: tempos.suddenOrAcute,
    courses: { improving: 1.5, progressive: 0.6 },
    history: [
      told('leg-crossing', 5, 0.8),
      told('prolonged-squatting', 5, 0.9),
      told(['weight-loss', 'recent-weight-loss'], 3, 0.8),
      told('prolonged-immobility', 4, 0.9),
      told(['back-pain', 'thoracic-back-pain'], 0.6, 1.2),
    ],
    signs: [shows(['special-tests/tinel-fibular-neck'], 2, 0.8)],
    values: [
      reads('nerve-conduction-site', [
        ['fibular-neck', 8],
        ['none', 0.4],
      ]),
    ],
    source: limbNerves,
  },
  {
    key: 'radial-compression-in-the-arm',
    group: 'compressive',
    label: 'Radial nerve compression at the spiral groove',
    produces: [at(['radial-nerve-spiral-groove'], 'very-common')],
    tempo: tempos.sudden,
    courses: { improving: 1.5, progressive: 0.4 },
    history: [told('alcohol-excess', 3, 0.9), told(['external-pressure', 'deep-sleep-on-arm'], 6, 0.7)],
    values: [
      reads('nerve-conduction-site', [
        ['radial-spiral-groove', 6],
        ['none', 0.4],
      ]),
    ],
    source: limbNerves,
  },
  {
    key: 'meralgia-paraesthetica',
    group: 'compressive',
    label: 'Meralgia paraesthetica',
    mondo: mondo('MONDO:0023757', 'meralgia paresthetica'),
    produces: [at(['lateral-femoral-cutaneous-nerve'], 'very-common')],
    tempo: tempos.subacuteOrChronic,
    history: [told('obesity', 2, 0.8), told('pregnancy', 2, 1), told('tight-clothing', 2.5, 0.9)],
    source: limbNerves,
  },
  {
    key: 'tarsal-tunnel-syndrome',
    group: 'compressive',
    label: 'Tarsal tunnel syndrome',
    mondo: mondo('MONDO:0006994', 'tarsal tunnel syndrome'),
    produces: [at(['tibial-nerve-tarsal-tunnel', 'medial-plantar-nerve', 'lateral-plantar-nerve'], 'very-common')],
    tempo: tempos.subacuteOrChronic,
    values: [
      reads('nerve-conduction-site', [
        ['tarsal-tunnel', 8],
        ['none', 0.4],
      ]),
    ],
    source: limbNerves,
  },
  {
    key: 'nerve-compression',
    group: 'compressive',
    label: 'Compression or entrapment of the nerve',
    mondo: mondo('MONDO:0003615', 'nerve compression syndrome'),
    produces: [
      at(['lumbosacral-plexus', 'sacral-plexus'], 'uncommon'),
      at(['ophthalmic-nerve', 'maxillary-nerve', 'mandibular-nerve'], 'rare'),
      at(openToCompression, 'very-common'),
      at(withEntrapmentOfTheirOwn, 'rare'),
      at(hurtRatherThanPressedOn, 'uncommon'),
      inKind(['nerve'], 'common'),
      // A strap, a table or a deep sleep presses on the plexus where it passes under the clavicle.
      at(['brachial-plexus', 'upper-trunk'], 'uncommon'),
    ],
    tempo: tempos.any,
    history: [
      told(
        ['external-pressure', 'deep-sleep-on-arm', 'prolonged-immobility', 'leg-crossing', 'prolonged-squatting'],
        4,
        0.9,
      ),
      told(['trauma', 'limb-fracture-or-dislocation', 'neck-trauma'], 0.5, 1.1),
    ],
    source: limbNerves,
  },
  {
    key: 'traumatic-neuropathy',
    group: 'traumatic',
    label: 'Traumatic neuropathy',
    mondo: mondo('MONDO:0100634', 'traumatic neuropathy'),
    produces: [
      at(['spinal-accessory-nerve'], 'very-common'),
      at(['ophthalmic-nerve', 'maxillary-nerve', 'mandibular-nerve'], 'rare'),
      at(['lateral-femoral-cutaneous-nerve'], 'rare'),
      // A broken wrist or a cut above it, a child's elbow that breaks.
      at(['median-nerve-wrist'], 'uncommon'),
      at(
        [
          'ulnar-nerve-elbow',
          'tibial-nerve-tarsal-tunnel',
          'greater-occipital-nerve',
          'pudendal-nerve',
          'lumbar-plexus',
          'sacral-plexus',
          'lumbosacral-plexus',
          'lumbosacral-trunk',
          'brachial-plexus',
          'upper-trunk',
          'middle-trunk',
          'lower-trunk',
        ],
        'uncommon',
      ),
      at(hurtRatherThanPressedOn, 'very-common'),
      inKind(['nerve'], 'common'),
      inKind(['plexus'], 'very-common'),
      inKind(['multiple-nerves'], 'uncommon'),
    ],
    tempo: tempos.sudden,
    courses: { progressive: 0.2 },
    history: [
      told(['trauma', 'limb-fracture-or-dislocation', 'neck-trauma'], 25, 0.05),
      told('recent-surgery', 6, 0.8),
    ],
    source: commonPractice,
  },
  {
    key: 'surgical-or-injection-nerve-injury',
    group: 'traumatic',
    label: 'Nerve injury at operation, childbirth or injection',
    produces: [
      at(['ophthalmic-nerve', 'maxillary-nerve', 'mandibular-nerve'], 'rare'),
      at(cutAtOperation, 'very-common'),
      at(
        [
          'cervical-plexus',
          'lower-trunk',
          'long-thoracic-nerve',
          'thoracodorsal-nerve',
          'superficial-radial-nerve',
          'posterior-cutaneous-nerve-of-arm',
          'posterior-femoral-cutaneous-nerve',
          'median-nerve-elbow',
          'intercostal-nerves',
        ],
        'common',
      ),
      at(
        [
          'median-nerve-wrist',
          'femoral-nerve-pelvis',
          'femoral-nerve-groin',
          'obturator-nerve',
          'sciatic-nerve',
          'sciatic-nerve-fibular-division',
          'sciatic-nerve-tibial-division',
          'spinal-accessory-nerve',
          'phrenic-nerve',
          'lumbosacral-trunk',
          'lumbosacral-plexus',
        ],
        'rare',
      ),
      inKind(['nerve', 'plexus'], 'uncommon'),
    ],
    tempo: tempos.sudden,
    courses: { progressive: 0.2 },
    history: [
      told(
        [
          'recent-surgery',
          'neck-or-chest-surgery',
          'dental-procedure',
          'lumbar-puncture-or-epidural',
          'hip-replacement',
          'spinal-surgery',
          'needle-near-nerve',
        ],
        25,
        0.1,
      ),
      told('pregnancy', 10, 1),
    ],
    source: limbNerves,
  },
  {
    key: 'nerve-tumour-or-cyst',
    group: 'neoplastic',
    label: 'Tumour or ganglion cyst at the nerve',
    produces: [
      at(['tibial-nerve-tarsal-tunnel', 'ulnar-nerve-wrist', 'deep-branch-of-ulnar-nerve'], 'common'),
      at(['posterior-interosseous-nerve', 'common-fibular-nerve'], 'common'),
      at(['median-nerve-wrist', 'lateral-femoral-cutaneous-nerve', 'ulnar-nerve-elbow'], 'rare'),
      inKind(['nerve', 'plexus'], 'uncommon'),
    ],
    tempo: { hyperacute: 0.02, acute: 0.06, subacute: 0.22, chronic: 0.7 },
    courses: { progressive: 2, improving: 0.2, static: 0.6 },
    history: [told(['trauma', 'limb-fracture-or-dislocation', 'recent-surgery'], 0.4, 1.1)],
    signs: [shows(['inspection/cafe-au-lait-spots', 'inspection/neurofibromas'], 15, 0.95)],
    values: [
      reads('nerve-ultrasound', [
        ['mass-or-cyst', 20],
        ['normal', 0.1],
      ]),
      reads('mri-brachial-plexus', [
        ['mass', 6],
        ['normal', 0.1],
      ]),
    ],
    source: limbNerves,
  },
  {
    key: 'retroperitoneal-haematoma',
    group: 'vascular',
    label: 'Retroperitoneal haematoma',
    produces: [
      at(['lumbosacral-trunk', 'adjacent-nerve-roots', 'obturator-nerve', 'lateral-femoral-cutaneous-nerve'], 'rare'),
      at(['lumbar-plexus', 'femoral-nerve-pelvis', 'lumbosacral-plexus'], 'common'),
      at(['femoral-nerve-groin'], 'uncommon'),
    ],
    tempo: tempos.suddenOrAcute,
    history: [
      told(['abdominal-pain', 'flank-pain', 'leg-pain'], 2.5, 0.6),
      told(['anticoagulant', 'bleeding-disorder'], 15, 0.2),
      // The iliacus tears and bleeds in young people who fall or strain.
      told(['trauma', 'heavy-exertion'], 4, 0.9),
      told(['back-pain', 'thoracic-back-pain'], 2, 0.7),
    ],
    source: limbNerves,
  },
  {
    key: 'neuralgic-amyotrophy',
    group: 'immune',
    label: 'Neuralgic amyotrophy',
    mondo: mondo('MONDO:0017362', 'neuralgic amyotrophy'),
    produces: [
      at(['upper-trunk', 'long-thoracic-nerve', 'anterior-interosseous-nerve', 'suprascapular-nerve'], 'very-common'),
      at(['brachial-plexus'], 'very-common'),
      at(['spinal-accessory-nerve', 'dorsal-scapular-nerve', 'musculocutaneous-nerve'], 'common'),
      at(['lateral-cord', 'posterior-cord', 'medial-cord', 'superficial-radial-nerve'], 'uncommon'),
      at(['lateral-cutaneous-nerve-of-forearm', 'thoracodorsal-nerve', 'suprascapular-nerve-spinoglenoid'], 'uncommon'),
      at(['phrenic-nerve', 'posterior-interosseous-nerve', 'axillary-nerve', 'middle-trunk', 'lower-trunk'], 'common'),
      // The same attack on the lumbosacral plexus, without diabetes.
      at(['lumbosacral-plexus', 'lumbar-plexus', 'sacral-plexus'], 'uncommon'),
      inKind(['multiple-nerves'], 'uncommon'),
    ],
    tempo: tempos.acute,
    courses: { improving: 1.4, progressive: 0.6 },
    history: [
      told(['arm-pain', 'radicular-arm-pain', 'shoulder-pain', 'thigh-pain', 'leg-pain', 'radicular-leg-pain'], 5, 0.1),
      told(['preceding-infection', 'preceding-respiratory-infection', 'preceding-gastroenteritis'], 2, 0.9),
      told('recent-vaccination', 2, 0.95),
      told('recent-surgery', 1.5, 0.95),
    ],
    signs: [shows(['inspection/scapular-winging'], 2.5, 0.9)],
    source: read('neuralgic-amyotrophy-2016', 'clinical phenotype'),
  },
  {
    key: 'cancer-plexopathy',
    group: 'neoplastic',
    label: 'Plexus infiltration or compression by tumour',
    produces: [
      at(['lower-trunk', 'medial-cord', 'sacral-plexus', 'lumbosacral-plexus'], 'very-common'),
      at(['upper-trunk', 'lumbosacral-trunk'], 'uncommon'),
      inKind(['plexus'], 'common'),
    ],
    tempo: tempos.subacute,
    courses: { progressive: 1.6, improving: 0.1, static: 0.5 },
    age: { from: 40, to: 110, outside: 0.3 },
    history: [
      // Of 78 with a tumour in the plexus 34 had been irradiated (Kori 1981, abstract).
      told('radiotherapy', 3, 1),
      // It is the first sign of the tumour in about one in seven (Jaeckle 1985, recalled).
      told(['cancer', 'lymphoma'], 8, 0.15),
      told('tobacco', 1.5, 0.8),
      told(['weight-loss', 'recent-weight-loss'], 2.5, 0.8),
      told(['arm-pain', 'radicular-arm-pain', 'shoulder-pain'], 2, 0.6),
    ],
    signs: [shows(['cranial-nerves/horner-syndrome'], 5, 0.8)],
    values: [
      ...(['mri-brachial-plexus', 'mri-lumbosacral-plexus'] as const).map((result) =>
        reads(result, [
          ['mass', 15],
          ['normal', 0.1],
        ]),
      ),
      reads('needle-emg', [['myokymic-discharges', 0.3]]),
    ],
    source: plexusChapter,
  },
  {
    key: 'radiation-plexopathy',
    group: 'toxic',
    label: 'Radiation plexopathy',
    mondo: mondo('MONDO:0033838', 'radiation-induced plexopathy'),
    produces: [
      inKind(['plexus'], 'common'),
      at(['upper-trunk', 'lumbosacral-plexus'], 'common'),
      at(['lower-trunk', 'lumbosacral-trunk'], 'uncommon'),
      // Plexus and roots of both sides in one field look like roots or like anterior horns.
      at(['polyradiculopathy', 'adjacent-nerve-roots', 'lower-motor-neuron-system'], 'rare'),
    ],
    tempo: tempos.chronic,
    history: [told('radiotherapy', 40, 0.01), told(['arm-pain', 'radicular-arm-pain', 'shoulder-pain'], 0.5, 1.3)],
    values: [reads('needle-emg', [['myokymic-discharges', 10]])],
    source: plexusChapter,
  },
  {
    key: 'diabetic-radiculoplexus-neuropathy',
    group: 'metabolic',
    label: 'Diabetic lumbosacral radiculoplexus neuropathy',
    produces: [
      at(['lumbar-plexus', 'lumbosacral-plexus'], 'very-common'),
      at(['polyradiculopathy', 'femoral-nerve-pelvis'], 'common'),
      at(['adjacent-nerve-roots'], 'common', 'lumbosacral'),
      at(['sacral-plexus'], 'uncommon'),
    ],
    tempo: tempos.acuteOrSubacute,
    age: { from: 45, to: 110, outside: 0.2 },
    history: [
      told('diabetes-mellitus', 8, 0.1),
      told(['weight-loss', 'recent-weight-loss'], 4, 0.4),
      told(['leg-pain', 'radicular-leg-pain', 'thigh-pain', 'bilateral-leg-pain'], 3, 0.2),
    ],
    quantities: [atLeast('hba1c', 6.5, '%', 5, 0.3, read('ada-standards', 'diabetes: HbA1c 6.5 %'))],
    source: recalled('ada-neuropathy-2017', 'radiculoplexus neuropathy'),
  },
  {
    key: 'neurogenic-thoracic-outlet-syndrome',
    group: 'compressive',
    label: 'True neurogenic thoracic outlet syndrome',
    produces: [at(['lower-trunk', 'medial-cord'], 'common')],
    tempo: tempos.chronic,
    age: { from: 15, to: 60, outside: 0.4 },
    sex: { male: 0.4, female: 1.6 },
    history: [told(['arm-pain', 'shoulder-pain'], 1.3, 0.9)],
    signs: [
      shows(['special-tests/tinel-supraclavicular'], 4, 0.8),
      shows(['cranial-nerves/horner-syndrome'], 0.2, 1.05),
    ],
    source: plexusChapter,
  },
  {
    key: 'cervical-spondylotic-radiculopathy',
    group: 'compressive',
    label: 'Cervical disc or spondylotic radiculopathy',
    // The joints of the neck that wear lie above the first thoracic root.
    produces: [
      inKind(['root'], 'very-common', 'cervical'),
      atRoot('T1', 'common'),
      at(['polyradiculopathy'], 'uncommon'),
    ],
    tempo: tempos.subacute,
    age: { from: 30, to: 75, outside: 0.5 },
    history: [
      told('neck-pain', 2, 0.4),
      told(['arm-pain', 'radicular-arm-pain', 'shoulder-pain'], 2, 0.4),
      told(['cancer', 'lymphoma'], 0.5, 1.05),
    ],
    signs: [shows(['special-tests/spurling'], 2.5, 0.7)],
    values: [
      reads('mri-cervical-spine', [
        ['root-compression', 10],
        ['normal', 0.1],
      ]),
    ],
    source: read('wainner-2003', 'test-item cluster'),
  },
  {
    key: 'zoster-radiculitis',
    group: 'infective',
    label: 'Herpes zoster radiculitis',
    produces: [
      inKind(['root'], 'very-common', 'thoracic'),
      inKind(['root'], 'uncommon'),
      at(['polyradiculopathy'], 'uncommon'),
      at(['intercostal-nerves'], 'common'),
    ],
    tempo: tempos.acute,
    age: { from: 50, to: 110, outside: 0.4 },
    history: [
      told(['rash', 'herpes-zoster'], 20, 0.2),
      told('immunosuppression', 2.5, 0.95),
      told('neuropathic-pain', 1.5, 0.8),
    ],
    signs: [shows(['inspection/vesicular-rash'], 40, 0.4)],
    source: rootChapter,
  },
  {
    key: 'inflammatory-polyradiculopathy',
    group: 'immune',
    label: 'Inflammatory or infective disease of several roots',
    produces: [
      at(['cauda-equina', 'conus-medullaris'], 'uncommon'),
      at(['polyradiculopathy', 'adjacent-nerve-roots'], 'common'),
    ],
    tempo: tempos.acuteOrSubacute,
    history: [
      told(['preceding-infection', 'preceding-respiratory-infection', 'preceding-gastroenteritis'], 1.5, 0.9),
      told('fever', 1.5, 0.9),
    ],
    values: [reads('nerve-conduction-pattern', [['demyelinating-non-uniform', 2]])],
    source: recalled('adams-victor', 'polyradiculopathies'),
  },
];
