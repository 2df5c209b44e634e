import type { PlaceKey } from '../../anatomy/places.ts';
import type { BodySide } from '../../kernel/side.ts';

/**
 * How much of a nerve, plexus part or root a focal lesion takes, and how often it is so. Motor and sensory fibres are hit
 * unequally often enough that an examination of one kind alone must not count against the site. Judged.
 */
export const extents = [
  { key: 'severe', motor: 0.95, sensory: 0.9, share: 0.25 },
  { key: 'partial', motor: 0.5, sensory: 0.55, share: 0.3 },
  { key: 'mainly-sensory', motor: 0.06, sensory: 0.6, share: 0.15 },
  { key: 'mainly-motor', motor: 0.6, sensory: 0.08, share: 0.15 },
  { key: 'moderate', motor: 0.75, sensory: 0.75, share: 0.15 },
] as const;

export type Extent = (typeof extents)[number];

/** Those that take motor and sensory fibres alike, the severe and the partial one. */
export const mixedExtents: readonly Extent[] = extents.slice(0, 2);

/** Shares of the same extents where a nerve is squeezed in a narrow passage: its sensory fibres suffer first. Judged. */
const squeezedShare: Readonly<Record<Extent['key'], number>> = {
  severe: 0.23,
  partial: 0.32,
  moderate: 0.12,
  'mainly-sensory': 0.28,
  'mainly-motor': 0.05,
};

/**
 * Shares where a root is struck. It is pressed from one side and seldom lost: of people with a disc or a narrow foramen half or
 * more have full strength or nearly so, and one in ten is weaker than against resistance. Judged.
 */
export const rootShare: Readonly<Record<Extent['key'], number>> = {
  severe: 0.17,
  partial: 0.35,
  moderate: 0.15,
  'mainly-sensory': 0.18,
  'mainly-motor': 0.15,
};

const squeezed: ReadonlySet<PlaceKey> = new Set([
  'median-nerve-wrist',
  'ulnar-nerve-elbow',
  'ulnar-nerve-wrist',
  'tibial-nerve-tarsal-tunnel',
]);

/** How often a lesion at a place is of an extent. */
export function shareOf({ key, share }: Extent, place: PlaceKey): number {
  return squeezed.has(place) ? squeezedShare[key] : share;
}

/** Share of all focal findings that each group of sites stands for, in percent. Judged. */
export const groupFrequency = {
  nerve: 22,
  plexus: 2.4,
  root: 20,
  adjacentRoots: 3,
  manyRoots: 1.4,
  caudaEquina: 1.8,
  wholeBrachialPlexus: 0.35,
  patchyBrachialPlexus: 0.4,
  // Inflammation of the lumbosacral plexus: some 4 in 100,000 a year, against hundreds with one lumbar root.
  lumbosacralPlexus: 1,
} as const;

/** Both sides alike, or one worse than the other: share of the full damage that each side takes. Judged. */
export const sideSpreads = [
  { key: 'even', left: 1, right: 1 },
  { key: 'left-worse', left: 1, right: 0.35 },
  { key: 'right-worse', left: 0.35, right: 1 },
] as const satisfies readonly ({ readonly key: string } & Readonly<Record<BodySide, number>>)[];
