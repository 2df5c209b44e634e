import type { MeasureReport } from 'fhir/r4.js';
import type { CompiledGroup, CompiledMeasure } from './compile-measure.ts';
import { type ExamLists, examLists, type Impression, impressionOf, type ServedResource } from './exam-lists.ts';
import { MeasureFailedError } from './measure-errors.ts';
import { measureReport } from './measure-report.ts';
import { membershipsOf } from './memberships.ts';
import { periodOf, spanOf } from './period.ts';
import type { Scoring } from './published-codes.ts';
import { count, type GroupTally, newTally } from './tally.ts';

/** Strata of one stratifier, and exams in one list. Judged: a report is read by people. */
const mostStrata = 500;
const mostListed = 10_000;

export interface EvaluationRequest {
  /** Dates or times, as FHIR writes them; a year, month or day stands for all of it. Both included. */
  readonly periodStart: string;
  readonly periodEnd: string;
  readonly reportType: 'summary' | 'subject-list' | 'individual';
  /** Reference to the person, such as `Patient/4711`, to whose exams the report is limited. */
  readonly subject?: string;
  readonly now: Date;
  /** Id of the report. */
  readonly id: string;
}

/**
 * Evaluates a measure over exams, each given as its served resources. An exam counts by the date of its impression; one
 * that was entered in error never counts.
 * @throws RequestError BAD_REQUEST for an impossible period, MeasureFailedError
 */
export async function evaluateMeasure(
  measure: CompiledMeasure,
  exams: AsyncIterable<readonly ServedResource[]> | Iterable<readonly ServedResource[]>,
  request: EvaluationRequest,
): Promise<MeasureReport> {
  const period = periodOf(request.periodStart, request.periodEnd);
  const tallies = measure.groups.map(({ stratifiers }) => ({
    all: newTally(),
    strata: stratifiers.map(() => new Map()),
  }));
  let counted = 0;
  for await (const resources of exams) {
    const impression = impressionOf(resources);
    const date = spanOf(impression?.date ?? '');
    if (impression === undefined || date === undefined) continue;
    if (date.until < period.from || date.from > period.until) continue;
    if (request.subject !== undefined && impression.subject?.reference !== request.subject) continue;
    counted += 1;
    const isListed = request.reportType === 'subject-list';
    if (isListed && counted > mostListed) {
      throw new MeasureFailedError(`A subject-list has at most ${mostListed} exams; ask for a shorter period.`);
    }
    const lists = examLists(resources);
    for (const [index, group] of measure.groups.entries()) {
      const tally = tallies[index] as GroupTally;
      countExam(group, measure.scoring, tally, impression, lists, isListed ? impression.id : undefined);
    }
  }
  return measureReport(measure, tallies, request);
}

function countExam(
  group: CompiledGroup,
  scoring: Scoring,
  tally: GroupTally,
  impression: Impression,
  lists: ExamLists,
  id: string | undefined,
): void {
  const populations = membershipsOf(scoring, (code) => group.meets.get(code)?.(impression, lists) === true);
  if (populations.length === 0) return;
  const isObserved =
    populations.includes('measure-population') && !populations.includes('measure-population-exclusion');
  const observed = isObserved ? group.observation?.observe(impression, lists) : undefined;
  count(tally.all, populations, observed, id);
  for (const [index, strataOf] of group.stratifiers.entries()) {
    const strata = tally.strata[index] ?? new Map();
    for (const stratum of strataOf(impression, lists)) {
      const within = strata.get(stratum) ?? newTally();
      count(within, populations, observed);
      strata.set(stratum, within);
    }
    if (strata.size > mostStrata) throw new MeasureFailedError(`A stratifier gives more than ${mostStrata} strata.`);
  }
}
