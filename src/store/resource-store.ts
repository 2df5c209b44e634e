import sql, { empty, join, type Sql } from 'sql-template-tag';
import { ConflictError } from '../kernel/errors.ts';
import type { SearchQuery } from '../search/query.ts';
import { appendAudit } from './audit/append-audit.ts';
import type { Engine } from './engine.ts';
import { ChunkCache } from './index/chunk-cache.ts';
import { batchOf } from './index/layout.ts';
import { lineOf, servedLine } from './index/lines.ts';
import { isStoredType, numberOfType, type StoredType } from './index/stored-types.ts';
import { type IndexTools, timeOfWrite, writeBatch } from './index/write-batch.ts';
import type { HistoryQuery, ResourceRepository, SearchResult, StreamQuery } from './resource-repository.ts';
import {
  countMatches,
  type KnownRows,
  matchingParts,
  type Page,
  type Position,
  pageByDate,
  pageByResource,
  rowsAt,
} from './search/find-matches.ts';
import { includedKeys } from './search/includes.ts';
import { KnownAnswers } from './search/look-up.ts';
import { planFilters } from './search/plan.ts';
import { streamExams } from './stream-exams.ts';
import { openVersions, type VersionRow } from './versions.ts';

/** With more parts than this a total that nobody insists on is left out. */
const partsOfCheapTotal = 2_000;

/** Included resources of one page; more would be a download and not a page. */
const mostIncluded = 2_000;

const versionColumns = sql`type, id, version, updated, chunk, slot`;

/**
 * @param exactDateOf the parameter that asks for the clinical date of a type, where that is exact to the second or better
 */
export function createResourceStore(
  engine: Engine,
  tools: IndexTools,
  exactDateOf: (type: StoredType) => string | undefined,
): ResourceRepository {
  const session = engine.reader;
  const cache = new ChunkCache();
  const rows: KnownRows = new Map();
  const opened = (rows: readonly VersionRow[]) => openVersions(session, rows, cache);
  const planTools = { session, parameters: tools.parameters, exactDateOf, known: new KnownAnswers() };

  async function search(query: SearchQuery, from?: Position): Promise<SearchResult> {
    const filters = await planFilters(planTools, query);
    const parts = await matchingParts(session, tools.parameters, query, filters, planTools.known);
    const page: Page =
      query.count === 0
        ? { rows: [] }
        : await (query.sort.by === 'date' ? pageByDate : pageByResource)(session, parts, query, from, rows);
    const total = await totalOf(query, parts, from);
    const matches = await opened(page.rows);
    const keys = await includedKeys({ session, parameters: tools.parameters, search }, query, page.rows, mostIncluded);
    return {
      matches,
      included: await opened(await rowsAt(session, keys, rows)),
      ...(total === undefined ? {} : { total }),
      ...(page.next === undefined ? {} : { next: page.next }),
    };
  }

  async function totalOf(query: SearchQuery, parts: Awaited<ReturnType<typeof matchingParts>>, from?: Position) {
    if (query.total === 'none') return undefined;
    if (query.total === 'accurate') return countMatches(session, parts);
    return from === undefined ? countMatches(session, parts, partsOfCheapTotal) : undefined;
  }

  return {
    search,

    async read(type, id, version) {
      if (!isStoredType(type)) return undefined;
      const where = sql`type = ${numberOfType(type)} AND id = ${id}`;
      const ofVersion = version === undefined ? empty : sql`AND version = ${version}`;
      const current = await session.all<VersionRow>(
        sql`SELECT ${versionColumns} FROM resource WHERE ${where} ${ofVersion}`,
      );
      if (current.length > 0 || version === undefined) return (await opened(current))[0];
      const past = await session.all<VersionRow>(
        sql`SELECT ${versionColumns} FROM past_resource WHERE ${where} ${ofVersion}`,
      );
      return (await opened(past))[0];
    },

    async history(query) {
      return opened(await session.all<VersionRow>(historySql(query)));
    },

    async put(resource, now, { expectedVersion, audit, alongside } = {}) {
      const type = resource.resourceType as StoredType;
      const { value, remember } = await engine.write(async (writer) => {
        const [row] = await writer.all<{ key: number; version: number }>(
          sql`SELECT key, version FROM resource WHERE type = ${numberOfType(type)} AND id = ${resource.id}`,
        );
        if (expectedVersion !== undefined && row?.version !== expectedVersion) {
          const found = row === undefined ? 'There is no such resource' : `The resource is at version ${row.version}`;
          throw new ConflictError('VERSION_MISMATCH', `${found}; If-Match named version ${expectedVersion}.`);
        }
        await alongside?.(writer);
        const replaces = row === undefined ? null : batchOf(row.key);
        const { remember } = await writeBatch(
          writer,
          tools,
          { exam: null, replaces },
          [resource],
          await timeOfWrite(writer, now.getTime()),
        );
        const [kept] = await writer.all<VersionRow>(
          sql`SELECT ${versionColumns} FROM resource WHERE type = ${numberOfType(type)} AND id = ${resource.id}`,
        );
        if (audit !== undefined) await appendAudit(writer, [audit]);
        return { value: kept as VersionRow, remember };
      });
      remember();
      const { id, version, updated } = value;
      return { type, id, version, updated, json: servedLine(lineOf(resource), version, updated) };
    },

    async *stream(query) {
      for await (const rows of engine.stream<VersionRow>(streamSql(query))) yield openVersions(session, rows);
    },

    streamExams: (query) => streamExams(engine, tools, query),
  };
}

function historySql({ type, id, since, count, before }: HistoryQuery): Sql {
  const conditions = [
    sql`type = ${numberOfType(type as StoredType)}`,
    ...(id === undefined ? [] : [sql`id = ${id}`]),
    ...(since === undefined ? [] : [sql`updated >= ${since}`]),
    ...(before === undefined
      ? []
      : [sql`(updated, id, version) < (${before.updated}, ${before.id}, ${before.version})`]),
  ];
  const where = join(conditions, ' AND ');
  return sql`SELECT ${versionColumns} FROM (
      SELECT ${versionColumns} FROM resource WHERE ${where}
      UNION ALL SELECT ${versionColumns} FROM past_resource WHERE ${where}
    ) AS versions ORDER BY updated DESC, id DESC, version DESC LIMIT ${count}`;
}

function streamSql({ type, since, until }: StreamQuery): Sql {
  const conditions = [
    sql`type = ${numberOfType(type as StoredType)}`,
    ...(since === undefined ? [] : [sql`updated > ${since}`]),
    ...(until === undefined ? [] : [sql`updated <= ${until}`]),
  ];
  return sql`SELECT ${versionColumns} FROM resource WHERE ${join(conditions, ' AND ')} ORDER BY updated, key`;
}
