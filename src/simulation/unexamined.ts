import type { Exam, OnsetPace } from '../exam/exam.ts';

/** An exam in which nothing is known but age and pace, to ask what is likely before anything is found. */
export function unexamined({ ageYears, pace }: { readonly ageYears: number; readonly pace: OnsetPace }): Exam {
  return {
    status: 'final',
    performer: [],
    examinedAt: '',
    person: { ageYears },
    onset: { pace },
    history: [],
    findings: [],
    scales: [],
    otherwiseNormal: [],
    results: [],
  };
}
