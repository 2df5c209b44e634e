import type { Assessment } from '../../workup/assessment.ts';
import { calibrationError, reliability } from './calibration.ts';
import type { EvaluationCase } from './evaluation-case.ts';
import { type Share, share } from './figures.ts';
import { alternativesOf } from './read-advice.ts';

/** Causes, red flags and tests of one case beside what was expected. `null` stands for what the case does not fix. */
export interface AdviceJudgement {
  readonly evaluated: EvaluationCase;
  readonly answer: Assessment;
  readonly cause: {
    /** Place of the first right cause among those answered, from 1; null when it is not among them. */
    readonly rank: number | null;
    /** Probability stated for the first cause; 0 where none is named. */
    readonly stated: number;
  } | null;
  readonly flags: {
    readonly expected: number;
    /** Expected ones that were raised, by the key that the case gives (`a|b` where either meets it). */
    readonly raised: readonly string[];
    /** Expected ones that were not raised, and raised ones that were neither expected nor allowed. */
    readonly missed: readonly string[];
    readonly extra: readonly string[];
  } | null;
  /** Flags that should have been called undecidable and were neither that nor raised. */
  readonly undecided: { readonly expected: number; readonly missed: readonly string[] } | null;
  readonly tests: { readonly expected: number; readonly missed: readonly string[] } | null;
  /** Tests that were proposed and should not have been. */
  readonly needless: readonly string[] | null;
}

/** Judges an assessment against the lists of keys that a case expects. */
export function judgeAdvice(evaluated: EvaluationCase, answer: Assessment): AdviceJudgement {
  const { causes, redFlags, mayFlag = [], undecided, tests, notTests } = evaluated.expect.advice;
  const raised = answer.redFlags.filter(({ state }) => state === 'present').map(({ key }) => key);
  const open = answer.redFlags.filter(({ state }) => state === 'not-assessable').map(({ key }) => key);
  const proposed = answer.workup.map(({ key }) => key);
  const rank = answer.causes.findIndex(({ key }) => causes?.includes(key)) + 1;
  return {
    evaluated,
    answer,
    cause: causes === undefined ? null : { rank: rank === 0 ? null : rank, stated: answer.causes[0]?.probability ?? 0 },
    flags:
      redFlags === undefined
        ? null
        : {
            expected: redFlags.length,
            raised: redFlags.filter((key) => !without([key], raised).includes(key)),
            missed: without(redFlags, raised),
            extra: without(raised, [...redFlags, ...mayFlag].flatMap(alternativesOf)),
          },
    undecided:
      undecided === undefined ? null : { expected: undecided.length, missed: without(undecided, [...open, ...raised]) },
    tests: tests === undefined ? null : { expected: tests.length, missed: without(tests, proposed) },
    needless: notTests === undefined ? null : notTests.filter((key) => proposed.includes(key)),
  };
}

function without(keys: readonly string[], taken: readonly string[]): readonly string[] {
  return keys.filter((key) => !alternativesOf(key).some((one) => taken.includes(one)));
}

/** What a set of judged cases comes to; each share says what it is of. */
export interface AdviceFigures {
  /** Of the cases that expect a cause. */
  readonly firstCause: Share;
  readonly firstThreeCauses: Share;
  /** Expected calibration error of the probability of the first cause; null without a case that expects one. */
  readonly causeCalibrationError: number | null;
  /** Of the red flags expected. */
  readonly flagsRaised: Share;
  /** Of the cases that expect none: those in which one was raised. */
  readonly falseAlarms: Share;
  /** Of the flags that cannot be decided. */
  readonly undecidedSaid: Share;
  /** Of the first tests expected. */
  readonly testsProposed: Share;
  /** Of the cases that name tests that must not be proposed: those in which one was. */
  readonly needlessTests: Share;
}

export function adviceFiguresOf(judgements: readonly AdviceJudgement[]): AdviceFigures {
  const caused = judgements.flatMap(({ cause }) => cause ?? []);
  const believed = reliability(caused.map(({ rank, stated }) => ({ stated, isRight: rank === 1 })));
  const flagged = judgements.flatMap(({ flags }) => flags ?? []);
  return {
    firstCause: share(caused.map(({ rank }) => rank === 1)),
    firstThreeCauses: share(caused.map(({ rank }) => rank !== null && rank <= 3)),
    causeCalibrationError: believed.length === 0 ? null : calibrationError(believed),
    flagsRaised: found(flagged),
    falseAlarms: share(flagged.filter(({ expected }) => expected === 0).map(({ extra }) => extra.length > 0)),
    undecidedSaid: found(judgements.flatMap(({ undecided }) => undecided ?? [])),
    testsProposed: found(judgements.flatMap(({ tests }) => tests ?? [])),
    needlessTests: share(judgements.flatMap(({ needless }) => (needless === null ? [] : [needless.length > 0]))),
  };
}

/** Things expected, case by case, and those of them that were found. */
function found(lists: readonly { readonly expected: number; readonly missed: readonly string[] }[]): Share {
  const of = lists.reduce((sum, { expected }) => sum + expected, 0);
  return { right: of - lists.reduce((sum, { missed }) => sum + missed.length, 0), of };
}

/** Whether a case fixes anything beside the site. */
export function expectsAdvice({ expect }: EvaluationCase): boolean {
  return Object.keys(expect.advice).length > 0;
}
