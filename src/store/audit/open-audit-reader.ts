import { Client, types } from 'pg';
import type { Sql } from 'sql-template-tag';
import { StoreError } from '../../kernel/errors.ts';
import type { StoreTarget } from '../open-stores.ts';
import { asStoreError as asPostgresError } from '../postgres/errors.ts';
import { postgresSchema } from '../schema/migrate-postgres.ts';
import { asStoreError as asSqliteError, openReader } from '../sqlite/connection.ts';

/** Reads the trail as it stood when the reader was opened, also while a service goes on writing to it. */
export interface AuditReader {
  /** Whole numbers come as numbers. */
  all<Row>(query: Sql): Promise<Row[]>;
  close(): Promise<void>;
}

/** @throws StoreError when the store cannot be opened or has no audit trail */
export async function openAuditReader(target: StoreTarget): Promise<AuditReader> {
  return target.engine === 'sqlite' ? ofSqlite(target.file) : ofPostgres(target.url);
}

function ofSqlite(file: string): AuditReader {
  const attempt = <T>(work: () => T): T => {
    try {
      return work();
    } catch (error) {
      throw told(error, asSqliteError);
    }
  };
  const db = attempt(() => openReader(file));
  try {
    attempt(() => {
      db.exec('BEGIN');
      db.prepare('SELECT n FROM audit_head').get();
    });
  } catch (error) {
    db.close();
    throw error;
  }
  return {
    all: async <Row>(query: Sql) => attempt(() => db.prepare(query.sql).all(...query.values) as Row[]),
    close: async () => {
      db.close();
    },
  };
}

/** No number here exceeds 2^53. */
const int8 = 20;
types.setTypeParser(int8, Number);

async function ofPostgres(url: string): Promise<AuditReader> {
  const options = `-c search_path=${postgresSchema} -c TimeZone=UTC`;
  const client = new Client({ connectionString: url, options, connectionTimeoutMillis: 5_000 });
  client.on('error', () => {});
  const attempt = async <T>(work: () => Promise<T>): Promise<T> => {
    try {
      return await work();
    } catch (error) {
      throw told(error, asPostgresError);
    }
  };
  try {
    await attempt(async () => {
      await client.connect();
      await client.query('BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY');
      await client.query('SELECT n FROM audit_head');
    });
  } catch (error) {
    await client.end().catch(() => {});
    throw error;
  }
  return {
    all: <Row>({ text, values }: Sql) => attempt(async () => (await client.query({ text, values })).rows as Row[]),
    close: () => client.end(),
  };
}

/** A store that no service of this version has opened yet has no trail. */
function told(error: unknown, asStoreError: (error: unknown) => unknown): unknown {
  if (error instanceof Error && /no such table|relation .* does not exist/.test(error.message)) {
    return new StoreError('STORE_UNAVAILABLE', 'There is no audit trail here; the service makes it when it starts.', {
      cause: error,
    });
  }
  return asStoreError(error);
}
