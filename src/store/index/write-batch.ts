import sql from 'sql-template-tag';
import type { Identified } from '../../fhir/entry.ts';
import { indexEntriesOf } from '../../search/extract.ts';
import type { IndexEntries } from '../../search/index-entries.ts';
import type { Session } from '../engine.ts';
import { ChunkCache } from './chunk-cache.ts';
import {
  bitsOfPart,
  chunksOfBatch,
  layOut,
  type ParameterIds,
  packLayout,
  partsOfBatch,
  unpackLayout,
} from './layout.ts';
import { type Line, lineOf, packLines, unpackLines } from './lines.ts';
import { numberOfType, type StoredType, storedTypes } from './stored-types.ts';
import type { TokenDictionary } from './tokens.ts';

export interface IndexTools {
  readonly tokens: TokenDictionary;
  readonly parameters: ParameterIds;
}

/** Where a version of a resource lies. */
interface Place {
  readonly chunk: number;
  readonly slot: number;
}

interface ResourceRow extends Place {
  readonly key: number;
  readonly type: number;
  readonly id: string;
  readonly version: number;
  readonly updated: number;
}

/** What a batch will hold: something new or changed has a line to be written, something that stays has its place. */
interface Held {
  readonly resource: Identified;
  readonly line: Line;
  readonly version: number;
  readonly updated: number;
  readonly place: Place | null;
}

/** Whose resources a batch holds. */
export interface BatchOwner {
  /** Number and version of the exam; null for resources that belong to none. */
  readonly exam: { readonly n: number; readonly version: number } | null;
  /** Number of the batch that this one takes the place of. */
  readonly replaces: number | null;
}

/**
 * Keeps what one version of an exam brings. Software is the same for many exams and is kept once, with the first of them.
 * @returns to be called once the transaction is committed
 */
export async function writeExamResources(
  session: Session,
  tools: IndexTools,
  exam: { readonly n: number; readonly version: number },
  resources: readonly Identified[],
  now: number,
): Promise<() => void> {
  const own = resources.filter(({ resourceType }) => resourceType !== 'Device');
  const done: (() => void)[] = [];
  for (const resource of resources) {
    if (resource.resourceType !== 'Device' || (await isKept(session, 'Device', resource.id))) continue;
    done.push((await writeBatch(session, tools, { exam: null, replaces: null }, [resource], now)).remember);
  }
  const replaces = exam.version === 1 ? null : await batchOfExam(session, exam.n);
  done.push((await writeBatch(session, tools, { exam, replaces }, own, now)).remember);
  return () => {
    for (const remember of done) remember();
  };
}

/**
 * Keeps resources that belong together, and indexes them. With a batch to replace, what is there already with the same
 * content is left alone, what changed gets a new version while its earlier one stays in the history, and the batch's
 * other resources stay as they are.
 * @param now ms since 1970
 * @returns to be called once the transaction is committed
 */
export async function writeBatch(
  session: Session,
  tools: IndexTools,
  { exam, replaces }: BatchOwner,
  resources: readonly Identified[],
  now: number,
): Promise<{ readonly remember: () => void }> {
  const before = replaces === null ? [] : await resourcesOf(session, replaces);
  const held = await merge(session, before, resources, now);
  const fresh = held.filter(({ place }) => place === null);
  const packed = await packLines(fresh.map(({ line }) => line));
  const batch = await newBatch(session, exam, now);

  const entries = held.map(({ resource }) => indexedEntries(resource, tools.parameters));
  const { ids, remember } = await tools.tokens.number(session, entries);
  const laidOut = held.map(({ resource, updated }, index) => ({
    type: resource.resourceType as StoredType,
    id: resource.id,
    entries: entries[index] as (typeof entries)[number],
    updated,
  }));
  const layout = layOut(batch, laidOut, tools.parameters, ids);

  if (replaces !== null) await takeOut(session, replaces);
  const freshPlaces = packed.places.map(({ chunk, slot }) => ({ chunk: batch * chunksOfBatch + chunk, slot }));
  let next = 0;
  const rows = held.map(({ resource, version, updated, place }, index) => {
    const { chunk, slot } = place ?? (freshPlaces[next++] as Place);
    const type = numberOfType(resource.resourceType as StoredType);
    return [layout.keys[index], type, resource.id, version, updated, chunk, slot];
  });
  await session.insert(
    'chunk',
    { n: 'bigint', data: 'bytea' },
    packed.chunks.map((data, index) => [batch * chunksOfBatch + index, data]),
  );
  await session.insert('resource', resourceColumns, rows);
  await session.insert(
    'posting',
    postingColumns,
    [...layout.postings]
      .sort((a, b) => a.param - b.param || a.token - b.token || a.part - b.part)
      .map(({ param, token, moment, part, mask }) => [param, token, moment, part, mask]),
  );
  await session.insert(
    'range_posting',
    rangeColumns,
    layout.ranges.map(({ param, moment, part, about, unit, low, high, mask }) => [
      param,
      moment,
      part,
      about,
      unit,
      low,
      high,
      mask,
    ]),
  );
  await session.run(sql`UPDATE batch SET layout = ${packLayout(layout)} WHERE n = ${batch}`);
  return { remember };
}

