import type { CodeableConcept, Measure, MeasureGroup } from 'fhir/r4.js';
import { type CriterionKind, isOfKind } from './check-criterion.ts';
import { checkMeasure } from './check-measure.ts';
import { compileCriterion } from './criterion.ts';
import type { ExamLists, Impression } from './exam-lists.ts';
import { MeasureFailedError, MeasureInvalidError } from './measure-errors.ts';
import {
  type AggregateMethod,
  extensions,
  type PopulationCode,
  populationCodes,
  populationSystem,
  type Scoring,
  scoringSystem,
  scorings,
} from './published-codes.ts';

export type Ask<Value> = (impression: Impression, lists: ExamLists) => Value;

export interface CompiledGroup {
  readonly definition: MeasureGroup;
  /** Whether an exam meets the criterion of a population, taken alone. */
  readonly meets: ReadonlyMap<PopulationCode, Ask<boolean>>;
  /** The number observed of an exam, and how the numbers become one; only of a continuous variable. */
  readonly observation?: { readonly observe: Ask<number | undefined>; readonly method: AggregateMethod };
  /** The strata that an exam belongs to, one list for each stratifier. */
  readonly stratifiers: readonly Ask<readonly string[]>[];
}

export interface CompiledMeasure {
  readonly definition: Measure;
  readonly scoring: Scoring;
  readonly groups: readonly CompiledGroup[];
}

/**
 * Compiles a Measure once, for any number of exams.
 * @throws MeasureInvalidError with every fault of the definition
 */
export function compileMeasure(measure: unknown): CompiledMeasure {
  const faults = checkMeasure(measure);
  if (faults.length > 0) throw new MeasureInvalidError(faults);
  const definition = measure as Measure;
  const scoring = scorings.find((code) => hasCode(definition.scoring, scoringSystem, code)) as Scoring;
  return { definition, scoring, groups: (definition.group ?? []).map((group) => compileGroup(group, definition)) };
}

function compileGroup(definition: MeasureGroup, measure: Measure): CompiledGroup {
  const meets = new Map<PopulationCode, Ask<boolean>>();
  let observation: CompiledGroup['observation'];
  for (const { code, criteria, extension } of definition.population ?? []) {
    const role = populationCodes.find((known) => hasCode(code, populationSystem, known)) as PopulationCode;
    if (role !== 'measure-observation') {
      const ask = asked(criteria.expression, 'boolean', measure);
      meets.set(role, (impression, lists) => ask(impression, lists)[0] === true);
      continue;
    }
    const ask = asked(criteria.expression, 'number', measure);
    const method = extension?.find(({ url }) => url === extensions.aggregateMethod)?.valueCode as AggregateMethod;
    observation = { observe: (impression, lists) => ask(impression, lists)[0] as number | undefined, method };
  }
  const stratifiers = (definition.stratifier ?? []).map(({ criteria }) => {
    const ask = asked(criteria?.expression, 'value', measure);
    return (impression: Impression, lists: ExamLists) => [...new Set(ask(impression, lists).map(String))];
  });
  return { definition, meets, stratifiers, ...(observation === undefined ? {} : { observation }) };
}

/** An expression whose answers have the kind that its place asks for. */
function asked(expression = '', kind: CriterionKind, { name, url }: Measure): Ask<readonly unknown[]> {
  const run = compileCriterion(expression);
  const fail = (problem: string): never => {
    throw new MeasureFailedError(`Measure ${name ?? url ?? '(unnamed)'}, expression ${expression}: ${problem}.`);
  };
  return (impression, lists) => {
    let values: readonly unknown[];
    try {
      values = run(impression, lists);
    } catch {
      // The library's message may quote the data.
      return fail('it cannot be evaluated on one of the exams');
    }
    return isOfKind(values, kind) ? values : fail(`it does not give a ${kind} for one of the exams`);
  };
}

function hasCode(concept: CodeableConcept | undefined, system: string, code: string): boolean {
  return concept?.coding?.some((coding) => coding.system === system && coding.code === code) === true;
}
