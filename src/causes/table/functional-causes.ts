import { commonPractice, recalled } from '../../kernel/cite.ts';
import { anyHeadache } from './brain-sites.ts';
import { at, atLeast, type Cause, inKind, mondo, reads, shows, tempos, told } from './cause.ts';

const positiveSigns = recalled('functional-signs-2014', 'positive signs');
const background = told(['functional-disorder'], 5, 0.95);
const distress = told(['psychiatric-disorder'], 1.8, 0.9);
const lesionSigns = ['plantars/plantar-response', 'clonus/ankle', 'inspection/wasting', 'inspection/fasciculation'];
const contrary = shows(lesionSigns, 0.1, 1.1);
/** Signs that nobody makes without a lesion. */
const neverWithoutALesion = shows(
  [
    'cranial-nerves/upgaze-palsy',
    'cranial-nerves/vertical-gaze-palsy',
    'cranial-nerves/downgaze-palsy',
    'cranial-nerves/third-nerve-palsy',
    'cranial-nerves/optic-disc-swelling',
    'involuntary-movements/asterixis',
  ],
  0.05,
  1,
);
const imaging = reads('mri-brain', [
  ['normal', 1.8],
  ['infarct', 0.1],
  ['space-occupying', 0.1],
]);

/** Disorders of function, known by their own positive signs and never by the absence of others. */
export const functionalCauses: readonly Cause[] = [
  {
    key: 'functional-motor-disorder',
    group: 'functional',
    label: 'Functional weakness',
    mondo: mondo('MONDO:0002104', 'conversion disorder'),
    produces: [
      at(['not-anatomical'], 'very-common'),
      at(['no-lesion'], 'common'),
      at(['cortex-hand-area', 'internal-capsule', 'cortex-parasagittal', 'cortex-anterior-cerebral'], 'rare'),
    ],
    tempo: { hyperacute: 0.45, acute: 0.25, subacute: 0.15, chronic: 0.15 },
    age: { from: 10, to: 60, outside: 0.4 },
    sex: { male: 0.6, female: 1.4 },
    history: [
      background,
      distress,
      told(['weakness', 'leg-weakness', 'arm-weakness'], 1.3, 0.6),
      told('trauma', 1.4, 1),
      told(['fever', 'weight-loss', 'cancer'], 0.5, 1),
      told(['migraine', 'similar-attacks-before', 'recent-surgery'], 1.3, 1),
      told(['hypertension', 'atrial-fibrillation', 'stroke', 'diplopia'], 0.6, 1),
      told(['resolved-deficit', 'paraesthesiae', 'fatigue', 'fluctuating-symptoms', 'recent-vaccination'], 1.2, 1),
      told(['diabetes-mellitus', 'tick-bite', 'preceding-gastroenteritis', 'dysphagia'], 0.7, 1),
    ],
    // Hoover sign: sensitivity 0.63, specificity near 1 (McWhirter 2011).
    signs: [
      shows(['special-tests/hoover', 'special-tests/hip-abductor-sign'], 20, 0.35),
      shows(['special-tests/give-way-weakness'], 4, 0.6),
      shows(['gait/functional'], 6, 0.9),
      contrary,
      neverWithoutALesion,
    ],
    values: [
      reads('needle-emg', [
        ['normal', 2],
        ['denervation-widespread', 0.05],
        ['denervation-single-root', 0.1],
        ['denervation-plexus', 0.1],
        ['denervation-single-nerve', 0.1],
        ['myopathic', 0.1],
      ]),
      imaging,
    ],
    source: positiveSigns,
  },
  {
    key: 'functional-sensory-disorder',
    group: 'functional',
    label: 'Functional loss of sensation',
    produces: [
      at(['not-anatomical'], 'common'),
      at(['no-lesion'], 'uncommon'),
      at(['thalamus', 'cortex-parietal', 'internal-capsule'], 'rare'),
    ],
    tempo: { hyperacute: 0.35, acute: 0.25, subacute: 0.2, chronic: 0.2 },
    age: { from: 10, to: 60, outside: 0.4 },
    sex: { male: 0.6, female: 1.4 },
    history: [
      background,
      distress,
      told(['numbness', 'paraesthesiae'], 1.4, 0.5),
      told(['hypertension', 'atrial-fibrillation', 'stroke'], 0.5, 1.1),
      told(['trauma', 'fatigue', 'migraine', 'fluctuating-symptoms'], 1.2, 1),
      told(['diabetes-mellitus', 'cancer', 'fever'], 0.5, 1),
    ],
    signs: [
      shows(['special-tests/midline-splitting'], 14, 0.4),
      shows(['special-tests/give-way-weakness', 'special-tests/hoover'], 3, 0.9),
      contrary,
      neverWithoutALesion,
    ],
    values: [
      reads('nerve-conduction-pattern', [
        ['normal', 1.4],
        ['axonal', 0.3],
        ['multifocal-axonal', 0.1],
        ['sensory-only', 0.15],
      ]),
      reads('somatosensory-evoked-potentials', [
        ['normal', 3],
        ['central-delay', 0.2],
        ['peripheral-delay', 0.2],
      ]),
      imaging,
    ],
    source: positiveSigns,
  },
  {
    key: 'functional-gait-disorder',
    group: 'functional',
    label: 'Functional disorder of gait',
    produces: [
      at(['not-anatomical', 'no-lesion'], 'common'),
      at(['frontal-gait-disorder', 'cerebellar-vermis'], 'rare'),
    ],
    tempo: { hyperacute: 0.3, acute: 0.3, subacute: 0.2, chronic: 0.2 },
    age: { from: 10, to: 70, outside: 0.5 },
    sex: { male: 0.6, female: 1.4 },
    history: [
      background,
      distress,
      told(['difficulty-walking', 'unsteadiness'], 1.4, 0.5),
      told(['fluctuating-symptoms', 'similar-attacks-before', 'falls', 'fatigue'], 1.2, 1),
      told(['fever', 'cancer', 'weight-loss', 'stroke', 'diabetes-mellitus', 'alcohol-excess'], 0.5, 1),
    ],
    signs: [
      shows(['gait/functional'], 20, 0.1),
      shows(['special-tests/hoover'], 3, 0.9),
      contrary,
      neverWithoutALesion,
    ],
    values: [imaging],
    source: positiveSigns,
  },
  {
    key: 'functional-tremor',
    group: 'functional',
    label: 'Functional tremor or other movement',
    produces: [
      at(['not-anatomical', 'action-tremor'], 'common'),
      at(['hyperkinetic-syndrome', 'no-lesion'], 'uncommon'),
    ],
    tempo: { hyperacute: 0.5, acute: 0.25, subacute: 0.1, chronic: 0.15 },
    age: { from: 10, to: 65, outside: 0.5 },
    sex: { male: 0.7, female: 1.3 },
    history: [
      background,
      distress,
      told(['family/tremor'], 0.5, 1.05),
      told('trauma', 1.3, 1),
      told('levodopa', 0.6, 1),
      told(['fluctuating-symptoms', 'resolved-deficit', 'similar-attacks-before'], 1.4, 1),
      told(['better-with-alcohol', 'lithium', 'valproate', 'beta-agonist', 'hyperthyroidism'], 0.5, 1),
    ],
    signs: [
      shows(['involuntary-movements/distractible-tremor'], 20, 0.2),
      shows(['involuntary-movements/resting-tremor'], 0.8, 1.05),
    ],
    source: positiveSigns,
  },
  {
    key: 'pain-limited-weakness',
    group: 'functional',
    label: 'Weakness from pain or effort, without a lesion',
    produces: [
      at(['not-anatomical'], 'uncommon'),
      at(['no-lesion'], 'common'),
      // Strength that pain withholds looks like disease of a plexus, of roots or of the muscles of hip and shoulder.
      at(['proximal-myopathy', 'brachial-plexus', 'lumbar-plexus', 'lumbosacral-plexus', 'upper-trunk'], 'rare'),
      inKind(['root'], 'rare'),
    ],
    tempo: tempos.any,
    history: [
      told(['bladder-disturbance', 'saddle-numbness', 'bowel-disturbance'], 0.1, 1.1),
      told(['cancer', 'weight-loss', 'recent-weight-loss', 'night-sweats'], 0.4, 1.05),
      // An inflamed joint may bring fever; it does not take the strength.
      told('fever', 0.3, 1.05),
      told('leg-weakness', 0.4, 1.05),
      told(
        ['stiffness', 'muscle-pain', 'trauma', 'limb-fracture-or-dislocation', 'hip-replacement', 'heavy-exertion'],
        1.6,
        1,
      ),
      // What only hurts neither tingles, burns nor wastes.
      told(['numbness', 'paraesthesiae', 'neuropathic-pain', 'burning-feet'], 0.25, 1.15),
      told(['muscle-thinning', 'twitching', 'limb-lump', 'clumsiness'], 0.4, 1),
      told(['radicular-leg-pain', 'radicular-arm-pain', 'bilateral-leg-pain'], 0.5, 1),
      told(['shoulder-pain', 'arm-pain', 'leg-pain', 'back-pain', 'neck-pain', 'joint-pain'], 3, 0.2),
      told('rheumatoid-arthritis', 2, 1),
      told(anyHeadache, 0.3, 1),
    ],
    signs: [shows(['special-tests/give-way-weakness'], 4, 0.6), shows(['gait/antalgic'], 3, 0.9), contrary],
    quantities: [atLeast('creatine-kinase', 1000, 'U/L', 0.1, 1)],
    source: commonPractice,
  },
];
