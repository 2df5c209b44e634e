import { read, recalled } from '../../../kernel/cite.ts';
import type { Territory } from '../territory.ts';

const medulla = recalled('brazis', 'medulla oblongata');
const medialMedulla = read(
  'medial-medulla-2009',
  'motor signs in 91 %, sensory in 73 %, vertigo in 59 % of 86 patients',
);

/** One half of the floor of the fourth ventricle in the medulla. */
const dorsalMedulla = {
  'solitary-nucleus': 0.8,
  'lower-vestibular-nuclei': 0.7,
  'nucleus-ambiguus': 0.4,
  'inferior-cerebellar-peduncle': 0.55,
  'hypoglossal-nucleus': 0.15,
} as const;

/** The medulla by its middle, its flank and its halves, and its motor nuclei. */
export const medullaryTerritories = {
  'medulla-medial': {
    label: 'Medial medulla',
    holds: {
      pyramid: 0.92,
      'medial-lemniscus-in-medulla': 0.75,
      'hypoglossal-fascicle': 0.8,
      'lower-vestibular-nuclei': 0.2,
    },
    source: medulla,
  },
  'medulla-medial-upper': {
    // Most lie in the upper medulla and reach back to the vestibular nuclei; few touch the fibres to the tongue.
    label: 'Medial medulla',
    holds: { pyramid: 0.85, 'medial-lemniscus-in-medulla': 0.75, 'lower-vestibular-nuclei': 0.6 },
    source: medialMedulla,
  },
  'medulla-medial-both': {
    // One vessel may feed both pyramids and what lies behind them: all limbs fail at a stroke, with tongue, throat and breath.
    label: 'Medial medulla',
    holds: {
      pyramid: 0.97,
      'medial-lemniscus-in-medulla': 0.65,
      'hypoglossal-fascicle': 0.6,
      'nucleus-ambiguus': 0.35,
      'lower-vestibular-nuclei': 0.3,
    },
    across: {
      pyramid: 0.97,
      'medial-lemniscus-in-medulla': 0.65,
      'hypoglossal-fascicle': 0.6,
      'nucleus-ambiguus': 0.35,
      'lower-vestibular-nuclei': 0.3,
    },
    source: medialMedulla,
  },
  'medulla-lateral': {
    label: 'Lateral medulla',
    holds: {
      'nucleus-ambiguus': 0.8,
      'spinal-trigeminal-tract-in-medulla': 0.9,
      'spinothalamic-tract-in-medulla': 0.92,
      'inferior-cerebellar-peduncle': 0.85,
      'lower-vestibular-nuclei': 0.8,
      'sympathetic-fibres-in-medulla': 0.85,
      'solitary-nucleus': 0.4,
    },
    source: medulla,
  },
  'medulla-lateral-and-cerebellum': {
    label: 'Lateral medulla',
    holds: {
      'nucleus-ambiguus': 0.75,
      'spinal-trigeminal-tract-in-medulla': 0.85,
      'spinothalamic-tract-in-medulla': 0.85,
      'inferior-cerebellar-peduncle': 0.85,
      'lower-vestibular-nuclei': 0.85,
      'sympathetic-fibres-in-medulla': 0.75,
      'cerebellar-hemisphere': 0.6,
      'facial-nucleus': 0.2,
    },
    source: medulla,
  },
  'medulla-lateral-lower': {
    label: 'Lateral medulla',
    holds: {
      'nucleus-ambiguus': 0.6,
      'spinal-trigeminal-tract-in-medulla': 0.85,
      'spinothalamic-tract-in-medulla': 0.85,
      'inferior-cerebellar-peduncle': 0.5,
      'lower-vestibular-nuclei': 0.4,
      'sympathetic-fibres-in-medulla': 0.75,
      'crossed-corticospinal-fibres': 0.65,
    },
    source: medulla,
  },
  'medulla-dorsal-both': {
    // The floor of the fourth ventricle, where vomiting, hiccups and vertical nystagmus come from.
    label: 'Brainstem on both sides',
    holds: dorsalMedulla,
    across: dorsalMedulla,
    source: recalled('brazis', 'medulla oblongata'),
  },
  'medulla-half': {
    label: 'Half of the medulla',
    holds: {
      pyramid: 0.85,
      'medial-lemniscus-in-medulla': 0.7,
      'hypoglossal-fascicle': 0.75,
      'nucleus-ambiguus': 0.8,
      'spinal-trigeminal-tract-in-medulla': 0.85,
      'spinothalamic-tract-in-medulla': 0.85,
      'inferior-cerebellar-peduncle': 0.75,
      'lower-vestibular-nuclei': 0.7,
      'sympathetic-fibres-in-medulla': 0.75,
    },
    source: medulla,
  },
  'medulla-half-below-the-crossing': {
    // Below the crossing of the pyramids the limbs fail on the side of the lesion, with the columns for their position.
    label: 'Half of the medulla',
    holds: {
      'crossed-corticospinal-fibres': 0.9,
      'dorsal-column-nuclei': 0.7,
      'spinothalamic-tract-in-medulla': 0.85,
      'spinal-trigeminal-tract-in-medulla': 0.8,
      'nucleus-ambiguus': 0.5,
      'sympathetic-fibres-in-medulla': 0.75,
      'accessory-nerve': 0.35,
      'inferior-cerebellar-peduncle': 0.3,
    },
    source: medulla,
  },
  'bulbar-motor-nuclei': {
    label: 'Motor nuclei of the medulla',
    holds: {
      'nucleus-ambiguus': 0.85,
      'hypoglossal-nucleus': 0.9,
      'facial-nucleus': 0.2,
      'trigeminal-motor-nucleus': 0.1,
    },
    across: {
      'nucleus-ambiguus': 0.85,
      'hypoglossal-nucleus': 0.9,
      'facial-nucleus': 0.2,
      'trigeminal-motor-nucleus': 0.1,
    },
    source: recalled('adams-victor', 'bulbar palsy'),
  },
} as const satisfies Record<string, Territory>;
