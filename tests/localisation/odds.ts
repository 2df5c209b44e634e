import type { SiteKind } from '../../src/anatomy/site-kind.ts';
import type { Exam } from '../../src/exam/exam.ts';
import type { Site } from '../../src/localisation/hypothesis.ts';
import type { Shift } from '../../src/localisation/inference/shift.ts';
import { bedsideExam } from '../support/bedside.ts';

/** What the shifts that an exam gives rise to make of the odds of a site, on the side that is usual in a test where none is given. */
export const oddsBy =
  (shiftsOf: (exam: Exam) => readonly Shift[], usualSide: Site['side'] = null) =>
  (draft: Parameters<typeof bedsideExam>[0], key: string, kind: SiteKind, side: Site['side'] = usualSide): number => {
    const site: Site = { key, kind, label: '', side, level: null };
    return shiftsOf(bedsideExam(draft)).reduce(
      (product, { applies, factor }) => (applies(site) ? product * factor : product),
      1,
    );
  };

export const has = (...keys: readonly string[]) => keys.map((key) => ({ key, present: true }));
