import type { PlaceKey } from '../../anatomy/places.ts';
import { type BodySide, bodySides, opposite } from '../../kernel/side.ts';
import { type Hypothesis, hypothesis, type Site } from '../hypothesis.ts';
import { LesionBuilder } from '../lesion.ts';
import { type FacultyChances, facultyKey, processOf } from '../process.ts';
import { type Extent, extents, groupFrequency, mixedExtents } from './extents.ts';

const brachialParts = ['upper-trunk', 'middle-trunk', 'lower-trunk'] as const;
const lumbosacralParts = ['lumbar-plexus', 'lumbosacral-trunk', 'sacral-plexus'] as const;

/** A plexus is seldom hit evenly: share of the full damage that its upper, middle and lower part take. Judged. */
const spreads = [
  { key: 'even', parts: [1, 1, 1], share: 0.4 },
  { key: 'upper-worse', parts: [1, 0.45, 0.1], share: 0.35 },
  { key: 'lower-worse', parts: [0.1, 0.6, 1], share: 0.25 },
] as const;

function brachial(side: Site['side']): Site {
  return { key: 'brachial-plexus', label: 'Brachial plexus, several parts', side, level: null, kind: 'plexus' };
}

function lumbosacral(side: Site['side']): Site {
  return { key: 'lumbosacral-plexus', label: 'Lumbosacral plexus', side, level: null, kind: 'plexus' };
}

/** @param share of the depth that this side takes */
function hitBrachial(
  lesion: LesionBuilder,
  side: BodySide,
  { parts }: (typeof spreads)[number],
  { motor, sensory }: Extent,
  share = 1,
): void {
  for (const [place, part] of brachialParts.entries()) {
    const depth = (parts[place] ?? 1) * share;
    lesion.place(side, part, motor * depth, sensory * depth);
  }
}

function wholeBrachial(): Hypothesis[] {
  return bodySides.flatMap((side) =>
    spreads.flatMap((spread) =>
      mixedExtents.map((extent) => {
        const lesion = new LesionBuilder();
        hitBrachial(lesion, side, spread, extent);
        const frequency =
          (groupFrequency.wholeBrachialPlexus * spread.share) / (bodySides.length * mixedExtents.length);
        return hypothesis(brachial(side), `${spread.key}-${extent.key}`, frequency, lesion.build());
      }),
    ),
  );
}

/**
 * Both plexuses at once, as years after radiation of the neck or chest, or in one of four attacks of neuralgic amyotrophy;
 * share of the lesions of a whole plexus. Judged.
 */
const bothBrachial = { share: 0.04, paces: { hyperacute: 0.2, acute: 0.8, subacute: 0.9, chronic: 1.3 } } as const;

/** Nerves that rays have scarred twitch: Harper 1989 (recalled); share judged. */
const irradiated = processOf({ because: 'both plexuses are scarred or pressed', twitching: 0.5 });

/** Rays reach both sides nearly alike. Judged. */
const slightlyUneven = [
  { key: 'even', left: 1, right: 1 },
  { key: 'left-worse', left: 1, right: 0.65 },
  { key: 'right-worse', left: 0.65, right: 1 },
] as const;

function bothBrachialPlexuses(): Hypothesis[] {
  return spreads.flatMap((spread) =>
    slightlyUneven.flatMap((sides) =>
      mixedExtents.map((extent) => {
        const lesion = new LesionBuilder();
        for (const side of bodySides) hitBrachial(lesion, side, spread, extent, sides[side]);
        const ways = slightlyUneven.length * mixedExtents.length;
        const frequency = (groupFrequency.wholeBrachialPlexus * bothBrachial.share * spread.share) / ways;
        return hypothesis(brachial('both'), `${spread.key}-${extent.key}-${sides.key}`, frequency, lesion.build(), {
          paces: bothBrachial.paces,
          process: irradiated,
        });
      }),
    ),
  );
}

/**
 * A blow or pull that parts shoulder and neck may tear the upper roots where they join, with the nerves that leave there
 * for serratus and rhomboids, so that the shoulder blade stands out. Share of the lesions of a whole plexus, judged.
 */
const aboveTheTrunks = 0.12;

function upperRootsInTheNeck(): Hypothesis[] {
  return bodySides.flatMap((side) =>
    mixedExtents.map(({ key, motor, sensory }) => {
      const lesion = new LesionBuilder()
        .place(side, 'upper-trunk', motor, sensory)
        .place(side, 'middle-trunk', motor * 0.4, sensory * 0.4);
      for (const branch of ['long-thoracic-nerve', 'dorsal-scapular-nerve'] as const)
        lesion.place(side, branch, motor, 0);
      const ways = bodySides.length * mixedExtents.length;
      const frequency = (groupFrequency.wholeBrachialPlexus * aboveTheTrunks) / ways;
      return hypothesis(brachial(side), `above-the-trunks-${key}`, frequency, lesion.build());
    }),
  );
}

