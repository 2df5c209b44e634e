import type { CapabilityStatement, CapabilityStatementRestResourceOperation } from 'fhir/r4.js';
import { canonicalBase } from '../terminology/systems.ts';

/**
 * What the FHIR side can do, and nothing more.
 * @param software.version     version of the service
 * @param software.releaseDate ISO date of that version
 * @param resourceTypes        the types that can be read by id and searched by `url`
 */
export function capabilityStatement(
  software: { readonly version: string; readonly releaseDate: string },
  resourceTypes: readonly string[],
): CapabilityStatement {
  return {
    resourceType: 'CapabilityStatement',
    id: 'neuroexam-fhir',
    url: `${canonicalBase}/CapabilityStatement/neuroexam-fhir`,
    version: software.version,
    name: 'NeuroexamFhir',
    title: 'Neurological examination service',
    status: 'active',
    date: software.releaseDate,
    kind: 'instance',
    software: { name: 'neuroexam-fhir', version: software.version },
    implementation: { description: 'One running instance of neuroexam-fhir' },
    fhirVersion: '4.0.1',
    format: ['application/fhir+json'],
    rest: [
      {
        mode: 'server',
        documentation:
          'The published profiles, value sets and code systems. Examinations are posted to /exams, outside the FHIR base, and answered with a transaction Bundle.',
        resource: [...resourceTypes].sort().map((type) => ({
          type: type as 'StructureDefinition',
          interaction: [{ code: 'read' as const }, { code: 'search-type' as const }],
          versioning: 'no-version' as const,
          ...terminologyOperations(type),
          searchParam: [
            {
              // HL7 defines the parameter once for all conformance types but the Questionnaire.
              name: 'url',
              definition: `http://hl7.org/fhir/SearchParameter/${type === 'Questionnaire' ? type : 'conformance'}-url`,
              type: 'uri' as const,
              documentation: 'Canonical address, whole; a version may follow after a vertical bar.',
            },
          ],
        })),
      },
    ],
  };
}

const operationsOf: ReadonlyMap<string, readonly string[]> = new Map([
  ['CodeSystem', ['lookup', 'validate-code', 'subsumes']],
  ['ValueSet', ['expand', 'validate-code']],
  ['ConceptMap', ['translate']],
]);

function terminologyOperations(type: string): { operation?: CapabilityStatementRestResourceOperation[] } {
  const names = operationsOf.get(type);
  if (names === undefined) return {};
  return {
    operation: names.map((name) => ({
      name,
      definition: `http://hl7.org/fhir/OperationDefinition/${type}-${name}`,
    })),
  };
}
