import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll } from 'vitest';
import type { StoreTarget } from '../../src/store/open-stores.ts';
import { startPostgres, type TestPostgres } from './postgres.ts';
import { temporaryFolder } from './service.ts';

export const engines = ['sqlite', 'postgres'] as const;
export type EngineName = (typeof engines)[number];

/**
 * For the whole of a test file: a PostgreSQL server and a folder for SQLite files.
 * @returns a function that gives a new, empty store
 */
export function emptyStores(): (engine: EngineName) => Promise<StoreTarget> {
  let postgres: TestPostgres;
  let folder: string;
  let files = 0;
  beforeAll(async () => {
    folder = temporaryFolder();
    postgres = await startPostgres();
  });
  afterAll(async () => {
    await postgres.stop();
    rmSync(folder, { recursive: true, force: true });
  });
  return async (engine) => {
    files += 1;
    return engine === 'sqlite'
      ? { engine, file: join(folder, `${files}.sqlite`) }
      : { engine, url: await postgres.newDatabase() };
  };
}
