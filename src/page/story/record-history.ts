import type { HistoryEntry } from '../draft/draft.ts';
import { change, draft } from '../draft/draft-store.ts';
import type { Row } from './find-rows.ts';
import { presenceWords, stateHistory, withList } from './statements.ts';

/** Records a row of the history. @returns what was recorded, in words */
export function stateRow({ kind, key, label }: Row, isPresent: boolean, side?: HistoryEntry['side']): string {
  if (kind === 'results') return '';
  const what = `${label}${side === undefined ? '' : `, ${side}`}: ${presenceWords(isPresent)}`;
  change(what, (before) => withList(before, kind, stateHistory(before.history[kind], key, isPresent, side)));
  return `Recorded: ${what}`;
}

/** What is recorded of a row of the history; empty while it was not asked. */
export function recordedWords({ kind, key }: Row): string {
  if (kind === 'results') return '';
  return draft.value.history[kind]
    .filter((entry) => entry.key === key)
    .map(({ present, side }) => `${presenceWords(present)}${side === undefined ? '' : `, ${side}`}`)
    .join('; ');
}
