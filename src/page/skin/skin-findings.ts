import type { Item } from '../../client/generated/api-types.ts';
import { type CatalogueIndex, fullValue, isNormalValue, valuesOf } from '../catalogue.ts';
import { addressOf, type Draft, type Side } from '../draft/draft.ts';
import type { Place } from './tap-meaning.ts';

/** The section of the record that is drawn on skin. */
export const skinSection = 'sensation';

/** One recorded value at one place of the skin. */
export interface SkinFinding {
  readonly item: Item;
  readonly place: Place;
  readonly side: Side;
  /** Key of the value. */
  readonly value: string;
}

/** What a draft says of the skin, in the order of recording; what was not tested is left out. */
export function skinFindings({ cells }: Draft, index: CatalogueIndex): readonly SkinFinding[] {
  return Object.entries(cells).flatMap(([key, { value }]) => {
    const { section, item: itemKey, place, side } = addressOf(key);
    if (section !== skinSection || place === undefined || side === 'midline' || typeof value !== 'string') return [];
    const item = index.item(section, itemKey);
    return item === undefined ? [] : [{ item, place, side, value }];
  });
}

export function isAbnormal({ item, value }: SkinFinding): boolean {
  return !isNormalValue(item, value);
}

/** "Pinprick reduced: L5 dermatome, left". */
export function findingWords({ item, place, side, value }: SkinFinding, index: CatalogueIndex): string {
  return `${item.label} ${valueWords(item, value)}: ${index.placeLabel(place.kind, place.key)}, ${side}`;
}

export function valueWords(item: Item, value: string): string {
  return fullValue(item, value).toLowerCase();
}

/** The name of a patch as a control: "L5 dermatome, left: pinprick reduced". */
export function patchName(
  place: Place,
  side: Side,
  item: Item,
  value: string | undefined,
  index: CatalogueIndex,
): string {
  const where = index.placeLabel(place.kind, place.key);
  const words = place.kind === 'levelBelow' ? `Everything ${where}` : where;
  const what = value === undefined ? 'not recorded' : valueWords(item, value);
  return `${words}, ${side}: ${item.label.toLowerCase()} ${what}`;
}

/** Kinds of filling, told apart without colour. */
export const patterns = ['hatched', 'cross-hatched', 'dotted', 'waved', 'striped', 'checked'] as const;
export type Pattern = (typeof patterns)[number] | 'plain';

/** The filling of a value: by its place among the values of the item that are not normal; those are plain. */
export function patternOf(item: Item, value: string): Pattern {
  if (isNormalValue(item, value)) return 'plain';
  const abnormal = (valuesOf(item) ?? []).filter(({ key }) => !isNormalValue(item, key));
  const rank = abnormal.findIndex(({ key }) => key === value);
  return patterns[Math.max(0, rank) % patterns.length] ?? 'hatched';
}
