import type { CodeSystem, ConceptMap, ValueSet } from 'fhir/r4.js';
import { allCauses } from '../../causes/table/all-causes.ts';
import type { CauseGroup } from '../../causes/table/cause.ts';
import { causeGroupNames } from '../../fhir/local-codes.ts';
import { systems } from '../../terminology/systems.ts';
import { localCodeSystem } from './code-systems.ts';
import { localMap, type MapRow } from './concept-maps.ts';
import { type Release, valueSetUrl } from './header.ts';
import type { OpenTables } from './open-tables.ts';

/** The groups that have a cause. */
const groups = (Object.keys(causeGroupNames) as CauseGroup[]).filter((one) =>
  allCauses.some(({ group }) => group === one),
);

/** The causes that are considered, and the MONDO term of each where one says the same. */
export function causeResources(release: Release, tables: OpenTables): (CodeSystem | ValueSet | ConceptMap)[] {
  const [codeSystem, valueSet] = localCodeSystem(release, {
    id: 'cause',
    title: 'Causes of neurological lesions',
    description:
      'The causes that the ranking considers, each below the kind of trouble that it is. A cause with a MONDO term of the same meaning is coded with that term as well.',
    allCodes: 'causes',
    hierarchy: 'is-a',
    properties: { inheritance: 'A way in which the cause is passed on, the usual one first.' },
    concepts: [
      ...groups.map((group) => ({ code: group, display: causeGroupNames[group], isAbstract: true })),
      ...allCauses.map(({ key, label, group, inheritance }) => ({
        code: key,
        display: label,
        properties: { inheritance },
        parents: [group],
      })),
    ],
  });
  const terms = new Set(allCauses.map(({ mondo }) => mondo?.code));
  const mondo = {
    system: systems.mondo,
    concept: tables.mondo.codes.filter(({ code }) => terms.has(code)).map(({ code, display }) => ({ code, display })),
  };
  return [
    codeSystem,
    {
      ...valueSet,
      description: 'The causes that the ranking considers, by their own codes and by their MONDO terms.',
      copyright: tables.mondo.notice,
      compose: { include: [...(valueSet.compose?.include ?? []), mondo] },
    },
    localMap(release, {
      id: 'cause-to-mondo',
      title: 'Causes to MONDO',
      description: 'The MONDO term that says the same as a cause, where there is one.',
      copyright: [tables.mondo.notice],
      sourceValueSet: valueSetUrl('causes'),
      targetValueSet: valueSetUrl('causes'),
      source: systems.cause,
      target: systems.mondo,
      targetVersion: tables.mondo.version,
      rows: allCauses.flatMap(({ key, label, mondo }): MapRow[] =>
        mondo ? [{ code: key, display: label, target: { ...mondo, relation: 'equivalent' } }] : [],
      ),
    }),
  ];
}
