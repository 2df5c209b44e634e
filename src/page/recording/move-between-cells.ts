import type { CatalogueIndex } from '../catalogue.ts';
import { addressOf } from '../draft/draft.ts';
import { openCells, type Target, tap, typeOn } from './record.ts';

/** In the order in which they stand in a row. */
const columns = ['row', 'right', 'left', 'midline'];

/**
 * Keys on the cells of a group: arrows move, Home and End go to the first and last row, and what else means something there
 * records. Only one cell of a group is reached by Tab.
 */
export function handleCellKey(event: KeyboardEvent, index: CatalogueIndex): void {
  const cell = event.target as HTMLElement;
  const group = event.currentTarget as HTMLElement;
  if (cell.dataset.cells === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
  const next = neighbour(cell, group, event.key);
  if (next !== undefined) {
    focusCell(next, group);
  } else {
    const target = targetOf(cell.dataset.cells, index);
    if (target === undefined) return;
    if (event.key === 'Escape') openCells.value = undefined;
    else if (event.key === 'Enter' || event.key === ' ') tap(target);
    else if (!typeOn(target, event.key.length === 1 ? event.key.toLowerCase() : event.key)) return;
  }
  event.preventDefault();
}

/** The cells that a button stands for, from its `data-cells`. */
export function targetOf(name: string, index: CatalogueIndex): Target | undefined {
  const addresses = name.split(';').map(addressOf);
  const [first] = addresses;
  const item = first && index.item(first.section, first.item);
  return item && { item, addresses, index };
}

/** Makes a cell the one of its group that Tab reaches, and goes there. */
export function focusCell(cell: HTMLElement, group: HTMLElement): void {
  letTabReach(cell, group);
  cell.focus();
}

export function letTabReach(cell: HTMLElement, group: HTMLElement): void {
  for (const other of cellsIn(group)) other.tabIndex = other === cell ? 0 : -1;
}

export function cellsIn(group: HTMLElement): readonly HTMLElement[] {
  return [...group.querySelectorAll<HTMLElement>('[data-cells]')];
}

export function neighbour(cell: HTMLElement, group: HTMLElement, key: string): HTMLElement | undefined {
  const cells = cellsIn(group);
  const { row, column = 'row' } = cell.dataset;
  const rows = [...new Set(cells.map((one) => one.dataset.row))];
  const at = rows.indexOf(row);
  const inRow = (name: string | undefined) => cells.filter((one) => one.dataset.row === name);
  const sameColumn = (name: string | undefined): HTMLElement | undefined => {
    const own = inRow(name);
    return own.find((one) => one.dataset.column === column) ?? (column === 'row' ? own[0] : (own.at(1) ?? own[0]));
  };
  const own = inRow(row).sort(
    (a, b) => columns.indexOf(a.dataset.column ?? '') - columns.indexOf(b.dataset.column ?? ''),
  );
  switch (key) {
    case 'ArrowDown':
      return sameColumn(rows[at + 1]);
    case 'ArrowUp':
      return at > 0 ? sameColumn(rows[at - 1]) : undefined;
    case 'ArrowRight':
      return own[own.indexOf(cell) + 1];
    case 'ArrowLeft':
      return own[own.indexOf(cell) - 1];
    case 'Home':
      return sameColumn(rows[0]);
    case 'End':
      return sameColumn(rows.at(-1));
    default:
      return undefined;
  }
}
