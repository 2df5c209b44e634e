import type { Segment } from '../../anatomy/segments.ts';
import { type BodySide, bodySides, opposite } from '../../kernel/side.ts';
import type { AgeRange, PaceFactors } from '../hypothesis.ts';
import { comesOnSlowly } from './process-signs.ts';

/** Regions in which motor cells of the cord are lost together; bulbar cells go by faculty. */
export const cellRegions = {
  neck: ['C2', 'C4'],
  'upper-arm': ['C5', 'C6'],
  'forearm-and-hand': ['C7', 'T1'],
  triceps: ['C7', 'C7'],
  hand: ['C8', 'T1'],
  trunk: ['T2', 'T12'],
  thigh: ['L2', 'L4'],
  'leg-and-foot': ['L5', 'S2'],
} as const satisfies Record<string, readonly [Segment, Segment]>;

export type CellRegion = keyof typeof cellRegions;

/** Motor cells lost in a region on one side, 0 to 1. */
export type CellLoss = readonly [BodySide, CellRegion, number];

/** Where loss of motor cells is seen at examination. */
export interface CellPattern {
  readonly key: string;
  /** Share of cases; both sides of a one-sided pattern are listed, each with its half. Judged. */
  readonly share: number;
  readonly losses: readonly CellLoss[];
  /** Chance of bulbar signs. */
  readonly bulbar: number;
  readonly breathing?: number;
  /** Ages at which the pattern is met, where those are not any. */
  readonly ages?: AgeRange;
  /** How fast it comes on, where it is not as fast as others of its kind. */
  readonly paces?: PaceFactors;
}

const arm = (side: BodySide, upper: number, far: number): readonly CellLoss[] => [
  [side, 'upper-arm', upper],
  [side, 'forearm-and-hand', far],
];
const leg = (side: BodySide, thigh: number, far: number): readonly CellLoss[] => [
  [side, 'thigh', thigh],
  [side, 'leg-and-foot', far],
];
const both = (losses: (side: BodySide) => readonly CellLoss[]): readonly CellLoss[] => bodySides.flatMap(losses);

/** A pattern on either side. */
function eitherSide(
  key: string,
  share: number,
  bulbar: number,
  losses: (side: BodySide, far: BodySide) => readonly CellLoss[],
): readonly CellPattern[] {
  return bodySides.map((side) => ({
    key: `${key}-${side}`,
    share: share / 2,
    bulbar,
    losses: losses(side, opposite(side)),
  }));
}

/**
 * Onset in one limb is the rule, far muscles before near ones; then the next region and the other side.
 * Source: Amato and Russell, motor neuron diseases (recalled); fractions and shares judged.
 */
export const spreadingPatterns: readonly CellPattern[] = [
  ...eitherSide('hand', 0.17, 0.12, (side) => arm(side, 0.25, 0.65)),
  // Seen early: the one limb, and little of that.
  ...eitherSide('hand-early', 0.06, 0.08, (side) => arm(side, 0.06, 0.35)),
  ...eitherSide('foot-early', 0.06, 0.08, (side) => leg(side, 0.06, 0.35)),
  ...eitherSide('hand-then-other', 0.1, 0.15, (side, far) => [...arm(side, 0.4, 0.75), ...arm(far, 0.1, 0.35)]),
  ...eitherSide('shoulder', 0.05, 0.12, (side) => arm(side, 0.7, 0.35)),
  ...eitherSide('foot', 0.15, 0.1, (side) => leg(side, 0.25, 0.65)),
  ...eitherSide('foot-then-other', 0.07, 0.1, (side, far) => [
    ...leg(side, 0.4, 0.8),
    ...leg(far, 0.15, 0.4),
    ...arm(side, 0.1, 0.2),
  ]),
  ...eitherSide('thigh', 0.03, 0.1, (side) => leg(side, 0.65, 0.35)),
  ...eitherSide('arm-and-leg', 0.06, 0.2, (side) => [...arm(side, 0.45, 0.65), ...leg(side, 0.3, 0.5)]),
  ...eitherSide('arm-and-other-leg', 0.04, 0.2, (side, far) => [...arm(side, 0.45, 0.65), ...leg(far, 0.3, 0.5)]),
  ...eitherSide('leg-worst', 0.06, 0.15, (side, far) => [
    ...leg(side, 0.75, 0.9),
    ...leg(far, 0.25, 0.4),
    ...arm(far, 0.25, 0.35),
    ...arm(side, 0.1, 0.2),
  ]),
  ...eitherSide('arm-worst', 0.07, 0.2, (side, far) => [
    ...arm(side, 0.75, 0.9),
    ...arm(far, 0.25, 0.45),
    ...leg(side, 0.25, 0.35),
    ...leg(far, 0.1, 0.2),
  ]),
  { key: 'both-arms', share: 0.08, bulbar: 0.25, losses: both((side) => arm(side, 0.5, 0.65)) },
  { key: 'flail-arms', share: 0.05, bulbar: 0.12, losses: both((side) => arm(side, 0.85, 0.5)) },
  { key: 'both-legs', share: 0.06, bulbar: 0.1, losses: both((side) => leg(side, 0.35, 0.65)) },
  // Near muscles first, as in some of the disease of cells of the cord and in that of cord and bulb.
  {
    key: 'near-muscles',
    share: 0.035,
    bulbar: 0.2,
    losses: both((side) => [...arm(side, 0.5, 0.1), ...leg(side, 0.5, 0.1)]),
  },
  { key: 'flail-legs', share: 0.04, bulbar: 0.08, losses: both((side) => leg(side, 0.45, 0.9)) },
  {
    key: 'all-limbs',
    share: 0.12,
    bulbar: 0.45,
    breathing: 0.25,
    losses: both((side) => [...arm(side, 0.4, 0.6), ...leg(side, 0.35, 0.5)]),
  },
  {
    key: 'all-limbs-severe',
    share: 0.05,
    bulbar: 0.6,
    breathing: 0.5,
    losses: both((side) => [
      ...arm(side, 0.7, 0.85),
      ...leg(side, 0.6, 0.75),
      [side, 'neck', 0.4],
      [side, 'trunk', 0.3],
    ]),
  },
  {
    key: 'arms-worst',
    share: 0.05,
    bulbar: 0.2,
    losses: both((side) => [...arm(side, 0.7, 0.85), ...leg(side, 0.15, 0.25)]),
  },
  {
    key: 'bulbar',
    share: 0.09,
    bulbar: 0.9,
    breathing: 0.2,
    losses: both((side) => arm(side, 0.04, 0.1)),
  },
  {
    key: 'bulbar-and-arms',
    share: 0.07,
    bulbar: 0.85,
    breathing: 0.25,
    losses: both((side) => [...arm(side, 0.35, 0.5), [side, 'neck', 0.3]]),
  },
  {
    key: 'neck-and-breathing',
    share: 0.03,
    bulbar: 0.25,
    breathing: 0.75,
    losses: both((side) => [[side, 'neck', 0.6], [side, 'trunk', 0.4], ...arm(side, 0.3, 0.3)]),
  },
];

