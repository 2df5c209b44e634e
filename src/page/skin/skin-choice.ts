/** What the next tap on the body records; kept while other parts of the examination are looked at. */
import { signal } from '@preact/signals';
import type { Item } from '../../client/generated/api-types.ts';
import { isNormalValue, valuesOf } from '../catalogue.ts';
import type { Side } from '../draft/draft.ts';
import type { Place, TapMeaning } from './tap-meaning.ts';

/** Key of the modality; undefined: the first of the catalogue. */
export const chosenModality = signal<string | undefined>(undefined);
export const chosenMeaning = signal<TapMeaning>('dermatome');
/** Key of the value; undefined: the first that is not normal. */
export const chosenValue = signal<string | undefined>(undefined);
export const bothSides = signal(false);
/** Key of the picture; undefined: the first. */
export const chosenView = signal<string | undefined>(undefined);
export const isEnlarged = signal(false);
/** Whether sensation is shown in a table rather than on the body. */
export const showsTable = signal(false);

export interface LastTap {
  readonly side: Side;
  readonly taken: Place;
  /** What else lies under the point that was tapped. */
  readonly others: readonly Place[];
}
export const lastTap = signal<LastTap | undefined>(undefined);

export function modalityOf(items: readonly Item[]): Item | undefined {
  return items.find(({ key }) => key === chosenModality.value) ?? items[0];
}

export function valueToRecord(item: Item): string {
  const keys = (valuesOf(item) ?? []).map(({ key }) => key);
  const chosen = chosenValue.value;
  if (chosen !== undefined && keys.includes(chosen)) return chosen;
  return keys.find((key) => !isNormalValue(item, key)) ?? keys[0] ?? '';
}
