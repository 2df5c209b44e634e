import sql, { empty, join, raw, type Sql } from 'sql-template-tag';
import type { SearchQuery } from '../../search/query.ts';
import type { Session } from '../engine.ts';
import { bitsOfPart, type ParameterIds, partOf } from '../index/layout.ts';
import { numberOfType, type StoredType } from '../index/stored-types.ts';
import { present } from '../index/tokens.ts';
import type { VersionRow } from '../versions.ts';
import { keysIn } from './keys.ts';
import { type KnownAnswers, textOf } from './look-up.ts';
import { type MaskFilter, maskOf, type PlannedFilter } from './plan.ts';

/** Where a page ended: the place of its last match in the order that was asked for. */
export interface Position {
  /** Clinical date, time of the last change, or id. */
  readonly value: number | string;
  readonly key: number;
}

/** A match with where its content lies. */
export interface MatchRow extends VersionRow {
  readonly key: number;
}

export interface Page {
  readonly rows: readonly MatchRow[];
  /** Absent on the last page. */
  readonly next?: Position;
}

/** A list of tokens may drive a search from this many rows downwards; above, the whole type is walked through in order. */
const fewRows = 2_000;
/** The same where every match is counted: each row of the start is looked at then, so that a rarer start soon pays. */
const manyRows = 100_000;

/** So many lists of postings are merged for a page; of more the rows are counted first. */
const mostLists = 32;

/** Which of the matching parts are wanted: those after a place, in an order, and no more than a number. */
interface Wanted {
  readonly after?: Sql;
  readonly order?: Sql;
  readonly atMost?: number;
}

/** Parts with the mask of those that pass every filter, as `(moment, part, m)`, each part once. */
export interface MatchingParts {
  readonly query: (wanted?: Wanted) => Sql;
}

/**
 * Chooses where the search starts: at the postings of the rarest value that is asked for, or at all resources of the
 * type. Every other filter is then a look-up by part.
 */
export async function matchingParts(
  session: Session,
  parameters: ParameterIds,
  query: SearchQuery,
  filters: readonly PlannedFilter[],
  known?: KnownAnswers,
): Promise<MatchingParts> {
  const isCounted = query.count === 0 || query.total === 'accurate';
  const isPaged = !isCounted && query.sort.by === 'date';
  const any = parameters.number(query.type as StoredType, '_id');
  const start = await startOf(any, filters, { isCounted, isPaged }, (few, most) =>
    countUpTo(session, few, most, known),
  );
  const others = filters.filter((filter): filter is MaskFilter => filter !== start.filter && filter.kind !== 'moment');
  const masks = [sql`d.mask`, ...others.map(maskOf)];
  const moments = filters.flatMap((filter) => (filter.kind === 'moment' ? [filter.condition] : []));
  const parts = others.flatMap((filter) => (filter.kind === 'masks' ? [inParts([...filter.masks.keys()])] : []));
  return {
    query({ after = empty, order, atMost } = {}) {
      const first = (count: number) => (atMost === undefined ? empty : sql`LIMIT ${raw(String(atMost * count))}`);
      const rowsOf = (conditions: readonly Sql[], count: number) => sql`
        SELECT moment, part, m FROM (
          SELECT d.moment, d.part, ${join(masks, ' & ')} AS m FROM posting AS d
          WHERE ${join([...conditions, ...moments, ...parts], ' AND ')} ${after}
        ) AS found WHERE m <> 0 ${order ?? empty} ${first(count)}`;
      // The first parts of all lists together are among the first of each.
      const merged = order === undefined || atMost === undefined ? undefined : start.lists;
      const rows =
        merged === undefined
          ? // So many rows hold the first parts whole, and no more of them need be joined.
            rowsOf(start.conditions, start.rowsOfPart)
          : join(
              merged.map((list) => sql`SELECT * FROM (${rowsOf([list], 1)}) AS one`),
              ' UNION ALL ',
            );
      if (start.rowsOfPart === 1) return rows;
      return sql`
        SELECT moment, part, bit_or(m) AS m FROM (${rows}) AS rows GROUP BY moment, part ${order ?? empty} ${first(1)}`;
    },
  };
}

