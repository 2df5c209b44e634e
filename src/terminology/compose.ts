import type { Coding } from '../kernel/coding.ts';
import { RequestError } from '../kernel/errors.ts';
import type { Codes, KnownConcept } from './hierarchy.ts';

/** The parts of a value set's definition that count, with nothing sure of their content. */
export interface Compose {
  readonly include?: unknown;
  readonly exclude?: unknown;
}

/** Sets in a definition, and filters or value sets in one of them: each may go through a whole code system. */
const mostParts = 50;

type Json = Readonly<Record<string, unknown>>;

/** Codes of another value set by its address; undefined when it is not here. */
type OtherSet = (url: string) => readonly Coding[] | undefined;

const filterForms = 'concept is-a code, concept descendent-of code, or a property of the code system = value';

/**
 * All codes of a definition, in its order and each once. A definition may come from outside: every part of it is checked.
 * @param otherSet for value sets that it takes in by address
 * @throws RequestError BAD_REQUEST for a system, code, filter or value set that is not here, or of which only a fragment is
 * here and the whole is asked for
 * Source: http://hl7.org/fhir/R4/valueset.html#compositions
 */
export function codesOf({ include, exclude }: Compose, codes: Codes, otherSet: OtherSet): readonly Coding[] {
  const found = new Map<string, Coding>();
  for (const set of listOf(include, 'include')) {
    for (const one of codesOfSet(set, codes, otherSet)) if (!found.has(keyOf(one))) found.set(keyOf(one), one);
  }
  for (const set of listOf(exclude, 'exclude')) {
    for (const one of codesOfSet(set, codes, otherSet)) found.delete(keyOf(one));
  }
  return [...found.values()];
}

/** Of a system and value sets, what is in all of them. */
function codesOfSet(set: unknown, codes: Codes, otherSet: OtherSet): readonly Coding[] {
  const { system, version, concept, filter, valueSet } = objectOf(set, 'include or exclude');
  const sets: (readonly Coding[])[] = [];
  if (system !== undefined) {
    const url = textOf(system, 'system');
    checkSystem(codes, url, version);
    sets.push(
      concept === undefined
        ? filtered(codes, url, listOf(filter, 'filter'))
        : listOf(concept, 'concept').map((one) => named(codes, url, one)),
    );
  } else if (concept !== undefined || filter !== undefined) {
    throw bad('An include with concept or filter must have a system.');
  }
  for (const url of listOf(valueSet, 'valueSet')) {
    const other = otherSet(textOf(url, 'valueSet'));
    if (other === undefined) throw bad('The value set takes in another one that is not published here.');
    sets.push(other);
  }
  const [first, ...others] = sets;
  if (first === undefined) throw bad('Every include and exclude must have a system or a valueSet.');
  return others.reduce((kept, other) => {
    const keys = new Set(other.map(keyOf));
    return kept.filter((one) => keys.has(keyOf(one)));
  }, first);
}

function checkSystem(codes: Codes, system: string, version: unknown): void {
  if (codes.concepts(system) === undefined) throw bad('The value set names a code system of which no code is here.');
  const here = codes.codeSystem(system)?.version;
  if (version !== undefined && version !== here) {
    throw bad('The value set names a version of a code system that is not here.');
  }
}

function named(codes: Codes, system: string, concept: unknown): Coding {
  const { code: given, display } = objectOf(concept, 'concept');
  const code = textOf(given, 'code');
  const known = codes.concepts(system)?.get(code);
  if (known === undefined && codes.codeSystem(system) !== undefined) {
    throw bad('The value set names a code that its code system does not have.');
  }
  return { system, code, display: typeof display === 'string' ? display : (known?.display ?? code) };
}

function filtered(codes: Codes, system: string, filters: readonly unknown[]): readonly Coding[] {
  const concepts = codes.concepts(system);
  if (concepts === undefined || codes.codeSystem(system) === undefined) {
    throw bad('Only a fragment of this code system is here; name its codes one by one.');
  }
  const tests = filters.map((filter) => testOf(codes, system, filter));
  return [...concepts.values()]
    .filter((concept) => tests.every((test) => test(concept)))
    .map(({ code, display = code }) => ({ system, code, display }));
}

function testOf(codes: Codes, system: string, filter: unknown): (concept: KnownConcept) => boolean {
  const { property: name, op, value } = objectOf(filter, 'filter');
  const property = textOf(name, 'property');
  const wanted = textOf(value, 'value');
  if (property === 'concept' && (op === 'is-a' || op === 'descendent-of')) {
    if (!codes.concepts(system)?.has(wanted)) throw bad('A filter names a code that its code system does not have.');
    const below = new Set(codes.descendants(system, wanted));
    if (op === 'descendent-of') below.delete(wanted);
    return ({ code }) => below.has(code);
  }
  const known = (codes.codeSystem(system)?.property ?? []).map(({ code }) => code);
  if (op !== '=' || !known.includes(property)) {
    throw bad(`There is an unknown filter. Known: ${filterForms}. Properties: ${known.join(', ') || 'none'}.`);
  }
  return (concept) =>
    (concept.property ?? []).some(
      ({ code, valueString, valueCode, valueBoolean }) =>
        code === property && String(valueString ?? valueCode ?? valueBoolean) === wanted,
    );
}

function keyOf({ system, code }: Coding): string {
  return `${system}|${code}`;
}

function listOf(value: unknown, name: string): readonly unknown[] {
  if (value === undefined) return [];
  if (!Array.isArray(value)) throw bad(`${name} must be a list.`);
  if (name !== 'concept' && value.length > mostParts) throw bad(`${name} has more than ${mostParts} parts.`);
  return value;
}

function objectOf(value: unknown, name: string): Json {
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    throw bad(`Every ${name} must be an object.`);
  return value as Json;
}

function textOf(value: unknown, name: string): string {
  if (typeof value !== 'string') throw bad(`${name} must be a text.`);
  return value;
}

function bad(message: string): RequestError {
  return new RequestError('BAD_REQUEST', message);
}
