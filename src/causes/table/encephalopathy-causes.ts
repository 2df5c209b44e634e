import { commonPractice, read, recalled } from '../../kernel/cite.ts';
import { anyHeadache, arterialCortex, brainstemParts, cortex, deepHemisphere } from './brain-sites.ts';
import { at, atLeast, type Cause, inKind, mondo, reads, shows, tempos, told, under } from './cause.ts';

const _metabolicChapter = recalled('adams-victor', 'acquired metabolic disorders');

const clouded = ['higher-function/confusion', 'higher-function/inattention', 'higher-function/drowsiness'] as const;

const flap = ['involuntary-movements/asterixis', 'involuntary-movements/myoclonus'] as const;

const lobesOfFits = ['cortex-frontal', 'cortex-temporal', 'cortex-parietal', 'cortex-occipital'] as const;
const middle = ['cortex-middle-cerebral', 'cortex-middle-cerebral-upper', 'cortex-middle-cerebral-lower'] as const;
const epilepticCortex = [...lobesOfFits, ...middle] as const;

/** Failure of the whole brain from metabolism, poison, want of oxygen or injury, and the disorders that such failure leaves. */
export const encephalopathyCauses: readonly Cause[] = [
  {
    key: 'metabolic-encephalopathy',
    group: 'metabolic',
    label: 'Metabolic encephalopathy (sodium, glucose, calcium, urea, carbon dioxide, thyroid)',
    produces: [at(['diffuse-encephalopathy'], 'very-common'), at(['hyperkinetic-syndrome'], 'rare')],
    tempo: tempos.acuteOrSubacute,
    history: [
      told('fever', 0.5, 1.05),
      told(['chronic-kidney-disease', 'diabetes-mellitus', 'hypothyroidism', 'heart-failure'], 2, 0.8),
      told(['diuretic', 'vomiting', 'corticosteroid'], 1.8, 0.9),
      told(['breathlessness', 'cancer'], 1.4, 0.95),
      told('head-injury', 0.4, 1),
    ],
    signs: [
      shows(flap, 3, 0.7),
      shows(clouded, 1.5, 0.4),
      shows(
        ['higher-function/expressive-aphasia', 'higher-function/neglect', 'cranial-nerves/homonymous-hemianopia'],
        0.2,
        1,
      ),
    ],
    quantities: [
      under('sodium', 125, 'mmol/L', 8, 0.8),
      atLeast('sodium', 155, 'mmol/L', 8, 0.95),
      atLeast('urea-nitrogen', 25, 'mmol/L', 6, 0.8),
      atLeast('calcium', 3, 'mmol/L', 8, 0.9),
      atLeast('glucose-random', 25, 'mmol/L', 5, 0.9),
    ],
    values: [
      reads('eeg', [
        ['slowing', 2],
        ['normal', 0.3],
        ['status-epilepticus', 0.1],
      ]),
      reads('mri-brain', [
        ['encephalitis', 0.1],
        ['demyelinating-lesions', 0.2],
        ['venous-thrombosis', 0.1],
      ]),
    ],
    source: recalled('delirium-2014'),
  },
  {
    key: 'septic-encephalopathy',
    group: 'infective',
    label: 'Encephalopathy of infection outside the brain (delirium)',
    produces: [at(['diffuse-encephalopathy'], 'very-common')],
    tempo: tempos.acute,
    courses: { 'relapsing-remitting': 0.7 },
    history: [
      told('sepsis', 10, 0.6),
      told('fever', 3, 0.6),
      told(['critical-illness', 'recent-bacteraemia', 'recent-surgery'], 3, 0.9),
      told('dementia', 1.8, 0.9),
      told('seizure', 0.5, 1),
    ],
    signs: [
      shows(['autonomic/fever', 'autonomic/resting-tachycardia'], 3, 0.6),
      shows(['higher-function/fluctuating-consciousness', 'higher-function/inattention'], 1.8, 0.7),
      shows(['special-tests/neck-stiffness'], 0.4, 1),
      shows(
        ['higher-function/receptive-aphasia', 'higher-function/expressive-aphasia', 'higher-function/amnesia'],
        0.2,
        1,
      ),
    ],
    quantities: [
      atLeast('crp', 50, 'mg/L', 3, 0.4),
      atLeast('csf-white-cells', 5, '10*6/L', 0.1, 1.5, recalled('septic-encephalopathy-2012')),
    ],
    values: [
      reads('eeg', [
        ['slowing', 1.8],
        ['normal', 0.4],
      ]),
      reads('mri-brain', [
        ['encephalitis', 0.1],
        ['demyelinating-lesions', 0.2],
        ['venous-thrombosis', 0.1],
      ]),
    ],
    source: recalled('septic-encephalopathy-2012'),
  },
  {
    key: 'toxic-encephalopathy',
    group: 'toxic',
    label: 'Encephalopathy from a medicine, drug, alcohol or its withdrawal',
    produces: [
      at(['frontal-gait-disorder', 'striatum', 'akinetic-rigid-syndrome'], 'uncommon'),
      at(['cortex-middle-cerebral-lower', 'cortex-temporal', 'cortex-frontal'], 'rare'),
      at(['diffuse-encephalopathy'], 'very-common'),
      at(['brainstem-diffuse'], 'uncommon'),
      at(['cerebellar-vermis', 'akinetic-rigid-syndrome'], 'rare'),
    ],
    // What accumulates takes weeks.
    tempo: { hyperacute: 0.35, acute: 0.4, subacute: 0.2, chronic: 0.05 },
    courses: { improving: 1.4 },
    history: [
      told(
        ['opioid', 'benzodiazepine', 'anticholinergic', 'lithium', 'valproate', 'metronidazole', 'antipsychotic'],
        4,
        0.6,
      ),
      told(['alcohol-excess', 'injecting-drug-use', 'cocaine-or-stimulants'], 3, 0.6),
      told(['carbon-monoxide', 'organic-solvents', 'organophosphate'], 10, 0.95),
      told(['tacrolimus', 'methotrexate', 'phenytoin'], 2, 0.95),
      told('psychiatric-disorder', 1.6, 0.95),
      told('fever', 0.5, 1.1),
    ],
    signs: [
      shows(['cranial-nerves/small-pupil', 'cranial-nerves/dilated-pupil'], 2.5, 0.9),
      shows(['higher-function/hallucinations'], 2, 0.95),
      shows(['involuntary-movements/action-tremor', 'involuntary-movements/postural-tremor', ...flap], 1.6, 0.95),
    ],
    quantities: [atLeast('csf-white-cells', 5, '10*6/L', 0.15, 1.3)],
    values: [
      reads('mri-brain', [
        ['normal', 1.3],
        ['encephalitis', 0.15],
      ]),
    ],
    source: recalled('delirium-2014'),
  },
  {
    key: 'hepatic-encephalopathy',
    group: 'metabolic',
    label: 'Hepatic encephalopathy',
    mondo: mondo('MONDO:0001711', 'hepatic encephalopathy'),
    produces: [at(['diffuse-encephalopathy'], 'common'), at(['akinetic-rigid-syndrome'], 'rare')],
    tempo: tempos.acuteOrSubacute,
    courses: { 'relapsing-remitting': 2 },
    history: [
      told('chronic-liver-disease', 15, 0.08),
      told(['alcohol-excess', 'hepatitis-b', 'hepatitis-c'], 2, 0.8),
      told(['opioid', 'benzodiazepine', 'diuretic'], 1.4, 1),
      told('fluctuating-symptoms', 1.6, 0.95),
    ],
    signs: [shows(['involuntary-movements/asterixis'], 6, 0.4)],
    quantities: [
      // A normal ammonia speaks against it.
      atLeast('ammonia', 60, 'umol/L', 5, 0.15, recalled('hepatic-encephalopathy-2014', 'ammonia')),
      under('albumin', 30, 'g/L', 2, 0.8),
    ],
    values: [
      reads('eeg', [
        ['slowing', 2],
        ['normal', 0.3],
      ]),
    ],
    source: recalled('hepatic-encephalopathy-2014'),
  },
  {
    key: 'wernicke-encephalopathy',
    group: 'nutritional',
    label: 'Wernicke encephalopathy',
    mondo: mondo('MONDO:0007020', 'Wernicke encephalopathy'),
    produces: [
      at(['abducens-nerve', 'vestibular-nerve'], 'rare'),
      at(['brainstem-diffuse', 'cerebellar-vermis'], 'common'),
      at(['midbrain-tegmentum', 'midbrain-dorsal', 'pons-tegmentum', 'flocculonodular-lobe'], 'uncommon'),
      at(['diffuse-encephalopathy', 'medial-longitudinal-fasciculus'], 'uncommon'),
      inKind(['multiple-sites'], 'uncommon'),
    ],
    tempo: tempos.acute,
    courses: { 'relapsing-remitting': 0.3 },
    history: [
      told('alcohol-excess', 8, 0.4),
      told('vomiting', 3, 0.8),
      told(['gastrectomy', 'bariatric-surgery', 'malabsorption'], 6, 0.9),
      told(['malnutrition', 'weight-loss', 'recent-weight-loss'], 5, 0.5),
      told('fever', 0.5, 1),
    ],
    // Two of four: poor diet, eye signs, cerebellar signs, altered mind or memory.
    signs: [
      shows(
        [
          'cranial-nerves/sixth-nerve-palsy',
          'cranial-nerves/eye-abduction-weakness',
          'cranial-nerves/ophthalmoplegia',
          'cranial-nerves/gaze-palsy',
          'cranial-nerves/gaze-evoked-nystagmus',
          'cranial-nerves/nystagmus',
        ],
        3,
        0.4,
      ),
      shows(['gait/ataxic', 'coordination/heel-shin', 'coordination/standing-balance'], 2, 0.5),
      shows([...clouded, 'higher-function/amnesia', 'higher-function/memory-impairment'], 2, 0.5),
    ],
    quantities: [under('thiamine', 70, 'nmol/L', 5, 0.4)],
    values: [
      reads('mri-brain', [
        ['wernicke-signal', 30],
        ['infarct', 0.2],
        ['normal', 0.7],
      ]),
    ],
    source: recalled('caine-1997'),
  },
  {
    key: 'hypoglycaemia',
    group: 'metabolic',
    label: 'Hypoglycaemia',
    produces: [
      at([...arterialCortex, ...deepHemisphere, ...brainstemParts], 'rare'),
      at(['diffuse-encephalopathy'], 'uncommon'),
    ],
    tempo: tempos.sudden,
    courses: { improving: 2, progressive: 0.5 },
    history: [
      told('insulin-or-sulfonylurea', 15, 0.2),
      told('diabetes-mellitus', 3, 0.3),
      told('alcohol-excess', 1.5, 0.95),
      told('seizure', 1.5, 1),
    ],
    signs: [shows(['autonomic/hyperhidrosis', 'autonomic/resting-tachycardia'], 2, 0.8), shows(clouded, 2, 0.6)],
    quantities: [under('glucose-random', 4, 'mmol/L', 60, 0.02, read('nice-ng128', 'exclude hypoglycaemia'))],
    source: recalled('nice-ng128', 'exclude hypoglycaemia'),
  },
  {
    key: 'hypoxic-brain-injury',
    group: 'vascular',
    label: 'Hypoxic-ischaemic brain injury',
    produces: [
      at(['akinetic-rigid-syndrome', 'frontal-gait-disorder', 'hyperkinetic-syndrome'], 'rare'),
      at(['diffuse-encephalopathy'], 'uncommon'),
      at(['cortex-occipital', 'cortex-parasagittal', 'striatum'], 'rare'),
    ],
    tempo: { hyperacute: 0.75, acute: 0.13, subacute: 0.1, chronic: 0.02 },
    courses: { progressive: 0.3, 'relapsing-remitting': 0.1 },
    history: [told('cardiac-arrest', 60, 0.05), told(['carbon-monoxide', 'opioid'], 2, 0.95), told('seizure', 1.5, 1)],
    signs: [
      shows(['higher-function/coma'], 3, 0.5),
      shows(['involuntary-movements/myoclonus'], 3, 0.8),
      shows(['higher-function/amnesia'], 1.5, 1),
    ],
    quantities: [under('oxygen-saturation', 85, '%', 3, 0.9)],
    source: recalled('adams-victor', 'hypoxic-ischaemic encephalopathy'),
  },
  {
    key: 'traumatic-brain-injury',
    group: 'traumatic',
    label: 'Traumatic brain injury',
    mondo: mondo('MONDO:0858950', 'traumatic brain injury'),
    produces: [
      at(['raised-intracranial-pressure'], 'uncommon'),
      at(['diffuse-encephalopathy', 'cortex-frontal', 'cortex-temporal'], 'common'),
      at(['brainstem-diffuse', 'midbrain-dorsal', 'midbrain-tegmentum', 'corticobulbar-both-sides'], 'uncommon'),
      at(['raised-intracranial-pressure', 'cortex-parietal', 'cortex-occipital', ...arterialCortex], 'uncommon'),
      at(['internal-capsule', 'cerebellar-hemisphere', 'medial-longitudinal-fasciculus', 'no-lesion'], 'uncommon'),
      inKind(['multiple-sites'], 'uncommon'),
    ],
    tempo: tempos.sudden,
    courses: { progressive: 0.3, 'relapsing-remitting': 0.1, improving: 1.5 },
    history: [
      told(['head-injury', 'trauma'], 40, 0.02),
      told('loss-of-consciousness', 1.6, 0.9),
      told('vomiting', 1.4, 0.95),
      told('alcohol-excess', 1.4, 1),
    ],
    values: [
      reads('ct-head', [
        ['haemorrhage', 1.5],
        ['subarachnoid-haemorrhage', 1.5],
        ['infarct', 0.1],
      ]),
    ],
    source: commonPractice,
  },
  {
    key: 'osmotic-demyelination',
    group: 'metabolic',
    label: 'Osmotic demyelination',
    produces: [
      at(['pons-ventral', 'brainstem-diffuse', 'corticobulbar-both-sides'], 'uncommon'),
      at(['diffuse-encephalopathy'], 'rare'),
    ],
    tempo: tempos.acute,
    courses: { 'relapsing-remitting': 0.1 },
    history: [
      told('rapid-sodium-correction', 30, 0.3),
      told(['alcohol-excess', 'malnutrition', 'chronic-liver-disease', 'diuretic'], 4, 0.2),
      told('vomiting', 1.5, 0.95),
      told('hypertension', 0.7, 1),
    ],
    quantities: [under('sodium', 130, 'mmol/L', 5, 0.9, recalled('osmotic-demyelination-2014'))],
    values: [
      reads('mri-brain', [
        ['pontine-signal', 40],
        ['infarct', 0.2],
        ['normal', 0.3],
      ]),
    ],
    source: read('osmotic-demyelination-2014', 'abstract: hyponatraemia in 78 %'),
  },
  {
    key: 'non-convulsive-status',
    group: 'paroxysmal',
    label: 'Non-convulsive status epilepticus',
    produces: [at(['diffuse-encephalopathy', ...epilepticCortex], 'uncommon')],
    tempo: tempos.suddenOrAcute,
    history: [
      told(['similar-attacks-before'], 1.5, 1),
      told(['beta-lactam', 'benzodiazepine', 'lithium'], 1.3, 1),
      told(['seizure', 'ongoing-seizure'], 5, 0.4),
      told('epilepsy', 4, 0.6),
      told(['stroke', 'cancer', 'head-injury'], 1.5, 0.95),
      told('fluctuating-symptoms', 2, 0.9),
    ],
    signs: [
      shows(['higher-function/fluctuating-consciousness'], 3, 0.7),
      shows(['involuntary-movements/myoclonus'], 2, 0.9),
      shows(['higher-function/mutism'], 2, 1),
    ],
    values: [
      reads('eeg', [
        ['status-epilepticus', 300],
        ['epileptiform', 2],
        ['slowing', 0.2],
        ['normal', 0.02],
      ]),
    ],
    source: recalled('nice-ng217'),
  },
  {
    key: 'creutzfeldt-jakob-disease',
    group: 'degenerative',
    label: 'Creutzfeldt-Jakob disease',
    produces: [
      at(['diffuse-encephalopathy', 'cerebellar-degeneration', 'cortex-occipital'], 'rare'),
      at(['cerebellar-vermis', 'cortex-parietal', 'akinetic-rigid-syndrome'], 'rare'),
      inKind(['multiple-sites'], 'rare'),
    ],
    tempo: tempos.subacute,
    durationDays: { to: 730, outside: 0.1, source: read('cjd-tests-table', 'criteria: under 2 years') },
    courses: { progressive: 2, improving: 0.02, 'relapsing-remitting': 0.02 },
    age: { from: 45, to: 85, outside: 0.1 },
    history: [
      told('cognitive-change', 4, 0.2),
      told(['unsteadiness', 'visual-loss'], 2, 0.7),
      told(['family/dementia', 'family/similar-disorder'], 1.3, 0.95),
      told('fever', 0.2, 1.1),
      told(['alcohol-excess', 'cancer'], 0.7, 1),
    ],
    signs: [
      shows(['involuntary-movements/myoclonus', 'involuntary-movements/exaggerated-startle'], 8, 0.4),
      shows(['higher-function/mutism'], 3, 0.9),
      shows(['gait/ataxic', 'coordination/finger-nose'], 2, 0.6),
    ],
    quantities: [atLeast('csf-white-cells', 10, '10*6/L', 0.1, 1.2)],
    values: [
      // Sensitivity 92 % and specificity 94 %; and 92 % and 99 %.
      reads(
        'mri-brain',
        [
          ['cortical-ribboning', 15],
          ['normal', 0.09],
          ['cortical-atrophy', 0.3],
        ],
        read('cjd-tests-table', 'diffusion imaging'),
      ),
      reads(
        'csf-prion-seeding',
        [
          ['positive', 92],
          ['negative', 0.08],
        ],
        read('cjd-tests-table', 'RT-QuIC'),
      ),
      reads('eeg', [
        ['slowing', 1.3],
        ['normal', 0.3],
      ]),
    ],
    source: read('cjd-tests-table'),
  },
  {
    key: 'epilepsy',
    group: 'paroxysmal',
    label: 'Epileptic seizure',
    mondo: mondo('MONDO:0005027', 'epilepsy'),
    produces: [
      at(
        [
          'cortex-middle-cerebral',
          'cortex-middle-cerebral-upper',
          'cortex-middle-cerebral-lower',
          'cortex-hand-area',
          'cortex-parasagittal',
        ],
        'rare',
      ),
      at(['no-lesion'], 'common'),
      at(['cortex-temporal', 'cortex-frontal'], 'uncommon'),
      at(['cortex-occipital', 'cortex-parietal', 'diffuse-encephalopathy'], 'rare'),
    ],
    tempo: tempos.sudden,
    courses: { 'relapsing-remitting': 4, progressive: 0.2, improving: 1.3 },
    history: [
      told(['seizure', 'ongoing-seizure'], 10, 0.1),
      told('epilepsy', 6, 0.8),
      told('loss-of-consciousness', 2, 0.6),
      told('similar-attacks-before', 1.9, 0.7),
      told('family/epilepsy', 1.6, 0.95),
      told(['head-injury', 'stroke'], 1.4, 0.95),
      told('light-headed-on-standing', 0.3, 1.1),
      told('spreading-over-minutes', 0.5, 1),
      told('resolved-deficit', 1.5, 0.5),
    ],
    values: [
      reads('eeg', [
        ['epileptiform', 15],
        ['normal', 0.7],
      ]),
    ],
    source: recalled('nice-ng217'),
  },
  {
    key: 'post-ictal-paresis',
    group: 'paroxysmal',
    label: 'Paresis after a seizure (Todd)',
    produces: [at([...cortex, 'internal-capsule'], 'uncommon')],
    tempo: tempos.sudden,
    durationDays: { to: 3, outside: 0.2, source: recalled('rolak-1992', 'minutes to 36 hours') },
    courses: { improving: 5, progressive: 0.1, static: 0.4 },
    history: [
      told(['seizure', 'ongoing-seizure'], 20, 0.08),
      told('epilepsy', 3, 0.7),
      told(['loss-of-consciousness'], 2, 0.7),
      told('similar-attacks-before', 1.5, 0.9),
      told('stroke', 1.5, 1),
    ],
    signs: [shows(clouded, 1.6, 0.9)],
    values: [
      reads('mri-brain', [
        ['infarct', 0.1],
        ['normal', 1.6],
      ]),
      reads('eeg', [
        ['epileptiform', 5],
        ['slowing', 1.6],
        ['normal', 0.5],
      ]),
    ],
    source: recalled('rolak-1992'),
  },
  {
    key: 'migraine-aura',
    group: 'paroxysmal',
    label: 'Migraine aura',
    produces: [
      at(['retina', 'optic-tract', 'optic-radiation-temporal', 'optic-radiation-parietal'], 'rare'),
      at(['no-lesion'], 'common'),
      at([...cortex], 'uncommon'),
      at(['internal-capsule', 'brainstem-diffuse', 'optic-radiation-temporal', 'optic-radiation-parietal'], 'rare'),
    ],
    tempo: tempos.sudden,
    courses: { improving: 3, progressive: 0.1, static: 0.2, 'relapsing-remitting': 2 },
    age: { from: 8, to: 55, outside: 0.3 },
    sex: { male: 0.7, female: 1.3 },
    history: [
      told('new-headache', 0.5, 1),
      told('spreading-over-minutes', 10, 0.25),
      told('migraine', 5, 0.4),
      told('similar-attacks-before', 1.9, 0.5),
      told(anyHeadache, 1.8, 0.6),
      told('photophobia', 1.8, 0.9),
      told('family/migraine', 1.8, 0.95),
      told('resolved-deficit', 1.9, 0.3),
      told('thunderclap-headache', 0.3, 1),
      told(['loss-of-consciousness', 'seizure', 'fever'], 0.3, 1.1),
    ],
    values: [
      reads('mri-brain', [
        ['infarct', 0.05],
        ['normal', 1.3],
      ]),
      reads('ct-head', [['haemorrhage', 0.02]]),
    ],
    source: recalled('nice-ng127', 'migraine with aura'),
  },
  {
    key: 'vestibular-migraine',
    group: 'paroxysmal',
    label: 'Vestibular migraine',
    produces: [
      at(['vestibular-nerve'], 'common'),
      at(['no-lesion'], 'common'),
      at(['vestibular-nerve', 'flocculonodular-lobe'], 'uncommon'),
    ],
    tempo: tempos.suddenOrAcute,
    courses: { 'relapsing-remitting': 4, improving: 1.5, progressive: 0.2, static: 0.4 },
    age: { from: 10, to: 65, outside: 0.5 },
    sex: { male: 0.6, female: 1.4 },
    history: [
      told('new-headache', 0.5, 1),
      told(['vertigo', 'positional-vertigo'], 5, 0.1),
      told('migraine', 1.9, 0.2),
      told('similar-attacks-before', 1.9, 0.3),
      told('photophobia', 1.9, 0.7),
      told(anyHeadache, 1.6, 0.7),
      told('hearing-loss', 0.4, 1.1),
      told('continuous-vertigo', 0.3, 1.2),
    ],
    source: recalled('vestibular-migraine-2012'),
  },
  {
    key: 'transient-global-amnesia',
    group: 'paroxysmal',
    label: 'Transient global amnesia',
    produces: [at(['no-lesion'], 'common'), at(['cortex-temporal', 'diffuse-encephalopathy'], 'uncommon')],
    tempo: tempos.sudden,
    durationDays: { to: 2, outside: 0.1, source: recalled('transient-amnesia-1990', 'within 24 hours') },
    courses: { improving: 3, progressive: 0.05, 'relapsing-remitting': 0.2 },
    age: { from: 45, to: 80, outside: 0.1 },
    history: [
      told('cognitive-change', 5, 0.15),
      told('heavy-exertion', 1.8, 0.9),
      told('migraine', 1.5, 0.95),
      told(['seizure', 'loss-of-consciousness', 'head-injury', 'epilepsy'], 0.05, 1.3),
      told('resolved-deficit', 1.8, 0.8),
    ],
    signs: [
      shows(['higher-function/amnesia'], 20, 0.2),
      shows(
        ['higher-function/drowsiness', 'higher-function/expressive-aphasia', 'higher-function/receptive-aphasia'],
        0.05,
        1.3,
      ),
    ],
    values: [
      reads('eeg', [['epileptiform', 0.1]]),
      reads('mri-brain', [
        ['encephalitis', 0.05],
        ['normal', 1.3],
      ]),
    ],
    source: recalled('transient-amnesia-1990'),
  },
  {
    key: 'syncope',
    group: 'paroxysmal',
    label: 'Syncope',
    produces: [at(['no-lesion'], 'common')],
    tempo: tempos.sudden,
    courses: { 'relapsing-remitting': 1.5, improving: 1.5, progressive: 0.2 },
    history: [
      told('syncope', 15, 0.1),
      told('loss-of-consciousness', 4, 0.15),
      told('light-headed-on-standing', 3, 0.6),
      told(['ischaemic-heart-disease', 'heart-failure', 'cardiomyopathy'], 1.6, 0.95),
      told(['alpha-blocker', 'diuretic', 'beta-blocker'], 1.5, 0.95),
      told('family/cardiomyopathy-or-sudden-death', 1.8, 1),
      told(['seizure', 'ongoing-seizure'], 0.2, 1.2),
      told('epilepsy', 0.4, 1),
    ],
    signs: [
      shows(['autonomic/orthostatic-hypotension'], 5, 0.8),
      shows(['autonomic/arrhythmia', 'autonomic/bradycardia'], 4, 0.9),
    ],
    values: [
      reads('ecg', [
        ['conduction-disease', 1.9],
        ['normal', 0.9],
      ]),
      reads('eeg', [['epileptiform', 0.1]]),
      reads('autonomic-tests', [['orthostatic-hypotension', 4]]),
    ],
    source: recalled('syncope-esc-2018'),
  },
  {
    // Of 135 people 80 % had failing kidneys; consciousness falls in 47 %, myoclonus in 42 %, non-convulsive status in 25 %.
    key: 'beta-lactam-encephalopathy',
    group: 'toxic',
    label: 'Encephalopathy from cefepime or another beta-lactam',
    produces: [at(['diffuse-encephalopathy'], 'uncommon'), at(['cortex-middle-cerebral-lower'], 'rare')],
    tempo: tempos.acute,
    age: { from: 40, to: 110, outside: 0.4 },
    history: [told('beta-lactam', 25, 0.02), told('chronic-kidney-disease', 5, 0.3)],
    signs: [shows(['involuntary-movements/myoclonus', ...flap], 2.5, 0.7)],
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
];
