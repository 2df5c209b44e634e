import type { Exam } from '../../exam/exam.ts';

/** Whether any of these is stated as present. */
export const tells = (history: Exam['history'], keys: ReadonlySet<string>): boolean =>
  history.some(({ key, present }) => present && keys.has(key));
