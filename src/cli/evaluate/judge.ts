import { isSegment, segmentIndex } from '../../anatomy/segments.ts';
import { isDiffuse, type Localisation, namesAPlace, type RankedLocalisation } from '../../localisation/localisation.ts';
import { brierScore } from './calibration.ts';
import type { EvaluationCase, Expectation } from './evaluation-case.ts';

/** One case beside its answer. `null` stands for what the case does not fix or what the answer gives no occasion to judge. */
export interface Judgement {
  readonly evaluated: EvaluationCase;
  readonly answer: Localisation;
  /** Whether the case expects a site, and so counts for everything but the conclusion. */
  readonly hasSite: boolean;
  /** Place of the first right site among the answers, from 1; null when it is not among them. Sites are compared by key. */
  readonly rank: number | null;
  /** Of a first answer that names a right site: whether side and level are right, the level with and without tolerance. */
  readonly side: boolean | null;
  readonly level: boolean | null;
  readonly exactLevel: boolean | null;
  readonly conclusion: boolean | null;
  /** Whether the first answer is right in site and, where they are fixed, in side and level. */
  readonly isRight: boolean;
  /** Probability stated for the first answer. */
  readonly stated: number;
  /** Probability stated for all right answers together. */
  readonly accepted: number;
  readonly brier: number;
  /** Whether a wrong answer was given as good as certain. */
  readonly isSureAndWrong: boolean;
}

/** Stated probability from which an answer is taken for certain. */
export const sureFrom = 0.8;

export function judge(evaluated: EvaluationCase, answer: Localisation): Judgement {
  const { expect } = evaluated;
  const [first] = answer.localisations;
  const hasSite = expect.sites.length > 0;
  const rank = answer.localisations.findIndex(({ site }) => expect.sites.includes(site)) + 1;
  const placed = rank === 1 ? first : undefined;
  const hasLevel = placed !== undefined && placed.level !== null && expect.levels !== undefined;
  const conclusion = expect.conclusions?.includes(answer.conclusion) ?? null;
  const isRight = first !== undefined && fits(first, expect);
  const stated = first?.probability ?? 0;
  const isWrong = hasSite ? !isRight : conclusion === false && namesAPlace(answer.conclusion);
  return {
    evaluated,
    answer,
    hasSite,
    rank: hasSite && rank > 0 ? rank : null,
    side: placed === undefined || expect.sides === undefined ? null : fitsSide(placed, expect),
    level: hasLevel ? fitsLevel(placed, expect, expect.levelWithin) : null,
    exactLevel: hasLevel ? fitsLevel(placed, expect, 0) : null,
    conclusion,
    isRight,
    stated,
    ...probabilities(answer.localisations, expect),
    isSureAndWrong: isWrong && stated >= sureFrom,
  };
}

function fits(one: RankedLocalisation, expect: Expectation): boolean {
  return expect.sites.includes(one.site) && fitsSide(one, expect) && fitsLevel(one, expect, expect.levelWithin);
}

/** A process over the whole body is named on both sides; a case that says it has no side means the same. */
function fitsSide(one: RankedLocalisation, { sides }: Expectation): boolean {
  if (sides === undefined || sides.includes(one.side)) return true;
  return one.side === 'both' && isDiffuse(one) && sides.includes(null);
}

/** A right site that has no level, such as a plexus beside a root, is right at any. */
function fitsLevel({ level }: RankedLocalisation, { levels }: Expectation, within: number): boolean {
  if (levels === undefined || level === null || !isSegment(level)) return true;
  const answered = segmentIndex(level);
  return levels.some((one) => Math.abs(segmentIndex(one) - answered) <= within);
}

/**
 * What was stated for the right answers together, and the Brier score with all right answers as one class. Where several
 * sites were found at once their probabilities do not exclude one another and may sum to more than 1: they are then
 * divided by their sum.
 */
function probabilities(
  answers: readonly RankedLocalisation[],
  expect: Expectation,
): { readonly accepted: number; readonly brier: number } {
  const total = Math.max(
    1,
    answers.reduce((sum, { probability }) => sum + probability, 0),
  );
  const right = answers.filter((one) => fits(one, expect));
  const wrong = answers.filter((one) => !fits(one, expect)).map(({ probability }) => probability / total);
  const accepted = right.reduce((sum, { probability }) => sum + probability, 0) / total;
  return { accepted, brier: right.length === 0 ? brierScore(wrong, null) : brierScore([accepted, ...wrong], 0) };
}
