import { read, recalled } from '../../../kernel/cite.ts';
import type { Territory } from '../territory.ts';

const midbrain = recalled('brazis', 'midbrain');
const pons = recalled('brazis', 'pons');

/** What a process of the whole brainstem takes on either side. Judged. */
const oneHalf = {
  'oculomotor-nucleus': 0.5,
  'abducens-nucleus': 0.6,
  'facial-nucleus': 0.45,
  'nucleus-ambiguus': 0.45,
  'vestibular-nuclei': 0.5,
  'superior-cerebellar-peduncle': 0.5,
  'basis-pontis': 0.4,
  'midbrain-reticular-formation': 0.6,
  'pontine-reticular-formation': 0.5,
  'medial-longitudinal-fasciculus': 0.35,
} as const;

/** The flank and base of one half of the pons, where lesions of both sides take tracts and peduncles. */
const tractsOfOneHalf = {
  'basis-pontis': 0.3,
  'corticobulbar-fibres-in-pons': 0.55,
  'pontine-nuclei': 0.4,
  'middle-cerebellar-peduncle': 0.6,
  'spinothalamic-tract-in-pons': 0.6,
  'medial-lemniscus-in-pons': 0.3,
  'spinal-trigeminal-tract-in-pons': 0.6,
  'trigeminothalamic-fibres': 0.3,
  'vestibular-nuclei': 0.25,
} as const;

/** The middle of the pontine tegmentum, which a lesion of the midline takes on both sides. */
const pontineTegmentum = {
  'abducens-nucleus': 0.85,
  'horizontal-gaze-centre': 0.8,
  'facial-fascicle': 0.7,
  'medial-longitudinal-fasciculus': 0.5,
  'medial-lemniscus-in-pons': 0.3,
} as const;

/** One half of a pons that is taken as a whole, base and tegmentum, as by a large haemorrhage. */
const halfOfThePons = {
  'basis-pontis': 0.85,
  'corticobulbar-fibres-in-pons': 0.8,
  'pontine-nuclei': 0.6,
  'abducens-nucleus': 0.85,
  'horizontal-gaze-centre': 0.85,
  'facial-fascicle': 0.8,
  'trigeminal-main-sensory-nucleus': 0.5,
  'medial-longitudinal-fasciculus': 0.6,
  'medial-lemniscus-in-pons': 0.6,
  'spinothalamic-tract-in-pons': 0.5,
  'pontine-reticular-formation': 0.9,
  'sympathetic-fibres-in-pons': 0.8,
} as const;

/** The same where nothing gets through any more. */
const halfOfADestroyedPons = {
  ...halfOfThePons,
  'basis-pontis': 0.98,
  'corticobulbar-fibres-in-pons': 0.95,
  'pontine-reticular-formation': 0.95,
} as const;

