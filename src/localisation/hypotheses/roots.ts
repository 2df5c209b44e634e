import { type Segment, segmentIndex, segments } from '../../anatomy/segments.ts';
import { type BodySide, bodySides } from '../../kernel/side.ts';
import { type Hypothesis, hypothesis, type PaceFactors, type Site } from '../hypothesis.ts';
import { LesionBuilder } from '../lesion.ts';
import { type FacultyChances, facultyKey, partOf } from '../process.ts';
import { extents, groupFrequency, rootShare, sideSpreads } from './extents.ts';

/**
 * How often a single root is the one affected, in percent of root lesions. Judged from the dominance of L5, S1, C7 and C6.
 * C1 and S5 are left out: C1 seldom has a sensory root and serves no movement that is tested alone, and S5 shares its
 * patch of skin with S4.
 */
const rootFrequency: Readonly<Partial<Record<Segment, number>>> = {
  C2: 0.3,
  C3: 0.3,
  C4: 0.7,
  C5: 5,
  C6: 14,
  C7: 20,
  C8: 5,
  T1: 1.2,
  L1: 0.5,
  L2: 1,
  L3: 3,
  L4: 7,
  L5: 22,
  S1: 18,
  S2: 0.8,
  S3: 0.3,
  S4: 0.15,
};

const thoracicRootFrequency = 0.6;

const limbPairs: readonly (readonly [Segment, Segment, number])[] = [
  ['C5', 'C6', 3],
  ['C6', 'C7', 3],
  ['C7', 'C8', 2],
  ['C8', 'T1', 0.6],
  ['L2', 'L3', 1.5],
  ['L3', 'L4', 2],
  ['L4', 'L5', 3],
  ['L5', 'S1', 4],
  ['S1', 'S2', 1],
];

function rootSite(side: BodySide, level: Segment): Site {
  return { key: 'nerve-root', label: `${level} nerve root`, side, level, kind: 'root' };
}

function segmentsFrom(top: Segment, bottom: Segment): readonly Segment[] {
  return segments.slice(segmentIndex(top), segmentIndex(bottom) + 1);
}

/** A root that is pressed on mends or is freed within months in most; few waste for years. Judged. */
const seldomForYears = { years: 5, beyond: 0.6 } as const;

function singleRoots(): Hypothesis[] {
  const weights = segmentsFrom('C2', 'S4').map(
    (segment) => [segment, rootFrequency[segment] ?? thoracicRootFrequency] as const,
  );
  const total = weights.reduce((sum, [, weight]) => sum + weight, 0);
  return weights.flatMap(([segment, weight]) =>
    bodySides.flatMap((side) =>
      extents.map((extent) =>
        hypothesis(
          rootSite(side, segment),
          extent.key,
          (groupFrequency.root * weight * rootShare[extent.key]) / (total * 2),
          new LesionBuilder().root(side, segment, extent.motor, extent.sensory).build(),
          { lasting: seldomForYears },
        ),
      ),
    ),
  );
}

function adjacentRoots(): Hypothesis[] {
  const total = limbPairs.reduce((sum, [, , weight]) => sum + weight, 0);
  return limbPairs.flatMap(([upper, lower, weight]) =>
    bodySides.flatMap((side) =>
      extents.map((extent) =>
        hypothesis(
          {
            key: 'adjacent-nerve-roots',
            label: `${upper} and ${lower} nerve roots`,
            side,
            level: upper,
            span: [upper, lower],
            kind: 'root',
          },
          extent.key,
          (groupFrequency.adjacentRoots * weight * extent.share) / (total * 2),
          new LesionBuilder()
            .root(side, upper, extent.motor, extent.sensory)
            .root(side, lower, extent.motor, extent.sensory)
            .build(),
          { lasting: seldomForYears },
        ),
      ),
    ),
  );
}

/** Roots hit in one process, by side: fraction lost of each, motor and sensory alike. */
type RootLosses = Readonly<Record<BodySide, Readonly<Partial<Record<Segment, number>>>>>;

function bySide(side: BodySide, own: RootLosses[BodySide], other: RootLosses[BodySide]): RootLosses {
  return side === 'left' ? { left: own, right: other } : { left: other, right: own };
}

