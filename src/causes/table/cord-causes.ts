import { commonPractice, fromMemory, read, recalled } from '../../kernel/cite.ts';
import { at, atLeast, atRoot, type Cause, inKind, mondo, reads, shows, showsAt, tempos, told, under } from './cause.ts';

import { anyCordImage, fluidWithoutCells, lesionIsOutside, pressesFromOutside } from './cord-images.ts';

const cordChapter = recalled('adams-victor', 'diseases of the spinal cord');
const anyCord = ['cord'] as const;

/** Causes of spinal cord disease. */
export const cordCauses: readonly Cause[] = [
  {
    key: 'degenerative-cervical-myelopathy',
    group: 'compressive',
    label: 'Degenerative cervical myelopathy',
    produces: [
      at(['polyradiculopathy', 'conus-medullaris'], 'rare'),
      inKind(['root'], 'rare', 'cervical'),
      at(['cauda-equina', 'brachial-plexus'], 'exceptional'),
      at(['length-dependent-polyneuropathy', 'demyelinating-polyradiculoneuropathy', 'no-lesion'], 'exceptional'),
      inKind(anyCord, 'rare', 'lumbosacral'),
      // Numb hands are taken for the carpal tunnel, and arms that waste for the motor cells. Behrbalk 2013 (recalled).
      at(['median-nerve-wrist', 'multiple-mononeuropathy'], 'rare'),
      at(['lower-motor-neuron-system'], 'uncommon'),
      inKind(anyCord, 'uncommon', 'thoracic'),
      at(['foramen-magnum', 'upper-motor-neuron-system', 'motor-neuron-system', 'adjacent-nerve-roots'], 'rare'),
      inKind(anyCord, 'very-common', 'cervical'),
      at(['spinal-cord-posterior', 'spinal-cord-hemisection', 'spinal-cord-central'], 'common', 'cervical'),
      at(['spinal-cord-anterior'], 'common', 'cervical'),
      at(['spinal-cord-lateral'], 'common'),
      at(['spinal-cord-posterolateral'], 'common'),
    ],
    tempo: { hyperacute: 0.02, acute: 0.05, subacute: 0.18, chronic: 0.75 },
    courses: { progressive: 1.3, 'relapsing-remitting': 0.3 },
    age: { from: 45, to: 110, outside: 0.25 },
    history: [
      told(['neck-trauma', 'trauma'], 1.3, 1),
      told(['cancer', 'lymphoma', 'injecting-drug-use', 'family/spastic-paraplegia'], 0.6, 1),
      told(['spinal-stenosis', 'disc-herniation', 'spinal-surgery'], 2, 1),
      told(['radicular-arm-pain', 'falls'], 1.3, 1),
      told('electric-shock-on-neck-flexion', 1.8, 1),
      told('optic-neuritis', 0.4, 1),
      told('neck-pain', 1.5, 0.8),
      // Buttons and keys are the first complaint of most.
      told('clumsiness', 1.8, 0.8),
      told('fever', 0.3, 1.05),
      told(['numbness', 'paraesthesiae', 'difficulty-walking'], 1.2, 1),
      told(['lupus', 'sarcoidosis', 'multiple-sclerosis'], 0.6, 1),
    ],
    signs: [
      shows(['special-tests/grip-release', 'special-tests/finger-escape', 'special-tests/tromner'], 2, 0.8),
      shows(['special-tests/hoffmann'], 2.2, 0.63),
      shows(['special-tests/inverted-brachioradialis'], 2.5, 0.7),
      shows(['special-tests/lhermitte'], 1.2, 1),
    ],
    quantities: [fluidWithoutCells],
    values: [
      reads('mri-cervical-spine', [
        ['cord-compression', 8],
        ['normal', 0.02],
        ['canal-stenosis', 0.7],
        ['cord-lesion-short', 0.2],
        ['cord-lesion-long', 0.1],
      ]),
    ],
    source: read('cook-2010', 'cluster with age over 45; Hoffmann ratios from Fogarty 2018'),
  },
  {
    key: 'metastatic-spinal-cord-compression',
    group: 'neoplastic',
    label: 'Metastatic spinal cord compression',
    produces: [
      inKind(anyCord, 'common', 'thoracic'),
      inKind(anyCord, 'uncommon'),
      inKind(['cauda-equina'], 'common'),
      at(['spinal-cord-transverse', 'conus-medullaris'], 'common'),
      at(
        [
          'spinal-cord-posterior',
          'spinal-cord-posterolateral',
          'spinal-cord-central',
          'spinal-cord-hemisection',
          'spinal-cord-lateral',
        ],
        'uncommon',
      ),
      at(['foramen-magnum', 'adjacent-nerve-roots', 'polyradiculopathy', 'no-lesion'], 'exceptional'),
    ],
    tempo: tempos.acuteOrSubacute,
    courses: { progressive: 1.6, improving: 0.05, 'relapsing-remitting': 0.05 },
    age: { from: 40, to: 110, outside: 0.35 },
    history: [
      told(['chronic-cough', 'face-or-neck-lump', 'limb-lump'], 1.5, 1),
      told(['tight-band', 'radiotherapy'], 1.5, 1),
      told('fever', 0.5, 1),
      told(['cancer', 'lymphoma'], 20, 0.25),
      told(['back-pain', 'thoracic-back-pain'], 2, 0.3),
      told(['weight-loss', 'recent-weight-loss'], 2, 0.8),
      told('night-spinal-pain', 2.5, 0.8),
      told(['monoclonal-gammopathy', 'amyloidosis'], 3, 1),
      told(['spinal-fracture', 'pain-on-straining', 'radicular-leg-pain', 'radicular-arm-pain'], 1.4, 1),
      told(['tobacco', 'fatigue', 'night-sweats', 'difficulty-walking', 'bladder-disturbance'], 1.2, 1),
    ],
    signs: [shows(['inspection/enlarged-lymph-nodes', 'inspection/spinal-tenderness'], 1.8, 0.9)],
    quantities: [fluidWithoutCells, atLeast('calcium', 2.65, 'mmol/L', 2, 1)],
    values: [
      ...pressesFromOutside,
      reads('ct-chest', [['tumour', 4]]),
      reads(
        'mri-whole-spine',
        [
          ['metastasis', 40],
          ['normal', 0.01],
        ],
        read('nice-ng234'),
      ),
    ],
    source: read('nice-ng234'),
  },
  {
    key: 'spinal-epidural-abscess',
    group: 'infective',
    label: 'Spinal epidural abscess',
    produces: [
      at(['lumbosacral-plexus', 'sciatic-nerve', 'brachial-plexus'], 'exceptional'),
      inKind(anyCord, 'uncommon'),
      inKind(['cauda-equina'], 'uncommon'),
      at(
        [
          'nerve-root',
          'adjacent-nerve-roots',
          'polyradiculopathy',
          'demyelinating-polyradiculoneuropathy',
          'meningeal-irritation',
          'no-lesion',
          'foramen-magnum',
        ],
        'rare',
      ),
    ],
    // The back aches for days to weeks before the limbs fail. Darouiche 2006 (recalled).
    tempo: { hyperacute: 0.08, acute: 0.5, subacute: 0.36, chronic: 0.06 },
    courses: { progressive: 1.5, improving: 0.15, 'relapsing-remitting': 0.1 },
    history: [
      told(['livestock-or-raw-milk', 'valve-disease-or-endocarditis', 'dialysis', 'sickle-cell-disease'], 3, 1),
      told(['chronic-kidney-disease', 'chronic-liver-disease', 'alcohol-excess'], 2, 0.98),
      told(['dental-procedure', 'needle-near-nerve', 'tuberculosis', 'sinus-or-ear-infection'], 2, 1),
      told('night-spinal-pain', 1.5, 1),
      // Half have none (Darouiche 2006, recalled).
      told('fever', 10, 0.55),
      told(['back-pain', 'thoracic-back-pain', 'neck-pain'], 2, 0.15),
      told('diabetes-mellitus', 2.5, 0.9),
      told('injecting-drug-use', 8, 0.9),
      told(['hepatitis-c', 'hiv-infection'], 2.5, 1),
      told('immunosuppression', 3, 0.9),
      told(
        ['spinal-surgery', 'recent-surgery', 'lumbar-puncture-or-epidural', 'recent-bacteraemia', 'sepsis'],
        5,
        0.95,
      ),
      told(['corticosteroid', 'tnf-inhibitor', 'cancer', 'critical-illness'], 1.4, 1),
      told(['night-sweats', 'weight-loss', 'fatigue', 'radicular-leg-pain', 'radicular-arm-pain'], 1.3, 1),
    ],
    signs: [
      shows(['special-tests/neck-stiffness'], 2, 0.95),
      shows(['autonomic/fever'], 2, 0.9),
      shows(['inspection/spinal-tenderness'], 4, 0.7),
    ],
    quantities: [
      atLeast('esr', 30, 'mm/h', 3, 0.15),
      atLeast('white-cells', 11, '10*9/L', 2, 0.6),
      atLeast('crp', 50, 'mg/L', 5, 0.2),
    ],
    values: [
      ...pressesFromOutside,
      reads('mri-whole-spine', [
        ['infection-or-abscess', 60],
        ['normal', 0.02],
      ]),
    ],
    source: cordChapter,
  },
  {
    key: 'spinal-epidural-haematoma',
    group: 'vascular',
    label: 'Spinal epidural haematoma',
    produces: [
      at(['nerve-root', 'adjacent-nerve-roots', 'polyradiculopathy', 'lumbosacral-plexus'], 'rare'),
      // Limbs limp without jerks in spinal shock are taken for a disease of roots and nerves.
      at(['demyelinating-polyradiculoneuropathy'], 'rare'),
      inKind(anyCord, 'uncommon'),
      at(['spinal-cord-transverse', 'spinal-cord-hemisection'], 'uncommon'),
      at(['internal-capsule', 'foramen-magnum'], 'rare'),
      inKind(['cauda-equina'], 'uncommon'),
      at(['no-lesion', 'lower-motor-neuron-system'], 'exceptional'),
    ],
    tempo: { hyperacute: 0.66, acute: 0.28, subacute: 0.04, chronic: 0.02 },
    courses: { 'relapsing-remitting': 0.4, static: 0.8 },
    history: [
      told(['spinal-surgery', 'recent-surgery', 'needle-near-nerve', 'ankylosing-spondylitis'], 3, 1),
      // Straining, lifting and labour raise the pressure in the epidural veins.
      told(['heavy-exertion', 'pregnancy', 'trauma'], 1.7, 1),
      told(['chronic-liver-disease', 'chronic-kidney-disease'], 1.5, 1),
      told('fever', 0.3, 1),
      told(['anticoagulant', 'bleeding-disorder', 'thrombophilia'], 12, 0.5),
      told('antiplatelet', 1.5, 1),
      told(['back-pain', 'thoracic-back-pain', 'neck-pain', 'shoulder-pain'], 3, 0.3),
      told('lumbar-puncture-or-epidural', 10, 0.9),
      told(['hypertension', 'radicular-arm-pain', 'radicular-leg-pain'], 1.3, 1),
    ],
    quantities: [fluidWithoutCells, atLeast('inr', 3, '{INR}', 6, 0.8), under('platelets', 50, '10*9/L', 6, 0.95)],
    values: [
      ...pressesFromOutside,
      reads('mri-whole-spine', [
        ['haematoma', 60],
        ['normal', 0.02],
      ]),
    ],
    source: cordChapter,
  },
  {
    key: 'spinal-cord-injury',
    group: 'traumatic',
    label: 'Spinal cord injury',
    mondo: mondo('MONDO:0043797', 'spinal cord injury'),
    produces: [
      inKind(anyCord, 'common'),
      at(['spinal-cord-central'], 'very-common', 'cervical'),
      at(['spinal-cord-posterior', 'spinal-cord-posterolateral', 'spinal-cord-lateral'], 'rare'),
    ],
    tempo: tempos.sudden,
    // It is worst at once; what climbs for days is swelling, blood or something else.
    courses: { progressive: 0.2, static: 1.6, improving: 1.3 },
    history: [
      told(['trauma', 'limb-fracture-or-dislocation', 'neck-trauma', 'spinal-fracture', 'head-injury'], 50, 0.02),
      // A stiff or brittle spine breaks at a fall from standing.
      told(['ankylosing-spondylitis', 'osteoporosis', 'spinal-stenosis'], 3, 1),
      told('spinal-surgery', 1.5, 1),
      told('ascending-weakness', 0.3, 1),
      told('fever', 0.3, 1),
    ],
    source: commonPractice,
  },
  {
    key: 'spinal-cord-infarction',
    group: 'vascular',
    label: 'Spinal cord infarction',
    produces: [
      at(['lumbosacral-plexus'], 'rare'),
      at(['no-lesion', 'cortex-anterior-cerebral', 'cortex-parasagittal', 'brachial-plexus'], 'exceptional'),
      at(['demyelinating-polyradiculoneuropathy'], 'rare'),
      at(['spinal-cord-central', 'spinal-cord-hemisection'], 'common'),
      at(['cauda-equina', 'lower-motor-neuron-system'], 'rare'),
      at(['spinal-cord-posterior', 'spinal-cord-posterolateral'], 'uncommon'),
      at(['spinal-cord-anterior'], 'very-common'),
      at(['conus-medullaris', 'spinal-cord-transverse'], 'common'),
      inKind(anyCord, 'uncommon'),
      at(['adjacent-nerve-roots', 'polyradiculopathy', 'foramen-magnum'], 'rare'),
    ],
    // The worst within 12 hours in 77 %, a stuttering decline in 23 %.
    tempo: { hyperacute: 0.74, acute: 0.22, subacute: 0.03, chronic: 0.01 },
    courses: { progressive: 0.3, monophasic: 1.5 },
    age: { from: 40, to: 110, outside: 0.5 },
    history: [
      told(['sickle-cell-disease', 'valve-disease-or-endocarditis', 'heart-failure', 'migraine'], 1.3, 1),
      told(
        [
          'hypertension',
          'hyperlipidaemia',
          'peripheral-arterial-disease',
          'ischaemic-heart-disease',
          'diabetes-mellitus',
          'tobacco',
          'atrial-fibrillation',
        ],
        1.6,
        0.7,
      ),
      // A fall of pressure, a clamped aorta, a needle or torn artery at the root, a splinter of disc in the young.
      told(['cardiac-arrest', 'cocaine-or-stimulants', 'syncope'], 2.5, 1),
      told(['recent-surgery', 'needle-near-nerve', 'lumbar-puncture-or-epidural'], 1.6, 1),
      told(['heavy-exertion', 'neck-trauma'], 2, 1),
      told('thrombophilia', 2, 1),
      told('fever', 0.3, 1),
      told('aortic-disease', 12, 0.95),
      // Most feel a sudden pain of the spine at the level.
      told(['neck-pain', 'back-pain', 'thoracic-back-pain'], 1.5, 0.8),
      told(['lupus', 'vasculitis', 'syphilis', 'pregnancy', 'hormonal-contraceptive'], 1.3, 1),
      told(['radicular-arm-pain', 'shoulder-pain', 'tight-band'], 1.2, 1),
    ],
    signs: [shows(['special-tests/neck-stiffness'], 0.4, 1)],
    quantities: [
      atLeast('csf-white-cells', 5, '10*6/L', 0.2, 1.4, read('cord-infarction-2019', 'fluid without cells in 92 %')),
    ],
    values: (['mri-thoracic-spine', 'mri-cervical-spine', 'mri-whole-spine'] as const).map((result) =>
      reads(result, [
        ['cord-lesion-long', 3],
        ['cord-compression', 0.05],
      ]),
    ),
    source: read('cord-infarction-2019', 'nadir within 12 hours in 77 %'),
  },
  {
    key: 'spinal-dural-arteriovenous-fistula',
    group: 'vascular',
    label: 'Spinal dural arteriovenous fistula',
    produces: [
      at(['demyelinating-polyradiculoneuropathy', 'lumbosacral-plexus'], 'exceptional'),
      at(['polyradiculopathy', 'length-dependent-polyneuropathy'], 'rare'),
      at(['cauda-equina'], 'uncommon'),
      at(['spinal-cord-posterolateral', 'spinal-cord-lateral'], 'uncommon'),
      at(['conus-medullaris'], 'common'),
      inKind(anyCord, 'uncommon', 'thoracic'),
      at(['medulla-half', 'lower-motor-neuron-system'], 'exceptional'),
      inKind(['cord'], 'exceptional', 'cervical'),
      at(['spinal-cord-transverse'], 'common', 'thoracic'),
      at(['spinal-cord-transverse'], 'rare', 'cervical'),
      at(['spinal-cord-transverse'], 'uncommon', 'lumbosacral'),
      at(['spinal-cord-posterior'], 'uncommon'),
      at(['foramen-magnum'], 'rare'),
    ],
    // It grows worse by steps, on effort or on standing, and may mend for hours; some begin within days.
    tempo: { hyperacute: 0.05, acute: 0.1, subacute: 0.35, chronic: 0.5 },
    courses: { progressive: 1.4, fluctuating: 2 },
    age: { from: 45, to: 90, outside: 0.2 },
    sex: { male: 1.6, female: 0.4 },
    history: [
      told(['difficulty-walking', 'unsteadiness'], 1.15, 1),
      told(['heavy-exertion', 'corticosteroid'], 2, 1),
      // Two of three are taken for something else at first, and many are operated on for a narrow canal. Judged.
      told(['spinal-stenosis', 'spinal-surgery', 'disc-herniation'], 1.4, 1),
      told(['similar-attacks-before', 'resolved-deficit'], 1.8, 1),
      told('saddle-numbness', 1.3, 1),
      told(['bilateral-leg-pain', 'leg-pain'], 1.3, 1),
      told(['bladder-disturbance', 'sexual-dysfunction'], 1.5, 0.5),
      told(['neurogenic-claudication', 'fluctuating-symptoms'], 3, 0.95),
      told('fever', 0.4, 1),
      told(['lumbar-puncture-or-epidural', 'ascending-weakness'], 1.5, 1),
    ],
    quantities: [atLeast('csf-white-cells', 10, '10*6/L', 0.4, 1.2)],
    values: [
      // The swelling climbs, into the neck in few.
      reads('mri-cervical-spine', [['cord-lesion-long', 2]]),
      reads('mri-lumbar-spine', [
        ['conus-lesion', 4],
        ['normal', 0.3],
      ]),
      ...(['mri-thoracic-spine', 'mri-whole-spine'] as const).map((result) =>
        reads(result, [
          ['cord-lesion-long', 8],
          ['cord-lesion-short', 0.4],
          ['cord-compression', 0.2],
          ['normal', 0.05],
        ]),
      ),
    ],
    source: cordChapter,
  },
  {
    key: 'syringomyelia',
    group: 'compressive',
    label: 'Syringomyelia',
    mondo: mondo('MONDO:0017987', 'syringomyelia'),
    produces: [
      at(['brachial-plexus', 'ulnar-nerve-elbow', 'spinal-cord-posterolateral'], 'exceptional'),
      inKind(anyCord, 'rare'),
      at(['spinal-cord-hemisection', 'spinal-cord-anterior'], 'uncommon'),
      at(['lower-motor-neuron-system', 'lower-trunk', 'medulla-lateral', 'bulbar-motor-nuclei'], 'rare'),
      at(['spinal-cord-central'], 'very-common'),
      at(['oculosympathetic-chain', 'adjacent-nerve-roots', 'upper-motor-neuron-system'], 'exceptional'),
    ],
    tempo: tempos.chronic,
    age: { from: 8, to: 75, outside: 0.4 },
    courses: { progressive: 1.3 },
    history: [
      // It grows for years after an injury, an operation or an inflammation of the cord's coverings.
      told(['neck-trauma', 'trauma', 'spinal-surgery', 'tuberculosis', 'spina-bifida'], 2.5, 0.97),
      told(['pain-on-straining', 'neck-pain', 'neuropathic-pain'], 1.4, 0.95),
      told(['muscle-thinning', 'arm-weakness'], 1.3, 0.95),
      told(['spinal-fracture'], 6, 0.9),
      told('painless-injury', 5, 0.8),
      told(['altered-sweating', 'headache'], 1.3, 1),
    ],
    signs: [
      showsAt(['inspection/wasting'], ['hand', 'forearm', 'first-web-space'], 1.2, 1),
      shows(['cranial-nerves/horner-syndrome'], 2, 1),
      shows(['inspection/scoliosis'], 3, 0.9),
      shows(['inspection/neuropathic-joint'], 5, 0.95),
    ],
    values: (['mri-cervical-spine', 'mri-thoracic-spine', 'mri-whole-spine'] as const).map((result) =>
      reads(result, [
        ['syrinx', 60],
        ['normal', 0.02],
      ]),
    ),
    source: recalled('brazis', 'central cord'),
  },
  {
    key: 'intramedullary-tumour',
    group: 'neoplastic',
    label: 'Tumour within the spinal cord',
    produces: [
      at(['brachial-plexus', 'cauda-equina', 'polyradiculopathy'], 'exceptional'),
      at(['spinal-cord-central', 'spinal-cord-hemisection'], 'common'),
      inKind(anyCord, 'uncommon'),
      at(
        ['foramen-magnum', 'lower-motor-neuron-system', 'upper-motor-neuron-system', 'adjacent-nerve-roots'],
        'exceptional',
      ),
      at(['meningeal-irritation', 'raised-intracranial-pressure', 'no-lesion'], 'exceptional'),
    ],
    // A few bleed, or swell within days.
    tempo: { hyperacute: 0.03, acute: 0.08, subacute: 0.24, chronic: 0.65 },
    courses: { progressive: 1.6, improving: 0.1 },
    history: [
      told(['bladder-disturbance', 'neuropathic-pain', 'abdominal-pain', 'clumsiness'], 1.2, 1),
      told('fever', 0.4, 1),
      // It grows again years after it was removed.
      told(['spinal-surgery', 'radiotherapy'], 1.5, 1),
      told(['back-pain', 'thoracic-back-pain', 'neck-pain', 'night-spinal-pain'], 1.5, 0.7),
      told(['cancer', 'lymphoma'], 0.9, 1),
      told('family/similar-disorder', 1.4, 1),
    ],
    signs: [
      shows(['inspection/scoliosis'], 2, 1),
      // In children the neck is held askew or stiff, and the back bends, before limbs fail.
      shows(['inspection/head-tilt', 'special-tests/neck-stiffness', 'inspection/kyphosis'], 2, 1),
      shows(['inspection/neurofibromas', 'inspection/cafe-au-lait-spots'], 4, 1),
    ],
    values: (['mri-cervical-spine', 'mri-thoracic-spine', 'mri-whole-spine'] as const).map((result) =>
      reads(result, [
        ['cord-lesion-long', 3],
        ['cord-lesion-short', 1.5],
        ['cord-compression', 0.2],
        ['normal', 0.01],
      ]),
    ),
    source: cordChapter,
  },
  {
    key: 'spinal-meningioma-or-nerve-sheath-tumour',
    group: 'neoplastic',
    label: 'Spinal meningioma or nerve-sheath tumour',
    produces: [
      at(['lower-motor-neuron-system', 'lumbosacral-plexus', 'sciatic-nerve'], 'exceptional'),
      at(['foramen-magnum', 'adjacent-nerve-roots', 'polyradiculopathy'], 'rare'),
      at(['spinal-cord-hemisection', 'spinal-cord-transverse'], 'common'),
      inKind(anyCord, 'uncommon'),
      inKind(['cauda-equina', 'root'], 'uncommon'),
    ],
    tempo: { hyperacute: 0.02, acute: 0.06, subacute: 0.24, chronic: 0.68 },
    // It is mostly found within one or two years.
    durationDays: { to: 2190, outside: 0.4, source: fromMemory },
    courses: { progressive: 1.6, improving: 0.1 },
    age: { from: 12, to: 100, outside: 0.4 },
    sex: { male: 0.7, female: 1.3 },
    history: [
      told('pregnancy', 1.3, 1),
      told('neurofibromatosis', 10, 1),
      told(['radicular-arm-pain', 'radicular-leg-pain', 'tight-band', 'flank-pain'], 1.4, 1),
      told('radiotherapy', 1.5, 1),
      told('fever', 0.3, 1),
      // A pain at one height of the chest, with a root, comes months and years before the legs.
      told(['thoracic-back-pain', 'night-spinal-pain'], 1.4, 1),
      told(['back-pain', 'thoracic-back-pain', 'neck-pain', 'night-spinal-pain'], 1.5, 0.7),
      told(['cancer', 'lymphoma'], 0.6, 1.05),
      told('family/similar-disorder', 1.4, 1),
    ],
    signs: [shows(['inspection/neurofibromas', 'inspection/cafe-au-lait-spots'], 12, 0.95)],
    quantities: [fluidWithoutCells],
    values: [
      ...lesionIsOutside,
      ...anyCordImage.map((result) =>
        reads(result, [
          ['cord-compression', 8],
          ['root-compression', 3],
          ['normal', 0.02],
        ]),
      ),
    ],
    source: cordChapter,
  },
  {
    key: 'thoracic-disc-herniation',
    group: 'compressive',
    label: 'Thoracic disc herniation',
    produces: [
      atRoot('C8', 'exceptional'),
      at(['intercostal-nerves'], 'uncommon'),
      at(['no-lesion'], 'rare'),
      inKind(['cord'], 'uncommon', 'lumbosacral'),
      // One in a million grows ill of it in a year, against some sixty with metastases that press on the cord. Arce 1985, Loblaw 2003 (from memory).
      at(['spinal-cord-hemisection', 'spinal-cord-transverse'], 'uncommon', 'thoracic'),
      at(['conus-medullaris', 'spinal-cord-lateral'], 'rare'),
      inKind(anyCord, 'uncommon', 'thoracic'),
      inKind(['root'], 'uncommon', 'thoracic'),
      atRoot('T1', 'very-common'),
      at(['spinal-cord-posterolateral', 'cauda-equina'], 'exceptional'),
    ],
    age: { from: 20, to: 90, outside: 0.3 },
    // Of those who come to operation a fifth grew weak within days to weeks.
    tempo: { hyperacute: 0.08, acute: 0.2, subacute: 0.3, chronic: 0.42 },
    durationDays: { to: 2190, outside: 0.4, source: fromMemory },
    history: [
      told(['flank-pain', 'abdominal-pain', 'tight-band', 'pain-on-straining'], 1.8, 1),
      told('disc-herniation', 3, 1),
      told(['heavy-exertion', 'trauma'], 1.5, 1),
      told('fever', 0.3, 1),
      told('thoracic-back-pain', 1.5, 1),
      told(['back-pain', 'thoracic-back-pain'], 1.5, 0.7),
      // At the first thoracic root it hurts and behaves as a disc of the neck does.
      told(['radicular-arm-pain', 'neck-pain', 'shoulder-pain'], 1.6, 0.95),
    ],
    signs: [shows(['inspection/abdominal-bulge'], 4, 1)],
    quantities: [fluidWithoutCells],
    values: [
      ...lesionIsOutside,
      ...(['mri-thoracic-spine', 'mri-whole-spine'] as const).map((result) =>
        reads(result, [
          ['cord-compression', 8],
          ['root-compression', 4],
          ['normal', 0.03],
        ]),
      ),
    ],
    source: cordChapter,
  },
];
