import { withImpliedResults } from '../../causes/implied-results.ts';
import { resultByKey } from '../../exam/catalogue/results.ts';
import { describeResult } from '../../exam/describe.ts';
import type { Exam, InvestigationResult } from '../../exam/exam.ts';
import { fluidResults } from './results/fluid-results.ts';
import { imagingResults } from './results/imaging-results.ts';
import { laboratoryResults } from './results/laboratory-results.ts';
import { neurophysiologyResults } from './results/neurophysiology-results.ts';
import type { ResultWeight } from './results/result-weight.ts';
import type { Shift } from './shift.ts';

export const resultWeightRows: readonly ResultWeight[] = [
  ...imagingResults,
  ...neurophysiologyResults,
  ...laboratoryResults,
  ...fluidResults,
];

const byResult = new Map<string, ResultWeight[]>();
for (const weight of resultWeightRows) byResult.set(weight.result, [...(byResult.get(weight.result) ?? []), weight]);

/** How the results that are back shift the odds of sites: imaging, conduction studies and fluids confirm or refute a place. */
export function resultShifts(exam: Exam): readonly Shift[] {
  return withImpliedResults(exam).flatMap((result) =>
    (byResult.get(result.key) ?? [])
      .filter(({ isMet }) => isMet(result))
      .map(({ applies, factor, because }) => ({
        applies,
        factor,
        because,
        pointer: result.pointer,
        text: describeResult(result),
        abnormal: isDeviation(result),
        id: `results/${result.key}`,
      })),
  );
}

/** A number has weights only beyond a threshold, so one that is met is a deviation. */
function isDeviation({ key, value }: InvestigationResult): boolean {
  const row = resultByKey.get(key);
  return row?.kind !== 'coded' || value === undefined || !row.normal.includes(value);
}
