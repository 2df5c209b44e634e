import { fromMemory, recalled } from '../../kernel/cite.ts';
import { at, atLeast, type Cause, reads, shows, sided, tempos, told, under } from './cause.ts';
import { dystoniaChapter } from './movement-terms.ts';
import { movementsInExcess } from './sided-signs.ts';

const hyperkinetic = 'hyperkinetic-syndrome';
const movementChapter = recalled('adams-victor', 'disorders of movement and posture');
const chorea = ['involuntary-movements/chorea', 'involuntary-movements/hemiballism', 'involuntary-movements/athetosis'];
const dystonia = ['involuntary-movements/dystonia', 'gait/dystonic'];
const movingMedicines = [
  'phenytoin',
  'carbamazepine',
  'valproate',
  'lithium',
  'opioid',
  'cocaine-or-stimulants',
  'serotonergic-medicine',
  'baclofen',
  'ciclosporin',
  'tacrolimus',
  'methotrexate',
  'benzodiazepine',
  'disulfiram',
];

/** Rarer causes of chorea, dystonia, myoclonus and startle. */
export const otherMovementCauses: readonly Cause[] = [
  {
    key: 'paroxysmal-dyskinesia',
    group: 'hereditary',
    inheritance: ['autosomal-dominant'],
    label: 'Paroxysmal dyskinesia (brought on by movement, effort or nothing)',
    produces: [at([hyperkinetic, 'no-lesion'], 'rare')],
    tempo: { hyperacute: 0.3, acute: 0.1, subacute: 0.15, chronic: 0.45 },
    courses: { 'relapsing-remitting': 5, fluctuating: 4, progressive: 0.2, static: 0.4 },
    age: { from: 1, to: 25, outside: 0.15 },
    history: [
      told(['similar-attacks-before', 'fluctuating-symptoms'], 8, 0.12),
      told('family/similar-disorder', 4, 0.6),
      told(['family/epilepsy', 'family/migraine', 'migraine'], 1.6, 1),
      told('heavy-exertion', 3, 1),
      told(['loss-of-consciousness', 'fever', 'antipsychotic', 'metoclopramide'], 0.15, 1.1),
    ],
    signs: [shows([...dystonia, ...chorea], 1.5, 0.7), shows(['higher-function/confusion'], 0.2, 1.05)],
    values: [
      reads('eeg', [
        ['epileptiform', 0.3],
        ['normal', 1.3],
      ]),
    ],
    source: movementChapter,
  },
  {
    key: 'benign-hereditary-chorea',
    group: 'hereditary',
    inheritance: ['autosomal-dominant'],
    label: 'Chorea since early childhood that does not worsen (NKX2-1, ADCY5)',
    produces: [at([hyperkinetic], 'rare')],
    tempo: tempos.lifelong,
    courses: { static: 2.5, fluctuating: 1.6, progressive: 0.3 },
    age: { from: 0, to: 8, outside: 0.03 },
    history: [
      told(['family/similar-disorder', 'family/chorea'], 6, 0.5),
      told('hypothyroidism', 8, 0.9),
      told(['asthma', 'interstitial-lung-disease', 'developmental-delay'], 2, 0.95),
      told(['loss-of-skills', 'seizure', 'cognitive-change', 'fever', 'preceding-infection', 'sore-throat'], 0.2, 1.1),
    ],
    signs: [shows(chorea, 3, 0.1), shows(['tone/upper-limb', 'tone/lower-limb'], 1.3, 1)],
    source: movementChapter,
  },
  {
    key: 'drug-induced-chorea-or-myoclonus',
    group: 'toxic',
    label: 'Chorea or myoclonus from a medicine or a stimulant',
    produces: [at([hyperkinetic], 'uncommon'), at(['diffuse-encephalopathy'], 'exceptional')],
    tempo: { hyperacute: 0.15, acute: 0.35, subacute: 0.35, chronic: 0.15 },
    courses: { improving: 1.3 },
    history: [
      told('gabapentinoid', 3, 1),
      told(movingMedicines, 8, 0.03),
      told(['chronic-kidney-disease', 'dialysis', 'epilepsy'], 1.6, 1),
      told(['antipsychotic', 'metoclopramide', 'levodopa', 'family/chorea'], 0.3, 1.05),
      told(['fever', 'lupus', 'thrombophilia'], 0.4, 1),
    ],
    signs: [
      shows([...chorea, 'involuntary-movements/myoclonus'], 2, 0.1),
      shows(['involuntary-movements/orofacial-dyskinesia', 'involuntary-movements/tics'], 0.7, 1),
    ],
    sides: [sided(movementsInExcess, { one: 0.5, both: 1.2 })],
    source: movementChapter,
  },
  {
    key: 'metabolic-chorea',
    group: 'metabolic',
    label: 'Chorea of thyroid disease, of too many red cells or of disturbed salts',
    produces: [at([hyperkinetic], 'rare'), at(['striatum', 'subthalamic-nucleus'], 'exceptional')],
    tempo: tempos.subacute,
    history: [
      told('insomnia', 1.3, 1),
      told(
        ['hyperthyroidism', 'chronic-kidney-disease', 'dialysis', 'chronic-liver-disease', 'rapid-sodium-correction'],
        6,
        0.3,
      ),
      told('hyperthyroidism', 2.5, 1),
      told(['weight-loss', 'fatigue'], 1.4, 1),
      told(['family/chorea', 'antipsychotic', 'metoclopramide', 'levodopa', 'fever'], 0.3, 1.05),
    ],
    signs: [
      shows(['cranial-nerves/lid-lag'], 4, 1),
      shows(chorea, 3, 0.1),
      shows(['autonomic/resting-tachycardia', 'cranial-nerves/lid-retraction'], 2, 1),
    ],
    quantities: [
      under('ionised-calcium', 1, 'mmol/L', 5, 0.9),
      atLeast('haemoglobin', 180, 'g/L', 12, 0.8),
      under('tsh', 0.1, 'm[IU]/L', 8, 0.6),
      under('calcium', 1.9, 'mmol/L', 5, 0.9),
      under('sodium', 122, 'mmol/L', 3, 0.95),
    ],
    source: movementChapter,
  },
  {
    key: 'hereditary-dystonia-parkinsonism',
    group: 'hereditary',
    inheritance: ['autosomal-dominant', 'x-linked'],
    label: 'Hereditary dystonia-parkinsonism (rapid-onset, X-linked)',
    produces: [at([hyperkinetic, 'akinetic-rigid-syndrome'], 'rare')],
    // One form is complete within hours to weeks and then stands still.
    tempo: { hyperacute: 0.15, acute: 0.25, subacute: 0.25, chronic: 0.35 },
    courses: { static: 2, improving: 0.2 },
    age: { from: 5, to: 50, outside: 0.25 },
    history: [
      told(['family/similar-disorder', 'family/parkinsonism'], 4, 0.6),
      told(['fever', 'heavy-exertion', 'alcohol-excess', 'pregnancy'], 1.8, 0.95),
      told(['dysphagia', 'slurred-speech', 'psychiatric-disorder'], 1.5, 0.9),
      told(['antipsychotic', 'metoclopramide', 'chronic-liver-disease'], 0.2, 1.05),
    ],
    signs: [
      shows(dystonia, 2, 0.3),
      shows(['involuntary-movements/bradykinesia', 'cranial-nerves/dysarthria'], 2, 0.7),
      shows(['involuntary-movements/chorea', 'inspection/kayser-fleischer-ring'], 0.2, 1),
    ],
    source: dystoniaChapter,
  },
  {
    key: 'hyperekplexia',
    group: 'hereditary',
    inheritance: ['autosomal-dominant', 'autosomal-recessive'],
    label: 'Hereditary startle disease (hyperekplexia)',
    produces: [
      at([hyperkinetic], 'rare'),
      at(['diffuse-encephalopathy', 'no-lesion', 'brainstem-diffuse'], 'exceptional'),
    ],
    tempo: tempos.lifelong,
    courses: { static: 1.5, improving: 1.2 },
    age: { from: 0, to: 3, outside: 0.05 },
    history: [
      told('family/similar-disorder', 4, 0.7),
      told(['stiffness', 'falls'], 2, 0.7),
      told(['fever', 'loss-of-skills', 'cancer', 'diabetes-mellitus'], 0.3, 1.05),
    ],
    signs: [shows(['involuntary-movements/exaggerated-startle'], 25, 0.05)],
    source: movementChapter,
  },
  {
    key: 'laryngeal-dystonia',
    group: 'degenerative',
    label: 'Spasmodic dysphonia (laryngeal dystonia)',
    produces: [
      at([hyperkinetic], 'rare'),
      at(['recurrent-laryngeal-nerve', 'vagus-nerve', 'no-lesion'], 'exceptional'),
    ],
    tempo: tempos.chronic,
    courses: { static: 1.2, improving: 0.2 },
    age: { from: 25, to: 75, outside: 0.4 },
    sex: { male: 0.6, female: 1.4 },
    history: [
      told('voice-change', 6, 0.1),
      told(['only-in-one-task', 'tremor', 'family/tremor'], 2, 1),
      told(['neck-or-chest-surgery', 'recent-surgery', 'tobacco', 'weight-loss', 'dysphagia', 'cancer'], 0.3, 1.2),
    ],
    signs: [
      shows(['cranial-nerves/vocal-cord-paralysis', 'cranial-nerves/bovine-cough'], 0.05, 1.5),
      shows([...dystonia, 'involuntary-movements/postural-tremor'], 1.6, 1),
    ],
    source: dystoniaChapter,
  },
  {
    key: 'autoimmune-chorea',
    group: 'paraneoplastic',
    label: 'Chorea of a cancer or of an antibody (CRMP5, Hu, LGI1)',
    produces: [at([hyperkinetic], 'rare'), at(['striatum'], 'exceptional')],
    tempo: tempos.subacute,
    courses: { progressive: 1.5 },
    age: { from: 45, to: 90, outside: 0.3 },
    history: [
      told(['cancer', 'lymphoma', 'tobacco'], 3, 0.6),
      told(['weight-loss', 'recent-weight-loss'], 3, 0.8),
      told(['cognitive-change', 'behaviour-change', 'paraesthesiae', 'visual-loss'], 1.5, 0.95),
      told(['antipsychotic', 'metoclopramide', 'levodopa', 'family/chorea', 'diabetes-mellitus'], 0.3, 1.1),
    ],
    signs: [shows(chorea, 3, 0.1)],
    sides: [sided(movementsInExcess, { one: 0.8, both: 1.1 })],
    quantities: [atLeast('csf-white-cells', 5, '10*6/L', 3, 0.8)],
    values: [
      reads('paraneoplastic-antibody', [['positive', 15]]),
      reads('neuronal-surface-antibody', [['positive', 6]]),
    ],
    source: fromMemory,
  },
];
