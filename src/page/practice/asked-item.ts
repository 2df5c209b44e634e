import type { PracticeExamination } from '../../client/generated/api-types.ts';
import type { CatalogueIndex } from '../catalogue.ts';
import { addressOf, type CellAddress, type CellKey } from '../draft/draft.ts';

type AskedItem = PracticeExamination['items'][number];

/** A cell of the record as an item to ask for. */
export function askedItem(cell: CellAddress | CellKey, index: CatalogueIndex): AskedItem {
  const { section, item, side, place } = typeof cell === 'string' ? addressOf(cell) : cell;
  return {
    item: index.item(section, item)?.id ?? `${section}/${item}`,
    ...(side !== 'midline' && { side }),
    ...(place !== undefined && { [place.kind]: place.key }),
  };
}