const arm = segmentsFrom('C5', 'T1');
const leg = segmentsFrom('L2', 'S1');

function alike(roots: readonly Segment[], loss: number): Readonly<Partial<Record<Segment, number>>> {
  return Object.fromEntries(roots.map((root) => [root, loss]));
}

/** Every other root hit hard and its neighbour lightly: the patchwork of deposits and of inflammation. */
function everyOther(roots: readonly Segment[], first: 0 | 1, loss: number): Readonly<Partial<Record<Segment, number>>> {
  return Object.fromEntries(roots.map((root, place) => [root, place % 2 === first ? loss : loss * 0.2]));
}

/** All limbs alike is the mark of inflammation of roots and nerves together, another process; here one side is the worse. */
const allLimbs = 'cervical-and-lumbosacral';

const stretches: readonly { readonly key: string; readonly roots: readonly Segment[]; readonly share: number }[] = [
  { key: 'lumbosacral', roots: leg, share: 0.14 },
  { key: 'low-lumbar', roots: segmentsFrom('L4', 'S1'), share: 0.22 },
  { key: 'cervical', roots: arm, share: 0.08 },
  { key: 'thoracic', roots: segmentsFrom('T6', 'T11'), share: 0.06 },
  { key: allLimbs, roots: [...arm, ...leg], share: 0.1 },
];

/** How often both sides are hit alike, and how often one is the worse. Judged. */
const evenness = { even: 0.1, 'left-worse': 0.45, 'right-worse': 0.45 } as const;

const oneSided: readonly (readonly [Segment, Segment])[] = [
  ['C5', 'C7'],
  ['C6', 'C8'],
  ['C7', 'T1'],
  ['T5', 'T7'],
  ['T8', 'T10'],
  ['T10', 'T12'],
  ['L2', 'L4'],
  ['L3', 'L5'],
  ['L4', 'S1'],
];

const depths = [0.8, 0.5] as const;
/** Where the depth hardly shows at the bedside. */
const oneDepth = 0.65;
const isOfTrunk = (top: Segment): boolean => partOf(segmentIndex(top)) === 'trunk';

/**
 * Deposits and inflammation in the spinal fluid grow over days to weeks, a narrow canal over years; only blood and a burst
 * disc strike many roots at once. Judged.
 */
const manyRootsPaces = { hyperacute: 0.15, acute: 0.7, subacute: 1.2, chronic: 1.1 } as const;

/** What a process in the spinal fluid does beside: cranial nerves, stiff neck, bladder. Judged. */
const beside: FacultyChances = new Map([
  ...bodySides.flatMap((side) => [
    [facultyKey('lower-face', side), 0.08] as const,
    [facultyKey('upper-face', side), 0.06] as const,
    [facultyKey('abducens', side), 0.06] as const,
  ]),
  [facultyKey('meningeal', 'midline'), 0.12],
  [facultyKey('bladder-retention', 'midline'), 0.08],
]);

/** Share of the loss that sensory fibres have, and the pace. */
interface RootPicture {
  readonly feeling: number;
  readonly paces: PaceFactors;
}

/** Roots that are chiefly motor at the bedside; in years skin grows numb as well. Judged. */
const motorAlone: RootPicture = { feeling: 0.15, paces: { ...manyRootsPaces, chronic: 0.4 } };

export function manyRootsSite(side: Site['side']): Site {
  return { key: 'polyradiculopathy', label: 'Nerve roots at many levels', side, level: null, kind: 'root' };
}

/**
 * Many roots at once, seldom evenly: a narrow lumbar canal, deposits or infection in the spinal fluid, diabetes. The lowest
 * sacral roots are left to the cauda equina. Which roots go together is judged.
 */
