import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import type { CodeSystem, CodeSystemConcept, ElementDefinition, StructureDefinition, ValueSet } from 'fhir/r4.js';

/** The types that the service makes or serves, and so can check. */
export const checkedTypes = [
  'Observation',
  'ClinicalImpression',
  'RiskAssessment',
  'ServiceRequest',
  'Provenance',
  'Device',
  'Measure',
  'MeasureReport',
  'Composition',
  'Bundle',
] as const;
export type CheckedType = (typeof checkedTypes)[number];

/** What is needed of HL7's definitions of R4 to check the types that the service makes. */
export interface R4Definitions {
  /** Definitions of those types and of every datatype inside them, with what a check reads of each element. */
  readonly structures: readonly StructureDefinition[];
  /** Codes of the value sets with a required binding, by address without version, each bare and as `system|code`; sets without a list are left out. */
  readonly codes: Readonly<Record<string, readonly string[]>>;
}

/** Written beside the compiled service by the build. */
export const definitionsFile = 'r4-definitions.json.gz';

/** The definitions as the build left them, or, in a run from the sources, straight from HL7's package. */
export function loadR4Definitions(): R4Definitions {
  const file = new URL(`../${definitionsFile}`, import.meta.url);
  if (!existsSync(file)) return extractR4Definitions();
  return JSON.parse(gunzipSync(readFileSync(file)).toString('utf8'));
}

/** Reads the definitions out of HL7's package of R4, which is there when the service is built or run from its sources. */
export function extractR4Definitions(): R4Definitions {
  const folder = dirname(createRequire(import.meta.url).resolve('hl7.fhir.r4.examples/package.json'));
  const read = <T>(name: string): T | undefined => {
    const file = join(folder, `${name}.json`);
    return existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : undefined;
  };
  const structures = new Map<string, StructureDefinition>();
  // A rule of the Bundle asks whether its first entry is a MessageHeader, and a response in it has an OperationOutcome.
  const inRules = ['Resource', 'DomainResource', 'Element', 'BackboneElement', 'MessageHeader', 'OperationOutcome'];
  const wanted = new Set<string>([...inRules, ...checkedTypes]);
  // A set may grow while it is gone through.
  for (const type of wanted) {
    const definition = read<StructureDefinition>(`StructureDefinition-${type}`);
    if (definition === undefined) continue;
    structures.set(type, lean(definition));
    for (const { type: types = [] } of definition.snapshot?.element ?? []) {
      for (const { code } of types) wanted.add(code);
    }
  }
  const elements = [...structures.values()].flatMap(({ snapshot }) => snapshot?.element ?? []);
  const required = elements.flatMap(({ binding }) =>
    binding?.strength === 'required' ? (binding.valueSet ?? []) : [],
  );
  const codes: Record<string, readonly string[]> = {};
  for (const address of new Set(required.map((one) => one.split('|')[0] ?? ''))) {
    const listed = codesOf(read<ValueSet>(`ValueSet-${lastStep(address)}`), (system) =>
      read<CodeSystem>(`CodeSystem-${lastStep(system)}`),
    );
    if (listed !== undefined) codes[address] = listed;
  }
  return { structures: [...structures.values()], codes };
}

/** Texts for people make up most of a definition. */
function lean({
  resourceType,
  url,
  name,
  type,
  kind,
  abstract,
  status,
  snapshot,
}: StructureDefinition): StructureDefinition {
  const element = (snapshot?.element ?? []).map(
    ({ definition: _, short: __, comment: ___, requirements: ____, alias: _____, mapping: ______, ...rest }) =>
      rest as ElementDefinition,
  );
  return { resourceType, url, name, status, kind, abstract, type, snapshot: { element } };
}

/** Undefined when the value set takes in a system that has no list of its codes in the package. */
function codesOf(
  valueSet: ValueSet | undefined,
  systemOf: (url: string) => CodeSystem | undefined,
): readonly string[] | undefined {
  const codes: string[] = [];
  for (const { system = '', concept, filter } of valueSet?.compose?.include ?? []) {
    const listed = concept ?? systemOf(system)?.concept;
    if (listed === undefined || filter !== undefined) return undefined;
    codes.push(...flat(listed).flatMap((code) => [code, `${system}|${code}`]));
  }
  return codes.length === 0 ? undefined : codes;
}

function flat(concepts: readonly CodeSystemConcept[]): string[] {
  return concepts.flatMap(({ code, concept = [] }) => [code, ...flat(concept)]);
}

function lastStep(url: string): string {
  return url.slice(url.lastIndexOf('/') + 1);
}
