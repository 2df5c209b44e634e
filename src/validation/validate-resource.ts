import type { StructureDefinition } from 'fhir/r4.js';
import { NotFoundError, RequestError } from '../kernel/errors.ts';
import { expandValueSet } from '../terminology/expand.ts';
import { type Codes, indexCodes } from '../terminology/hierarchy.ts';
import type { ConformanceResources } from '../terminology/load.ts';
import { type CodesOfSet, checkBindings } from './check-bindings.ts';
import { checkOwnCodes } from './check-own-codes.ts';
import { structureChecker } from './check-structure.ts';
import type { Json, ValidationIssue } from './issue.ts';
import { type CheckedType, loadR4Definitions } from './r4-definitions.ts';

/** Checks a resource of the type against R4, and against the profile that is named or those that it claims itself. */
export type ValidateResource = (
  type: CheckedType,
  resource: Json,
  profile: string | undefined,
) => readonly ValidationIssue[];

const hl7Base = 'http://hl7.org/fhir/StructureDefinition/';

/**
 * Builds the check; takes about a second and the memory of the definitions, so that it is done when it is first needed.
 * Checked are structure, cardinality, invariants, required codes, and the codes and displays of our own code systems.
 * Not checked: what a reference points to, codes of other vocabularies, and extensions of others.
 */
export async function createValidator(conformance: ConformanceResources): Promise<ValidateResource> {
  const definitions = loadR4Definitions();
  const checkStructure = await structureChecker(definitions);
  const codes = indexCodes(conformance);
  const ofR4 = new Map(definitions.structures.map((one) => [one.type, one]));
  const codesOfSet = bindingCodes(conformance, codes, definitions.codes);
  return (type, resource, profile) => {
    if (resource.resourceType !== type) {
      return [{ severity: 'error', type: 'invalid', text: `The resource is no ${type}.`, expression: type }];
    }
    const named = profile === undefined ? claimed(conformance, resource, type) : { profiles: [profile], issues: [] };
    const profiles = named.profiles.map((url) => profileOf(conformance, url, type)).filter((one) => one !== undefined);
    const base = ofR4.get(type);
    return once([
      ...checkStructure(resource),
      ...(base === undefined ? [] : checkBindings(resource, base, codesOfSet)),
      ...profiles.flatMap((one) => [...checkStructure(resource, one), ...checkBindings(resource, one, codesOfSet)]),
      ...checkOwnCodes(resource, codes),
      ...named.issues,
    ]);
  };
}

/** The profiles of ours that the resource says it keeps, and a word on the others. */
function claimed(
  conformance: ConformanceResources,
  { meta }: Json,
  type: CheckedType,
): { readonly profiles: readonly string[]; readonly issues: readonly ValidationIssue[] } {
  const list = (meta as { profile?: unknown } | null | undefined)?.profile;
  const urls = (Array.isArray(list) ? list : []).filter((url): url is string => typeof url === 'string');
  const isOurs = (url: string) => conformance.byUrl(url)?.resourceType === 'StructureDefinition';
  return {
    profiles: urls.filter(isOurs),
    issues: urls.flatMap((url, index): ValidationIssue[] =>
      isOurs(url) || url === hl7Base + type
        ? []
        : [
            {
              severity: 'warning',
              type: 'not-supported',
              text: 'This profile is not published here, so that nothing was checked against it.',
              expression: `${type}.meta.profile[${index}]`,
            },
          ],
    ),
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
