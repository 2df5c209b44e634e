import { commonPractice, fromMemory, recalled } from '../../kernel/cite.ts';
import { at, type Cause, mondo, reads, shows, sided, tempos, told, under } from './cause.ts';

const akineticRigid = 'akinetic-rigid-syndrome';
const movementChapter = recalled('adams-victor', 'disorders of movement and posture');
const parkinsonCriteria = recalled('mds-parkinson-2015', 'supportive criteria, exclusions and red flags');
const tremorChapter = recalled('adams-victor', 'tremor, myoclonus, focal dystonias and tics');
const restTremor = ['involuntary-movements/resting-tremor'];
const verticalGaze = [
  'cranial-nerves/vertical-gaze-palsy',
  'cranial-nerves/upgaze-palsy',
  'cranial-nerves/slow-saccades',
];
const autonomicFailure = [
  'autonomic/orthostatic-hypotension',
  'sphincters/urinary-incontinence',
  'sphincters/urinary-retention',
];
const cerebellarSigns = ['coordination/heel-shin', 'coordination/finger-nose', 'gait/ataxic'];
const dopamineBlockers = ['antipsychotic', 'metoclopramide', 'valproate'];
const cortical = [
  'higher-function/apraxia',
  'higher-function/astereognosis',
  'higher-function/sensory-extinction',
  'higher-function/neglect',
  'involuntary-movements/alien-limb',
];

