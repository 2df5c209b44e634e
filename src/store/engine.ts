import type { Sql } from 'sql-template-tag';

/**
 * One database behind the stores: what is common to SQLite and PostgreSQL. SQL is written once, in the part of the
 * language that both speak; where they differ, `dialect` tells which it is.
 */
export interface Engine {
  readonly dialect: 'sqlite' | 'postgres';
  /** Statements that see what was committed when each began. @throws StoreError */
  readonly reader: Session;
  /**
   * Runs `work` in a transaction; resolves with its value once that is on disk. The work may be run again from the start
   * when it met another writer, so it must leave nothing behind but what it writes through the session.
   * @throws StoreError, and whatever `work` throws, with nothing written
   */
  write<T>(work: (session: Session) => Promise<T>): Promise<T>;
  /** As `write`, while no other write is under way, here or on another instance. @throws the same */
  writeAlone<T>(work: (session: Session) => Promise<T>): Promise<T>;
  /**
   * Takes what was removed out of the files too, as far as the engine can: SQLite writes its file anew, PostgreSQL frees
   * the room for what comes next.
   * @throws StoreError
   */
  purge(): Promise<void>;
  /** Rows of a long answer, a group at a time, as of one moment. @throws StoreError */
  stream<Row>(query: Sql): AsyncIterable<readonly Row[]>;
  /** Resolves when the engine can read, accepts writes and has room. @throws StoreError */
  check(): Promise<void>;
  /** Writes that were accepted and are not on disk yet. */
  readonly pendingWrites: number;
  /** Finishes what was accepted, then lets go. Safe to call twice. */
  close(): Promise<void>;
}

export interface Session {
  readonly dialect: Engine['dialect'];
  all<Row>(query: Sql): Promise<Row[]>;
  /**
   * A number that changes with every commit, so that what was read may be used again while it stays the same; absent where
   * asking for it costs as much as reading does.
   */
  readonly revision?: () => number;
  /** @returns number of rows written */
  run(query: Sql): Promise<number>;
  /**
   * Inserts rows, each an array of values in the order of `columns`, by the cheapest way of the engine.
   * @param columns name and PostgreSQL type of each column
   * @param onConflict such as `ON CONFLICT DO NOTHING`
   * @returns number of rows written
   */
  insert(
    table: string,
    columns: Readonly<Record<string, string>>,
    rows: readonly (readonly unknown[])[],
    onConflict?: string,
  ): Promise<number>;
}

/** Groups of rows that a stream hands over at once: small enough to leave other requests their turn. */
export const streamGroup = 200;
