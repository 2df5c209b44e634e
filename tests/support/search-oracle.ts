import type { Identified } from '../../src/fhir/entry.ts';
import { indexEntriesOf } from '../../src/search/extract.ts';
import type { IndexEntries, Token } from '../../src/search/index-entries.ts';
import type { Filter, RangePattern, SearchQuery, TokenPattern } from '../../src/search/query.ts';

/** A resource as it stands, with the time of its last change. */
export interface Kept {
  readonly resource: Identified;
  readonly updated: number;
}

/**
 * What a search has to find, told by going through everything: the meaning of a query without any index.
 * Source: HL7 FHIR R4, Search, section 3.1.1.
 */
export function expectedMatches(kept: readonly Kept[], { type, filters }: SearchQuery): readonly string[] {
  return kept
    .filter(({ resource }) => resource.resourceType === type)
    .filter((one) => filters.every((filter) => passes(one, filter)))
    .map(({ resource }) => resource.id)
    .sort();
}

function passes({ resource, updated }: Kept, filter: Filter): boolean {
  const entries = indexEntriesOf(resource);
  const tokens = (param: string) => entries.tokens.filter((entry) => entry.param === param).map(({ token }) => token);
  switch (filter.kind) {
    case 'id':
      return filter.anyOf.includes(resource.id);
    case 'link':
      return entries.links.some(
        ({ param, target }) =>
          param === filter.param && filter.anyOf.some((one) => one === target || target.endsWith(`/${one}`)),
      );
    case 'missing':
      return isPresent(entries, filter.param) !== filter.isMissing;
    case 'token':
      return (
        ((filter.orIds ?? []).includes(resource.id) ||
          tokens(filter.param).some((token) => filter.anyOf.some((one) => fits(token, one)))) !== filter.negated
      );
    case 'reference':
      return tokens(filter.param).some(({ kind, system, code }) =>
        filter.byIdentifier === undefined
          ? kind === 'reference' && filter.anyOf.some((one) => one === code || one === `${system}/${code}`)
          : kind === 'reference-identifier' && filter.byIdentifier.some((one) => fits({ kind, system, code }, one)),
      );
    case 'text':
      return tokens(filter.param).some((token) => {
        const said = token.kind === 'string' ? token.code : (token.text ?? '');
        return filter.anyOf.some((text) =>
          filter.match === 'start'
            ? said.startsWith(text)
            : filter.match === 'exact'
              ? said === text
              : said.includes(text),
        );
      });
    case 'pair':
      return entries.pairs.some(
        ({ param, first, second }) =>
          param === filter.param && filter.anyOf.some((one) => fits(first, one.first) && fits(second, one.second)),
      );
    case 'range':
      return rangesOf(entries, filter.param, updated).some((range) => filter.anyOf.some((one) => stands(range, one)));
  }
}

function isPresent(entries: IndexEntries, param: string): boolean {
  return [...entries.tokens, ...entries.pairs, ...entries.ranges, ...entries.links].some((one) => one.param === param);
}

function fits({ system, code }: Token, pattern: TokenPattern): boolean {
  return (
    (pattern.system === undefined || pattern.system === system) && (pattern.code === undefined || pattern.code === code)
  );
}

interface Range {
  readonly low: number;
  readonly high: number;
  readonly unit?: Token;
  readonly of?: Token;
}

function rangesOf(entries: IndexEntries, param: string, updated: number): readonly Range[] {
  if (param === '_lastUpdated') return [{ low: updated, high: updated }];
  const listed = entries.ranges.filter((range) => range.param === param);
  if (listed.length > 0 || entries.at === null) return listed;
  const isDate = ['date', 'authored', 'recorded'].includes(param);
  return isDate ? [{ low: entries.at, high: entries.at % 1000 === 0 ? entries.at + 999 : entries.at }] : [];
}

function stands(value: Range, { prefix, low, high, unit, of }: RangePattern): boolean {
  if (of !== undefined && (value.of === undefined || !fits(value.of, of))) return false;
  if (unit !== undefined && (value.unit === undefined || !fits(value.unit, unit))) return false;
  const within = value.low >= low && value.high <= high;
  switch (prefix) {
    case 'eq':
      return within;
    case 'ne':
      return !within;
    case 'gt':
      return value.high > high;
    case 'lt':
      return value.low < low;
    case 'ge':
      return value.high > high || within;
    case 'le':
      return value.low < low || within;
    case 'sa':
      return value.low > high;
    case 'eb':
      return value.high < low;
    case 'ap':
      return value.low <= high && value.high >= low;
  }
}
