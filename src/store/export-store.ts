import { randomUUID } from 'node:crypto';
import sql from 'sql-template-tag';
import { type ExportEndRecord, outOfTime } from '../audit/export-end.ts';
import { NotFoundError } from '../kernel/errors.ts';
import { appendAudit } from './audit/append-audit.ts';
import type { Engine } from './engine.ts';
import { numberOfType, type StoredType } from './index/stored-types.ts';
import type { StoredResource } from './resource-repository.ts';
import { takeSnapshot, versionsInSnapshot } from './snapshot.ts';
import { openVersions, type VersionRow } from './versions.ts';

/** What was asked to be exported. */
export interface ExportRequest {
  /** Address that started it, as it is repeated in the manifest. */
  readonly url: string;
  readonly types: readonly StoredType[];
  /** The program that asked for it; absent in exports of versions that did not know. */
  readonly client?: string;
  /** ms since 1970; only what changed later than this. */
  readonly since?: number;
  /** What was asked for and is left out, each in a sentence for the caller. */
  readonly notices?: readonly string[];
}

export interface ExportJob {
  readonly id: string;
  readonly request: ExportRequest;
  /** ms since 1970. */
  readonly startedAt: number;
  /** Resources of each type that has been gone through. */
  readonly counts: Readonly<Partial<Record<StoredType, number>>>;
}

/**
 * Exports of everything as it stood at one moment. Nothing is copied: a job remembers its moment, and its files are read
 * from the store while they are fetched, so that it survives any restart, on any of several instances.
 */
export interface ExportRepository {
  /** @throws StoreError */
  start(request: ExportRequest, now: Date): Promise<ExportJob>;
  /** @throws NotFoundError for a job that is not there or was removed */
  find(id: string): Promise<ExportJob>;
  /**
   * Counts the next type that has not been counted; a job is ready when all of them are.
   * @param recordOf what the audit trail says when this makes it ready, kept in the same transaction and once
   * @throws NotFoundError, StoreError
   */
  advance(id: string, recordOf: ExportEndRecord): Promise<ExportJob>;
  /** @throws NotFoundError */
  remove(id: string): Promise<void>;
  /** Jobs that are not ready. */
  unfinished(): Promise<readonly string[]>;
  /**
   * Removes jobs that were started before.
   * @param recordOf what the audit trail says of each that was not ready
   * @returns how many
   */
  removeBefore(time: Date, recordOf: ExportEndRecord): Promise<number>;
  /** The resources of one type, a group at a time. @throws NotFoundError, StoreError */
  stream(id: string, type: StoredType): Promise<AsyncIterable<readonly StoredResource[]>>;
}

interface JobRow {
  readonly id: string;
  readonly request: string;
  readonly snapshot: string;
  readonly startedAt: number;
  readonly counts: string;
}

export function createExportStore(engine: Engine): ExportRepository {
  const session = engine.reader;

  async function row(id: string): Promise<JobRow> {
    const [found] = await session.all<JobRow>(
      sql`SELECT id, request, snapshot, started_at AS "startedAt", counts FROM export_job WHERE id = ${id}`,
    );
    if (found === undefined) throw new NotFoundError('There is no export with this id, or it was removed.');
    return found;
  }

  const versions = ({ snapshot }: JobRow, type: StoredType, since: number | undefined) =>
    versionsInSnapshot(engine.dialect, snapshot, numberOfType(type), since);

  return {
    async start(request, now) {
      const id = randomUUID();
      const snapshot = await takeSnapshot(engine);
      const startedAt = now.getTime();
      await engine.write((writer) =>
        writer.run(
          sql`INSERT INTO export_job (id, request, snapshot, started_at, counts)
              VALUES (${id}, ${JSON.stringify(request)}, ${snapshot}, ${startedAt}, '{}')`,
        ),
      );
      return { id, request, startedAt, counts: {} };
    },

    find: async (id) => job(await row(id)),

    async advance(id, recordOf) {
      const found = await row(id);
      const { request, counts } = job(found);
      const next = request.types.find((type) => counts[type] === undefined);
      if (next === undefined) return job(found);
      let count = 0;
      for await (const group of engine.stream(versions(found, next, request.since))) {
        count += group.length;
        // SQLite reads on this thread, which has requests to answer.
        await new Promise(setImmediate);
      }
      const counted = { ...counts, [next]: count };
      const isLast = isReady({ ...job(found), counts: counted });
      await engine.write(async (writer) => {
        // Another instance may have come further with the same job.
        const changed = await writer.run(
          sql`UPDATE export_job SET counts = ${JSON.stringify(counted)} WHERE id = ${id} AND counts = ${found.counts}`,
        );
        if (isLast && changed > 0) await appendAudit(writer, [recordOf(id, 'ready')]);
      });
      return job(await row(id));
    },

    async remove(id) {
      await row(id);
      await engine.write((writer) => writer.run(sql`DELETE FROM export_job WHERE id = ${id}`));
    },

    async unfinished() {
      const rows = await session.all<JobRow>(
        sql`SELECT id, request, snapshot, started_at AS "startedAt", counts FROM export_job ORDER BY started_at`,
      );
      return rows
        .map(job)
        .filter((one) => !isReady(one))
        .map(({ id }) => id);
    },

    removeBefore: (time, recordOf) =>
      engine.write(async (writer) => {
        const gone = await writer.all<JobRow>(
          sql`DELETE FROM export_job WHERE started_at < ${time.getTime()}
              RETURNING id, request, snapshot, started_at AS "startedAt", counts`,
        );
        const unready = gone.map(job).filter((one) => !isReady(one));
        await appendAudit(
          writer,
          unready.map(({ id }) => recordOf(id, outOfTime)),
        );
        return gone.length;
      }),

    async stream(id, type) {
      const found = await row(id);
      const { request } = job(found);
      if (!request.types.includes(type)) throw new NotFoundError('This export has no file of that type.');
      const rows = engine.stream<VersionRow>(sql`${versions(found, type, request.since)} ORDER BY chunk, slot`);
      return (async function* () {
        for await (const group of rows) yield await openVersions(session, group);
      })();
    },
  };
}

export function isReady({ request, counts }: ExportJob): boolean {
  return request.types.every((type) => counts[type] !== undefined);
}

function job({ id, request, startedAt, counts }: JobRow): ExportJob {
  return {
    id,
    request: JSON.parse(request) as ExportRequest,
    startedAt,
    counts: JSON.parse(counts) as ExportJob['counts'],
  };
}
