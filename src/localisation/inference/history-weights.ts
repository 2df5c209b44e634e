import { lowerFirst } from '../../exam/describe.ts';
import type { Exam, HistoryStatement } from '../../exam/exam.ts';
import { headHistory } from './history/head-history.ts';
import type { HistoryWeight } from './history/history-weight.ts';
import { illnessHistory } from './history/illness-history.ts';
import { limbHistory } from './history/limb-history.ts';
import { settingHistory } from './history/setting-history.ts';
import type { Shift } from './shift.ts';

export const historyWeightRows: readonly HistoryWeight[] = [
  ...limbHistory,
  ...headHistory,
  ...illnessHistory,
  ...settingHistory,
];

const byKey = new Map<string, HistoryWeight[]>();
for (const weight of historyWeightRows) byKey.set(weight.key, [...(byKey.get(weight.key) ?? []), weight]);

/** Key of a statement in the tables: what is said of relatives is written `family/...`. */
function keyOf({ kind, key }: HistoryStatement): string {
  return kind === 'family' ? `family/${key}` : key;
}

/** How the history shifts the odds of sites. */
export function historyShifts(exam: Exam): readonly Shift[] {
  return exam.history.flatMap((statement) =>
    (byKey.get(keyOf(statement)) ?? []).map(({ applies, present, denied, because }) => ({
      applies,
      factor: statement.present ? present : denied,
      because,
      pointer: statement.pointer,
      text: `${statement.present ? '' : 'no '}${lowerFirst(statement.label)}`,
      abnormal: statement.present,
      id: `history/${statement.kind}/${statement.key}`,
    })),
  );
}
