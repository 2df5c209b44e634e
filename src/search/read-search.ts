import { closest, distance } from 'fastest-levenshtein';
import { RequestError } from '../kernel/errors.ts';
import { joined } from './join-filters.ts';
import { malformed } from './malformed.ts';
import { ownParameterOf, parametersOf } from './parameters.ts';
import type { Filter, Include, SearchQuery, Sort } from './query.ts';
import { isUsable, type ParameterUse, readFilter } from './read-filter.ts';
import type { Terminology } from './read-token.ts';
import {
  defaultCount,
  defaultSort,
  isResultParameter,
  type Presentation,
  type ResultParameter,
  readCount,
  readInclude,
  readPresentation,
  readSort,
  readTotal,
  resultParameters,
} from './result-parameters.ts';

export interface SearchOptions extends Terminology {
  /** `Prefer: handling=strict`: what is not understood is refused instead of left out. */
  readonly strict: boolean;
}

export interface SearchRequest {
  readonly query: SearchQuery;
  readonly presentation: Presentation;
  /** The parameters that took effect, as sent, for the self link. */
  readonly applied: readonly (readonly [string, string])[];
  /** Names that were not understood, or not in that use. */
  readonly ignored: readonly string[];
}

export const parametersAllowed = 50;
export const longestValue = 2000;

interface Draft {
  readonly filters: Filter[];
  readonly includes: Include[];
  readonly revIncludes: Include[];
  sort: Sort | undefined;
  count: number | undefined;
  total: SearchQuery['total'] | undefined;
  presentation: Presentation;
}

/**
 * Reads the parameters of a search.
 * @param type       a type that is searched here
 * @param parameters names and values, decoded from the URL or the form, in the order sent
 * @throws RequestError BAD_REQUEST for a value of the wrong form; in strict mode also for what is not understood, all of
 *   it in one error
 * Source: FHIR R4, Search (http://hl7.org/fhir/R4/search.html).
 */
export function readSearch(
  type: string,
  parameters: readonly (readonly [string, string])[],
  options: SearchOptions,
): SearchRequest {
  if (parametersOf(type).size === 0)
    throw new RequestError('BAD_REQUEST', 'Resources of this type cannot be searched.');
  if (parameters.length > parametersAllowed) {
    throw new RequestError('BAD_REQUEST', `A search takes at most ${parametersAllowed} parameters.`);
  }
  const draft: Draft = {
    filters: [],
    includes: [],
    revIncludes: [],
    sort: undefined,
    count: undefined,
    total: undefined,
    presentation: {},
  };
  const applied: (readonly [string, string])[] = [];
  const ignored: string[] = [];
  for (const [name, value] of parameters) {
    if (value.length > longestValue) throw malformed(shown(name), `at most ${longestValue} characters`);
    if (take(draft, type, name, value, options)) applied.push([name, value]);
    else ignored.push(name);
  }
  if (options.strict && ignored.length > 0) throw notUnderstood(type, ignored);
  return { query: finished(type, draft), presentation: draft.presentation, applied, ignored };
}

/** `_summary=count` asks for the number alone, as `_count=0` does. */
function finished(type: string, draft: Draft): SearchQuery {
  const isCountOnly = draft.presentation.summary === 'count' || draft.count === 0;
  return {
    type,
    filters: joined(type, draft.filters),
    sort: draft.sort ?? defaultSort(type),
    count: isCountOnly ? 0 : (draft.count ?? defaultCount),
    total: isCountOnly ? 'accurate' : (draft.total ?? 'cheap'),
    includes: draft.includes,
    revIncludes: draft.revIncludes,
  };
}

/** @returns false for what is not understood; a parameter without a value is among it */
function take(draft: Draft, type: string, name: string, value: string, options: SearchOptions): boolean {
  if (value === '') return false;
  if (isResultParameter(name)) return takeResultParameter(draft, type, name, value);
  const use = parameterUse(type, name);
  if (use === undefined || !isUsable(use)) return false;
  const filter = readFilter(use, value, options);
  // An own identifier is in no index but never missing: all have it, or none is asked for.
  if (filter.kind !== 'missing' || filter.param !== ownParameterOf(type)) draft.filters.push(filter);
  else if (filter.isMissing) draft.filters.push({ kind: 'id', anyOf: [] });
  return true;
}

const nameForm = /^(?<name>[A-Za-z_-]+)(?::(?<modifier>[A-Za-z-]+))?(?:\.(?<chained>[a-z-]+))?$/;

function parameterUse(type: string, text: string): ParameterUse | undefined {
  const { name, modifier, chained } = nameForm.exec(text)?.groups ?? {};
  const parameter = name === undefined ? undefined : parametersOf(type).get(name);
  return parameter === undefined ? undefined : { parameter, modifier, chained };
}

function takeResultParameter(draft: Draft, type: string, name: ResultParameter, value: string): boolean {
  switch (name) {
    case '_include':
    case '_include:iterate':
    case '_revinclude':
    case '_revinclude:iterate': {
      const include = readInclude(name, value, name.endsWith(':iterate'));
      if (include === undefined) return false;
      (name.startsWith('_include') ? draft.includes : draft.revIncludes).push(include);
      return true;
    }
    case '_sort': {
      refuseRepeat(name, draft.sort);
      draft.sort = readSort(type, value);
      return draft.sort !== undefined;
    }
    case '_count':
      refuseRepeat(name, draft.count);
      draft.count = readCount(value);
      return true;
    case '_total':
      refuseRepeat(name, draft.total);
      draft.total = readTotal(value);
      return true;
    default: {
      const presentation = readPresentation(name, value);
      for (const key of Object.keys(presentation)) refuseRepeat(name, draft.presentation[key as keyof Presentation]);
      draft.presentation = { ...draft.presentation, ...presentation };
      return true;
    }
  }
}

function refuseRepeat(name: string, known: unknown): void {
  if (known !== undefined) throw malformed(name, 'to stand once');
}

export function notUnderstood(type: string, names: readonly string[]): RequestError {
  const known = [...parametersOf(type).keys(), ...resultParameters];
  const each = [...new Set(names)].map((name) => {
    const bare = name.split(/[:.]/)[0] ?? '';
    if (known.includes(bare)) return `${shown(name)} (${bare} is known, but not in this use or without a value)`;
    const nearest = closest(bare, known);
    return distance(bare, nearest) <= Math.max(2, bare.length / 2)
      ? `${shown(name)} (did you mean ${nearest}?)`
      : shown(name);
  });
  return new RequestError('BAD_REQUEST', `A search of ${type} does not understand: ${each.join('; ')}.`);
}

/** A name as it may stand in a message: whatever somebody put in its place by mistake is cut short. */
function shown(name: string): string {
  return name.length > 60 ? `${name.slice(0, 60)}...` : name;
}
