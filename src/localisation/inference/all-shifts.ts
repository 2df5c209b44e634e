import type { Exam } from '../../exam/exam.ts';
import { rememberedWith } from '../../kernel/remembered.ts';
import { causeShifts } from './cause-weights.ts';
import { courseShifts } from './course-weights.ts';
import { historyShifts } from './history-weights.ts';
import { resultShifts } from './result-weights.ts';
import type { Shift } from './shift.ts';
import { signShifts } from './sign-weights.ts';
import { toldPatternShifts } from './told-patterns.ts';

/**
 * Everything beside the findings of the nervous system that shifts the odds of sites: what was told, seen on the body,
 * measured, and how well the diseases of each place fit it. Worked out once for each exam, since priors and reasons both ask.
 */
export const allShifts: (exam: Exam) => readonly Shift[] = rememberedWith((exam) => [
  ...historyShifts(exam),
  ...toldPatternShifts(exam),
  ...courseShifts(exam),
  ...signShifts(exam),
  ...resultShifts(exam),
  ...causeShifts(exam),
]);
