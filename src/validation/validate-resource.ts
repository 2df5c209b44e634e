import type { StructureDefinition } from 'fhir/r4.js';
import { NotFoundError, RequestError } from '../kernel/errors.ts';
import { plainText } from '../kernel/plain-text.ts';
import { expandValueSet } from '../terminology/expand.ts';
import { type Codes, indexCodes } from '../terminology/hierarchy.ts';
import type { ConformanceResources } from '../terminology/load.ts';
import { type CodesOfSet, checkBindings } from './check-bindings.ts';
import { bundleAlone, type CheckEntry, checkEntries, isInsideEntry, withTypedReferences } from './check-bundle.ts';
import { checkOwnCodes } from './check-own-codes.ts';
import { checkReferences } from './check-references.ts';
import { structureChecker } from './check-structure.ts';
import type { Json, ValidationIssue } from './issue.ts';
import { type CheckedType, checkedTypes, loadR4Definitions } from './r4-definitions.ts';

/** Checks a resource of the type against R4, and against the profile that is named or those that it claims itself. */
export type ValidateResource = (
  type: CheckedType,
  resource: Json,
  profile: string | undefined,
) => Promise<readonly ValidationIssue[]>;

const hl7Base = 'http://hl7.org/fhir/StructureDefinition/';

/**
 * Builds the check; takes about a second and the memory of the definitions, so that it is done when it is first needed.
 * Checked are structure, cardinality, invariants, required codes, the codes and displays of our own code systems, and
 * references to contained resources and, in a Bundle, to its entries, whose resources are checked each by its type.
 * Not checked: what a reference to elsewhere points to, codes of other vocabularies, and extensions of others.
 */
export async function createValidator(conformance: ConformanceResources): Promise<ValidateResource> {
  const definitions = loadR4Definitions();
  const checkStructure = await structureChecker(definitions);
  const codes = indexCodes(conformance);
  const ofR4 = new Map(definitions.structures.map((one) => [one.type, one]));
  const codesOfSet = bindingCodes(conformance, codes, definitions.codes);
  const known = new Set(ofR4.keys());
  const datatypeOf = (code: string) => {
    const found = ofR4.get(code);
    return found?.kind === 'complex-type' && found.abstract === false ? found : undefined;
  };
  const check = async (
    type: CheckedType,
    resource: Json,
    profile?: string,
    inBundle?: ReadonlyMap<string, string>,
  ): Promise<readonly ValidationIssue[]> => {
    if (resource.resourceType !== type) {
      return [{ severity: 'error', type: 'invalid', text: `The resource is no ${type}.`, expression: type }];
    }
    const named = profile === undefined ? claimed(conformance, resource, type) : { profiles: [profile], issues: [] };
    const profiles = named.profiles.map((url) => profileOf(conformance, url, type)).filter((one) => one !== undefined);
    const base = ofR4.get(type);
    const alone =
      type === 'Bundle'
        ? bundleAlone(resource, known)
        : inBundle === undefined
          ? resource
          : withTypedReferences(resource, inBundle);
    const wrongTarget = inBundle === undefined ? 'warning' : 'error';
    const structural = [
      ...checkStructure(alone, undefined, wrongTarget),
      ...(base === undefined ? [] : checkBindings(alone, base, codesOfSet, datatypeOf)),
      ...profiles.flatMap((one) => [
        ...checkStructure(alone, one, wrongTarget),
        ...checkBindings(alone, one, codesOfSet),
      ]),
      ...checkOwnCodes(alone, codes),
    ];
    return once([
      ...(type === 'Bundle' ? structural.filter((issue) => !isInsideEntry(issue)) : structural),
      ...(type === 'Bundle' ? await checkEntries(resource, checkEntry) : checkReferences(resource, inBundle)),
      ...named.issues,
    ]);
  };
  const checkEntry: CheckEntry = async (resource, inBundle) => {
    const type = checkedTypes.find((one) => one === resource.resourceType);
    if (type !== undefined) return check(type, resource, undefined, inBundle);
    const text = 'Resources of this type are not checked.';
    return [{ severity: 'warning', type: 'not-supported', text, expression: plainText(resource.resourceType) }];
  };
  return (type, resource, profile) => check(type, resource, profile);
}

/** The profiles of ours that the resource says it keeps, and a word on the others. */
function claimed(
  conformance: ConformanceResources,
  { meta }: Json,
  type: CheckedType,
): { readonly profiles: readonly string[]; readonly issues: readonly ValidationIssue[] } {
  const list = (meta as { profile?: unknown } | null | undefined)?.profile;
  const urls = (Array.isArray(list) ? list : []).filter((url): url is string => typeof url === 'string');
  const typeOf = (url: string) => {
    const found = conformance.byUrl(url);
    return found?.resourceType === 'StructureDefinition' ? found.type : undefined;
  };
  return {
    profiles: urls.filter((url) => typeOf(url) === type),
    issues: urls.flatMap((url, index): ValidationIssue[] => {
      const profiled = typeOf(url);
      if (profiled === type || url === hl7Base + type) return [];
      const expression = `${type}.meta.profile[${index}]`;
      if (profiled !== undefined) {
        const text = `This profile is one of ${profiled}, not of ${type}.`;
        return [{ severity: 'error', type: 'invalid', text, expression }];
      }
      const text = 'This profile is not published here, so that nothing was checked against it.';
      return [{ severity: 'warning', type: 'not-supported', text, expression }];
    }),
  };
}

/**
 * @throws NotFoundError for an address that is none of ours and not that of the type
 * @throws RequestError BAD_REQUEST for a profile of another type
 */
function profileOf(conformance: ConformanceResources, url: string, type: CheckedType): StructureDefinition | undefined {
  if (url === hl7Base + type) return undefined;
  const found = conformance.byUrl(url);
  if (found?.resourceType !== 'StructureDefinition')
    throw new NotFoundError('There is no profile with this address here.');
  if (found.type !== type)
    throw new RequestError('BAD_REQUEST', `This profile is one of ${found.type}, not of ${type}.`);
  return found;
}

/** Value sets of ours are worked out, each once; of those of HL7 the definitions have the codes. */
function bindingCodes(
  conformance: ConformanceResources,
  codes: Codes,
  ofHl7: Readonly<Record<string, readonly string[]>>,
): CodesOfSet {
  const made = new Map<string, ReadonlySet<string> | undefined>();
  const make = (url: string): ReadonlySet<string> | undefined => {
    const own = expandValueSet(conformance, codes, url);
    if (own !== undefined) return new Set(own.flatMap(({ system, code }) => [`${system}|${code}`, code]));
    const [address = ''] = url.split('|');
    const listed = Object.hasOwn(ofHl7, address) ? ofHl7[address] : undefined;
    return listed && new Set(listed);
  };
  return (url) => {
    if (!made.has(url)) made.set(url, make(url));
    return made.get(url);
  };
}

/** What R4 and a profile both ask for is said once. */
function once(issues: readonly ValidationIssue[]): readonly ValidationIssue[] {
  const seen = new Map(issues.map((issue) => [`${issue.severity} ${issue.text} ${issue.expression}`, issue]));
  return [...seen.values()];
}
