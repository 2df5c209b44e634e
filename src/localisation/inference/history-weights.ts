import { withImplied } from '../../causes/implied-history.ts';
import { lowerFirst } from '../../exam/describe.ts';
import type { Exam, HistoryStatement } from '../../exam/exam.ts';
import { brainHistory } from './history/brain-history.ts';
import { complaintAndBirthHistory } from './history/complaint-and-birth-history.ts';
import { exposureHistory } from './history/exposure-history.ts';
import { headHistory } from './history/head-history.ts';
import type { HistoryWeight } from './history/history-weight.ts';
import { illnessHistory } from './history/illness-history.ts';
import { limbHistory } from './history/limb-history.ts';
import { neuromuscularHistory } from './history/neuromuscular-history.ts';
import { poisonAndIllnessHistory } from './history/poison-and-illness-history.ts';
import { rarerHistory } from './history/rarer-history.ts';
import { settingHistory } from './history/setting-history.ts';
import type { Applies, Shift } from './shift.ts';

export const historyWeightRows: readonly HistoryWeight[] = [
  ...limbHistory,
  ...neuromuscularHistory,
  ...headHistory,
  ...illnessHistory,
  ...settingHistory,
  ...exposureHistory,
  ...brainHistory,
  ...poisonAndIllnessHistory,
  ...complaintAndBirthHistory,
  ...rarerHistory,
];

const byKey = new Map<string, HistoryWeight[]>();
for (const weight of historyWeightRows) byKey.set(weight.key, [...(byKey.get(weight.key) ?? []), weight]);

/** Key of a statement in the tables: what is said of relatives is written `family/...`. */
function keyOf({ kind, key }: HistoryStatement): string {
  return kind === 'family' ? `family/${key}` : key;
}

/** Names of one complaint, of which a history often states two: a new headache is a headache. */
const sameComplaint: ReadonlyMap<string, string> = new Map([
  ['new-headache', 'headache'],
  ['morning-headache', 'headache'],
  ['continuous-vertigo', 'vertigo'],
  ['nausea', 'vomiting'],
  ['ongoing-seizure', 'seizure'],
]);

/** How the history shifts the odds of sites. What is said under several names counts once for the same reason. */
export function historyShifts(exam: Exam): readonly Shift[] {
  const counted = new Map<Applies, Set<string>>();
  const isFirst = ({ applies, because }: HistoryWeight, statement: HistoryStatement): boolean => {
    const said = counted.get(applies) ?? new Set<string>();
    counted.set(applies, said);
    const reason = `${statement.present}|${complaintOf(statement)}|${because}`;
    const isNew = !said.has(reason);
    said.add(reason);
    return isNew;
  };
  return withImplied(exam.history).flatMap((statement) =>
    (byKey.get(keyOf(statement)) ?? [])
      .filter((weight) => isFirst(weight, statement))
      .map(({ applies, present, denied, because }) => ({
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

/** Each relative is told of for themselves. */
function complaintOf({ kind, key, pointer }: HistoryStatement): string {
  return kind === 'family' ? pointer : (sameComplaint.get(key) ?? key);
}
