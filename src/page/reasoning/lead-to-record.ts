/** From a finding of an answer, or a proposed item, to its place in the record. */
import type { CatalogueIndex, PlaceKind } from '../catalogue.ts';
import type { CellAddress } from '../draft/draft.ts';
import type { BuiltExam } from '../draft/exam-of-draft.ts';
import { storyDetail } from '../story/story-place.ts';

/** Where a pointer of an answer leads: to a cell of the record, or to a view of the page. */
export type Lead =
  | { readonly kind: 'cell'; readonly addresses: readonly CellAddress[] }
  | { readonly kind: 'view'; readonly view: 'story' | 'examine'; readonly detail?: string };

/** @param pointer JSON Pointer of a finding, a result or a piece of history in the exam that was answered */
export function leadOf(pointer: string, { cellsAt }: Pick<BuiltExam, 'cellsAt'>): Lead {
  const [, top = '', section = '', place = ''] = pointer.split('/');
  const addresses = cellsAt.get(`/${top}/${section}/${place}`);
  if (addresses !== undefined) return { kind: 'cell', addresses };
  const detail = storyDetail(pointer);
  if (detail !== undefined) return { kind: 'view', view: 'story', detail };
  // Scales are recorded with the mental state; what else has no cell is a statement about a whole part.
  return section === 'higherFunction'
    ? { kind: 'view', view: 'examine', detail: 'mind' }
    : { kind: 'view', view: 'examine' };
}

/** The cell of a proposed item; undefined where the catalogue has no such item. */
export function cellOfItem(
  item: string,
  side: 'left' | 'right' | null,
  place: string | undefined,
  index: CatalogueIndex,
): CellAddress | undefined {
  const found = index.itemById(item);
  if (found === undefined) return undefined;
  return {
    section: found.section,
    item: found.item.key,
    side: side ?? 'midline',
    ...(place !== undefined && { place: { kind: placeKindOf(place, index), key: place } }),
  };
}

/** A key that several kinds of place share is a dermatome before a landmark before a territory, as proposals are made. */
function placeKindOf(place: string, { catalogue }: CatalogueIndex): PlaceKind {
  const has = (rows: readonly { readonly key: string }[]): boolean => rows.some(({ key }) => key === place);
  if (has(catalogue.places.dermatomes)) return 'dermatome';
  return has(catalogue.places.landmarks) || has(catalogue.places.bodyParts) ? 'site' : 'territory';
}
