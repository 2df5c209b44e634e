import { randomBytes } from 'node:crypto';
import sql from 'sql-template-tag';
import { StoreError } from '../kernel/errors.ts';
import type { Engine } from './engine.ts';

const purpose = 'links';

/**
 * The key under which links are sealed: made once for a store, so that every instance on it knows it and a link outlives
 * a restart. It protects what stands in links from those who see links, not from those who read the store.
 * @returns 32 bytes
 * @throws StoreError
 */
export async function openLinkKey(engine: Engine): Promise<Buffer> {
  const made = randomBytes(32).toString('hex');
  const kept = await keyIn(engine);
  if (kept !== undefined) return kept;
  await engine.write((session) =>
    session.run(
      sql`INSERT INTO service_key (purpose, key) VALUES (${purpose}, ${made}) ON CONFLICT (purpose) DO NOTHING`,
    ),
  );
  const key = await keyIn(engine);
  if (key === undefined) throw new StoreError('STORE_UNAVAILABLE', 'The store does not keep the key of the links.');
  return key;
}

async function keyIn(engine: Engine): Promise<Buffer | undefined> {
  const [row] = await engine.reader.all<{ key: string }>(sql`SELECT key FROM service_key WHERE purpose = ${purpose}`);
  return row === undefined ? undefined : Buffer.from(row.key, 'hex');
}
