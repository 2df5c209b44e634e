import type { IndexEntries, LinkEntry, PairEntry, RangeEntry, Token, TokenEntry } from './index-entries.ts';
import { isObject, textOf, valuesAt } from './json.ts';
import type { Parameter, ParameterPart, Place } from './parameter.ts';
import { dateParameterOf, linkedTypes, parametersOf } from './parameters.ts';
import { rangeOf } from './ranges-of.ts';
import { referenceTarget, typeInReference, uuidForm } from './reference.ts';
import { identifierTokens, tokensOf } from './tokens-of.ts';

interface Draft {
  at: number | null;
  readonly tokens: TokenEntry[];
  readonly pairs: PairEntry[];
  readonly ranges: RangeEntry[];
  readonly links: LinkEntry[];
  /** Tokens of a concept, by the concept: several parameters look at the same one. */
  readonly known: Map<unknown, readonly Token[]>;
}

/** Kept by the store itself, because they are its own doing. */
const ofTheStore = new Set(['_id', '_lastUpdated']);

/**
 * What the search index holds of one resource, parameter by parameter.
 * @param resource as it is served: references to resources of the same exam are `Type/uuid`
 * @returns each entry once; no entries for a type that is not searched; a value of another shape than R4 says is passed over
 */
export function indexEntriesOf(resource: { readonly resourceType: string }): IndexEntries {
  const draft: Draft = { at: null, tokens: [], pairs: [], ranges: [], links: [], known: new Map() };
  const dateParameter = dateParameterOf(resource.resourceType);
  for (const parameter of parametersOf(resource.resourceType).values()) {
    if (ofTheStore.has(parameter.name)) continue;
    for (const place of parameter.places) {
      const [first] = place.steps;
      if (first !== undefined && !Object.hasOwn(resource, first)) continue; // most elements are absent
      for (const value of valuesAt(resource, place.steps)) {
        addValue(draft, parameter, place, value, parameter.name === dateParameter);
      }
    }
  }
  const { at, tokens, pairs, ranges, links } = draft;
  return { at, tokens, pairs, ranges, links };
}

function addValue(draft: Draft, parameter: Parameter, place: Place, value: unknown, isClinicalDate: boolean): void {
  const param = parameter.name;
  switch (parameter.type) {
    case 'reference':
      addReference(draft, parameter, place, value);
      break;
    case 'composite':
      if (parameter.parts !== undefined) addPairs(draft, param, parameter.parts, value);
      break;
    case 'date':
    case 'number':
    case 'quantity': {
      const range = rangeOf(value, place.datatype);
      if (range === null) break;
      if (isClinicalDate && draft.at === null) {
        draft.at = range.low;
        if (isWhatAtStandsFor(range)) break;
      }
      addRange(draft, { param, ...range });
      break;
    }
    default:
      for (const token of tokensAt(draft, value, place)) addToken(draft, { param, token });
  }
}

/** Of `at`, a time of whole seconds is the whole second, any other the one millisecond. */
function isWhatAtStandsFor({ low, high }: { readonly low: number; readonly high: number }): boolean {
  return high - low === (low % 1000 === 0 ? 999 : 0);
}

function addReference(draft: Draft, parameter: Parameter, place: Place, value: unknown): void {
  const param = parameter.name;
  const add = (token: Token) => addToken(draft, { param, token });
  if (place.datatype === 'canonical') {
    const address = textOf(value);
    if (address !== undefined) add({ kind: 'reference', system: '', code: address });
    return;
  }
  if (!isObject(value)) return;
  const text = textOf(value.reference);
  if (parameter.isPatientOnly && !mayBePatient(text, textOf(value.type))) return;
  if (isObject(value.identifier)) identifierTokens(value.identifier, 'reference-identifier').forEach(add);
  if (text === undefined || text.startsWith('#')) return;
  const target = referenceTarget(text);
  if (target.kind === 'absolute') add({ kind: 'reference', system: '', code: target.address });
  else if (parameter.isLink && linkedTypes.has(target.type) && uuidForm.test(target.id)) {
    addLink(draft, { param, target: `${target.type}/${target.id}` });
  } else add({ kind: 'reference', system: target.type, code: target.id });
}

/**
 * Stands in for `resolve() is Patient`, as nothing is fetched: the literal reference tells the type, else
 * `Reference.type`; one that tells neither is taken for a Patient, since the profiles let nobody else be examined.
 */
function mayBePatient(reference: string | undefined, type: string | undefined): boolean {
  const told = (reference === undefined ? undefined : typeInReference(reference)) ?? type;
  return told === undefined || told === 'Patient';
}

function addPairs(draft: Draft, param: string, parts: readonly [ParameterPart, ParameterPart], value: unknown): void {
  const [first, second] = parts;
  const firsts = codesAt(draft, value, first.place);
  if (firsts.length === 0) return;
  if (second.type === 'token') {
    const seconds = codesAt(draft, value, second.place);
    for (const one of firsts) for (const other of seconds) addPair(draft, { param, first: one, second: other });
    return;
  }
  for (const quantity of valuesAt(value, second.place.steps)) {
    const range = rangeOf(quantity, second.place.datatype);
    if (range !== null) for (const of of firsts) addRange(draft, { param, ...range, of });
  }
}

/** Tokens with a code; a concept that has only words has no part in a pair. */
function codesAt(draft: Draft, value: unknown, place: Place): readonly Token[] {
  return valuesAt(value, place.steps)
    .flatMap((found) => tokensAt(draft, found, place))
    .filter(({ code }) => code !== '');
}

function tokensAt({ known }: Draft, value: unknown, { datatype }: Place): readonly Token[] {
  if (datatype !== 'CodeableConcept' || !isObject(value)) return tokensOf(value, datatype);
  const memory = Object.isFrozen(value) ? ofShared : known;
  const before = memory.get(value);
  if (before !== undefined) return before;
  const tokens = tokensOf(value, datatype);
  memory.set(value, tokens);
  return tokens;
}

/** Concepts that the resources of all exams share are frozen; what they give is worked out once for all of them. */
const ofShared = new WeakMap<object, readonly Token[]>();

/**
 * Adds an entry unless the same parameter has it already, for a code or reference may stand in a resource many times.
 * The entries of one parameter stand last, and they are few.
 */
function addNew<E extends { readonly param: string }>(
  entries: E[],
  entry: E,
  isSame: (one: E, other: E) => boolean,
): void {
  for (let index = entries.length - 1; index >= 0; index -= 1) {
    const other = entries[index];
    if (other === undefined || other.param !== entry.param) break;
    if (isSame(entry, other)) return;
  }
  entries.push(entry);
}

function isSameToken(one: Token | undefined, other: Token | undefined): boolean {
  return (
    one === other ||
    (one?.code === other?.code &&
      one?.system === other?.system &&
      one?.kind === other?.kind &&
      one?.text === other?.text)
  );
}

function addToken({ tokens }: Draft, entry: TokenEntry): void {
  addNew(tokens, entry, (one, other) => isSameToken(one.token, other.token));
}

function addPair({ pairs }: Draft, entry: PairEntry): void {
  addNew(pairs, entry, (one, other) => isSameToken(one.first, other.first) && isSameToken(one.second, other.second));
}

function addRange({ ranges }: Draft, entry: RangeEntry): void {
  addNew(
    ranges,
    entry,
    (one, other) =>
      one.low === other.low &&
      one.high === other.high &&
      isSameToken(one.unit, other.unit) &&
      isSameToken(one.of, other.of),
  );
}

function addLink({ links }: Draft, entry: LinkEntry): void {
  addNew(links, entry, (one, other) => one.target === other.target);
}
