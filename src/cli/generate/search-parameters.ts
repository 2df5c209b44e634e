import type { SearchParameter } from 'fhir/r4.js';
import type { Parameter } from '../../search/parameter.ts';
import { parametersOf, type SearchedType, searchedTypes } from '../../search/parameters.ts';
import { canonicalBase } from '../../terminology/systems.ts';
import { header, type Release } from './header.ts';

const own = `${canonicalBase}/SearchParameter/`;

/** The search parameters that R4 lacks and that are published here. */
export function searchParameters(release: Release): readonly SearchParameter[] {
  return searchedTypes.flatMap((type) =>
    [...parametersOf(type).values()]
      .filter(({ definition }) => definition.startsWith(own))
      .map((parameter) => searchParameter(release, type, parameter)),
  );
}

function searchParameter(release: Release, type: SearchedType, parameter: Parameter): SearchParameter {
  const id = parameter.definition.slice(own.length);
  const title = `${type}: search by ${parameter.name}`;
  // R4's SearchParameter has no title.
  const { title: _, ...rest } = header('SearchParameter', release, { id, title, description: parameter.documentation });
  return {
    ...rest,
    code: parameter.name,
    base: [type],
    type: parameter.type,
    expression: parameter.expression,
    xpathUsage: 'normal',
    ...(parameter.type === 'token'
      ? { modifier: ['missing', 'text', 'not', 'in', 'not-in', 'below'] }
      : { comparator: ['eq', 'ne', 'gt', 'lt', 'ge', 'le', 'sa', 'eb', 'ap'], modifier: ['missing'] }),
  };
}
