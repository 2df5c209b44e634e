import { fromMemory, recalled } from '../../kernel/cite.ts';
import { at, type Cause, inKind, lengthDependent, mondo, reads, shows, sided, tempos, told } from './cause.ts';

const degeneration = 'cerebellar-degeneration';
const parts = ['cerebellar-vermis', 'cerebellar-hemisphere', 'flocculonodular-lobe'] as const;
const ataxiaChapter = recalled('adams-victor', 'degenerative ataxias');
const relatives = ['family/similar-disorder', 'family/ataxia'];

/** Ataxias that run in families. */
export const hereditaryAtaxiaCauses: readonly Cause[] = [
  {
    key: 'dominant-cerebellar-ataxia',
    group: 'hereditary',
    inheritance: ['autosomal-dominant'],
    label: 'Autosomal dominant cerebellar ataxia',
    mondo: mondo('MONDO:0020380', 'autosomal dominant cerebellar ataxia'),
    produces: [
      at([degeneration], 'common'),
      at(parts, 'uncommon'),
      at(
        [
          'akinetic-rigid-syndrome',
          'hyperkinetic-syndrome',
          'midbrain-dorsal',
          'upper-motor-neuron-system',
          'brainstem-diffuse',
        ],
        'rare',
      ),
      at(['bulbar-motor-nuclei'], 'exceptional'),
    ],
    tempo: tempos.lifelong,
    durationDays: { from: 365, outside: 0.35, source: fromMemory },
    courses: { progressive: 1.5, improving: 0.05, static: 0.3 },
    age: { from: 8, to: 70, outside: 0.4 },
    history: [
      // Of people with ataxia and no relative who has it a tenth or so carry an expansion all the same.
      told(relatives, 15, 0.22),
      told('alcohol-excess', 0.4, 1.1),
      told('cancer', 0.5, 1.05),
      told(['family/parkinsonism', 'family/chorea', 'family/dementia'], 1.5, 1),
      told(['restless-legs', 'diplopia', 'slurred-speech', 'family/similar-disorder'], 1.2, 1),
      told(['fever', 'vomiting', 'family/consanguinity'], 0.5, 1),
    ],
    signs: [
      shows(
        ['cranial-nerves/slow-saccades', 'cranial-nerves/ophthalmoplegia', 'cranial-nerves/lid-retraction'],
        3,
        0.9,
      ),
      shows(
        ['cranial-nerves/facial-myokymia', 'inspection/fasciculation', 'cranial-nerves/optic-disc-pallor'],
        2,
        0.95,
      ),
      shows(
        ['cranial-nerves/gaze-evoked-nystagmus', 'cranial-nerves/saccadic-dysmetria', 'cranial-nerves/broken-pursuit'],
        1.3,
        0.95,
      ),
      shows(['higher-function/ocular-apraxia', 'autonomic/fever'], 0.4, 1),
    ],
    values: [
      reads('mri-brain', [
        ['cerebellar-atrophy', 2],
        ['normal', 0.6],
      ]),
      reads('genetic-test', [
        ['other', 12],
        ['negative', 0.3],
      ]),
    ],
    source: ataxiaChapter,
  },
  {
    key: 'friedreich-ataxia',
    group: 'hereditary',
    inheritance: ['autosomal-recessive'],
    label: 'Friedreich ataxia',
    mondo: mondo('MONDO:0100339', 'Friedreich ataxia'),
    produces: [
      at([degeneration, 'sensory-ganglionopathy'], 'uncommon'),
      at(['spinal-cord-posterolateral'], 'uncommon'),
      at(parts, 'rare'),
      inKind(['multiple-sites'], 'uncommon'),
      at(['hyperkinetic-syndrome', 'spinal-cord-posterior', ...lengthDependent], 'rare'),
      at(['spinal-cord-lateral'], 'exceptional'),
    ],
    tempo: tempos.lifelong,
    courses: { progressive: 1.4, improving: 0.05, 'relapsing-remitting': 0.05 },
    age: { from: 3, to: 40, outside: 0.15 },
    history: [
      told('family/similar-disorder', 4, 0.9),
      told(['heart-failure', 'cardiomyopathy'], 6, 0.85),
      told('diabetes-mellitus', 2, 0.95),
      told('family/consanguinity', 2, 1),
      told(['hearing-loss', 'slurred-speech'], 1.3, 1),
      told('family/cardiomyopathy-or-sudden-death', 1.5, 1),
      told(['clumsiness', 'unsteadiness', 'falls', 'family/ataxia'], 1.2, 1),
      told(['fever', 'vomiting', 'alcohol-excess', 'cancer', 'malabsorption'], 0.4, 1),
    ],
    signs: [
      shows(['inspection/pes-cavus', 'inspection/scoliosis', 'inspection/kyphosis'], 6, 0.4),
      shows(['plantars/plantar-response'], 2.5, 0.6),
      shows(['cranial-nerves/hearing-loss', 'cranial-nerves/optic-disc-pallor'], 2, 0.95),
      shows(['sensation/vibration', 'sensation/joint-position'], 1.8, 0.5),
      shows(['cranial-nerves/saccadic-intrusions'], 2, 1),
      shows(
        ['higher-function/ocular-apraxia', 'cranial-nerves/abnormal-head-impulse', 'cranial-nerves/ophthalmoplegia'],
        0.4,
        1,
      ),
      shows(['reflexes/ankle', 'reflexes/knee'], 1.3, 0.6),
    ],
    values: [
      reads('genetic-test', [
        ['fxn-expansion', 300],
        ['negative', 0.05],
      ]),
      reads('nerve-conduction-pattern', [
        ['sensory-only', 4],
        ['normal', 0.1],
      ]),
      reads('mri-brain', [['normal', 1.3]]),
    ],
    source: ataxiaChapter,
  },
  {
    key: 'fragile-x-tremor-ataxia-syndrome',
    group: 'hereditary',
    inheritance: ['x-linked'],
    label: 'Fragile X tremor-ataxia syndrome',
    mondo: mondo('MONDO:0010382', 'fragile X-associated tremor/ataxia syndrome'),
    produces: [
      at([degeneration, 'action-tremor'], 'rare'),
      at(parts, 'rare'),
      at(['akinetic-rigid-syndrome'], 'rare'),
      at(['frontal-gait-disorder', 'length-dependent-polyneuropathy'], 'exceptional'),
    ],
    tempo: tempos.lifelong,
    age: { from: 50, to: 85, outside: 0.05 },
    sex: { male: 1.8, female: 0.2 },
    history: [
      told(['family/similar-disorder', 'family/tremor'], 2, 0.9),
      told('cognitive-change', 1.8, 0.8),
      told('tremor', 1.8, 0.4),
      told(['family/parkinsonism', 'family/dementia', 'amenorrhoea-or-galactorrhoea', 'unsteadiness'], 1.3, 1),
      told(['family/ataxia', 'falls', 'hypothyroidism', 'numbness'], 1.2, 1),
      told(['alcohol-excess', 'lithium', 'valproate'], 0.5, 1),
    ],
    signs: [
      shows(['involuntary-movements/intention-tremor', 'involuntary-movements/action-tremor'], 4, 0.2),
      shows(
        ['gait/ataxic', 'gait/tandem', 'higher-function/executive-dysfunction', 'involuntary-movements/bradykinesia'],
        1.5,
        0.8,
      ),
    ],
    source: ataxiaChapter,
  },
  {
    key: 'ataxia-with-neuropathy-and-vestibular-areflexia',
    group: 'hereditary',
    inheritance: ['autosomal-recessive'],
    label: 'Cerebellar ataxia with neuropathy and vestibular areflexia',
    mondo: mondo('MONDO:0044720', 'cerebellar ataxia with neuropathy and bilateral vestibular areflexia syndrome'),
    produces: [
      at([degeneration, 'sensory-ganglionopathy'], 'uncommon'),
      at(['sensory-polyneuropathy', 'vestibular-nerve'], 'rare'),
    ],
    tempo: tempos.lifelong,
    age: { from: 35, to: 75, outside: 0.15 },
    history: [
      told(['oscillopsia', 'worse-in-the-dark'], 3, 0.6),
      told('family/similar-disorder', 2, 0.9),
      told('chronic-cough', 6, 0.6),
      told(['neuropathic-pain', 'numbness', 'unsteadiness', 'dysphagia'], 1.3, 1),
      told(['alcohol-excess', 'diabetes-mellitus', 'cisplatin', 'aminoglycoside'], 0.5, 1),
    ],
    signs: [
      shows(['cranial-nerves/abnormal-head-impulse'], 10, 0.15),
      shows(['sensation/vibration', 'sensation/joint-position', 'gait/sensory-ataxic'], 2.5, 0.3),
      shows(
        [
          'cranial-nerves/cerebellar-dysarthria',
          'cranial-nerves/gaze-evoked-nystagmus',
          'autonomic/orthostatic-hypotension',
          'cranial-nerves/downbeat-nystagmus',
        ],
        1.4,
        0.95,
      ),
      shows(['plantars/plantar-response'], 0.5, 1),
    ],
    sides: [sided(['cranial-nerves/abnormal-head-impulse'], { one: 0.2, both: 1.5 })],
    values: [
      reads('nerve-conduction-pattern', [
        ['sensory-only', 5],
        ['normal', 0.05],
      ]),
    ],
    source: ataxiaChapter,
  },
  {
    key: 'episodic-ataxia',
    group: 'hereditary',
    inheritance: ['autosomal-dominant'],
    label: 'Episodic ataxia',
    mondo: mondo('MONDO:0016227', 'hereditary episodic ataxia'),
    produces: [
      at([degeneration, 'no-lesion'], 'rare'),
      at(parts, 'rare'),
      at(['brainstem-diffuse', 'vestibular-nerve'], 'rare'),
    ],
    tempo: { hyperacute: 0.6, acute: 0.1, subacute: 0.05, chronic: 0.25 },
    courses: { 'relapsing-remitting': 8, fluctuating: 4, progressive: 0.3 },
    age: { from: 2, to: 25, outside: 0.2 },
    history: [
      told(relatives, 8, 0.4),
      told('similar-attacks-before', 6, 0.1),
      told(['vertigo', 'slurred-speech'], 1.6, 0.9),
      told(['epilepsy', 'migraine'], 1.3, 1),
      told(['family/migraine', 'family/epilepsy', 'heavy-exertion', 'resolved-deficit', 'diplopia'], 1.4, 1),
      told(['fever', 'head-injury', 'hypertension', 'alcohol-excess'], 0.5, 1),
    ],
    signs: [
      shows(['involuntary-movements/myokymia', 'cranial-nerves/nystagmus'], 2, 0.9),
      shows(['cranial-nerves/downbeat-nystagmus', 'cranial-nerves/gaze-evoked-nystagmus', 'gait/tandem'], 1.6, 1),
      shows(['reflexes/ankle', 'plantars/plantar-response'], 0.6, 1),
    ],
    source: ataxiaChapter,
  },
  {
    key: 'ataxia-telangiectasia',
    group: 'hereditary',
    inheritance: ['autosomal-recessive'],
    label: 'Ataxia-telangiectasia',
    mondo: mondo('MONDO:0008840', 'ataxia telangiectasia'),
    produces: [at([degeneration, 'hyperkinetic-syndrome', 'cerebellar-vermis'], 'rare')],
    tempo: tempos.lifelong,
    age: { from: 1, to: 15, outside: 0.05 },
    history: [
      told(['developmental-delay', 'loss-of-skills'], 2, 1),
      told(['immunosuppression', 'lymphoma', 'red-eye'], 4, 0.8),
      told('family/similar-disorder', 2, 0.95),
      told('family/consanguinity', 2, 1),
      told('preceding-respiratory-infection', 1.3, 1),
      told(['fever', 'vomiting', 'preceding-infection'], 0.8, 1),
      told(['cancer', 'chronic-cough', 'sinus-or-ear-infection'], 1.5, 1),
    ],
    signs: [
      shows(['inspection/conjunctival-telangiectasia'], 60, 0.5),
      // The head is thrown to bring the eyes where they should look.
      shows(['higher-function/ocular-apraxia'], 8, 0.9),
      shows(
        [
          'cranial-nerves/slow-saccades',
          'cranial-nerves/gaze-palsy',
          'involuntary-movements/chorea',
          'involuntary-movements/dystonia',
        ],
        3,
        0.6,
      ),
      shows(['cranial-nerves/ptosis', 'plantars/plantar-response', 'inspection/pes-cavus'], 0.6, 1),
      shows(['cranial-nerves/drooling', 'cranial-nerves/cerebellar-dysarthria'], 1.3, 1),
    ],
    source: ataxiaChapter,
  },
  {
    key: 'spastic-ataxia',
    group: 'hereditary',
    inheritance: ['autosomal-recessive', 'autosomal-dominant'],
    label: 'Hereditary spastic ataxia',
    produces: [
      at([degeneration, 'spinal-cord-lateral', 'spinal-cord-posterolateral'], 'rare'),
      at(['upper-motor-neuron-system', 'cerebellar-vermis'], 'rare'),
      inKind(['multiple-sites'], 'rare'),
      at(['brainstem-diffuse', 'spinal-cord-transverse'], 'rare'),
      at(['length-dependent-polyneuropathy', 'corticobulbar-both-sides'], 'exceptional'),
    ],
    tempo: tempos.lifelong,
    age: { from: 1, to: 45, outside: 0.2 },
    history: [
      told(['developmental-delay', 'loss-of-skills'], 2, 1),
      told([...relatives, 'family/spastic-paraplegia'], 5, 0.5),
      told('family/consanguinity', 3, 1),
      told('stiffness', 1.4, 1),
      told(['unsteadiness', 'slurred-speech', 'difficulty-walking'], 1.3, 0.9),
      told(['fever', 'cancer', 'hypertension', 'resolved-deficit'], 0.5, 1),
    ],
    signs: [
      shows(['gait/spastic', 'tone/lower-limb', 'clonus/ankle', 'plantars/plantar-response'], 3, 0.2),
      shows(['inspection/pes-cavus'], 1.8, 0.9),
      shows(
        ['gait/ataxic', 'cranial-nerves/cerebellar-dysarthria', 'cranial-nerves/nystagmus', 'coordination/finger-nose'],
        2.5,
        0.4,
      ),
      // Paraplegin and the mitochondria.
      shows(['cranial-nerves/ptosis', 'cranial-nerves/ophthalmoplegia', 'cranial-nerves/optic-disc-pallor'], 2, 1),
    ],
    source: ataxiaChapter,
  },
];
