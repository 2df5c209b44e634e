import { dermatomeKeys } from '../anatomy/skin.ts';
import type { SkinPlaceKind } from '../anatomy/skin-places.ts';
import { dermatomeRegions } from './dermatome-regions.ts';
import { extentRegions } from './extent-regions.ts';
import { landmarkSpots } from './landmark-spots.ts';
import { middleOf } from './middle.ts';
import { pathData } from './path-data.ts';
import { regionFinder } from './region-finder.ts';
import { cropped, labelled, masked, type SeenSpots } from './seen-spots.ts';
import type { Region, Spot } from './surface.ts';
import { territoryRegions } from './territory-regions.ts';
import { type LabelGrid, traceRings } from './trace.ts';
import type { View, ViewKey } from './views.ts';

/** A patch of skin, or a spot to tap, on the half that is drawn; the other side has it mirrored. */
export interface PicturePatch {
  readonly kind: SkinPlaceKind;
  readonly key: string;
  /** A point well inside, for a sign or the focus. */
  readonly at: readonly [x: number, y: number];
  /** SVG path data in whole units; absent for a spot. */
  readonly path?: string;
}

/** How far a border may be drawn beside where it belongs, in units. */
export const tolerance = 0.6;

const dermatomeFinder = regionFinder(dermatomeRegions);
/** Label of skin without a dermatome: the face. */
const bare = dermatomeKeys.length + 1;

/** Labels of a view: 1 for the first dermatome and so on. */
export function dermatomeGrid(seen: SeenSpots): LabelGrid {
  return labelled(seen, (spot) => {
    const key = dermatomeFinder.first(spot)?.key ?? null;
    return key === null ? bare : dermatomeKeys.indexOf(key) + 1;
  });
}

/** Every patch of a view: dermatomes, large extents, nerve territories, then spots. */
export function patchesOf(view: View, seen: SeenSpots, dermatomes: LabelGrid): readonly PicturePatch[] {
  const half = view.width / 2;
  const patches = (kind: SkinPlaceKind, rows: Readonly<Record<string, readonly Region[]>>) =>
    Object.entries(rows).flatMap(([key, regions]) => patchOf(kind, key, masked(seen, regions), 1, half));
  const extents = Object.fromEntries(Object.entries(extentRegions).map(([key, { regions }]) => [key, regions]));
  return [
    ...dermatomeKeys.flatMap((key, index) =>
      patchOf('dermatome', key, cropped(dermatomes, index + 1), index + 1, half),
    ),
    ...patches('landmark', extents),
    ...patches('territory', territoryRegions),
    ...spotsOf(view, half),
  ];
}

function patchOf(
  kind: SkinPlaceKind,
  key: string,
  grid: LabelGrid | undefined,
  label: number,
  half: number,
): PicturePatch[] {
  const at = grid && middleOf(grid, label);
  if (grid === undefined || at === undefined) return [];
  const rings = traceRings(grid, (other) => other === label, tolerance);
  return [{ kind, key, at: [Math.round(at[0] + half), Math.round(at[1])], path: pathData(rings, half) }];
}

function spotsOf(view: View, half: number): readonly PicturePatch[] {
  return Object.entries(landmarkSpots).flatMap(([key, { spots }]) =>
    spots.flatMap((spot) => {
      const point = isShown(view.key, spot) ? view.pointOf(spot) : undefined;
      if (point === undefined) return [];
      return [{ kind: 'landmark' as const, key, at: [Math.round(point.x + half), Math.round(point.y)] as const }];
    }),
  );
}

/** Above the first y on the silhouette the picture of the face shows spots larger, below the second that of the foot. */
const [chinY, ankleY] = [130, 925];
/** Beyond this place on the arm the pictures of the hand show them too. */
const wristAlong = 0.95;

/** Spots of face, hand and foot crowd on the whole body and have pictures of their own. */
function isShown(view: ViewKey, { part, along }: Spot): boolean {
  switch (view) {
    case 'face':
      return along < chinY + 20;
    case 'front':
      return part === 'arm' || (part === 'axis' && along > chinY && along < ankleY);
    case 'back':
      return part === 'arm' || part === 'axis';
    default:
      return part === 'arm' ? along > wristAlong : part !== 'axis' || along > ankleY;
  }
}
