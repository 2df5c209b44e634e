import { fromMemory, read, recalled } from '../../kernel/cite.ts';
import { anyHeadache, arterialCortex, brainstemParts, deepHemisphere } from './brain-sites.ts';
import { at, atLeast, type Cause, inKind, reads, shows, tempos, told, under } from './cause.ts';
import { weightLoss } from './complaints.ts';

/** Causes in the brain that are rare at each of their sites, and are thought of because of one sign or of the story. */
export const otherBrainCauses: readonly Cause[] = [
  {
    key: 'opsoclonus-myoclonus-syndrome',
    group: 'paraneoplastic',
    label: 'Opsoclonus-myoclonus syndrome',
    produces: [
      at(['cerebellar-vermis', 'cerebellar-degeneration', 'brainstem-diffuse'], 'uncommon'),
      at(['cerebellar-hemisphere', 'hyperkinetic-syndrome', 'diffuse-encephalopathy', 'flocculonodular-lobe'], 'rare'),
      at(['action-tremor'], 'exceptional'),
    ],
    tempo: { hyperacute: 0.02, acute: 0.38, subacute: 0.52, chronic: 0.08 },
    // Toddlers with a neuroblastoma or after an infection; grown people are fewer.
    age: { from: 0, to: 6, outside: 0.4 },
    history: [
      told('behaviour-change', 2.5, 0.7),
      told(['unsteadiness', 'falls', 'difficulty-walking', 'tremor', 'oscillopsia'], 1.5, 0.7),
      told(['preceding-infection', 'preceding-respiratory-infection', 'cancer'], 2, 0.9),
      told(['family/ataxia', 'family/similar-disorder'], 0.3, 1.05),
      told(['vomiting', 'recent-vaccination'], 1.3, 1),
      told(['immune-checkpoint-inhibitor', 'hiv-infection', 'weight-loss', 'tobacco', 'vertigo'], 1.4, 1),
    ],
    signs: [
      shows(['cranial-nerves/opsoclonus', 'cranial-nerves/ocular-flutter'], 60, 0.3),
      shows(['involuntary-movements/myoclonus'], 6, 0.5),
      shows(['gait/ataxic', 'inspection/titubation', 'gait/unable-to-stand'], 1.3, 0.9),
    ],
    source: recalled('adams-victor', 'opsoclonus-myoclonus'),
  },
  {
    key: 'tuberculoma',
    group: 'infective',
    label: 'Tuberculoma of brain or cord',
    produces: [
      inKind(['hemisphere', 'brainstem', 'cerebellum'], 'rare'),
      at(['raised-intracranial-pressure', 'cavernous-sinus', 'orbital-apex', 'basal-meningeal-process'], 'rare'),
      inKind(['cord'], 'rare'),
      at(['oculomotor-nerve', 'optic-chiasm', 'cerebellopontine-angle'], 'rare'),
      inKind(['multiple-sites'], 'rare'),
      at(['abducens-nerve', 'facial-nerve', 'optic-nerve'], 'exceptional'),
    ],
    tempo: tempos.subacuteOrChronic,
    courses: { progressive: 1.4 },
    history: [
      told('tuberculosis', 15, 0.5),
      told(['travel', 'hiv-infection', 'immunosuppression', 'tnf-inhibitor'], 3, 0.6),
      told(['night-sweats', 'fever', 'chronic-cough', ...weightLoss], 2.5, 0.6),
      told(['seizure', 'headache', 'morning-headache'], 1.5, 0.8),
      told(['chronic-kidney-disease', 'malnutrition', 'diabetes-mellitus', 'face-or-neck-lump'], 1.2, 1),
      told(['livestock-or-raw-milk', 'cancer'], 0.7, 1),
    ],
    values: [
      reads('mri-brain', [
        ['ring-enhancing', 8],
        ['space-occupying', 3],
        ['normal', 0.05],
        ['infarct', 0.1],
      ]),
      reads('ct-head', [['space-occupying', 3]]),
    ],
    source: recalled('tuberculous-meningitis-2002'),
  },
  {
    key: 'manganese-or-toxic-parkinsonism',
    group: 'toxic',
    label: 'Parkinsonism of manganese, carbon monoxide or another poison',
    produces: [
      at(['akinetic-rigid-syndrome', 'frontal-gait-disorder'], 'uncommon'),
      at(['striatum', 'hyperkinetic-syndrome', 'corticobulbar-both-sides'], 'rare'),
      at(['diffuse-encephalopathy', 'cerebellar-degeneration'], 'exceptional'),
    ],
    tempo: tempos.subacute,
    courses: { progressive: 1.1 },
    age: { from: 18, to: 100, outside: 0.3 },
    history: [
      told(
        [
          'manganese',
          'other-heavy-metal',
          'carbon-monoxide',
          'organic-solvents',
          'organophosphate',
          'injecting-drug-use',
          'toxic-alcohol',
          // A liver that does not clear the manganese.
          'chronic-liver-disease',
        ],
        3,
        0.03,
      ),
      told(
        ['manganese', 'other-heavy-metal', 'carbon-monoxide', 'organic-solvents', 'organophosphate', 'toxic-alcohol'],
        8,
        1,
      ),
      told('injecting-drug-use', 4, 1),
      told(['antipsychotic', 'metoclopramide'], 0.5, 1),
      told(['behaviour-change', 'psychiatric-disorder', 'falls'], 1.5, 0.95),
      told(['cocaine-or-stimulants', 'dialysis', 'cardiac-arrest'], 1.4, 1),
    ],
    signs: [
      shows(
        ['gait/dystonic', 'gait/postural-instability', 'inspection/hypomimia', 'cranial-nerves/hypokinetic-dysarthria'],
        1.5,
        1,
      ),
      shows(['involuntary-movements/resting-tremor'], 0.6, 1.1),
    ],
    source: recalled('adams-victor', 'manganese and carbon monoxide'),
  },
  {
    key: 'restless-legs-syndrome',
    group: 'degenerative',
    label: 'Restless legs syndrome',
    produces: [at(['no-lesion'], 'uncommon'), at(['hyperkinetic-syndrome'], 'rare')],
    tempo: tempos.chronic,
    history: [
      told('insomnia', 2.5, 0.8),
      told('restless-legs', 60, 0.01),
      told(['pregnancy', 'chronic-kidney-disease', 'family/similar-disorder'], 2, 0.95),
      told(['antipsychotic', 'metoclopramide'], 1.5, 1),
      told(
        [
          'vitamin-b12-deficiency',
          'known-neuropathy',
          'serotonergic-medicine',
          'parkinson-disease',
          'malabsorption',
          'dialysis',
        ],
        1.3,
        1,
      ),
    ],
    quantities: [under('ferritin', 50, 'ug/L', 2.5, 0.8)],
    source: recalled('adams-victor', 'restless legs'),
  },
  {
    key: 'rickettsial-encephalitis',
    group: 'infective',
    label: 'Scrub typhus or other rickettsial infection of brain and meninges',
    produces: [
      at(['basal-meningeal-process', 'brainstem-diffuse', 'raised-intracranial-pressure'], 'rare'),
      at(['abducens-nerve', 'facial-nerve', 'cochlear-nerve', 'cerebellar-vermis'], 'rare'),
      at(['cerebellar-degeneration', 'akinetic-rigid-syndrome'], 'rare'),
      at(['hyperkinetic-syndrome', 'cerebellar-hemisphere', 'demyelinating-polyradiculoneuropathy'], 'exceptional'),
      at(['oculomotor-nerve', 'optic-nerve', 'action-tremor'], 'exceptional'),
      at(['diffuse-encephalopathy', 'meningeal-irritation'], 'rare'),
    ],
    // A week of fever comes before the head.
    tempo: { hyperacute: 0.02, acute: 0.6, subacute: 0.36, chronic: 0.02 },
    courses: { 'relapsing-remitting': 0.1 },
    history: [
      told('fever', 5, 0.05),
      told(['travel', 'tick-bite'], 6, 0.3),
      told('rash', 3, 0.8),
      told(anyHeadache, 1.6, 0.5),
      told(['hearing-loss', 'muscle-pain', 'breathlessness'], 1.5, 0.95),
      told(['travel', 'tick-bite', 'rash'], 1, 0.3),
      told(['joint-pain', 'abdominal-pain', 'vomiting', 'seizure', 'livestock-or-raw-milk'], 1.1, 1),
    ],
    signs: [
      shows(['autonomic/fever'], 3, 0.3),
      shows(
        ['higher-function/confusion', 'higher-function/drowsiness', 'higher-function/coma', 'higher-function/stupor'],
        2,
        0.6,
      ),
      shows(['inspection/enlarged-lymph-nodes', 'inspection/enlarged-liver-or-spleen'], 2, 0.95),
      shows(['inspection/non-blanching-rash'], 1.6, 1),
    ],
    quantities: [
      under('platelets', 150, '10*9/L', 2, 0.7),
      atLeast('alt', 60, 'U/L', 1.8, 0.7),
      atLeast('csf-white-cells', 1000, '10*6/L', 0.2, 1.02),
    ],
    source: fromMemory,
  },
  {
    key: 'adult-onset-alexander-disease',
    group: 'hereditary',
    inheritance: ['autosomal-dominant'],
    label: 'Alexander disease of later onset',
    produces: [
      at(['bulbar-motor-nuclei', 'brainstem-diffuse', 'corticobulbar-both-sides'], 'rare'),
      at(['spinal-cord-lateral', 'upper-motor-neuron-system', 'cerebellar-degeneration'], 'rare'),
      at(['cerebellar-vermis', 'medulla-half'], 'exceptional'),
    ],
    tempo: tempos.lifelong,
    courses: { progressive: 1.5, improving: 0.05, 'relapsing-remitting': 0.2 },
    age: { from: 12, to: 65, outside: 0.3 },
    history: [
      told(['dysphagia', 'slurred-speech', 'voice-change'], 2, 0.6),
      told(['unsteadiness', 'difficulty-walking', 'bladder-disturbance'], 1.5, 0.8),
      told('family/similar-disorder', 4, 0.7),
      told(['hiccups', 'sleep-apnoea', 'dizziness'], 1.5, 1),
      told(['stroke', 'cancer', 'hypertension'], 0.5, 1),
    ],
    signs: [
      shows(['involuntary-movements/palatal-tremor'], 15, 0.8),
      shows(['plantars/plantar-response', 'clonus/ankle', 'gait/spastic'], 2, 0.7),
      shows(
        ['cranial-nerves/nystagmus', 'gait/ataxic', 'cranial-nerves/dysphonia', 'cranial-nerves/palatal-weakness'],
        1.3,
        1,
      ),
      shows(['inspection/fasciculation', 'autonomic/fever'], 0.4, 1),
    ],
    values: [
      reads('mri-brain', [
        ['white-matter-disease', 3],
        ['infarct', 0.05],
      ]),
      reads('genetic-test', [
        ['other', 30],
        ['negative', 0.1],
      ]),
    ],
    source: fromMemory,
  },
  {
    key: 'hypertrophic-olivary-degeneration',
    group: 'degenerative',
    label: 'Degeneration of the inferior olive after a lesion of brainstem or cerebellum',
    produces: [
      at(['pons-tegmentum', 'midbrain-tegmentum', 'brainstem-diffuse', 'cerebellar-hemisphere'], 'rare'),
      at(['medulla-half', 'medial-longitudinal-fasciculus', 'action-tremor', 'hyperkinetic-syndrome'], 'rare'),
    ],
    // Weeks to a year after the lesion.
    tempo: tempos.subacuteOrChronic,
    courses: { progressive: 1.2, improving: 0.2 },
    age: { from: 25, to: 100, outside: 0.3 },
    history: [
      told(['stroke', 'head-injury', 'recent-surgery'], 6, 0.3),
      told(['oscillopsia', 'tremor'], 2, 0.8),
      told('fever', 0.3, 1),
      told('hypertension', 1.2, 1),
    ],
    signs: [
      shows(['involuntary-movements/palatal-tremor'], 30, 0.1),
      shows(
        [
          'cranial-nerves/pendular-nystagmus',
          'cranial-nerves/vertical-nystagmus',
          'involuntary-movements/action-tremor',
        ],
        2.5,
        1,
      ),
    ],
    source: fromMemory,
  },
  {
    // Of 135 people 80 % had failing kidneys; consciousness falls in 47 %, myoclonus in 42 %, non-convulsive status in 25 %.
    key: 'beta-lactam-encephalopathy',
    group: 'toxic',
    label: 'Encephalopathy from cefepime or another beta-lactam',
    produces: [at(['diffuse-encephalopathy'], 'uncommon'), at(['cortex-middle-cerebral-lower'], 'rare')],
    tempo: tempos.acute,
    age: { from: 40, to: 110, outside: 0.4 },
    history: [
      told('beta-lactam', 25, 0.02),
      told('chronic-kidney-disease', 5, 0.3),
      told(['fever', 'sepsis', 'recent-bacteraemia'], 1.3, 1),
      told(['dialysis', 'seizure', 'speech-difficulty', 'critical-illness'], 1.3, 1),
    ],
    signs: [
      shows(['involuntary-movements/myoclonus', 'involuntary-movements/asterixis'], 2.5, 0.7),
      shows(['higher-function/mutism', 'higher-function/expressive-aphasia', 'higher-function/hallucinations'], 1.6, 1),
    ],
    quantities: [under('egfr', 30, 'mL/min/{1.73_m2}', 4, 0.6)],
    values: [
      reads('eeg', [
        ['status-epilepticus', 3],
        ['epileptiform', 2],
        ['slowing', 1.5],
        ['normal', 0.02],
      ]),
    ],
    source: read('cefepime-2017', 'abstract'),
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
      at(['no-lesion', 'hyperkinetic-syndrome', 'striatum', 'cortex-parietal'], 'rare'),
      inKind(['hemisphere'], 'exceptional'),
      at(['cortex-middle-cerebral-lower', 'cortex-temporal', 'cortex-occipital', 'thalamus'], 'exceptional'),
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
      told(['hyperthyroidism', 'spreading-over-minutes'], 1.3, 1),
      told(['hypertension', 'atrial-fibrillation'], 0.6, 1),
      told(['resolved-deficit', 'sickle-cell-disease', 'neurofibromatosis', 'seizure'], 1.6, 1),
      told(['fever', 'cancer', 'preceding-infection'], 0.6, 1),
    ],
    signs: [
      shows(['inspection/cafe-au-lait-spots', 'inspection/neurofibromas'], 4, 0.95),
      shows(['involuntary-movements/chorea'], 1.5, 1),
    ],
    values: [
      reads('angiography-head-neck', [
        ['moyamoya', 100],
        ['occlusion', 2],
        ['normal', 0.02],
      ]),
    ],
    source: recalled('moyamoya-2009'),
  },
  {
    key: 'hypoglycaemia',
    group: 'metabolic',
    label: 'Hypoglycaemia',
    produces: [
      at([...arterialCortex, ...deepHemisphere, ...brainstemParts], 'rare'),
      at(['diffuse-encephalopathy'], 'uncommon'),
      at(['no-lesion', 'thalamus-and-capsule', 'corticobulbar-both-sides'], 'rare'),
      inKind(['hemisphere'], 'exceptional'),
      at(['brainstem-diffuse', 'hyperkinetic-syndrome'], 'exceptional'),
    ],
    tempo: tempos.sudden,
    courses: { improving: 2, progressive: 0.5 },
    history: [
      told('insulin-or-sulfonylurea', 15, 0.2),
      told('diabetes-mellitus', 3, 0.3),
      told('alcohol-excess', 1.5, 0.95),
      told('seizure', 1.5, 1),
      told(
        [
          'bariatric-surgery',
          'gastrectomy',
          'chronic-liver-disease',
          'sepsis',
          'malnutrition',
          'chronic-kidney-disease',
        ],
        1.8,
        1,
      ),
      told('similar-attacks-before', 1.5, 1),
      told(['altered-sweating', 'tremor', 'resolved-deficit'], 1.5, 1),
      told(['fluoroquinolone', 'beta-blocker', 'behaviour-change', 'loss-of-consciousness'], 1.3, 1),
    ],
    signs: [
      shows(['higher-function/agitation'], 1.5, 1),
      shows(['autonomic/hyperhidrosis', 'autonomic/resting-tachycardia'], 2, 0.8),
      shows(['higher-function/confusion', 'higher-function/inattention', 'higher-function/drowsiness'], 2, 0.6),
    ],
    quantities: [
      // Under 4 it is to be excluded; the brain fails under 3.
      under('glucose-random', 4, 'mmol/L', 8, 0.02, read('nice-ng128', 'exclude hypoglycaemia')),
      under('glucose-random', 3, 'mmol/L', 8, 0.5),
    ],
    source: recalled('nice-ng128', 'exclude hypoglycaemia'),
  },
];
