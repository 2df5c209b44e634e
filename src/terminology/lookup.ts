import type { CodeSystem, Parameters, ParametersParameter } from 'fhir/r4.js';
import { NotFoundError, RequestError } from '../kernel/errors.ts';
import type { Codes, KnownConcept } from './hierarchy.ts';

/** Extension by which the grades of a scale carry their number. */
const ordinalValueUrl = 'http://hl7.org/fhir/StructureDefinition/ordinalValue';

/** What the answer holds of its own, under the same name. */
const named: ReadonlySet<string> = new Set(['name', 'version', 'display', 'designation']);

/**
 * Answer of `CodeSystem/$lookup`: name, version, display and properties of a code.
 * @param asked.properties which properties to answer with; all when none is named. Name and display are always there.
 * @throws NotFoundError for a system, version or code that is not here
 * @throws RequestError BAD_REQUEST for a property that codes of this system do not have
 * Source: http://hl7.org/fhir/R4/codesystem-operation-lookup.html
 */
export function lookUp(
  codes: Codes,
  asked: {
    readonly system: string;
    readonly code: string;
    readonly version?: string | undefined;
    readonly properties?: readonly string[];
  },
): Parameters {
  const { system, code, properties = [] } = asked;
  const concepts = codes.concepts(system);
  if (concepts === undefined) throw new NotFoundError('No code of this system is here.');
  const codeSystem = codes.codeSystem(system);
  checkVersion(asked.version, codeSystem?.version);
  const concept = concepts.get(code);
  if (concept === undefined) {
    throw new NotFoundError(
      codeSystem === undefined
        ? 'Only a fragment of this code system is here, and the code is not in it.'
        : 'This code system has no such code.',
    );
  }
  checkProperties(properties, codeSystem);
  const wants = (name: string) => properties.length === 0 || properties.includes(name);
  return {
    resourceType: 'Parameters',
    parameter: [
      { name: 'name', valueString: codeSystem?.name ?? codes.vocabulary(system)?.name ?? system },
      ...(codeSystem?.version === undefined || !wants('version')
        ? []
        : [{ name: 'version', valueString: codeSystem.version }]),
      { name: 'display', valueString: concept.display ?? code },
      ...(wants('designation') ? designations(concept) : []),
      ...propertiesOf(codes, concept).filter(({ part }) => {
        const [name] = part ?? [];
        // The notice goes with the code whatever was asked for.
        return name?.valueCode === 'copyright' || wants(name?.valueCode ?? '');
      }),
    ],
  };
}

/** @throws RequestError BAD_REQUEST when another version is asked for than the one that is here */
export function checkVersion(asked: string | undefined, here: string | undefined): void {
  if (asked === undefined || asked === here) return;
  throw new RequestError(
    'BAD_REQUEST',
    `This version is not here; ${here === undefined ? 'the fragment has none' : `the one here is ${here}`}.`,
  );
}

/** Those that HL7 defines for all code systems, and those of ours; a language code after `lang.` has no designation here. */
function checkProperties(asked: readonly string[], codeSystem: CodeSystem | undefined): void {
  const known = [
    ...named,
    ...['system', 'url', 'definition', 'parent', 'child', 'inactive', 'ordinal', 'copyright'],
    ...(codeSystem?.property ?? []).map(({ code }) => code),
  ];
  if (asked.every((name) => known.includes(name) || name.startsWith('lang.'))) return;
  throw new RequestError(
    'BAD_REQUEST',
    `There is an unknown property. Known for this code system: ${[...new Set(known)].join(', ')}.`,
  );
}

function designations({ designation = [] }: KnownConcept): ParametersParameter[] {
  return designation.map(({ language, use, value }) => ({
    name: 'designation',
    part: [
      ...(language === undefined ? [] : [{ name: 'language', valueCode: language }]),
      ...(use === undefined ? [] : [{ name: 'use', valueCoding: use }]),
      { name: 'value', valueString: value },
    ],
  }));
}

function propertiesOf(codes: Codes, concept: KnownConcept): ParametersParameter[] {
  const { system, code } = concept;
  const displayOf = (one: string) => codes.concepts(system)?.get(one)?.display;
  const neighbour = (name: string, one: string) => property(name, { valueCode: one }, displayOf(one));
  const ordinal = concept.extension?.find(({ url }) => url === ordinalValueUrl)?.valueDecimal;
  const notice = codes.vocabulary(system)?.notice;
  return [
    ...(concept.property ?? [])
      .filter(({ code: name }) => name !== 'parent')
      .map(({ code: name, ...value }) => property(name, value)),
    ...codes.parents(system, code).map((one) => neighbour('parent', one)),
    ...codes.children(system, code).map((one) => neighbour('child', one)),
    ...(ordinal === undefined ? [] : [property('ordinal', { valueDecimal: ordinal })]),
    ...(concept.definition === undefined ? [] : [property('definition', { valueString: concept.definition })]),
    ...(notice === undefined ? [] : [property('copyright', { valueString: notice })]),
  ];
}

function property(code: string, value: Omit<ParametersParameter, 'name'>, description?: string): ParametersParameter {
  return {
    name: 'property',
    part: [
      { name: 'code', valueCode: code },
      { name: 'value', ...value },
      ...(description === undefined ? [] : [{ name: 'description', valueString: description }]),
    ],
  };
}
