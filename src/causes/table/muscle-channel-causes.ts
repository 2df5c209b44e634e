import { fromMemory, recalled } from '../../kernel/cite.ts';
import { at, atLeast, type Cause, mondo, reads, shows, tempos, told, under } from './cause.ts';

const muscleBook = recalled('amato-russell', 'disorders of muscle');
const kin = ['family/similar-disorder', 'family/muscle-disease'] as const;

/** Hereditary diseases of the channels of muscle: myotonia and attacks of weakness. */
export const muscleChannelCauses: readonly Cause[] = [
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
      told(['muscle-pain', 'falls', 'difficulty-with-stairs', 'pregnancy'], 1.2, 1),
      told('worse-in-the-cold', 1.3, 1),
      told('family/consanguinity', 1.5, 1),
      told('stiffness', 3, 0.2),
      told('cataract', 0.2, 1.1),
      told(kin, 3, 0.8),
    ],
    signs: [
      shows(['cranial-nerves/lid-lag'], 2, 0.95),
      shows(['cranial-nerves/lid-retraction'], 1.2, 1),
      shows(['involuntary-movements/muscle-rippling'], 0.3, 1),
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
    history: [
      told(['stiffness', 'heavy-exertion', 'cramps'], 1.2, 1),
      told('worse-in-the-cold', 15, 0.2),
      told('episodic-weakness', 3, 0.7),
      told(kin, 5, 0.6),
    ],
    signs: [
      shows(['cranial-nerves/lid-lag'], 3, 0.9),
      shows(['cranial-nerves/lid-retraction'], 1.6, 1),
      shows(['inspection/wasting', 'cranial-nerves/facial-weakness'], 0.3, 1.1),
      shows(['involuntary-movements/grip-myotonia', 'involuntary-movements/percussion-myotonia'], 2, 0.7),
    ],
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
      told(
        [
          'syncope',
          'arm-weakness',
          'leg-weakness',
          'muscle-pain',
          'stiffness',
          'family/cardiomyopathy-or-sudden-death',
        ],
        1.3,
        1,
      ),
      told(['preceding-infection', 'preceding-gastroenteritis', 'vomiting', 'fever'], 0.6, 1),
      told(['similar-attacks-before', 'heavy-exertion', 'worse-in-the-cold'], 1.8, 0.9),
      told(['numbness', 'back-pain', 'bladder-disturbance'], 0.4, 1.1),
      told('episodic-weakness', 12, 0.1),
      told(['family/periodic-paralysis', 'family/similar-disorder'], 8, 0.4),
      told(['hyperthyroidism', 'diuretic'], 0.2, 1.1),
    ],
    signs: [
      shows(['cranial-nerves/lid-lag'], 1.3, 1),
      shows(['autonomic/arrhythmia', 'inspection/scoliosis'], 2, 1),
      shows(['involuntary-movements/grip-myotonia', 'cranial-nerves/lid-retraction'], 1.4, 1),
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
];
