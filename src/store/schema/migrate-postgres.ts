import type { ClientBase } from 'pg';
import { StoreError } from '../../kernel/errors.ts';
import { schemaSteps } from './steps.ts';

/** The schema that holds everything; the first one on the search path of every connection. */
export const postgresSchema = 'neuroexam';

/** Any number will do, if all instances take the same: "NXFH" in ASCII. */
const migrationLock = 0x4e584648;

/**
 * Brings a database to the newest layout. Instances that start at once wait for each other; each step is one
 * transaction together with its version number.
 * @throws StoreError STORE_CORRUPT for a schema that a newer version of this program made
 */
export async function migratePostgres(client: ClientBase): Promise<void> {
  await client.query('SELECT pg_advisory_lock($1)', [migrationLock]);
  try {
    await client.query(`CREATE SCHEMA IF NOT EXISTS ${postgresSchema}`);
    await client.query('CREATE TABLE IF NOT EXISTS schema_version (version integer NOT NULL)');
    const { rows } = await client.query<{ version: number | null }>(
      'SELECT max(version) AS version FROM schema_version',
    );
    const version = rows[0]?.version ?? 0;
    if (version > schemaSteps.length) {
      throw new StoreError('STORE_CORRUPT', 'The exam store was written by a newer version of this program.');
    }
    for (const [index, step] of schemaSteps.entries()) {
      if (index < version) continue;
      await client.query('BEGIN');
      try {
        await client.query(step.postgres);
        await client.query('INSERT INTO schema_version VALUES ($1)', [index + 1]);
        await client.query('COMMIT');
      } catch (error) {
        await client.query('ROLLBACK');
        throw error;
      }
    }
  } finally {
    await client.query('SELECT pg_advisory_unlock($1)', [migrationLock]);
  }
}
