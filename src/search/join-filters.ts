import { parametersOf } from './parameters.ts';
import type { Filter, PairFilter, TokenFilter, TokenPattern } from './query.ts';
import { exactSystem } from './tokens-of.ts';

/** Composites whose halves are often asked for by themselves, both of an element that stands once in the resource. */
const joins = [
  { first: 'code', second: 'value-concept', pair: 'code-value-concept' },
  { first: 'code', second: 'data-absent-reason', pair: 'code-data-absent-reason' },
] as const;

/** More pairs than this are looked up slower than they are found one by one. Judged. */
const mostPairs = 64;

/**
 * The same filters, with a code and its value asked for as one where the index has them together. Two values that are common
 * each and seldom meet are the dearest question there is; together they are one look-up.
 */
export function joined(type: string, filters: readonly Filter[]): readonly Filter[] {
  const known = parametersOf(type);
  return joins.reduce<readonly Filter[]>((list, { first, second, pair }) => {
    if (!known.has(pair)) return list;
    const [one, other] = [codedFilter(list, first), codedFilter(list, second)];
    if (one === undefined || other === undefined) return list;
    const both = pairsOf(pair, one, other);
    return both.anyOf.length > mostPairs
      ? list
      : [...list.filter((filter) => filter !== one && filter !== other), both];
  }, filters);
}

function pairsOf(param: string, one: TokenFilter, other: TokenFilter): PairFilter {
  return {
    kind: 'pair',
    param,
    anyOf: one.anyOf.flatMap((first) => other.anyOf.map((second) => ({ first, second }))),
  };
}

function codedFilter(filters: readonly Filter[], param: string): TokenFilter | undefined {
  return filters.find(
    (filter): filter is TokenFilter =>
      filter.kind === 'token' &&
      filter.param === param &&
      !filter.negated &&
      filter.orIds === undefined &&
      filter.anyOf.every(isCoded),
  );
}

/** What has no code has no part in a pair. */
function isCoded({ system, code }: TokenPattern): boolean {
  return code !== undefined && code !== '' && system !== exactSystem;
}
