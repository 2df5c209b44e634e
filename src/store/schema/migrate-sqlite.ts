import type { Database } from 'better-sqlite3';
import { StoreError } from '../../kernel/errors.ts';
import { schemaSteps } from './steps.ts';

/** Marks the file as an exam store ("NXFH"), so that a database of another program is never written to. */
const applicationId = 0x4e584648;

/**
 * Brings a database to the newest layout; each step is one transaction together with its version number, so a kill in
 * the middle leaves the earlier layout whole.
 * @throws StoreError STORE_CORRUPT for a file of another program or of a newer version of this one
 */
export function migrateSqlite(db: Database): void {
  const owner = db.pragma('application_id', { simple: true });
  const isEmpty = db.prepare('SELECT count(*) FROM sqlite_schema').pluck().get() === 0;
  if (owner !== applicationId && !isEmpty) {
    throw new StoreError('STORE_CORRUPT', 'The database file belongs to another program.');
  }
  const version = Number(db.pragma('user_version', { simple: true }));
  if (version > schemaSteps.length) {
    throw new StoreError('STORE_CORRUPT', 'The exam store was written by a newer version of this program.');
  }
  for (const [index, step] of schemaSteps.entries()) {
    if (index < version) continue;
    db.transaction(() => {
      db.exec(step.sqlite);
      db.pragma(`application_id = ${applicationId}`);
      db.pragma(`user_version = ${index + 1}`);
    }).immediate();
  }
}
