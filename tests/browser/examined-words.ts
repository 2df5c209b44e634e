import type { Catalogue, Item } from '../../src/client/generated/api-types.ts';

export type Entry = Readonly<Record<string, unknown>>;

/** One entry of an exam's findings, in what a person would look for on the page. */
export interface Looked {
  readonly section: string;
  readonly item: Item;
  readonly place: { readonly kind: string; readonly key: string; readonly label: string } | undefined;
  readonly sides: readonly ('right' | 'left' | undefined)[];
  /** Key of the value; undefined when it was not tested. */
  readonly value: string | undefined;
  readonly entry: Entry;
}

/** The findings of an exam in its order; scored scales are left out. */
export function lookedAt(exam: Entry, catalogue: Catalogue): readonly Looked[] {
  return Object.entries(exam.findings as Record<string, readonly Entry[]>).flatMap(([key, entries]) =>
    entries.filter((entry) => !('scale' in entry)).map((entry) => look(key, entry, catalogue)),
  );
}

function look(key: string, entry: Entry, catalogue: Catalogue): Looked {
  const section = catalogue.sections.find((one) => one.section === key);
  if (section === undefined) throw new Error(`no section ${key}`);
  const named = section.itemProperty === null ? section.items[0]?.key : entry[section.itemProperty];
  const item = section.items.find((one) => one.key === named);
  if (item === undefined) throw new Error(`no item ${String(named)} in ${key}`);
  const kind = ['site', 'dermatome', 'territory', 'levelBelow'].find(
    (one) => one !== section.itemProperty && entry[one] !== undefined,
  );
  const { bodyParts, landmarks, dermatomes, territories } = catalogue.places;
  const placeKey = kind === undefined ? undefined : String(entry[kind]);
  const label =
    kind === 'levelBelow'
      ? `below ${placeKey}`
      : [...landmarks, ...bodyParts, ...dermatomes, ...territories].find((one) => one.key === placeKey)?.label;
  const stated = entry[item.property];
  const value =
    stated === undefined ? undefined : typeof stated === 'boolean' ? (stated ? 'present' : 'absent') : String(stated);
  return {
    section: key,
    item,
    place: kind === undefined || placeKey === undefined ? undefined : { kind, key: placeKey, label: label ?? placeKey },
    sides: entry.side === 'both' ? ['right', 'left'] : [entry.side as 'right' | 'left' | undefined],
    value,
    entry,
  };
}

/** The line that an examiner would type for it. */
export function lineFor({ item, place, sides, value, entry }: Looked): string {
  const words = `${item.label} ${place?.label ?? ''}`.replaceAll(/[^A-Za-z0-9 ]/g, ' ');
  const side = sides.length === 2 ? 'both' : (sides[0] ?? '');
  const found = value === undefined ? `nt ${String(entry.notTested)}` : value;
  const note = entry.note === undefined ? '' : `; ${String(entry.note)}`;
  return `${words} ${side} ${found}${entry.reinforced === true ? ' reinforced' : ''}${note}`.replaceAll(/ +/g, ' ');
}
