import { clonusAbnormalFromBeats, scales } from '../scales.ts';
import { coordination } from './coordination.ts';
import { eyeSigns } from './eye-signs.ts';
import { gait } from './gait.ts';
import { higherFunction } from './higher-function.ts';
import { inspection } from './inspection.ts';
import { involuntaryMovements } from './involuntary-movements.ts';
import { type CodeLink, type Item, itemId, type SectionKey } from './item.ts';
import { lowerCranialSigns } from './lower-cranial-signs.ts';
import { plantars } from './plantars.ts';
import { power } from './power.ts';
import { reflexes } from './reflexes.ts';
import { sectionOf, sections } from './sections.ts';
import { sensation } from './sensation.ts';
import { specialTests } from './special-tests.ts';
import { autonomic, sphincters } from './sphincters-and-autonomic.ts';
import { clonus, tone } from './tone-and-clonus.ts';

export { historyRows } from './history.ts';
export { resultRows } from './results.ts';

/** Everything that can be examined: the section tables put together, and look-ups by key. */
const bySection: Readonly<Record<SectionKey, readonly Item[]>> = {
  higherFunction,
  cranialNerves: [...eyeSigns, ...lowerCranialSigns],
  inspection,
  involuntaryMovements,
  tone,
  clonus,
  power,
  reflexes,
  plantars,
  sensation,
  coordination,
  gait,
  sphincters,
  autonomic,
  specialTests,
};

/** Every item, in the order in which an examination is presented. */
export const items: readonly Item[] = sections.flatMap(({ key }) => bySection[key]);

/** By `itemId`: `power/ankle-dorsiflexion`. */
export const itemById: ReadonlyMap<string, Item> = new Map(items.map((item) => [itemId(item), item]));

export function itemsOf(section: SectionKey): readonly Item[] {
  return bySection[section];
}

/** The item of that section and key; undefined for a key that the section does not know. The key may be any text. */
export function findItem(section: SectionKey, key: string): Item | undefined {
  return itemById.get(itemId({ section, key }));
}

/** The item that an entry of a section names; undefined where it names none that the section knows. */
export function itemNamed(section: SectionKey, entry: Readonly<Record<string, unknown>>): Item | undefined {
  const { itemProperty } = sectionOf(section);
  const key = itemProperty === null ? itemsOf(section)[0]?.key : entry[itemProperty];
  return typeof key === 'string' ? findItem(section, key) : undefined;
}

/** Keys of the values of an item that are not a deficit; empty for clonus, which is counted. */
export function normalValues(item: Item): readonly string[] {
  return item.scale === 'beats' ? [] : scales[item.scale].normal;
}

/**
 * The HPO term for one value of an item, or undefined where no term speaks of it: a normal value, an equivocal test, or
 * an abnormality that the ontology does not name. `relation` says how closely the term fits.
 */
export function hpoOf(item: Item, value: string | number): CodeLink | undefined {
  const byValue = item.hpoByValue?.[String(value)];
  if (byValue !== undefined) return byValue;
  if (typeof value === 'number' && value < clonusAbnormalFromBeats) return undefined;
  if (value === 'equivocal' || normalValues(item).includes(String(value))) return undefined;
  return item.hpo;
}