/** Motor fibres lost at each place that is hit. */
type Patch = Readonly<Partial<Record<PlaceKey, number>>>;

/**
 * Inflammation of the brachial plexus strikes it in patches: single branches and bundles, some near, some far, while their
 * neighbours go free. Most often hit are the suprascapular, long thoracic and axillary nerves and the fibres of the anterior
 * interosseous nerve; skin loss is slight. Fraction of motor fibres lost. Which go together is judged.
 * Source: van Eijk 2016 (recalled), distribution of weakness.
 */
const patches: readonly {
  readonly key: string;
  readonly share: number;
  readonly hits: Patch;
}[] = [
  {
    key: 'shoulder',
    share: 0.18,
    hits: { 'suprascapular-nerve': 0.9, 'long-thoracic-nerve': 0.8, 'axillary-nerve': 0.35 },
  },
  {
    key: 'shoulder-and-forearm',
    share: 0.12,
    hits: { 'suprascapular-nerve': 0.8, 'long-thoracic-nerve': 0.8, 'anterior-interosseous-nerve': 0.9 },
  },
  { key: 'spinati-and-deltoid', share: 0.1, hits: { 'suprascapular-nerve': 0.85, 'axillary-nerve': 0.8 } },
  {
    key: 'serratus-and-forearm',
    share: 0.08,
    hits: { 'long-thoracic-nerve': 0.85, 'anterior-interosseous-nerve': 0.85 },
  },
  {
    key: 'spinati-and-forearm',
    share: 0.08,
    hits: { 'suprascapular-nerve': 0.85, 'anterior-interosseous-nerve': 0.85 },
  },
  { key: 'upper-trunk-and-serratus', share: 0.14, hits: { 'upper-trunk': 0.55, 'long-thoracic-nerve': 0.8 } },
  {
    key: 'spinati-deltoid-biceps',
    share: 0.08,
    hits: { 'suprascapular-nerve': 0.8, 'axillary-nerve': 0.6, 'musculocutaneous-nerve': 0.7 },
  },
  {
    key: 'both-interossei',
    share: 0.06,
    hits: { 'anterior-interosseous-nerve': 0.9, 'posterior-interosseous-nerve': 0.7 },
  },
  { key: 'deltoid-and-forearm', share: 0.04, hits: { 'axillary-nerve': 0.8, 'anterior-interosseous-nerve': 0.85 } },
  { key: 'spinati-and-radial', share: 0.06, hits: { 'suprascapular-nerve': 0.75, 'radial-nerve-spiral-groove': 0.7 } },
  { key: 'lower-and-forearm', share: 0.06, hits: { 'lower-trunk': 0.45, 'anterior-interosseous-nerve': 0.85 } },
];

/** It strikes within hours to days and does not creep. van Eijk 2016 (recalled). */
const inflamedPaces = { hyperacute: 1, acute: 1.2, subacute: 1, chronic: 0.4 } as const;

/** Share of the skin fibres lost where the motor fibres are lost, and chance that half of the diaphragm fails too. Judged. */
const patchySkin = 0.3;
const diaphragmToo = 0.08;

/**
 * Both plexuses in one attack, of which one is hit harder: a quarter of the attacks (van Alfen 2006, recalled), and in a
 * few of them the diaphragm fails on both sides. Which patches go together is judged.
 */
const patchyOnBoth: readonly {
  readonly key: string;
  readonly share: number;
  readonly worse: Patch;
  readonly better: Patch;
  readonly diaphragm: number;
}[] = [
  {
    key: 'shoulders',
    share: 0.2,
    worse: { 'suprascapular-nerve': 0.85, 'long-thoracic-nerve': 0.7, 'axillary-nerve': 0.4 },
    better: { 'suprascapular-nerve': 0.5, 'long-thoracic-nerve': 0.5 },
    diaphragm: 0.1,
  },
  {
    key: 'spinati-and-deltoid',
    share: 0.2,
    worse: { 'suprascapular-nerve': 0.8, 'axillary-nerve': 0.75, 'musculocutaneous-nerve': 0.4 },
    better: { 'suprascapular-nerve': 0.5, 'axillary-nerve': 0.4 },
    diaphragm: 0.1,
  },
  {
    key: 'shoulder-and-interosseous',
    share: 0.2,
    worse: { 'suprascapular-nerve': 0.8, 'long-thoracic-nerve': 0.7 },
    better: { 'anterior-interosseous-nerve': 0.8 },
    diaphragm: 0.1,
  },
  {
    key: 'spinati-and-own-interosseous',
    share: 0.2,
    worse: { 'suprascapular-nerve': 0.85, 'anterior-interosseous-nerve': 0.85 },
    better: { 'suprascapular-nerve': 0.6 },
    diaphragm: 0.1,
  },
  {
    key: 'with-both-diaphragms',
    share: 0.2,
    worse: { 'suprascapular-nerve': 0.7, 'long-thoracic-nerve': 0.6, 'phrenic-nerve': 0.9 },
    better: { 'suprascapular-nerve': 0.4, 'phrenic-nerve': 0.9 },
    diaphragm: 0.85,
  },
];
const bothOfAttacks = 0.2;
const inflamedOnBothPaces = { ...inflamedPaces, chronic: 0.15 } as const;

