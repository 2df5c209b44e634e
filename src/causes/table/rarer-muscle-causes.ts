import { fromMemory, recalled } from '../../kernel/cite.ts';
import { at, atLeast, type Cause, inKind, lengthDependent, reads, shows, tempos, told } from './cause.ts';

const muscleBook = recalled('amato-russell', 'disorders of muscle');

const geneFound = reads('genetic-test', [
  ['other', 8],
  ['negative', 0.3],
]);
const kin = (present: number, absent: number) => told('family/similar-disorder', present, absent);

/** Rarer causes of disease of muscle and of the neuromuscular junction. */
export const rarerMuscleCauses: readonly Cause[] = [
  {
    // Antibodies of the mother cross the placenta: from the first days of life, for weeks.
    key: 'transient-neonatal-myasthenia',
    group: 'immune',
    label: 'Transient neonatal myasthenia',
    // The age leaves it to the newborn, in whom it is the commonest of its place.
    produces: [
      at(['postsynaptic-junction'], 'common'),
      at(['presynaptic-junction'], 'uncommon'),
      at(['proximal-myopathy', 'brainstem-diffuse'], 'rare'),
    ],
    tempo: tempos.suddenOrAcute,
    durationDays: { to: 120, outside: 0.2, source: fromMemory },
    age: { from: 0, to: 0.3, outside: 0.0005 },
    // One child in six of mothers with myasthenia has it; what else runs in families is seldom known of the parent.
    history: [told(['family/autoimmune-disease', 'family/similar-disorder', 'myasthenia-gravis'], 20, 0.4)],
    signs: [
      shows(['cranial-nerves/weak-suck-or-cry', 'cranial-nerves/facial-weakness'], 1.5, 0.6),
      shows(
        ['cranial-nerves/dilated-pupil', 'cranial-nerves/unreactive-pupil', 'cranial-nerves/sluggish-pupil'],
        0.1,
        1.1,
      ),
      shows(
        ['inspection/equinovarus', 'inspection/joint-contracture', 'cranial-nerves/tongue-fasciculation'],
        0.4,
        1.05,
      ),
    ],
    values: [
      reads('achr-antibody', [
        ['positive', 30],
        ['negative', 0.2],
      ]),
      reads('repetitive-stimulation', [
        ['decrement', 5],
        ['normal', 0.5],
      ]),
    ],
    source: recalled('amato-russell', 'disorders of the neuromuscular junction'),
  },
  {
    key: 'sporadic-late-onset-nemaline-myopathy',
    group: 'paraprotein',
    label: 'Sporadic late-onset nemaline myopathy',
    produces: [at(['axial-myopathy'], 'uncommon'), at(['proximal-myopathy'], 'rare')],
    tempo: tempos.subacuteOrChronic,
    courses: { progressive: 1.4, improving: 0.1 },
    age: { from: 35, to: 90, outside: 0.1 },
    history: [
      told(['monoclonal-gammopathy', 'hiv-infection'], 12, 0.4),
      told(['breathlessness', 'orthopnoea', 'dysphagia'], 1.6, 0.8),
      told(['weight-loss', 'muscle-thinning'], 1.5, 0.9),
      told(['numbness', 'diplopia', 'rash', 'fluctuating-symptoms'], 0.4, 1.05),
      told('family/muscle-disease', 0.4, 1),
    ],
    signs: [
      shows(['inspection/dropped-head'], 3, 0.7),
      shows(['inspection/wasting'], 1.5, 0.9),
      shows(['cranial-nerves/ptosis', 'cranial-nerves/ophthalmoplegia'], 0.3, 1.1),
    ],
    quantities: [atLeast('creatine-kinase', 1000, 'U/L', 0.2, 1.3)],
    values: [
      reads('serum-immunofixation', [
        ['igg-kappa', 5],
        ['igg-lambda', 5],
        ['normal', 0.4],
      ]),
      reads('muscle-biopsy', [
        ['inflammatory', 0.3],
        ['normal', 0.3],
      ]),
      reads('needle-emg', [['myopathic-irritable', 2]]),
    ],
    source: muscleBook,
  },
  {
    key: 'diabetic-muscle-infarction',
    group: 'vascular',
    label: 'Infarction of a muscle in diabetes',
    produces: [
      at(['proximal-myopathy', 'no-lesion', 'not-anatomical', 'distal-myopathy'], 'rare'),
      at(['lumbosacral-plexus', 'lumbar-plexus', 'femoral-nerve-groin', 'femoral-nerve-pelvis'], 'rare'),
    ],
    tempo: tempos.acuteOrSubacute,
    courses: { improving: 1.2, progressive: 1 },
    durationDays: { to: 120, outside: 0.3, source: fromMemory },
    age: { from: 20, to: 80, outside: 0.3 },
    history: [
      told(['diabetes-mellitus', 'insulin-or-sulfonylurea'], 5, 0.03),
      told(['thigh-pain', 'leg-pain', 'muscle-pain'], 2.5, 0.2),
      told('limb-lump', 6, 0.7),
      told(['retinal-disease', 'chronic-kidney-disease', 'dialysis', 'known-neuropathy'], 2.5, 0.8),
      told(['fever', 'weight-loss', 'numbness', 'back-pain'], 0.5, 1.05),
    ],
    signs: [
      shows(['inspection/muscle-tenderness'], 4, 0.5),
      shows(['inspection/palpable-mass', 'inspection/oedema'], 4, 0.6),
    ],
    values: [
      reads('mri-muscle', [
        ['oedema', 4],
        ['normal', 0.05],
      ]),
    ],
    source: muscleBook,
  },
  {
    key: 'collagen-six-myopathy',
    group: 'hereditary',
    label: 'Bethlem myopathy or Ullrich dystrophy (collagen VI)',
    inheritance: ['autosomal-dominant', 'autosomal-recessive'],
    produces: [
      at(['proximal-myopathy', 'axial-myopathy'], 'rare'),
      at(['facioscapulohumeral-myopathy'], 'exceptional'),
    ],
    tempo: tempos.lifelong,
    durationDays: { from: 365, outside: 0.4, source: fromMemory },
    age: { from: 0, to: 40, outside: 0.15 },
    history: [
      kin(3, 0.85),
      told(['cardiomyopathy', 'syncope', 'atrial-fibrillation', 'family/cardiomyopathy-or-sudden-death'], 0.3, 1.1),
      told(['difficulty-with-stairs', 'falls', 'breathlessness'], 1.3, 1),
      told('family/consanguinity', 1.5, 1),
    ],
    signs: [
      shows(['inspection/joint-contracture', 'inspection/achilles-contracture'], 12, 0.1),
      shows(['inspection/scoliosis', 'inspection/kyphosis'], 1.6, 1),
      shows(['inspection/calf-pseudohypertrophy', 'cranial-nerves/facial-weakness'], 0.5, 1),
    ],
    quantities: [atLeast('creatine-kinase', 2000, 'U/L', 0.2, 1.2)],
    values: [
      geneFound,
      reads('ecg', [
        ['conduction-disease', 0.2],
        ['normal', 1.4],
      ]),
      reads('muscle-biopsy', [['dystrophic', 2]]),
    ],
    source: muscleBook,
  },
  {
    key: 'congenital-muscular-dystrophy',
    group: 'hereditary',
    label: 'Congenital muscular dystrophy',
    inheritance: ['autosomal-recessive', 'autosomal-dominant'],
    produces: [
      at(['proximal-myopathy'], 'uncommon'),
      at(['axial-myopathy'], 'rare'),
      at(['lower-motor-neuron-system', 'facioscapulohumeral-myopathy'], 'exceptional'),
    ],
    tempo: tempos.lifelong,
    courses: { static: 1.3, progressive: 1 },
    age: { from: 0, to: 3, outside: 0.05 },
    history: [
      told(['developmental-delay', 'epilepsy', 'seizure', 'visual-loss'], 2.5, 0.8),
      told('family/consanguinity', 3, 1),
      kin(3, 0.9),
    ],
    signs: [
      shows(['inspection/frog-leg-posture'], 1.5, 1),
      shows(['inspection/joint-contracture', 'inspection/achilles-contracture', 'inspection/equinovarus'], 2.5, 0.7),
      shows(['inspection/scoliosis', 'inspection/head-lag', 'inspection/dropped-head'], 1.5, 1),
      shows(['cranial-nerves/ptosis', 'cranial-nerves/ophthalmoplegia'], 0.3, 1.1),
    ],
    quantities: [atLeast('creatine-kinase', 500, 'U/L', 4, 0.2)],
    values: [
      geneFound,
      reads('muscle-biopsy', [
        ['dystrophic', 8],
        ['normal', 0.2],
      ]),
      reads('mri-brain', [['white-matter-disease', 5]]),
    ],
    source: muscleBook,
  },
  {
    // Limp and hard to feed after birth, with a face that moves and jerks that are kept or dull; hungry and fat in later years.
    key: 'prader-willi-syndrome',
    group: 'hereditary',
    label: 'Prader-Willi syndrome',
    produces: [at(['diffuse-encephalopathy', 'proximal-myopathy', 'postsynaptic-junction'], 'rare')],
    tempo: tempos.lifelong,
    courses: { static: 1.5, improving: 1.3, progressive: 0.4 },
    age: { from: 0, to: 1, outside: 0.02 },
    history: [told(['obesity', 'developmental-delay', 'sleep-apnoea'], 1.8, 0.95)],
    signs: [
      shows(['inspection/frog-leg-posture'], 1.8, 1),
      shows(['cranial-nerves/weak-suck-or-cry', 'inspection/head-lag'], 2, 0.6),
      shows(['tone/trunk', 'tone/upper-limb', 'tone/lower-limb'], 1.3, 0.3),
      shows(
        [
          'cranial-nerves/ptosis',
          'cranial-nerves/ophthalmoplegia',
          'cranial-nerves/facial-weakness',
          'cranial-nerves/tongue-fasciculation',
          'autonomic/paradoxical-breathing',
          'inspection/joint-contracture',
        ],
        0.2,
        1.2,
      ),
    ],
    quantities: [atLeast('creatine-kinase', 500, 'U/L', 0.1, 1.4)],
    values: [geneFound],
    source: muscleBook,
  },
  {
    key: 'rippling-muscle-disease',
    group: 'hereditary',
    label: 'Rippling muscle disease',
    inheritance: ['autosomal-dominant'],
    produces: [at(['myotonic-myopathy', 'no-lesion'], 'rare'), at(['proximal-myopathy', 'distal-myopathy'], 'rare')],
    tempo: tempos.chronic,
    age: { from: 4, to: 75, outside: 0.4 },
    history: [
      told(['stiffness', 'exercise-cramps', 'cramps', 'muscle-pain'], 2, 0.3),
      told(['family/similar-disorder', 'family/muscle-disease', 'myasthenia-gravis', 'thymoma'], 3, 0.8),
    ],
    signs: [
      shows(['involuntary-movements/muscle-rippling'], 80, 0.05),
      shows(['inspection/muscle-hypertrophy', 'inspection/calf-pseudohypertrophy'], 2, 0.9),
      shows(['involuntary-movements/grip-myotonia'], 0.3, 1.05),
    ],
    quantities: [atLeast('creatine-kinase', 400, 'U/L', 2, 0.5)],
    values: [
      geneFound,
      reads('needle-emg', [
        ['myotonic-discharges', 0.1],
        ['normal', 1.5],
      ]),
    ],
    source: muscleBook,
  },
  {
    key: 'polymyalgia-rheumatica',
    group: 'immune',
    label: 'Polymyalgia rheumatica',
    produces: [
      at(['no-lesion'], 'uncommon'),
      at(['not-anatomical', 'axial-myopathy'], 'rare'),
      at(['proximal-myopathy'], 'uncommon'),
    ],
    tempo: tempos.subacute,
    durationDays: { from: 10, to: 1095, outside: 0.4, source: fromMemory },
    age: { from: 50, to: 100, outside: 0.03 },
    sex: { male: 0.7, female: 1.3 },
    history: [
      told(['shoulder-pain', 'muscle-pain', 'stiffness', 'neck-pain'], 3, 0.1),
      told(['headache', 'jaw-claudication', 'scalp-tenderness', 'fever', 'weight-loss', 'fatigue'], 1.6, 0.95),
      told('stiffness', 2.5, 0.7),
      told(['numbness', 'dysphagia', 'rash'], 0.4, 1.05),
    ],
    signs: [shows(['inspection/wasting', 'inspection/fasciculation'], 0.3, 1.05)],
    quantities: [
      atLeast('crp', 10, 'mg/L', 3, 0.15),
      atLeast('esr', 40, 'mm/h', 3, 0.2),
      atLeast('creatine-kinase', 400, 'U/L', 0.05, 1.5),
    ],
    source: recalled('adams-victor', 'giant cell arteritis and polymyalgia'),
  },
  {
    key: 'eosinophilic-fasciitis-or-myositis',
    group: 'immune',
    label: 'Eosinophilic fasciitis or myositis',
    produces: [at(['proximal-myopathy', 'no-lesion', 'distal-myopathy', 'not-anatomical'], 'rare')],
    tempo: tempos.subacute,
    age: { from: 15, to: 85, outside: 0.4 },
    history: [
      told(['muscle-pain', 'stiffness', 'joint-pain', 'rash'], 2, 0.5),
      told('heavy-exertion', 1.6, 1),
      told('raw-meat', 0.5, 1),
    ],
    signs: [
      shows(['inspection/oedema', 'inspection/joint-contracture', 'inspection/trophic-skin-change'], 4, 0.5),
      shows(['inspection/muscle-tenderness'], 1.6, 0.9),
    ],
    quantities: [atLeast('eosinophils', 0.7, '10*9/L', 10, 0.1)],
    source: muscleBook,
  },
  {
    key: 'other-muscle-glycogenosis',
    group: 'hereditary',
    label: 'Debrancher, phosphofructokinase or another glycogen disease of muscle',
    inheritance: ['autosomal-recessive'],
    produces: [
      at(['proximal-myopathy', 'distal-myopathy', 'no-lesion'], 'rare'),
      at(['axial-myopathy', 'motor-polyneuropathy'], 'exceptional'),
    ],
    tempo: tempos.lifelong,
    age: { from: 0, to: 60, outside: 0.4 },
    history: [
      told(['exercise-cramps', 'heavy-exertion', 'dark-urine', 'muscle-pain'], 2.5, 0.7),
      told(['chronic-liver-disease', 'cardiomyopathy'], 3, 0.8),
      told('second-wind', 0.4, 1),
      told('family/consanguinity', 2.5, 1),
      kin(3, 0.9),
    ],
    signs: [shows(['inspection/enlarged-liver-or-spleen'], 15, 0.7)],
    quantities: [atLeast('creatine-kinase', 400, 'U/L', 2, 0.3)],
    values: [geneFound],
    source: muscleBook,
  },
  {
    key: 'graft-versus-host-neuromuscular-disease',
    group: 'immune',
    label: 'Myositis, neuropathy or myasthenia of graft-versus-host disease',
    produces: [
      at(['proximal-myopathy', 'postsynaptic-junction', 'axial-myopathy'], 'rare'),
      inKind(['polyradiculoneuropathy'], 'rare'),
      at([...lengthDependent, 'small-fibre-polyneuropathy'], 'exceptional'),
    ],
    tempo: tempos.subacute,
    age: { from: 1, to: 90, outside: 0.5 },
    history: [
      told('stem-cell-transplant', 60, 0.03),
      told(['rash', 'dry-eyes', 'dry-mouth', 'muscle-pain', 'cramps', 'joint-pain'], 1.6, 0.8),
    ],
    signs: [shows(['inspection/trophic-skin-change', 'inspection/joint-contracture'], 1.6, 1)],
    quantities: [atLeast('creatine-kinase', 400, 'U/L', 1.5, 0.8)],
    source: muscleBook,
  },
];
