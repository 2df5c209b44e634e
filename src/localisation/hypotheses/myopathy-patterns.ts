import type { GroupLoss, MuscleDisease } from './muscle-and-junction.ts';
import { comesOnSlowly } from './process-signs.ts';

/** Percent of all focal and diffuse findings that each site stands for. Judged. */
const percent = {
  proximal: 3,
  acute: 0.25,
  distal: 0.4,
  fingerFlexorQuadriceps: 0.55,
  facioscapulohumeral: 0.3,
  oculopharyngeal: 0.45,
  myotonic: 0.4,
  axial: 0.25,
} as const;

const proximal = {
  key: 'proximal-myopathy',
  label: 'Proximal muscle disease',
  kind: 'muscle',
  because: 'the muscles of the limb girdles are affected on both sides',
} as const;

const distal = {
  paces: comesOnSlowly,
  key: 'distal-myopathy',
  label: 'Distal muscle disease',
  kind: 'muscle',
  reflex: 0.02,
  because: 'the far muscles are affected on both sides without any loss of sensation',
} as const;

const selective = {
  paces: comesOnSlowly,
  key: 'finger-flexor-quadriceps-myopathy',
  label: 'Muscle disease of finger flexors and quadriceps',
  kind: 'muscle',
  reflex: 0.02,
  ownReflex: 0.6,
  because: 'finger flexors and knee extensors are picked out',
} as const;

const facioscapulohumeral = {
  paces: comesOnSlowly,
  key: 'facioscapulohumeral-myopathy',
  label: 'Muscle disease of face, shoulder blade and upper arm',
  kind: 'muscle',
  reflex: 0.05,
  ownReflex: 0.5,
  because: 'face, scapular fixators and upper arms are picked out',
} as const;

const oculopharyngeal = {
  paces: comesOnSlowly,
  key: 'oculopharyngeal-myopathy',
  label: 'Muscle disease of eyelids, eye muscles and throat',
  kind: 'muscle',
  reflex: 0.03,
  ownReflex: 0.3,
  because:
    'eyelids, outer eye muscles and throat are picked out, on both sides alike and without change from hour to hour',
} as const;

const myotonic = {
  paces: comesOnSlowly,
  key: 'myotonic-myopathy',
  label: 'Muscle disease with myotonia',
  kind: 'muscle',
  because: 'muscle fibres relax late, and waste in face, neck and limbs',
} as const;

const axial = {
  key: 'axial-myopathy',
  label: 'Muscle disease of neck and spine',
  kind: 'muscle',
  reflex: 0,
  ownReflex: 0.2,
  because: 'the muscles along the spine are picked out',
} as const;

/** The girdles with the trunk; what is near suffers by `hip` and `shoulder`, what is far hardly. */
const girdles = (hip: number, shoulder: number, neck: number): GroupLoss => ({
  hip,
  'knee-extensors': hip * 0.7,
  'knee-flexors': hip * 0.55,
  trunk: hip * 0.4,
  shoulder,
  'upper-arm': shoulder * 0.7,
  scapular: shoulder * 0.5,
  'neck-flexors': neck,
  'neck-extensors': neck * 0.35,
  'forearm-extensors': shoulder * 0.1,
  'leg-anterior': hip * 0.12,
  'leg-posterior': hip * 0.06,
  hand: 0.02,
  'hand-thenar': 0.02,
});

const proximalForms: readonly {
  readonly variant: string;
  readonly share: number;
  readonly losses: GroupLoss;
  readonly throat: number;
}[] = [
  { variant: 'slight', share: 0.25, losses: girdles(0.35, 0.28, 0.22), throat: 0.1 },
  { variant: 'moderate', share: 0.22, losses: girdles(0.6, 0.5, 0.45), throat: 0.2 },
  { variant: 'severe', share: 0.13, losses: girdles(0.85, 0.75, 0.6), throat: 0.3 },
  { variant: 'hips-first', share: 0.2, losses: girdles(0.6, 0.15, 0.1), throat: 0.05 },
  { variant: 'shoulders-first', share: 0.1, losses: girdles(0.15, 0.6, 0.3), throat: 0.1 },
  { variant: 'hips-and-neck', share: 0.1, losses: girdles(0.45, 0.35, 0.6), throat: 0.4 },
];

const acute = (depth: number): GroupLoss => ({
  hip: depth,
  'knee-extensors': depth,
  'knee-flexors': depth * 0.9,
  shoulder: depth * 0.9,
  'upper-arm': depth * 0.85,
  scapular: depth * 0.6,
  trunk: depth * 0.7,
  'neck-flexors': depth * 0.6,
  'neck-extensors': depth * 0.4,
  'forearm-extensors': depth * 0.6,
  'forearm-flexors': depth * 0.6,
  'finger-flexors': depth * 0.6,
  hand: depth * 0.5,
  'hand-thenar': depth * 0.5,
  'leg-anterior': depth * 0.7,
  'leg-posterior': depth * 0.65,
  foot: depth * 0.6,
});