function inParts(parts: readonly number[]): Sql {
  return parts.length === 0 ? sql`1 = 0` : sql`d.part IN (${join(parts)})`;
}

type TokensFilter = Extract<PlannedFilter, { kind: 'tokens' }>;

interface Start {
  readonly filter: PlannedFilter | undefined;
  /** Which rows of `posting` it walks through. */
  readonly conditions: readonly Sql[];
  /** The most of them that a part can have. */
  readonly rowsOfPart: number;
  /** The same rows as lists, each of which the index has in order. */
  readonly lists?: readonly Sql[];
}

async function startOf(
  anyParam: number,
  filters: readonly PlannedFilter[],
  { isCounted, isPaged }: { readonly isCounted: boolean; readonly isPaged: boolean },
  countsOf: (filters: readonly TokensFilter[], most: number) => Promise<readonly number[]>,
): Promise<Start> {
  const candidates = filters.filter((filter): filter is TokensFilter => filter.kind === 'tokens' && !filter.isNegated);
  const nothing = candidates.find(({ ids }) => ids.length === 0);
  const everything = postingsOf(anyParam, present);
  if (nothing !== undefined) return { filter: undefined, conditions: [sql`1 = 0`], rowsOfPart: 1 };
  const isSingle = (filter: TokensFilter) => rowsOfPart(filter) === 1;
  const [only] = candidates;
  if (candidates.length === 1 && only !== undefined && isSingle(only)) return { filter: only, ...postingsOfOne(only) };
  if (isPaged && candidates.length === 1 && only !== undefined && rowsOfPart(only) <= mostLists) return startAt(only);
  const rarest = async (most: number) => {
    const counts = await countsOf(candidates, most);
    let best: TokensFilter | undefined;
    let fewest = most;
    for (const [index, candidate] of candidates.entries()) {
      const rows = counts[index] ?? most;
      if (rows >= fewest && (best !== undefined || !isSingle(candidate))) continue;
      best = candidate;
      fewest = Math.min(rows, fewest);
    }
    return { best, fewest };
  };
  let { best, fewest } = await rarest(fewRows);
  if (isCounted && fewest === fewRows && candidates.length > 1) ({ best, fewest } = await rarest(manyRows));
  if (best === undefined) return { filter: undefined, ...everything };
  if (isSingle(best)) return { filter: best, ...postingsOfOne(best) };
  return startAt(best);
}

function rowsOfPart({ params, ids }: TokensFilter): number {
  return params.length * ids.length;
}

function startAt(filter: TokensFilter): Start {
  const rows = rowsOfPart(filter);
  const lists = filter.params.flatMap((param) => filter.ids.map((id) => sql`d.param = ${param} AND d.token = ${id}`));
  return {
    filter,
    conditions: [areOf(filter)],
    rowsOfPart: rows,
    ...(rows <= mostLists && { lists }),
  };
}

function postingsOfOne({ params, ids }: TokensFilter): Omit<Start, 'filter'> {
  return postingsOf(params[0] as number, ids[0] as number);
}

function areOf({ params, ids }: TokensFilter): Sql {
  return sql`param IN (${join(params)}) AND token IN (${join(ids)})`;
}

function postingsOf(param: number, token: number): Omit<Start, 'filter'> {
  return { conditions: [sql`d.param = ${param} AND d.token = ${token}`], rowsOfPart: 1 };
}

