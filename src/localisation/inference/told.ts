import { lowerFirst } from '../../exam/describe.ts';
import type { Exam, HistoryStatement } from '../../exam/exam.ts';
import type { Applies, Shift } from './shift.ts';

/** Whether any of these is stated as present. */
export const tells = (history: Exam['history'], keys: ReadonlySet<string>): boolean =>
  history.some(({ key, present }) => present && keys.has(key));

/** Builds shifts of the odds out of what was told, with an id in the name of who weighs it. */
export const shiftsOfTold =
  (weigher: string) =>
  (statement: HistoryStatement, applies: Applies, factor: number, because: string): Shift => ({
    applies,
    factor,
    because,
    pointer: statement.pointer,
    text: lowerFirst(statement.label),
    abnormal: true,
    id: `${weigher}/${statement.key}`,
  });

/** What is told, by its key. */
export type Told = ReadonlyMap<string, HistoryStatement>;

/** The first of these that is told. */
export function firstTold(told: Told, keys: readonly string[]): HistoryStatement | undefined {
  const key = keys.find((one) => told.has(one));
  return key === undefined ? undefined : told.get(key);
}

/** The statement told of the first group, where one of each group is told. */
export function toldOfEach(told: Told, groups: readonly (readonly string[])[]): HistoryStatement | undefined {
  const [first, ...others] = groups.map((group) => firstTold(told, group));
  return others.includes(undefined) ? undefined : first;
}
