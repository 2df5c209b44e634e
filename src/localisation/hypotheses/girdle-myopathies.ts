import type { GroupLoss, MuscleDisease } from './muscle-and-junction.ts';

/** Percent of all focal and diffuse findings that slow disease of the girdles stands for. Judged. */
const percent = 3;

export const proximal = {
  key: 'proximal-myopathy',
  label: 'Proximal muscle disease',
  kind: 'muscle',
  because: 'the muscles of the limb girdles are affected on both sides',
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
  /** Chance of a weak face. */
  readonly face?: number;
}[] = [
  { variant: 'slight', share: 0.25, losses: girdles(0.35, 0.28, 0.22), throat: 0.1 },
  { variant: 'moderate', share: 0.16, losses: girdles(0.6, 0.5, 0.45), throat: 0.2 },
  { variant: 'severe', share: 0.13, losses: girdles(0.85, 0.75, 0.6), throat: 0.3 },
  { variant: 'hips-first', share: 0.2, losses: girdles(0.6, 0.15, 0.1), throat: 0.05 },
  { variant: 'shoulders-first', share: 0.1, losses: girdles(0.15, 0.6, 0.3), throat: 0.1 },
  // Limb-girdle and congenital forms take the front of the shin with the hips.
  {
    variant: 'hips-and-shins',
    share: 0.06,
    losses: { ...girdles(0.55, 0.28, 0.25), 'leg-anterior': 0.55 },
    throat: 0.05,
  },
  // Hip flexors, adductors and glutei alone, the knees still strong, as at first in necrotising and storage myopathies.
  {
    variant: 'hips-alone',
    share: 0.08,
    losses: { hip: 0.5, trunk: 0.25, 'knee-extensors': 0.1, 'knee-flexors': 0.1, shoulder: 0.08, 'neck-flexors': 0.1 },
    throat: 0.05,
  },
  // Mitochondrial and congenital forms, and some of the limb girdles, weaken the face with them.
  { variant: 'with-face', share: 0.05, losses: girdles(0.5, 0.45, 0.5), throat: 0.25, face: 0.7 },
  // In some inflammatory myopathies the throat fails first, while the girdles have hardly begun to.
  { variant: 'throat-first', share: 0.03, losses: girdles(0.3, 0.28, 0.4), throat: 0.9 },
  // Inflamed by immunity against a tumour, by a checkpoint inhibitor above all, the neck sinks with the girdles.
  {
    variant: 'girdles-and-sinking-neck',
    share: 0.035,
    losses: { ...girdles(0.55, 0.55, 0.6), 'neck-extensors': 0.6 },
    throat: 0.5,
  },
  { variant: 'hips-and-neck', share: 0.1, losses: girdles(0.45, 0.35, 0.6), throat: 0.4 },
];