/** Rows of each filter, counted no further than the fewest of those before it. */
async function countUpTo(
  session: Session,
  filters: readonly TokensFilter[],
  mostRows: number,
  known?: KnownAnswers,
): Promise<readonly number[]> {
  if (filters.length === 0) return [];
  const names = filters.map((_, index) => raw(`c${index}`));
  const counts = filters.map((filter, index) => {
    const most = index === 0 ? sql`${mostRows}` : sql`(SELECT rows FROM ${names[index - 1] as Sql})`;
    return sql`${names[index] as Sql} AS (SELECT count(*) AS rows FROM (SELECT 1 FROM posting WHERE ${areOf(filter)} LIMIT ${most}) AS few)`;
  });
  const each = names.map((name) => sql`(SELECT rows FROM ${name}) AS ${name}`);
  const question = sql`WITH ${join(counts)} SELECT ${join(each)}`;
  const answers = known?.asOf(session);
  const answered = answers?.get(textOf(question));
  if (answered !== undefined) return answered;
  const [row] = await session.all<Record<string, number>>(question);
  const found = Object.values(row ?? {});
  answers?.set(textOf(question), found);
  return found;
}

const matchColumns = sql`r.key, r.type, r.id, r.version, r.updated, r.chunk, r.slot`;

/** One page in the order of the clinical date; the resources of one part follow each other in the order of their exam. */
export async function pageByDate(
  session: Session,
  parts: MatchingParts,
  { sort, count }: SearchQuery,
  from: Position | undefined,
  known?: KnownRows,
): Promise<Page> {
  const isDown = sort.direction === 'descending';
  const fromPart = from === undefined ? undefined : partOf(from.key);
  const after =
    from === undefined
      ? empty
      : isDown
        ? sql`AND (d.moment, d.part) <= (${from.value}, ${fromPart})`
        : sql`AND (d.moment, d.part) >= (${from.value}, ${fromPart})`;
  const order = isDown ? sql`ORDER BY moment DESC, part DESC` : sql`ORDER BY moment, part`;
  // Each part holds a match at least, but the first may hold only such as the page before has shown.
  const few = parts.query({ after, order, atMost: count + 2 });
  const { rows: found, momentOf } = await (session.dialect === 'postgres'
    ? rowsOfParts(session, few, order, count + 1, from)
    : rowsOfPartsInTurn(session, few, count + 1, from, known));
  const rows = found.slice(0, count);
  const last = rows.at(-1);
  if (found.length <= count || last === undefined) return { rows };
  return { rows, next: { value: momentOf(last), key: last.key } };
}

interface DatedRows {
  readonly rows: readonly MatchRow[];
  readonly momentOf: (row: MatchRow) => number;
}

/** Parts and their resources with one statement, since a round trip is most of what a small page costs. */
async function rowsOfParts(
  session: Session,
  parts: Sql,
  order: Sql,
  most: number,
  from: Position | undefined,
): Promise<DatedRows> {
  const shown = from === undefined ? empty : sql`AND (p.part <> ${partOf(from.key)} OR r.key > ${from.key})`;
  const rows = await session.all<MatchRow & { moment: number }>(
    sql`SELECT ${matchColumns}, p.moment FROM (${parts}) AS p CROSS JOIN generate_series(0, ${raw(String(bitsOfPart - 1))}) AS b(n)
        JOIN resource AS r ON r.key = p.part * ${bits} + b.n
        WHERE ((p.m >> b.n) & 1) = 1 ${shown} ${order}, r.key LIMIT ${raw(String(most))}`,
  );
  return { rows, momentOf: ({ key }) => rows.find((row) => row.key === key)?.moment as number };
}

/** The same where a statement costs little and a join over every bit more. */
async function rowsOfPartsInTurn(
  session: Session,
  parts: Sql,
  most: number,
  from: Position | undefined,
  known: KnownRows | undefined,
): Promise<DatedRows> {
  const fromPart = from === undefined ? undefined : partOf(from.key);
  const isNew = (key: number): boolean => partOf(key) !== fromPart || key > (from?.key ?? -1);
  const found = await session.all<{ moment: number; part: number; m: number }>(parts);
  const keys = found.flatMap(({ part, m }) => keysIn(part, m).filter(isNew));
  return {
    rows: await rowsAt(session, keys.slice(0, most), known),
    momentOf: ({ key }) => found.find(({ part }) => part === partOf(key))?.moment as number,
  };
}