/** Entries of every version that lies in the chunks of a batch. */
export async function entriesInBatch(session: Session, batch: number): Promise<IndexEntries[]> {
  const first = batch * chunksOfBatch;
  const chunks = await session.all<{ data: Buffer }>(
    sql`SELECT data FROM chunk WHERE n >= ${first} AND n < ${first + chunksOfBatch}`,
  );
  const lines = chunks.map(({ data }) => unpackLines(data));
  return lines.flat().map((line) => indexEntriesOf(JSON.parse(line) as Identified));
}

/** Without what is indexed under other parameters already. */
function indexedEntries(resource: Identified, parameters: ParameterIds): IndexEntries {
  const type = resource.resourceType as StoredType;
  const { at, tokens, pairs, ranges, links } = indexEntriesOf(resource);
  const isIndexed = ({ param }: { readonly param: string }) => parameters.isIndexed(type, param);
  return {
    at,
    tokens: tokens.filter(isIndexed),
    pairs: pairs.filter(isIndexed),
    ranges: ranges.filter(isIndexed),
    links,
  };
}

const resourceColumns = {
  key: 'bigint',
  type: 'smallint',
  id: 'text',
  version: 'integer',
  updated: 'bigint',
  chunk: 'bigint',
  slot: 'smallint',
};
const postingColumns = { param: 'integer', token: 'integer', moment: 'bigint', part: 'bigint', mask: 'bigint' };
const rangeColumns = {
  param: 'integer',
  moment: 'bigint',
  part: 'bigint',
  about: 'integer',
  unit: 'integer',
  low: 'double precision',
  high: 'double precision',
  mask: 'bigint',
};

/**
 * The time that a write is given, ms since 1970: where the clock went back, that of the write before. If a later one were
 * said to be older, whoever asks for what changed since would never hear of it, and a history would be out of order.
 */
export async function timeOfWrite(session: Session, now: number): Promise<number> {
  const [row] = await session.all<{ time: number }>(sql`SELECT written_at AS time FROM batch ORDER BY n DESC LIMIT 1`);
  return Math.max(now, row?.time ?? 0);
}

async function newBatch(session: Session, exam: { n: number; version: number } | null, now: number): Promise<number> {
  const rows = await session.all<{ n: number }>(
    sql`INSERT INTO batch (exam, version, written_at) VALUES (${exam?.n ?? null}, ${exam?.version ?? null}, ${now}) RETURNING n`,
  );
  return (rows[0] as { n: number }).n;
}

async function isKept(session: Session, type: StoredType, id: string): Promise<boolean> {
  const rows = await session.all(sql`SELECT 1 FROM resource WHERE type = ${numberOfType(type)} AND id = ${id}`);
  return rows.length > 0;
}

/** Number of the batch that holds an exam's resources; null when none does. */
export async function batchOfExam(session: Session, exam: number): Promise<number | null> {
  const [latest] = await session.all<{ n: number | null }>(sql`SELECT max(n) AS n FROM batch WHERE exam = ${exam}`);
  return latest?.n ?? null;
}

