import type { ParameterType } from './parameter.ts';
import { parametersOf, searchedTypes } from './parameters.ts';
import { includesOf } from './result-parameters.ts';

/** An entry of `CapabilityStatement.rest.resource.searchParam`. */
export interface SearchParam {
  readonly name: string;
  readonly definition: string;
  readonly type: ParameterType;
  readonly documentation: string;
}

/** What is offered for a type, in the order of names; empty for a type that is not searched. */
export function searchParamsFor(type: string): readonly SearchParam[] {
  return [...parametersOf(type).values()]
    .map(({ name, definition, type: kind, documentation }) => ({ name, definition, type: kind, documentation }))
    .sort((one, other) => (one.name < other.name ? -1 : 1));
}

/** `CapabilityStatement.rest.resource.searchInclude`: references from this type that can be followed. */
export function searchIncludesFor(type: string): readonly string[] {
  return includesOf(type);
}

/** `CapabilityStatement.rest.resource.searchRevInclude`: references to this type that can be followed back. */
export function searchRevIncludesFor(type: string): readonly string[] {
  return searchedTypes.flatMap((source) =>
    [...parametersOf(source).values()]
      .filter(({ follows }) => follows.includes(type))
      .map(({ name }) => `${source}:${name}`),
  );
}
