import type { ValueSetExpansionContains } from 'fhir/r4.js';
import type { Coding } from '../kernel/coding.ts';
import { type Compose, codesOf } from './compose.ts';
import type { Codes, KnownConcept } from './hierarchy.ts';
import type { ConformanceResources } from './load.ts';

/** All codes of a published value set, in its order and each once; undefined for an unknown address. */
export function expandValueSet(
  conformance: ConformanceResources,
  codes: Codes,
  url: string,
): readonly Coding[] | undefined {
  const valueSet = conformance.byUrl(url);
  if (valueSet?.resourceType !== 'ValueSet') return undefined;
  return codesOf((valueSet.compose ?? {}) as Compose, codes, (other) => expandValueSet(conformance, codes, other));
}

/** Those whose display, or one of whose other names, has every word of the filter as part of it, in any case. */
export function matching(codes: Codes, codings: readonly Coding[], filter: string): readonly Coding[] {
  const words = filter.toLowerCase().split(/\s+/).filter(Boolean);
  if (words.length === 0) return codings;
  const hasAll = (name: string) => words.every((word) => name.toLowerCase().includes(word));
  return codings.filter(({ system, code, display }) => {
    const { designation = [] } = codes.concepts(system)?.get(code) ?? {};
    return hasAll(display) || designation.some(({ value }) => hasAll(value));
  });
}

/** Whether the code is a heading that is never recorded itself. */
export function isAbstract(codes: Codes, { system, code }: Pick<Coding, 'system' | 'code'>): boolean {
  return hasTrue(codes.concepts(system)?.get(code), 'notSelectable');
}

/** Whether the code may no longer be used. */
export function isInactive(codes: Codes, { system, code }: Pick<Coding, 'system' | 'code'>): boolean {
  return hasTrue(codes.concepts(system)?.get(code), 'inactive');
}

/** A code as a line of an expansion. */
export function contained(codes: Codes, coding: Coding, withDesignations: boolean): ValueSetExpansionContains {
  const { system, code, display } = coding;
  const designation = withDesignations ? codes.concepts(system)?.get(code)?.designation : undefined;
  return {
    system,
    ...(isAbstract(codes, coding) && { abstract: true }),
    ...(isInactive(codes, coding) && { inactive: true }),
    code,
    display,
    ...(designation && { designation: [...designation] }),
  };
}

function hasTrue(concept: KnownConcept | undefined, name: string): boolean {
  return concept?.property?.some(({ code, valueBoolean }) => code === name && valueBoolean === true) ?? false;
}