/** Midbrain, pons and the brainstem as a whole, by level and by what lies in front, behind and to the side. */
export const brainstemTerritories = {
  'midbrain-ventral': {
    label: 'Ventral midbrain',
    holds: {
      'cerebral-peduncle': 0.92,
      'corticobulbar-fibres-in-midbrain': 0.85,
      'oculomotor-fascicle': 0.9,
      'substantia-nigra': 0.25,
    },
    source: midbrain,
  },
  'midbrain-ventral-and-lemniscus': {
    label: 'Ventral midbrain',
    holds: {
      'cerebral-peduncle': 0.9,
      'corticobulbar-fibres-in-midbrain': 0.8,
      'oculomotor-fascicle': 0.85,
      'medial-lemniscus-in-midbrain': 0.65,
      'substantia-nigra': 0.3,
    },
    source: midbrain,
  },
  'midbrain-peduncle': {
    label: 'Ventral midbrain',
    holds: { 'cerebral-peduncle': 0.85, 'corticobulbar-fibres-in-midbrain': 0.75, 'substantia-nigra': 0.15 },
    source: midbrain,
  },
  'midbrain-tegmentum': {
    label: 'Midbrain tegmentum',
    holds: {
      'red-nucleus': 0.9,
      'oculomotor-fascicle': 0.85,
      'medial-lemniscus-in-midbrain': 0.45,
      'spinothalamic-tract-in-midbrain': 0.35,
      'vertical-gaze-centre': 0.25,
      'midbrain-reticular-formation': 0.25,
    },
    source: midbrain,
  },
  'midbrain-tegmentum-and-peduncle': {
    label: 'Midbrain tegmentum',
    holds: {
      'red-nucleus': 0.85,
      'oculomotor-fascicle': 0.85,
      'cerebral-peduncle': 0.6,
      'corticobulbar-fibres-in-midbrain': 0.4,
      'medial-lemniscus-in-midbrain': 0.35,
    },
    source: midbrain,
  },
  'midbrain-oculomotor-nucleus': {
    label: 'Midbrain tegmentum',
    holds: {
      'oculomotor-nucleus': 0.9,
      'pupil-nucleus': 0.5,
      'vertical-gaze-centre': 0.5,
      'midbrain-reticular-formation': 0.4,
      'red-nucleus': 0.2,
    },
    across: { 'vertical-gaze-centre': 0.3, 'oculomotor-nucleus': 0.15 },
    source: midbrain,
  },
  'midbrain-paramedian': {
    // Beside the midline the cerebellar fibres cross, so that both sides are ataxic.
    label: 'Midbrain tegmentum',
    holds: {
      'oculomotor-nucleus': 0.85,
      'oculomotor-fascicle': 0.4,
      'pupil-nucleus': 0.5,
      'red-nucleus': 0.6,
      'superior-cerebellar-peduncle': 0.6,
      'vertical-gaze-centre': 0.25,
      'midbrain-reticular-formation': 0.5,
      'cerebral-peduncle': 0.35,
    },
    across: {
      'superior-cerebellar-peduncle': 0.55,
      'midbrain-reticular-formation': 0.35,
      'vertical-gaze-centre': 0.25,
      'oculomotor-nucleus': 0.2,
      'trochlear-nucleus': 0.2,
    },
    source: midbrain,
  },
  'midbrain-paramedian-lower': {
    // Where the superior cerebellar peduncles cross, below the nucleus of the third nerve.
    label: 'Midbrain tegmentum',
    holds: {
      'superior-cerebellar-peduncle': 0.85,
      'medial-longitudinal-fasciculus': 0.55,
      'trochlear-nucleus': 0.15,
      'midbrain-reticular-formation': 0.2,
    },
    across: {
      'superior-cerebellar-peduncle': 0.85,
      'medial-longitudinal-fasciculus': 0.3,
      'midbrain-reticular-formation': 0.2,
    },
    source: midbrain,
  },
  'midbrain-top-of-basilar': {
    // A clot at the top of the basilar artery: lids, gaze and wakefulness on both sides, and the peduncle of one.
    label: 'Midbrain tegmentum',
    holds: {
      'oculomotor-nucleus': 0.85,
      'pupil-nucleus': 0.5,
      'vertical-gaze-centre': 0.75,
      'midbrain-reticular-formation': 0.6,
      'medial-thalamus': 0.35,
      'cerebral-peduncle': 0.7,
      'corticobulbar-fibres-in-midbrain': 0.5,
    },
    across: {
      'oculomotor-nucleus': 0.75,
      'pupil-nucleus': 0.5,
      'vertical-gaze-centre': 0.75,
      'midbrain-reticular-formation': 0.6,
      'medial-thalamus': 0.35,
      'cerebral-peduncle': 0.1,
    },
    source: recalled('brazis', 'top of the basilar syndrome'),
  },
  'midbrain-dorsolateral': {
    // The fourth nerve crosses behind the aqueduct, the sympathetic fibres beside it run down uncrossed.
    label: 'Midbrain tegmentum',
    holds: {
      'trochlear-nucleus': 0.9,
      'sympathetic-fibres-in-midbrain': 0.7,
      'spinothalamic-tract-in-midbrain': 0.3,
      'superior-cerebellar-peduncle': 0.3,
      'medial-longitudinal-fasciculus': 0.25,
    },
    source: midbrain,
  },
  'midbrain-dorsal': {
    label: 'Dorsal midbrain',
    holds: {
      pretectum: 0.95,
      'trochlear-nucleus': 0.15,
      'vertical-gaze-centre': 0.3,
      'superior-cerebellar-peduncle': 0.1,
    },
    across: { 'trochlear-nucleus': 0.15, 'vertical-gaze-centre': 0.3, 'superior-cerebellar-peduncle': 0.1 },
    source: midbrain,
  },
  'pons-ventral-upper': {
    label: 'Ventral pons',
    holds: { 'basis-pontis': 0.9, 'corticobulbar-fibres-in-pons': 0.85, 'pontine-nuclei': 0.5 },
    source: pons,
  },
  'pons-ventral-lower': {
    label: 'Ventral pons',
    holds: {
      'basis-pontis': 0.92,
      'abducens-fascicle': 0.8,
      'facial-fascicle': 0.7,
      'pontine-nuclei': 0.3,
    },
    source: pons,
  },
  'pons-ventral-middle': {
    label: 'Ventral pons',
    holds: {
      'basis-pontis': 0.9,
      'abducens-fascicle': 0.75,
      'corticobulbar-fibres-in-pons': 0.65,
      'pontine-nuclei': 0.4,
    },
    source: pons,
  },
  'pons-ventrolateral': {
    label: 'Ventral pons',
    holds: {
      'basis-pontis': 0.65,
      'pontine-nuclei': 0.6,
      'corticobulbar-fibres-in-pons': 0.4,
      'trigeminal-motor-nucleus': 0.6,
      'trigeminal-main-sensory-nucleus': 0.6,
      'middle-cerebellar-peduncle': 0.5,
      'medial-lemniscus-in-pons': 0.3,
      'spinothalamic-tract-in-pons': 0.3,
    },
    source: pons,
  },
  'pons-half': {
    label: 'Ventral pons',
    holds: {
      'basis-pontis': 0.85,
      'pontine-nuclei': 0.5,
      'corticobulbar-fibres-in-pons': 0.3,
      'abducens-fascicle': 0.6,
      'abducens-nucleus': 0.4,
      'facial-fascicle': 0.6,
      'medial-lemniscus-in-pons': 0.7,
      'spinothalamic-tract-in-pons': 0.6,
      'spinal-trigeminal-tract-in-pons': 0.5,
      'middle-cerebellar-peduncle': 0.4,
    },
    source: pons,
  },
  'pons-medial-lemniscus': {
    label: 'Pontine tegmentum',
    holds: { 'medial-lemniscus-in-pons': 0.9, 'trigeminothalamic-fibres': 0.5, 'spinothalamic-tract-in-pons': 0.2 },
    source: pons,
  },
  'pons-lemnisci-of-the-midline': {
    // Beside the midline the fibres from both sides of the mouth lie together, with those of one hand.
    label: 'Pontine tegmentum',
    holds: { 'medial-lemniscus-in-pons': 0.7, 'trigeminothalamic-fibres': 0.65 },
    across: { 'trigeminothalamic-fibres': 0.65 },
    source: read('cheiro-oral-2009', 'both sides of the mouth point to the pons, where 28 % of 76 had their lesion'),
  },
  'pons-ventral-with-lemniscus': {
    // The fibres to the cerebellum and the lemniscus behind them, with most of the motor tract spared.
    label: 'Ventral pons',
    holds: { 'pontine-nuclei': 0.95, 'medial-lemniscus-in-pons': 0.7, 'basis-pontis': 0.15 },
    source: pons,
  },
  'pons-ventral-with-pontine-nuclei': {
    label: 'Ventral pons',
    holds: { 'basis-pontis': 0.5, 'pontine-nuclei': 0.95, 'corticobulbar-fibres-in-pons': 0.35 },
    source: pons,
  },
  'pons-ventral-both': {
    label: 'Ventral pons',
    holds: {
      'basis-pontis': 0.98,
      'corticobulbar-fibres-in-pons': 0.97,
      'pontine-nuclei': 0.8,
      'abducens-fascicle': 0.7,
      'horizontal-gaze-centre': 0.6,
      'facial-fascicle': 0.6,
    },
    across: {
      'basis-pontis': 0.98,
      'corticobulbar-fibres-in-pons': 0.97,
      'pontine-nuclei': 0.8,
      'abducens-fascicle': 0.7,
      'horizontal-gaze-centre': 0.6,
      'facial-fascicle': 0.6,
    },
    source: pons,
  },
  'pons-tegmentum': {
    label: 'Pontine tegmentum',
    holds: {
      'abducens-nucleus': 0.85,
      'horizontal-gaze-centre': 0.8,
      'facial-fascicle': 0.75,
      'facial-nucleus': 0.4,
      'medial-longitudinal-fasciculus': 0.6,
      'medial-lemniscus-in-pons': 0.4,
      'vestibular-nuclei': 0.25,
      'pontine-reticular-formation': 0.25,
    },
    source: pons,
  },
  'pons-tegmentum-and-base': {
    label: 'Pontine tegmentum',
    holds: {
      'abducens-nucleus': 0.8,
      'horizontal-gaze-centre': 0.75,
      'facial-fascicle': 0.75,
      'medial-longitudinal-fasciculus': 0.4,
      'medial-lemniscus-in-pons': 0.5,
      'basis-pontis': 0.75,
    },
    source: pons,
  },
  'pons-tegmentum-and-fascicle': {
    // The sixth nerve is caught on its way through the pons, its nucleus and the gaze of the other eye are not.
    label: 'Pontine tegmentum',
    holds: {
      'abducens-fascicle': 0.85,
      'medial-longitudinal-fasciculus': 0.7,
      'facial-fascicle': 0.75,
      'spinal-trigeminal-tract-in-pons': 0.6,
      'trigeminal-main-sensory-nucleus': 0.4,
      'medial-lemniscus-in-pons': 0.65,
      'spinothalamic-tract-in-pons': 0.45,
      'sympathetic-fibres-in-pons': 0.5,
      'basis-pontis': 0.5,
    },
    source: pons,
  },
  'pons-tegmentum-paramedian': {
    // A small lesion beside the midline, of the gaze of one eye both ways and of what keeps the eyes level and still.
    label: 'Pontine tegmentum',
    holds: {
      'medial-longitudinal-fasciculus': 0.9,
      'abducens-fascicle': 0.8,
      'vestibular-nuclei': 0.4,
      'superior-cerebellar-peduncle': 0.25,
    },
    source: pons,
  },
  'pons-tegmentum-fascicles-of-both-sides': {
    // The sixth fascicles of both sides with one longitudinal fasciculus between them.
    label: 'Pontine tegmentum',
    holds: { 'medial-longitudinal-fasciculus': 0.85, 'abducens-fascicle': 0.8, 'vestibular-nuclei': 0.3 },
    across: { 'abducens-fascicle': 0.8 },
    source: pons,
  },
  'pons-tegmentum-and-cerebellar-paths': {
    // Months after a bleeding, when the olive swells: the palate jumps and the limbs shake, beside what the lesion left.
    label: 'Pontine tegmentum',
    holds: {
      'superior-cerebellar-peduncle': 0.75,
      'facial-fascicle': 0.5,
      'abducens-fascicle': 0.35,
      'medial-longitudinal-fasciculus': 0.4,
      'medial-lemniscus-in-pons': 0.4,
      'basis-pontis': 0.3,
    },
    across: { 'superior-cerebellar-peduncle': 0.35 },
    source: pons,
  },
  'pons-tegmentum-upper': {
    label: 'Pontine tegmentum',
    holds: {
      'medial-longitudinal-fasciculus': 0.85,
      'superior-cerebellar-peduncle': 0.8,
      'medial-lemniscus-in-pons': 0.8,
      'spinothalamic-tract-in-pons': 0.65,
      'trigeminothalamic-fibres': 0.75,
      'basis-pontis': 0.2,
      'sympathetic-fibres-in-pons': 0.2,
    },
    source: pons,
  },
  'pons-tegmentum-and-upper-base': {
    label: 'Pontine tegmentum',
    holds: {
      'abducens-nucleus': 0.75,
      'horizontal-gaze-centre': 0.7,
      'medial-longitudinal-fasciculus': 0.7,
      'basis-pontis': 0.75,
      'corticobulbar-fibres-in-pons': 0.65,
      'medial-lemniscus-in-pons': 0.3,
    },
    source: pons,
  },
  'pons-tegmentum-both': {
    label: 'Pontine tegmentum',
    holds: pontineTegmentum,
    across: pontineTegmentum,
    source: pons,
  },
  'one-and-a-half': {
    label: 'Pontine tegmentum',
    holds: {
      'abducens-nucleus': 0.9,
      'horizontal-gaze-centre': 0.85,
      'medial-longitudinal-fasciculus': 0.92,
      'facial-fascicle': 0.25,
    },
    source: pons,
  },
  'pons-lateral-lower': {
    label: 'Lateral pons',
    holds: {
      'facial-nucleus': 0.6,
      'facial-fascicle': 0.65,
      'cochlear-nucleus': 0.75,
      'vestibular-nuclei': 0.85,
      'spinal-trigeminal-tract-in-pons': 0.8,
      'spinothalamic-tract-in-pons': 0.8,
      'middle-cerebellar-peduncle': 0.85,
      'sympathetic-fibres-in-pons': 0.6,
      'cerebellar-hemisphere': 0.25,
    },
    source: pons,
  },
  'anterior-inferior-cerebellar': {
    // The artery feeds the inner ear as well as the lateral pons and the peduncle.
    label: 'Lateral pons',
    holds: {
      'cochlear-nerve': 0.8,
      'vestibular-nerve': 0.85,
      'vestibular-nuclei': 0.5,
      'middle-cerebellar-peduncle': 0.8,
      'facial-fascicle': 0.55,
      'spinal-trigeminal-tract-in-pons': 0.45,
      'spinothalamic-tract-in-pons': 0.3,
      'sympathetic-fibres-in-pons': 0.3,
      'cerebellar-hemisphere': 0.4,
    },
    source: read('anterior-inferior-cerebellar-2009', 'hearing and labyrinth lost together in 60 % of 82'),
  },
  'pons-lateral-middle': {
    label: 'Lateral pons',
    holds: {
      'trigeminal-main-sensory-nucleus': 0.85,
      'trigeminal-motor-nucleus': 0.8,
      'middle-cerebellar-peduncle': 0.8,
      'spinothalamic-tract-in-pons': 0.6,
      'sympathetic-fibres-in-pons': 0.4,
    },
    source: pons,
  },
  'pons-lateral-upper': {
    label: 'Lateral pons',
    holds: {
      'superior-cerebellar-peduncle': 0.9,
      'spinothalamic-tract-in-pons': 0.85,
      'trigeminothalamic-fibres': 0.5,
      'sympathetic-fibres-in-pons': 0.6,
      'medial-lemniscus-in-pons': 0.25,
      'cerebellar-hemisphere': 0.4,
      'trochlear-nucleus': 0.15,
    },
    source: pons,
  },
  'medial-longitudinal-fasciculus': {
    label: 'Medial longitudinal fasciculus',
    holds: { 'medial-longitudinal-fasciculus': 0.95 },
    source: pons,
  },
  'medial-longitudinal-fasciculus-both': {
    label: 'Medial longitudinal fasciculus',
    holds: { 'medial-longitudinal-fasciculus': 0.92 },
    across: { 'medial-longitudinal-fasciculus': 0.92 },
    source: pons,
  },
  'brainstem-diffuse': {
    label: 'Brainstem on both sides',
    holds: oneHalf,
    across: oneHalf,
    source: recalled('adams-victor', 'brainstem encephalitis'),
  },
  'brainstem-one-side-more': {
    // An infection that spreads along the cranial nerves, most in the pons and medulla of one side.
    label: 'Brainstem on both sides',
    holds: {
      'facial-nucleus': 0.65,
      'spinal-trigeminal-tract-in-pons': 0.65,
      'trigeminal-main-sensory-nucleus': 0.4,
      'nucleus-ambiguus': 0.6,
      'vestibular-nuclei': 0.6,
      'abducens-nucleus': 0.45,
      'inferior-cerebellar-peduncle': 0.5,
      'middle-cerebellar-peduncle': 0.3,
      'basis-pontis': 0.3,
      'pontine-reticular-formation': 0.3,
    },
    across: {
      'vestibular-nuclei': 0.2,
      'nucleus-ambiguus': 0.2,
      'basis-pontis': 0.15,
      'pontine-reticular-formation': 0.3,
    },
    source: recalled('adams-victor', 'brainstem encephalitis'),
  },
  'brainstem-long-tracts': {
    // Patches on either side, in front and at the flanks, that spare the nuclei of the eyes.
    label: 'Brainstem on both sides',
    holds: tractsOfOneHalf,
    across: tractsOfOneHalf,
    source: pons,
  },
  'pons-whole': {
    label: 'Brainstem on both sides',
    holds: halfOfThePons,
    across: halfOfThePons,
    source: recalled('adams-victor', 'pontine haemorrhage'),
  },
  'pons-destroyed': {
    label: 'Brainstem on both sides',
    holds: halfOfADestroyedPons,
    across: halfOfADestroyedPons,
    source: recalled('adams-victor', 'pontine haemorrhage'),
  },
  'basilar-artery-one-side-more': {
    // A closing basilar artery: one half of the body fails first, with balance, speech and wakefulness.
    label: 'Brainstem on both sides',
    holds: {
      'basis-pontis': 0.85,
      'corticobulbar-fibres-in-pons': 0.8,
      'pontine-nuclei': 0.4,
      'vestibular-nuclei': 0.5,
      'cochlear-nucleus': 0.2,
      'abducens-nucleus': 0.3,
      'horizontal-gaze-centre': 0.3,
      'medial-longitudinal-fasciculus': 0.25,
      'middle-cerebellar-peduncle': 0.4,
      'pontine-reticular-formation': 0.75,
    },
    across: {
      'basis-pontis': 0.12,
      'corticobulbar-fibres-in-pons': 0.25,
      'vestibular-nuclei': 0.4,
      'middle-cerebellar-peduncle': 0.3,
      'pontine-reticular-formation': 0.75,
    },
    source: recalled('adams-victor', 'basilar artery occlusion'),
  },
  'grey-matter-around-ventricles': {
    label: 'Grey matter around the third and fourth ventricles',
    holds: {
      'medial-thalamus': 0.75,
      'abducens-nucleus': 0.5,
      'vestibular-nuclei': 0.7,
      'cerebellar-vermis': 0.6,
      'vertical-gaze-centre': 0.25,
      'medial-longitudinal-fasciculus': 0.25,
      'oculomotor-nucleus': 0.2,
    },
    across: {
      'medial-thalamus': 0.75,
      'abducens-nucleus': 0.5,
      'vestibular-nuclei': 0.7,
      'vertical-gaze-centre': 0.25,
      'medial-longitudinal-fasciculus': 0.25,
      'oculomotor-nucleus': 0.2,
    },
    source: recalled('adams-victor', 'Wernicke disease'),
  },
} as const satisfies Record<string, Territory>;
