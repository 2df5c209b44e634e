import type { Item } from '../../client/generated/api-types.ts';
import type { CatalogueIndex, PlaceKind } from '../catalogue.ts';
import type { CellAddress, CellSide } from '../draft/draft.ts';
import type { Group } from '../recording/parts.ts';

export interface PracticeRow {
  readonly section: string;
  readonly item: Item;
  readonly place?: { readonly kind: PlaceKind; readonly key: string };
}

/** The rows of a group: each item by itself, sensation at the places where a routine examination tests it. */
export function rowsOf({ section, items }: Group, index: CatalogueIndex): readonly PracticeRow[] {
  return items.flatMap((item): readonly PracticeRow[] => {
    if (section !== 'sensation') return item.siteRequired === true ? [] : [{ section, item }];
    return index.catalogue.routine.flatMap((step) =>
      step.item === item.id && step.landmark !== undefined
        ? [{ section, item, place: { kind: 'site', key: step.landmark } }]
        : [],
    );
  });
}

/** The cells of a row; one for each side that it has. */
export function cellsOfRow({ section, item, place }: PracticeRow): readonly CellAddress[] {
  const sides: readonly CellSide[] = item.sides === 'midline' ? ['midline'] : ['right', 'left'];
  return sides.map((side) => ({ section, item: item.key, side, ...(place && { place }) }));
}

/** Where an item that needs a place can be looked at, as the catalogue has it. */
export function placesOf(section: string, item: Item, index: CatalogueIndex) {
  const { dermatomes, landmarks, territories } = index.catalogue.places;
  if (section === 'sensation') {
    return [
      { label: 'Places', kind: 'site', rows: landmarks },
      { label: 'Dermatomes', kind: 'dermatome', rows: dermatomes },
      { label: 'Territories of nerves', kind: 'territory', rows: territories },
    ] as const;
  }
  const rows = (item.sites ?? []).map((key) => ({ key, label: index.placeLabel('site', key) }));
  return [{ label: 'Places', kind: 'site', rows }] as const;
}
