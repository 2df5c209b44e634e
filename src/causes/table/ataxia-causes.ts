import { commonPractice, fromMemory, read, recalled } from '../../kernel/cite.ts';
import { at, atLeast, type Cause, inKind, mondo, reads, shows, tempos, told, under } from './cause.ts';

const degeneration = 'cerebellar-degeneration';
const parts = ['cerebellar-vermis', 'cerebellar-hemisphere', 'flocculonodular-lobe'] as const;
const ataxiaChapter = recalled('adams-victor', 'degenerative ataxias');
const relatives = ['family/similar-disorder', 'family/ataxia'];

/** Medicines that put the cerebellum out of order at little more than their usual dose. */
const knownForAtaxia = ['phenytoin', 'carbamazepine', 'lithium', 'metronidazole', 'benzodiazepine'] as const;
/** Medicines and metals that do so in fewer people. */
const seldomForAtaxia = [
  'amiodarone',
  'valproate',
  'gabapentinoid',
  'opioid',
  'antipsychotic',
  'methotrexate',
  'anticholinergic',
  'other-heavy-metal',
  'lead',
] as const;

/** Causes of ataxia that waste, poison or inflame the cerebellum as a whole. */
export const ataxiaCauses: readonly Cause[] = [
  {
    key: 'alcoholic-cerebellar-degeneration',
    group: 'toxic',
    label: 'Alcoholic cerebellar degeneration',
    produces: [
      at(['cerebellar-vermis'], 'very-common'),
      at([degeneration], 'common'),
      at(['cerebellar-hemisphere'], 'uncommon'),
      at(['sensory-polyneuropathy', 'length-dependent-polyneuropathy'], 'rare'),
      at(['flocculonodular-lobe'], 'exceptional'),
    ],
    tempo: tempos.subacuteOrChronic,
    age: { from: 25, to: 100, outside: 0.03 },
    history: [
      told('alcohol-excess', 14, 0.04),
      told(['malnutrition', 'weight-loss'], 2, 0.95),
      told(relatives, 0.3, 1.05),
      told(['cancer', 'hearing-loss'], 0.6, 1),
      told(['falls', 'tremor', 'chronic-liver-disease', 'known-neuropathy'], 1.2, 1),
      told(['phenytoin', 'lithium', 'fever'], 0.6, 1),
    ],
    signs: [
      shows(['inspection/spider-naevi', 'inspection/jaundice', 'inspection/ascites'], 2, 1),
      shows(['gait/ataxic', 'coordination/heel-shin'], 2.5, 0.3),
      shows(['coordination/finger-nose', 'cranial-nerves/nystagmus', 'cranial-nerves/cerebellar-dysarthria'], 0.7, 1.3),
      shows(['higher-function/confusion'], 0.4, 1.1),
    ],
    values: [
      reads('mri-brain', [
        ['cerebellar-atrophy', 2],
        ['wernicke-signal', 0.4],
      ]),
    ],
    source: recalled('adams-victor', 'alcoholic cerebellar degeneration'),
  },
  {
    key: 'paraneoplastic-cerebellar-degeneration',
    group: 'paraneoplastic',
    label: 'Paraneoplastic cerebellar degeneration',
    mondo: mondo('MONDO:0044877', 'paraneoplastic cerebellar degeneration'),
    produces: [
      at([degeneration], 'common'),
      at(parts, 'uncommon'),
      at(['brainstem-diffuse'], 'rare'),
      inKind(['multiple-sites'], 'rare'),
    ],
    tempo: { hyperacute: 0.01, acute: 0.14, subacute: 0.7, chronic: 0.15 },
    // It grows for weeks to half a year and then stands still.
    durationDays: { to: 365, outside: 0.2, source: fromMemory },
    courses: { progressive: 1.6, 'relapsing-remitting': 0.1, static: 0.6 },
    age: { from: 30, to: 90, outside: 0.25 },
    sex: { male: 0.7, female: 1.3 },
    history: [
      told(['cancer', 'lymphoma'], 5, 0.8),
      told(['weight-loss', 'recent-weight-loss'], 2.5, 0.8),
      told('tobacco', 1.5, 0.9),
      told(relatives, 0.3, 1),
      told(['vertigo', 'vomiting', 'diplopia', 'slurred-speech'], 1.4, 1),
      told(['alcohol-excess'], 0.6, 1),
      told('immune-checkpoint-inhibitor', 1.6, 1),
      told(['oscillopsia', 'dysphagia', 'preceding-infection'], 1.2, 1),
      told(['phenytoin', 'lithium', 'metronidazole', 'fever'], 0.5, 1),
    ],
    signs: [
      shows(
        [
          'cranial-nerves/downbeat-nystagmus',
          'cranial-nerves/opsoclonus',
          'cranial-nerves/ocular-flutter',
          'cranial-nerves/vertical-nystagmus',
          'cranial-nerves/upbeat-nystagmus',
          'cranial-nerves/pendular-nystagmus',
        ],
        2,
        0.95,
      ),
      shows(
        [
          'inspection/titubation',
          'gait/unable-to-walk',
          'gait/unable-to-stand',
          'cranial-nerves/cerebellar-dysarthria',
        ],
        1.5,
        0.9,
      ),
    ],
    quantities: [atLeast('csf-white-cells', 5, '10*6/L', 2.5, 0.7)],
    values: [
      reads('ct-chest', [
        ['tumour', 6],
        ['normal', 0.7],
      ]),
      reads('paraneoplastic-antibody', [
        ['positive', 40],
        ['negative', 0.4],
      ]),
      reads('mri-brain', [
        ['normal', 1.3],
        ['cerebellar-atrophy', 0.9],
        ['space-occupying', 0.1],
      ]),
    ],
    source: recalled('adams-victor', 'paraneoplastic disorders'),
  },
  {
    key: 'autoimmune-cerebellar-ataxia',
    group: 'immune',
    label: 'Autoimmune cerebellar ataxia without a tumour',
    produces: [at([degeneration], 'common'), at(parts, 'uncommon'), at(['brainstem-diffuse'], 'rare')],
    // With antibodies to glutamic acid decarboxylase over weeks in 38 %, in the rest over months to years; 82 % were women, 85 % had
    // diabetes or another autoimmune disease, and a quarter had vertigo before.
    tempo: { hyperacute: 0.01, acute: 0.06, subacute: 0.38, chronic: 0.55 },
    courses: { progressive: 1.2, 'relapsing-remitting': 1.2 },
    age: { from: 25, to: 80, outside: 0.5 },
    sex: { male: 0.5, female: 1.5 },
    history: [
      told(
        ['hypothyroidism', 'hyperthyroidism', 'pernicious-anaemia', 'diabetes-mellitus', 'family/autoimmune-disease'],
        4,
        0.75,
      ),
      told('vertigo', 1.5, 0.95),
      told('cancer', 0.4, 1.05),
      told('preceding-infection', 1.5, 0.95),
      told(['sjogren-syndrome', 'lupus', 'stiffness', 'diplopia', 'oscillopsia'], 1.4, 1),
      told(['family/similar-disorder', 'family/ataxia'], 0.3, 1),
      told('immune-checkpoint-inhibitor', 1.8, 1),
      told(['coeliac-disease', 'rheumatoid-arthritis', 'epilepsy'], 1.2, 1),
      told(['alcohol-excess', 'phenytoin', 'lithium'], 0.5, 1),
    ],
    quantities: [atLeast('csf-white-cells', 5, '10*6/L', 3, 0.7)],
    values: [
      reads('csf-oligoclonal-bands', [['positive', 2.5]]),
      reads('neuronal-surface-antibody', [['positive', 15]]),
    ],
    signs: [shows(['cranial-nerves/downbeat-nystagmus', 'tone/trunk', 'cranial-nerves/opsoclonus'], 1.8, 1)],
    source: read('gad-ataxia-2015', 'abstract'),
  },
  {
    key: 'drug-induced-ataxia',
    group: 'toxic',
    label: 'Ataxia from a medicine or intoxication',
    produces: [
      at([degeneration], 'common'),
      at(parts, 'common'),
      at(['brainstem-diffuse', 'vestibular-nerve'], 'rare'),
      at(['diffuse-encephalopathy', 'action-tremor'], 'exceptional'),
    ],
    tempo: { hyperacute: 0.15, acute: 0.4, subacute: 0.25, chronic: 0.2 },
    history: [
      told(['cytarabine', 'fluorouracil'], 10, 1),
      told(knownForAtaxia, 5, 0.95),
      told('alcohol-excess', 2.5, 0.9),
      told('organic-solvents', 4, 1),
      told(relatives, 0.3, 1),
      told(seldomForAtaxia, 2.5, 1),
      told(['epilepsy', 'psychiatric-disorder', 'chronic-kidney-disease'], 1.5, 1),
      told([...knownForAtaxia, ...seldomForAtaxia, 'organic-solvents', 'tacrolimus'], 2.8, 1),
      told([...knownForAtaxia, ...seldomForAtaxia, 'organic-solvents', 'tacrolimus', 'proton-pump-inhibitor'], 1, 0.05),
      // By the magnesium that it takes away, and seldom.
      told('proton-pump-inhibitor', 0.5, 1),
      told(['vomiting', 'diplopia', 'tremor', 'diuretic', 'macrolide'], 1.2, 1),
    ],
    signs: [
      shows(['inspection/gingival-hypertrophy'], 5, 1),
      shows(['cranial-nerves/nystagmus', 'cranial-nerves/gaze-evoked-nystagmus'], 1.8, 0.7),
      shows(
        [
          'higher-function/drowsiness',
          'higher-function/confusion',
          'cranial-nerves/cerebellar-dysarthria',
          'involuntary-movements/asterixis',
        ],
        1.3,
        1,
      ),
      shows(['plantars/plantar-response', 'reflexes/ankle'], 0.8, 1),
    ],
    quantities: [atLeast('phenytoin-level', 80, 'umol/L', 15, 0.4), atLeast('lithium-level', 1.5, 'mmol/L', 4, 1)],
    source: commonPractice,
  },
  {
    key: 'gluten-ataxia',
    group: 'immune',
    label: 'Gluten ataxia',
    produces: [
      at([degeneration], 'common'),
      at(['cerebellar-vermis'], 'uncommon'),
      at(['cerebellar-hemisphere', 'flocculonodular-lobe'], 'rare'),
    ],
    tempo: { hyperacute: 0.01, acute: 0.04, subacute: 0.25, chronic: 0.7 },
    age: { from: 30, to: 80, outside: 0.5 },
    history: [
      told(['coeliac-disease', 'malabsorption'], 10, 0.8),
      told('family/autoimmune-disease', 1.5, 0.95),
      told(relatives, 0.4, 1.05),
      told(['weight-loss', 'recent-weight-loss'], 1.5, 0.95),
      told('alcohol-excess', 0.4, 1.05),
      told(['bowel-disturbance', 'abdominal-pain', 'family/autoimmune-disease'], 1.4, 1),
      told(['hypothyroidism', 'joint-pain', 'fatigue', 'numbness'], 1.1, 1),
    ],
    values: [
      reads('tissue-transglutaminase-antibody', [
        ['positive', 12],
        ['negative', 0.25],
      ]),
    ],
    signs: [
      shows(['gait/ataxic', 'coordination/heel-shin'], 1.3, 0.8),
      shows(['plantars/plantar-response', 'cranial-nerves/ophthalmoplegia'], 0.6, 1),
    ],
    source: ataxiaChapter,
  },
  {
    key: 'vitamin-e-deficiency-ataxia',
    group: 'nutritional',
    label: 'Ataxia of vitamin E deficiency',
    mondo: mondo('MONDO:0010188', 'familial isolated deficiency of vitamin E'),
    inheritance: ['autosomal-recessive'],
    produces: [
      at([degeneration, 'sensory-ganglionopathy', 'spinal-cord-posterolateral'], 'rare'),
      at(['spinal-cord-posterior', 'sensory-polyneuropathy', 'cerebellar-vermis'], 'rare'),
    ],
    tempo: tempos.chronic,
    age: { from: 4, to: 40, outside: 0.4 },
    history: [
      told('night-blindness', 2, 1),
      told(['malabsorption', 'bariatric-surgery', 'inflammatory-bowel-disease'], 6, 0.7),
      told('family/similar-disorder', 2, 0.95),
      told('family/consanguinity', 3, 1),
      told('chronic-liver-disease', 2, 1),
      told(['visual-loss', 'bowel-disturbance', 'early-satiety', 'family/ataxia'], 1.5, 1),
      told(['cardiomyopathy', 'diabetes-mellitus'], 0.6, 1),
    ],
    quantities: [under('vitamin-e', 12, 'umol/L', 15, 0.05, recalled('adams-victor', 'vitamin E deficiency'))],
    signs: [
      shows(
        ['inspection/titubation', 'cranial-nerves/constricted-visual-field', 'cranial-nerves/ophthalmoplegia'],
        2,
        1,
      ),
      shows(['reflexes/ankle', 'sensation/vibration', 'sensation/joint-position'], 1.8, 0.5),
      shows(['inspection/pes-cavus', 'inspection/scoliosis'], 1.3, 1),
    ],
    source: recalled('adams-victor', 'vitamin E deficiency'),
  },
  {
    key: 'hypothyroid-ataxia',
    group: 'metabolic',
    label: 'Ataxia of hypothyroidism',
    produces: [at([degeneration, 'cerebellar-vermis'], 'uncommon')],
    tempo: tempos.subacuteOrChronic,
    age: { from: 25, to: 100, outside: 0.15 },
    history: [
      told('hypothyroidism', 5, 0.8),
      told('fatigue', 1.4, 0.9),
      told(['hearing-loss', 'voice-change', 'hair-loss'], 1.3, 1),
      told(['cognitive-change', 'muscle-pain', 'cramps', 'obesity', 'lithium', 'amiodarone'], 1.2, 1),
      told(['family/ataxia', 'cancer'], 0.5, 1),
    ],
    quantities: [atLeast('tsh', 10, 'm[IU]/L', 10, 0.05, commonPractice)],
    signs: [
      shows(['special-tests/delayed-reflex-relaxation'], 10, 0.8),
      shows(['autonomic/bradycardia', 'inspection/periorbital-oedema', 'reflexes/ankle'], 1.5, 1),
    ],
    source: ataxiaChapter,
  },
  {
    key: 'post-infectious-cerebellitis',
    group: 'immune',
    label: 'Post-infectious cerebellitis',
    produces: [
      at([degeneration], 'common'),
      at(parts, 'common'),
      at(['brainstem-diffuse', 'raised-intracranial-pressure'], 'rare'),
      at(['diffuse-encephalopathy', 'hyperkinetic-syndrome', 'vestibular-nerve'], 'rare'),
    ],
    tempo: tempos.acute,
    courses: { improving: 2, monophasic: 2 },
    // Nine of ten are children, most of them under seven.
    age: { from: 1, to: 14, outside: 0.25 },
    history: [
      told(
        [
          'preceding-infection',
          'preceding-respiratory-infection',
          'preceding-gastroenteritis',
          'recent-vaccination',
          'fever',
        ],
        6,
        0.3,
      ),
      // Chickenpox above all.
      told(['herpes-zoster', 'rash'], 3, 0.97),
      told(['vomiting', 'headache', 'slurred-speech'], 1.3, 1),
      told(['alcohol-excess', 'cancer'], 0.5, 1),
      told(['family/ataxia', 'developmental-delay', 'phenytoin'], 0.4, 1),
      told(['unsteadiness', 'difficulty-walking', 'clumsiness', 'joint-pain'], 1.1, 1),
    ],
    quantities: [atLeast('csf-white-cells', 5, '10*6/L', 2.5, 0.6)],
    signs: [
      shows(['cranial-nerves/opsoclonus', 'cranial-nerves/sixth-nerve-palsy', 'reflexes/ankle'], 0.7, 1),
      shows(['inspection/titubation', 'gait/ataxic'], 1.4, 0.8),
    ],
    source: recalled('adams-victor', 'acute cerebellitis'),
  },
  {
    key: 'sporadic-adult-onset-ataxia',
    group: 'degenerative',
    label: 'Sporadic adult-onset ataxia of unknown cause',
    mondo: mondo('MONDO:0016591', 'sporadic adult-onset ataxia of unknown etiology'),
    produces: [
      at([degeneration], 'common'),
      at(['cerebellar-vermis'], 'common'),
      at(['cerebellar-hemisphere', 'flocculonodular-lobe'], 'uncommon'),
    ],
    tempo: tempos.lifelong,
    durationDays: { from: 365, outside: 0.3, source: fromMemory },
    age: { from: 40, to: 85, outside: 0.2 },
    history: [
      told(relatives, 0.1, 1.3),
      told('alcohol-excess', 0.3, 1.1),
      told(
        ['cancer', 'weight-loss', 'coeliac-disease', 'hypothyroidism', 'phenytoin', 'lithium', 'diabetes-mellitus'],
        0.5,
        1,
      ),
    ],
    signs: [shows(['autonomic/orthostatic-hypotension', 'sphincters/urinary-incontinence'], 0.4, 1.1)],
    source: ataxiaChapter,
  },
];
