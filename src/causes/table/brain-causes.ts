import { fromMemory, recalled } from '../../kernel/cite.ts';
import { anyHeadache, arterialCortex, deepHemisphere, hindVisualPathway, lobes } from './brain-sites.ts';
import { at, type Cause, inKind, mondo, reads, shows, tempos, told } from './cause.ts';

const brainChapter = recalled('adams-victor');

/** Tumours of the brain, disorders of the foramen magnum and of the whole cerebellum, and tumours that grow into several sites. */
export const brainCauses: readonly Cause[] = [
  {
    key: 'brain-tumour',
    group: 'neoplastic',
    label: 'Brain tumour (glioma or metastasis)',
    mondo: mondo('MONDO:0021211', 'brain neoplasm'),
    produces: [
      at(['optic-radiation-temporal', 'optic-radiation-parietal', 'raised-intracranial-pressure'], 'very-common'),
      at(['optic-tract'], 'common'),
      at(['cortex-frontal', 'cortex-temporal'], 'very-common'),
      at(['midbrain-dorsal'], 'very-common'),
      at([...arterialCortex, 'cortex-parietal', 'cortex-occipital', ...deepHemisphere], 'common'),
      at(['cortex-parasagittal', 'cerebellar-hemisphere', 'cerebellar-vermis'], 'common'),
      at(
        ['flocculonodular-lobe', 'frontal-gait-disorder', 'diffuse-encephalopathy', 'subthalamic-nucleus'],
        'uncommon',
      ),
      at(['midbrain-tegmentum', 'midbrain-ventral'], 'uncommon'),
      at(['corticobulbar-both-sides', 'medulla-half', 'medulla-medial', 'medulla-lateral', 'foramen-magnum'], 'rare'),
      inKind(['multiple-sites'], 'uncommon'),
      at(['no-lesion'], 'rare'),
      at(['pons-ventral', 'pons-tegmentum', 'pons-lateral', 'brainstem-diffuse', 'meningeal-irritation'], 'rare'),
    ],
    tempo: { hyperacute: 0.02, acute: 0.08, subacute: 0.42, chronic: 0.48 },
    courses: { progressive: 1.8, improving: 0.1, 'relapsing-remitting': 0.1 },
    history: [
      told(anyHeadache, 1.5, 0.8),
      told(['morning-headache', 'vomiting'], 1.6, 0.95),
      told('seizure', 3, 0.85),
      told(['cancer', 'lymphoma'], 4, 0.85),
      told(['behaviour-change', 'cognitive-change'], 1.3, 0.95),
      told('fever', 0.3, 1.1),
      told('resolved-deficit', 0.1, 1),
      told('radiotherapy', 2, 1),
    ],
    signs: [
      shows(['cranial-nerves/optic-disc-swelling'], 5, 0.9),
      shows(['inspection/cafe-au-lait-spots', 'inspection/neurofibromas'], 3, 1),
    ],
    values: [
      reads('mri-brain', [
        ['space-occupying', 20],
        ['ring-enhancing', 6],
        ['normal', 0.02],
        ['infarct', 0.05],
        ['demyelinating-lesions', 0.1],
      ]),
      reads('ct-head', [
        ['space-occupying', 12],
        ['normal', 0.2],
        ['subdural-haematoma', 0.05],
      ]),
      reads('csf-cytology', [['malignant', 1.5]]),
    ],
    source: brainChapter,
  },
  {
    key: 'parasagittal-lesion',
    group: 'neoplastic',
    label: 'Parasagittal or falx meningioma',
    produces: [
      at(['cortex-parasagittal'], 'very-common'),
      at(['cortex-anterior-cerebral', 'cortex-frontal'], 'common'),
      at(['cortex-parietal'], 'uncommon'),
    ],
    tempo: tempos.chronic,
    courses: { progressive: 1.6, improving: 0.1, 'relapsing-remitting': 0.2 },
    age: { from: 35, to: 90, outside: 0.3 },
    sex: { male: 0.65, female: 1.35 },
    history: [
      told(anyHeadache, 1.5, 0.8),
      told('seizure', 3, 0.8),
      told('radiotherapy', 3, 1),
      told('leg-weakness', 1.4, 0.9),
      told(['fever', 'trauma'], 0.4, 1),
    ],
    signs: [shows(['cranial-nerves/optic-disc-swelling'], 2, 0.95), shows(['sphincters/urinary-incontinence'], 1.4, 1)],
    values: [
      reads('mri-brain', [
        ['space-occupying', 20],
        ['normal', 0.01],
        ['infarct', 0.05],
      ]),
      reads('ct-head', [
        ['space-occupying', 15],
        ['normal', 0.1],
      ]),
    ],
    source: recalled('brazis', 'parasagittal syndromes'),
  },
  {
    key: 'central-nervous-system-lymphoma',
    group: 'neoplastic',
    label: 'Lymphoma of the central nervous system',
    produces: [
      at([...lobes, ...deepHemisphere, 'diffuse-encephalopathy'], 'uncommon'),
      at([...hindVisualPathway, 'cerebellar-hemisphere', 'basal-meningeal-process'], 'rare'),
      at(['brainstem-diffuse', 'pons-tegmentum', 'midbrain-tegmentum', 'frontal-gait-disorder'], 'rare'),
      inKind(['multiple-sites'], 'rare'),
    ],
    tempo: tempos.subacute,
    courses: { progressive: 1.8, improving: 0.3 },
    age: { from: 45, to: 85, outside: 0.3 },
    history: [
      told(['behaviour-change', 'cognitive-change'], 2, 0.6),
      told(['hiv-infection', 'immunosuppression'], 5, 0.85),
      told('lymphoma', 8, 0.95),
      told(anyHeadache, 1.4, 0.9),
      told('visual-loss', 1.6, 0.95),
      told('seizure', 0.8, 1.1),
      told(['night-sweats', 'weight-loss'], 1.5, 0.95),
    ],
    values: [
      reads('mri-brain', [
        ['space-occupying', 8],
        ['ring-enhancing', 4],
        ['normal', 0.03],
      ]),
      reads('csf-cytology', [
        ['malignant', 15],
        ['normal', 0.8],
      ]),
      reads('hiv-test', [['positive', 4]]),
    ],
    source: recalled('cns-lymphoma-2017'),
  },
  {
    key: 'brainstem-glioma',
    group: 'neoplastic',
    label: 'Glioma or metastasis of the brainstem',
    produces: [
      at(['pons-ventral', 'pons-tegmentum', 'pons-lateral', 'brainstem-diffuse'], 'common'),
      at(
        ['medulla-half', 'medulla-medial', 'midbrain-tegmentum', 'midbrain-dorsal', 'bulbar-motor-nuclei'],
        'uncommon',
      ),
      at(['medulla-lateral', 'midbrain-ventral', 'foramen-magnum', 'medial-longitudinal-fasciculus'], 'rare'),
    ],
    tempo: tempos.subacuteOrChronic,
    durationDays: { from: 14, outside: 0.3, source: fromMemory },
    courses: { progressive: 2, improving: 0.1, 'relapsing-remitting': 0.1 },
    // Diffuse midline glioma of childhood; in adults gliomas are rarer and metastases take their place.
    age: { from: 3, to: 20, outside: 0.3 },
    history: [
      told(anyHeadache, 1.4, 0.9),
      told(['morning-headache', 'vomiting'], 1.6, 0.9),
      told('cancer', 4, 0.95),
      told('fever', 0.3, 1.1),
      told(['hypertension', 'atrial-fibrillation'], 0.8, 1),
    ],
    signs: [shows(['cranial-nerves/optic-disc-swelling'], 2, 0.95), shows(['inspection/cafe-au-lait-spots'], 3, 1)],
    values: [
      reads('mri-brain', [
        ['space-occupying', 20],
        ['normal', 0.02],
        ['infarct', 0.05],
      ]),
    ],
    source: brainChapter,
  },
  {
    key: 'foramen-magnum-meningioma',
    group: 'neoplastic',
    label: 'Meningioma or other tumour at the foramen magnum',
    produces: [at(['foramen-magnum'], 'very-common'), at(['medulla-half', 'medulla-medial'], 'rare')],
    tempo: tempos.chronic,
    courses: { progressive: 1.6, improving: 0.1, 'relapsing-remitting': 0.4 },
    age: { from: 35, to: 85, outside: 0.3 },
    sex: { male: 0.6, female: 1.4 },
    history: [
      told('neck-pain', 2, 0.6),
      told(['headache', 'pain-on-straining'], 1.4, 0.9),
      told(['trauma', 'neck-trauma', 'rheumatoid-arthritis', 'down-syndrome'], 0.4, 1),
    ],
    values: [
      reads('mri-brain', [
        ['space-occupying', 15],
        ['low-tonsils', 0.1],
        ['normal', 0.03],
      ]),
      reads('mri-cervical-spine', [
        ['cord-compression', 3],
        ['syrinx', 0.3],
        ['normal', 0.1],
      ]),
    ],
    source: recalled('brazis', 'foramen magnum'),
  },
  {
    key: 'chiari-malformation',
    group: 'compressive',
    label: 'Chiari malformation',
    mondo: mondo('MONDO:0000115', 'Chiari malformation'),
    produces: [
      at(['foramen-magnum'], 'very-common'),
      at(['flocculonodular-lobe', 'cerebellar-vermis', 'bulbar-motor-nuclei'], 'uncommon'),
      at(['spinal-cord-central'], 'uncommon', 'cervical'),
      at(['medulla-half'], 'rare'),
    ],
    tempo: tempos.chronic,
    courses: { progressive: 1.2 },
    age: { from: 8, to: 55, outside: 0.4 },
    sex: { male: 0.6, female: 1.4 },
    history: [
      // Headache at the back of the head brought on by coughing.
      told(['pain-on-straining', 'headache', 'neck-pain'], 2.5, 0.4),
      told(['unsteadiness', 'oscillopsia', 'vertigo'], 1.5, 0.9),
      told('dysphagia', 1.4, 0.95),
    ],
    signs: [
      shows(['cranial-nerves/downbeat-nystagmus', 'cranial-nerves/vertical-nystagmus'], 6, 0.8),
      shows(['inspection/scoliosis'], 3, 0.9),
      shows(['special-tests/lhermitte'], 1.3, 1),
    ],
    values: [
      reads('mri-brain', [
        ['low-tonsils', 80],
        ['normal', 0.02],
        ['space-occupying', 0.2],
      ]),
      reads('mri-cervical-spine', [['syrinx', 6]]),
    ],
    source: recalled('chiari-1999'),
  },
  {
    key: 'atlantoaxial-instability',
    group: 'compressive',
    label: 'Atlantoaxial instability or basilar invagination',
    produces: [
      inKind(['cord'], 'uncommon', 'cervical'),
      at(
        ['spinal-cord-transverse', 'spinal-cord-posterolateral', 'spinal-cord-lateral', 'spinal-cord-central'],
        'uncommon',
      ),
      at(['upper-motor-neuron-system', 'motor-neuron-system', 'spinal-cord-posterior', 'medulla-half'], 'rare'),
      at(['foramen-magnum'], 'common'),
      at(['spinal-cord-transverse'], 'uncommon', 'cervical'),
    ],
    tempo: { hyperacute: 0.07, acute: 0.13, subacute: 0.3, chronic: 0.5 },
    courses: { progressive: 1.2 },
    history: [
      told(['ankylosing-spondylitis', 'tuberculosis', 'perinatal-injury', 'lupus'], 2, 1),
      told(['headache', 'falls'], 1.2, 1),
      told('similar-attacks-before', 1.5, 1),
      told(['rheumatoid-arthritis', 'down-syndrome'], 15, 0.4),
      told(['neck-trauma', 'trauma'], 3, 0.9),
      told('neck-pain', 2, 0.5),
      told('electric-shock-on-neck-flexion', 2, 0.9),
    ],
    signs: [shows(['special-tests/lhermitte'], 1.6, 0.95)],
    values: [
      reads('mri-cervical-spine', [
        ['cord-compression', 3],
        ['normal', 0.1],
      ]),
    ],
    source: brainChapter,
  },
  {
    key: 'syringobulbia',
    group: 'compressive',
    label: 'Syringobulbia',
    produces: [
      at(['bulbar-motor-nuclei', 'medulla-half', 'foramen-magnum'], 'uncommon'),
      at(['medulla-lateral', 'medulla-medial'], 'rare'),
    ],
    tempo: tempos.chronic,
    courses: { progressive: 1.4 },
    age: { from: 15, to: 60, outside: 0.4 },
    history: [
      told(['pain-on-straining', 'headache', 'facial-pain'], 1.6, 0.8),
      told('painless-injury', 3, 0.9),
      told(['hypertension', 'atrial-fibrillation'], 0.8, 1),
    ],
    signs: [
      shows(['sensation/pinprick', 'sensation/temperature', 'cranial-nerves/facial-numbness'], 3, 0.3),
      shows(['cranial-nerves/nystagmus', 'cranial-nerves/vertical-nystagmus'], 2, 0.8),
      shows(['inspection/scoliosis'], 2, 0.95),
      shows(['cranial-nerves/horner-syndrome'], 1.3, 1),
    ],
    values: [
      reads('mri-brain', [
        ['low-tonsils', 8],
        ['infarct', 0.05],
        ['normal', 0.1],
      ]),
      reads('mri-cervical-spine', [
        ['syrinx', 30],
        ['normal', 0.2],
      ]),
    ],
    source: recalled('brazis', 'medulla oblongata'),
  },
];
