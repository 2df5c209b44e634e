import type { Item, SectionKey } from './item.ts';

type Common = Pick<Item, 'scale' | 'sides' | 'region' | 'source'>;

/** A row as it is written in a section's table: what the section has in common may be left out. */
export type SectionRow = Omit<Item, 'section' | 'key' | keyof Common> & Partial<Common>;

/** Rows of one section, keyed by item key, as catalogue items in the order in which they are written. */
export function sectionTable(
  section: SectionKey,
  common: Common,
  rows: Readonly<Record<string, SectionRow>>,
): readonly Item[] {
  return Object.entries(rows).map(([key, row]) => Object.freeze({ section, key, ...common, ...row }));
}