function patchyOnBothSides(): Hypothesis[] {
  return bodySides.flatMap((side) =>
    patchyOnBoth.map(({ key, share, worse, better, diaphragm }) => {
      const lesion = new LesionBuilder();
      hitPatch(lesion, side, worse);
      hitPatch(lesion, opposite(side), better);
      const frequency = (groupFrequency.patchyBrachialPlexus * bothOfAttacks * share) / bodySides.length;
      return hypothesis(brachial('both'), `patchy-${key}-${side}`, frequency, lesion.build(), {
        faculties: breathless(diaphragm),
        paces: inflamedOnBothPaces,
      });
    }),
  );
}

function hitPatch(lesion: LesionBuilder, side: BodySide, patch: Patch, depth = 1): void {
  for (const [place, motor] of Object.entries(patch) as [PlaceKey, number][])
    lesion.place(side, place, motor * depth, motor * depth * patchySkin);
}

function patchyBrachial(): Hypothesis[] {
  return bodySides.flatMap((side) =>
    patches.flatMap(({ key, share, hits }) =>
      [1, 0.6].map((depth) => {
        const lesion = new LesionBuilder();
        hitPatch(lesion, side, hits, depth);
        return hypothesis(
          brachial(side),
          `patchy-${key}-${depth}`,
          (groupFrequency.patchyBrachialPlexus * share) / 4,
          lesion.build(),
          { faculties: breathless(diaphragmToo), paces: inflamedPaces },
        );
      }),
    ),
  );
}

function breathless(chance: number): FacultyChances {
  return new Map([[facultyKey('breathing', 'midline'), chance]]);
}

/**
 * Roots, plexus and nerves of the leg in one process, as in diabetes: it begins in one thigh, weakens more than it numbs,
 * comes down to the foot or over to the other side, and stays uneven. Share of the damage on the other side. Judged.
 */
const otherSides = [
  { key: 'one-side', other: 0, share: 0.77 },
  { key: 'other-side-slight', other: 0.25, share: 0.13 },
  { key: 'both-uneven', other: 0.55, share: 0.06 },
  { key: 'both-even', other: 0.95, share: 0.04 },
] as const;

const isOfBoth = (key: (typeof otherSides)[number]['key']): boolean => key === 'both-uneven' || key === 'both-even';

/**
 * Damage to the lumbosacral trunk beyond what the sacral plexus adds: the fibres of L4 and L5 run through both and are to be
 * lost once, not twice.
 */
function onlyInTheTrunk(part: (typeof lumbosacralParts)[number], depth: number, sacral: number): number {
  return part === 'lumbosacral-trunk' ? Math.max(0, (depth - sacral) / (1 - Math.min(sacral, 0.99))) : depth;
}

/** It comes on over days to weeks, not at a stroke. Judged. */
const overWeeks = { hyperacute: 0.3, acute: 0.8, subacute: 1.3, chronic: 1 } as const;

const lumbosacralExtents = [extents[0], extents[1], { ...extents[3], motor: 0.75, sensory: 0.2 }] as const;

function lumbosacralPlexus(): Hypothesis[] {
  return bodySides.flatMap((side) =>
    spreads.flatMap((spread) =>
      otherSides.flatMap(({ key, other, share }) =>
        lumbosacralExtents.map((extent) => {
          const lesion = new LesionBuilder();
          lumbosacralParts.forEach((part, place) => {
            const depth = onlyInTheTrunk(part, spread.parts[place] ?? 1, spread.parts[2]);
            lesion.place(side, part, extent.motor * depth, extent.sensory * depth);
            if (other > 0) {
              lesion.place(opposite(side), part, extent.motor * depth * other, extent.sensory * depth * other);
            }
          });
          return hypothesis(
            lumbosacral(isOfBoth(key) ? 'both' : side),
            `${spread.key}-${extent.key}-${key}${isOfBoth(key) ? `-${side}` : ''}`,
            (groupFrequency.lumbosacralPlexus * spread.share * share) / (2 * lumbosacralExtents.length),
            lesion.build(),
            { paces: overWeeks },
          );
        }),
      ),
    ),
  );
}

/** Lesions that take more of a plexus than one of its named parts. */
export function plexusHypotheses(): Hypothesis[] {
  return [
    ...wholeBrachial(),
    ...bothBrachialPlexuses(),
    ...upperRootsInTheNeck(),
    ...patchyBrachial(),
    ...patchyOnBothSides(),
    ...lumbosacralPlexus(),
  ];
}
