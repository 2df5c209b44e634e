import type { ElementDefinition, StructureDefinition } from 'fhir/r4.js';
import { plainText } from '../kernel/plain-text.ts';
import { isObject, itemPath, itemsOf, type Json, type ValidationIssue } from './issue.ts';

/** Codes of a value set, as `system|code` and, for elements that say no system, as the bare code; undefined if unknown. */
export type CodesOfSet = (valueSet: string) => ReadonlySet<string> | undefined;

interface Place {
  readonly path: string;
  readonly value: unknown;
}

/** Definition of a datatype; undefined for one that is not gone into. */
export type DatatypeOf = (type: string) => StructureDefinition | undefined;

/**
 * Elements of the type whose code is not in the value set that the definition requires; with `datatypeOf` also those of
 * the datatypes inside, by their own definitions, and bare values where a datatype is made of elements.
 */
export function checkBindings(
  resource: Json,
  structure: StructureDefinition,
  codesOfSet: CodesOfSet,
  datatypeOf: DatatypeOf = () => undefined,
  at = structure.type,
): readonly ValidationIssue[] {
  const elements = structure.snapshot?.element ?? [];
  const inside = elements.flatMap(({ path, type: types = [] }) =>
    types.flatMap((type) => {
      const datatype = path.includes('.') ? datatypeOf(type.code) : undefined;
      if (datatype === undefined && type.code !== 'BackboneElement') return [];
      return placesOf(resource, at, path.split('.').slice(1), { path, type: [type] }).flatMap((place) => {
        if (!isObject(place.value)) return [noObject(place)];
        return datatype === undefined ? [] : checkBindings(place.value, datatype, codesOfSet, datatypeOf, place.path);
      });
    }),
  );
  return [...inside, ...checkOwnBindings(resource, at, elements, codesOfSet)];
}

/** The validator of structure takes a bare value for an object without elements. */
function noObject({ path }: Place): ValidationIssue {
  return { severity: 'error', type: 'structure', text: 'An object was expected here.', expression: path };
}

function checkOwnBindings(
  resource: Json,
  at: string,
  elements: readonly ElementDefinition[],
  codesOfSet: CodesOfSet,
): readonly ValidationIssue[] {
  return elements.flatMap((element) => {
    const { binding, path } = element;
    if (binding?.strength !== 'required' || binding.valueSet === undefined) return [];
    const allowed = codesOfSet(binding.valueSet);
    if (allowed === undefined) return [];
    return placesOf(resource, at, path.split('.').slice(1), element)
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
  return codings.some(
    (coding) => isObject(coding) && allowed.has(`${plainText(coding.system)}|${plainText(coding.code)}`),
  );
}
