import { useMemo } from 'preact/hooks';
import type { CellAddress } from '../draft/draft.ts';
import { type CellKind, cellName, watchCells } from './cell-state.ts';
import { nameOfCells, openCells, type Target, tap } from './record.ts';

/** A sign beside the colour, so that a state is never told by colour alone. */
const signs: Readonly<Record<CellKind, string>> = {
  untested: '',
  'stated-normal': '○',
  normal: '✓',
  abnormal: '◆',
  'not-tested': '∅',
  differs: '≠',
};

interface CellButtonProps extends Target {
  /** What stands on it besides the value: the name of the row, or nothing. */
  readonly label?: string | undefined;
  /** Whether a name also shows what is recorded; a cell always does. */
  readonly showsValue?: boolean;
  readonly row: string;
  readonly column: 'row' | CellAddress['side'];
}

/** One cell of the record, or the name of a row that stands for both of its sides. */
export function CellButton({ label, showsValue = label === undefined, row, column, ...target }: CellButtonProps) {
  const { item, addresses, index } = target;
  const name = nameOfCells(addresses);
  const state = useMemo(() => watchCells(addresses, item, index), [name, item, index]).value;
  const isOpen = openCells.value === name;
  return (
    <button
      type="button"
      class={`cell ${state.kind}${label === undefined ? '' : ' row-name'}${showsValue ? ' shows-value' : ''}`}
      data-cells={name}
      data-row={row}
      data-column={column}
      aria-expanded={isOpen}
      aria-label={`${cellName(item, addresses, index)}: ${state.full}`}
      onClick={() => tap(target)}
    >
      {label !== undefined && <span class="name">{label}</span>}
      {showsValue && (
        <span class="value">
          <span class="sign" aria-hidden="true">
            {signs[state.kind]}
          </span>{' '}
          {state.kind === 'stated-normal' ? '' : state.short}
          {state.hasNote && <span class="note-sign"> ✎</span>}
        </span>
      )}
    </button>
  );
}
