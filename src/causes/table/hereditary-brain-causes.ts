import { fromMemory, recalled } from '../../kernel/cite.ts';
import { anyHeadache, cognitiveDecline, opticRadiation } from './brain-sites.ts';
import { at, atLeast, type Cause, inKind, mondo, reads, shows, tempos, told, under } from './cause.ts';

const brainChapter = recalled('adams-victor');

/** Hereditary diseases of metabolism that strike the brain. */
export const hereditaryBrainCauses: readonly Cause[] = [
  {
    key: 'melas',
    group: 'hereditary',
    label: 'MELAS (mitochondrial encephalopathy with stroke-like episodes)',
    inheritance: ['mitochondrial'],
    mondo: mondo('MONDO:0010789', 'MELAS syndrome'),
    produces: [
      at(['cortex-occipital', 'cortex-posterior-cerebral', 'cortex-temporal', 'cortex-parietal'], 'rare'),
      at(['cortex-middle-cerebral-lower', ...opticRadiation, 'diffuse-encephalopathy'], 'rare'),
      at(['cochlear-nerve', 'cortex-middle-cerebral', 'no-lesion'], 'rare'),
      inKind(['hemisphere'], 'exceptional'),
      at(['cerebellar-degeneration'], 'exceptional'),
    ],
    tempo: tempos.acute,
    courses: { 'relapsing-remitting': 3 },
    age: { from: 2, to: 50, outside: 0.2 },
    history: [
      told('seizure', 4, 0.4),
      told(['migraine', ...anyHeadache], 2, 0.5),
      told('hearing-loss', 4, 0.7),
      told('diabetes-mellitus', 2.5, 0.9),
      told(['cardiomyopathy', 'fatigue'], 2, 0.9),
      told(['family/similar-disorder', 'family/diabetes', 'family/stroke'], 2, 0.7),
      told('vomiting', 1.5, 0.9),
      told(['epilepsy', 'visual-loss', 'difficulty-walking'], 1.4, 1),
      told(['hypertension', 'atrial-fibrillation'], 0.6, 1),
      told(['muscle-pain', 'weakness', 'exercise-cramps'], 1.3, 1),
    ],
    signs: [shows(['cranial-nerves/hearing-loss', 'cranial-nerves/ptosis'], 2.5, 0.8)],
    quantities: [atLeast('lactate', 2.2, 'mmol/L', 4, 0.3), atLeast('csf-lactate', 2.2, 'mmol/L', 6, 0.2)],
    values: [
      reads('muscle-biopsy', [
        ['mitochondrial', 20],
        ['normal', 0.4],
      ]),
      reads('mri-brain', [
        ['infarct', 2],
        ['normal', 0.05],
      ]),
      reads('genetic-test', [
        ['other', 8],
        ['negative', 0.2],
      ]),
    ],
    source: recalled('melas-1994'),
  },
  {
    key: 'cerebral-adrenoleukodystrophy',
    group: 'hereditary',
    label: 'Cerebral adrenoleukodystrophy',
    inheritance: ['x-linked'],
    produces: [
      at(
        ['cortex-occipital', 'cortex-parietal', ...opticRadiation, 'diffuse-encephalopathy', 'internal-capsule'],
        'rare',
      ),
      at(['cortex-frontal', 'corticobulbar-both-sides', 'cortex-temporal', 'upper-motor-neuron-system'], 'rare'),
      inKind(['hemisphere'], 'exceptional'),
      at(['cerebellar-degeneration', 'frontal-gait-disorder'], 'exceptional'),
    ],
    tempo: tempos.subacuteOrChronic,
    courses: { progressive: 1.8, improving: 0.05, 'relapsing-remitting': 0.05 },
    age: { from: 3, to: 45, outside: 0.05 },
    sex: { male: 1.9, female: 0.05 },
    history: [
      told('loss-of-skills', 4, 0.95),
      told(['behaviour-change', ...cognitiveDecline], 3, 0.3),
      told('visual-loss', 2, 0.8),
      told('hearing-loss', 2, 0.8),
      told('family/similar-disorder', 5, 0.7),
      told('family/spastic-paraplegia', 6, 0.95),
      told(['fatigue', 'vomiting', 'hair-loss', 'seizure', 'psychiatric-disorder'], 1.3, 1),
    ],
    quantities: [under('cortisol', 140, 'nmol/L', 6, 0.6, fromMemory)],
    values: [
      reads('mri-brain', [
        ['white-matter-disease', 20],
        ['normal', 0.02],
      ]),
    ],
    source: brainChapter,
  },
  {
    key: 'adult-onset-leukodystrophy',
    group: 'hereditary',
    label: 'Leukodystrophy that begins in adults (CSF1R, vanishing white matter)',
    inheritance: ['autosomal-dominant', 'autosomal-recessive'],
    produces: [
      at(['diffuse-encephalopathy', 'cortex-frontal', 'frontal-gait-disorder'], 'rare'),
      at(['upper-motor-neuron-system', 'cerebellar-degeneration', 'corticobulbar-both-sides'], 'rare'),
      at(['spinal-cord-lateral', 'akinetic-rigid-syndrome'], 'exceptional'),
    ],
    tempo: tempos.subacuteOrChronic,
    courses: { progressive: 1.6, improving: 0.05, 'relapsing-remitting': 0.2 },
    age: { from: 15, to: 60, outside: 0.15 },
    history: [
      told(['behaviour-change', ...cognitiveDecline], 2.5, 0.4),
      told(['family/dementia', 'family/frontotemporal-dementia', 'family/similar-disorder'], 3, 0.7),
      told(['seizure', 'psychiatric-disorder', 'difficulty-walking', 'amenorrhoea-or-galactorrhoea'], 1.4, 0.95),
      told(['hypertension', 'stroke', 'fever'], 0.5, 1.05),
    ],
    values: [
      reads('mri-brain', [
        ['white-matter-disease', 15],
        ['normal', 0.02],
      ]),
      reads('genetic-test', [
        ['other', 8],
        ['negative', 0.3],
      ]),
    ],
    source: brainChapter,
  },
  {
    key: 'storage-disease-of-the-brain',
    group: 'hereditary',
    label: 'Niemann-Pick disease type C, cerebrotendinous xanthomatosis or late Tay-Sachs disease',
    inheritance: ['autosomal-recessive'],
    produces: [
      at(['cerebellar-degeneration', 'midbrain-dorsal'], 'rare'),
      at(['diffuse-encephalopathy'], 'rare'),
      at(['hyperkinetic-syndrome', 'cerebellar-vermis', 'retina', 'optic-nerve', 'brainstem-diffuse'], 'exceptional'),
      at(['upper-motor-neuron-system', 'motor-neuron-system', 'lower-motor-neuron-system'], 'exceptional'),
      at(['spinal-cord-posterolateral', 'spinal-cord-lateral', 'akinetic-rigid-syndrome'], 'exceptional'),
    ],
    tempo: tempos.lifelong,
    courses: { progressive: 1.5, improving: 0.05, 'relapsing-remitting': 0.1 },
    age: { from: 0, to: 45, outside: 0.1 },
    history: [
      told(['psychiatric-disorder', 'behaviour-change', ...cognitiveDecline], 2.5, 0.5),
      told('cataract', 8, 0.95),
      told(['family/similar-disorder', 'family/ataxia'], 2, 0.9),
      told(['bowel-disturbance', 'chronic-liver-disease', 'dysphagia', 'slurred-speech'], 1.6, 0.95),
      told(['seizure', 'epilepsy', 'clumsiness'], 1.4, 1),
      told('cataplexy', 8, 0.98),
      told(['loss-of-skills', 'developmental-delay'], 2.5, 1),
      told(['visual-loss', 'family/consanguinity', 'family/epilepsy'], 1.5, 1),
    ],
    signs: [
      shows(['cranial-nerves/vertical-gaze-palsy', 'cranial-nerves/slow-saccades'], 6, 0.7),
      shows(['inspection/enlarged-liver-or-spleen'], 8, 0.9),
      // Hardly anything but a closed retinal artery reddens the spot, and that is of one old eye.
      shows(['cranial-nerves/cherry-red-spot'], 30, 0.95),
      shows(['involuntary-movements/exaggerated-startle', 'involuntary-movements/myoclonus'], 3, 0.95),
      shows(['involuntary-movements/dystonia', 'gait/ataxic', 'inspection/pes-cavus'], 1.6, 0.9),
    ],
    values: [
      reads('genetic-test', [
        ['other', 8],
        ['negative', 0.3],
      ]),
    ],
    source: brainChapter,
  },
  {
    key: 'neuroacanthocytosis-or-iron-accumulation',
    group: 'hereditary',
    label: 'Neuroacanthocytosis or accumulation of iron in the brain',
    inheritance: ['autosomal-recessive', 'x-linked'],
    produces: [
      at(['hyperkinetic-syndrome'], 'rare'),
      at(['akinetic-rigid-syndrome', 'striatum', 'diffuse-encephalopathy', 'upper-motor-neuron-system'], 'exceptional'),
    ],
    tempo: tempos.lifelong,
    courses: { progressive: 1.5, improving: 0.05, 'relapsing-remitting': 0.1 },
    age: { from: 3, to: 55, outside: 0.15 },
    history: [
      told('family/similar-disorder', 2, 0.9),
      told(['seizure', 'epilepsy'], 2.5, 0.8),
      told(['behaviour-change', 'psychiatric-disorder', ...cognitiveDecline], 1.8, 0.8),
      told(['dysphagia', 'slurred-speech', 'weight-loss', 'muscle-thinning', 'cardiomyopathy'], 1.6, 0.9),
      told('family/chorea', 0.7, 1),
    ],
    signs: [
      shows(['involuntary-movements/orofacial-dyskinesia'], 4, 0.6),
      shows(['involuntary-movements/dystonia', 'involuntary-movements/tics'], 1.8, 0.9),
      shows(['inspection/wasting', 'reflexes/ankle'], 1.6, 0.95),
    ],
    quantities: [atLeast('creatine-kinase', 300, 'U/L', 4, 0.5)],
    source: recalled('adams-victor', 'disorders of movement and posture'),
  },
];
