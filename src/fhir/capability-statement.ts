import type {
  CapabilityStatement,
  CapabilityStatementRestResource,
  CapabilityStatementRestResourceOperation,
  CapabilityStatementRestResourceSearchParam,
  CapabilityStatementRestSecurity,
} from 'fhir/r4.js';
import { canonicalBase } from '../terminology/systems.ts';
import { list, narrative, paragraph, titled } from './narrative.ts';

/** What can be done with a type of resource that is kept. */
export interface KeptType {
  readonly type: string;
  readonly searchParam: readonly CapabilityStatementRestResourceSearchParam[];
  readonly searchInclude: readonly string[];
  readonly searchRevInclude: readonly string[];
  /** The interactions where they are others than reading, history and search. */
  readonly only?: readonly ('read' | 'search-type')[];
  /** Beside reading, history and search. */
  readonly interactions?: readonly ('create' | 'update')[];
  readonly operations?: readonly { readonly name: string; readonly definition: string }[];
}

/** An operation of the whole server. */
export interface ServerOperation {
  readonly name: string;
  readonly definition: string;
  /** What of the definition is offered. */
  readonly documentation?: string;
}

const title = 'Neurological examination service';
const documentation =
  'Findings, impressions and proposals of examinations, and the published profiles, value sets and code systems. Examinations are posted to /exams, outside the FHIR base, and answered with a transaction Bundle.';

/**
 * What the FHIR side can do, and nothing more.
 * @param software.version     version of the service
 * @param software.releaseDate ISO date of that version
 * @param resourceTypes        the conformance types, which can be read by id and searched by `url`
 * @param kept                 the types made from examinations and those that analysts add
 * @param operations           those of the whole server
 * @param checked              types that are only checked, by these operations
 * @param access               how callers are let in; undefined where everybody is
 */
export function capabilityStatement(
  software: { readonly version: string; readonly releaseDate: string },
  resourceTypes: readonly string[],
  kept: readonly KeptType[],
  operations: readonly ServerOperation[],
  checked: readonly { readonly type: string; readonly operations: readonly ServerOperation[] }[],
  access?: AccessOffer,
): CapabilityStatement {
  return {
    resourceType: 'CapabilityStatement',
    id: 'neuroexam-fhir',
    text: narrative(
      titled(title, paragraph(documentation) + list([...kept.map(({ type }) => type), ...resourceTypes].sort())),
    ),
    url: `${canonicalBase}/CapabilityStatement/neuroexam-fhir`,
    version: software.version,
    name: 'NeuroexamFhir',
    title,
    status: 'active',
    date: software.releaseDate,
    kind: 'instance',
    instantiates: ['http://hl7.org/fhir/uv/bulkdata/CapabilityStatement/bulk-data'],
    software: { name: 'neuroexam-fhir', version: software.version },
    implementation: { description: 'One running instance of neuroexam-fhir' },
    fhirVersion: '4.0.1',
    format: ['application/fhir+json'],
    rest: [
      {
        mode: 'server',
        documentation,
        ...(access === undefined ? {} : { security: securityOf(access) }),
        resource: [
          ...kept.map(keptResource),
          ...checked.map((one) => ({
            type: one.type as 'Bundle',
            operation: one.operations.map((each) => ({ ...each })),
          })),
          ...[...resourceTypes].sort().map(conformanceResource),
        ],
        operation: operations.map((operation) => ({ ...operation })),
      },
    ],
  };
}

/** How callers are let in. */
export interface AccessOffer {
  /** Tokens of an authorisation server; undefined where only static keys are taken. */
  readonly tokens: { readonly tokenUrl: string | undefined; readonly authorizeUrl: string | undefined } | undefined;
}

/** Source: SMART App Launch, Conformance, for the service and its extension. */
function securityOf({ tokens }: AccessOffer): CapabilityStatementRestSecurity {
  const description =
    'Bearer tokens with scopes of SMART, or static keys with the same scopes, in the header Authorization.';
  if (tokens === undefined) return { description };
  const { tokenUrl, authorizeUrl } = tokens;
  const addresses = [
    ...(tokenUrl === undefined ? [] : [{ url: 'token', valueUri: tokenUrl }]),
    ...(authorizeUrl === undefined ? [] : [{ url: 'authorize', valueUri: authorizeUrl }]),
  ];
  const oauth = { url: 'http://fhir-registry.smarthealthit.org/StructureDefinition/oauth-uris', extension: addresses };
  const code = { system: 'http://terminology.hl7.org/CodeSystem/restful-security-service', code: 'SMART-on-FHIR' };
  return {
    ...(tokenUrl === undefined ? {} : { extension: [oauth] }),
    service: [{ coding: [code] }],
    description,
  };
}

function conformanceResource(type: string): CapabilityStatementRestResource {
  return {
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
  };
}

function keptResource(kept: KeptType): CapabilityStatementRestResource {
  const { type, searchParam, searchInclude, searchRevInclude, interactions = [], operations = [] } = kept;
  const ofVersions = ['read', 'vread', 'history-instance', 'history-type', ...interactions, 'search-type'] as const;
  const codes = kept.only ?? ofVersions;
  return {
    type: type as 'Observation',
    interaction: codes.map((code) => ({ code })),
    versioning:
      kept.only !== undefined ? 'no-version' : interactions.includes('update') ? 'versioned-update' : 'versioned',
    ...(searchInclude.length === 0 ? {} : { searchInclude: [...searchInclude] }),
    ...(searchRevInclude.length === 0 ? {} : { searchRevInclude: [...searchRevInclude] }),
    searchParam: [...searchParam],
    ...(operations.length === 0 ? {} : { operation: operations.map((one) => ({ ...one })) }),
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
