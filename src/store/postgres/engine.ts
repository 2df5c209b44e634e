import { setTimeout as pause } from 'node:timers/promises';
import { Client, Pool, type PoolClient, type QueryConfig, types } from 'pg';
import type { Sql } from 'sql-template-tag';
import { StoreError } from '../../kernel/errors.ts';
import { type Engine, type Session, streamGroup } from '../engine.ts';
import { migratePostgres, postgresSchema } from '../schema/migrate-postgres.ts';
import { asStoreError, isRetryable } from './errors.ts';

/** Connections of one instance; two cores are busy with four writers, the rest is for readers. */
const mostConnections = 8;
/**
 * Connections of their own for long answers, so that readers who take their time keep no exam waiting; further ones are
 * told to come again.
 */
const mostStreams = 4;

/** A stream waits between two groups for as long as its reader takes, up to ten minutes. */
const settingsOfStreams = ['statement_timeout=0', 'idle_in_transaction_session_timeout=600000'];

/**
 * How long an answer of the server is waited for, in ms: a little longer than the server lets a statement run, for when
 * nothing comes over the network any more.
 */
const answerTimeoutMs = 65_000;
/** The longest time that a timer takes, in ms. */
const longestTimeoutMs = 2 ** 31 - 1;

/** How long a close waits for a database that does not answer, in ms; nothing that is unanswered then was acknowledged. */
const closeLimitMs = 5_000;

/** How often a write is run again after it met another one. */
const mostAttempts = 5;

/** No number here exceeds 2^53, so a 64-bit integer is handed over as a number and not as text. */
const int8 = 20;
const numeric = 1700;
types.setTypeParser(int8, Number);
types.setTypeParser(numeric, Number);

/**
 * What every connection is held to. A commit is on disk before it is acknowledged, whatever the server's default; no
 * statement and no lock may hold a request for ever.
 */
const settings = [
  `search_path=${postgresSchema}`,
  'synchronous_commit=on',
  'statement_timeout=60000',
  'lock_timeout=10000',
  'idle_in_transaction_session_timeout=60000',
  'TimeZone=UTC',
];

/**
 * A PostgreSQL database, brought to the newest layout.
 * @param url such as `postgres://user@host/database`
 * @throws StoreError STORE_UNAVAILABLE when it cannot be reached or does not keep what it acknowledges
 */
export async function openPostgresEngine(url: string): Promise<Engine> {
  const options = {
    connectionString: url,
    options: optionsOf(settings),
    connectionTimeoutMillis: 5_000,
    application_name: 'neuroexam-fhir',
    keepAlive: true,
  };
  try {
    const client = new Client({ ...options, statement_timeout: 0 });
    await client.connect();
    try {
      await requireDurability(client);
      await migratePostgres(client);
    } finally {
      await client.end();
    }
  } catch (error) {
    throw asStoreError(error);
  }
  return new PostgresEngine(
    new Pool({ ...options, max: mostConnections, query_timeout: answerTimeoutMs }),
    new Pool({ ...options, options: optionsOf([...settings, ...settingsOfStreams]), max: mostStreams }),
  );
}

function optionsOf(list: readonly string[]): string {
  return list.map((setting) => `-c ${setting}`).join(' ');
}

async function requireDurability(client: Client): Promise<void> {
  const { rows } = await client.query<{ fsync: string; commit: string; version: number }>(
    `SELECT current_setting('fsync') AS fsync, current_setting('synchronous_commit') AS commit,
       current_setting('server_version_num')::integer AS version`,
  );
  const [found] = rows;
  if (found === undefined || found.version < 140_000) {
    throw new StoreError('STORE_UNAVAILABLE', 'PostgreSQL 14 or newer is needed.');
  }
  if (found.fsync !== 'on' || found.commit === 'off') {
    throw new StoreError('STORE_UNAVAILABLE', 'The database does not keep every acknowledged exam: fsync is off.');
  }
}

/** Held by every write, so that one can be alone; any number, if all instances take the same ("NXFW" in ASCII). */
const writeLock = 0x4e584657;
const beginShared = `BEGIN; SELECT pg_advisory_xact_lock_shared(${writeLock})`;
const beginAlone = `BEGIN; SELECT pg_advisory_xact_lock(${writeLock})`;

class PostgresEngine implements Engine {
  readonly dialect = 'postgres';
  readonly reader: Session;
  readonly #pool: Pool;
  readonly #streams: Pool;
  readonly #accepted = new Set<Promise<unknown>>();
  #closing: Promise<void> | undefined;

  constructor(pool: Pool, streams: Pool) {
    this.#pool = pool;
    this.#streams = streams;
    for (const one of [pool, streams]) {
      // A connection that dies while it is idle is replaced; the next request tells whether the database is back.
      one.on('error', () => {});
      // So does one that dies between two statements of its transaction, whose next statement fails then.
      one.on('connect', (client) => client.on('error', () => {}));
    }
    const session = sessionOn(pool);
    this.reader = {
      dialect: 'postgres',
      all: (query) => this.#guarded(() => session.all(query)),
      run: (query) => this.#guarded(() => session.run(query)),
      insert: (...row) => this.#guarded(() => session.insert(...row)),
    };
  }