/** Diseases of muscle that take the girdles first. Source: Amato and Russell, Neuromuscular Disorders (recalled); fractions judged. */
export const girdleMyopathies: readonly MuscleDisease[] = [
  ...proximalForms.map(
    ({ variant, share, losses, throat, face = 0.04 }): MuscleDisease => ({
      ...proximal,
      variant,
      percent: percent * share,
      losses,
      lopsidedShare: 0.06,
      betterSide: 0.65,
      reflex: 0.02,
      ownReflex: 0.25,
      signs: [
        ['swallowing', throat],
        ['palate', throat * 0.5],
        ['speech-articulation', throat * 0.25],
        ['breathing', 0.12],
        ['lower-face', face],
        ['upper-face', face],
      ],
    }),
  ),
  {
    // Torn, inflamed or starved of fuel, muscle hurts and leaks its enzyme while it is still strong.
    ...proximal,
    variant: 'tender-and-strong',
    percent: percent * 0.03,
    losses: girdles(0.06, 0.05, 0.03),
    reflex: 0,
    ownReflex: 0,
    because: 'muscle hurts and leaks its enzyme before it weakens',
    paces: { hyperacute: 3, acute: 4, subacute: 1, chronic: 0.6 },
    signs: [],
  },
  {
    // Congenital myopathies and dystrophies: face, trunk and all limbs of an infant, the jerks lost with the muscle.
    ...proximal,
    variant: 'from-birth',
    percent: percent * 0.05,
    losses: {
      ...girdles(0.7, 0.65, 0.75),
      trunk: 0.7,
      'leg-anterior': 0.5,
      'leg-posterior': 0.45,
      'upper-arm': 0.6,
      hand: 0.4,
    },
    reflex: 0.6,
    ownReflex: 0.7,
    ages: { to: 2, outside: 0.0002 },
    signs: [
      ['swallowing', 0.6],
      ['palate', 0.4],
      ['breathing', 0.45],
      ['lower-face', 0.6],
      ['upper-face', 0.6],
    ],
  },
  {
    // Dystrophies waste the quadriceps early, and the knee jerk goes with it while the ankle jerk is kept.
    ...proximal,
    variant: 'knee-jerk-lost',
    percent: percent * 0.08,
    losses: { ...girdles(0.6, 0.4, 0.3), 'knee-extensors': 0.6 },
    reflex: 0.02,
    ownReflex: 0.85,
    paces: { hyperacute: 0.1, acute: 0.1, subacute: 0.4, chronic: 1.5 },
    signs: [
      ['swallowing', 0.08],
      ['breathing', 0.15],
    ],
  },
  {
    // Colchicine and chloroquine stop the traffic in muscle and nerve alike, in failing kidneys within weeks: weak girdles
    // without jerks, and muscle that answers a tap too long in some. Source: Kuncl 1987 (recalled).
    ...proximal,
    variant: 'girdles-of-muscle-and-nerve',
    percent: percent * 0.02,
    losses: girdles(0.6, 0.4, 0.25),
    reflex: 0.75,
    ownReflex: 0.75,
    because: 'a poison stops muscle and the nerves to it at once',
    paces: { hyperacute: 0.05, acute: 0.6, subacute: 1.5, chronic: 1 },
    ages: { from: 30, outside: 0.3 },
    signs: [
      ['myotonia', 0.12],
      ['swallowing', 0.08],
      ['breathing', 0.08],
    ],
  },
  {
    // An overactive thyroid weakens the girdles, makes the jerks brisk, the heart race, hands shake and lids draw back.
    ...proximal,
    variant: 'girdles-with-brisk-jerks',
    percent: percent * 0.05,
    losses: girdles(0.45, 0.4, 0.25),
    reflex: 0,
    ownReflex: 0,
    release: 0.45,
    signs: [
      ['pretectal', 0.35],
      ['heart-rate', 0.5],
      ['postural-tremor', 0.5],
      ['swallowing', 0.1],
      ['breathing', 0.08],
    ],
  },
  // Left to go on, necrotising and inflammatory myopathy take the far muscles too, and jerks are lost with the muscle.
  ...[0.6, 0.8].map(
    (depth): MuscleDisease => ({
      ...proximal,
      variant: `all-limbs-${depth}`,
      percent: percent * 0.042,
      losses: {
        ...girdles(Math.min(0.95, depth + 0.1), depth, depth),
        'upper-arm': depth,
        'forearm-extensors': depth * 0.75,
        'forearm-flexors': depth * 0.75,
        'finger-flexors': depth * 0.75,
        hand: depth * 0.5,
        'hand-thenar': depth * 0.5,
        'leg-anterior': depth * 0.75,
        'leg-posterior': depth * 0.6,
        foot: depth * 0.5,
      },
      reflex: 0.7,
      ownReflex: 0.97,
      because: 'the muscles of all limbs are affected, near more than far',
      paces: { hyperacute: 0.3, acute: 0.6, subacute: 1.5, chronic: 0.8 },
      // Infants have forms of their own.
      ages: { from: 3, outside: 0.15 },
      signs: [
        ['swallowing', 0.5],
        ['voice', 0.2],
        ['breathing', 0.25],
        ['lower-face', 0.05],
        ['upper-face', 0.05],
      ],
    }),
  ),
];
