import { compareText } from '../kernel/compare-text.ts';
import type { Fault } from '../kernel/errors.ts';
import {
  findHistoryRow,
  type HistoryList,
  type HistoryRow,
  historyListKeys,
  historyRows,
} from './catalogue/history.ts';
import type { HistoryStatement } from './exam.ts';
import { pointerTo } from './faults/pointer.ts';
import type { HistoryEntry } from './request.ts';
import { sidedLabel } from './sided-label.ts';

const ranks: ReadonlyMap<HistoryRow, number> = new Map(historyRows.map((row, rank) => [row, rank]));

/** Entries of one list of the history with their places in it; entries whose form is wrong are left out. */
export type HistoryEntries = (list: HistoryList) => readonly { readonly entry: HistoryEntry; readonly index: number }[];

/** The statements of the history in catalogue order without repeats, and a fault at each of two that contradict. */
export function readHistory(entriesOf: HistoryEntries): {
  readonly history: readonly HistoryStatement[];
  readonly faults: readonly Fault[];
} {
  const statements = historyListKeys.flatMap((list) =>
    entriesOf(list).flatMap(({ entry, index }) => {
      const row = findHistoryRow(list, entry.key);
      if (row === undefined) return [];
      const statement: HistoryStatement = {
        key: row.key,
        label: entry.side === undefined ? row.label : sidedLabel(row.label, entry.side),
        kind: row.kind,
        present: entry.present,
        ...(entry.relation === undefined ? {} : { relation: entry.relation }),
        ...(entry.side === undefined ? {} : { side: entry.side }),
        pointer: pointerTo('history', list, index),
      };
      return [{ statement, rank: ranks.get(row) ?? 0 }];
    }),
  );
  const kept = new Map<string, { readonly statement: HistoryStatement; readonly rank: number }>();
  const first = new Map<string, HistoryStatement>();
  const faults: Fault[] = [];
  for (const one of statements) {
    for (const subject of subjectsOf(one.statement)) {
      const earlier = first.get(subject);
      if (earlier === undefined) first.set(subject, one.statement);
      else if (earlier.present !== one.statement.present) faults.push(...contradiction(earlier, one.statement));
    }
    const name = nameOf(one.statement);
    if (!kept.has(name)) kept.set(name, one);
  }
  const history = [...kept.values()]
    .sort((a, b) => a.rank - b.rank || compareText(nameOf(a.statement), nameOf(b.statement)))
    .map(({ statement }) => statement);
  return { history, faults };
}

/** What a statement is about, side by side: `both` is about the left and about the right. */
function subjectsOf({ kind, key, relation, side }: HistoryStatement): readonly string[] {
  const sides = side === 'both' ? ['left', 'right'] : [side ?? ''];
  return sides.map((one) => [kind, key, relation ?? '', one].join('|'));
}

function nameOf({ kind, key, relation, side, present }: HistoryStatement): string {
  return [kind, key, relation ?? '', side ?? '', present].join('|');
}

function contradiction(a: HistoryStatement, b: HistoryStatement): readonly Fault[] {
  const fault = (here: HistoryStatement, there: HistoryStatement): Fault => ({
    pointer: here.pointer,
    code: 'CONTRADICTION',
    message: `'${here.key}' is stated here as ${here.present ? 'present' : 'absent'}, at ${there.pointer} as ${there.present ? 'present' : 'absent'}.`,
  });
  return [fault(a, b), fault(b, a)];
}
