import sql, { raw } from 'sql-template-tag';
import type { Engine, Session } from '../engine.ts';

/**
 * Where the notifications of a subscription go. The Subscription itself lies among the resources, without the values of
 * its headers: a resource is kept for ever in all its versions, and a secret must be replaceable.
 */
export interface SubscriptionChannel {
  readonly id: string;
  readonly state: 'active' | 'off' | 'error';
  readonly criteria: string;
  readonly endpoint: string;
  /** Media type of the resources sent; null for a notice without content. */
  readonly payload: string | null;
  /** Each `Name: value`. */
  readonly headers: readonly string[];
  /** ms since 1970; null for no end. */
  readonly endsAt: number | null;
}

export interface SubscriptionChannels {
  /** @throws StoreError */
  find(id: string): Promise<SubscriptionChannel | undefined>;
  /** Writes a channel anew; one that is off loses what waits for it and its headers. To be called in a transaction. */
  write(session: Session, channel: SubscriptionChannel): Promise<void>;
  /** How many are active. @throws StoreError */
  active(): Promise<number>;
  /** Subscriptions whose end has come and that are not off yet. @throws StoreError */
  ended(now: number): Promise<readonly string[]>;
  /** Counts what was given up since the last one that arrived. @returns the count. @throws StoreError */
  count(id: string, isDelivered: boolean): Promise<number>;
}

interface ChannelRow extends Omit<SubscriptionChannel, 'headers'> {
  readonly headers: string;
}

const columns = raw('id, state, criteria, endpoint, payload, headers, ends_at AS "endsAt"');

export function createSubscriptionChannels(engine: Engine): SubscriptionChannels {
  return {
    async find(id) {
      const [row] = await engine.reader.all<ChannelRow>(sql`SELECT ${columns} FROM subscription WHERE id = ${id}`);
      return row === undefined ? undefined : { ...row, headers: JSON.parse(row.headers) as string[] };
    },

    async write(session, { id, state, criteria, endpoint, payload, headers, endsAt }) {
      const kept = JSON.stringify(state === 'off' ? [] : headers);
      await session.run(
        sql`INSERT INTO subscription (id, state, criteria, endpoint, payload, headers, ends_at)
            VALUES (${id}, ${state}, ${criteria}, ${endpoint}, ${payload}, ${kept}, ${endsAt})
            ON CONFLICT (id) DO UPDATE SET state = excluded.state, criteria = excluded.criteria,
              endpoint = excluded.endpoint, payload = excluded.payload, headers = excluded.headers,
              ends_at = excluded.ends_at, failures = 0`,
      );
      if (state === 'off') {
        await session.run(sql`DELETE FROM delivery WHERE target = ${`Subscription/${id}`} AND state = 0`);
      }
    },

    async active() {
      const [row] = await engine.reader.all<{ rows: number }>(
        sql`SELECT count(*) AS rows FROM subscription WHERE state = 'active'`,
      );
      return row?.rows ?? 0;
    },

    async ended(now) {
      const rows = await engine.reader.all<{ id: string }>(
        sql`SELECT id FROM subscription WHERE state <> 'off' AND ends_at <= ${now}`,
      );
      return rows.map(({ id }) => id);
    },

    count: (id, isDelivered) =>
      engine.write(async (session) => {
        const next = isDelivered ? sql`0` : sql`failures + 1`;
        const [row] = await session.all<{ failures: number }>(
          sql`UPDATE subscription SET failures = ${next} WHERE id = ${id} RETURNING failures`,
        );
        return row?.failures ?? 0;
      }),
  };
}
