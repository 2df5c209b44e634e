import { type Region, regions } from '../../anatomy/body-parts.ts';
import { skinPlace } from '../../anatomy/skin-places.ts';
import { items } from '../../exam/catalogue/catalogue.ts';
import { type Item, type SectionKey, sectionKeys } from '../../exam/catalogue/item.ts';
import { columnName } from '../../localisation/inference/columns.ts';
import type { ProbeTarget } from '../../localisation/observation/probe-models.ts';
import { partOf } from '../../simulation/body-part.ts';
import { everything, routine } from './routine.ts';

/** What is examined in one go: an item at a place, on both sides where it has two. */
export interface Unit {
  readonly item: Item;
  readonly targets: readonly ProbeTarget[];
  readonly parts: readonly string[];
  readonly isRoutine: boolean;
}

/** Everything that can be examined, a unit each, in the order of the catalogue. */
export const units: readonly Unit[] = unitsOf(everything);

function unitsOf(targets: readonly ProbeTarget[]): readonly Unit[] {
  const inRoutine = new Set(routine.map(columnName));
  const ranks = new Map(items.map((item, rank) => [item, rank]));
  const byPlace = new Map<string, ProbeTarget[]>();
  for (const target of targets) {
    const { item, side, place } = target;
    // An item that may be stated with or without a side is stated with it.
    if (item.sides === 'optional' && side === 'midline') continue;
    const name = `${item.section}/${item.key}@${place?.kind}:${place?.key}`;
    const same = byPlace.get(name);
    if (same === undefined) byPlace.set(name, [target]);
    else same.push(target);
  }
  return [...byPlace.values()]
    .flatMap((own) => {
      const [first] = own;
      if (first === undefined) return [];
      const isRoutine = own.some((target) => inRoutine.has(columnName(target)));
      return [{ item: first.item, targets: own, parts: [...new Set(own.map(partOf))], isRoutine }];
    })
    .sort((a, b) => (ranks.get(a.item) ?? 0) - (ranks.get(b.item) ?? 0));
}

/** A section, or what of it lies in one region, of which an examiner may say that the rest was normal. */
export interface Declarable {
  readonly section: SectionKey;
  readonly region?: Region;
  /** What it speaks of. */
  readonly targets: readonly ProbeTarget[];
}

const declaredWhole: readonly SectionKey[] = ['higherFunction', 'cranialNerves', 'coordination', 'sphincters'];
const declaredByRegion: readonly SectionKey[] = ['power', 'reflexes', 'sensation'];
const regionsDeclared: readonly Region[] = regions.filter((region) => region.endsWith('limbs'));

export const declarables: readonly Declarable[] = sectionKeys.flatMap((section): readonly Declarable[] => {
  const own = everything.filter(({ item }) => item.section === section);
  if (declaredWhole.includes(section)) return [{ section, targets: own }];
  if (!declaredByRegion.includes(section)) return [];
  return regionsDeclared.map((region) => ({
    section,
    region,
    targets: own.filter((target) => regionOf(target) === region),
  }));
});

function regionOf({ item, place }: ProbeTarget): Region {
  const isSkin = place?.kind === 'landmark' || place?.kind === 'dermatome' || place?.kind === 'territory';
  return (isSkin ? skinPlace(place.kind as 'landmark', place.key)?.region : undefined) ?? item.region;
}
