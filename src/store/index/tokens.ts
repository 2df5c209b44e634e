import sql, { join, type Sql } from 'sql-template-tag';
import type { IndexEntries, Token } from '../../search/index-entries.ts';
import type { Session } from '../engine.ts';

/** In place of a token: whatever the value, the resource has one. */
export const present = 0;

/** Kinds by the number under which a store knows them; new ones at the end. `pair` is made of the numbers of two others. */
export const tokenKinds = [
  'coding',
  'reference',
  'reference-identifier',
  'string',
  'uri',
  'pair',
  // Text of a concept that is not the display of one of its codings.
  'text',
] as const;
export type TokenKind = (typeof tokenKinds)[number];

/** One row of the dictionary. */
export interface TokenRow {
  readonly kind: number;
  readonly system: string;
  readonly code: string;
  readonly body: string | null;
}

/** Numbers of the tokens that are in use in one write. */
export interface TokenIds {
  id(token: Token): number;
  pair(first: Token, second: Token): number;
}

/** Tokens known by number in this process; forgotten all at once when there are too many. */
const mostKnown = 500_000;

/** Rows of one statement; a database takes only so many values. */
const rowsOfStatement = 400;

/** Kinds that may name a person or quote somebody. They go with the last exam that has them. */
const personalKinds: ReadonlySet<number> = new Set(
  (['reference', 'reference-identifier', 'string', 'text'] as const).map(numberOfKind),
);

/**
 * Whether a token says something of one person or exam. Codings are identifiers too, which have no text; a code without
 * one that is taken for an identifier is only looked up once more.
 */
export function isPersonal({ kind, body }: TokenRow): boolean {
  return personalKinds.has(kind) || (kind === numberOfKind('coding') && body === null);
}

/**
 * Values become small numbers, each once. What was read stays true but for personal tokens, which may be erased, so a
 * process may remember the others; what a transaction added is remembered only after it was committed.
 */
export class TokenDictionary {
  readonly #known = new Map<string, number>();
  /** The same by token, for tokens that come again and again as the same object. */
  readonly #ofToken = new WeakMap<Token, number>();

