import { placeKeys } from '../../anatomy/places.ts';
import { type Segment, segments } from '../../anatomy/segments.ts';
import { type BodySide, bodySides } from '../../kernel/side.ts';
import { brainIndex } from '../../localisation/brain-path.ts';
import type { Hypothesis, Site } from '../../localisation/hypothesis.ts';
import { cordIndex, type Damage, intact, placeIndex } from '../../localisation/lesion.ts';
import { allBrainDrawings } from './brain-drawings.ts';
import { cordParts, rootName, segmentName } from './cord-drawings.ts';
import { shownAt } from './nerve-drawings.ts';

/** How much of what a drawing stands for is lost on each side, 0 to 1. */
export type Shares = Map<string, Record<BodySide, number>>;

export function addShare(shares: Shares, name: string, side: BodySide, lost: number): void {
  if (lost <= 0) return;
  const own = shares.get(name) ?? { left: 0, right: 0 };
  own[side] = Math.max(own[side], lost);
  shares.set(name, own);
}

/** Names of the drawings that each cell of an array of a lesion is part of, by the index of the cell. */
type Names = readonly { readonly name: string; readonly side: BodySide }[][];

function named(size: number, rows: readonly (readonly [index: number, name: string | null, side: BodySide])[]): Names {
  const names: { name: string; side: BodySide }[][] = Array.from({ length: size }, () => []);
  for (const [index, name, side] of rows) if (name !== null) names[index]?.push({ name, side });
  return names;
}

const brain = named(
  intact.brain.length,
  allBrainDrawings.flatMap(({ name, holds }) =>
    holds.flatMap((key) => bodySides.map((side) => [brainIndex(side, key), name, side] as const)),
  ),
);
const places = named(
  intact.motorPlace.length,
  placeKeys.flatMap((key) => bodySides.map((side) => [placeIndex(side, key), shownAt(key), side] as const)),
);
const bySegment = (nameOf: (segment: Segment) => string): Names =>
  named(
    intact.anteriorHorn.length,
    segments.flatMap((segment, index) =>
      bodySides.map((side) => [cordIndex(side, index), nameOf(segment), side] as const),
    ),
  );
const roots = bySegment(rootName);
const cordSegments = bySegment(segmentName);
const cordPart = Object.fromEntries(
  Object.entries(cordParts).map(([part, name]) => [part, bySegment(() => name)]),
) as Readonly<Record<keyof typeof cordParts, Names>>;

const tracts = ['corticospinal', 'dorsalColumn', 'spinothalamic'] as const;

/** What the damaged structures of a hypothesis are in the picture. */
export function addDamage(shares: Shares, { site, damage }: Hypothesis): void {
  const addCells = (part: keyof Damage, names: Names): void => {
    if (damage[part] === intact[part]) return;
    damage[part].forEach((lost, index) => {
      if (lost > 0) for (const { name, side } of names[index] ?? []) addShare(shares, name, side, lost);
    });
  };
  addCells('brain', brain);
  addCells('motorPlace', places);
  addCells('sensoryPlace', places);
  for (const part of Object.keys(cordParts) as (keyof typeof cordParts)[]) addCells(part, cordPart[part]);
  if (damage.anteriorHorn !== intact.anteriorHorn) addCells('anteriorHorn', cordSegments);
  else addAlongTracts(shares, site, damage);
  // What a lesion of the cord takes of the entering fibres is not a root outside it.
  if (site.kind === 'cord') return;
  addCells('ventralRoot', roots);
  addCells('dorsalRoot', roots);
}

/** The segments from the first to the last at which tracts fail; all of them where the whole system does. */
function addAlongTracts(shares: Shares, { kind }: Site, damage: Damage): void {
  for (const side of bodySides) {
    const lost = segments.map((_, index) =>
      Math.max(...tracts.map((tract) => damage[tract][cordIndex(side, index)] ?? 0)),
    );
    const most = Math.max(...lost);
    const first = lost.findIndex((share) => share > 0);
    const last = kind === 'motor-neuron-system' ? lost.length - 1 : lost.findLastIndex((share) => share > 0);
    if (most > 0)
      for (const segment of segments.slice(first, last + 1)) addShare(shares, segmentName(segment), side, most);
  }
}
