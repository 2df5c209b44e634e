/** What can be examined, as the service publishes it; the page has no list of its own. */
import { signal } from '@preact/signals';
import type { Catalogue, Item, Keyed } from '../client/generated/api-types.ts';

export type Section = Catalogue['sections'][number];
export type PlaceKind = 'site' | 'dermatome' | 'territory' | 'levelBelow';

/** Look-ups over one catalogue. */
export interface CatalogueIndex {
  readonly catalogue: Catalogue;
  readonly section: (key: string) => Section | undefined;
  /** @param section key of the section, such as `power` */
  readonly item: (section: string, key: string) => Item | undefined;
  /** By the id that answers carry, such as `power/ankle-dorsiflexion`, with the key of its section. */
  readonly itemById: (id: string) => { readonly section: string; readonly item: Item } | undefined;
  /** A place in words: landmark or body part, dermatome, territory, or "below T10". */
  readonly placeLabel: (kind: PlaceKind, key: string) => string;
  /** Large region of a place or body part; undefined where the catalogue does not say. */
  readonly regionOf: (kind: PlaceKind, key: string) => string | undefined;
  readonly isRoutine: (id: string) => boolean;
}

/** Undefined until it has come. */
export const catalogueIndex = signal<CatalogueIndex | undefined>(undefined);

export function indexCatalogue(catalogue: Catalogue): CatalogueIndex {
  const sections = new Map(catalogue.sections.map((section) => [section.section, section]));
  const byId = new Map(
    catalogue.sections.flatMap(({ section, items }) => items.map((item) => [item.id, { section, item }] as const)),
  );
  const items = new Map([...byId.values()].map((row) => [`${row.section}/${row.item.key}`, row.item]));
  const { dermatomes, landmarks, territories, bodyParts } = catalogue.places;
  const byKey = <Row extends Keyed>(rows: readonly Row[]) => new Map(rows.map((row) => [row.key, row]));
  // A body part and a landmark of one key are one place.
  const sites = new Map([...byKey(bodyParts), ...byKey(landmarks)]);
  const rows = { site: sites, dermatome: byKey(dermatomes), territory: byKey(territories) };
  const routine = new Set(catalogue.routine.map(({ item }) => item));
  return {
    catalogue,
    section: (key) => sections.get(key),
    item: (section, key) => items.get(`${section}/${key}`),
    itemById: (id) => byId.get(id),
    placeLabel: (kind, key) => (kind === 'levelBelow' ? `below ${key}` : (rows[kind].get(key)?.label ?? key)),
    regionOf: (kind, key) => (kind === 'levelBelow' ? undefined : rows[kind].get(key)?.region),
    isRoutine: (id) => routine.has(id),
  };
}

/** The values of an item that has a list of them; null for a count. */
export function valuesOf({ values }: Item): readonly Keyed[] | null {
  return Array.isArray(values) ? values : null;
}

/** The value that one tap records; a count of beats is normal at none. */
export function normalValue(item: Item): string | number {
  return valuesOf(item) === null ? 0 : (item.normal[0] ?? '');
}

export function isNormalValue(item: Item, value: string | number): boolean {
  return valuesOf(item) === null ? value === 0 : item.normal.includes(String(value));
}

/** A value as it stands in a cell: the grade itself where it is a number, the word otherwise. */
export function shortValue(item: Item, value: string | number): string {
  if (typeof value === 'number') return value === 1 ? '1 beat' : `${value} beats`;
  if (/^\d/.test(value)) return value;
  const label = valuesOf(item)?.find(({ key }) => key === value)?.label ?? value;
  return label.split(/,| in proportion| with /)[0] ?? label;
}

/** A value in full: "4: Active movement against gravity and moderate resistance". */
export function fullValue(item: Item, value: string | number): string {
  if (typeof value === 'number') return shortValue(item, value);
  const label = valuesOf(item)?.find(({ key }) => key === value)?.label ?? value;
  return /^\d/.test(value) ? `${value}: ${label}` : label;
}
