import { recalled } from '../../kernel/cite.ts';
import { anyHeadache, deepHemisphere, lobes, opticRadiation } from './brain-sites.ts';
import { at, atLeast, type Cause, inKind, mondo, reads, shows, tempos, told, under } from './cause.ts';

const brainChapter = recalled('adams-victor');

/** Infections of the brain that come with failing immunity, with travel or with an animal. */
export const brainInfectionCauses: readonly Cause[] = [
  {
    key: 'progressive-multifocal-leukoencephalopathy',
    group: 'infective',
    label: 'Progressive multifocal leukoencephalopathy',
    produces: [
      at(['optic-radiation-temporal', 'optic-radiation-parietal'], 'uncommon'),
      at([...lobes, ...opticRadiation, 'internal-capsule', 'cerebellar-hemisphere'], 'rare'),
      at(['cortex-hand-area', 'pons-lateral', 'diffuse-encephalopathy'], 'rare'),
      inKind(['multiple-sites'], 'rare'),
      at(
        [
          'thalamus',
          'brainstem-diffuse',
          'pons-ventral',
          'cortex-middle-cerebral-upper',
          'cortex-middle-cerebral-lower',
          'cerebellar-vermis',
        ],
        'rare',
      ),
      inKind(['hemisphere', 'brainstem', 'cerebellum'], 'exceptional'),
    ],
    tempo: tempos.subacute,
    courses: { progressive: 2, improving: 0.2, 'relapsing-remitting': 0.2 },
    age: { from: 18, to: 100, outside: 0.15 },
    history: [
      told(['hiv-infection', 'natalizumab', 'immunosuppression', 'lymphoma', 'sarcoidosis'], 15, 0.16),
      told('natalizumab', 4, 0.95),
      told('fever', 0.3, 1.1),
      told(anyHeadache, 0.6, 1.1),
      told('multiple-sclerosis', 1, 1),
      told(['tacrolimus', 'methotrexate', 'lupus', 'rheumatoid-arthritis', 'leflunomide', 'cancer'], 1.6, 1),
      told(['cognitive-change', 'speech-difficulty', 'clumsiness'], 1.3, 1),
    ],
    values: [
      reads('mri-brain', [
        ['white-matter-disease', 8],
        ['ring-enhancing', 0.2],
        ['normal', 0.02],
      ]),
      reads('csf-microbiology', [
        ['positive', 15],
        ['negative', 0.3],
      ]),
      reads('hiv-test', [['positive', 6]]),
    ],
    source: recalled('pml-2013'),
  },
  {
    key: 'cerebral-toxoplasmosis',
    group: 'infective',
    label: 'Cerebral toxoplasmosis',
    produces: [
      at([...deepHemisphere, ...lobes, 'subthalamic-nucleus'], 'rare'),
      at(['cortex-middle-cerebral-upper', 'cerebellar-hemisphere', 'hyperkinetic-syndrome'], 'rare'),
      at(['diffuse-encephalopathy', 'midbrain-tegmentum', 'akinetic-rigid-syndrome'], 'rare'),
      inKind(['hemisphere', 'brainstem', 'cerebellum', 'multiple-sites'], 'exceptional'),
      at(['raised-intracranial-pressure', ...opticRadiation], 'exceptional'),
    ],
    tempo: tempos.subacute,
    courses: { progressive: 1.5 },
    age: { from: 16, to: 100, outside: 0.3 },
    history: [
      told(['hiv-infection', 'immunosuppression'], 15, 0.16),
      // Nine in ten have HIV, of the population two in a thousand.
      told('hiv-infection', 8, 0.7),
      told(anyHeadache, 2, 0.5),
      told('fever', 2, 0.7),
      told('seizure', 2, 0.9),
      told(['unprotected-sex', 'injecting-drug-use'], 1.6, 0.95),
      told(['tacrolimus', 'lymphoma'], 1.6, 1),
      told(['cognitive-change', 'weight-loss'], 1.3, 1),
      told(['corticosteroid', 'weight-loss', 'travel'], 1.3, 1),
    ],
    values: [
      reads('mri-brain', [
        ['ring-enhancing', 15],
        ['space-occupying', 2],
        ['normal', 0.02],
      ]),
      reads('hiv-test', [
        ['positive', 15],
        ['negative', 0.1],
      ]),
    ],
    source: brainChapter,
  },
  {
    key: 'rabies',
    group: 'infective',
    label: 'Rabies',
    mondo: mondo('MONDO:0019173', 'rabies'),
    produces: [
      at(
        ['diffuse-encephalopathy', 'brainstem-diffuse', 'hyperkinetic-syndrome', 'bulbar-motor-nuclei'],
        'exceptional',
      ),
      // A fifth of patients have the paralytic form, which rises from the bitten limb.
      inKind(['polyradiculoneuropathy', 'anterior-horn', 'root'], 'exceptional'),
    ],
    tempo: tempos.acute,
    durationDays: { to: 30, outside: 0.1, source: recalled('adams-victor', 'rabies') },
    courses: { progressive: 2, improving: 0.1 },
    history: [
      told('animal-bite', 400, 0.1),
      told(['travel', 'venomous-bite', 'animal-bite'], 4, 0.3),
      told(['paraesthesiae', 'neuropathic-pain', 'arm-pain', 'leg-pain'], 1.5, 0.9),
      told('dysphagia', 3, 0.7),
      told('fever', 1.8, 0.5),
      told(['behaviour-change', 'altered-sweating'], 1.6, 0.9),
    ],
    signs: [
      shows(['autonomic/hyperhidrosis', 'cranial-nerves/drooling', 'involuntary-movements/generalised-spasms'], 3, 0.7),
      shows(['involuntary-movements/exaggerated-startle', 'higher-function/hallucinations'], 2, 0.95),
    ],
    source: recalled('adams-victor', 'rabies'),
  },
  {
    key: 'neurocysticercosis',
    group: 'infective',
    label: 'Neurocysticercosis',
    produces: [
      at([...lobes, 'cortex-hand-area', 'raised-intracranial-pressure'], 'rare'),
      at(['midbrain-dorsal', 'basal-meningeal-process'], 'rare'),
      at(
        [
          'cortex-parasagittal',
          'thalamus',
          'internal-capsule',
          'diffuse-encephalopathy',
          'oculomotor-nerve',
          'midbrain-tegmentum',
          'no-lesion',
        ],
        'rare',
      ),
      at(
        ['cortex-middle-cerebral-upper', 'cortex-middle-cerebral', 'brainstem-diffuse', 'meningeal-irritation'],
        'rare',
      ),
      inKind(['cord', 'cauda-equina'], 'rare'),
      inKind(['hemisphere', 'brainstem', 'cerebellum', 'multiple-sites'], 'exceptional'),
      at(['abducens-nerve', 'optic-chiasm', 'frontal-gait-disorder', 'hyperkinetic-syndrome'], 'exceptional'),
    ],
    tempo: tempos.any,
    history: [
      told('raw-meat', 3, 1),
      told('travel', 10, 0.25),
      told('seizure', 5, 0.3),
      told(anyHeadache, 1.5, 0.7),
      told('fever', 0.4, 1.1),
      told(['epilepsy', 'similar-attacks-before', 'vomiting'], 1.4, 1),
      told(['hypertension', 'atrial-fibrillation'], 0.6, 1),
      told(['family/epilepsy', 'family/similar-disorder'], 1.3, 1),
    ],
    quantities: [atLeast('eosinophils', 0.5, '10*9/L', 2, 0.9)],
    values: [
      reads('mri-brain', [
        ['ring-enhancing', 8],
        ['hydrocephalus', 2],
        ['normal', 0.05],
      ]),
      reads('ct-head', [['space-occupying', 2]]),
    ],
    source: recalled('neurocysticercosis-2017'),
  },
  {
    key: 'hiv-associated-brain-disease',
    group: 'infective',
    label: 'Dementia of HIV infection',
    produces: [
      at(['diffuse-encephalopathy'], 'rare'),
      at(['frontal-gait-disorder', 'akinetic-rigid-syndrome', 'cortex-frontal'], 'exceptional'),
    ],
    tempo: tempos.subacuteOrChronic,
    courses: { progressive: 1.3 },
    history: [
      told('hiv-infection', 20, 0.1),
      told(['cognitive-change', 'behaviour-change'], 2.5, 0.3),
      told(['weight-loss', 'unprotected-sex', 'injecting-drug-use'], 1.5, 0.95),
      told(['difficulty-walking', 'clumsiness', 'tremor'], 1.3, 1),
      told(['fever', ...anyHeadache], 0.5, 1.05),
    ],
    signs: [shows(['higher-function/apathy', 'higher-function/executive-dysfunction'], 1.6, 0.9)],
    values: [
      reads('hiv-test', [
        ['positive', 20],
        ['negative', 0.02],
      ]),
      reads('mri-brain', [
        ['white-matter-disease', 2.5],
        ['cortical-atrophy', 1.5],
        ['ring-enhancing', 0.1],
        ['space-occupying', 0.05],
      ]),
    ],
    source: brainChapter,
  },
  {
    key: 'cerebral-malaria',
    group: 'infective',
    label: 'Cerebral malaria',
    produces: [
      at(['diffuse-encephalopathy'], 'uncommon'),
      at(['raised-intracranial-pressure', 'brainstem-diffuse', 'cerebellar-degeneration'], 'exceptional'),
    ],
    tempo: tempos.acute,
    courses: { progressive: 1.5, 'relapsing-remitting': 0.3 },
    history: [
      told('travel', 15, 0.03),
      told('fever', 4, 0.1),
      told('seizure', 1.8, 0.9),
      told([...anyHeadache, 'vomiting', 'muscle-pain', 'dark-urine', 'fatigue'], 1.4, 0.9),
      told('rash', 0.4, 1.02),
    ],
    signs: [
      shows(['autonomic/fever'], 3, 0.4),
      shows(['higher-function/drowsiness', 'higher-function/coma', 'higher-function/confusion'], 2, 0.3),
      shows(
        ['involuntary-movements/posturing', 'inspection/enlarged-liver-or-spleen', 'cranial-nerves/gaze-palsy'],
        1.8,
        1,
      ),
      shows(['special-tests/neck-stiffness'], 0.6, 1.02),
    ],
    quantities: [
      under('platelets', 100, '10*9/L', 2.5, 0.7),
      under('haemoglobin', 100, 'g/L', 1.6, 0.9),
      under('glucose-random', 3, 'mmol/L', 2, 0.95),
      atLeast('csf-white-cells', 5, '10*6/L', 0.2, 1.1),
    ],
    source: brainChapter,
  },
  {
    key: 'neurobrucellosis',
    group: 'infective',
    label: 'Brucellosis of the nervous system',
    produces: [
      at(['basal-meningeal-process', 'meningeal-irritation', 'cochlear-nerve'], 'rare'),
      at(['raised-intracranial-pressure', 'polyradiculopathy', 'abducens-nerve', 'optic-nerve'], 'exceptional'),
      at(['diffuse-encephalopathy', 'demyelinating-polyradiculoneuropathy'], 'exceptional'),
      inKind(['cord', 'cauda-equina', 'hemisphere', 'multiple-sites'], 'exceptional'),
    ],
    tempo: tempos.subacute,
    courses: { progressive: 1.2 },
    history: [
      told('brucellosis', 40, 0.9),
      told('livestock-or-raw-milk', 15, 0.5),
      told('travel', 5, 0.5),
      told('fever', 3, 0.4),
      told(['night-sweats', 'weight-loss', 'fatigue'], 2.5, 0.6),
      told(['joint-pain', 'back-pain', 'muscle-pain'], 2, 0.7),
      told(['hearing-loss', 'tinnitus'], 2.5, 0.85),
      told(anyHeadache, 1.4, 0.8),
    ],
    quantities: [atLeast('csf-white-cells', 5, '10*6/L', 2, 0.1), atLeast('csf-protein', 0.6, 'g/L', 1.6, 0.5)],
    source: brainChapter,
  },
];
