import { fromMemory, recalled } from '../../kernel/cite.ts';
import { at, atLeast, type Cause, mondo, reads, shows, tempos, told, under } from './cause.ts';

const muscleBook = recalled('amato-russell');

const kin = ['family/similar-disorder', 'family/muscle-disease'] as const;

/** Hereditary dystrophies, metabolic myopathies and diseases of the ion channels of muscle. */
export const hereditaryMuscleCauses: readonly Cause[] = [
  {
    key: 'duchenne-or-becker-dystrophy',
    group: 'hereditary',
    label: 'Duchenne or Becker muscular dystrophy',
    inheritance: ['x-linked'],
    produces: [at(['proximal-myopathy'], 'uncommon'), at(['finger-flexor-quadriceps-myopathy'], 'rare')],
    tempo: tempos.lifelong,
    courses: { progressive: 1.3, improving: 0.05 },
    durationDays: { from: 60, outside: 0.5, source: fromMemory },
    age: { from: 0, to: 30, outside: 0.05 },
    sex: { male: 1.9, female: 0.04 },
    history: [
      told(['cognitive-change', 'muscle-pain', 'dark-urine', 'difficulty-walking'], 1.2, 1),
      told(['falls', 'difficulty-with-stairs', 'exercise-cramps'], 1.4, 0.95),
      told(kin, 4, 0.85),
      told(['cardiomyopathy', 'family/cardiomyopathy-or-sudden-death'], 3, 0.9),
      told('rash', 0.3, 1),
    ],
    signs: [
      shows(['inspection/hyperlordosis', 'gait/waddling', 'inspection/achilles-contracture'], 1.5, 1),
      shows(['inspection/calf-pseudohypertrophy'], 15, 0.3),
      shows(['gait/gowers-sign'], 2, 0.7),
    ],
    quantities: [atLeast('creatine-kinase', 1000, 'U/L', 6, 0.03)],
    values: [
      reads('muscle-biopsy', [
        ['dystrophic', 6],
        ['normal', 0.1],
        ['inflammatory', 0.3],
      ]),
      reads('genetic-test', [
        ['other', 8],
        ['negative', 0.3],
      ]),
    ],
    source: muscleBook,
  },
  {
    key: 'emery-dreifuss-dystrophy',
    group: 'hereditary',
    label: 'Emery-Dreifuss muscular dystrophy',
    inheritance: ['x-linked', 'autosomal-dominant'],
    mondo: mondo('MONDO:0016830', 'Emery-Dreifuss muscular dystrophy'),
    produces: [at(['facioscapulohumeral-myopathy', 'axial-myopathy'], 'uncommon'), at(['proximal-myopathy'], 'rare')],
    tempo: tempos.lifelong,
    durationDays: { from: 365, outside: 0.4, source: fromMemory },
    age: { from: 2, to: 35, outside: 0.2 },
    history: [
      told(kin, 4, 0.85),
      told(['family/cardiomyopathy-or-sudden-death', 'syncope', 'atrial-fibrillation', 'cardiomyopathy'], 4, 0.7),
    ],
    signs: [
      shows(['inspection/scapular-winging', 'autonomic/bradycardia', 'autonomic/arrhythmia'], 2, 0.95),
      shows(['inspection/joint-contracture', 'inspection/achilles-contracture'], 12, 0.2),
      shows(['cranial-nerves/facial-weakness'], 0.3, 1.2),
    ],
    quantities: [atLeast('creatine-kinase', 5000, 'U/L', 0.4, 1.05)],
    values: [
      reads('genetic-test', [
        ['other', 8],
        ['negative', 0.3],
      ]),
      reads('muscle-biopsy', [['dystrophic', 3]]),
      reads('ecg', [
        ['conduction-disease', 8],
        ['normal', 0.4],
      ]),
    ],
    source: muscleBook,
  },
  {
    key: 'oculopharyngeal-muscular-dystrophy',
    group: 'hereditary',
    label: 'Oculopharyngeal muscular dystrophy',
    inheritance: ['autosomal-dominant'],
    mondo: mondo('MONDO:0008116', 'oculopharyngeal muscular dystrophy'),
    produces: [
      at(['bulbar-motor-nuclei', 'postsynaptic-junction'], 'rare'),
      at(['oculopharyngeal-myopathy'], 'very-common'),
      at(['proximal-myopathy'], 'rare'),
    ],
    tempo: tempos.chronic,
    durationDays: { from: 365, outside: 0.5, source: fromMemory },
    age: { from: 40, to: 80, outside: 0.1 },
    history: [
      told('drooping-eyelids', 2, 0.6),
      told(['weight-loss', 'voice-change'], 1.2, 1),
      told(kin, 5, 0.6),
      told('dysphagia', 3, 0.3),
      told(['diplopia', 'fluctuating-symptoms'], 0.5, 1.2),
    ],
    signs: [
      shows(['cranial-nerves/ptosis'], 1.5, 0.3),
      shows(['cranial-nerves/fatigable-ptosis', 'special-tests/ice-pack'], 0.3, 1.1),
    ],
    quantities: [atLeast('creatine-kinase', 1000, 'U/L', 0.3, 1.05)],
    values: [
      reads('achr-antibody', [
        ['positive', 0.05],
        ['negative', 1.5],
      ]),
      reads('muscle-biopsy', [['rimmed-vacuoles', 2.5]]),
      reads('genetic-test', [
        ['other', 8],
        ['negative', 0.3],
      ]),
    ],
    source: muscleBook,
  },
  {
    key: 'chronic-progressive-external-ophthalmoplegia',
    group: 'hereditary',
    label: 'Chronic progressive external ophthalmoplegia',
    inheritance: ['mitochondrial', 'autosomal-dominant'],
    mondo: mondo('MONDO:0005181', 'progressive external ophthalmoplegia'),
    produces: [
      // Lids that have hung for years are called myasthenia first.
      at(['postsynaptic-junction'], 'uncommon'),
      at(['oculomotor-nerve'], 'rare'),
      at(['oculopharyngeal-myopathy'], 'very-common'),
    ],
    tempo: tempos.lifelong,
    durationDays: { from: 365, outside: 0.4, source: fromMemory },
    age: { from: 5, to: 60, outside: 0.4 },
    history: [
      told('drooping-eyelids', 1.6, 0.7),
      told(['family/similar-disorder', 'visual-loss', 'migraine'], 1.2, 1),
      told(kin, 4, 0.85),
      told(['hearing-loss', 'diabetes-mellitus'], 2.5, 0.9),
      told(['fluctuating-symptoms', 'fatigable-weakness'], 0.4, 1.3),
    ],
    signs: [
      shows(['cranial-nerves/fatigable-ptosis', 'special-tests/ice-pack', 'special-tests/lid-twitch'], 0.3, 1.1),
      shows(['cranial-nerves/ophthalmoplegia'], 3, 0.2),
    ],
    quantities: [atLeast('creatine-kinase', 1000, 'U/L', 0.3, 1.05), atLeast('lactate', 2.5, 'mmol/L', 4, 0.7)],
    values: [
      reads('genetic-test', [
        ['other', 8],
        ['negative', 0.5],
      ]),
      reads('repetitive-stimulation', [
        ['decrement', 0.3],
        ['normal', 1.4],
      ]),
      reads('achr-antibody', [
        ['positive', 0.03],
        ['negative', 2],
      ]),
      reads('ecg', [['conduction-disease', 3]]),
      reads('muscle-biopsy', [
        ['mitochondrial', 12],
        ['normal', 0.3],
      ]),
    ],
    source: muscleBook,
  },
  {
    key: 'mitochondrial-myopathy',
    group: 'hereditary',
    label: 'Mitochondrial myopathy',
    inheritance: ['mitochondrial', 'autosomal-recessive'],
    mondo: mondo('MONDO:0009637', 'inborn mitochondrial myopathy'),
    produces: [
      at(['axial-myopathy', 'postsynaptic-junction', 'distal-myopathy'], 'rare'),
      at(['proximal-myopathy', 'oculopharyngeal-myopathy'], 'uncommon'),
      at(['facioscapulohumeral-myopathy'], 'rare'),
    ],
    tempo: tempos.lifelong,
    durationDays: { from: 60, outside: 0.5, source: fromMemory },
    history: [
      told(['exercise-cramps', 'muscle-pain', 'cardiomyopathy', 'stroke'], 1.4, 1),
      told(kin, 4, 0.85),
      told(['hearing-loss', 'diabetes-mellitus', 'seizure', 'migraine'], 2.5, 0.8),
      told('fatigue', 2, 0.5),
    ],
    signs: [
      shows(['cranial-nerves/ptosis', 'cranial-nerves/ophthalmoplegia', 'cranial-nerves/hearing-loss'], 2.5, 0.8),
    ],
    quantities: [atLeast('lactate', 2.5, 'mmol/L', 6, 0.5)],
    values: [
      reads('genetic-test', [
        ['other', 8],
        ['negative', 0.3],
      ]),
      reads('muscle-biopsy', [
        ['mitochondrial', 15],
        ['normal', 0.3],
      ]),
    ],
    source: muscleBook,
  },
  {
    key: 'pompe-disease',
    group: 'hereditary',
    label: 'Pompe disease',
    inheritance: ['autosomal-recessive'],
    mondo: mondo('MONDO:0009290', 'glycogen storage disease II'),
    produces: [
      at(['lower-motor-neuron-system', 'phrenic-nerve'], 'rare'),
      at(['proximal-myopathy', 'axial-myopathy'], 'uncommon'),
      at(['facioscapulohumeral-myopathy'], 'rare'),
    ],
    tempo: tempos.lifelong,
    durationDays: { from: 180, outside: 0.5, source: fromMemory },
    history: [
      // In infants the heart is thick and the tongue large.
      told(['cardiomyopathy', 'heart-failure'], 3, 1),
      told(['falls', 'difficulty-with-stairs', 'back-pain', 'fatigue'], 1.2, 1),
      told(['sleep-apnoea', 'morning-headache', 'weight-loss'], 1.5, 1),
      told('family/consanguinity', 2, 1),
      told(kin, 4, 0.85),
      told(['orthopnoea', 'breathlessness'], 5, 0.4),
    ],
    signs: [
      shows(['inspection/scapular-winging', 'inspection/scoliosis', 'inspection/hyperlordosis'], 1.5, 1),
      shows(['autonomic/paradoxical-breathing', 'autonomic/breathlessness-lying-flat'], 6, 0.7),
    ],
    quantities: [atLeast('creatine-kinase', 400, 'U/L', 1.3, 0.6)],
    values: [
      reads('needle-emg', [
        ['myopathic-irritable', 2],
        ['myotonic-discharges', 2.5],
        ['normal', 0.3],
      ]),
      reads('muscle-biopsy', [
        ['inflammatory', 0.3],
        ['dystrophic', 0.5],
      ]),
      reads('genetic-test', [
        ['other', 8],
        ['negative', 0.3],
      ]),
    ],
    source: muscleBook,
  },
  {
    key: 'mcardle-disease',
    group: 'hereditary',
    label: 'McArdle disease',
    inheritance: ['autosomal-recessive'],
    mondo: mondo('MONDO:0009293', 'glycogen storage disease V'),
    produces: [at(['proximal-myopathy'], 'rare'), at(['no-lesion'], 'uncommon')],
    tempo: tempos.lifelong,
    durationDays: { from: 180, outside: 0.4, source: fromMemory },
    age: { from: 3, to: 40, outside: 0.2 },
    history: [
      told(['heavy-exertion', 'similar-attacks-before'], 1.3, 1),
      told(['muscle-pain', 'fatigue'], 1.3, 1),
      told('family/consanguinity', 2, 1),
      told('exercise-cramps', 10, 0.1),
      told('second-wind', 30, 0.4),
      told('dark-urine', 5, 0.7),
      told(kin, 4, 0.85),
    ],
    quantities: [atLeast('creatine-kinase', 400, 'U/L', 3, 0.2)],
    values: [
      reads('genetic-test', [
        ['other', 8],
        ['negative', 0.3],
      ]),
    ],
    source: muscleBook,
  },
  {
    key: 'lipid-storage-myopathy',
    group: 'hereditary',
    label: 'Lipid storage myopathy or disorder of fat oxidation',
    inheritance: ['autosomal-recessive'],
    produces: [at(['proximal-myopathy', 'no-lesion'], 'rare')],
    tempo: tempos.lifelong,
    history: [
      told(['preceding-infection', 'recent-weight-loss', 'episodic-weakness', 'family/consanguinity'], 1.4, 1),
      told(['exercise-cramps', 'fever', 'similar-attacks-before'], 1.4, 1),
      told(['dark-urine', 'muscle-pain'], 4, 0.6),
      told('second-wind', 0.1, 1),
      told('heavy-exertion', 3, 0.8),
      told(kin, 4, 0.85),
    ],
    quantities: [atLeast('creatine-kinase', 400, 'U/L', 1.4, 0.7)],
    values: [
      reads('genetic-test', [
        ['other', 8],
        ['negative', 0.3],
      ]),
    ],
    source: muscleBook,
  },
  {
    key: 'myotonia-congenita',
    group: 'hereditary',
    label: 'Myotonia congenita',
    inheritance: ['autosomal-recessive', 'autosomal-dominant'],
    produces: [at(['myotonic-myopathy'], 'common'), at(['no-lesion'], 'rare')],
    tempo: tempos.lifelong,
    durationDays: { from: 365, outside: 0.4, source: fromMemory },
    age: { from: 0, to: 25, outside: 0.1 },
    history: [
      told('worse-in-the-cold', 1.3, 1),
      told('family/consanguinity', 1.5, 1),
      told('stiffness', 3, 0.2),
      told('cataract', 0.2, 1.1),
      told(kin, 3, 0.8),
    ],
    signs: [
      shows(['involuntary-movements/grip-myotonia', 'involuntary-movements/percussion-myotonia'], 3, 0.4),
      shows(['inspection/muscle-hypertrophy', 'inspection/calf-pseudohypertrophy'], 10, 0.4),
      shows(['inspection/wasting', 'cranial-nerves/ptosis', 'cranial-nerves/facial-weakness'], 0.1, 1.5),
    ],
    values: [
      reads('needle-emg', [
        ['myotonic-discharges', 8],
        ['normal', 0.1],
      ]),
      reads('ecg', [['conduction-disease', 0.3]]),
      reads('genetic-test', [
        ['dmpk-expansion', 0.01],
        ['other', 6],
      ]),
    ],
    source: muscleBook,
  },
  {
    key: 'paramyotonia-congenita',
    group: 'hereditary',
    label: 'Paramyotonia congenita',
    inheritance: ['autosomal-dominant'],
    mondo: mondo('MONDO:0008195', 'paramyotonia congenita of Von Eulenburg'),
    produces: [at(['myotonic-myopathy'], 'uncommon'), at(['no-lesion'], 'rare')],
    tempo: tempos.lifelong,
    durationDays: { from: 365, outside: 0.5, source: fromMemory },
    age: { from: 0, to: 20, outside: 0.1 },
    history: [told('worse-in-the-cold', 15, 0.2), told('episodic-weakness', 3, 0.7), told(kin, 5, 0.6)],
    signs: [shows(['involuntary-movements/grip-myotonia', 'involuntary-movements/percussion-myotonia'], 2, 0.7)],
    values: [
      reads('needle-emg', [
        ['myotonic-discharges', 6],
        ['normal', 0.2],
      ]),
      reads('genetic-test', [
        ['dmpk-expansion', 0.01],
        ['other', 6],
      ]),
    ],
    source: muscleBook,
  },
  {
    key: 'hereditary-periodic-paralysis',
    group: 'hereditary',
    label: 'Hereditary periodic paralysis',
    inheritance: ['autosomal-dominant'],
    produces: [
      at(['motor-polyneuropathy', 'lower-motor-neuron-system', 'spinal-cord-transverse'], 'rare'),
      at(['proximal-myopathy', 'myotonic-myopathy'], 'uncommon'),
      at(['no-lesion'], 'rare'),
      at(['demyelinating-polyradiculoneuropathy'], 'rare'),
    ],
    // It is there on waking, or grows over hours and lasts up to three days.
    tempo: { hyperacute: 0.68, acute: 0.28, subacute: 0.02, chronic: 0.02 },
    courses: { 'relapsing-remitting': 4, progressive: 0.4 },
    age: { from: 2, to: 35, outside: 0.15 },
    history: [
      told(['similar-attacks-before', 'heavy-exertion', 'worse-in-the-cold'], 1.8, 0.9),
      told(['numbness', 'back-pain', 'bladder-disturbance'], 0.4, 1.1),
      told('episodic-weakness', 12, 0.1),
      told(['family/periodic-paralysis', 'family/similar-disorder'], 8, 0.4),
      told(['hyperthyroidism', 'diuretic'], 0.2, 1.1),
    ],
    quantities: [
      atLeast('potassium', 5.5, 'mmol/L', 2.5, 1),
      under('potassium', 3.5, 'mmol/L', 6, 0.4),
      under('tsh', 0.4, 'm[IU]/L', 0.1, 1.1),
    ],
    values: [
      reads('needle-emg', [['myotonic-discharges', 2]]),
      reads('genetic-test', [
        ['other', 8],
        ['negative', 0.3],
      ]),
    ],
    source: muscleBook,
  },
  {
    key: 'distal-myopathy',
    group: 'hereditary',
    label: 'Distal myopathy',
    inheritance: ['autosomal-dominant', 'autosomal-recessive'],
    mondo: mondo('MONDO:0018949', 'distal myopathy'),
    produces: [
      at(['motor-polyneuropathy', 'length-dependent-polyneuropathy'], 'uncommon'),
      at(['proximal-myopathy'], 'uncommon'),
      at(['distal-myopathy'], 'very-common'),
      at(['finger-flexor-quadriceps-myopathy'], 'uncommon'),
    ],
    tempo: tempos.chronic,
    durationDays: { from: 365, outside: 0.4, source: fromMemory },
    age: { from: 5, to: 80, outside: 0.5 },
    history: [
      told('family/consanguinity', 3, 1),
      told(['numbness', 'paraesthesiae', 'neuropathic-pain'], 0.4, 1.2),
      told(['falls', 'muscle-thinning'], 1.2, 1),
      told(kin, 5, 0.6),
    ],
    signs: [
      shows(['inspection/foot-drop'], 1.3, 1),
      shows(['inspection/fasciculation'], 0.3, 1.05),
      shows(
        ['involuntary-movements/grip-myotonia', 'involuntary-movements/percussion-myotonia', 'cranial-nerves/ptosis'],
        0.2,
        1.2,
      ),
    ],
    quantities: [atLeast('creatine-kinase', 1000, 'U/L', 2.5, 0.8)],
    values: [
      reads('genetic-test', [
        ['other', 8],
        ['negative', 0.3],
      ]),
      reads('mri-muscle', [
        ['fatty-replacement', 3],
        ['oedema', 0.4],
        ['normal', 0.4],
      ]),
      reads('muscle-biopsy', [
        ['rimmed-vacuoles', 3],
        ['normal', 0.3],
      ]),
    ],
    source: muscleBook,
  },
  {
    key: 'congenital-myopathy',
    group: 'hereditary',
    label: 'Congenital myopathy',
    inheritance: ['autosomal-dominant', 'autosomal-recessive'],
    mondo: mondo('MONDO:0019952', 'congenital myopathy'),
    produces: [
      at(['postsynaptic-junction'], 'rare'),
      at(['motor-polyneuropathy', 'length-dependent-polyneuropathy', 'lower-motor-neuron-system'], 'rare'),
      at(
        ['proximal-myopathy', 'distal-myopathy', 'oculopharyngeal-myopathy', 'facioscapulohumeral-myopathy'],
        'uncommon',
      ),
      at(['axial-myopathy'], 'uncommon'),
    ],
    tempo: tempos.lifelong,
    courses: { static: 2, progressive: 0.7 },
    durationDays: { from: 365, outside: 0.4, source: fromMemory },
    age: { from: 0, to: 18, outside: 0.05 },
    history: [
      told(['falls', 'difficulty-with-stairs', 'breathlessness', 'sleep-apnoea'], 1.3, 1),
      told(['perinatal-injury', 'family/consanguinity'], 1.4, 1),
      told(kin, 4, 0.85),
    ],
    signs: [
      shows(
        [
          'inspection/hyperlordosis',
          'inspection/joint-contracture',
          'cranial-nerves/ptosis',
          'cranial-nerves/ophthalmoplegia',
        ],
        1.5,
        1,
      ),
      shows(['inspection/pes-cavus', 'inspection/achilles-contracture'], 2, 0.95),
      shows(['inspection/scoliosis', 'cranial-nerves/facial-weakness'], 2.5, 0.7),
    ],
    quantities: [atLeast('creatine-kinase', 400, 'U/L', 0.4, 1.4)],
    values: [
      reads('genetic-test', [
        ['other', 8],
        ['negative', 0.3],
      ]),
    ],
    source: muscleBook,
  },
];
