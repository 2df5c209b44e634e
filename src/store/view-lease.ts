import { randomUUID } from 'node:crypto';
import sql from 'sql-template-tag';
import { ConflictError } from '../kernel/errors.ts';
import type { Engine, Session } from './engine.ts';

/** How long a holder may be silent, in ms, before it is taken for dead; the work between two signs of life takes seconds. */
const silenceMs = 60_000;

/** The right to refresh the tables of views: one of all instances has it at a time. */
export interface ViewLease {
  /** @returns whether this instance has the right until it gives it back or falls silent. @throws StoreError */
  take(): Promise<boolean>;
  /**
   * To be called in every transaction of the work: shows that the holder lives, and stops one that was taken for dead.
   * @throws ConflictError VERSION_MISMATCH when another instance has the right meanwhile
   */
  keep(session: Session): Promise<void>;
  release(): Promise<void>;
}

export function createViewLease(engine: Engine, now: () => number = Date.now): ViewLease {
  const holder = randomUUID();
  // A SQLite file has one process at a time, so an earlier holder is gone.
  const isFree =
    engine.dialect === 'sqlite'
      ? () => sql`1 = 1`
      : () => sql`(holder IS NULL OR holder = ${holder} OR seen_at < ${now() - silenceMs})`;
  return {
    async take() {
      // Asked for without a lock first, so that idle instances leave no trace of writing.
      const free = await engine.reader.all(sql`SELECT 1 FROM view_refresh WHERE ${isFree()}`);
      if (free.length === 0) return false;
      const taken = await engine.write((session) =>
        session.run(sql`UPDATE view_refresh SET holder = ${holder}, seen_at = ${now()} WHERE ${isFree()}`),
      );
      return taken > 0;
    },
    async keep(session) {
      const kept = await session.run(sql`UPDATE view_refresh SET seen_at = ${now()} WHERE holder = ${holder}`);
      if (kept === 0) throw new ConflictError('VERSION_MISMATCH', 'Another instance refreshes the tables of views.');
    },
    async release() {
      await engine.write((session) => session.run(sql`UPDATE view_refresh SET holder = NULL WHERE holder = ${holder}`));
    },
  };
}
