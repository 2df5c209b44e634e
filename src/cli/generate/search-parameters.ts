import type { SearchParameter, SearchParameterComponent } from 'fhir/r4.js';
import type { Parameter, ParameterPart } from '../../search/parameter.ts';
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
    ...useOf(parameter, type),
  };
}

function useOf({ type, parts }: Parameter, base: SearchedType): Partial<SearchParameter> {
  if (parts !== undefined) {
    return { modifier: ['missing'], component: parts.map((part) => componentOf(base, part)) };
  }
  return type === 'token'
    ? { modifier: ['missing', 'text', 'not', 'in', 'not-in', 'below'] }
    : { comparator: ['eq', 'ne', 'gt', 'lt', 'ge', 'le', 'sa', 'eb', 'ap'], modifier: ['missing'] };
}

/** The half of a composite, by the parameter that asks for it alone. */
function componentOf(base: SearchedType, { place }: ParameterPart): SearchParameterComponent {
  const [expression = ''] = place.steps;
  const alone = [...parametersOf(base).values()].find(({ places }) =>
    places.some(({ steps }) => steps.length === 1 && steps[0] === expression),
  );
  if (alone === undefined) throw new RangeError(`no parameter of ${base} asks for ${expression} alone`);
  return { definition: alone.definition, expression };
}
