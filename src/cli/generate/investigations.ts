import type { CodeSystem, ConceptMap, ValueSet } from 'fhir/r4.js';
import { investigations } from '../../exam/catalogue/investigations.ts';
import { otherNamesOf } from '../../exam/catalogue/other-names.ts';
import { systems } from '../../terminology/systems.ts';
import { localCodeSystem } from './code-systems.ts';
import { localMap, type MapRow } from './concept-maps.ts';
import { type Release, valueSetUrl } from './header.ts';
import type { OpenTables } from './open-tables.ts';

/** The investigations that may be proposed, and the LOINC code of each where one says the same. */
export function investigationResources(
  release: Release,
  { loinc }: OpenTables,
): (CodeSystem | ValueSet | ConceptMap)[] {
  const [codeSystem, valueSet] = localCodeSystem(release, {
    id: 'investigation',
    title: 'Proposed investigations',
    description:
      'The investigations that may be proposed. An investigation with a LOINC code of the same meaning is coded with that code.',
    allCodes: 'investigations',
    concepts: investigations.map(({ key, label }) => ({
      code: key,
      display: label,
      otherNames: otherNamesOf('investigations', key),
    })),
  });
  const codes = new Set(investigations.map((test) => test.loinc?.code));
  const concept = loinc.codes.filter(({ code }) => codes.has(code)).map(({ code, display }) => ({ code, display }));
  return [
    codeSystem,
    {
      ...valueSet,
      description: 'The investigations that may be proposed, by their own codes and by their LOINC codes.',
      copyright: loinc.notice,
      compose: { include: [...(valueSet.compose?.include ?? []), { system: systems.loinc, concept }] },
    },
    localMap(release, {
      id: 'investigation-to-loinc',
      title: 'Investigations to LOINC',
      description: 'The LOINC code that says the same as an investigation, where there is one.',
      copyright: [loinc.notice],
      sourceValueSet: valueSetUrl('investigations'),
      targetValueSet: valueSetUrl('investigations'),
      source: systems.investigation,
      target: systems.loinc,
      rows: investigations.flatMap(({ key, label, loinc: code }): MapRow[] =>
        code ? [{ code: key, display: label, target: { ...code, relation: 'equivalent' } }] : [],
      ),
    }),
  ];
}
