import { statfs } from 'node:fs/promises';
import { dirname } from 'node:path';
import type { Statement } from 'better-sqlite3';
import type { Sql } from 'sql-template-tag';
import { StoreError } from '../../kernel/errors.ts';
import { remembered } from '../../kernel/remembered.ts';
import { type Engine, type Session, streamGroup } from '../engine.ts';
import { CommitQueue } from './commit-queue.ts';
import {
  asStoreError,
  type Connection,
  isFatalToWrites,
  type OpenStore,
  openReader,
  openSqlite,
} from './connection.ts';

/** Room for a few groups of exams with the log that precedes them; with less the store says that it is not ready. */
const leastFreeBytes = 4 * 1024 * 1024;

/** Statements kept prepared; searches have as many forms as people have questions. */
const mostStatements = 500;

/**
 * A SQLite file. One connection writes, in groups; another reads what was committed.
 * @throws StoreError when the file cannot be opened as an exam store
 */
export function openSqliteEngine(file: string): SqliteEngine {
  return new SqliteEngine(openSqlite(file));
}

export class SqliteEngine implements Engine {
  readonly dialect = 'sqlite';
  readonly reader: Session;
  readonly #store: OpenStore;
  readonly #queue: CommitQueue;
  readonly #writer: Session;
  /** Writes that are under way; a close waits for them. */
  readonly #accepted = new Set<Promise<unknown>>();
  #writesStopped = false;
  #closing: Promise<void> | undefined;

  constructor(store: OpenStore) {
    this.#store = store;
    this.reader = sessionOn(store.reader, asStoreError);
    // Its errors are turned into ours only at the end, so that the queue can tell a lost transaction from a refusal.
    this.#writer = sessionOn(store.db, (error) => error);
    this.#queue = new CommitQueue(store.db, (error) => {
      if (isFatalToWrites(error)) this.#writesStopped = true;
    });
  }

  async write<T>(work: (session: Session) => Promise<T>): Promise<T> {
    if (this.#writesStopped || this.#closing !== undefined) throw stopped();
    const written = this.#queue.run(() => work(this.#writer));
    this.#accepted.add(written);
    try {
      return await written;
    } catch (error) {
      throw asStoreError(error);
    } finally {
      this.#accepted.delete(written);
    }
  }

  /** The one writer of the one process. Others of the same group are in the same transaction and have run or wait. */
  writeAlone<T>(work: (session: Session) => Promise<T>): Promise<T> {
    return this.write(work);
  }

  async purge(): Promise<void> {
    const { db } = this.#store;
    while (db.inTransaction) await new Promise(setImmediate);
    if (this.#writesStopped || this.#closing !== undefined) throw stopped();
    try {
      db.exec('VACUUM');
      const [log] = db.pragma('wal_checkpoint(TRUNCATE)') as { busy: number }[];
      if (log?.busy !== 0) throw new StoreError('STORE_UNAVAILABLE', 'The log cannot be emptied while somebody reads.');
    } catch (error) {
      throw asStoreError(error);
    }
  }

  /** A connection of its own, since a statement that is being stepped through would hold up the others. */
  async *stream<Row>(query: Sql): AsyncIterable<readonly Row[]> {
    if (this.#closing !== undefined) throw stopped();
    const connection = openReader(this.#store.db.name);
    try {
      let group: Row[] = [];
      for (const row of connection.prepare(query.sql).iterate(...query.values)) {
        group.push(row as Row);
        if (group.length < streamGroup) continue;
        yield group;
        group = [];
      }
      if (group.length > 0) yield group;
    } catch (error) {
      throw asStoreError(error);
    } finally {
      connection.close();
    }
  }

  async check(): Promise<void> {
    if (this.#writesStopped || this.#closing !== undefined) throw stopped();
    try {
      this.#store.reader.prepare('SELECT 1').get();
    } catch (error) {
      throw asStoreError(error);
    }
    const { bavail, bsize } = await statfs(dirname(this.#store.db.name)).catch((error) => {
      throw asStoreError(error);
    });
    if (bavail * bsize < leastFreeBytes) throw new StoreError('STORE_FULL', 'There is no room left to keep exams.');
  }

  get pendingWrites(): number {
    return this.#accepted.size;
  }

  close(): Promise<void> {
    this.#closing ??= Promise.allSettled(this.#accepted).then(() => this.#store.release());
    return this.#closing;
  }
}

/** A statement that gives rows, with the names of their columns. */
interface Reading {
  readonly statement: Statement<unknown[], unknown[]>;
  readonly names: readonly string[];
}

function sessionOn(db: Connection, told: (error: unknown) => unknown): Session {
  const prepared = remembered(mostStatements, (text: string) => db.prepare(text));
  const read = remembered(mostStatements, (text: string): Reading => {
    const statement = db.prepare<unknown[], unknown[]>(text).raw();
    return { statement, names: statement.columns().map(({ name }) => name) };
  });
  // Tells of commits of other connections, and the one that reads makes none itself.
  const revision = db.prepare('PRAGMA data_version').pluck();
  const attempt = <T>(work: () => T): T => {
    if (!db.open) throw stopped();
    try {
      return work();
    } catch (error) {
      throw told(error);
    }
  };
  return {
    dialect: 'sqlite',
    revision: () => attempt(() => revision.get() as number),
    all: async <Row>(query: Sql) => attempt(() => rowsOf(read(query.sql), query.values) as Row[]),
    run: async (query) => attempt(() => prepared(query.sql).run(...query.values).changes),
    // In one process a prepared statement run for each row costs less than a long one.
    insert: async (table, columns, rows, onConflict = '') =>
      attempt(() => {
        const names = Object.keys(columns);
        const holes = names.map(() => '?').join(', ');
        const insert = prepared(`INSERT INTO ${table} (${names.join(', ')}) VALUES (${holes}) ${onConflict}`);
        return rows.reduce((written, row) => written + insert.run(...row).changes, 0);
      }),
  };
}

/** The driver hands over lists in half the time of objects; written this way, all rows get the same shape. */
function rowsOf({ statement, names }: Reading, values: readonly unknown[]): object[] {
  return statement.all(...values).map((cells) => {
    const row: Record<string, unknown> = {};
    for (let index = 0; index < names.length; index += 1) row[names[index] as string] = cells[index];
    return row;
  });
}

function stopped(): StoreError {
  return new StoreError('STORE_UNAVAILABLE', 'The exam store is closed.');
}
