import sql, { join, type Sql } from 'sql-template-tag';
import type { ReferenceFilter, TextFilter, TokenPattern } from '../../search/query.ts';
import { exactSystem } from '../../search/tokens-of.ts';
import type { Session } from '../engine.ts';
import { numberOfKind, type TokenKind } from '../index/tokens.ts';

/** Numbers of the codings, identifiers or codes that fit one of the patterns. */
export function tokensLike(
  session: Session,
  patterns: readonly TokenPattern[],
  kind: TokenKind = 'coding',
): Promise<number[]> {
  return numbers(session, kind, patterns.map(fits));
}

/**
 * Numbers of what a token of a search may mean, in one question: codings, addresses where no system was named, and strings
 * to the letter where theirs was.
 */
export function tokensMeant(session: Session, patterns: readonly TokenPattern[]): Promise<number[]> {
  const exact = patterns.filter(({ system }) => system === exactSystem);
  const addresses = patterns.flatMap(({ system, code }) => (system === undefined && code !== undefined ? [code] : []));
  return numbersOf(session, [
    ...ofKind('coding', patterns.map(fits)),
    ...ofKind('string', exact.map(fits)),
    ...ofKind(
      'uri',
      addresses.map((code) => sql`code = ${code}`),
    ),
  ]);
}

/** Numbers of references, each given with or without its type. */
export function referencesTo(session: Session, { anyOf, byIdentifier }: ReferenceFilter): Promise<number[]> {
  if (byIdentifier !== undefined) return tokensLike(session, byIdentifier, 'reference-identifier');
  return numbers(
    session,
    'reference',
    anyOf.map((text) => {
      const relative = /^(?<type>[A-Z][A-Za-z]+)\/(?<id>[A-Za-z0-9.-]{1,64})$/.exec(text)?.groups;
      return relative === undefined ? sql`code = ${text}` : sql`(system = ${relative.type} AND code = ${relative.id})`;
    }),
  );
}

/** Numbers of strings, or of codings by their display or text. */
export async function tokensSaying(session: Session, filter: TextFilter): Promise<number[]> {
  const pattern = (text: string) => {
    const escaped = text.replace(/[\\%_]/g, (sign) => `\\${sign}`);
    return { start: `${escaped}%`, contain: `%${escaped}%`, exact: escaped }[filter.match];
  };
  const columnFits = (column: Sql) => filter.anyOf.map((text) => sql`${column} LIKE ${pattern(text)} ESCAPE '\\'`);
  const found = await Promise.all([
    // A string stands there twice: folded, and to the letter under a system of its own.
    numbers(
      session,
      'string',
      columnFits(sql`code`).map((fits) => sql`(system = '' AND ${fits})`),
    ),
    numbers(session, 'coding', columnFits(sql`body`)),
    numbers(session, 'text', columnFits(sql`code`)),
  ]);
  return found.flat();
}

/** Numbers of pairs whose halves are among those given. */
export async function pairsOf(
  session: Session,
  first: readonly number[],
  second: readonly number[],
): Promise<number[]> {
  if (first.length === 0 || second.length === 0) return [];
  return numbers(session, 'pair', [
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

function numbers(session: Session, kind: TokenKind, conditions: readonly Sql[]): Promise<number[]> {
  return numbersOf(session, ofKind(kind, conditions));
}

/** Each with its kind, so that an index can be followed whatever stands beside it. */
function ofKind(kind: TokenKind, conditions: readonly Sql[]): Sql[] {
  return conditions.map((condition) => sql`(kind = ${numberOfKind(kind)} AND ${condition})`);
}

async function numbersOf(session: Session, conditions: readonly Sql[]): Promise<number[]> {
  if (conditions.length === 0) return [];
  const rows = await session.all<{ n: number }>(sql`SELECT n FROM token WHERE ${join(conditions, ' OR ')}`);
  return rows.map(({ n }) => n);
}