/** A hand that thins while its owner grows, and then stays: onset between 15 and 25 years in most, Hirayama 2000 (recalled). Odds judged. */
const ofTheYoung = { from: 11, to: 40, outside: 0.12 } as const;

/** Loss of cord cells that stays where it began: one limb or part of it, for good or within days. Shares judged. */
export const segmentalPatterns: readonly CellPattern[] = [
  ...eitherSide('hand-and-forearm', 0.3, 0.01, (side, far) => [
    [side, 'hand', 0.65],
    [side, 'triceps', 0.3],
    [far, 'hand', 0.1],
  ]).map((pattern) => ({ ...pattern, ages: ofTheYoung, paces: comesOnSlowly })),
  {
    // The second hand follows the first in about one in ten, and then stops as well.
    key: 'both-hands-and-forearms',
    share: 0.05,
    bulbar: 0.01,
    ages: ofTheYoung,
    paces: comesOnSlowly,
    losses: both((side) => [
      [side, 'hand', 0.6],
      [side, 'triceps', 0.3],
    ]),
  },
  // The same disease of the young takes the upper arm in some, or all of the arm in the end.
  ...eitherSide('shoulder-and-upper-arm-slow', 0.04, 0.01, (side) => [[side, 'upper-arm', 0.6]]).map((pattern) => ({
    ...pattern,
    ages: ofTheYoung,
    paces: comesOnSlowly,
  })),
  ...eitherSide('whole-arm-slow', 0.06, 0.01, (side, far) => [...arm(side, 0.35, 0.6), [far, 'hand', 0.08]]).map(
    (pattern) => ({ ...pattern, ages: ofTheYoung, paces: comesOnSlowly }),
  ),
  ...eitherSide('shoulder-and-upper-arm', 0.14, 0.02, (side) => [[side, 'upper-arm', 0.8]]),
  ...eitherSide('whole-arm', 0.13, 0.05, (side) => arm(side, 0.9, 0.8)),
  ...eitherSide('whole-leg', 0.22, 0.03, (side) => leg(side, 0.85, 0.85)),
  // An infection of the cord spares some cells of each segment as often as it takes nearly all.
  ...eitherSide('leg-in-part', 0.12, 0.02, (side) => leg(side, 0.45, 0.35)),
  ...eitherSide('leg-and-less-of-other', 0.1, 0.05, (side, far) => [...leg(side, 0.85, 0.8), ...leg(far, 0.35, 0.35)]),
  ...eitherSide('arm-and-less-of-other', 0.06, 0.1, (side, far) => [...arm(side, 0.85, 0.6), ...arm(far, 0.4, 0.15)]),
  ...eitherSide('leg-and-other-arm', 0.1, 0.05, (side, far) => [
    ...leg(side, 0.85, 0.6),
    ...leg(far, 0.25, 0.2),
    ...arm(far, 0.5, 0.25),
  ]),
  {
    // The arms hang from the shoulders for years while the hands still grip and the legs walk.
    key: 'shoulders-and-upper-arms-slow',
    share: 0.03,
    bulbar: 0.03,
    ages: { from: 35, outside: 0.2 },
    paces: comesOnSlowly,
    losses: both((side) => [...arm(side, 0.85, 0.06), [side, 'triceps', 0.5]]),
  },
  { key: 'both-legs-near-and-far', share: 0.04, bulbar: 0.05, losses: both((side) => leg(side, 0.75, 0.75)) },
];
