import sql, { raw, type Sql } from 'sql-template-tag';
import type { Engine } from './engine.ts';
import { bitsOfPart, chunksOfBatch, partsOfBatch } from './index/layout.ts';

/**
 * What had been committed at one moment, in words that can be kept and asked again later, by any process. Everything is
 * only ever added, so that a version written since is known by its batch and an earlier one is still there.
 */
export type Snapshot = string;

export async function takeSnapshot(engine: Engine): Promise<Snapshot> {
  const query =
    engine.dialect === 'postgres'
      ? sql`SELECT pg_current_snapshot()::text AS snapshot`
      : sql`SELECT coalesce(max(n), 0) AS snapshot FROM batch`;
  const [row] = await engine.reader.all<{ snapshot: string | number }>(query);
  return String(row?.snapshot ?? 0);
}

/** Whether the batch with the number in `column` is in the snapshot. */
export function isInSnapshot(dialect: Engine['dialect'], snapshot: Snapshot, column: Sql): Sql {
  // One writer commits in the order of its numbers; several are told apart by their transactions.
  return dialect === 'postgres'
    ? sql`EXISTS (SELECT 1 FROM batch WHERE batch.n = ${column} AND pg_visible_in_snapshot(batch.written_by, ${snapshot}::pg_snapshot))`
    : sql`${column} <= ${Number(snapshot)}`;
}

/** Columns of a version as it lies in a table. */
const columns = sql`type, id, version, updated, chunk, slot`;

/**
 * The versions of all resources of a type that were current in the snapshot.
 * @param since ms since 1970; only what had changed later than this
 */
export function versionsInSnapshot(
  dialect: Engine['dialect'],
  snapshot: Snapshot,
  type: number,
  since: number | undefined,
): Sql {
  const written = (alias: Sql) => sql`(${alias}.chunk / ${chunks})`;
  const current = isInSnapshot(dialect, snapshot, written(sql`r`));
  const changedSince = since === undefined ? sql`1 = 1` : sql`updated > ${since}`;
  return sql`SELECT ${columns} FROM (
      SELECT ${columns} FROM resource AS r WHERE type = ${type} AND ${current}
      UNION ALL
      SELECT ${columns} FROM past_resource AS p WHERE type = ${type}
        AND ${isInSnapshot(dialect, snapshot, written(sql`p`))}
        AND NOT EXISTS (
          SELECT 1 FROM past_resource AS later WHERE later.type = p.type AND later.id = p.id AND later.version > p.version
            AND ${isInSnapshot(dialect, snapshot, written(sql`later`))})
        AND NOT EXISTS (SELECT 1 FROM resource AS r WHERE r.type = p.type AND r.id = p.id AND ${current})
    ) AS versions WHERE ${changedSince}`;
}

/** Written out, since SQLite takes a bound number for a fraction and would divide accordingly. */
const chunks = raw(String(chunksOfBatch));

/** First key of a batch is its number times this. */
const keys = raw(String(partsOfBatch * bitsOfPart));

/**
 * Batches of exams that are in one snapshot and were not yet in an earlier one, by number.
 * @param from the earlier snapshot; null when nothing has been seen yet
 * @param after number of a batch; only later ones
 */
export function batchesBetween(
  dialect: Engine['dialect'],
  from: Snapshot | null,
  to: Snapshot,
  after: number,
  count: number,
): Sql {
  const isNew =
    dialect === 'sqlite'
      ? sql`n > ${Number(from ?? 0)} AND n <= ${Number(to)}`
      : sql`pg_visible_in_snapshot(written_by, ${to}::pg_snapshot) AND ${
          from === null
            ? sql`true`
            : // All that began before the oldest writer of that moment was there; the index knows the others.
              sql`written_by >= pg_snapshot_xmin(${from}::pg_snapshot)
                AND NOT pg_visible_in_snapshot(written_by, ${from}::pg_snapshot)`
        }`;
  return sql`SELECT n, exam FROM batch WHERE exam IS NOT NULL AND n > ${after} AND ${isNew} ORDER BY n LIMIT ${count}`;
}

/**
 * The versions of the resources of exams that were current in the snapshot, with the number of their exam.
 * @param types numbers of the types wanted
 */
export function examVersionsInSnapshot(
  dialect: Engine['dialect'],
  snapshot: Snapshot,
  exams: readonly number[],
  types: readonly number[],
): Sql {
  const among = (column: Sql, numbers: readonly number[]) =>
    dialect === 'postgres'
      ? sql`${column} = ANY (${numbers}::bigint[])`
      : sql`${column} IN (SELECT value FROM json_each(${JSON.stringify(numbers)}))`;
  const isSeen = (alias: Sql) => isInSnapshot(dialect, snapshot, sql`(${alias}.chunk / ${chunks})`);
  // The last batch of an exam holds all its resources. One statement, since a correction may move them in between.
  return sql`WITH held AS (
      SELECT latest.exam, r.key, r.type, r.id, r.version, r.updated, r.chunk, r.slot
      FROM (SELECT exam, max(n) AS n FROM batch WHERE ${among(sql`exam`, exams)} GROUP BY exam) AS latest
      JOIN resource AS r ON r.key >= latest.n * ${keys} AND r.key < (latest.n + 1) * ${keys}
      WHERE ${among(sql`r.type`, types)}
    )
    SELECT exam, key, type, id, version, updated, chunk, slot FROM held WHERE ${isSeen(sql`held`)}
    UNION ALL
    SELECT held.exam, held.key, p.type, p.id, p.version, p.updated, p.chunk, p.slot
    FROM held JOIN past_resource AS p ON p.type = held.type AND p.id = held.id
    WHERE NOT ${isSeen(sql`held`)} AND ${isSeen(sql`p`)}
      AND NOT EXISTS (
        SELECT 1 FROM past_resource AS later WHERE later.type = p.type AND later.id = p.id AND later.version > p.version
          AND ${isSeen(sql`later`)})
    ORDER BY 1, 2`;
}
