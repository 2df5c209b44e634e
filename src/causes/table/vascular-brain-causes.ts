import { fromMemory, read, recalled } from '../../kernel/cite.ts';
import {
  anyHeadache,
  arterialCortex,
  brainstemParts,
  cognitiveDecline,
  cortex,
  deepHemisphere,
  hindVisualPathway,
  lobes,
  medulla,
  opticRadiation,
} from './brain-sites.ts';
import { at, atLeast, type Cause, inKind, mondo, reads, shows, tempos, told } from './cause.ts';

const strokeGuideline = read('nice-ng128');

const vascularRisk = [
  'hypertension',
  'hyperlipidaemia',
  'diabetes-mellitus',
  'peripheral-arterial-disease',
  'ischaemic-heart-disease',
  'stroke',
  'transient-ischaemic-attack',
] as const;

/** Disease of the arteries and veins of the brain, and bleeding inside the skull. */
export const vascularBrainCauses: readonly Cause[] = [
  {
    key: 'ischaemic-stroke',
    group: 'vascular',
    label: 'Ischaemic stroke',
    mondo: mondo('MONDO:1060198', 'ischemic stroke'),
    produces: [
      at(['optic-tract', 'optic-radiation-temporal', 'optic-radiation-parietal'], 'very-common'),
      at(['vestibular-nerve'], 'uncommon'),
      at(['oculomotor-nerve', 'abducens-nerve', 'oculosympathetic-chain', 'raised-intracranial-pressure'], 'rare'),
      at([...cortex, ...deepHemisphere, ...brainstemParts, ...hindVisualPathway], 'very-common'),
      at(['corticobulbar-both-sides', 'cerebellar-hemisphere'], 'very-common'),
      at(['brainstem-diffuse'], 'very-common'),
      at(['cerebellar-vermis'], 'common'),
      at(['subthalamic-nucleus', 'flocculonodular-lobe', 'cortex-parasagittal', 'vestibular-nerve'], 'uncommon'),
      at(['bulbar-motor-nuclei', 'diffuse-encephalopathy'], 'rare'),
      inKind(['multiple-sites'], 'common'),
    ],
    // Of one in five the hour is not known, for they woke with it; others come in steps.
    tempo: { hyperacute: 0.74, acute: 0.21, subacute: 0.04, chronic: 0.01 },
    courses: { progressive: 0.4, 'relapsing-remitting': 0.5 },
    age: { from: 45, to: 110, outside: 0.35 },
    history: [
      told('atrial-fibrillation', 3, 0.9),
      told(vascularRisk, 1.6, 0.7),
      told('hypertension', 1.4, 0.9),
      told('tobacco', 1.3, 0.95),
      told('seizure', 0.5, 1),
      told('fever', 0.5, 1),
      told('spreading-over-minutes', 0.4, 1),
      told('resolved-deficit', 0.3, 1),
    ],
    signs: [shows(['involuntary-movements/palatal-tremor'], 4, 1), shows(['autonomic/arrhythmia'], 2, 0.95)],
    values: [
      reads('mri-brain', [
        ['infarct', 15],
        ['normal', 0.15],
        ['small-vessel-disease', 1.3],
        ['space-occupying', 0.1],
        ['haemorrhage', 0.05],
        ['microbleeds', 0.3],
        ['demyelinating-lesions', 0.2],
      ]),
      reads('ct-head', [
        ['infarct', 8],
        ['haemorrhage', 0.02],
        ['subdural-haematoma', 0.05],
        ['space-occupying', 0.1],
      ]),
      reads('angiography-head-neck', [
        ['occlusion', 8],
        ['stenosis', 3],
      ]),
      reads('ecg', [['atrial-fibrillation', 3]]),
    ],
    source: strokeGuideline,
  },
  {
    key: 'cervical-artery-dissection-stroke',
    group: 'vascular',
    label: 'Stroke from dissection of a carotid or vertebral artery',
    produces: [
      at(['cerebellar-hemisphere'], 'common'),
      at(['brainstem-diffuse', 'internal-capsule', 'spinal-cord-anterior', 'cerebellar-vermis'], 'rare'),
      at(medulla, 'common'),
      at(['cerebellar-hemisphere', 'pons-lateral', 'cortex-middle-cerebral', 'cortex-posterior-cerebral'], 'uncommon'),
      at(['cortex-middle-cerebral-upper', 'cortex-middle-cerebral-lower', 'cortex-anterior-cerebral'], 'uncommon'),
      inKind(['hemisphere', 'brainstem', 'cerebellum', 'multiple-sites'], 'rare'),
    ],
    tempo: tempos.suddenOrAcute,
    courses: { progressive: 0.5 },
    // About a fifth of strokes under 45 years and 2 % of all (a review of its risk factors, PMC3026338).
    age: { from: 15, to: 60, outside: 0.15 },
    history: [
      // Headache or neck pain in 65 to 95 %.
      told(['neck-pain', ...anyHeadache, 'facial-pain', 'eye-pain'], 3, 0.25),
      told('neck-pain', 4, 0.7),
      told(['neck-trauma', 'trauma'], 6, 0.7),
      told('migraine', 1.5, 0.95),
      told('preceding-infection', 1.5, 1),
      told('atrial-fibrillation', 0.3, 1),
    ],
    // Part of the Horner syndromes belongs to the medulla itself, so the sign counts for little here.
    signs: [shows(['cranial-nerves/horner-syndrome'], 2, 0.8)],
    values: [
      reads('angiography-head-neck', [
        ['dissection', 80],
        ['normal', 0.1],
      ]),
      reads('mri-brain', [['infarct', 8]]),
    ],
    source: read('cervical-dissection-2022', 'abstract'),
  },
  {
    key: 'intracerebral-haemorrhage',
    group: 'vascular',
    label: 'Intracerebral haemorrhage',
    mondo: mondo('MONDO:0013792', 'intracerebral hemorrhage'),
    produces: [
      at(['optic-tract', 'optic-radiation-temporal', 'optic-radiation-parietal'], 'common'),
      at(['raised-intracranial-pressure'], 'uncommon'),
      at([...deepHemisphere, 'cerebellar-hemisphere', 'pons-ventral', 'pons-tegmentum'], 'common'),
      at([...cortex, ...opticRadiation, 'cerebellar-vermis', 'brainstem-diffuse'], 'common'),
      at(['midbrain-tegmentum', 'midbrain-ventral', 'midbrain-dorsal', 'pons-lateral'], 'uncommon'),
      at(['raised-intracranial-pressure', 'subthalamic-nucleus', 'optic-tract', 'meningeal-irritation'], 'uncommon'),
      at(['corticobulbar-both-sides', ...medulla, 'medial-longitudinal-fasciculus', 'diffuse-encephalopathy'], 'rare'),
    ],
    tempo: tempos.sudden,
    courses: { 'relapsing-remitting': 0.2 },
    age: { from: 45, to: 110, outside: 0.4 },
    history: [
      told(anyHeadache, 2.5, 0.6),
      told(['anticoagulant', 'bleeding-disorder'], 3, 0.9),
      told('hypertension', 1.6, 0.8),
      told('vomiting', 2.5, 0.8),
      told('cocaine-or-stimulants', 3, 0.95),
      told('alcohol-excess', 1.5, 0.95),
      told('resolved-deficit', 0.15, 1),
    ],
    signs: [
      shows(['involuntary-movements/palatal-tremor'], 4, 1),
      shows(['higher-function/coma', 'higher-function/drowsiness'], 2, 0.8),
    ],
    values: [
      reads(
        'ct-head',
        [
          ['haemorrhage', 60],
          ['normal', 0.01],
          ['incidental', 0.01],
          ['infarct', 0.05],
        ],
        strokeGuideline,
      ),
      reads('mri-brain', [
        ['haemorrhage', 40],
        ['normal', 0.02],
        ['infarct', 0.1],
      ]),
    ],
    source: strokeGuideline,
  },
  {
    key: 'cerebral-amyloid-angiopathy',
    group: 'vascular',
    label: 'Cerebral amyloid angiopathy',
    mondo: mondo('MONDO:0005620', 'cerebral amyloid angiopathy'),
    produces: [at([...cortex, ...opticRadiation], 'uncommon'), at(['diffuse-encephalopathy', 'no-lesion'], 'uncommon')],
    tempo: tempos.suddenOrAcute,
    age: { from: 55, to: 110, outside: 0.03 },
    history: [
      told('spreading-over-minutes', 3, 0.95),
      told('similar-attacks-before', 1.8, 0.9),
      told(cognitiveDecline, 1.8, 0.8),
      told(anyHeadache, 1.3, 0.9),
      told('anticoagulant', 1.3, 0.95),
    ],
    values: [
      reads(
        'mri-brain',
        [
          ['microbleeds', 40],
          ['haemorrhage', 6],
          ['normal', 0.02],
          ['infarct', 0.2],
        ],
        recalled('boston-criteria-2022'),
      ),
      reads('ct-head', [
        ['haemorrhage', 10],
        ['subarachnoid-haemorrhage', 3],
      ]),
    ],
    source: recalled('boston-criteria-2022'),
  },
  {
    key: 'cavernous-malformation',
    group: 'vascular',
    label: 'Cavernous malformation',
    produces: [
      inKind(['cord'], 'rare'),
      at(['conus-medullaris', 'spinal-cord-central', 'spinal-cord-hemisection'], 'uncommon'),
      at(['abducens-nerve', 'facial-nerve', 'trigeminal-nerve', 'cerebellopontine-angle', 'oculomotor-nerve'], 'rare'),
      at([...brainstemParts, 'brainstem-diffuse'], 'uncommon'),
      at([...lobes, ...deepHemisphere, 'cerebellar-hemisphere', 'cerebellar-vermis'], 'uncommon'),
      at([...arterialCortex, 'bulbar-motor-nuclei'], 'rare'),
    ],
    // Small bleeds add up: steps of days, or a deficit that grows for months.
    tempo: { hyperacute: 0.12, acute: 0.33, subacute: 0.3, chronic: 0.25 },
    courses: { 'relapsing-remitting': 2, progressive: 1 },
    age: { from: 10, to: 65, outside: 0.4 },
    history: [
      told('seizure', 3, 0.85),
      told(anyHeadache, 1.4, 0.8),
      told(['family/similar-disorder', 'family/epilepsy', 'family/stroke'], 2, 0.95),
      told('radiotherapy', 2, 1),
    ],
    signs: [shows(['involuntary-movements/palatal-tremor'], 4, 1)],
    values: [
      reads('mri-brain', [
        ['cavernous-malformation', 80],
        ['haemorrhage', 4],
        ['normal', 0.02],
        ['infarct', 0.1],
      ]),
    ],
    source: recalled('cavernoma-2012'),
  },
  {
    key: 'transient-ischaemic-attack',
    group: 'vascular',
    label: 'Transient ischaemic attack',
    mondo: mondo('MONDO:0005264', 'transient ischemic attack'),
    produces: [
      at(['retina', 'optic-tract', 'optic-radiation-temporal', 'optic-radiation-parietal'], 'uncommon'),
      at(['no-lesion'], 'very-common'),
      at([...arterialCortex, ...deepHemisphere, ...brainstemParts], 'uncommon'),
    ],
    tempo: tempos.sudden,
    courses: { improving: 6, static: 0.1, progressive: 0.05 },
    age: { from: 45, to: 110, outside: 0.3 },
    history: [
      told('resolved-deficit', 8, 0.05),
      told(vascularRisk, 1.6, 0.7),
      told('atrial-fibrillation', 1.9, 0.9),
      told(['speech-difficulty', 'slurred-speech', 'weakness', 'arm-weakness', 'transient-visual-loss'], 1.8, 0.6),
      told(['loss-of-consciousness', 'seizure'], 0.2, 1.1),
      told('spreading-over-minutes', 0.3, 1.1),
      told('syncope', 0.3, 1),
      told('cognitive-change', 0.1, 1),
    ],
    signs: [
      // What is still found has not gone.
      shows(
        [
          'cranial-nerves/lower-facial-weakness',
          'higher-function/expressive-aphasia',
          'higher-function/receptive-aphasia',
          'higher-function/global-aphasia',
          'higher-function/neglect',
          'cranial-nerves/homonymous-hemianopia',
          'power/finger-abduction',
          'power/elbow-extension',
          'power/hip-flexion',
          'power/ankle-dorsiflexion',
        ],
        0.2,
        1.2,
      ),
    ],
    values: [
      reads('mri-brain', [
        ['normal', 1.3],
        ['space-occupying', 0.1],
      ]),
      reads('ct-head', [
        ['haemorrhage', 0.02],
        ['subdural-haematoma', 0.1],
      ]),
      reads('angiography-head-neck', [['stenosis', 1.9]]),
    ],
    source: strokeGuideline,
  },
  {
    key: 'subdural-haematoma',
    group: 'vascular',
    label: 'Subdural haematoma',
    produces: [
      at(['raised-intracranial-pressure'], 'uncommon'),
      at(['cortex-middle-cerebral', 'cortex-middle-cerebral-upper', 'internal-capsule'], 'uncommon'),
      at(['cortex-frontal', 'cortex-parietal', 'cortex-temporal', 'cortex-hand-area'], 'uncommon'),
      at(['cortex-middle-cerebral-lower', 'cortex-anterior-cerebral', 'cortex-parasagittal'], 'uncommon'),
      at(['diffuse-encephalopathy', 'raised-intracranial-pressure', 'frontal-gait-disorder'], 'uncommon'),
      // Pressed from without, the hemisphere can look like a deep lesion.
      at(['thalamus-and-capsule', 'thalamus', 'striatum', 'akinetic-rigid-syndrome', 'oculomotor-nerve'], 'rare'),
    ],
    tempo: tempos.acuteOrSubacute,
    age: { from: 60, to: 110, outside: 0.3 },
    history: [
      // A fall in 57 %, antithrombotic treatment in a third; no injury remembered in 30 to 50 %.
      told('head-injury', 9, 0.6),
      told(['trauma', 'falls'], 4, 0.6),
      told(['anticoagulant', 'bleeding-disorder', 'antiplatelet'], 3, 0.8),
      told(anyHeadache, 1.8, 0.7),
      told('alcohol-excess', 2.5, 0.9),
      told(['fluctuating-symptoms', 'cognitive-change'], 1.6, 0.9),
    ],
    signs: [
      shows(
        ['higher-function/confusion', 'higher-function/drowsiness', 'higher-function/fluctuating-consciousness'],
        2.5,
        0.7,
      ),
    ],
    values: [
      reads('ct-head', [
        ['subdural-haematoma', 80],
        ['normal', 0.02],
        ['infarct', 0.1],
      ]),
      reads('mri-brain', [['normal', 0.02]]),
    ],
    source: read('subdural-2002', 'abstracts'),
  },
  {
    key: 'cerebral-venous-thrombosis',
    group: 'vascular',
    label: 'Cerebral venous thrombosis',
    mondo: mondo('MONDO:0017993', 'cerebral sinovenous thrombosis'),
    produces: [
      at(['raised-intracranial-pressure'], 'common'),
      // Some have a headache and no sign at all.
      at(['meningeal-irritation', 'abducens-nerve', 'no-lesion'], 'rare'),
      at(['cortex-parasagittal', 'raised-intracranial-pressure'], 'common'),
      at([...cortex, 'thalamus', 'diffuse-encephalopathy'], 'uncommon'),
    ],
    tempo: tempos.acuteOrSubacute,
    courses: { progressive: 1.3 },
    age: { from: 15, to: 60, outside: 0.3 },
    // Three women to one man.
    sex: { male: 0.5, female: 1.5 },
    history: [
      told(anyHeadache, 3, 0.15),
      told('seizure', 4, 0.8),
      told('hormonal-contraceptive', 6, 0.8),
      told('pregnancy', 8, 0.9),
      told(['cancer', 'lupus', 'inflammatory-bowel-disease', 'recent-bacteraemia'], 2, 0.95),
      told('fever', 0.6, 1),
    ],
    signs: [
      shows(['cranial-nerves/optic-disc-swelling'], 6, 0.7),
      shows(['higher-function/drowsiness', 'higher-function/confusion'], 1.5, 0.9),
    ],
    values: [
      reads('mri-brain', [
        ['venous-thrombosis', 80],
        ['haemorrhage', 3],
        ['normal', 0.05],
      ]),
      reads('ct-head', [['haemorrhage', 2]]),
      reads('antiphospholipid-antibody', [['positive', 3]]),
    ],
    source: read('venous-thrombosis-2012', 'abstract: 3 to 1 female, contraceptives and puerperium'),
  },
  {
    key: 'cerebellar-haemorrhage-or-infarct-with-swelling',
    group: 'vascular',
    label: 'Cerebellar haemorrhage or swelling infarct',
    produces: [
      at(['cerebellar-hemisphere', 'cerebellar-vermis'], 'common'),
      at(['flocculonodular-lobe', 'raised-intracranial-pressure', 'brainstem-diffuse'], 'uncommon'),
    ],
    tempo: tempos.sudden,
    courses: { progressive: 1.5, 'relapsing-remitting': 0.1 },
    age: { from: 45, to: 110, outside: 0.4 },
    history: [
      told(anyHeadache, 2.5, 0.5),
      told('vomiting', 2.5, 0.5),
      told(['vertigo', 'continuous-vertigo'], 1.3, 0.9),
      told(['anticoagulant', 'bleeding-disorder'], 2, 0.95),
      told('hypertension', 1.4, 0.9),
    ],
    signs: [
      shows(['higher-function/drowsiness', 'higher-function/coma'], 4, 0.7),
      shows(['gait/unable-to-stand', 'gait/unable-to-walk'], 2, 0.7),
    ],
    values: [
      reads('ct-head', [
        ['haemorrhage', 15],
        ['infarct', 5],
        ['hydrocephalus', 6],
      ]),
    ],
    source: strokeGuideline,
  },
  {
    key: 'cns-vasculitis',
    group: 'immune',
    label: 'Vasculitis of the central nervous system',
    mondo: mondo('MONDO:0003346', 'central nervous system vasculitis'),
    produces: [
      inKind(['hemisphere', 'brainstem'], 'rare'),
      at(['diffuse-encephalopathy'], 'uncommon'),
      inKind(['multiple-sites'], 'uncommon'),
    ],
    tempo: tempos.subacute,
    courses: { progressive: 1.5, 'relapsing-remitting': 1.5 },
    history: [
      told(anyHeadache, 2, 0.4),
      told(cognitiveDecline, 2, 0.6),
      told(['stroke', 'similar-attacks-before'], 2, 0.9),
      told(['vasculitis', 'lupus', 'rheumatoid-arthritis', 'sjogren-syndrome', 'cryoglobulinaemia'], 8, 0.9),
      told('cocaine-or-stimulants', 2, 1),
      told('herpes-zoster', 3, 1),
    ],
    quantities: [atLeast('csf-white-cells', 10, '10*6/L', 4, 0.4, recalled('cns-vasculitis-2011'))],
    values: [
      reads('angiography-head-neck', [
        ['multifocal-narrowing', 20],
        ['normal', 0.5],
      ]),
      reads('mri-brain', [
        ['infarct', 2],
        ['normal', 0.05],
      ]),
    ],
    source: recalled('cns-vasculitis-2011'),
  },
  {
    key: 'cadasil',
    group: 'hereditary',
    label: 'CADASIL (arteriopathy from NOTCH3)',
    inheritance: ['autosomal-dominant'],
    produces: [
      at(['internal-capsule', 'thalamus', 'thalamus-and-capsule', 'pons-ventral'], 'rare'),
      at(['corticobulbar-both-sides', 'diffuse-encephalopathy', 'frontal-gait-disorder'], 'rare'),
    ],
    tempo: tempos.steps,
    age: { from: 25, to: 65, outside: 0.2 },
    history: [
      told('migraine', 3, 0.7),
      told(['stroke', 'transient-ischaemic-attack'], 3, 0.7),
      told(['family/similar-disorder', 'family/stroke', 'family/dementia', 'family/migraine'], 8, 0.2),
      told(cognitiveDecline, 2, 0.8),
      told('hypertension', 0.6, 1.2),
    ],
    values: [
      reads('mri-brain', [
        ['white-matter-disease', 12],
        ['small-vessel-disease', 6],
        ['normal', 0.02],
      ]),
      reads('genetic-test', [
        ['other', 8],
        ['negative', 0.03],
      ]),
    ],
    source: read('cadasil-gene-reviews', 'clinical description: ischaemia in 85 %, mean age 47'),
  },
  {
    key: 'reversible-cerebral-vasoconstriction',
    group: 'vascular',
    label: 'Reversible cerebral vasoconstriction syndrome',
    produces: [at([...cortex, 'internal-capsule'], 'rare'), at(['no-lesion'], 'uncommon')],
    tempo: tempos.suddenOrAcute,
    age: { from: 20, to: 60, outside: 0.3 },
    sex: { male: 0.6, female: 1.4 },
    history: [
      told('thunderclap-headache', 20, 0.08),
      told('similar-attacks-before', 1.9, 0.8),
      told('pregnancy', 1.9, 0.95),
      told('cocaine-or-stimulants', 1.9, 0.9),
      told('migraine', 1.5, 0.95),
      told('fever', 0.3, 1),
    ],
    quantities: [atLeast('csf-white-cells', 10, '10*6/L', 0.3, 1.3, recalled('rcvs-2012'))],
    values: [
      reads('angiography-head-neck', [
        ['multifocal-narrowing', 20],
        ['normal', 0.3],
        ['aneurysm', 0.2],
      ]),
    ],
    source: read('rcvs-2012', 'abstract: more than half after childbirth or drugs'),
  },
  {
    key: 'posterior-reversible-encephalopathy',
    group: 'vascular',
    label: 'Posterior reversible encephalopathy syndrome',
    produces: [
      at(['optic-radiation-temporal', 'optic-radiation-parietal'], 'uncommon'),
      at(
        [
          'cortex-occipital',
          'diffuse-encephalopathy',
          'cortex-posterior-cerebral',
          ...opticRadiation,
          'cortex-parietal',
        ],
        'uncommon',
      ),
    ],
    tempo: tempos.suddenOrAcute,
    courses: { improving: 1.5, 'relapsing-remitting': 0.2 },
    sex: { male: 0.6, female: 1.4 },
    // Seizures in 50 %, a hypertensive crisis in 46 %, loss of vision told by 10 %.
    history: [
      told('seizure', 5, 0.5),
      told(anyHeadache, 2, 0.5),
      told('visual-loss', 2, 0.9),
      told('pregnancy', 6, 0.95),
      told(['tacrolimus', 'immunosuppression', 'chronic-kidney-disease', 'lupus'], 5, 0.6),
      told('hypertension', 2, 0.7),
    ],
    quantities: [atLeast('systolic-pressure-supine', 160, 'mm[Hg]', 4, 0.5, fromMemory)],
    signs: [
      shows(['higher-function/confusion', 'higher-function/drowsiness'], 1.5, 0.6),
      shows(['autonomic/paroxysmal-hypertension', 'autonomic/blood-pressure-lability'], 2, 1),
    ],
    values: [
      reads('mri-brain', [
        ['posterior-oedema', 60],
        ['normal', 0.1],
        ['infarct', 0.2],
      ]),
    ],
    source: read('pres-2021', 'abstract'),
  },
  {
    key: 'hypertensive-encephalopathy',
    group: 'vascular',
    label: 'Hypertensive encephalopathy',
    produces: [
      at(['raised-intracranial-pressure'], 'uncommon'),
      at(['diffuse-encephalopathy', 'raised-intracranial-pressure'], 'uncommon'),
      at(['cortex-occipital'], 'rare'),
    ],
    tempo: tempos.acute,
    history: [
      told('hypertension', 4, 0.4),
      told(anyHeadache, 2, 0.4),
      told('chronic-kidney-disease', 2, 0.9),
      told('visual-loss', 2, 0.8),
      told('vomiting', 1.5, 0.8),
      told('fever', 0.4, 1),
    ],
    signs: [shows(['cranial-nerves/optic-disc-swelling'], 6, 0.6)],
    // Above about 180/120 mmHg with damage of an organ it is an emergency.
    quantities: [atLeast('systolic-pressure-supine', 180, 'mm[Hg]', 12, 0.1, fromMemory)],
    values: [reads('mri-brain', [['posterior-oedema', 8]])],
    source: recalled('adams-victor', 'hypertensive encephalopathy'),
  },
  {
    key: 'moyamoya',
    group: 'vascular',
    label: 'Moyamoya disease or syndrome',
    produces: [
      at(
        ['cortex-middle-cerebral', 'cortex-middle-cerebral-upper', 'cortex-anterior-cerebral', 'internal-capsule'],
        'rare',
      ),
      at(['cortex-hand-area', 'cortex-parasagittal', 'cortex-frontal'], 'rare'),
    ],
    tempo: tempos.suddenOrAcute,
    courses: { 'relapsing-remitting': 3 },
    // Two peaks of onset, about 5 and about 40 years.
    age: { from: 1, to: 55, outside: 0.1 },
    sex: { male: 0.7, female: 1.3 },
    history: [
      told('similar-attacks-before', 6, 0.6),
      told(['transient-ischaemic-attack', 'stroke'], 2, 0.8),
      told(['down-syndrome', 'radiotherapy'], 6, 0.95),
      told(anyHeadache, 1.3, 0.9),
      told(['family/similar-disorder', 'family/stroke'], 2, 0.95),
    ],
    signs: [shows(['inspection/cafe-au-lait-spots', 'inspection/neurofibromas'], 4, 0.95)],
    values: [
      reads('angiography-head-neck', [
        ['moyamoya', 100],
        ['occlusion', 2],
        ['normal', 0.02],
      ]),
    ],
    source: recalled('moyamoya-2009'),
  },
];
