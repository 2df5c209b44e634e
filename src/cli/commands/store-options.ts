import type { Stores } from '../../store/open-stores.ts';
import type { Surroundings } from './surroundings.ts';

/** Where the store is, as an administrative command takes it; the environment says the rest. */
export interface StoreOptions {
  readonly dataDir?: string;
  readonly databaseUrl?: string;
}

/** Opens the stores for one piece of work and lets go of them whatever happens. @throws ConfigError, StoreError */
export async function withStores<T>(
  { openStores }: Surroundings,
  where: StoreOptions,
  work: (stores: Stores) => Promise<T>,
): Promise<T> {
  const stores = await openStores(environmentOf(where));
  try {
    return await work(stores);
  } finally {
    await stores.exams.close();
  }
}

/** The environment with what was said in its place. */
export function environmentOf({ dataDir, databaseUrl }: StoreOptions): NodeJS.ProcessEnv {
  const own = { DATA_DIR: dataDir, DATABASE_URL: databaseUrl };
  const given = Object.entries(own).filter(([, value]) => value !== undefined);
  // A folder that is named outweighs a database in the environment.
  const base = dataDir !== undefined && databaseUrl === undefined ? { DATABASE_URL: '' } : {};
  return { ...process.env, ...base, ...Object.fromEntries(given) };
}
