import type { Bundle } from 'fhir/r4.js';
import type { Exam } from '../exam/exam.ts';
import type { BundleOptions } from '../fhir/bundle.ts';
import type { Practice } from '../practice/practice.ts';
import type { Assessment } from '../workup/assessment.ts';

export const spellings = ['uk', 'us'] as const;
export type Spelling = (typeof spellings)[number];

/** The pure steps from a parsed body to an answer. Each is deterministic; `now` is the only thing from outside. */
export interface ExamSteps {
  /** @throws ExamInvalidError with every fault */
  readonly readExam: (body: unknown, options: { readonly purpose: 'record' | 'localise'; readonly now: Date }) => Exam;
  /** Version of the published Questionnaire, which a QuestionnaireResponse names or leaves open. */
  readonly formVersion: string;
  readonly assess: (exam: Exam, options?: { readonly spelling?: Spelling }) => Assessment;
  readonly toBundle: (exam: Exam, assessment: Assessment, options: BundleOptions) => Bundle;
  /** @param originOf where in what was sent the value at a pointer into the exam stands */
  readonly toLocalisationAnswer: (assessment: Assessment, originOf?: (pointer: string) => string) => unknown;
  /** Shares the tables of the steps. */
  readonly practice: Practice;
  /** Works out beforehand what the first requests would otherwise wait for, a little at a time. */
  readonly prepare: () => Iterable<unknown>;
}