/** The resources of a batch as they stand, with their lines. */
export async function resourcesOf(session: Session, batch: number): Promise<(ResourceRow & { readonly line: Line })[]> {
  const rows = await session.all<ResourceRow>(
    sql`SELECT key, type, id, version, updated, chunk, slot FROM resource
        WHERE key >= ${firstKey(batch)} AND key < ${firstKey(batch + 1)} ORDER BY key`,
  );
  const lines = await linesAt(session, rows);
  return rows.map((row, index) => ({ ...row, line: lines[index] as Line }));
}

export function firstKey(batch: number): number {
  return batch * partsOfBatch * bitsOfPart;
}

/**
 * The lines at the places given, in their order; undefined where there is none.
 * @param cache only with a session that sees what is committed and nothing else
 */
export async function linesAt(
  session: Session,
  places: readonly Place[],
  cache = new ChunkCache(),
): Promise<(Line | undefined)[]> {
  const numbers = [...new Set(places.map(({ chunk }) => chunk))];
  const chunks = cache.find(numbers);
  const missing = numbers.filter((n) => !chunks.has(n));
  if (missing.length > 0) {
    const rows = await session.all<{ n: number; data: Buffer }>(
      session.dialect === 'postgres'
        ? sql`SELECT n, data FROM chunk WHERE n = ANY (${missing}::bigint[])`
        : sql`SELECT n, data FROM chunk WHERE n IN (SELECT value FROM json_each(${JSON.stringify(missing)}))`,
    );
    for (const { n, data } of rows) chunks.set(n, cache.open(n, data));
  }
  return places.map(({ chunk, slot }) => chunks.get(chunk)?.[slot]);
}

/** What the batch will hold: first what is given, then what stays of earlier batches. */
async function merge(
  session: Session,
  before: readonly (ResourceRow & { readonly line: Line })[],
  resources: readonly Identified[],
  now: number,
): Promise<Held[]> {
  const earlier = new Map(before.map((row) => [`${storedTypes[row.type]}/${row.id}`, row]));
  const held: Held[] = [];
  const changed: ResourceRow[] = [];
  for (const resource of resources) {
    const address = `${resource.resourceType}/${resource.id}`;
    const row = earlier.get(address);
    earlier.delete(address);
    const line = lineOf(resource);
    if (row === undefined) held.push({ resource, line, version: 1, updated: now, place: null });
    else if (row.line === line) held.push(stays(row, resource));
    else {
      changed.push(row);
      held.push({ resource, line, version: row.version + 1, updated: now, place: null });
    }
  }
  for (const row of earlier.values()) held.push(stays(row, JSON.parse(row.line) as Identified));
  await session.insert(
    'past_resource',
    { type: 'smallint', id: 'text', version: 'integer', updated: 'bigint', chunk: 'bigint', slot: 'smallint' },
    changed.map(({ type, id, version, updated, chunk, slot }) => [type, id, version, updated, chunk, slot]),
  );
  return held;
}

function stays({ line, version, updated, chunk, slot }: ResourceRow & { line: Line }, resource: Identified): Held {
  return { resource, line, version, updated, place: { chunk, slot } };
}

/** Takes a batch out of the index; its chunks stay, since the history lies in them. */
export async function takeOut(session: Session, batch: number): Promise<void> {
  const [found] = await session.all<{ layout: Buffer | null }>(sql`SELECT layout FROM batch WHERE n = ${batch}`);
  if (found?.layout == null) return;
  const { postings, ranges } = unpackLayout(found.layout);
  for (const [param, token, moment, part] of postings) {
    await session.run(
      sql`DELETE FROM posting WHERE param = ${param} AND token = ${token} AND moment = ${moment} AND part = ${part}`,
    );
  }
  for (const [param, moment, part] of ranges) {
    await session.run(sql`DELETE FROM range_posting WHERE param = ${param} AND moment = ${moment} AND part = ${part}`);
  }
  await session.run(sql`UPDATE batch SET layout = NULL WHERE n = ${batch}`);
  await session.run(sql`DELETE FROM resource WHERE key >= ${firstKey(batch)} AND key < ${firstKey(batch + 1)}`);
}
