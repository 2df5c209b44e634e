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

/** Up to this age, 28 days, a person is a newborn, to whom rules for others do not apply; an age in hundredths of a year is rounded. */
const newbornYears = Math.ceil((100 * 28) / daysPerYear) / 100;

/** Of an infant whose age is told in whole years the length of the illness tells that the first month is over. */
export function isNewborn({ person, onset }: Exam): boolean {
  const { pace, durationDays } = onset;
  const isOlder = pace === 'chronic' || (durationDays ?? 0) > 28;
  return person.ageYears !== undefined && person.ageYears <= newbornYears && !isOlder;
}

/** An infant of the first three months whose trouble dates from the first of them: counted back, or of whom nobody says anything else. */
export function beganAsNewborn({ person: { ageYears }, onset: { pace, durationDays } }: Exam): boolean {
  if (ageYears === undefined || ageYears > 0.25) return false;
  if (durationDays !== undefined) return ageYears - durationDays / daysPerYear <= newbornYears;
  return pace === undefined && ageYears <= sixWeeks;
}

const sixWeeks = 0.12;

/** The usual verdict, but for a story told that raises the flag though what is usually looked for was not found. */
export const orTold = (usual: Verdict | null, told: readonly Reason[]): Verdict | null =>
  usual?.state !== 'present' && told.length > 0 ? present(told) : usual;