/** Causes of parkinsonism, of tremor, and of gaits that fail in the frontal lobes. */
export const movementCauses: readonly Cause[] = [
  {
    key: 'parkinson-disease',
    group: 'degenerative',
    label: 'Parkinson disease',
    mondo: mondo('MONDO:0005180', 'Parkinson disease'),
    produces: [
      at([akineticRigid], 'very-common'),
      at(['olfactory-nerve'], 'common'),
      at(['action-tremor', 'autonomic-neuropathy', 'frontal-gait-disorder'], 'uncommon'),
    ],
    tempo: tempos.chronic,
    durationDays: { from: 120, outside: 0.35, source: fromMemory },
    courses: { progressive: 1.3, improving: 0.1, static: 0.4 },
    age: { from: 45, to: 90, outside: 0.3 },
    sex: { male: 1.2, female: 0.8 },
    history: [
      told('loss-of-smell', 3, 0.8),
      told('dream-enactment', 3, 0.85),
      told('tremor', 1.4, 0.7),
      told('levodopa', 1.5, 1),
      told('falls', 0.5, 1.2),
      told(dopamineBlockers, 0.25, 1.15),
      told(['family/parkinsonism'], 1.8, 0.95),
      told('cognitive-change', 0.6, 1.15),
      told(['bowel-disturbance', 'organophosphate', 'shoulder-pain'], 1.3, 1),
      told(['headache', 'new-headache', 'morning-headache', 'thunderclap-headache'], 0.6, 1),
    ],
    signs: [
      shows(restTremor, 2.2, 0.5),
      shows(['gait/postural-instability'], 0.7, 1.2),
      shows(verticalGaze, 0.15, 1.1),
      shows(['autonomic/orthostatic-hypotension', 'sphincters/urinary-incontinence'], 0.5, 1.15),
      shows(cerebellarSigns, 0.2, 1.1),
      shows(cortical, 0.1, 1.05),
      shows(['higher-function/hallucinations', 'higher-function/memory-impairment'], 0.5, 1.15),
    ],
    sides: [
      sided(['involuntary-movements/resting-tremor', 'involuntary-movements/bradykinesia'], { one: 1.6, both: 0.8 }),
    ],
    values: [
      reads('mri-brain', [
        ['normal', 1.2],
        ['small-vessel-disease', 0.7],
        ['hydrocephalus', 0.1],
      ]),
    ],
    source: parkinsonCriteria,
  },
  {
    key: 'drug-induced-parkinsonism',
    group: 'toxic',
    label: 'Drug-induced parkinsonism',
    mondo: mondo('MONDO:0006966', 'secondary Parkinson disease'),
    produces: [at([akineticRigid], 'common'), at(['action-tremor', 'hyperkinetic-syndrome'], 'rare')],
    tempo: { hyperacute: 0.01, acute: 0.09, subacute: 0.5, chronic: 0.4 },
    age: { from: 30, to: 100, outside: 0.5 },
    history: [
      told(dopamineBlockers, 14, 0.03),
      told('lithium', 2, 1),
      told('loss-of-smell', 0.5, 1.1),
      told('psychiatric-disorder', 1.6, 1),
      told('cognitive-change', 0.8, 1),
    ],
    signs: [
      shows(['involuntary-movements/akathisia', 'involuntary-movements/orofacial-dyskinesia'], 4, 0.95),
      shows(restTremor, 0.8, 1.1),
    ],
    sides: [
      sided(['involuntary-movements/resting-tremor', 'involuntary-movements/bradykinesia'], { one: 0.5, both: 1.4 }),
    ],
    source: movementChapter,
  },
  {
    key: 'progressive-supranuclear-palsy',
    group: 'degenerative',
    label: 'Progressive supranuclear palsy',
    mondo: mondo('MONDO:0019037', 'progressive supranuclear palsy'),
    produces: [
      at([akineticRigid], 'uncommon'),
      at(['midbrain-dorsal'], 'common'),
      at(['frontal-gait-disorder', 'corticobulbar-both-sides'], 'uncommon'),
      at(['diffuse-encephalopathy', 'cortex-frontal'], 'rare'),
    ],
    tempo: tempos.chronic,
    durationDays: { from: 180, outside: 0.35, source: fromMemory },
    courses: { progressive: 1.5, improving: 0.05, static: 0.2 },
    age: { from: 45, to: 85, outside: 0.1 },
    history: [
      told('falls', 4, 0.3),
      told(['dysphagia', 'slurred-speech'], 1.8, 0.8),
      told('behaviour-change', 1.6, 0.9),
      told('levodopa', 0.8, 1),
      told(['visual-loss', 'diplopia'], 1.3, 1),
      told(['headache', 'new-headache', 'morning-headache', 'thunderclap-headache'], 0.5, 1),
      told(['antipsychotic', 'metoclopramide'], 0.5, 1),
    ],
    signs: [
      shows(verticalGaze, 12, 0.15),
      shows(['gait/postural-instability'], 2.5, 0.3),
      shows(
        ['cranial-nerves/eyelid-apraxia', 'cranial-nerves/lid-retraction', 'cranial-nerves/reduced-blinking'],
        2.5,
        0.9,
      ),
      shows(
        ['higher-function/apathy', 'higher-function/executive-dysfunction', 'higher-function/frontal-release-signs'],
        1.8,
        0.8,
      ),
      shows(restTremor, 0.3, 1.2),
      shows(['tone/neck'], 1.8, 0.9),
    ],
    sides: [sided(['involuntary-movements/bradykinesia'], { one: 0.6, both: 1.2 })],
    source: movementChapter,
  },
  {
    key: 'multiple-system-atrophy',
    group: 'degenerative',
    label: 'Multiple system atrophy',
    mondo: mondo('MONDO:0007803', 'multiple system atrophy'),
    produces: [
      at(['cerebellar-degeneration'], 'common'),
      at([akineticRigid, 'autonomic-neuropathy'], 'uncommon'),
      at(['cerebellar-vermis', 'cerebellar-hemisphere'], 'uncommon'),
      at(['corticobulbar-both-sides', 'upper-motor-neuron-system'], 'rare'),
    ],
    tempo: tempos.chronic,
    // Within half a year it is not called so; half have died after nine or ten years.
    durationDays: { from: 180, to: 3285, outside: 0.35, source: fromMemory },
    courses: { progressive: 1.5, improving: 0.05, static: 0.1 },
    age: { from: 40, to: 78, outside: 0.1 },
    history: [
      told(['bladder-disturbance', 'sexual-dysfunction'], 3, 0.4),
      told(['light-headed-on-standing', 'syncope'], 3, 0.5),
      told('dream-enactment', 2, 0.8),
      told(['family/ataxia', 'family/parkinsonism', 'family/similar-disorder'], 0.2, 1.05),
      told(['falls', 'dysphagia', 'voice-change'], 1.3, 1),
    ],
    signs: [
      shows(autonomicFailure, 6, 0.25),
      shows(['autonomic/stridor'], 8, 1),
      shows(['involuntary-movements/bradykinesia', 'tone/upper-limb'], 1.8, 0.8),
      shows(cerebellarSigns, 2, 0.7),
      shows(['plantars/plantar-response'], 1.6, 0.95),
      shows(verticalGaze, 0.4, 1.05),
    ],
    values: [
      reads('autonomic-tests', [
        ['orthostatic-hypotension', 4],
        ['normal', 0.2],
      ]),
      reads('mri-brain', [
        ['cerebellar-atrophy', 3],
        ['normal', 0.5],
      ]),
    ],
    source: movementChapter,
  },
  {
    key: 'corticobasal-degeneration',
    group: 'degenerative',
    label: 'Corticobasal degeneration',
    mondo: mondo('MONDO:0022308', 'corticobasal degeneration disorder'),
    produces: [
      at([akineticRigid], 'rare'),
      at(['cortex-parietal'], 'rare'),
      at(['hyperkinetic-syndrome'], 'rare'),
      at(['cortex-frontal', 'cortex-hand-area', 'striatum', 'cortex-middle-cerebral-upper'], 'rare'),
    ],
    tempo: tempos.chronic,
    durationDays: { from: 180, outside: 0.35, source: fromMemory },
    courses: { progressive: 1.5, improving: 0.05 },
    age: { from: 50, to: 85, outside: 0.1 },
    history: [
      told(['clumsiness', 'speech-difficulty', 'stiffness'], 1.4, 0.95),
      told(['stroke', 'hypertension'], 0.7, 1),
    ],
    signs: [
      shows(cortical, 15, 0.15),
      // The parietal lobe opposite the worse limb, and with it the motor strip: Armstrong 2013 (recalled).
      shows(['higher-function/constructional-apraxia'], 1.5, 0.9),
      shows(['plantars/plantar-response'], 2, 0.9),
      shows(['involuntary-movements/myoclonus', 'involuntary-movements/dystonia'], 4, 0.5),
      shows(restTremor, 0.3, 1.1),
    ],
    sides: [
      sided(
        [
          'involuntary-movements/bradykinesia',
          'involuntary-movements/dystonia',
          'involuntary-movements/myoclonus',
          'higher-function/apraxia',
        ],
        { one: 2, both: 0.5 },
      ),
    ],
    source: movementChapter,
  },
  {
    key: 'vascular-parkinsonism',
    group: 'vascular',
    label: 'Vascular parkinsonism',
    produces: [
      at(['frontal-gait-disorder'], 'very-common'),
      at([akineticRigid], 'common'),
      at(['corticobulbar-both-sides'], 'common'),
    ],
    tempo: { hyperacute: 0.1, acute: 0.1, subacute: 0.2, chronic: 0.6 },
    age: { from: 60, to: 100, outside: 0.1 },
    history: [
      told(['hypertension', 'diabetes-mellitus', 'stroke', 'transient-ischaemic-attack'], 3, 0.4),
      told('tremor', 0.4, 1.2),
      told(
        ['falls', 'bladder-disturbance', 'hyperlipidaemia', 'ischaemic-heart-disease', 'atrial-fibrillation'],
        1.4,
        1,
      ),
      told(['loss-of-smell', 'dream-enactment'], 0.4, 1),
    ],
    signs: [
      shows(['gait/magnetic', 'gait/freezing', 'gait/shuffling'], 2, 0.6),
      shows(restTremor, 0.15, 1.2),
      shows(['plantars/plantar-response', 'higher-function/pseudobulbar-affect'], 2, 0.9),
    ],
    values: [
      reads('mri-brain', [
        ['small-vessel-disease', 6],
        ['infarct', 4],
        ['normal', 0.05],
      ]),
    ],
    source: movementChapter,
  },
  {
    key: 'dementia-with-lewy-bodies',
    group: 'degenerative',
    label: 'Dementia with Lewy bodies',
    mondo: mondo('MONDO:0007488', 'Lewy body dementia'),
    produces: [at([akineticRigid], 'common'), at(['diffuse-encephalopathy'], 'common')],
    tempo: tempos.chronic,
    durationDays: { from: 180, outside: 0.35, source: fromMemory },
    courses: { progressive: 1.2, fluctuating: 2 },
    age: { from: 55, to: 95, outside: 0.1 },
    history: [
      told(['cognitive-change', 'dementia'], 4, 0.05),
      told('dream-enactment', 4, 0.8),
      told('fluctuating-symptoms', 3, 0.8),
      told('antipsychotic', 1.3, 1),
      told(['headache', 'new-headache', 'morning-headache', 'thunderclap-headache'], 0.6, 1),
      told('loss-of-smell', 1.5, 1),
      told(['falls', 'syncope', 'light-headed-on-standing'], 1.4, 1),
      told(['lithium', 'metoclopramide', 'valproate'], 0.5, 1),
    ],
    signs: [
      shows(['higher-function/hallucinations'], 8, 0.5),
      shows(['higher-function/fluctuating-consciousness', 'higher-function/inattention'], 3, 0.7),
      shows(['involuntary-movements/bradykinesia', 'tone/upper-limb', 'gait/shuffling'], 3, 0.4),
      shows(['autonomic/orthostatic-hypotension'], 2, 0.9),
    ],
    source: movementChapter,
  },
  {
    key: 'normal-pressure-hydrocephalus',
    group: 'degenerative',
    label: 'Normal pressure hydrocephalus',
    mondo: mondo('MONDO:0009366', 'normal pressure hydrocephalus'),
    produces: [
      at(['frontal-gait-disorder'], 'very-common'),
      at([akineticRigid, 'diffuse-encephalopathy', 'midbrain-dorsal'], 'uncommon'),
      at(['cortex-parasagittal'], 'rare'),
    ],
    tempo: tempos.chronic,
    durationDays: { from: 60, outside: 0.4, source: fromMemory },
    courses: { progressive: 1.2, improving: 0.2 },
    age: { from: 55, to: 95, outside: 0.15 },
    history: [
      told('bladder-disturbance', 3, 0.5),
      told('cognitive-change', 2.5, 0.6),
      told('head-injury', 1.5, 1),
      told('tremor', 0.4, 1.1),
      told(['difficulty-walking', 'falls'], 1.4, 0.8),
      told(['headache', 'new-headache', 'morning-headache', 'vomiting'], 0.6, 1),
      told('hypertension', 1.2, 1),
    ],
    signs: [
      shows(['gait/magnetic', 'gait/freezing', 'gait/shuffling'], 3, 0.3),
      shows(['sphincters/urinary-incontinence', 'sphincters/urinary-urgency'], 3, 0.6),
      shows(restTremor, 0.2, 1.1),
    ],
    values: [
      reads('mri-brain', [
        ['hydrocephalus', 15],
        ['normal', 0.02],
        ['small-vessel-disease', 0.7],
      ]),
      reads('ct-head', [
        ['hydrocephalus', 12],
        ['normal', 0.03],
      ]),
    ],
    source: recalled('adams-victor', 'normal pressure hydrocephalus'),
  },

  // Tremor
  {
    key: 'essential-tremor',
    group: 'degenerative',
    inheritance: ['autosomal-dominant'],
    label: 'Essential tremor',
    mondo: mondo('MONDO:0003233', 'essential tremor'),
    produces: [at(['action-tremor'], 'very-common'), at(['cerebellar-degeneration'], 'rare')],
    tempo: tempos.lifelong,
    durationDays: { from: 180, outside: 0.4, source: fromMemory },
    courses: { progressive: 1.1, static: 1.1 },
    history: [
      told(['family/tremor', 'family/similar-disorder'], 4, 0.6),
      told('better-with-alcohol', 4, 0.7),
      told(['lithium', 'valproate', 'tacrolimus', 'beta-agonist', 'amiodarone', 'serotonergic-medicine'], 0.3, 1.1),
      told('hyperthyroidism', 0.2, 1.05),
      told(['weight-loss', 'cognitive-change', 'chronic-liver-disease'], 0.6, 1),
    ],
    signs: [
      shows(['involuntary-movements/postural-tremor', 'involuntary-movements/action-tremor'], 1.6, 0.3),
      shows(['involuntary-movements/distractible-tremor'], 0.1, 1.1),
      shows(['involuntary-movements/dystonia', 'inspection/abnormal-posture'], 0.3, 1.1),
      shows(['involuntary-movements/bradykinesia', 'involuntary-movements/resting-tremor'], 0.3, 1.15),
      shows(['coordination/heel-shin', 'gait/ataxic'], 0.4, 1.1),
    ],
    quantities: [under('tsh', 0.1, 'm[IU]/L', 0.15, 1.1, commonPractice)],
    source: recalled('nice-ng127', 'tremor in adults'),
  },
  {
    key: 'enhanced-physiological-tremor',
    group: 'metabolic',
    label: 'Enhanced physiological tremor',
    produces: [at(['action-tremor'], 'common'), at(['no-lesion'], 'uncommon')],
    tempo: { hyperacute: 0.05, acute: 0.15, subacute: 0.4, chronic: 0.4 },
    history: [
      told('hyperthyroidism', 10, 0.8),
      told(['weight-loss', 'recent-weight-loss'], 2, 0.9),
      told(['psychiatric-disorder'], 1.6, 0.9),
      told('family/tremor', 0.4, 1.1),
      told(
        ['beta-agonist', 'serotonergic-medicine', 'corticosteroid', 'alcohol-excess', 'cocaine-or-stimulants'],
        1.6,
        1,
      ),
    ],
    signs: [
      shows(['autonomic/resting-tachycardia'], 3, 0.8),
      shows(['involuntary-movements/resting-tremor'], 0.2, 1.05),
    ],
    quantities: [under('tsh', 0.1, 'm[IU]/L', 15, 0.6, commonPractice)],
    source: tremorChapter,
  },
  {
    key: 'drug-induced-tremor',
    group: 'toxic',
    label: 'Tremor from a medicine or its withdrawal',
    produces: [at(['action-tremor'], 'common'), at(['cerebellar-degeneration', 'hyperkinetic-syndrome'], 'rare')],
    tempo: { hyperacute: 0.02, acute: 0.18, subacute: 0.45, chronic: 0.35 },
    history: [
      told(
        ['lithium', 'valproate', 'tacrolimus', 'amiodarone', 'serotonergic-medicine', 'corticosteroid', 'beta-agonist'],
        10,
        0.05,
      ),
      told('alcohol-excess', 2.5, 0.95),
      told('family/tremor', 0.5, 1.1),
      told(['antipsychotic', 'metoclopramide', 'carbamazepine', 'phenytoin', 'benzodiazepine'], 1.6, 1),
      told('other-heavy-metal', 3, 1),
    ],
    source: tremorChapter,
  },
  {
    key: 'dystonic-tremor',
    group: 'degenerative',
    label: 'Dystonic tremor',
    produces: [at(['action-tremor'], 'common'), at(['hyperkinetic-syndrome'], 'uncommon'), at(['no-lesion'], 'rare')],
    tempo: tempos.chronic,
    history: [told('only-in-one-task', 3, 0.85), told('better-with-alcohol', 0.6, 1.1)],
    signs: [
      shows(['involuntary-movements/dystonia', 'inspection/abnormal-posture'], 8, 0.2),
      shows(['inspection/titubation'], 1.5, 0.95),
    ],
    source: tremorChapter,
  },
  {
    key: 'orthostatic-tremor',
    group: 'degenerative',
    label: 'Primary orthostatic tremor',
    mondo: mondo('MONDO:0016546', 'primary orthostatic tremor'),
    produces: [
      at(['no-lesion'], 'rare'),
      at(['action-tremor'], 'uncommon'),
      at(['hyperkinetic-syndrome', 'frontal-gait-disorder', 'sensory-polyneuropathy'], 'rare'),
      at(['no-lesion'], 'uncommon'),
    ],
    tempo: tempos.chronic,
    age: { from: 45, to: 90, outside: 0.2 },
    history: [
      told('unsteadiness', 3, 0.2),
      told(['leg-weakness', 'difficulty-walking'], 1.2, 0.8),
      told('tremor', 2, 0.5),
      told('family/tremor', 0.5, 1.05),
    ],
    signs: [
      shows(['gait/unable-to-stand', 'coordination/standing-balance'], 4, 0.4),
      shows(['involuntary-movements/resting-tremor', 'involuntary-movements/bradykinesia'], 0.2, 1.2),
    ],
    source: tremorChapter,
  },
];
