import { malformed } from './malformed.ts';
import { dateParameterOf, parametersOf } from './parameters.ts';
import type { Include, SearchQuery, Sort } from './query.ts';

export const defaultCount = 50;
export const largestCount = 500;

export const resultParameters = [
  '_sort',
  '_count',
  '_total',
  '_include',
  '_revinclude',
  '_include:iterate',
  '_revinclude:iterate',
  '_summary',
  '_elements',
  '_format',
  '_pretty',
  '_cursor',
] as const;
export type ResultParameter = (typeof resultParameters)[number];

/** How the matches are shown; nothing of it changes which they are. */
export interface Presentation {
  readonly summary?: 'true' | 'text' | 'data' | 'count' | 'false';
  readonly elements?: readonly string[];
  readonly format?: string;
  readonly pretty?: boolean;
  /** Where the page begins; made and understood by the store. */
  readonly cursor?: string;
}

export function isResultParameter(name: string): name is ResultParameter {
  return resultParameters.some((known) => known === name);
}

/** Newest first by the clinical date, or by the last change for a type that has none. */
export function defaultSort(type: string): Sort {
  return { by: dateParameterOf(type) === null ? '_lastUpdated' : 'date', direction: 'descending' };
}

/** One key of `_sort`; undefined for one that is not offered. */
export function readSort(type: string, value: string): Sort | undefined {
  const direction = value.startsWith('-') ? 'descending' : 'ascending';
  const key = direction === 'descending' ? value.slice(1) : value;
  if (key === '_lastUpdated' || key === '_id') return { by: key, direction };
  return key !== '' && key === dateParameterOf(type) ? { by: 'date', direction } : undefined;
}

/** Names that `_sort` takes for a type. */
export function sortKeys(type: string): readonly string[] {
  const date = dateParameterOf(type);
  return [...(date === null ? [] : [date]), '_lastUpdated', '_id'];
}

/** A number above the largest is lowered to it, as R4 lets a server do. @throws RequestError BAD_REQUEST */
export function readCount(value: string): number {
  if (!/^\d{1,9}$/.test(value)) throw malformed('_count', 'a whole number from 0');
  return Math.min(Number(value), largestCount);
}

const totals = { none: 'none', estimate: 'cheap', accurate: 'accurate' } as const;

/** @throws RequestError BAD_REQUEST */
export function readTotal(value: string): SearchQuery['total'] {
  return totals[oneOf('_total', value, ['none', 'estimate', 'accurate'])];
}

/** @throws RequestError BAD_REQUEST */
export function readPresentation(name: ResultParameter, value: string): Presentation {
  switch (name) {
    case '_summary':
      return { summary: oneOf(name, value, ['true', 'text', 'data', 'count', 'false']) };
    case '_elements': {
      const elements = value.split(',');
      if (!elements.every((element) => /^[A-Za-z]{1,64}$/.test(element))) {
        throw malformed(name, 'names of elements at the top level, with commas between');
      }
      return { elements };
    }
    case '_pretty':
      return { pretty: oneOf(name, value, ['true', 'false']) === 'true' };
    case '_cursor':
      return { cursor: value };
    default:
      return { format: value };
  }
}

/** What `_include` and `_revinclude` can name: the references among resources that are made and kept here. */
export function includesOf(type: string): readonly string[] {
  return [...parametersOf(type).values()]
    .filter(({ follows }) => follows.length > 0)
    .map(({ name }) => `${type}:${name}`);
}

/**
 * `Type:parameter` or `Type:parameter:TargetType`.
 * @returns undefined for a reference that is not followed here
 * @throws RequestError BAD_REQUEST for another form
 */
export function readInclude(name: string, value: string, isIterative: boolean): Include | undefined {
  const parts = /^(?<source>[A-Z][A-Za-z]*):(?<param>[a-z][a-z-]*|\*)(?::(?<targetType>[A-Z][A-Za-z]*))?$/.exec(value);
  const { source = '', param = '', targetType } = parts?.groups ?? {};
  if (parts === null) throw malformed(name, 'Type:parameter or Type:parameter:TargetType');
  const follows = parametersOf(source).get(param)?.follows ?? [];
  if (targetType === undefined ? follows.length === 0 : !follows.includes(targetType)) return undefined;
  return { source, param, ...(targetType === undefined ? {} : { targetType }), isIterative };
}

function oneOf<Value extends string>(name: string, value: string, allowed: readonly Value[]): Value {
  const found = allowed.find((candidate) => candidate === value);
  if (found === undefined) throw malformed(name, `one of ${allowed.join(', ')}`);
  return found;
}
