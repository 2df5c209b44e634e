import sql, { join, type Sql } from 'sql-template-tag';
import type { Filter, RangePattern, SearchQuery, TokenPattern } from '../../search/query.ts';
import type { Session } from '../engine.ts';
import { noMoment, type ParameterIds } from '../index/layout.ts';
import type { StoredType } from '../index/stored-types.ts';
import { present } from '../index/tokens.ts';
import { keysOfIds, keysReferringTo, type PartMasks } from './keys.ts';
import { gatheredLookUps, type KnownAnswers, type LookUp } from './look-up.ts';
import { pairsOf, referencesTo, tokensLike, tokensMeant, tokensSaying } from './token-lookup.ts';

/**
 * A filter in terms of the index. What a part contributes is a mask of the resources that pass; `d` is the row of the
 * part in question.
 */
export type PlannedFilter =
  /** Those with one of the tokens, or with none of them. */
  | {
      readonly kind: 'tokens';
      readonly params: readonly number[];
      readonly ids: readonly number[];
      readonly isNegated: boolean;
    }
  | { readonly kind: 'range'; readonly params: readonly number[]; readonly condition: Sql }
  /** All of a part or nothing: the clinical date is the same for the whole of it. */
  | { readonly kind: 'moment'; readonly condition: Sql }
  | { readonly kind: 'masks'; readonly masks: PartMasks }
  /** Those of the tokens and those of the masks together, or all others. */
  | { readonly kind: 'either'; readonly of: readonly MaskFilter[]; readonly isNegated: boolean };

/** A filter that gives a mask. */
export type MaskFilter = Exclude<PlannedFilter, { kind: 'moment' }>;

export interface PlanTools {
  readonly session: Session;
  readonly parameters: ParameterIds;
  /** The parameter that asks for the clinical date of a type, where that is always exact to the second or better. */
  readonly exactDateOf: (type: StoredType) => string | undefined;
  /** What earlier searches of the session looked up. */
  readonly known?: KnownAnswers;
}

/** @throws RangeError for a parameter that the type does not have; the caller has checked that */
export async function planFilters(tools: PlanTools, query: SearchQuery): Promise<PlannedFilter[]> {
  const lookUp = gatheredLookUps(tools.session, tools.known);
  return Promise.all(query.filters.map((filter) => planFilter(tools, lookUp, query.type as StoredType, filter)));
}

async function planFilter(tools: PlanTools, lookUp: LookUp, type: StoredType, filter: Filter): Promise<PlannedFilter> {
  const { session, parameters, exactDateOf } = tools;
  switch (filter.kind) {
    case 'id':
      return { kind: 'masks', masks: await keysOfIds(session, type, filter.anyOf) };
    case 'link':
      return {
        kind: 'masks',
        masks: await keysReferringTo(session, parameters.number(type, filter.param), filter.anyOf),
      };
    case 'range':
      if (filter.param === exactDateOf(type)) {
        return { kind: 'moment', condition: anyOf(filter.anyOf, (range) => compared(range, momentEnds, true)) };
      }
      return {
        kind: 'range',
        params: parameters.under(type, filter.param),
        condition: await rangeCondition(lookUp, filter.anyOf),
      };
    default: {
      const params = parameters.under(type, filter.param);
      const isNegated = filter.kind === 'missing' ? filter.isMissing : filter.kind === 'token' && filter.negated;
      const ids = await idsOf(lookUp, params, filter);
      if (filter.kind !== 'token' || filter.orIds === undefined) return { kind: 'tokens', params, ids, isNegated };
      const masks = await keysOfIds(session, type, filter.orIds);
      return {
        kind: 'either',
        of: [
          { kind: 'tokens', params, ids, isNegated: false },
          { kind: 'masks', masks },
        ],
        isNegated,
      };
    }
  }
}

type TokenBased = Exclude<Filter, { kind: 'id' | 'link' | 'range' }>;

async function idsOf(lookUp: LookUp, params: readonly number[], filter: TokenBased): Promise<readonly number[]> {
  const lookUpUsed: LookUp = (conditions) => lookUp(conditions, params);
  switch (filter.kind) {
    case 'missing':
      return [present];
    case 'token':
      return tokensMeant(lookUpUsed, filter.anyOf);
    case 'reference':
      return referencesTo(lookUpUsed, filter);
    case 'text':
      return tokensSaying(lookUpUsed, filter);
    case 'pair': {
      const found = await Promise.all(
        filter.anyOf.map(async (pair) => {
          const [first, second] = await Promise.all([
            tokensLike(lookUp, [pair.first]),
            tokensLike(lookUp, [pair.second]),
          ]);
          return pairsOf(lookUpUsed, first, second);
        }),
      );
      return found.flat();
    }
  }
}

