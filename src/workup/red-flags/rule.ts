import type { Reason } from '../../causes/ranked-cause.ts';
import type { Exam } from '../../exam/exam.ts';
import type { Source } from '../../kernel/cite.ts';
import { daysPerYear } from '../../kernel/days.ts';
import type { RedFlag, Urgency } from '../assessment.ts';
import type { BedsideFacts } from '../bedside-facts.ts';

/** What a rule finds; null when the flag is not relevant to this exam. */
export type Verdict = Pick<RedFlag, 'state' | 'because'> & { readonly urgency?: Urgency };

export interface RedFlagRule {
  readonly key: string;
  readonly label: string;
  readonly urgency: Urgency;
  readonly action: string;
  readonly source: Source;
  /** Reads findings, history and results alone; the ranking of causes is not known to it and cannot outvote it. */
  readonly check: (facts: BedsideFacts) => Verdict | null;
}

export const present = (because: readonly Reason[], urgency?: Urgency): Verdict =>
  urgency === undefined ? { state: 'present', because } : { state: 'present', because, urgency };

export const absent = (because: readonly Reason[]): Verdict => ({ state: 'absent', because });

export const notAssessable = (because: readonly Reason[]): Verdict => ({ state: 'not-assessable', because });

/** What has grown worse for more than three years, in days, needs a neurologist and not an urgent scan. Judged. */
export const slowlyProgressive = 1095;

/** Up to this age, 28 days, a person is a newborn, to whom rules for others do not apply. */
const newbornYears = 28 / daysPerYear;

/** Of an infant whose age is told in whole years the length of the illness tells that the first month is over. */
export function isNewborn({ person, onset }: Exam): boolean {
  const { pace, durationDays } = onset;
  const isOlder = pace === 'chronic' || (durationDays ?? 0) > 28;
  return person.ageYears !== undefined && person.ageYears < newbornYears && !isOlder;
}

/** Up to this age, three months in years, what has been there from the first month on is as pressing as it was then. Judged. */
const stillNewYears = 92 / daysPerYear;

/** An infant of a few months whose illness began while it was a newborn; an age in whole years does not tell. */
export function isIllFromBirth({ person, onset }: Exam): boolean {
  const { ageYears = 0 } = person;
  if (ageYears <= 0 || ageYears >= stillNewYears) return false;
  return onset.durationDays !== undefined && ageYears - onset.durationDays / daysPerYear <= newbornYears;
}

/** The usual verdict, but for a story told that raises the flag though what is usually looked for was not found. */
export const orTold = (usual: Verdict | null, told: readonly Reason[]): Verdict | null =>
  usual?.state !== 'present' && told.length > 0 ? present(told) : usual;
