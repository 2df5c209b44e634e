import { isInside, type Part, type Region, type Spot } from './surface.ts';

/** Regions sorted by part and with their extent worked out, since a picture asks for each of many thousand points. */
export interface RegionFinder<R extends Region> {
  /** The first region, in the order given, that holds a place. */
  first(spot: Spot): R | undefined;
  /** Whether any of them holds it. */
  holds(spot: Spot): boolean;
}

export function regionFinder<R extends Region>(regions: readonly R[]): RegionFinder<R> {
  const byPart = new Map<Part, Bounded<R>[]>();
  for (const region of regions) {
    const list = byPart.get(region.part) ?? [];
    list.push(bounded(region));
    byPart.set(region.part, list);
  }
  const first = ({ part, around, along }: Spot) =>
    byPart
      .get(part)
      ?.find(
        ({ low, high, region }) =>
          along >= low.along &&
          along <= high.along &&
          around >= low.around &&
          around <= high.around &&
          isInside(region.corners, around, along),
      )?.region;
  return { first, holds: (spot) => first(spot) !== undefined };
}

interface Bounded<R> {
  readonly region: R;
  readonly low: { readonly around: number; readonly along: number };
  readonly high: { readonly around: number; readonly along: number };
}

function bounded<R extends Region>(region: R): Bounded<R> {
  const around = region.corners.map(([at]) => at);
  const along = region.corners.map(([, at]) => at);
  return {
    region,
    low: { around: Math.min(...around), along: Math.min(...along) },
    high: { around: Math.max(...around), along: Math.max(...along) },
  };
}
