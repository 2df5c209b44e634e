import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { SearchParameter } from 'fhir/r4.js';
import fhirpath, { type Model } from 'fhirpath';
import r4 from 'fhirpath/fhir-context/r4/index.js';
import type { Parameter } from '../../src/search/parameter.ts';
import { parametersOf } from '../../src/search/parameters.ts';
import { hl7Resource } from '../terminology/hl7-package.ts';

/** A value that a parameter's FHIRPath finds, with its FHIR type as the FHIRPath engine tells it. */
export interface Found {
  readonly type: string;
  readonly value: unknown;
}

export interface StandardParameter {
  readonly name: string;
  readonly type: string;
  readonly isPatientOnly: boolean;
  /** Types that HL7 lets the reference name; undefined for our own parameters. */
  readonly targets: readonly string[];
  readonly find: (resource: unknown) => readonly Found[];
  readonly parts: readonly ((element: unknown) => readonly Found[])[];
}

/** HL7's definition of a parameter; undefined for those published here. */
export function hl7Definition({ definition }: Parameter): SearchParameter | undefined {
  const id = /^http:\/\/hl7\.org\/fhir\/SearchParameter\/(?<id>.+)$/.exec(definition)?.groups?.id;
  return id === undefined ? undefined : (hl7Resource(`SearchParameter-${id}.json`) as SearchParameter);
}

/** The project's own published definition of a parameter that HL7 lacks. */
function ownDefinition({ definition }: Parameter): SearchParameter {
  const file = join(import.meta.dirname, '../../profiles/fhir', `SearchParameter-${definition.split('/').at(-1)}.json`);
  return JSON.parse(readFileSync(file, 'utf8')) as SearchParameter;
}

/** The part of HL7's expression that is about one type. */
export function expressionFor(type: string, definition: SearchParameter): string {
  const parts = (definition.expression ?? '').split(' | ');
  return parts.filter((part) => new RegExp(`^\\(?(?:${type}|Resource)\\b`).test(part)).join(' | ');
}

/** The parameters of a type as HL7 (or the project's own SearchParameter) defines them, made to run. */
export function standardParameters(type: string): readonly StandardParameter[] {
  return [...parametersOf(type).values()]
    .filter(({ name }) => name !== '_id' && name !== '_lastUpdated')
    .map((parameter) => {
      const definition = hl7Definition(parameter);
      const expression = definition === undefined ? parameter.expression : expressionFor(type, definition);
      return {
        name: parameter.name,
        type: definition?.type ?? parameter.type,
        isPatientOnly: expression.includes('resolve() is Patient'),
        targets: definition?.target ?? [],
        find: finder(expression),
        parts: ((definition ?? ownDefinition(parameter)).component ?? []).map((part) =>
          // A component's expression starts from the element that the composite's expression found.
          finder(part.expression, definition?.expression === 'Observation.component' ? 'Observation.component' : type),
        ),
      };
    });
}

/**
 * Compiles an expression, with three changes. `as` takes one item only where R4's expressions have many, so it becomes
 * `ofType`. `resolve()` would fetch; the test of the reference's text stands in the converter. The sides of a union are
 * run one by one, because the engine compares them as quantities, which fails for those with a comparator.
 */
function finder(expression: string, base?: string): (resource: unknown) => readonly Found[] {
  const runnable = expression
    .replaceAll('.where(resolve() is Patient)', '')
    .replace(/\((\S+) as (\w+)\)/g, '$1.ofType($2)')
    .replace(/\.as\((\w+)\)/g, '.ofType($1)');
  const compile = (text: string) =>
    base === undefined
      ? fhirpath.compile(text, r4 as Model, { async: false })
      : fhirpath.compile({ base, expression: text }, r4 as Model, { async: false });
  const sides = runnable.split(' | ').map((side) => ({
    values: compile(side),
    types: compile(`(${side}).select(type().name)`),
  }));
  return (resource) =>
    sides.flatMap(({ values, types }) => {
      const found = values(resource as object) as readonly unknown[];
      const named = types(resource as object) as readonly unknown[];
      if (found.length !== named.length) throw new Error(`${expression}: ${found.length} and ${named.length} values`);
      return found.map((value, index) => ({ value, type: String(named[index]) }));
    });
}