  /**
   * Numbers for everything that the entries name.
   * @returns also `remember`, to be called once the transaction is committed
   */
  async number(
    session: Session,
    entries: readonly IndexEntries[],
  ): Promise<{ readonly ids: TokenIds; readonly remember: () => void }> {
    const found = new Map<string, number>();
    const ofFound = new Map<Token, number>();
    const byKey = (key: string) => {
      const number = found.get(key) ?? this.#known.get(key);
      if (number === undefined) throw new RangeError('A token was not numbered.');
      return number;
    };
    const number = async (rows: ReadonlyMap<string, TokenRow>) => {
      const missing = [...rows].filter(([key]) => !found.has(key) && !this.#known.has(key));
      for (const [key, n] of await numbersOf(session, new Map(missing))) found.set(key, n);
    };
    const fresh = new Map<Token, string>();
    const singles = new Map<string, TokenRow>();
    for (const token of entries.flatMap(singleTokens)) {
      if (this.#ofToken.has(token) || fresh.has(token)) continue;
      const row = tokenRow(token);
      fresh.set(token, rowKey(row));
      singles.set(rowKey(row), row);
    }
    await number(singles);
    for (const [token, key] of fresh) ofFound.set(token, byKey(key));
    const id = (token: Token) => this.#ofToken.get(token) ?? ofFound.get(token) ?? byKey(rowKey(tokenRow(token)));

    const pairs = new Map<string, TokenRow>();
    for (const { first, second } of entries.flatMap((one) => one.pairs)) {
      const row = pairRow(id(first), id(second));
      pairs.set(rowKey(row), row);
    }
    await number(pairs);
    return {
      ids: { id, pair: (first, second) => byKey(rowKey(pairRow(id(first), id(second)))) },
      remember: () => {
        if (this.#known.size + found.size > mostKnown) this.#known.clear();
        for (const [key, n] of found) {
          const row = singles.get(key);
          if (row === undefined || !isPersonal(row)) this.#known.set(key, n);
        }
        for (const [token, n] of ofFound) if (!isPersonal(tokenRow(token))) this.#ofToken.set(token, n);
      },
    };
  }
}

function rowKey({ kind, system, code }: TokenRow): string {
  return `${kind} ${system} ${code}`;
}

function tokenRow({ kind, system, code, text }: Token): TokenRow {
  if (kind === 'coding' && system === '' && code === '' && text !== undefined) {
    return { kind: numberOfKind('text'), system: '', code: text, body: text };
  }
  return { kind: numberOfKind(kind), system, code, body: text ?? null };
}

function pairRow(first: number, second: number): TokenRow {
  return { kind: numberOfKind('pair'), system: String(first), code: String(second), body: null };
}

export function numberOfKind(kind: TokenKind): number {
  return tokenKinds.indexOf(kind);
}

function singleTokens({ tokens, pairs, ranges }: IndexEntries): Token[] {
  return [
    ...tokens.map(({ token }) => token),
    ...pairs.flatMap(({ first, second }) => [first, second]),
    ...ranges.flatMap(({ unit, of }) => [unit ?? [], of ?? []].flat()),
  ];
}

/** Numbers of the personal tokens of the entries, as far as the dictionary has them. */
export async function personalTokens(session: Session, entries: readonly IndexEntries[]): Promise<number[]> {
  const elsewhere = new Set(
    entries.flatMap(({ pairs, ranges }) =>
      singleTokens({ at: null, tokens: [], links: [], pairs, ranges }).map((token) => rowKey(tokenRow(token))),
    ),
  );
  const rows = new Map<string, TokenRow>();
  for (const { token } of entries.flatMap(({ tokens }) => tokens)) {
    const row = tokenRow(token);
    if (isPersonal(row) && !elsewhere.has(rowKey(row))) rows.set(rowKey(row), row);
  }
  const found = new Map<string, number>();
  const wanted = [...rows.values()];
  for (let start = 0; start < wanted.length; start += rowsOfStatement) {
    await lookUp(session, wanted.slice(start, start + rowsOfStatement), found);
  }
  return [...found.values()];
}

/** In one order for all writers, so that two of them never wait for each other's tokens. */
async function numbersOf(session: Session, rows: ReadonlyMap<string, TokenRow>): Promise<Map<string, number>> {
  const found = new Map<string, number>();
  const sorted = [...rows].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, row]) => row);
  for (let start = 0; start < sorted.length; start += rowsOfStatement) {
    const group = sorted.slice(start, start + rowsOfStatement);
    await lookUp(session, group, found);
    const missing = group.filter((row) => !found.has(rowKey(row)));
    if (missing.length === 0) continue;
    const values = missing.map(({ kind, system, code, body }) => [kind, system, code, body]);
    await session.insert('token', tokenColumns, values, 'ON CONFLICT DO NOTHING');
    await lookUp(session, missing, found);
  }
  return found;
}

const tokenColumns = { kind: 'smallint', system: 'text', code: 'text', body: 'text' } as const;

async function lookUp(session: Session, rows: readonly TokenRow[], found: Map<string, number>): Promise<void> {
  const wanted: Sql[] = rows.map(({ kind, system, code }) => sql`(${kind}, ${system}, ${code})`);
  const query =
    session.dialect === 'postgres'
      ? sql`SELECT token.n, token.kind, token.system, token.code FROM token
            JOIN unnest(${rows.map(({ kind }) => kind)}::smallint[], ${rows.map(({ system }) => system)}::text[],
              ${rows.map(({ code }) => code)}::text[]) AS wanted (kind, system, code)
            USING (kind, system, code)`
      : sql`SELECT n, kind, system, code FROM token WHERE (kind, system, code) IN (VALUES ${join(wanted)})`;
  for (const row of await session.all<TokenRow & { n: number }>(query)) found.set(rowKey(row), row.n);
}
