import { recalled } from '../../../kernel/cite.ts';
import type { Territory } from '../territory.ts';
import { deepTerritories } from './deep-territories.ts';

const arteries = recalled('blumenfeld', 'cerebral arteries, territories and syndromes');
const lobes = recalled('brazis', 'cerebral hemispheres');

/** Both frontal lobes, as what grows between or beneath them takes them. */
const frontalLobe = {
  'dorsolateral-frontal-cortex': 0.65,
  'medial-frontal-cortex': 0.8,
  'orbitofrontal-cortex': 0.8,
  'frontopontine-fibres': 0.3,
  'olfactory-nerve': 0.4,
  'corona-radiata': 0.3,
} as const;

/** The inner face of one hemisphere. */
const innerFace = {
  'motor-cortex-foot': 0.95,
  'motor-cortex-leg': 0.9,
  'motor-cortex-arm': 0.35,
  'sensory-cortex-foot': 0.6,
  'sensory-cortex-leg': 0.5,
  'medial-frontal-cortex': 0.92,
  'orbitofrontal-cortex': 0.3,
} as const;

/** The border of the parietal and occipital lobes of one hemisphere. */
const behindBothHemispheres = {
  'superior-parietal-lobule': 0.85,
  'inferior-parietal-lobule': 0.5,
  'occipital-cortex-above-calcarine': 0.2,
} as const;

/** Between the fields of the anterior and the middle cerebral artery, where flow fails first when blood pressure falls. */
const armsOfTheBorderZone = {
  'motor-cortex-arm': 0.9,
  'motor-cortex-hand': 0.15,
  'motor-cortex-leg': 0.05,
  'dorsolateral-frontal-cortex': 0.2,
} as const;

/** The foot of the motor strip of one hemisphere, for face, jaw, tongue and throat. */
const operculum = { 'motor-cortex-face': 0.92, 'inferior-frontal-gyrus': 0.3 } as const;

/** What the posterior cerebral artery of one side feeds, where both are closed. */
const posteriorCerebral = {
  'occipital-cortex-above-calcarine': 0.9,
  'occipital-cortex-below-calcarine': 0.9,
  'occipital-pole': 0.8,
  'ventral-occipitotemporal-cortex': 0.6,
  'medial-temporal-lobe': 0.6,
} as const;