/** Rows kept from one page to the next: some 20 MB. */
const mostRows = 100_000;

/**
 * Rows that pages have shown, by key. A row never changes and its key is never given to another; a correction or an
 * erasure takes the key out of the index, so that nobody comes to ask for it.
 */
export type KnownRows = Map<number, MatchRow>;

/**
 * The resources of these keys, in their order.
 * @param known rows that need not be read again; only with a session that sees what is committed and nothing else
 */
export async function rowsAt(session: Session, keys: readonly number[], known?: KnownRows): Promise<MatchRow[]> {
  if (known === undefined) return readRowsAt(session, keys);
  // Held here, for another page may empty what is known meanwhile.
  const rows = keys.map((key) => known.get(key));
  const missing = keys.filter((_, index) => rows[index] === undefined);
  const read = new Map((await readRowsAt(session, missing)).map((row) => [row.key, row]));
  if (known.size + read.size > mostRows) known.clear();
  for (const [key, row] of read) known.set(key, row);
  return keys.flatMap((key, index) => rows[index] ?? read.get(key) ?? []);
}

/** The same, out of the tables. */
async function readRowsAt(session: Session, keys: readonly number[]): Promise<MatchRow[]> {
  if (keys.length === 0) return [];
  if (session.dialect === 'sqlite') {
    // Goes through the list in its order.
    return session.all<MatchRow>(
      sql`SELECT ${matchColumns} FROM json_each(${JSON.stringify(keys)}) AS k CROSS JOIN resource AS r ON r.key = k.value`,
    );
  }
  const rows = await session.all<MatchRow>(
    sql`SELECT ${matchColumns} FROM resource AS r WHERE r.key = ANY (${keys}::bigint[])`,
  );
  const byKey = new Map(rows.map((row) => [row.key, row]));
  return keys.flatMap((key) => byKey.get(key) ?? []);
}

/** Written out, since SQLite takes a bound number for a fraction and would divide accordingly. */
const bits = raw(String(bitsOfPart));

/** One page in the order of ids or of the last change. */
export async function pageByResource(
  session: Session,
  parts: MatchingParts,
  { type, sort, count }: SearchQuery,
  from: Position | undefined,
): Promise<Page> {
  const column = sort.by === '_id' ? sql`r.id` : sql`r.updated`;
  const isDown = sort.direction === 'descending';
  const after =
    from === undefined
      ? empty
      : isDown
        ? sql`AND (${column}, r.key) < (${from.value}, ${from.key})`
        : sql`AND (${column}, r.key) > (${from.value}, ${from.key})`;
  const order = isDown ? sql`ORDER BY ${column} DESC, r.key DESC` : sql`ORDER BY ${column}, r.key`;
  const rows = await session.all<MatchRow>(
    sql`SELECT ${matchColumns} FROM resource AS r JOIN (${parts.query()}) AS p ON p.part = r.key / ${bits}
        WHERE r.type = ${numberOfType(type as StoredType)} AND ((p.m >> (CAST(r.key % ${bits} AS integer))) & 1) = 1 ${after} ${order} LIMIT ${count + 1}`,
  );
  const page = rows.slice(0, count);
  const last = page.at(-1);
  if (rows.length <= count || last === undefined) return { rows: page };
  return { rows: page, next: { value: sort.by === '_id' ? last.id : last.updated, key: last.key } };
}

/**
 * Number of all matches.
 * @param mostParts undefined when there are more parts than this to be looked at; pass none for the number at any cost
 */
export async function countMatches(
  session: Session,
  parts: MatchingParts,
  mostParts?: number,
): Promise<number | undefined> {
  const few = parts.query(mostParts === undefined ? {} : { atMost: mostParts + 1 });
  const [row] = await session.all<{ rows: number; matches: number | null }>(
    sql`SELECT count(*) AS rows, sum(popcount(m)) AS matches FROM (${few}) AS counted`,
  );
  if (row === undefined || (mostParts !== undefined && row.rows > mostParts)) return undefined;
  return row.matches ?? 0;
}
