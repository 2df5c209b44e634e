import type { Item } from '../../client/generated/api-types.ts';
import type { CatalogueIndex } from '../catalogue.ts';
import { type CellAddress, cellKey, type Side } from '../draft/draft.ts';
import { draft, setCells } from '../draft/draft-store.ts';
import { cellName } from '../recording/cell-state.ts';
import { cellsOf, clear, recordValue, type Target } from '../recording/record.ts';
import { bothSides, lastTap } from './skin-choice.ts';
import { skinSection, valueWords } from './skin-findings.ts';
import type { Place } from './tap-meaning.ts';

const sides: readonly Side[] = ['right', 'left'];

function addressesOf(item: Item, place: Place, side: Side): readonly CellAddress[] {
  const chosen = bothSides.peek() ? sides : [side];
  return chosen.map((one) => ({ section: skinSection, item: item.key, place, side: one }));
}

export function targetOn(item: Item, place: Place, side: Side, index: CatalogueIndex): Target {
  return { item, addresses: addressesOf(item, place, side), index };
}

/**
 * Records a value at a place, or takes it back where it is recorded already.
 * @param others what else lies there, to be offered instead
 */
export function tapPlace(target: Target, value: string, side: Side, others: readonly Place[]): void {
  const place = target.addresses[0]?.place;
  if (place === undefined) return;
  if (cellsOf(target).every((cell) => cell?.value === value)) {
    clear(target);
    lastTap.value = undefined;
    return;
  }
  recordValue(target, value);
  lastTap.value = others.length === 0 ? undefined : { side, taken: place, others };
}

/** Moves what the last tap recorded to another place that lies under the same point, as one change. */
export function takeInstead(item: Item, place: Place, value: string, index: CatalogueIndex): void {
  const tap = lastTap.peek();
  if (tap === undefined) return;
  const from = addressesOf(item, tap.taken, tap.side);
  const to = addressesOf(item, place, tap.side);
  const { cells } = draft.peek();
  setCells(`${cellName(item, to, index)}: ${valueWords(item, value)}`, [
    ...from.map((address) => [address, undefined] as const),
    ...to.map((address) => [address, { ...cells[cellKey(address)], value }] as const),
  ]);
  const others = [tap.taken, ...tap.others.filter(({ kind, key }) => kind !== place.kind || key !== place.key)];
  lastTap.value = { side: tap.side, taken: place, others };
}
