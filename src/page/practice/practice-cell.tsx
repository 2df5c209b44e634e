import { type CatalogueIndex, fullValue, isNormalValue, shortValue } from '../catalogue.ts';
import { type CellAddress, cellKey } from '../draft/draft.ts';
import { cellName } from '../recording/cell-state.ts';
import { asking, examine, type Shown, shown } from './practice-case.ts';
import type { PracticeRow } from './practice-rows.ts';

interface PracticeCellProps {
  readonly row: PracticeRow;
  readonly addresses: readonly CellAddress[];
  readonly index: CatalogueIndex;
  /** What stands on it when it is the name of the row. */
  readonly label?: string;
  readonly column: string;
}

interface CellLook {
  readonly kind: 'untested' | 'normal' | 'abnormal' | 'not-tested';
  readonly sign: string;
  readonly short: string;
  readonly full: string;
}

/** One item on one side, or the name of a row that asks for all of it. Once shown, it stays as it is. */
export function PracticeCell({ row, addresses, index, label, column }: PracticeCellProps) {
  const keys = addresses.map(cellKey);
  const isAsking = keys.some((key) => asking.value.has(key));
  const isName = label !== undefined;
  const isDone = keys.every((key) => shown.value.has(key));
  const look = isName ? undefined : lookOf(row, shown.value.get(keys[0] ?? ''));
  const name = cellName(row.item, addresses, index);
  const untested = isDone ? 'examined' : 'examine';
  const state = isAsking ? 'being examined' : (look?.full ?? untested);
  return (
    <button
      type="button"
      class={`cell ${look?.kind ?? 'untested'}${isName ? ' row-name' : ''}`}
      data-cells={keys.join(';')}
      data-row={`${row.section}/${row.item.key}|${row.place?.key ?? ''}`}
      data-column={column}
      aria-label={`${name}: ${state}`}
      aria-disabled={isDone}
      onClick={() => void examine(addresses, index)}
    >
      {isName ? (
        <span class="name">{label}</span>
      ) : (
        <span class="value">
          {isAsking ? '…' : look === undefined ? <span class="ask">examine</span> : `${look.sign} ${look.short}`}
        </span>
      )}
    </button>
  );
}

function lookOf({ item }: PracticeRow, one: Shown | undefined): CellLook | undefined {
  if (one === undefined) return undefined;
  if (!('cell' in one))
    return { kind: 'not-tested', sign: '∅', short: 'not modelled', full: `not modelled: ${one.because}` };
  const { value } = one.cell;
  if (value === undefined) return undefined;
  const isNormal = isNormalValue(item, value);
  return {
    kind: isNormal ? 'normal' : 'abnormal',
    sign: isNormal ? '✓' : '◆',
    short: shortValue(item, value),
    full: `${fullValue(item, value)}${isNormal ? ', normal' : ', abnormal'}`,
  };
}
