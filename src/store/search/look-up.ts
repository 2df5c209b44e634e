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

/** Answers kept from one search to the next; people ask for the same few hundred codes. */
const mostAnswers = 5_000;

/**
 * Numbers that the index answered to a question, for as long as nothing is committed: only where finding that out costs
 * next to nothing; elsewhere every search asks anew.
 */
export class KnownAnswers {
  #answers = new Map<string, readonly number[]>();
  #revision: number | undefined;

  /** Those that are true now. What is put there later, when they are so no more, is not found again. */
  asOf({ revision }: Session): Map<string, readonly number[]> | undefined {
    if (revision === undefined) return undefined;
    const now = revision();
    if (now !== this.#revision || this.#answers.size > mostAnswers) this.#answers = new Map();
    this.#revision = now;
    return this.#answers;
  }
}

/** A question to the letter, by which its answer is found again. */
export function textOf(question: Sql): string {
  return `${question.sql}${JSON.stringify(question.values)}`;
}

/** Looks up what is asked for in the same turn of the event loop with one statement. */
export function gatheredLookUps(session: Session, known = new KnownAnswers()): LookUp {
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
    const answers = known.asOf(session);
    const question = textOf(condition);
    const answered = answers?.get(question);
    if (answered !== undefined) return Promise.resolve(answered);
    return new Promise<readonly number[]>((resolve, reject) => {
      if (waiting.length === 0) {
        queueMicrotask(() => {
          const asked = waiting;
          waiting = [];
          void answer(asked);
        });
      }
      waiting.push({
        condition,
        resolve(numbers) {
          answers?.set(question, numbers);
          resolve(numbers);
        },
        reject,
      });
    });
  };
}
