import { rmSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { Client } from 'pg';
import type { EngineName } from '../support/engines.ts';
import { startPostgres, type TestPostgres } from '../support/postgres.ts';
import { temporaryFolder } from '../support/service.ts';
import { type SpawnedService, spawnService } from '../support/spawned-service.ts';

/** One store on an engine that outlives any number of processes that serve it. */
export interface LastingStore {
  readonly dataDir: string;
  /** The server of the database; undefined with SQLite. */
  readonly postgres: TestPostgres | undefined;
  readonly databaseUrl: string;
  start(env?: Readonly<Record<string, string>>): Promise<SpawnedService>;
  /** Asks the database itself; no service may have a SQLite file open. */
  rows(text: string): Promise<Record<string, unknown>[]>;
  /** Ends every process that was started on it and removes it. */
  remove(): Promise<void>;
}

export async function lastingStore(engine: EngineName): Promise<LastingStore> {
  const dataDir = temporaryFolder();
  const postgres = engine === 'postgres' ? await startPostgres() : undefined;
  const databaseUrl = (await postgres?.newDatabase()) ?? `sqlite:${join(dataDir, 'exams.sqlite')}`;
  const services: SpawnedService[] = [];
  return {
    dataDir,
    postgres,
    databaseUrl,
    async start(env = {}) {
      const service = await spawnService({
        DATA_DIR: dataDir,
        DATABASE_URL: databaseUrl,
        LOG_LEVEL: 'error',
        ...env,
      });
      services.push(service);
      return service;
    },
    async rows(text) {
      if (postgres === undefined) {
        const db = new Database(join(dataDir, 'exams.sqlite'), { readonly: true });
        try {
          return db.prepare(text).all() as Record<string, unknown>[];
        } finally {
          db.close();
        }
      }
      const client = new Client({ connectionString: databaseUrl, options: '-c search_path=neuroexam' });
      await client.connect();
      try {
        return (await client.query(text)).rows;
      } finally {
        await client.end();
      }
    },
    async remove() {
      await Promise.all(services.map((service) => service.end('SIGKILL')));
      await postgres?.stop();
      rmSync(dataDir, { recursive: true, force: true });
    },
  };
}