/** Diseases of muscle by distribution. Source: Amato and Russell, Neuromuscular Disorders (recalled); fractions judged. */
export const myopathies: readonly MuscleDisease[] = [
  ...proximalForms.map(
    ({ variant, share, losses, throat }): MuscleDisease => ({
      ...proximal,
      variant,
      percent: percent.proximal * share,
      losses,
      lopsidedShare: 0.06,
      betterSide: 0.65,
      reflex: 0.02,
      ownReflex: 0.25,
      signs: [
        ['swallowing', throat],
        ['breathing', 0.12],
        ['lower-face', 0.04],
        ['upper-face', 0.04],
      ],
    }),
  ),
  // The jerks go in the attack because the muscle no longer answers; face, eyes and breathing are spared.
  ...[0.5, 0.8].map(
    (depth): MuscleDisease => ({
      ...proximal,
      variant: `all-limbs-acute-${depth}`,
      percent: percent.acute / 2,
      losses: acute(depth),
      reflex: depth * 0.75,
      ownReflex: 0.5,
      because: 'the muscles of all limbs fail together and those of face and eyes do not',
      paces: { hyperacute: 8, acute: 3, subacute: 0.2, chronic: 0.05 },
      signs: [
        ['breathing', 0.1],
        ['heart-rate', 0.2],
      ],
    }),
  ),
  {
    ...distal,
    variant: 'front-of-leg',
    percent: percent.distal * 0.4,
    losses: { 'leg-anterior': 0.7, foot: 0.4, 'leg-posterior': 0.15, 'finger-flexors': 0.1, 'forearm-extensors': 0.1 },
    lopsidedShare: 0.15,
    betterSide: 0.6,
    ownReflex: 0.3,
    signs: [],
  },
  {
    ...distal,
    variant: 'back-of-leg',
    percent: percent.distal * 0.25,
    losses: { 'leg-posterior': 0.7, 'leg-anterior': 0.12, 'knee-flexors': 0.2, foot: 0.3, hip: 0.1 },
    lopsidedShare: 0.25,
    betterSide: 0.6,
    ownReflex: 0.6,
    signs: [],
  },
  {
    ...distal,
    variant: 'hands',
    percent: percent.distal * 0.15,
    losses: { 'forearm-extensors': 0.6, hand: 0.35, 'hand-thenar': 0.35, 'leg-anterior': 0.25, 'finger-flexors': 0.2 },
    lopsidedShare: 0.2,
    betterSide: 0.6,
    ownReflex: 0.3,
    signs: [],
  },
  {
    ...distal,
    variant: 'hands-and-legs',
    percent: percent.distal * 0.2,
    losses: {
      'leg-anterior': 0.65,
      'leg-posterior': 0.45,
      'forearm-extensors': 0.45,
      'forearm-flexors': 0.35,
      'finger-flexors': 0.4,
      hand: 0.4,
      'hand-thenar': 0.4,
      foot: 0.6,
    },
    ownReflex: 0.3,
    signs: [['voice', 0.1]],
  },
  {
    ...selective,
    variant: 'both',
    percent: percent.fingerFlexorQuadriceps * 0.55,
    losses: {
      'finger-flexors': 0.65,
      'forearm-flexors': 0.4,
      'knee-extensors': 0.65,
      hip: 0.25,
      'leg-anterior': 0.3,
      'upper-arm': 0.2,
      shoulder: 0.12,
      'forearm-extensors': 0.15,
      hand: 0.12,
      'hand-thenar': 0.12,
      'neck-flexors': 0.2,
    },
    lopsidedShare: 0.6,
    betterSide: 0.55,
    signs: [
      ['swallowing', 0.45],
      ['lower-face', 0.15],
      ['upper-face', 0.15],
    ],
  },
  {
    ...selective,
    variant: 'quadriceps-first',
    percent: percent.fingerFlexorQuadriceps * 0.25,
    losses: { 'knee-extensors': 0.7, 'finger-flexors': 0.3, 'leg-anterior': 0.25, hip: 0.2, 'forearm-flexors': 0.15 },
    lopsidedShare: 0.5,
    betterSide: 0.6,
    signs: [['swallowing', 0.35]],
  },
  {
    ...selective,
    variant: 'fingers-first',
    percent: percent.fingerFlexorQuadriceps * 0.2,
    losses: { 'finger-flexors': 0.7, 'forearm-flexors': 0.35, 'knee-extensors': 0.3, 'leg-anterior': 0.15, hip: 0.1 },
    lopsidedShare: 0.6,
    betterSide: 0.5,
    signs: [['swallowing', 0.45]],
  },
  {
    ...facioscapulohumeral,
    variant: 'usual',
    percent: percent.facioscapulohumeral * 0.45,
    losses: { scapular: 0.7, 'upper-arm': 0.5, shoulder: 0.4, trunk: 0.45, 'leg-anterior': 0.45, hip: 0.2 },
    lopsidedShare: 0.6,
    betterSide: 0.45,
    signs: [
      ['lower-face', 0.75, 0.55],
      ['upper-face', 0.7, 0.5],
    ],
  },
  {
    // The arm cannot be raised because the shoulder blade gives no hold, whatever the deltoid has left.
    ...facioscapulohumeral,
    variant: 'late',
    percent: percent.facioscapulohumeral * 0.2,
    losses: {
      scapular: 0.85,
      shoulder: 0.7,
      'upper-arm': 0.65,
      trunk: 0.65,
      'leg-anterior': 0.7,
      hip: 0.5,
      'knee-extensors': 0.3,
      'neck-flexors': 0.3,
      'forearm-extensors': 0.25,
    },
    lopsidedShare: 0.4,
    betterSide: 0.65,
    signs: [
      ['lower-face', 0.85],
      ['upper-face', 0.8],
    ],
  },
  {
    ...facioscapulohumeral,
    variant: 'early',
    percent: percent.facioscapulohumeral * 0.22,
    losses: { scapular: 0.6, 'upper-arm': 0.25, shoulder: 0.2, trunk: 0.25, 'leg-anterior': 0.12 },
    lopsidedShare: 0.6,
    betterSide: 0.35,
    signs: [
      ['lower-face', 0.75, 0.6],
      ['upper-face', 0.75, 0.6],
    ],
  },
  {
    ...facioscapulohumeral,
    variant: 'face-spared',
    percent: percent.facioscapulohumeral * 0.13,
    losses: { scapular: 0.75, 'upper-arm': 0.4, shoulder: 0.3, 'leg-anterior': 0.65, trunk: 0.3, hip: 0.2 },
    lopsidedShare: 0.5,
    betterSide: 0.5,
    signs: [
      ['lower-face', 0.15],
      ['upper-face', 0.12],
    ],
  },
  {
    ...oculopharyngeal,
    variant: 'lids-and-eyes',
    percent: percent.oculopharyngeal * 0.5,
    losses: { hip: 0.15, shoulder: 0.15, 'neck-flexors': 0.15 },
    signs: [
      ['eyelid-elevation', 0.92],
      ['oculomotor', 0.8],
      ['abducens', 0.7],
      ['trochlear', 0.3],
      ['swallowing', 0.2],
      ['upper-face', 0.3],
      ['fatigability', 0.1],
    ],
  },
  {
    ...oculopharyngeal,
    variant: 'lids-and-throat',
    percent: percent.oculopharyngeal * 0.5,
    losses: { hip: 0.35, shoulder: 0.3, 'neck-flexors': 0.25, 'knee-extensors': 0.2, 'upper-arm': 0.2 },
    signs: [
      ['eyelid-elevation', 0.93],
      ['oculomotor', 0.35],
      ['abducens', 0.25],
      ['swallowing', 0.88],
      ['voice', 0.4],
      ['palate', 0.35],
      ['speech-articulation', 0.25],
      ['tongue-denervation', 0.3],
      ['upper-face', 0.35],
      ['lower-face', 0.3],
    ],
  },
  {
    ...myotonic,
    variant: 'far-muscles-and-face',
    percent: percent.myotonic * 0.6,
    losses: {
      'leg-anterior': 0.6,
      foot: 0.4,
      'leg-posterior': 0.2,
      'forearm-extensors': 0.45,
      'forearm-flexors': 0.35,
      'finger-flexors': 0.5,
      hand: 0.3,
      'hand-thenar': 0.3,
      'neck-flexors': 0.6,
      'neck-extensors': 0.15,
    },
    reflex: 0.25,
    ownReflex: 0.4,
    signs: [
      ['myotonia', 0.9],
      ['eyelid-elevation', 0.65],
      ['lower-face', 0.7],
      ['upper-face', 0.65],
      ['jaw-power', 0.5],
      ['speech-articulation', 0.35],
      ['palate', 0.3],
      ['swallowing', 0.35],
      ['accessory', 0.4],
      ['heart-rate', 0.2],
      ['bowel', 0.15],
    ],
  },
  {
    ...myotonic,
    variant: 'near-muscles',
    percent: percent.myotonic * 0.25,
    losses: {
      hip: 0.45,
      'knee-extensors': 0.3,
      'neck-flexors': 0.4,
      shoulder: 0.25,
      'upper-arm': 0.2,
      'finger-flexors': 0.25,
    },
    reflex: 0.1,
    ownReflex: 0.25,
    signs: [
      ['myotonia', 0.7],
      ['lower-face', 0.12],
      ['upper-face', 0.12],
      ['eyelid-elevation', 0.1],
    ],
  },
  {
    ...myotonic,
    variant: 'stiff-and-strong',
    percent: percent.myotonic * 0.15,
    losses: { hip: 0.1, 'leg-anterior': 0.08 },
    reflex: 0,
    ownReflex: 0,
    signs: [['myotonia', 0.95]],
  },
  {
    ...axial,
    variant: 'neck',
    percent: percent.axial * 0.6,
    losses: { 'neck-extensors': 0.8, 'neck-flexors': 0.25, shoulder: 0.15, trunk: 0.15, scapular: 0.1 },
    signs: [['swallowing', 0.1]],
  },
  {
    ...axial,
    variant: 'spine',
    percent: percent.axial * 0.4,
    losses: { trunk: 0.8, 'neck-extensors': 0.3, hip: 0.2, shoulder: 0.12, 'neck-flexors': 0.2 },
    signs: [['breathing', 0.25]],
  },
];
