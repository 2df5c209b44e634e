import { commonPractice, read, recalled } from '../../kernel/cite.ts';
import { arterialCortex } from './brain-sites.ts';
import { at, type Cause, inKind, mondo, reads, shows, tempos, told, under } from './cause.ts';

/** The whole brain harmed at one stroke: by want of oxygen, by a blow, by a sodium that rose too fast. */
export const brainInjuryCauses: readonly Cause[] = [
  {
    key: 'hypoxic-brain-injury',
    group: 'vascular',
    label: 'Hypoxic-ischaemic brain injury',
    produces: [
      at(['akinetic-rigid-syndrome', 'frontal-gait-disorder', 'hyperkinetic-syndrome'], 'rare'),
      at(['diffuse-encephalopathy'], 'uncommon'),
      at(['cortex-occipital', 'cortex-parasagittal', 'striatum'], 'rare'),
      at(['cerebellar-degeneration', 'cortex-parietal', 'corticobulbar-both-sides', 'thalamus'], 'rare'),
      inKind(['hemisphere'], 'exceptional'),
      at(['cerebellar-vermis', 'brainstem-diffuse', 'action-tremor'], 'exceptional'),
    ],
    tempo: { hyperacute: 0.75, acute: 0.13, subacute: 0.1, chronic: 0.02 },
    courses: { progressive: 0.3, 'relapsing-remitting': 0.1 },
    history: [
      // At birth as well.
      told(['cardiac-arrest', 'perinatal-injury'], 20, 1),
      told(
        ['cardiac-arrest', 'perinatal-injury', 'carbon-monoxide', 'opioid', 'electric-shock', 'critical-illness'],
        2.5,
        1,
      ),
      told(['carbon-monoxide', 'opioid'], 2, 0.95),
      told('seizure', 1.5, 1),
      told(
        [
          'cardiac-arrest',
          'perinatal-injury',
          'carbon-monoxide',
          'opioid',
          'electric-shock',
          'critical-illness',
          'recent-surgery',
          'breathlessness',
          'asthma',
          'aortic-disease',
          'loss-of-consciousness',
        ],
        1,
        0.05,
      ),
      told(['recent-surgery', 'ischaemic-heart-disease'], 1.2, 1),
    ],
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
      inKind(['hemisphere', 'brainstem', 'cerebellum'], 'exceptional'),
      at(['akinetic-rigid-syndrome', 'hyperkinetic-syndrome', 'frontal-gait-disorder', 'action-tremor'], 'exceptional'),
    ],
    tempo: tempos.sudden,
    // A bleeding outside the brain lets the person wake and sink again.
    courses: { progressive: 0.5, 'relapsing-remitting': 0.1, improving: 1.5 },
    history: [
      told(['head-injury', 'trauma'], 40, 0.02),
      told('loss-of-consciousness', 1.6, 0.9),
      told('vomiting', 1.4, 0.95),
      told('alcohol-excess', 1.4, 1),
      told(['anticoagulant', 'falls', 'seizure', 'loss-of-smell'], 1.2, 1),
      told(['fever', 'hypertension', 'atrial-fibrillation'], 0.7, 1),
    ],
    signs: [
      shows(['higher-function/coma', 'higher-function/stupor', 'higher-function/drowsiness'], 2.5, 0.8),
      shows(['involuntary-movements/posturing', 'inspection/ear-or-nose-leak'], 2, 1),
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
      at(
        [
          'thalamus',
          'striatum',
          'akinetic-rigid-syndrome',
          'hyperkinetic-syndrome',
          'internal-capsule',
          'cerebellar-hemisphere',
        ],
        'rare',
      ),
      inKind(['brainstem'], 'exceptional'),
      at(['frontal-gait-disorder', 'upper-motor-neuron-system'], 'exceptional'),
    ],
    tempo: tempos.acute,
    courses: { 'relapsing-remitting': 0.1 },
    history: [
      told('hyperemesis-gravidarum', 3, 1),
      told('rapid-sodium-correction', 30, 0.4),
      told(['alcohol-excess', 'malnutrition', 'chronic-liver-disease', 'diuretic'], 4, 0.7),
      told('vomiting', 1.5, 0.95),
      told('hypertension', 0.7, 1),
      told(
        [
          'chronic-kidney-disease',
          'dialysis',
          'cancer',
          'pregnancy',
          'carbamazepine',
          'serotonergic-medicine',
          'tacrolimus',
          'recent-weight-loss',
          'critical-illness',
          'bariatric-surgery',
        ],
        1.6,
        1,
      ),
      told(['dysphagia', 'slurred-speech', 'recent-surgery'], 1.2, 1),
      // Sodium, drink, hunger, the liver or the kidney: one of them is behind it.
      told(
        [
          'rapid-sodium-correction',
          'alcohol-excess',
          'malnutrition',
          'chronic-liver-disease',
          'diuretic',
          'dialysis',
          'chronic-kidney-disease',
          'pregnancy',
          'vomiting',
          'preceding-gastroenteritis',
          'carbamazepine',
          'serotonergic-medicine',
          'recent-weight-loss',
          'diabetes-mellitus',
          'critical-illness',
        ],
        1,
        0.25,
      ),
    ],
    signs: [
      shows(
        [
          'higher-function/mutism',
          'higher-function/pseudobulbar-affect',
          'cranial-nerves/spastic-dysarthria',
          'higher-function/catatonia',
        ],
        2.5,
        0.9,
      ),
      shows(['cranial-nerves/dysphagia', 'cranial-nerves/dysarthria'], 1.5, 0.9),
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
];
