import sql from 'sql-template-tag';
import type { Engine } from '../engine.ts';
import { softwareOf } from './enqueue.ts';
import { forwardTarget } from './outbox-repository.ts';

/** Versions put in with one transaction: nobody else writes meanwhile. */
const groupSize = 200;

interface VersionRow {
  readonly exam: number;
  readonly version: number;
}

/** Puts versions that were kept earlier into the outbox of the server that exams are forwarded to, oldest exam first. */
export async function enqueueKept(
  engine: Engine,
  { since, again, now }: { readonly since: string; readonly again: boolean; readonly now: number },
): Promise<number> {
  let put = 0;
  let [exam, version] = [0, 0];
  for (;;) {
    const rows = await engine.writeAlone(async (session) => {
      const found = await session.all<VersionRow>(
        sql`SELECT exam, version FROM exam_version
            WHERE (exam, version) > (${exam}, ${version}) AND received_at >= ${since}
            ORDER BY exam, version LIMIT ${groupSize}`,
      );
      let written = 0;
      for (const row of found) {
        const software = await softwareOf(session, { n: row.exam, version: row.version });
        written += await session.run(
          sql`INSERT INTO delivery (target, exam, version, created_at, next_at, software)
              VALUES (${forwardTarget}, ${row.exam}, ${row.version}, ${now}, ${now}, ${software})
              ON CONFLICT (target, exam, version) DO UPDATE
              SET state = 0, attempts = 0, created_at = ${now}, next_at = ${now}, settled_at = NULL
              WHERE ${again ? sql`delivery.state <> 0` : sql`1 = 0`}`,
        );
      }
      return { found, written };
    });
    put += rows.written;
    const last = rows.found.at(-1);
    if (last === undefined) return put;
    ({ exam, version } = last);
  }
}
