import { conditions } from './conditions.ts';
import { exposures, familyHistory } from './exposures.ts';
import type { HistoryRow } from './history-row.ts';
import { medications } from './medications.ts';
import { symptoms } from './symptoms.ts';

export type { HistoryRow } from './history-row.ts';

/** The lists of the history in the order in which they are presented; the keys are the exam's JSON properties. */
export const historyLists = { symptoms, conditions, exposures, family: familyHistory, medications } as const;

export type HistoryList = keyof typeof historyLists;
export const historyListKeys = Object.keys(historyLists) as readonly HistoryList[];

export const historyRows: readonly HistoryRow[] = Object.values(historyLists).flat();

const byListAndKey: ReadonlyMap<string, HistoryRow> = new Map(
  historyListKeys.flatMap((list) => historyLists[list].map((row) => [`${list}/${row.key}`, row] as const)),
);

/** The row of a key in one list of the history; undefined for a key that the list does not know. */
export function findHistoryRow(list: HistoryList, key: string): HistoryRow | undefined {
  return byListAndKey.get(`${list}/${key}`);
}
