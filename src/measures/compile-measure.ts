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
  const ask = expressionsOf(definition);
  return { definition, scoring, groups: (definition.group ?? []).map((group) => compileGroup(group, ask)) };
}

type Expressions = (expression: string | undefined, kind: CriterionKind) => Ask<readonly unknown[]>;

function compileGroup(definition: MeasureGroup, expressions: Expressions): CompiledGroup {
  const meets = new Map<PopulationCode, Ask<boolean>>();
  let observation: CompiledGroup['observation'];
  for (const { code, criteria, extension } of definition.population ?? []) {
    const role = populationCodes.find((known) => hasCode(code, populationSystem, known)) as PopulationCode;
    if (role !== 'measure-observation') {
      const ask = expressions(criteria.expression, 'boolean');
      meets.set(role, (impression, lists) => ask(impression, lists)[0] === true);
      continue;
    }
    const ask = expressions(criteria.expression, 'number');
    const method = extension?.find(({ url }) => url === extensions.aggregateMethod)?.valueCode as AggregateMethod;
    observation = { observe: (impression, lists) => ask(impression, lists)[0] as number | undefined, method };
  }
  const stratifiers = (definition.stratifier ?? []).map(({ criteria }) => {
    const ask = expressions(criteria?.expression, 'value');
    return (impression: Impression, lists: ExamLists) => [...new Set(ask(impression, lists).map(String))];
  });
  return { definition, meets, stratifiers, ...(observation === undefined ? {} : { observation }) };
}

/** Compiles each expression once, however many groups have it, and evaluates it once for each exam. */
function expressionsOf({ name, url }: Measure): Expressions {
  const known = new Map<string, Ask<readonly unknown[]>>();
  return (expression = '', kind) => {
    const key = `${kind} ${expression}`;
    const found = known.get(key) ?? once(asked(expression, kind, name ?? url ?? '(unnamed)'));
    known.set(key, found);
    return found;
  };
}

/** Remembers the answer for the exam that was asked about last. */
function once(ask: Ask<readonly unknown[]>): Ask<readonly unknown[]> {
  let last: { readonly lists: ExamLists; readonly values: readonly unknown[] } | undefined;
  return (impression, lists) => {
    if (last?.lists !== lists) last = { lists, values: ask(impression, lists) };
    return last.values;
  };
}

/** An expression whose answers have the kind that its place asks for. */
function asked(expression: string, kind: CriterionKind, measure: string): Ask<readonly unknown[]> {
  const run = compileCriterion(expression);
  const fail = (problem: string): never => {
    throw new MeasureFailedError(`Measure ${measure}, expression ${expression}: ${problem}.`);
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
