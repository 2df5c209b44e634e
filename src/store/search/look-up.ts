import sql, { join, type Sql } from 'sql-template-tag';
import type { Session } from '../engine.ts';

/**
 * Numbers of the tokens that fit one of the conditions on the dictionary; none for no condition.
 * @param params only tokens that some resource has under one of these parameters
 */
export type LookUp = (conditions: readonly Sql[], params?: readonly number[]) => Promise<readonly number[]>;

interface Asked {
  readonly condition: Sql;
  readonly resolve: (numbers: readonly number[]) => void;
  readonly reject: (error: unknown) => void;
}

/** Looks up what is asked for in the same turn of the event loop with one statement. */
export function gatheredLookUps(session: Session): LookUp {
  let waiting: Asked[] = [];

  async function answer(asked: readonly Asked[]): Promise<void> {
    const questions = asked.map(
      ({ condition }, index) => sql`SELECT CAST(${index} AS integer) AS asked, n FROM token WHERE ${condition}`,
    );
    try {
      const rows = await session.all<{ asked: number; n: number }>(join(questions, ' UNION ALL '));
      for (const [index, { resolve }] of asked.entries()) {
        resolve(rows.filter((row) => row.asked === index).map(({ n }) => n));
      }
    } catch (error) {
      for (const { reject } of asked) reject(error);
    }
  }

  return (conditions, params) => {
    if (conditions.length === 0) return Promise.resolve([]);
    const fits = sql`(${join(conditions, ' OR ')})`;
    const condition =
      params === undefined
        ? fits
        : sql`${fits} AND EXISTS (SELECT 1 FROM posting WHERE param IN (${join(params)}) AND token = n)`;
    return new Promise((resolve, reject) => {
      if (waiting.length === 0) {
        queueMicrotask(() => {
          const asked = waiting;
          waiting = [];
          void answer(asked);
        });
      }
      waiting.push({ condition, resolve, reject });
    });
  };
}
