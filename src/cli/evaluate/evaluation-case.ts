import type { Segment } from '../../anatomy/segments.ts';
import type { Exam } from '../../exam/exam.ts';
import type { Conclusion, RankedLocalisation } from '../../localisation/localisation.ts';

/** Where a case comes from: the picture that a textbook draws, or a patient of a published report. */
export const caseKinds = ['textbook', 'published'] as const;
export type CaseKind = (typeof caseKinds)[number];

export type SiteSide = RankedLocalisation['side'];

/** What a neurologist would answer; what is left out is not fixed. */
export interface Expectation {
  /** Keys of the sites that are right; empty where only the conclusion is asked for. */
  readonly sites: readonly string[];
  readonly sides?: readonly SiteSide[];
  readonly levels?: readonly Segment[];
  /** Segments by which the answered level may miss the nearest expected one. */
  readonly levelWithin: number;
  readonly conclusions?: readonly Conclusion[];
  readonly advice: ExpectedAdvice;
}

/** What a careful senior would say about causes, dangers and tests, by key; what is left out is not fixed. */
export interface ExpectedAdvice {
  /** Every cause that is right. */
  readonly causes?: readonly string[];
  /** Red flags that must be raised; of none, the case is not urgent. */
  readonly redFlags?: readonly string[];
  /** Red flags that may be raised or not. */
  readonly mayFlag?: readonly string[];
  /** Red flags that cannot be decided, and must be said to be so. */
  readonly undecided?: readonly string[];
  /** Tests that published guidance puts first, and tests that must not be proposed. */
  readonly tests?: readonly string[];
  readonly notTests?: readonly string[];
}

/** One examination with the answer that is expected of it. */
export interface EvaluationCase {
  readonly name: string;
  readonly picture?: string;
  readonly source?: string;
  readonly kind?: CaseKind;
  readonly expect: Expectation;
  readonly exam: Exam;
  /** File as it is shown, and the line on which the case begins. */
  readonly file: string;
  readonly line: number;
}

/** One thing that is wrong with a case file. */
export interface CaseFault {
  readonly file: string;
  readonly line: number;
  /** RFC 6901 JSON Pointer within the case (or, for a .json file, within the file); '' is the whole. */
  readonly pointer: string;
  readonly message: string;
}

export function faultText({ file, line, pointer, message }: CaseFault): string {
  return `${file}:${line}${pointer === '' ? '' : ` ${pointer}`}: ${message}`;
}
