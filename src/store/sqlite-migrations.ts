import type { Database } from 'better-sqlite3';
import { StoreError } from '../kernel/errors.ts';

/** Marks the file as an exam store ("NXFH"), so that a database of another program is never written to. */
const applicationId = 0x4e584648;

/**
 * Steps from one layout to the next; the position is the version that the step leads to. A published step is never
 * edited, a new one is added at the end.
 */
const steps: readonly string[] = [
  `
  CREATE TABLE exam (
    n  INTEGER PRIMARY KEY,
    id TEXT NOT NULL UNIQUE
  ) STRICT;

  CREATE TABLE exam_version (
    exam          INTEGER NOT NULL REFERENCES exam (n),
    version       INTEGER NOT NULL CHECK (version >= 1),
    received_at   TEXT NOT NULL,
    model_version TEXT NOT NULL,
    content_hash  TEXT NOT NULL CHECK (length(content_hash) = 64),
    raw           BLOB NOT NULL,
    bundle        BLOB NOT NULL,
    PRIMARY KEY (exam, version)
  ) STRICT;

  CREATE TRIGGER exam_version_is_kept BEFORE UPDATE ON exam_version
    BEGIN SELECT RAISE (ABORT, 'a stored version never changes'); END;
  CREATE TRIGGER exam_version_stays BEFORE DELETE ON exam_version
    BEGIN SELECT RAISE (ABORT, 'a stored version is never removed'); END;
  `,
];

/**
 * Brings a database to the newest layout; each step is one transaction together with its version number, so a kill in
 * the middle leaves the earlier layout whole.
 * @throws StoreError STORE_CORRUPT for a file of another program or of a newer version of this one
 */
export function migrate(db: Database): void {
  const owner = db.pragma('application_id', { simple: true });
  const isEmpty = db.prepare('SELECT count(*) FROM sqlite_schema').pluck().get() === 0;
  if (owner !== applicationId && !isEmpty) {
    throw new StoreError('STORE_CORRUPT', 'The database file belongs to another program.');
  }
  const version = Number(db.pragma('user_version', { simple: true }));
  if (version > steps.length) {
    throw new StoreError('STORE_CORRUPT', 'The exam store was written by a newer version of this program.');
  }
  for (const [index, step] of steps.entries()) {
    if (index < version) continue;
    db.transaction(() => {
      db.exec(step);
      db.pragma(`application_id = ${applicationId}`);
      db.pragma(`user_version = ${index + 1}`);
    }).immediate();
  }
}
