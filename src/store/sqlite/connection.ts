import { mkdirSync } from 'node:fs';
import { dirname } from 'node:path';
import Database from 'better-sqlite3';
import { AppError, StoreError } from '../../kernel/errors.ts';
import { migrateSqlite } from '../schema/migrate-sqlite.ts';
import { addFunctions } from './functions.ts';

export type Connection = Database.Database;

/** How long SQLite waits for a lock of another process (a backup tool, say) before it gives up. */
const busyTimeoutMs = 2_000;

/**
 * Memory for pages, in KiB, taken only as the file grows. An exam touches hundreds of pages all over the index; with the
 * default of 2 MB most of them would be fetched anew for each.
 */
const writerCacheKib = 65_536;
const readerCacheKib = 16_384;

/** Pages of 4 KiB that the log takes before they are moved to the file: 32 MiB, in which an exam's pages meet often. */
const pagesBeforeCheckpoint = 8_192;

/** Value of `PRAGMA synchronous` that syncs the write-ahead log at every commit. */
const synchronousFull = 2;

export interface OpenStore {
  /** The one connection that writes. */
  readonly db: Connection;
  /** Sees what was committed and nothing else. */
  readonly reader: Connection;
  readonly release: () => void;
}

/**
 * Opens an exam store, creating the folder and the file where needed.
 * The durability settings are read back, because a build of SQLite may silently choose weaker ones.
 * @param file path of the database
 * @throws StoreError STORE_UNAVAILABLE when another process has the store, or it cannot be opened or made durable
 * @throws StoreError STORE_CORRUPT when the file is not an exam store of a version that this program knows
 */
export function openSqlite(file: string): OpenStore {
  try {
    mkdirSync(dirname(file), { recursive: true, mode: 0o700 });
    // What SQLite lays aside in files belongs beside the store: it holds data of exams, and no other place need be writable.
    process.env.SQLITE_TMPDIR ??= dirname(file);
    const lock = takeLock(`${file}.lock`);
    try {
      const db = new Database(file);
      try {
        prepare(db);
        migrateSqlite(db);
      } catch (error) {
        db.close();
        throw error;
      }
      const reader = openReader(file);
      const release = () => {
        reader.close();
        db.close();
        lock.close();
      };
      return { db, reader, release };
    } catch (error) {
      lock.close();
      throw error;
    }
  } catch (error) {
    throw asStoreError(error);
  }
}

/**
 * One process at a time: the exclusive lock on a small database of its own falls with the process, however it ends,
 * and still leaves the store itself readable to backup tools.
 */
function takeLock(file: string): Connection {
  const lock = new Database(file, { timeout: busyTimeoutMs });
  try {
    lock.pragma('journal_mode = MEMORY');
    lock.exec('BEGIN EXCLUSIVE');
    return lock;
  } catch (error) {
    lock.close();
    if (sqliteCode(error).startsWith('SQLITE_BUSY')) {
      throw new StoreError('STORE_UNAVAILABLE', 'Another process is using this exam store; only one may write to it.');
    }
    throw error;
  }
}

/** A second connection that can only read. */
export function openReader(file: string): Connection {
  const reader = new Database(file, { readonly: true, timeout: busyTimeoutMs });
  reader.pragma(`cache_size = -${readerCacheKib}`);
  addFunctions(reader);
  return reader;
}

function prepare(db: Connection): void {
  addFunctions(db);
  db.pragma(`busy_timeout = ${busyTimeoutMs}`);
  db.pragma('foreign_keys = ON');
  const journal = db.pragma('journal_mode = WAL', { simple: true });
  db.pragma('synchronous = FULL');
  db.pragma(`cache_size = -${writerCacheKib}`);
  db.pragma(`wal_autocheckpoint = ${pagesBeforeCheckpoint}`);
  const settings = {
    synchronous: db.pragma('synchronous', { simple: true }),
    foreignKeys: db.pragma('foreign_keys', { simple: true }),
  };
  const isDurable = settings.synchronous === synchronousFull && journal === 'wal';
  if (!isDurable || settings.foreignKeys !== 1) {
    throw new StoreError('STORE_UNAVAILABLE', 'The exam store could not be set to keep every acknowledged exam.');
  }
}

/** Whatever the engine threw as one of our own errors; an error of ours passes unchanged. */
export function asStoreError(error: unknown): AppError {
  if (error instanceof AppError) return error;
  const code = sqliteCode(error);
  if (code === 'SQLITE_FULL' || code === 'ENOSPC') {
    return new StoreError('STORE_FULL', 'There is no room left to keep the exam.', { cause: error });
  }
  if (code.startsWith('SQLITE_CORRUPT') || code === 'SQLITE_NOTADB' || code.startsWith('Z_')) {
    return new StoreError('STORE_CORRUPT', 'The exam store is damaged or is not an exam store.', { cause: error });
  }
  return new StoreError('STORE_UNAVAILABLE', `The exam store is not available${code === '' ? '' : ` (${code})`}.`, {
    cause: error,
  });
}

/** Whether a failed sync or write leaves the state of the disk unknown, so that nothing more may be acknowledged. */
export function isFatalToWrites(error: unknown): boolean {
  const code = sqliteCode(error instanceof StoreError ? error.cause : error);
  return code.startsWith('SQLITE_IOERR') || code.startsWith('SQLITE_CORRUPT');
}

function sqliteCode(error: unknown): string {
  return error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : '';
}
