import fhirpath from 'fhirpath';
import { r4Model } from '../views/r4-model.ts';
import { durationBetween } from './duration.ts';
import type { ExamLists, ServedResource } from './exam-lists.ts';

/** Values of an expression for one exam, plain; an empty list is FHIRPath's "nothing". */
export type Criterion = (impression: ServedResource, lists: ExamLists) => readonly unknown[];

const functions = {
  duration: { fn: durationBetween, arity: { 2: ['Any', 'String'] }, internalStructures: true },
};
const options = { resolveInternalTypes: true, userInvocationTable: functions } as never;

/** @throws Error of the library when the expression does not parse */
export function compileCriterion(expression: string): Criterion {
  return fhirpath.compile(expression, r4Model, options) as unknown as Criterion;
}
