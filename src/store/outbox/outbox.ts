import sql, { empty, raw, type Sql } from 'sql-template-tag';
import type { Engine } from '../engine.ts';
import { claimDeliveries } from './claim.ts';
import { enqueueKept } from './enqueue-kept.ts';
import {
  type DeliveryFigures,
  type DeliveryStatus,
  deliveryStates,
  forwardTarget,
  type Outbox,
} from './outbox-repository.ts';

interface StatusRow {
  readonly examId: string;
  readonly target: string;
  readonly version: number;
  readonly state: number;
  readonly attempts: number;
  readonly nextAt: number;
  readonly settledAt: number | null;
  readonly answer: number | null;
  readonly reason: string | null;
  readonly issues: string | null;
}

const [waiting, delivered, dead] = [0, 1, 2] as const;

const statusColumns = raw(`exam.id AS "examId", target, version, state, attempts, next_at AS "nextAt",
  settled_at AS "settledAt", answer, reason, issues`);

export function createOutbox(engine: Engine): Outbox {
  const { reader } = engine;
  return {
    async dueTargets(now) {
      const isDue = (target: Sql) =>
        sql`EXISTS (SELECT 1 FROM delivery WHERE target = ${target} AND state = 0 AND next_at <= ${now} AND held_until <= ${now})`;
      const rows = await reader.all<{ target: string }>(
        sql`SELECT CAST(${forwardTarget} AS text) AS target WHERE ${isDue(sql`${forwardTarget}`)}
            UNION ALL SELECT 'Subscription/' || id FROM subscription
            WHERE state = 'active' AND ${isDue(sql`'Subscription/' || id`)}`,
      );
      return rows.map(({ target }) => target);
    },

    claim: (target, claim) => claimDeliveries(engine, target, claim),

    async keep(n, holder, until) {
      const kept = await engine.write((session) =>
        session.run(sql`UPDATE delivery SET held_until = ${until} WHERE n = ${n} AND holder = ${holder} AND state = 0`),
      );
      return kept > 0;
    },

    async settle(n, holder, { state, nextAt, answer, reason, issues = [] }, now) {
      const settled = await engine.write((session) =>
        session.run(
          sql`UPDATE delivery SET state = ${deliveryStates.indexOf(state)}, holder = NULL, held_until = 0,
                next_at = ${nextAt ?? now}, settled_at = ${state === 'waiting' ? null : now},
                answer = ${answer ?? null}, reason = ${reason ?? null},
                issues = ${issues.length === 0 ? null : issues.join(' ')}
              WHERE n = ${n} AND holder = ${holder} AND state = 0`,
        ),
      );
      return settled > 0;
    },

    async ofExam(examId) {
      const rows = await reader.all<StatusRow>(
        sql`SELECT ${statusColumns} FROM delivery JOIN exam ON exam.n = delivery.exam
            WHERE exam.id = ${examId} ORDER BY target, version`,
      );
      return rows.map(statusOf);
    },

    async dead(most) {
      const rows = await reader.all<StatusRow>(
        sql`SELECT ${statusColumns} FROM delivery JOIN exam ON exam.n = delivery.exam
            WHERE state = 2 ORDER BY delivery.n LIMIT ${most}`,
      );
      return rows.map((row) => ({ examId: row.examId, ...statusOf(row) }));
    },

    retry: (now, examId) =>
      // Alone, since what nobody had taken a moment ago may be under way now.
      engine.writeAlone((session) => {
        const ofExam = examId === undefined ? empty : sql`AND exam = (SELECT n FROM exam WHERE id = ${examId})`;
        return session.run(
          sql`UPDATE delivery SET state = ${waiting}, attempts = 0, next_at = ${now}, settled_at = NULL
              WHERE state = 2 ${ofExam} AND (
                -- The first version creates what is missing and changes nothing that is there.
                (target = ${forwardTarget} AND version = 1)
                OR NOT EXISTS (SELECT 1 FROM delivery AS e
                  WHERE e.target = delivery.target AND e.exam = delivery.exam AND e.version > delivery.version
                    AND (e.state = ${delivered} OR (e.state = ${waiting} AND e.attempts > 0))))`,
        );
      }),

    enqueueKept: (options) => enqueueKept(engine, options),

    async figures(now) {
      const rows = await reader.all<{ isForward: number; state: number; rows: number; oldest: number }>(
        sql`SELECT CASE WHEN target = ${forwardTarget} THEN 1 ELSE 0 END AS "isForward", state, count(*) AS rows,
              min(created_at) AS oldest
            FROM delivery WHERE state = 0 OR state = 2 GROUP BY 1, 2`,
      );
      return (['forward', 'subscription'] as const).map((target): DeliveryFigures => {
        const own = rows.filter(({ isForward }) => (target === 'forward') === (isForward === 1));
        const of = (state: number | undefined) => own.find((row) => row.state === state);
        const oldest = of(waiting)?.oldest;
        return {
          target,
          waiting: of(waiting)?.rows ?? 0,
          dead: of(dead)?.rows ?? 0,
          oldestWaitingMs: oldest === undefined ? 0 : Math.max(0, now - oldest),
        };
      });
    },
  };
}

/** A SQLite file has one process at a time, so whoever held something before is gone. */
export async function releaseAll(engine: Engine): Promise<void> {
  if (engine.dialect !== 'sqlite') return;
  await engine.write((session) =>
    session.run(sql`UPDATE delivery SET holder = NULL, held_until = 0 WHERE state = 0 AND held_until > 0`),
  );
}

function statusOf(row: StatusRow): DeliveryStatus {
  const { target, version, attempts, nextAt, settledAt, answer, reason, issues } = row;
  const state = deliveryStates[row.state] ?? 'waiting';
  return {
    target,
    version,
    state,
    attempts,
    ...(state === 'waiting' ? { nextAttemptAt: new Date(nextAt).toISOString() } : {}),
    ...(settledAt === null ? {} : { settledAt: new Date(settledAt).toISOString() }),
    ...(answer === null ? {} : { lastStatus: answer }),
    ...(reason === null ? {} : { reason }),
    ...(issues === null ? {} : { issues: issues.split(' ') }),
  };
}
