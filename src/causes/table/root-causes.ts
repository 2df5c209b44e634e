import { fromMemory, read, recalled } from '../../kernel/cite.ts';
import { aboveTheLoins } from './above-the-loins.ts';
import { at, atLeast, atRoot, type Cause, inKind, reads, shows, tempos, told, under } from './cause.ts';
import { fluidWithoutCells } from './cord-images.ts';

const rootChapter = recalled('preston-shapiro', 'radiculopathy');

/** Diseases of the roots at any level and of the cauda equina. */
export const rootCauses: readonly Cause[] = [
  {
    key: 'cervical-spondylotic-radiculopathy',
    group: 'compressive',
    label: 'Cervical disc or spondylotic radiculopathy',
    // The joints of the neck that wear lie above the first thoracic root.
    produces: [
      // A palsy of the fifth root looks like one of the shoulder, that of the eighth like dropped fingers.
      at(['axillary-nerve', 'suprascapular-nerve', 'posterior-interosseous-nerve', 'ulnar-nerve-elbow'], 'rare'),
      at(['median-nerve-wrist', 'no-lesion'], 'rare'),

      at(['upper-trunk', 'brachial-plexus', 'long-thoracic-nerve'], 'rare'),
      inKind(['root'], 'very-common', 'cervical'),
      atRoot('T1', 'common'),
      at(['polyradiculopathy'], 'uncommon'),
    ],
    tempo: { hyperacute: 0.05, acute: 0.22, subacute: 0.43, chronic: 0.3 },
    age: { from: 30, to: 75, outside: 0.5 },
    history: [
      told(['paraesthesiae', 'numbness', 'similar-attacks-before', 'repetitive-hand-use'], 1.2, 1),
      told(['preceding-infection', 'recent-vaccination', 'diabetes-mellitus'], 0.8, 1),
      told(['disc-herniation', 'spinal-stenosis', 'spinal-surgery'], 2, 1),
      told(['heavy-exertion', 'neck-trauma', 'pain-on-straining'], 1.4, 1),
      told('fever', 0.3, 1),
      told('neck-pain', 2, 0.4),
      told(['arm-pain', 'radicular-arm-pain', 'shoulder-pain'], 2, 0.4),
      told(['cancer', 'lymphoma'], 0.5, 1.05),
    ],
    signs: [
      shows(['special-tests/shoulder-abduction-relief', 'special-tests/neck-distraction'], 2.5, 0.8),
      shows(['special-tests/upper-limb-tension'], 1.3, 0.3),
      shows(['special-tests/spurling'], 2.5, 0.7),
    ],
    quantities: [fluidWithoutCells],
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
      at(['brachial-plexus', 'lumbosacral-plexus'], 'rare'),
      at(['adjacent-nerve-roots'], 'uncommon'),
      inKind(['root'], 'very-common', 'thoracic'),
      inKind(['root'], 'uncommon'),
      at(['polyradiculopathy'], 'uncommon'),
      at(['intercostal-nerves'], 'common'),
    ],
    tempo: tempos.acute,
    durationDays: { to: 60, outside: 0.3, source: recalled('adams-victor', 'herpes zoster') },
    age: { from: 50, to: 110, outside: 0.4 },
    history: [
      told(
        ['radicular-arm-pain', 'radicular-leg-pain', 'thoracic-back-pain', 'flank-pain', 'abdominal-pain', 'arm-pain'],
        1.4,
        0.9,
      ),
      told(['lymphoma', 'cancer', 'hiv-infection', 'corticosteroid'], 1.6, 1),
      told(['rash', 'herpes-zoster'], 20, 0.2),
      told('immunosuppression', 2.5, 0.95),
      told('neuropathic-pain', 1.5, 0.8),
    ],
    signs: [shows(['inspection/abdominal-bulge'], 3, 1), shows(['inspection/vesicular-rash'], 40, 0.4)],
    source: rootChapter,
  },
  {
    key: 'inflammatory-polyradiculopathy',
    group: 'immune',
    label: 'Inflammatory or infective disease of several roots',
    produces: [
      inKind(['polyradiculoneuropathy'], 'rare'),
      at(['cauda-equina', 'conus-medullaris'], 'uncommon'),
      at(['polyradiculopathy', 'adjacent-nerve-roots'], 'common'),
    ],
    tempo: tempos.acuteOrSubacute,
    durationDays: { to: 730, outside: 0.4, source: recalled('adams-victor', 'polyradiculopathies') },
    history: [
      told(
        ['night-sweats', 'rash', 'travel', 'headache', 'unprotected-sex', 'ascending-weakness', 'facial-pain'],
        1.3,
        1,
      ),
      told(
        [
          'lyme-disease',
          'tick-bite',
          'hiv-infection',
          'syphilis',
          'sarcoidosis',
          'immunosuppression',
          'lupus',
          'sjogren-syndrome',
        ],
        2,
        1,
      ),
      told(['neuropathic-pain', 'bilateral-leg-pain', 'leg-pain', 'radicular-leg-pain'], 1.3, 0.9),
      told(['disc-herniation', 'heavy-exertion'], 0.6, 1),
      told(['preceding-infection', 'preceding-respiratory-infection', 'preceding-gastroenteritis'], 1.5, 0.9),
      told('fever', 1.5, 0.9),
    ],
    signs: [shows(['cranial-nerves/facial-weakness', 'special-tests/neck-stiffness', 'autonomic/fever'], 1.6, 1)],
    quantities: [atLeast('csf-white-cells', 5, '10*6/L', 3, 0.6), atLeast('csf-protein', 0.45, 'g/L', 2, 0.4)],
    values: [
      reads('mri-lumbar-spine', [
        ['root-enhancement', 5],
        ['root-compression', 0.1],
        ['cauda-equina-compression', 0.05],
      ]),
      reads('nerve-conduction-pattern', [['demyelinating-non-uniform', 2]]),
    ],
    source: recalled('adams-victor', 'polyradiculopathies'),
  },
  {
    key: 'lumbar-disc-herniation',
    group: 'compressive',
    label: 'Lumbar disc herniation',
    produces: [
      // A sciatica without any deficit.
      at(['no-lesion'], 'rare'),

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
      told(['obesity', 'pregnancy', 'spinal-stenosis', 'similar-attacks-before'], 1.2, 1),
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
    quantities: [fluidWithoutCells, atLeast('crp', 50, 'mg/L', 0.2, 1.1), atLeast('esr', 50, 'mm/h', 0.4, 1.05)],
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
    quantities: [fluidWithoutCells],
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
      at(['polyradiculopathy', 'lumbosacral-plexus', 'brachial-plexus'], 'rare'),

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
    signs: [aboveTheLoins],
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
      at(['conus-medullaris'], 'rare'),

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
      told(['burning-feet', 'neuropathic-pain'], 1.6, 1),
      told(['bladder-disturbance', 'saddle-numbness'], 1.3, 1),
      // In old ankylosing spondylitis the sac widens and the roots stick to its wall.
      told(['spinal-surgery', 'lumbar-puncture-or-epidural', 'tuberculosis', 'ankylosing-spondylitis'], 12, 0.15),
      told('ankylosing-spondylitis', 2, 1),
      told(['back-pain', 'bilateral-leg-pain', 'leg-pain'], 1.5, 0.6),
    ],
    values: [
      reads('mri-lumbar-spine', [
        ['root-enhancement', 2],
        ['other', 3],
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
      told(['rash', 'herpes-zoster', 'oral-or-genital-ulcers'], 6, 0.55),
      told(['headache', 'bowel-disturbance'], 1.3, 1),
      told('unprotected-sex', 2, 0.95),
      told(['bladder-disturbance'], 2.5, 0.4),
      told(['saddle-numbness', 'neuropathic-pain', 'fever'], 1.5, 0.9),
    ],
    signs: [aboveTheLoins, shows(['inspection/vesicular-rash'], 15, 0.6)],
    quantities: [atLeast('csf-white-cells', 5, '10*6/L', 3, 0.4)],
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
      at(['adjacent-nerve-roots'], 'uncommon', 'lumbosacral'),
      at(['polyradiculopathy'], 'uncommon'),
      at(['lower-motor-neuron-system'], 'exceptional'),
      at(['lumbosacral-plexus'], 'rare'),
      inKind(['cauda-equina'], 'very-common'),
      at(['conus-medullaris'], 'common'),
    ],
    tempo: tempos.acuteOrSubacute,
    courses: { static: 0.5, improving: 0.3, 'relapsing-remitting': 0.3 },
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
    signs: [aboveTheLoins, shows(['inspection/spinal-tenderness', 'autonomic/fever'], 1.8, 0.95)],
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
      at(['conus-medullaris', 'spinal-cord-central'], 'exceptional'),

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
          'night-spinal-pain',
          'bilateral-leg-pain',
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
    quantities: [
      atLeast('ldh', 500, 'U/L', 3, 0.9),
      under('csf-glucose', 2.2, 'mmol/L', 3, 0.8),
      atLeast('csf-protein', 0.45, 'g/L', 1.5, 0.4),
    ],
    values: [
      reads('mri-lumbar-spine', [
        ['root-enhancement', 3],
        ['root-compression', 0.3],
      ]),

      reads('csf-cytology', [
        ['malignant', 100],
        ['normal', 0.5],
      ]),
    ],
    source: recalled('adams-victor', 'leptomeningeal carcinomatosis'),
  },
];
