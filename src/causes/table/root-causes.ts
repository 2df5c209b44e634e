import { fromMemory, read, recalled } from '../../kernel/cite.ts';
import { at, atLeast, type Cause, inKind, reads, shows, tempos, told } from './cause.ts';

/** What arms and face show; a narrow place in the loins does nothing to them. */
const aboveTheLoins = shows(
  [
    'power/shoulder-abduction',
    'power/elbow-flexion',
    'power/elbow-extension',
    'power/finger-abduction',
    'reflexes/biceps',
    'reflexes/triceps',
    'cranial-nerves/facial-weakness',
    'cranial-nerves/eye-abduction-weakness',
    'cranial-nerves/esotropia',
  ],
  0.15,
  1,
);

/** Diseases of the lumbar and sacral roots and of the cauda equina, and of roots at any level. */
export const rootCauses: readonly Cause[] = [
  {
    key: 'lumbar-disc-herniation',
    group: 'compressive',
    label: 'Lumbar disc herniation',
    produces: [
      at(['lumbosacral-plexus', 'lumbosacral-trunk', 'common-fibular-nerve', 'sciatic-nerve'], 'rare'),
      inKind(['root'], 'very-common', 'lumbosacral'),
      at(['polyradiculopathy'], 'uncommon'),
      inKind(['cauda-equina'], 'very-common'),
      // At the bedside the lowest roots and the conus are often not to be told apart.
      at(['conus-medullaris'], 'common'),
    ],
    tempo: tempos.acuteOrSubacute,
    age: { from: 20, to: 65, outside: 0.5 },
    history: [
      told(['pain-on-straining', 'heavy-exertion'], 1.8, 1),
      told(['injecting-drug-use', 'recent-bacteraemia', 'anticoagulant', 'night-sweats'], 0.6, 1),
      told(['disc-herniation', 'spinal-surgery'], 4, 0.95),
      told(['back-pain', 'thoracic-back-pain'], 2, 0.4),
      told(['leg-pain', 'radicular-leg-pain', 'thigh-pain', 'bilateral-leg-pain'], 2.5, 0.3),
      told(['cancer', 'lymphoma'], 0.5, 1.05),
      told('fever', 0.3, 1.05),
    ],
    signs: [
      shows(['special-tests/straight-leg-raise'], 1.3, 0.3),
      shows(['special-tests/crossed-straight-leg-raise'], 2.8, 0.8),
      aboveTheLoins,
    ],
    // A disc does not inflame the blood.
    quantities: [atLeast('crp', 50, 'mg/L', 0.2, 1.1), atLeast('esr', 50, 'mm/h', 0.4, 1.05)],
    values: [
      reads('mri-lumbar-spine', [
        ['root-compression', 10],
        ['cauda-equina-compression', 8],
        ['normal', 0.05],
      ]),
    ],
    source: read('cochrane-lumbar-2010', 'straight leg raise and crossed straight leg raise'),
  },
  {
    key: 'lumbar-spinal-stenosis',
    group: 'compressive',
    label: 'Lumbar spinal stenosis',
    produces: [
      at(['no-lesion'], 'uncommon'),
      at(['lumbosacral-plexus', 'common-fibular-nerve', 'length-dependent-polyneuropathy'], 'rare'),
      inKind(['root'], 'common', 'lumbosacral'),
      at(['polyradiculopathy'], 'common'),
      inKind(['cauda-equina'], 'common'),
    ],
    tempo: tempos.chronic,
    durationDays: { from: 60, outside: 0.5, source: fromMemory },
    age: { from: 55, to: 110, outside: 0.2 },
    history: [
      told(['falls', 'difficulty-walking', 'numbness', 'leg-weakness'], 1.2, 1),
      told(['bilateral-leg-pain', 'leg-pain', 'radicular-leg-pain'], 1.4, 0.8),
      told(['fever', 'injecting-drug-use'], 0.3, 1),
      told('neurogenic-claudication', 6, 0.2),
      told('spinal-stenosis', 8, 1),
      told(['back-pain', 'thoracic-back-pain'], 1.4, 0.6),
    ],
    signs: [shows(['special-tests/neurogenic-claudication-relief'], 4, 0.6), aboveTheLoins],
    values: [
      reads('mri-lumbar-spine', [
        ['canal-stenosis', 12],
        ['normal', 0.03],
      ]),
    ],
    source: recalled('nice-ng59'),
  },
  {
    key: 'spinal-metastasis-with-root-compression',
    group: 'neoplastic',
    label: 'Spinal metastasis compressing a root',
    produces: [
      inKind(['root'], 'common', 'thoracic'),
      inKind(['root'], 'uncommon'),
      at(['cervical-plexus'], 'uncommon'),
    ],
    tempo: tempos.subacute,
    courses: { progressive: 1.6, improving: 0.1 },
    durationDays: { to: 365, outside: 0.4, source: fromMemory },
    age: { from: 40, to: 110, outside: 0.4 },
    history: [
      told(['back-pain', 'neck-pain', 'radicular-arm-pain', 'radicular-leg-pain', 'spinal-fracture'], 1.3, 1),
      told(['cancer', 'lymphoma'], 15, 0.2),
      told('night-spinal-pain', 3, 0.7),
      told(['thoracic-back-pain', 'pain-on-straining'], 1.5, 0.8),
      told(['weight-loss', 'recent-weight-loss'], 2, 0.8),
    ],
    signs: [shows(['inspection/spinal-tenderness'], 2, 0.8)],
    values: [
      reads('mri-lumbar-spine', [
        ['metastasis', 20],
        ['normal', 0.1],
      ]),
      reads('mri-cervical-spine', [
        ['metastasis', 20],
        ['normal', 0.1],
      ]),
      reads('mri-thoracic-spine', [
        ['metastasis', 20],
        ['normal', 0.1],
      ]),
      reads(
        'mri-whole-spine',
        [
          ['metastasis', 40],
          ['normal', 0.02],
        ],
        recalled('nice-ng234'),
      ),
    ],
    source: recalled('nice-ng234', 'recognition'),
  },
  {
    key: 'upper-lumbar-disc-herniation',
    group: 'compressive',
    label: 'Upper lumbar disc herniation',
    produces: [
      at(['nerve-root', 'adjacent-nerve-roots'], 'uncommon', 'lumbosacral'),
      at(['conus-medullaris'], 'common'),
    ],
    tempo: tempos.acuteOrSubacute,
    age: { from: 35, to: 80, outside: 0.5 },
    history: [
      told('back-pain', 2, 0.4),
      told(['thigh-pain', 'leg-pain', 'radicular-leg-pain', 'bilateral-leg-pain'], 2, 0.5),
      told('cancer', 0.5, 1.05),
    ],
    values: [
      reads('mri-lumbar-spine', [
        ['root-compression', 8],
        ['conus-lesion', 2],
        ['normal', 0.05],
      ]),
    ],
    source: recalled('preston-shapiro', 'radiculopathy'),
  },
  {
    key: 'arachnoiditis',
    group: 'immune',
    label: 'Spinal arachnoiditis',
    produces: [
      at(['cauda-equina', 'polyradiculopathy'], 'uncommon'),
      at(['adjacent-nerve-roots'], 'rare'),
      inKind(['cord'], 'rare'),
    ],
    // What was injected may inflame the roots within days; most scars take months.
    tempo: { hyperacute: 0.03, acute: 0.14, subacute: 0.3, chronic: 0.53 },
    age: { from: 16, to: 110, outside: 0.4 },
    history: [
      told(['paraesthesiae', 'numbness', 'radicular-leg-pain'], 1.2, 1),
      told(['spinal-fracture', 'disc-herniation'], 1.5, 1),
      told(['burning-feet', 'neuropathic-pain', 'bladder-disturbance'], 1.3, 1),
      told(['spinal-surgery', 'lumbar-puncture-or-epidural', 'tuberculosis'], 12, 0.15),
      told(['back-pain', 'bilateral-leg-pain', 'leg-pain'], 1.5, 0.6),
    ],
    values: [
      reads('mri-lumbar-spine', [
        ['root-enhancement', 2],
        ['normal', 0.2],
      ]),
    ],
    source: recalled('adams-victor', 'spinal arachnoiditis'),
  },
  {
    key: 'cytomegalovirus-polyradiculitis',
    group: 'infective',
    label: 'Cytomegalovirus polyradiculitis',
    produces: [at(['cauda-equina', 'polyradiculopathy'], 'uncommon')],
    tempo: tempos.acuteOrSubacute,
    courses: { progressive: 1.6 },
    durationDays: { to: 120, outside: 0.3, source: fromMemory },
    age: { from: 16, to: 110, outside: 0.3 },
    history: [
      told(['bladder-disturbance', 'visual-loss', 'bilateral-leg-pain', 'weight-loss'], 1.5, 1),
      told(['hiv-infection', 'immunosuppression'], 30, 0.1),
    ],
    quantities: [atLeast('csf-white-cells', 50, '10*6/L', 3, 0.6)],
    values: [
      reads('csf-microbiology', [['positive', 6]]),
      reads('hiv-test', [
        ['positive', 20],
        ['negative', 0.2],
      ]),
      reads('mri-lumbar-spine', [
        ['root-enhancement', 4],
        ['normal', 0.6],
      ]),
    ],
    source: recalled('adams-victor', 'cytomegalovirus polyradiculitis'),
  },
  {
    key: 'sacral-herpes-radiculitis',
    group: 'infective',
    label: 'Sacral radiculitis of genital herpes (Elsberg syndrome)',
    produces: [at(['cauda-equina', 'polyradiculopathy'], 'uncommon'), at(['conus-medullaris'], 'uncommon')],
    tempo: tempos.acuteOrSubacute,
    age: { from: 15, to: 60, outside: 0.5 },
    history: [
      told(['immunosuppression', 'hiv-infection', 'similar-attacks-before', 'preceding-infection'], 1.6, 1),
      told(['disc-herniation', 'heavy-exertion', 'cancer', 'anticoagulant'], 0.5, 1),
      told(['rash', 'herpes-zoster'], 6, 0.55),
      told('unprotected-sex', 2, 0.95),
      told(['bladder-disturbance'], 2.5, 0.4),
      told(['saddle-numbness', 'neuropathic-pain', 'fever'], 1.5, 0.9),
    ],
    signs: [shows(['inspection/vesicular-rash'], 15, 0.6)],
    values: [
      reads('csf-microbiology', [
        ['positive', 8],
        ['negative', 0.5],
      ]),
      reads('mri-lumbar-spine', [
        ['cauda-equina-compression', 0.05],
        ['root-enhancement', 4],
      ]),
    ],
    source: recalled('adams-victor', 'sacral herpes with retention'),
  },
  {
    key: 'mechanical-back-pain',
    group: 'degenerative',
    label: 'Mechanical back or neck pain without nerve involvement',
    produces: [at(['no-lesion'], 'common'), at(['not-anatomical'], 'uncommon')],
    tempo: tempos.any,
    age: { from: 18, to: 110, outside: 0.5 },
    history: [
      told(['heavy-exertion', 'similar-attacks-before'], 1.6, 1),
      told(['fever', 'leg-weakness', 'bladder-disturbance', 'saddle-numbness', 'cancer', 'weight-loss'], 0.1, 1.1),
      told(['back-pain', 'thoracic-back-pain', 'neck-pain'], 8, 0.02),
      told(['cancer', 'lymphoma'], 0.4, 1.1),
      told(['fever', 'night-spinal-pain', 'weight-loss'], 0.4, 1.2),
      told(['saddle-numbness', 'bladder-disturbance', 'bowel-disturbance'], 0.3, 1.1),
      told(['radicular-leg-pain', 'bilateral-leg-pain', 'radicular-arm-pain'], 0.5, 1.2),
    ],
    source: recalled('nice-ng59', 'non-specific low back pain'),
  },
  {
    key: 'cauda-equina-tumour-or-infection',
    group: 'neoplastic',
    label: 'Tumour, abscess or haematoma compressing the cauda equina',
    produces: [
      at(['polyradiculopathy', 'adjacent-nerve-roots'], 'uncommon', 'lumbosacral'),
      at(['lumbosacral-plexus'], 'rare'),
      inKind(['cauda-equina'], 'very-common'),
      at(['conus-medullaris'], 'common'),
    ],
    tempo: tempos.acuteOrSubacute,
    history: [
      told(
        [
          'injecting-drug-use',
          'recent-bacteraemia',
          'spinal-surgery',
          'lumbar-puncture-or-epidural',
          'needle-near-nerve',
          'immunosuppression',
          'bleeding-disorder',
          'tuberculosis',
        ],
        3,
        1,
      ),
      told(['night-spinal-pain', 'weight-loss', 'recent-weight-loss', 'night-sweats'], 2, 1),
      told(['cancer', 'lymphoma'], 6, 0.5),
      told('fever', 4, 0.8),
      told('anticoagulant', 3, 0.9),
    ],
    signs: [shows(['inspection/spinal-tenderness', 'autonomic/fever'], 1.8, 0.95)],
    quantities: [atLeast('crp', 50, 'mg/L', 3, 0.7), atLeast('ldh', 500, 'U/L', 4, 0.8)],
    values: [
      reads('mri-lumbar-spine', [
        ['metastasis', 8],
        ['infection-or-abscess', 10],
        ['haematoma', 10],
        ['cauda-equina-compression', 1.5],
        ['normal', 0.03],
      ]),
    ],
    source: recalled('girft-ces-2023'),
  },
  {
    key: 'neuroborreliosis',
    group: 'infective',
    label: 'Lyme radiculoneuritis',
    produces: [
      at(
        ['lumbar-plexus', 'femoral-nerve-pelvis', 'phrenic-nerve', 'long-thoracic-nerve', 'motor-polyneuropathy'],
        'rare',
      ),
      at(['intercostal-nerves', 'cauda-equina', 'multiple-mononeuropathy'], 'uncommon'),
      at(
        ['brachial-plexus', 'lumbosacral-plexus', 'spinal-cord-anterior', 'spinal-cord-transverse', 'oculomotor-nerve'],
        'rare',
      ),
      at(['facial-nerve', 'basal-meningeal-process', 'meningeal-irritation'], 'uncommon'),
      at(['abducens-nerve'], 'rare'),
      at(['polyradiculopathy', 'adjacent-nerve-roots'], 'common'),
      inKind(['root', 'multiple-sites'], 'uncommon'),
      inKind(['polyradiculoneuropathy'], 'uncommon'),
    ],
    tempo: tempos.acuteOrSubacute,
    durationDays: { to: 365, outside: 0.4, source: recalled('adams-victor', 'Lyme disease') },
    history: [
      told(['arm-pain', 'leg-pain', 'shoulder-pain', 'abdominal-pain', 'muscle-pain'], 1.2, 1),
      told('travel', 1.2, 1),
      told(['headache', 'joint-pain', 'fatigue', 'fever'], 1.3, 1),
      told('tick-bite', 12, 0.3),
      told('lyme-disease', 20, 1),
      told('rash', 3, 0.8),
      // Pains of roots that keep people awake, and a face that fails, often on both sides.
      told(
        [
          'neuropathic-pain',
          'radicular-leg-pain',
          'radicular-arm-pain',
          'thoracic-back-pain',
          'neck-pain',
          'back-pain',
        ],
        1.8,
        0.7,
      ),
    ],
    signs: [
      shows(['inspection/erythema-migrans'], 15, 0.95),
      shows(['inspection/abdominal-bulge'], 3, 1),
      shows(['cranial-nerves/facial-weakness'], 2.5, 0.9),
    ],
    quantities: [atLeast('csf-white-cells', 10, '10*6/L', 5, 0.2, recalled('adams-victor', 'Lyme disease'))],
    values: [
      reads('mri-lumbar-spine', [['root-enhancement', 3]]),
      reads('borrelia-serology', [
        ['positive', 6],
        ['negative', 0.2],
      ]),
    ],
    source: recalled('adams-victor', 'Lyme disease'),
  },
  {
    key: 'root-metastasis-or-leptomeningeal-cancer',
    group: 'neoplastic',
    label: 'Cancer of the roots or leptomeninges',
    produces: [
      at(['basal-meningeal-process'], 'very-common'),
      at(
        ['meningeal-irritation', 'raised-intracranial-pressure', 'cerebellopontine-angle', 'jugular-foramen'],
        'uncommon',
      ),
      at(['optic-nerve'], 'rare'),
      at(['nerve-roots', 'adjacent-nerve-roots'], 'common'),
      at(['polyradiculopathy'], 'common'),
      inKind(['cauda-equina'], 'common'),
      inKind(['root'], 'uncommon'),
      inKind(['multiple-sites'], 'uncommon'),
      at(
        ['oculomotor-nerve', 'abducens-nerve', 'facial-nerve', 'trigeminal-nerve', 'hypoglossal-nerve', 'vagus-nerve'],
        'uncommon',
      ),
      at(
        [
          'cochlear-nerve',
          'vestibular-nerve',
          'trochlear-nerve',
          'recurrent-laryngeal-nerve',
          'bulbar-motor-nuclei',
          'optic-chiasm',
          'cavernous-sinus',
          'diffuse-encephalopathy',
        ],
        'rare',
      ),
    ],
    tempo: tempos.subacute,
    courses: { progressive: 1.6, improving: 0.1 },
    durationDays: { to: 540, outside: 0.3, source: recalled('adams-victor', 'leptomeningeal carcinomatosis') },
    history: [
      told(['back-pain', 'bilateral-leg-pain', 'diplopia', 'hearing-loss', 'saddle-numbness'], 1.2, 1),
      told(['cancer', 'lymphoma'], 15, 0.2),
      told(['weight-loss', 'recent-weight-loss'], 2.5, 0.8),
      told(['headache', 'new-headache', 'morning-headache'], 1.5, 0.9),
      told('lymphoma', 1.5, 1),
    ],
    quantities: [atLeast('ldh', 500, 'U/L', 3, 0.9)],
    values: [
      reads('csf-cytology', [
        ['malignant', 100],
        ['normal', 0.5],
      ]),
    ],
    source: recalled('adams-victor', 'leptomeningeal carcinomatosis'),
  },
];
