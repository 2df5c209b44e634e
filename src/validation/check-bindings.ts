import type { ElementDefinition, StructureDefinition } from 'fhir/r4.js';
import { isObject, itemPath, itemsOf, type Json, type ValidationIssue } from './issue.ts';

/** Codes of a value set, as `system|code` and, for elements that say no system, as the bare code; undefined if unknown. */
export type CodesOfSet = (valueSet: string) => ReadonlySet<string> | undefined;

interface Place {
  readonly path: string;
  readonly value: unknown;
}

/**
 * Elements of the type whose code is not in the value set that the definition requires. Bindings inside datatypes are
 * left to their own definition, which `structure` is then.
 */
export function checkBindings(
  resource: Json,
  { type, snapshot }: StructureDefinition,
  codesOfSet: CodesOfSet,
): readonly ValidationIssue[] {
  return (snapshot?.element ?? []).flatMap((element) => {
    const { binding, path } = element;
    if (binding?.strength !== 'required' || binding.valueSet === undefined) return [];
    const allowed = codesOfSet(binding.valueSet);
    if (allowed === undefined) return [];
    return placesOf(resource, type, path.split('.').slice(1), element)
      .filter(({ value }) => !isIn(value, allowed))
      .map(
        (place): ValidationIssue => ({
          severity: 'error',
          type: 'code-invalid',
          text: `The code is not in the value set that is required: ${binding.valueSet}.`,
          expression: place.path,
        }),
      );
  });
}

/** Every value at the path of an element; of a choice only those of the element's own types. */
function placesOf(
  resource: Json,
  type: string,
  steps: readonly string[],
  { type: types = [] }: ElementDefinition,
): Place[] {
  let places: Place[] = [{ path: type, value: resource }];
  for (const step of steps) {
    places = places.flatMap(({ path, value }) => {
      if (!isObject(value)) return [];
      const name = step.replace('[x]', '');
      const keys = step.endsWith('[x]')
        ? types.map(({ code }) => name + code.charAt(0).toUpperCase() + code.slice(1))
        : [name];
      return keys.flatMap((key) =>
        Object.hasOwn(value, key)
          ? itemsOf(value[key]).map((one, index) => ({
              path: itemPath(`${path}.${name}`, value[key], index),
              value: one,
            }))
          : [],
      );
    });
  }
  return places;
}

/** What has another shape than a code is found by the check of structure. */
function isIn(value: unknown, allowed: ReadonlySet<string>): boolean {
  if (typeof value === 'string') return allowed.has(value);
  if (!isObject(value)) return true;
  const codings = Array.isArray(value.coding) ? (value.coding as unknown[]) : 'code' in value ? [value] : [];
  // A concept with a text alone is found by no list of codes; FHIR wants one code of the set in it.
  return codings.some((coding) => isObject(coding) && allowed.has(`${String(coding.system)}|${String(coding.code)}`));
}
