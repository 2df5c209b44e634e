import { read, recalled } from '../../../kernel/cite.ts';
import type { Territory } from '../territory.ts';

const arteries = recalled('blumenfeld', 'cerebral arteries, territories and syndromes');
const lacunes = recalled('blumenfeld', 'lacunar syndromes');
const thalamus = recalled('brazis', 'thalamus');
/** One artery may feed the middle of both thalami, and with them the top of the midbrain in about a third. */
const percheron = read('percheron-2022', 'wakefulness, memory and vertical gaze; with the rostral midbrain in 30 %');

/** The middle of one thalamus, where the pupil is small because the hypothalamus beside it fails. */
const paramedianThalamus = { 'medial-thalamus': 0.9, 'vertical-gaze-centre': 0.6, hypothalamus: 0.45 } as const;
const paramedianThalamusAndMidbrain = {
  'medial-thalamus': 0.85,
  'vertical-gaze-centre': 0.8,
  'midbrain-reticular-formation': 0.6,
  hypothalamus: 0.3,
  'oculomotor-fascicle': 0.35,
} as const;

/** Basal nuclei, capsule and thalamus. */
export const deepTerritories = {
  'anterior-choroidal': {
    label: 'Internal capsule or corona radiata',
    holds: {
      'internal-capsule-posterior-limb': 0.92,
      'internal-capsule-genu': 0.7,
      'thalamocortical-radiation': 0.6,
      'lateral-geniculate-body': 0.55,
    },
    source: arteries,
  },
  striatum: {
    label: 'Striatum or globus pallidus',
    holds: {
      striatum: 0.92,
      'globus-pallidus': 0.5,
    },
    source: recalled('brazis', 'basal ganglia'),
  },
  'striatum-and-edge-of-capsule': {
    // Unwilled movement with a slight weakness of the same limbs.
    label: 'Striatum or globus pallidus',
    holds: {
      striatum: 0.92,
      'globus-pallidus': 0.5,
      'internal-capsule-posterior-limb': 0.3,
      'internal-capsule-genu': 0.3,
      'thalamocortical-radiation': 0.15,
    },
    source: recalled('brazis', 'basal ganglia'),
  },
  'internal-capsule': {
    label: 'Internal capsule or corona radiata',
    holds: {
      'internal-capsule-posterior-limb': 0.92,
      'internal-capsule-genu': 0.85,
    },
    source: lacunes,
  },
  'corona-radiata': {
    label: 'Internal capsule or corona radiata',
    holds: { 'corona-radiata': 0.85, 'frontopontine-fibres': 0.15 },
    source: lacunes,
  },
  'capsule-slight': {
    // Enough for clumsy fingers and a toe that goes up, too little to be graded as weakness.
    label: 'Internal capsule or corona radiata',
    holds: { 'internal-capsule-posterior-limb': 0.25, 'internal-capsule-genu': 0.2, 'frontopontine-fibres': 0.2 },
    source: lacunes,
  },
  'capsule-with-frontopontine-fibres': {
    label: 'Internal capsule or corona radiata',
    holds: { 'internal-capsule-posterior-limb': 0.55, 'frontopontine-fibres': 0.9, 'internal-capsule-genu': 0.2 },
    source: lacunes,
  },
  'capsule-with-swelling': {
    label: 'Internal capsule or corona radiata',
    holds: {
      'internal-capsule-posterior-limb': 0.92,
      'internal-capsule-genu': 0.9,
      striatum: 0.35,
      'thalamocortical-radiation': 0.45,
      'intracranial-pressure': 0.1,
    },
    source: recalled('adams-victor', 'putaminal haemorrhage'),
  },
  striatocapsular: {
    // The deep branches of the middle cerebral artery together, behind a clot in its stem.
    label: 'Internal capsule or corona radiata',
    holds: {
      'internal-capsule-posterior-limb': 0.85,
      'internal-capsule-genu': 0.9,
      // Limbs that are paralysed show little of what an ill striatum lets through.
      striatum: 0.6,
      'globus-pallidus': 0.3,
      'corona-radiata': 0.3,
      'thalamocortical-radiation': 0.3,
    },
    source: recalled('adams-victor', 'striatocapsular infarction'),
  },
  'capsule-genu': {
    label: 'Internal capsule or corona radiata',
    holds: { 'internal-capsule-genu': 0.9, 'internal-capsule-posterior-limb': 0.3 },
    source: lacunes,
  },
  thalamus: {
    label: 'Thalamus',
    holds: {
      'subthalamic-nucleus': 0.15,
      'ventral-posterolateral-nucleus': 0.92,
      'ventral-posteromedial-nucleus': 0.85,
      'ventrolateral-nucleus': 0.3,
    },
    source: thalamus,
  },
  'thalamus-ventral-posteromedial': {
    label: 'Thalamus',
    holds: { 'ventral-posteromedial-nucleus': 0.85, 'ventral-posterolateral-nucleus': 0.2 },
    source: thalamus,
  },
  'thalamus-lateral': {
    label: 'Thalamus',
    holds: {
      'subthalamic-nucleus': 0.15,
      'ventral-posterolateral-nucleus': 0.7,
      'ventral-posteromedial-nucleus': 0.6,
      'ventrolateral-nucleus': 0.9,
      'internal-capsule-posterior-limb': 0.2,
    },
    source: thalamus,
  },
  'thalamus-ventrolateral': {
    // What comes up from the cerebellum ends in front of what is felt.
    label: 'Thalamus',
    holds: { 'ventrolateral-nucleus': 0.92, 'internal-capsule-posterior-limb': 0.15 },
    source: thalamus,
  },
  'thalamus-medial': {
    label: 'Thalamus',
    holds: { 'medial-thalamus': 0.9, 'vertical-gaze-centre': 0.4 },
    across: { 'medial-thalamus': 0.5, 'vertical-gaze-centre': 0.3 },
    source: thalamus,
  },
  'thalamus-medial-and-genu': {
    // The front of the thalamus and the knee of the capsule beside it: sleepy, with a low face and slurred speech.
    label: 'Thalamus',
    holds: { 'medial-thalamus': 0.85, 'internal-capsule-genu': 0.75, 'internal-capsule-posterior-limb': 0.15 },
    across: { 'medial-thalamus': 0.45 },
    source: thalamus,
  },
  'thalamus-medial-both-and-one-genu': {
    label: 'Thalamus',
    holds: { ...paramedianThalamus, 'internal-capsule-genu': 0.6, 'internal-capsule-posterior-limb': 0.35 },
    across: paramedianThalamus,
    source: percheron,
  },
  'thalamus-medial-both': {
    label: 'Thalamus',
    holds: paramedianThalamus,
    across: paramedianThalamus,
    source: percheron,
  },
  'thalamus-medial-both-and-midbrain': {
    label: 'Thalamus',
    holds: paramedianThalamusAndMidbrain,
    across: paramedianThalamusAndMidbrain,
    source: percheron,
  },
  'thalamus-and-capsule': {
    label: 'Thalamus and internal capsule together',
    holds: {
      'subthalamic-nucleus': 0.15,
      'ventral-posterolateral-nucleus': 0.85,
      'ventral-posteromedial-nucleus': 0.75,
      'internal-capsule-posterior-limb': 0.8,
      'internal-capsule-genu': 0.55,
      'thalamocortical-radiation': 0.5,
      'ventrolateral-nucleus': 0.3,
    },
    source: lacunes,
  },
  'thalamus-capsule-and-geniculate': {
    // A bleeding that spreads outwards and back from the thalamus, or the choroidal arteries: the half field goes with the half body.
    label: 'Thalamus and internal capsule together',
    holds: {
      'ventral-posterolateral-nucleus': 0.9,
      'ventral-posteromedial-nucleus': 0.85,
      'medial-thalamus': 0.4,
      'thalamocortical-radiation': 0.7,
      'internal-capsule-posterior-limb': 0.9,
      'internal-capsule-genu': 0.6,
      'lateral-geniculate-body': 0.7,
      'ventrolateral-nucleus': 0.3,
    },
    source: thalamus,
  },
  'thalamus-large': {
    label: 'Thalamus and internal capsule together',
    holds: {
      'ventral-posterolateral-nucleus': 0.9,
      'ventral-posteromedial-nucleus': 0.85,
      'medial-thalamus': 0.75,
      'internal-capsule-posterior-limb': 0.8,
      'internal-capsule-genu': 0.55,
      'vertical-gaze-centre': 0.6,
      'midbrain-reticular-formation': 0.35,
      hypothalamus: 0.35,
    },
    across: {
      'medial-thalamus': 0.3,
      'vertical-gaze-centre': 0.4,
      'midbrain-reticular-formation': 0.25,
      hypothalamus: 0.05,
    },
    source: thalamus,
  },
} as const satisfies Record<string, Territory>;
