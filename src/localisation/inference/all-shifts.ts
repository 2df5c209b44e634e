import type { Exam } from '../../exam/exam.ts';
import { causeShifts } from './cause-weights.ts';
import { historyShifts } from './history-weights.ts';
import { resultShifts } from './result-weights.ts';
import type { Shift } from './shift.ts';
import { signShifts } from './sign-weights.ts';

/**
 * Everything beside the findings of the nervous system that shifts the odds of sites: what was told, seen on the body,
 * measured, and how well the diseases of each place fit it.
 */
export function allShifts(exam: Exam): readonly Shift[] {
  return [...historyShifts(exam), ...signShifts(exam), ...resultShifts(exam), ...causeShifts(exam)];
}