/** Cortex by artery and lobe, and what lies deep. */
export const hemisphereTerritories = {
  ...deepTerritories,
  'cortex-middle-cerebral': {
    label: 'Cerebral cortex, whole territory of the middle cerebral artery',
    holds: {
      'motor-cortex-face': 0.95,
      'motor-cortex-arm': 0.85,
      'motor-cortex-hand': 0.95,
      'motor-cortex-leg': 0.35,
      'motor-cortex-foot': 0.25,
      'sensory-cortex-face': 0.8,
      'sensory-cortex-arm': 0.75,
      'sensory-cortex-hand': 0.85,
      'sensory-cortex-leg': 0.35,
      'sensory-cortex-foot': 0.25,
      'frontal-eye-field': 0.8,
      'dorsolateral-frontal-cortex': 0.7,
      'inferior-frontal-gyrus': 0.9,
      'superior-temporal-gyrus': 0.85,
      'inferior-parietal-lobule': 0.9,
      'superior-parietal-lobule': 0.4,
      'lower-optic-radiation': 0.65,
      'upper-optic-radiation': 0.7,
      'corona-radiata': 0.45,
      'thalamocortical-radiation': 0.3,
      striatum: 0.3,
    },
    source: arteries,
  },
  'cortex-middle-cerebral-upper': {
    label: 'Cerebral cortex, upper (frontal) division of the middle cerebral artery',
    holds: {
      'motor-cortex-face': 0.9,
      'motor-cortex-arm': 0.75,
      'motor-cortex-hand': 0.9,
      'motor-cortex-leg': 0.25,
      'motor-cortex-foot': 0.15,
      'corona-radiata': 0.15,
      'sensory-cortex-face': 0.55,
      'sensory-cortex-arm': 0.5,
      'sensory-cortex-hand': 0.6,
      'sensory-cortex-leg': 0.15,
      'frontal-eye-field': 0.55,
      'dorsolateral-frontal-cortex': 0.6,
      'inferior-frontal-gyrus': 0.85,
      'inferior-parietal-lobule': 0.2,
    },
    source: arteries,
  },
  'cortex-inferior-frontal': {
    label: 'Cerebral cortex, upper (frontal) division of the middle cerebral artery',
    holds: { 'inferior-frontal-gyrus': 0.9, 'motor-cortex-face': 0.45, 'dorsolateral-frontal-cortex': 0.25 },
    source: arteries,
  },
  'cortex-middle-cerebral-lower': {
    label: 'Cerebral cortex, lower (temporoparietal) division of the middle cerebral artery',
    holds: {
      'superior-temporal-gyrus': 0.9,
      'inferior-parietal-lobule': 0.85,
      'superior-parietal-lobule': 0.25,
      'lower-optic-radiation': 0.55,
      'upper-optic-radiation': 0.6,
      'sensory-cortex-hand': 0.3,
      'sensory-cortex-face': 0.2,
    },
    source: arteries,
  },
  'cortex-anterior-cerebral': {
    label: 'Cerebral cortex, territory of the anterior cerebral artery',
    holds: {
      'motor-cortex-foot': 0.95,
      'motor-cortex-leg': 0.9,
      'motor-cortex-arm': 0.3,
      'sensory-cortex-foot': 0.7,
      'sensory-cortex-leg': 0.6,
      'medial-frontal-cortex': 0.85,
      'orbitofrontal-cortex': 0.35,
    },
    source: arteries,
  },
  'cortex-posterior-cerebral': {
    label: 'Cerebral cortex, territory of the posterior cerebral artery',
    holds: {
      'occipital-cortex-above-calcarine': 0.95,
      'occipital-cortex-below-calcarine': 0.95,
      'occipital-pole': 0.4,
      'ventral-occipitotemporal-cortex': 0.7,
      'medial-temporal-lobe': 0.55,
    },
    source: arteries,
  },
  'posterior-cerebral-lower-branches': {
    label: 'Cerebral cortex, territory of the posterior cerebral artery',
    holds: {
      'occipital-cortex-below-calcarine': 0.9,
      'ventral-occipitotemporal-cortex': 0.85,
      'medial-temporal-lobe': 0.6,
      'occipital-pole': 0.2,
    },
    source: arteries,
  },
  'cortex-parasagittal': {
    label: 'Parasagittal cortex of both hemispheres',
    holds: {
      'motor-cortex-foot': 0.85,
      'motor-cortex-leg': 0.7,
      'sensory-cortex-foot': 0.4,
      'sensory-cortex-leg': 0.3,
      'medial-frontal-cortex': 0.4,
    },
    across: {
      'motor-cortex-foot': 0.7,
      'motor-cortex-leg': 0.55,
      'sensory-cortex-foot': 0.3,
      'sensory-cortex-leg': 0.2,
      'medial-frontal-cortex': 0.35,
    },
    source: lobes,
  },
  'branches-to-the-callosum': {
    label: 'Cerebral cortex, territory of the anterior cerebral artery',
    holds: { 'medial-frontal-cortex': 0.55 },
    across: { 'medial-frontal-cortex': 0.15 },
    source: recalled('brazis', 'disconnection syndromes'),
  },
  'parasagittal-of-one-side': {
    // What grows beside the falx, or a vein that closes there: leg before arm.
    label: 'Cerebral cortex, territory of the anterior cerebral artery',
    holds: {
      'motor-cortex-foot': 0.9,
      'motor-cortex-leg': 0.8,
      'motor-cortex-arm': 0.5,
      'motor-cortex-hand': 0.4,
      'sensory-cortex-foot': 0.4,
      'sensory-cortex-leg': 0.35,
      'sensory-cortex-arm': 0.15,
      'medial-frontal-cortex': 0.4,
    },
    source: lobes,
  },
  'anterior-cerebral-both': {
    // One trunk may feed both anterior cerebral arteries.
    label: 'Parasagittal cortex of both hemispheres',
    holds: innerFace,
    across: innerFace,
    source: arteries,
  },
  'arms-of-both-border-zones': {
    // Where anterior and middle cerebral arteries meet lies the motor strip of shoulder and upper arm.
    label: 'Parasagittal cortex of both hemispheres',
    holds: armsOfTheBorderZone,
    across: armsOfTheBorderZone,
    source: recalled('adams-victor', 'watershed infarction'),
  },
  'arms-and-hands-of-both-border-zones': {
    label: 'Parasagittal cortex of both hemispheres',
    holds: { ...armsOfTheBorderZone, 'motor-cortex-arm': 0.97, 'motor-cortex-hand': 0.85 },
    across: { ...armsOfTheBorderZone, 'motor-cortex-arm': 0.97, 'motor-cortex-hand': 0.85 },
    source: recalled('adams-victor', 'watershed infarction'),
  },
  'cortex-hand-and-arm': {
    // The hand's part of the motor strip with the lower edge of the arm's beside it.
    label: 'Cerebral cortex, hand area',
    holds: { 'motor-cortex-hand': 0.9, 'motor-cortex-arm': 0.4, 'sensory-cortex-hand': 0.2 },
    source: lobes,
  },
  'cortex-hand-area': {
    label: 'Cerebral cortex, hand area',
    holds: {
      'motor-cortex-hand': 0.95,
      'sensory-cortex-hand': 0.25,
    },
    source: lobes,
  },
  'cortex-foot-area': {
    // The upper edge of the motor strip: a small infarct or metastasis there drops a foot and leaves the hip strong.
    label: 'Cerebral cortex, territory of the anterior cerebral artery',
    holds: { 'motor-cortex-foot': 0.95, 'motor-cortex-leg': 0.1, 'sensory-cortex-foot': 0.2 },
    source: lobes,
  },
  'cortex-frontal': {
    label: 'Frontal lobe in front of the motor cortex',
    holds: {
      'dorsolateral-frontal-cortex': 0.85,
      'medial-frontal-cortex': 0.6,
      'orbitofrontal-cortex': 0.65,
      'frontal-eye-field': 0.45,
      'inferior-frontal-gyrus': 0.3,
      'frontopontine-fibres': 0.2,
      'olfactory-nerve': 0.12,
    },
    source: lobes,
  },
  'frontal-base-of-one-side': {
    // What grows under one frontal lobe wastes the optic nerve beside it, and its pressure swells the other disc.
    label: 'Frontal lobe in front of the motor cortex',
    holds: {
      'orbitofrontal-cortex': 0.8,
      'medial-frontal-cortex': 0.4,
      'dorsolateral-frontal-cortex': 0.3,
      'olfactory-nerve': 0.8,
      'optic-nerve': 0.7,
      'intracranial-pressure': 0.5,
    },
    source: recalled('brazis', 'Foster Kennedy syndrome'),
  },
  'cortex-frontal-both': {
    label: 'Frontal lobe in front of the motor cortex',
    holds: frontalLobe,
    across: frontalLobe,
    source: lobes,
  },
  'cortex-frontal-with-motor-strip': {
    label: 'Frontal lobe in front of the motor cortex',
    holds: {
      'dorsolateral-frontal-cortex': 0.85,
      'medial-frontal-cortex': 0.7,
      'orbitofrontal-cortex': 0.5,
      'frontal-eye-field': 0.5,
      'inferior-frontal-gyrus': 0.5,
      'frontopontine-fibres': 0.2,
      'motor-cortex-face': 0.45,
      'motor-cortex-arm': 0.3,
      'motor-cortex-hand': 0.35,
      'motor-cortex-leg': 0.25,
      'motor-cortex-foot': 0.25,
    },
    source: lobes,
  },
  'frontal-growth-at-the-motor-strip': {
    // Face, arm and leg fail together, step by step, before conduct does.
    label: 'Frontal lobe in front of the motor cortex',
    holds: {
      'dorsolateral-frontal-cortex': 0.4,
      'medial-frontal-cortex': 0.25,
      'inferior-frontal-gyrus': 0.35,
      'frontopontine-fibres': 0.25,
      'corona-radiata': 0.65,
      'motor-cortex-face': 0.4,
      'motor-cortex-hand': 0.35,
    },
    source: lobes,
  },
  'upper-frontal-with-leg-area': {
    // What grows in the upper frontal lobe: the leg before the arm, with drive and bladder.
    label: 'Frontal lobe in front of the motor cortex',
    holds: {
      'dorsolateral-frontal-cortex': 0.75,
      'medial-frontal-cortex': 0.8,
      'frontopontine-fibres': 0.2,
      'motor-cortex-arm': 0.5,
      'motor-cortex-hand': 0.45,
      'motor-cortex-leg': 0.7,
      'motor-cortex-foot': 0.7,
      'motor-cortex-face': 0.1,
    },
    source: lobes,
  },
  'cortex-parietal': {
    label: 'Parietal lobe',
    holds: {
      'inferior-parietal-lobule': 0.85,
      'superior-parietal-lobule': 0.8,
      'sensory-cortex-hand': 0.75,
      'sensory-cortex-arm': 0.6,
      'sensory-cortex-face': 0.5,
      'sensory-cortex-leg': 0.45,
      'sensory-cortex-foot': 0.4,
      'upper-optic-radiation': 0.4,
    },
    source: lobes,
  },
  'cortex-parietal-with-motor-strip': {
    label: 'Parietal lobe',
    holds: {
      'inferior-parietal-lobule': 0.85,
      'superior-parietal-lobule': 0.75,
      'sensory-cortex-hand': 0.5,
      'sensory-cortex-arm': 0.45,
      'sensory-cortex-face': 0.35,
      'sensory-cortex-leg': 0.3,
      'sensory-cortex-foot': 0.3,
      'motor-cortex-face': 0.25,
      'motor-cortex-arm': 0.4,
      'motor-cortex-hand': 0.45,
      'motor-cortex-leg': 0.25,
      'motor-cortex-foot': 0.2,
      'upper-optic-radiation': 0.3,
    },
    source: lobes,
  },
  'cortex-inferior-parietal': {
    label: 'Parietal lobe',
    holds: { 'inferior-parietal-lobule': 0.92, 'superior-parietal-lobule': 0.25, 'upper-optic-radiation': 0.3 },
    source: lobes,
  },
  'cortex-postcentral': {
    // Touch is felt and what is touched is not known.
    label: 'Parietal lobe',
    holds: { 'sensory-cortex-hand': 0.8, 'sensory-cortex-arm': 0.4, 'superior-parietal-lobule': 0.4 },
    source: lobes,
  },
  'parieto-occipital-both': {
    // Where the last branches of three arteries meet on either side, and where posterior atrophy begins.
    label: 'Parietal lobe',
    holds: behindBothHemispheres,
    across: behindBothHemispheres,
    source: recalled('brazis', 'Balint syndrome'),
  },
  'posterior-atrophy-of-one-side-more': {
    // A wasting that begins behind, deeper on one side: what is seen is not known, and half of space is lost.
    label: 'Parietal lobe',
    holds: {
      'superior-parietal-lobule': 0.85,
      'inferior-parietal-lobule': 0.7,
      'ventral-occipitotemporal-cortex': 0.5,
      'occipital-cortex-above-calcarine': 0.5,
      'occipital-cortex-below-calcarine': 0.35,
    },
    across: {
      'superior-parietal-lobule': 0.7,
      'inferior-parietal-lobule': 0.35,
      'ventral-occipitotemporal-cortex': 0.3,
      'occipital-cortex-above-calcarine': 0.1,
    },
    source: recalled('adams-victor', 'posterior cortical atrophy'),
  },
  'cortex-superior-parietal': {
    label: 'Parietal lobe',
    holds: { 'superior-parietal-lobule': 0.92, 'sensory-cortex-hand': 0.45, 'sensory-cortex-arm': 0.25 },
    source: lobes,
  },
  'cortex-temporal': {
    label: 'Temporal lobe',
    holds: { 'superior-temporal-gyrus': 0.65, 'medial-temporal-lobe': 0.55, 'lower-optic-radiation': 0.75 },
    source: lobes,
  },
  'temporal-lobes-wasting': {
    // The poles and undersides of both, one deeper than the other: names and meanings on the left, faces on the right, conduct on both.
    label: 'Temporal lobe',
    holds: {
      'ventral-occipitotemporal-cortex': 0.75,
      'medial-temporal-lobe': 0.35,
      'superior-temporal-gyrus': 0.25,
      'orbitofrontal-cortex': 0.5,
    },
    across: { 'ventral-occipitotemporal-cortex': 0.35, 'medial-temporal-lobe': 0.15, 'orbitofrontal-cortex': 0.4 },
    source: recalled('adams-victor', 'frontotemporal dementia'),
  },
  'medial-temporal-lobe': {
    label: 'Temporal lobe',
    holds: { 'medial-temporal-lobe': 0.92 },
    source: recalled('brazis', 'memory'),
  },
  'medial-temporal-lobes-both': {
    label: 'Temporal lobe',
    holds: { 'medial-temporal-lobe': 0.92 },
    across: { 'medial-temporal-lobe': 0.92 },
    source: recalled('transient-amnesia-1990', 'memory alone fails'),
  },
  'cortex-occipital': {
    label: 'Occipital cortex',
    holds: {
      'occipital-cortex-above-calcarine': 0.95,
      'occipital-cortex-below-calcarine': 0.95,
      'occipital-pole': 0.85,
      'ventral-occipitotemporal-cortex': 0.2,
    },
    source: lobes,
  },
  'cortex-occipital-both': {
    label: 'Occipital cortex',
    holds: {
      'occipital-cortex-above-calcarine': 0.85,
      'occipital-cortex-below-calcarine': 0.85,
      'occipital-pole': 0.85,
      'ventral-occipitotemporal-cortex': 0.4,
      'medial-temporal-lobe': 0.2,
    },
    across: {
      'occipital-cortex-above-calcarine': 0.85,
      'occipital-cortex-below-calcarine': 0.85,
      'occipital-pole': 0.85,
      'ventral-occipitotemporal-cortex': 0.4,
      'medial-temporal-lobe': 0.2,
    },
    source: lobes,
  },
  'cortex-above-calcarine': {
    label: 'Occipital cortex',
    holds: { 'occipital-cortex-above-calcarine': 0.95, 'occipital-pole': 0.3 },
    source: lobes,
  },
  'cortex-below-calcarine': {
    label: 'Occipital cortex',
    holds: {
      'occipital-cortex-below-calcarine': 0.95,
      'occipital-pole': 0.3,
      'ventral-occipitotemporal-cortex': 0.5,
    },
    source: lobes,
  },
  'upper-banks-of-both-calcarine-fissures': {
    label: 'Occipital cortex',
    holds: { 'occipital-cortex-above-calcarine': 0.95 },
    across: { 'occipital-cortex-above-calcarine': 0.95 },
    source: recalled('brazis', 'cortical blindness'),
  },
  'lower-banks-of-both-calcarine-fissures': {
    label: 'Occipital cortex',
    holds: { 'occipital-cortex-below-calcarine': 0.95, 'ventral-occipitotemporal-cortex': 0.5 },
    across: { 'occipital-cortex-below-calcarine': 0.95, 'ventral-occipitotemporal-cortex': 0.5 },
    source: recalled('brazis', 'cortical blindness'),
  },
  'posterior-cerebral-both': {
    // A clot at the top of the basilar artery closes both: blind, astray and without memory.
    label: 'Cerebral cortex, territory of the posterior cerebral artery',
    holds: posteriorCerebral,
    across: posteriorCerebral,
    source: recalled('brazis', 'top of the basilar syndrome'),
  },
  'middle-cerebral-stem': {
    label: 'Cerebral cortex, whole territory of the middle cerebral artery',
    holds: {
      'motor-cortex-face': 0.95,
      'motor-cortex-arm': 0.85,
      'motor-cortex-hand': 0.95,
      'sensory-cortex-face': 0.8,
      'sensory-cortex-arm': 0.75,
      'sensory-cortex-hand': 0.85,
      'frontal-eye-field': 0.85,
      'dorsolateral-frontal-cortex': 0.7,
      'inferior-frontal-gyrus': 0.9,
      'superior-temporal-gyrus': 0.85,
      'inferior-parietal-lobule': 0.9,
      'superior-parietal-lobule': 0.4,
      'lower-optic-radiation': 0.75,
      'upper-optic-radiation': 0.8,
      'internal-capsule-posterior-limb': 0.85,
      'internal-capsule-genu': 0.85,
      'thalamocortical-radiation': 0.7,
      striatum: 0.5,
    },
    source: arteries,
  },
  'posterior-cerebral-with-thalamus': {
    label: 'Cerebral cortex, territory of the posterior cerebral artery',
    holds: {
      'occipital-cortex-above-calcarine': 0.9,
      'occipital-cortex-below-calcarine': 0.9,
      'occipital-pole': 0.4,
      'ventral-occipitotemporal-cortex': 0.5,
      'medial-temporal-lobe': 0.5,
      'ventral-posterolateral-nucleus': 0.85,
      'ventral-posteromedial-nucleus': 0.75,
      'thalamocortical-radiation': 0.3,
      'internal-capsule-posterior-limb': 0.45,
    },
    source: arteries,
  },
  'posterior-cerebral-stem': {
    // Closed at its origin the artery starves peduncle, thalamus and occipital lobe, and looks like the middle cerebral.
    label: 'Cerebral cortex, territory of the posterior cerebral artery',
    holds: {
      'occipital-cortex-above-calcarine': 0.9,
      'occipital-cortex-below-calcarine': 0.9,
      'occipital-pole': 0.4,
      'ventral-occipitotemporal-cortex': 0.5,
      'medial-temporal-lobe': 0.5,
      'ventral-posterolateral-nucleus': 0.85,
      'ventral-posteromedial-nucleus': 0.75,
      'medial-thalamus': 0.5,
      'thalamocortical-radiation': 0.4,
      'cerebral-peduncle': 0.9,
      'corticobulbar-fibres-in-midbrain': 0.75,
    },
    source: arteries,
  },
  'corticobulbar-both-sides': {
    label: 'Corticobulbar fibres of both hemispheres',
    holds: { 'internal-capsule-genu': 0.85, 'internal-capsule-posterior-limb': 0.35, 'medial-frontal-cortex': 0.2 },
    across: { 'internal-capsule-genu': 0.85, 'internal-capsule-posterior-limb': 0.35, 'medial-frontal-cortex': 0.2 },
    source: recalled('adams-victor', 'spastic bulbar palsy'),
  },
  'opercula-both': {
    label: 'Corticobulbar fibres of both hemispheres',
    holds: operculum,
    across: operculum,
    source: recalled('brazis', 'bilateral anterior opercular syndrome'),
  },
  'second-of-two-hemispheres': {
    // What it does to throat and speech, which the old lesion of the other side had left, is said with the hypothesis.
    label: 'Corticobulbar fibres of both hemispheres',
    holds: { 'internal-capsule-genu': 0.9, 'internal-capsule-posterior-limb': 0.92 },
    source: recalled('adams-victor', 'spastic bulbar palsy'),
  },
} as const satisfies Record<string, Territory>;