interface Ends {
  readonly low: Sql;
  readonly high: Sql;
}

const rangeEnds: Ends = { low: sql`low`, high: sql`high` };
/** A time without a fraction stands for its whole second. */
const momentEnds: Ends = {
  low: sql`d.moment`,
  high: sql`(d.moment + CASE WHEN d.moment % 1000 = 0 THEN 999 ELSE 0 END)`,
};

async function rangeCondition(lookUp: LookUp, patterns: readonly RangePattern[]): Promise<Sql> {
  const conditions = await Promise.all(
    patterns.map(async (range) => {
      const isAmong = async (column: Sql, pattern: TokenPattern | undefined) => {
        if (pattern === undefined) return [];
        const ids = await tokensLike(lookUp, [pattern]);
        return [ids.length === 0 ? sql`1 = 0` : sql`${column} IN (${join(ids)})`];
      };
      const conditions = [
        compared(range, rangeEnds, false),
        ...(await isAmong(sql`unit`, range.unit)),
        ...(await isAmong(sql`about`, range.of)),
      ];
      return sql`(${join(conditions, ' AND ')})`;
    }),
  );
  return join(conditions, ' OR ');
}

function anyOf(ranges: readonly RangePattern[], condition: (range: RangePattern) => Sql): Sql {
  return sql`(${join(ranges.map(condition), ' OR ')})`;
}

/**
 * How the range of a value stands to the range that was asked for.
 * Source: HL7 FHIR R4, Search, section 3.1.1.4.5 (prefixes).
 */
function compared({ prefix, low, high }: RangePattern, value: Ends, isMoment: boolean): Sql {
  const within = sql`(${value.low} >= ${low} AND ${value.low} <= ${high} AND ${value.high} <= ${high})`;
  const above = sql`${value.high} > ${high}`;
  const below = sql`${value.low} < ${low}`;
  // What has no date is neither before nor after one.
  const has = isMoment ? sql`${value.low} > ${noMoment}` : sql`1 = 1`;
  // Says nothing new of a moment, whose range is a second at most, but an index can follow it.
  const from = (bound: number) => (isMoment ? sql`${value.low} > ${bound - 1000}` : sql`1 = 1`);
  switch (prefix) {
    case 'eq':
      return within;
    case 'ne':
      return sql`(${has} AND NOT ${within})`;
    case 'gt':
      return sql`(${from(high)} AND ${above})`;
    case 'ge':
      return sql`(${from(Math.min(low, high))} AND (${above} OR ${within}))`;
    case 'lt':
      return sql`(${has} AND ${below})`;
    case 'le':
      return sql`(${has} AND (${below} OR ${within}))`;
    case 'sa':
      return sql`${value.low} > ${high}`;
    case 'eb':
      return sql`(${has} AND ${value.high} < ${low})`;
    case 'ap':
      return sql`(${has} AND ${value.low} <= ${high} AND ${value.high} >= ${low})`;
  }
}

/** The mask that a filter gives for the part of row `d`. */
export function maskOf(filter: MaskFilter): Sql {
  switch (filter.kind) {
    case 'tokens': {
      const { params, ids, isNegated } = filter;
      if (ids.length === 0) return isNegated ? sql`-1` : sql`0`;
      const found = ids.length * params.length === 1 ? sql`(SELECT mask` : sql`(SELECT bit_or(mask)`;
      const mask = sql`coalesce(${found} FROM posting WHERE param IN (${join(params)}) AND token IN (${join(ids)}) AND moment = d.moment AND part = d.part), 0)`;
      return isNegated ? sql`~${mask}` : mask;
    }
    case 'range':
      return sql`coalesce((SELECT bit_or(mask) FROM range_posting WHERE param IN (${join(filter.params)}) AND moment = d.moment AND part = d.part AND (${filter.condition})), 0)`;
    case 'masks': {
      const cases = [...filter.masks].map(
        ([part, mask]) => sql`WHEN CAST(${part} AS bigint) THEN CAST(${mask} AS bigint)`,
      );
      return cases.length === 0 ? sql`0` : sql`(CASE d.part ${join(cases, ' ')} ELSE 0 END)`;
    }
    case 'either': {
      const mask = sql`(${join(filter.of.map(maskOf), ' | ')})`;
      return filter.isNegated ? sql`~${mask}` : mask;
    }
  }
}
