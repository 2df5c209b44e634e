import type { Exam } from '../../exam/exam.ts';
import { rememberedWith } from '../../kernel/remembered.ts';
import { causeShifts } from './cause-weights.ts';
import { courseShifts } from './course-weights.ts';
import { historyShifts } from './history-weights.ts';
import { resultShifts } from './result-weights.ts';
import type { Shift } from './shift.ts';
import { signShifts } from './sign-weights.ts';
import { headAloneShifts } from './told-of-the-head.ts';
import { toldPartShifts } from './told-parts.ts';
import { toldPatternShifts } from './told-patterns.ts';

/**
 * Exponents of what complaints, and patterns of them, say of a site where no sign was found: nothing else tells where it is, while
 * beside signs the complaint mostly says again what they say. Of 1, 1.5, 2, 2.5 and 3 those that name the right site most
 * often; chosen with the cases of tests/evaluation/development in which nothing abnormal was found.
 */
const toldAlone = { complaints: 2, patterns: 1.5 } as const;

function raised(shifts: readonly Shift[], exponent: number): readonly Shift[] {
  return shifts.map((shift) =>
    shift.pointer.startsWith('/history/symptoms/') ? { ...shift, factor: shift.factor ** exponent } : shift,
  );
}

function toldShifts(exam: Exam): readonly Shift[] {
  const complaints = historyShifts(exam);
  const patterns = [...toldPatternShifts(exam), ...headAloneShifts(exam)];
  if (exam.findings.some(({ abnormal }) => abnormal)) return [...complaints, ...patterns];
  return [...raised(complaints, toldAlone.complaints), ...raised(patterns, toldAlone.patterns)];
}

/**
 * Everything beside the findings of the nervous system that shifts the odds of sites: what was told, seen on the body,
 * measured, and how well the diseases of each place fit it. Worked out once for each exam, since priors and reasons both ask.
 */
export const allShifts: (exam: Exam) => readonly Shift[] = rememberedWith((exam) => [
  ...toldShifts(exam),
  ...toldPartShifts(exam),
  ...courseShifts(exam),
  ...signShifts(exam),
  ...resultShifts(exam),
  ...causeShifts(exam),
]);
