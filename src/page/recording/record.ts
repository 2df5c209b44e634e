/** What taps and keys do to a cell, or to both sides of a row at once. */
import { signal } from '@preact/signals';
import type { Item } from '../../client/generated/api-types.ts';
import { type CatalogueIndex, fullValue, normalValue, valuesOf } from '../catalogue.ts';
import { type Cell, type CellAddress, cellKey, type NotTestedReason } from '../draft/draft.ts';
import { draft, setCells } from '../draft/draft-store.ts';
import { cellName, reasonWords } from './cell-state.ts';

/** The cells whose values are open to choose from, by `nameOfCells`; undefined when none are. */
export const openCells = signal<string | undefined>(undefined);

/** One name for the cells that a control speaks for. */
export function nameOfCells(addresses: readonly CellAddress[]): string {
  return addresses.map(cellKey).join(';');
}

export interface Target {
  readonly item: Item;
  readonly addresses: readonly CellAddress[];
  readonly index: CatalogueIndex;
}

export function cellsOf({ addresses }: Target): readonly (Cell | undefined)[] {
  return addresses.map((address) => draft.peek().cells[cellKey(address)]);
}

function isRecorded(cell: Cell | undefined): boolean {
  return cell?.value !== undefined || cell?.notTested !== undefined;
}

/** The first tap records normal and opens the values; a tap on what is recorded opens or closes them. */
export function tap(target: Target): void {
  const name = nameOfCells(target.addresses);
  if (cellsOf(target).some(isRecorded)) {
    openCells.value = openCells.peek() === name ? undefined : name;
    return;
  }
  recordNormal(target);
  openCells.value = name;
}

/** Records normal where nothing is recorded yet. */
export function recordNormal(target: Target): void {
  const value = normalValue(target.item);
  write(target, fullValue(target.item, value), (cell) => (isRecorded(cell) ? cell : { ...cell, value }));
}

export function recordValue(target: Target, value: string | number): void {
  write(target, fullValue(target.item, value), ({ notTested: _notTested, ...cell }) => ({ ...cell, value }));
}

export function recordNotTested(target: Target, reason: NotTestedReason): void {
  write(target, `not tested: ${reasonWords[reason]}`, ({ value: _value, reinforced: _reinforced, ...cell }) => ({
    ...cell,
    notTested: reason,
  }));
}

/** Records a whole cell in one step: what a typed line says of it. */
export function recordCell(target: Target, cell: Cell): void {
  const { value, notTested } = cell;
  const what =
    notTested === undefined
      ? value === undefined
        ? 'note'
        : fullValue(target.item, value)
      : `not tested: ${reasonWords[notTested]}`;
  write(target, what, ({ note }) => ({ ...(note !== undefined && { note }), ...cell }));
}

export function recordNote(target: Target, note: string): void {
  write(target, 'note', ({ note: _note, ...cell }) => (note === '' ? cell : { ...cell, note }));
}

export function recordReinforced(target: Target, reinforced: boolean): void {
  write(target, reinforced ? 'with reinforcement' : 'without reinforcement', ({ reinforced: _before, ...cell }) =>
    reinforced ? { ...cell, reinforced } : cell,
  );
}

export function clear(target: Target): void {
  setCells(
    `${cellName(target.item, target.addresses, target.index)}: cleared`,
    target.addresses.map((address) => [address, undefined]),
  );
}

/** Gives the other side what this one has. */
export function copyToOtherSide(target: Target): void {
  const [address] = target.addresses;
  const cell = cellsOf(target)[0];
  if (address === undefined || cell === undefined || address.side === 'midline') return;
  const other: CellAddress = { ...address, side: address.side === 'left' ? 'right' : 'left' };
  setCells(`${cellName(target.item, [other], target.index)}: as on the ${address.side}`, [[other, cell]]);
}

function write(target: Target, what: string, edit: (cell: Cell) => Cell): void {
  const name = cellName(target.item, target.addresses, target.index);
  setCells(
    `${name}: ${what}`,
    target.addresses.map((address) => {
      const cell = edit(draft.peek().cells[cellKey(address)] ?? {});
      return [address, Object.keys(cell).length === 0 ? undefined : cell] as const;
    }),
  );
}

const reasons = Object.keys(reasonWords) as readonly NotTestedReason[];

/**
 * What a key typed on a cell records: a digit or sign a grade, a letter the next value whose name begins with it, `n` normal,
 * `x` not tested (again: the next reason), `=` the same on the other side, Delete nothing.
 * @returns whether the key meant anything here
 */
export function typeOn(target: Target, key: string): boolean {
  const current = cellsOf(target)[0];
  if (key === 'Delete' || key === 'Backspace') clear(target);
  else if (key === '=') copyToOtherSide(target);
  else if (key === 'x') recordNotTested(target, reasonAfter(current?.notTested));
  else {
    const value = typedValue(target.item, current?.value, key);
    if (value === undefined) return false;
    recordValue(target, value);
  }
  return true;
}

function reasonAfter(reason: NotTestedReason | undefined): NotTestedReason {
  const at = reason === undefined ? -1 : reasons.indexOf(reason);
  return (reason === undefined ? undefined : reasons[(at + 1) % reasons.length]) ?? 'not-done';
}

export function typedValue(item: Item, current: Cell['value'], key: string): string | number | undefined {
  const values = valuesOf(item);
  if (values === null) return /^\d$/.test(key) ? Number(key) : key === 'n' ? 0 : undefined;
  const keys = values.map((value) => value.key);
  const whole = String(current ?? '').replace(/[+-]$/, '');
  const typed = key === '+' || key === '-' ? `${whole}${key}` : key;
  if (keys.includes(typed)) return typed;
  if (!/^[a-z]$/.test(key)) return undefined;
  const beginning = values.filter(({ label }) => label.toLowerCase().startsWith(key)).map((value) => value.key);
  if (beginning.length === 0) {
    if (key === 'n') return normalValue(item);
    return key === 'y' && keys.includes('present') ? 'present' : undefined;
  }
  return beginning[(beginning.indexOf(String(current)) + 1) % beginning.length];
}
