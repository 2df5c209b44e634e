import type { ConceptMap, Parameters, ParametersParameter } from 'fhir/r4.js';

/**
 * Answer of `ConceptMap/$translate`: what the maps say of a code, from source to target.
 * Source: http://hl7.org/fhir/R4/conceptmap-operation-translate.html
 */
export function translate(
  maps: readonly ConceptMap[],
  asked: { system: string; code: string; targetSystem?: string | undefined },
): Parameters {
  const match = maps.flatMap(({ url, group = [] }) =>
    group
      .filter(({ source, target }) => source === asked.system && (asked.targetSystem ?? target) === target)
      .flatMap(({ target: system, element }) =>
        element
          .filter(({ code }) => code === asked.code)
          .flatMap(({ target = [] }) => target)
          .map(
            ({ code, display, equivalence }): ParametersParameter => ({
              name: 'match',
              part: [
                { name: 'equivalence', valueCode: equivalence },
                {
                  name: 'concept',
                  valueCoding: { ...(system && { system }), ...(code && { code }), ...(display && { display }) },
                },
                ...(url === undefined ? [] : [{ name: 'source', valueUri: url }]),
              ],
            }),
          ),
      ),
  );
  const result = match.some(({ part }) => !['unmatched', 'disjoint'].includes(part?.[0]?.valueCode ?? ''));
  return {
    resourceType: 'Parameters',
    parameter: [
      { name: 'result', valueBoolean: result },
      ...(match.length > 0 ? [] : [{ name: 'message', valueString: 'No map has this code.' }]),
      ...match,
    ],
  };
}
