import sql, { raw, type Sql } from 'sql-template-tag';
import type { Engine } from './engine.ts';
import { chunksOfBatch } from './index/layout.ts';

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
