import { computed, type ReadonlySignal } from '@preact/signals';
import type { Item } from '../../client/generated/api-types.ts';
import { type CatalogueIndex, fullValue, isNormalValue, shortValue } from '../catalogue.ts';
import {
  type Cell,
  type CellAddress,
  type CellSide,
  cellKey,
  type Draft,
  type NotTestedReason,
} from '../draft/draft.ts';
import { draft } from '../draft/draft-store.ts';

export type CellKind = 'untested' | 'stated-normal' | 'normal' | 'abnormal' | 'not-tested' | 'differs';

/** A cell as it is shown. */
export interface CellState {
  readonly kind: CellKind;
  /** What stands in it; empty for nothing. */
  readonly short: string;
  /** The same for a reader who does not see it. */
  readonly full: string;
  readonly hasNote: boolean;
}

export const reasonWords: Readonly<Record<NotTestedReason, string>> = {
  pain: 'pain',
  declined: 'declined',
  unable: 'unable',
  'not-done': 'not done',
  'limb-absent': 'limb absent',
  other: 'other reason',
};

export const sideWords: Readonly<Record<CellSide, string>> = {
  left: 'left',
  right: 'right',
  midline: '',
};

const untested: CellState = { kind: 'untested', short: '', full: 'not recorded', hasNote: false };

export function stateOf(item: Item, cell: Cell | undefined, isStatedNormal: boolean): CellState {
  const hasNote = cell?.note !== undefined && cell.note.trim() !== '';
  if (cell?.notTested !== undefined) {
    const reason = reasonWords[cell.notTested];
    // What is seen comes first, so that who speaks to the page finds it by that (WCAG 2.2, 2.5.3).
    return { kind: 'not-tested', short: reason, full: `${reason}, not tested`, hasNote };
  }
  if (cell?.value !== undefined) {
    const isNormal = isNormalValue(item, cell.value);
    return {
      kind: isNormal ? 'normal' : 'abnormal',
      short: shortValue(item, cell.value),
      full: `${fullValue(item, cell.value)}${isNormal ? ', normal' : ', abnormal'}${hasNote ? ', with a note' : ''}`,
      hasNote,
    };
  }
  if (isStatedNormal) return { kind: 'stated-normal', short: 'rest normal', full: 'rest was normal', hasNote };
  return { ...untested, hasNote };
}

/** Whether the examiner said that the rest was normal where this item lies. */
export function isStatedNormal(
  { otherwiseNormal }: Draft,
  { section, side, place }: CellAddress,
  item: Item,
  index: CatalogueIndex,
): boolean {
  const region = (place && index.regionOf(place.kind, place.key)) ?? item.region;
  return otherwiseNormal.some(
    (one) =>
      one.section === section &&
      (one.region === undefined || one.region === region) &&
      (one.side === undefined || one.side === 'both' || one.side === side),
  );
}

/** Follows one cell, or several as one: a row whose sides differ says so. */
export function watchCells(
  addresses: readonly CellAddress[],
  item: Item,
  index: CatalogueIndex,
): ReadonlySignal<CellState> {
  return computed(() => {
    const states = addresses.map((address) =>
      stateOf(item, draft.value.cells[cellKey(address)], isStatedNormal(draft.value, address, item, index)),
    );
    const [first = untested] = states;
    if (states.every(({ kind, short }) => kind === first.kind && short === first.short)) return first;
    const full = states.map((state, at) => `${addresses[at]?.side}: ${state.full}`).join('; ');
    return { kind: 'differs', short: '', full, hasNote: states.some(({ hasNote }) => hasNote) };
  });
}

/** "Ankle dorsiflexion, left", "Pinprick, L5 dermatome, right". */
export function cellName(item: Item, addresses: readonly CellAddress[], index: CatalogueIndex): string {
  const [first] = addresses;
  const place = first?.place && index.placeLabel(first.place.kind, first.place.key);
  const side = addresses.length > 1 ? 'both sides' : first && sideWords[first.side];
  return [item.label, place, side].filter(Boolean).join(', ');
}