function manyRoots(): Hypothesis[] {
  const build = (
    side: Site['side'],
    variant: string,
    share: number,
    losses: RootLosses,
    { feeling, paces }: RootPicture = { feeling: 1, paces: manyRootsPaces },
  ): Hypothesis => {
    const lesion = new LesionBuilder();
    for (const one of bodySides) {
      for (const [root, loss] of Object.entries(losses[one]) as [Segment, number][])
        lesion.root(one, root, loss, loss * feeling);
    }
    return hypothesis(manyRootsSite(side), variant, groupFrequency.manyRoots * share, lesion.build(), {
      faculties: beside,
      paces,
    });
  };
  const both = stretches.flatMap(({ key, roots, share }) =>
    sideSpreads
      .filter((spread) => spread.key !== 'even' || key !== allLimbs)
      .flatMap((spread) =>
        depths.map((depth) =>
          build('both', `${key}-${spread.key}-${depth}`, (share * evenness[spread.key]) / depths.length, {
            left: alike(roots, depth * spread.left),
            right: alike(roots, depth * spread.right),
          }),
        ),
      ),
  );
  const crossedLegs = bodySides.map((side) => {
    const upper = alike(segmentsFrom('L2', 'L4'), oneDepth);
    return build(
      'both',
      `${side}-upper-other-lower`,
      0.06 / 2,
      bySide(side, upper, alike(segmentsFrom('L5', 'S1'), oneDepth)),
    );
  });
  const patchwork = ([0, 1] as const).map((first) =>
    build('both', `patchwork-${first}`, 0.06 / 2, {
      left: everyOther(leg, first, 0.85),
      right: everyOther(leg, first === 0 ? 1 : 0, 0.85),
    }),
  );
  // Skin that roots share feels when half of their fibres are gone, so that often strength and jerks alone fail.
  const chieflyMotor = ['lumbosacral', 'cervical'].flatMap((key) =>
    sideSpreads.map((spread) => {
      const roots = stretches.find((stretch) => stretch.key === key)?.roots ?? [];
      const losses = { left: alike(roots, oneDepth * spread.left), right: alike(roots, oneDepth * spread.right) };
      return build('both', `${key}-${spread.key}-motor`, 0.07 / 6, losses, motorAlone);
    }),
  );
  const single = oneSided.flatMap(([top, bottom]) =>
    bodySides.flatMap((side) =>
      (isOfTrunk(top) ? [oneDepth] : depths).map((depth, _, all) => {
        const losses = bySide(side, alike(segmentsFrom(top, bottom), depth), {});
        return build(side, `${top}-to-${bottom}-${depth}`, 0.16 / (oneSided.length * 2 * all.length), losses);
      }),
    ),
  );
  return [...both, ...crossedLegs, ...patchwork, ...chieflyMotor, ...single];
}

/**
 * Cauda equina: how far up the lowest roots are taken, and how deep those above S2 suffer beside the sacral ones, which lie
 * in the middle and suffer first. Judged.
 */
const caudaSpreads = [
  { top: 'L2', share: 0.1, outer: [1] },
  { top: 'L4', share: 0.2, outer: [1, 0.5] },
  { top: 'L5', share: 0.26, outer: [1, 0.5] },
  { top: 'S1', share: 0.25, outer: [1, 0.5] },
  { top: 'S2', share: 0.14, outer: [1] },
  { top: 'S3', share: 0.05, outer: [1] },
] as const;

function caudaEquina(): Hypothesis[] {
  return caudaSpreads.flatMap(({ top, share, outer }) =>
    outer.flatMap((above) =>
      sideSpreads.flatMap((spread) =>
        [0.97, 0.75, 0.45].map((depth) => {
          const lesion = new LesionBuilder();
          for (const root of segmentsFrom(top, 'S5')) {
            const own = depth * (segmentIndex(root) < segmentIndex('S2') ? above : 1);
            for (const side of bodySides) lesion.root(side, root, own * spread[side], own * spread[side]);
          }
          return hypothesis(
            { key: 'cauda-equina', label: 'Cauda equina', side: 'both', level: null, kind: 'cauda-equina' },
            `from-${top}-${above}-${spread.key}-${depth}`,
            (groupFrequency.caudaEquina * share) / (outer.length * 9),
            lesion.build(),
          );
        }),
      ),
    ),
  );
}

/** Single roots, two neighbours at once, many at once, and the cauda equina. */
export function rootHypotheses(): Hypothesis[] {
  return [...singleRoots(), ...adjacentRoots(), ...manyRoots(), ...caudaEquina()];
}