  write<T>(work: (session: Session) => Promise<T>): Promise<T> {
    return this.#accept(() => this.#transaction(beginShared, work));
  }

  writeAlone<T>(work: (session: Session) => Promise<T>): Promise<T> {
    return this.#accept(() => this.#transaction(beginAlone, work));
  }

  /** Rows that nobody can see any more give up their room; what lay there stays on the disk until it is used again. */
  async purge(): Promise<void> {
    await this.#guarded(async () => {
      const client = await this.#pool.connect();
      try {
        await client.query('SET statement_timeout = 0');
        const vacuum: QueryConfig & { readonly query_timeout: number } = {
          text: 'VACUUM',
          query_timeout: longestTimeoutMs,
        };
        await client.query(vacuum);
      } finally {
        client.release(true);
      }
    });
  }

  async #accept<T>(work: () => Promise<T>): Promise<T> {
    const written = this.#guarded(work);
    this.#accepted.add(written);
    try {
      return await written;
    } finally {
      this.#accepted.delete(written);
    }
  }

  async *stream<Row>(query: Sql): AsyncIterable<readonly Row[]> {
    const client = await this.#guarded(() => this.#streams.connect());
    let isBroken = true;
    try {
      await client.query('BEGIN READ ONLY');
      await client.query({ text: `DECLARE rows NO SCROLL CURSOR FOR ${query.text}`, values: query.values });
      for (;;) {
        const { rows } = await client.query(`FETCH ${streamGroup} FROM rows`);
        if (rows.length === 0) break;
        yield rows as Row[];
      }
      await client.query('COMMIT');
      isBroken = false;
    } catch (error) {
      throw asStoreError(error);
    } finally {
      // A stream that was left in the middle takes its connection with it.
      client.release(isBroken);
    }
  }

  async check(): Promise<void> {
    await this.#guarded(async () => {
      const { rows } = await this.#pool.query<{ readOnly: boolean }>('SELECT pg_is_in_recovery() AS "readOnly"');
      if (rows[0]?.readOnly !== false) throw new StoreError('STORE_UNAVAILABLE', 'The database takes no writes.');
    });
  }

  get pendingWrites(): number {
    return this.#accepted.size;
  }

  close(): Promise<void> {
    this.#closing ??= Promise.race([
      Promise.allSettled(this.#accepted).then(() => Promise.all([this.#pool.end(), this.#streams.end()])),
      pause(closeLimitMs, undefined, { ref: false }),
    ]).then(() => {});
    return this.#closing;
  }

  async #guarded<T>(work: () => Promise<T>): Promise<T> {
    if (this.#closing !== undefined) throw new StoreError('STORE_UNAVAILABLE', 'The exam store is closed.');
    try {
      return await work();
    } catch (error) {
      throw asStoreError(error);
    }
  }

  async #transaction<T>(begin: string, work: (session: Session) => Promise<T>): Promise<T> {
    const client = await this.#pool.connect();
    let isBroken = false;
    try {
      for (let attempt = 1; ; attempt += 1) {
        try {
          await client.query(begin);
          const value = await work(sessionOn(client));
          await client.query('COMMIT');
          return value;
        } catch (error) {
          await client.query('ROLLBACK').catch(() => {
            isBroken = true;
          });
          if (isBroken || !isRetryable(error) || attempt === mostAttempts) throw error;
        }
      }
    } finally {
      client.release(isBroken);
    }
  }
}

/** Names of statements that the server keeps prepared, by text. */
const names = new Map<string, string>();
const mostNames = 500;

function named({ text, values }: Pick<Sql, 'text' | 'values'>): { name?: string; text: string; values: unknown[] } {
  let name = names.get(text);
  if (name === undefined) {
    if (names.size >= mostNames) return { text, values };
    name = `s${names.size}`;
    names.set(text, name);
  }
  return { name, text, values };
}

function sessionOn(client: Pool | PoolClient): Session {
  return {
    dialect: 'postgres',
    all: async <Row>(query: Sql) => (await client.query(named(query))).rows as Row[],
    run: async (query) => (await client.query(named(query))).rowCount ?? 0,
    // One round trip, whatever the number of rows.
    insert: async (table, columns, rows, onConflict = '') => {
      if (rows.length === 0) return 0;
      const names = Object.keys(columns);
      const arrays = Object.values(columns).map((type, index) => `$${index + 1}::${type}[]`);
      const text = `INSERT INTO ${table} (${names.join(', ')}) SELECT * FROM unnest(${arrays.join(', ')}) ${onConflict}`;
      const values = names.map((_, index) => rows.map((row) => row[index]));
      return (await client.query(named({ text, values }))).rowCount ?? 0;
    },
  };
}
