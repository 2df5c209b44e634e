import sql, { join, type Sql } from 'sql-template-tag';
import type { ReferenceFilter, TextFilter, TokenPattern } from '../../search/query.ts';
import { exactSystem } from '../../search/tokens-of.ts';
import { numberOfKind, type TokenKind } from '../index/tokens.ts';
import type { LookUp } from './look-up.ts';

/** Numbers of the codings, identifiers or codes that fit one of the patterns. */
export function tokensLike(
  lookUp: LookUp,
  patterns: readonly TokenPattern[],
  kind: TokenKind = 'coding',
): Promise<readonly number[]> {
  return numbers(lookUp, kind, patterns.map(fits));
}

/**
 * Numbers of what a token of a search may mean, in one question: codings, addresses where no system was named, and strings
 * to the letter where theirs was.
 */
export function tokensMeant(lookUp: LookUp, patterns: readonly TokenPattern[]): Promise<readonly number[]> {
  const exact = patterns.filter(({ system }) => system === exactSystem);
  const addresses = patterns.flatMap(({ system, code }) => (system === undefined && code !== undefined ? [code] : []));
  return lookUp([
    ...ofKind('coding', patterns.map(fits)),
    ...ofKind('string', exact.map(fits)),
    ...ofKind(
      'uri',
      addresses.map((code) => sql`code = ${code}`),
    ),
  ]);
}

/** Numbers of references, each given with or without its type. */
export function referencesTo(lookUp: LookUp, { anyOf, byIdentifier }: ReferenceFilter): Promise<readonly number[]> {
  if (byIdentifier !== undefined) return tokensLike(lookUp, byIdentifier, 'reference-identifier');
  return numbers(
    lookUp,
    'reference',
    anyOf.map((text) => {
      const relative = /^(?<type>[A-Z][A-Za-z]+)\/(?<id>[A-Za-z0-9.-]{1,64})$/.exec(text)?.groups;
      return relative === undefined ? sql`code = ${text}` : sql`(system = ${relative.type} AND code = ${relative.id})`;
    }),
  );
}

/** Numbers of strings, or of codings by their display or text. */
export async function tokensSaying(lookUp: LookUp, filter: TextFilter): Promise<readonly number[]> {
  const pattern = (text: string) => {
    const escaped = text.replace(/[\\%_]/g, (sign) => `\\${sign}`);
    return { start: `${escaped}%`, contain: `%${escaped}%`, exact: escaped }[filter.match];
  };
  const columnFits = (column: Sql) => filter.anyOf.map((text) => sql`${column} LIKE ${pattern(text)} ESCAPE '\\'`);
  const found = await Promise.all([
    // A string stands there twice: folded, and to the letter under a system of its own.
    numbers(
      lookUp,
      'string',
      columnFits(sql`code`).map((fits) => sql`(system = '' AND ${fits})`),
    ),
    numbers(lookUp, 'coding', columnFits(sql`body`)),
    numbers(lookUp, 'text', columnFits(sql`code`)),
  ]);
  return found.flat();
}

/** Numbers of pairs whose halves are among those given. */
export async function pairsOf(
  lookUp: LookUp,
  first: readonly number[],
  second: readonly number[],
): Promise<readonly number[]> {
  if (first.length === 0 || second.length === 0) return [];
  return numbers(lookUp, 'pair', [
    sql`(system IN (${join(first.map(String))}) AND code IN (${join(second.map(String))}))`,
  ]);
}

function fits({ system, code }: TokenPattern): Sql {
  const parts = [
    ...(system === undefined ? [] : [sql`system = ${system}`]),
    ...(code === undefined ? [] : [sql`code = ${code}`]),
  ];
  return parts.length === 0 ? sql`1 = 1` : sql`(${join(parts, ' AND ')})`;
}

function numbers(lookUp: LookUp, kind: TokenKind, conditions: readonly Sql[]): Promise<readonly number[]> {
  return lookUp(ofKind(kind, conditions));
}

/** Each with its kind, so that an index can be followed whatever stands beside it. */
function ofKind(kind: TokenKind, conditions: readonly Sql[]): Sql[] {
  return conditions.map((condition) => sql`(kind = ${numberOfKind(kind)} AND ${condition})`);
}
