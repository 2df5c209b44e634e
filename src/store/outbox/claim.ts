import sql, { type Sql } from 'sql-template-tag';
import type { Engine, Session } from '../engine.ts';
import type { Claim, ClaimedDelivery, NotifiedResource } from './outbox-repository.ts';

/** Beside the number of a target, so that its lock is none that something else takes ("NXDL" in ASCII). */
const claimLock = 0x4e58444c;

interface ClaimedRow {
  readonly n: number;
  readonly exam: number;
  readonly version: number;
  readonly attempts: number;
  readonly resources: string | null;
}

/**
 * Takes rows that are due, under a lock of the target, so that what one instance looks at no other changes.
 *
 * The software that computed exams is a resource of its own that all their Bundles create unless it is there. Two of them
 * at once could both find it missing and make it twice, so until one with the same `software` was delivered (since
 * `provenSince`, when this process began with its settings), only one is under way.
 */
export async function claimDeliveries(engine: Engine, target: string, claim: Claim): Promise<ClaimedDelivery[]> {
  return engine.write(async (session) => {
    if (session.dialect === 'postgres') {
      await session.all(sql`SELECT pg_advisory_xact_lock(${claimLock}, hashtext(${target}))`);
    }
    const proven = sql`(d.software IS NULL OR ${isProven(sql`d`, claim)})`;
    const rows = await take(session, target, claim, proven, claim.most);
    if (rows.length < claim.most) {
      const alone = sql`d.software IS NOT NULL AND NOT ${isProven(sql`d`, claim)} AND NOT EXISTS (
        SELECT 1 FROM delivery AS u WHERE u.target = d.target AND u.state = 0 AND u.held_until > ${claim.now}
          AND u.software IS NOT NULL AND NOT ${isProven(sql`u`, claim)})`;
      rows.push(...(await take(session, target, claim, alone, 1)));
    }
    const claimed: ClaimedDelivery[] = [];
    for (const { exam, n, version, attempts, resources } of rows) {
      const [found] = await session.all<{ id: string }>(sql`SELECT id FROM exam WHERE n = ${exam}`);
      const examId = (found as { id: string }).id;
      const told = JSON.parse(resources ?? '[]') as readonly NotifiedResource[];
      claimed.push({ n, target, examId, version, attempts, resources: told });
    }
    return claimed;
  });
}

function isProven(row: Sql, { provenSince }: Claim): Sql {
  return sql`EXISTS (SELECT 1 FROM delivery AS p WHERE p.target = ${row}.target AND p.software = ${row}.software
    AND p.state = 1 AND p.settled_at >= ${provenSince})`;
}

async function take(
  session: Session,
  target: string,
  { holder, now, until }: Claim,
  condition: Sql,
  most: number,
): Promise<ClaimedRow[]> {
  const rows = await session.all<ClaimedRow>(
    sql`UPDATE delivery SET holder = ${holder}, held_until = ${until}, attempts = attempts + 1 WHERE n IN (
          SELECT d.n FROM delivery AS d
          WHERE d.target = ${target} AND d.state = 0 AND d.next_at <= ${now} AND d.held_until <= ${now}
            AND NOT EXISTS (SELECT 1 FROM delivery AS e WHERE e.target = d.target AND e.exam = d.exam AND e.n <> d.n
              AND e.state = 0 AND (e.version < d.version OR e.held_until > ${now}))
            AND ${condition}
          ORDER BY d.next_at, d.n LIMIT ${most})
        RETURNING n, exam, version, attempts, resources`,
  );
  return rows.sort((a, b) => a.n - b.n);
}
