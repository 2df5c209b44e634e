import { type PlaceKey, pathTo } from '../../src/anatomy/places.ts';
import type { Segment } from '../../src/anatomy/segments.ts';
import type { Supply } from '../../src/anatomy/supply.ts';

/** Share of an item by root, summed over its supplies. */
export function rootTotals(supplies: readonly Supply[]): ReadonlyMap<Segment, number> {
  const totals = new Map<Segment, number>();
  for (const { roots, weight } of supplies) {
    for (const [root, share] of Object.entries(roots) as [Segment, number][]) {
      totals.set(root, (totals.get(root) ?? 0) + weight * share);
    }
  }
  return totals;
}

/** The root with the greatest share; undefined for an item without roots. */
export function greatestRoot(supplies: readonly Supply[]): Segment | undefined {
  return [...rootTotals(supplies)].sort(([, one], [, other]) => other - one)[0]?.[0];
}

/** Share of an item, 0 to 1, that is lost when everything at `place` is cut. */
export function shareCutAt(place: PlaceKey, supplies: readonly Supply[]): number {
  return supplies.reduce((lost, { via, roots, weight }) => {
    const shares = Object.entries(roots) as [Segment, number][];
    if (shares.length === 0) return lost + (via === place ? weight : 0);
    const hit = shares.filter(([root]) => pathTo(via, root).includes(place));
    return lost + weight * hit.reduce((sum, [, share]) => sum + share, 0);
  }, 0);
}
