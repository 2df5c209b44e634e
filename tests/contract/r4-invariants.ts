import type { FhirResource, StructureDefinition } from 'fhir/r4.js';
import fhirpath, { type Model } from 'fhirpath';
import r4 from 'fhirpath/fhir-context/r4/index.js';
import { hl7Resource } from '../terminology/hl7-package.ts';

/**
 * Expressions that fhirpath.js cannot judge: `dom-3` is ambiguous as printed in R4, `que-7` compares a FHIR type with a
 * System type, and `txt-1` and `txt-2` need a function that only some engines have.
 */
const notJudged = new Set(['dom-3', 'que-7', 'txt-1', 'txt-2']);

interface Invariant {
  readonly key: string;
  readonly path: string;
  readonly holds: (resource: FhirResource) => boolean;
}

const invariantsOf = new Map<string, readonly Invariant[]>();

/** Keys of the invariants of the resource's R4 type that do not hold, with the path; warnings count as well. */
export function brokenInvariants(resource: FhirResource): string[] {
  const type = resource.resourceType;
  const invariants = invariantsOf.get(type) ?? compile(type);
  invariantsOf.set(type, invariants);
  return invariants.filter(({ holds }) => !holds(resource)).map(({ key, path }) => `${key} at ${path}`);
}

function compile(type: string): Invariant[] {
  const { snapshot } = hl7Resource(`StructureDefinition-${type}.json`) as StructureDefinition;
  return (snapshot?.element ?? []).flatMap(({ path, constraint = [] }) =>
    constraint
      .filter(({ key, expression }) => expression !== undefined && !notJudged.has(key))
      .map(({ key, expression }) => {
        const test = fhirpath.compile(`${path.replaceAll('[x]', '')}.all(${expression})`, r4 as Model, {
          async: false,
          traceFn: () => undefined,
        });
        return { key, path, holds: (resource) => test(resource, { resource }).every((result) => result === true) };
      }),
  );
}
