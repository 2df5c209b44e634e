import { readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { searchRules } from '../../src/search/search-rules.ts';
import { contentHash } from '../../src/store/content-hash.ts';
import type { ExamContent, ExamRepository } from '../../src/store/exam-repository.ts';
import { createExamStore } from '../../src/store/exam-store.ts';
import { openParameters } from '../../src/store/index/parameters.ts';
import { TokenDictionary } from '../../src/store/index/tokens.ts';
import { openSqlite } from '../../src/store/sqlite/connection.ts';
import { SqliteEngine } from '../../src/store/sqlite/engine.ts';
import { temporaryFolder } from '../support/service.ts';
import { openExams } from '../support/stores.ts';

const receivedAt = new Date('2026-03-14T09:21:00Z');

function content(text: string): ExamContent {
  return {
    raw: Buffer.from(`{"note": "${text}"}`),
    contentHash: contentHash({ note: text }),
    bundle: Buffer.from(`{"resourceType":"Bundle","id":"${text}"}`),
    resources: [],
    modelVersion: '1.0.0',
    receivedAt,
  };
}

describe('the SQLite exam store', () => {
  let folder: string;
  let file: string;
  let exams: ExamRepository;

  beforeEach(async () => {
    folder = temporaryFolder();
    file = join(folder, 'data', 'exams.sqlite');
    exams = await openExams(file);
  });
  afterEach(async () => {
    await exams.close();
    rmSync(folder, { recursive: true, force: true });
  });

  async function reopen(): Promise<void> {
    await exams.close();
    exams = await openExams(file);
  }

  it('is closed to a second writer while it is open', async () => {
    await expect(openExams(file)).rejects.toThrow(/Another process/);
    await reopen();
  });

  it('keeps its folder to its owner', () => {
    expect(statSync(join(folder, 'data')).mode & 0o777).toBe(0o700);
  });

  it('can be read by a backup tool while it is open', async () => {
    await exams.insert('a', content('one'));
    const backup = new Database(file, { readonly: true });
    expect(backup.prepare('SELECT count(*) FROM exam_version').pluck().get()).toBe(1);
    backup.close();
  });

  it('never lets a stored version be changed or removed', async () => {
    await exams.insert('a', content('one'));
    await exams.close();
    const db = new Database(file);
    expect(() => db.exec("UPDATE exam_version SET raw = x'00'")).toThrow(/never changes/);
    expect(() => db.exec('DELETE FROM exam_version')).toThrow(/never removed/);
    db.close();
  });

  it('refuses the file of another program, of a newer version, and one that is no database', async () => {
    const refused = async (path: string) => {
      const before = readFileSync(path);
      await expect(openExams(path)).rejects.toMatchObject({ code: 'STORE_CORRUPT' });
      expect(readFileSync(path).equals(before)).toBe(true);
    };
    const foreign = join(folder, 'foreign.sqlite');
    const other = new Database(foreign);
    other.pragma('journal_mode = WAL');
    other.exec('CREATE TABLE theirs (x)');
    other.close();
    await refused(foreign);

    await exams.close();
    const newer = new Database(file);
    newer.pragma('user_version = 99');
    newer.close();
    await refused(file);

    const text = join(folder, 'text.sqlite');
    writeFileSync(text, 'This is not a database. '.repeat(400));
    await refused(text);
  });

  it('reports a damaged Bundle as damage and not as an answer', async () => {
    await exams.insert('a', content('one'));
    await exams.close();
    const db = new Database(file);
    db.exec("DROP TRIGGER exam_version_is_kept; UPDATE exam_version SET bundle = x'789c00'");
    db.close();
    exams = await openExams(file);
    await expect(exams.find('a')).rejects.toMatchObject({ code: 'STORE_CORRUPT' });
  });

  it('reports a full store, keeps what was acknowledged, and goes on when there is room again', async () => {
    await exams.insert('kept', content('kept'));
    await exams.close();
    const { full, db } = await openWithPageLimit(file);
    const big = { ...content('big'), raw: Buffer.alloc(400_000, 32) };
    await expect(full.insert('big', big)).rejects.toMatchObject({ code: 'STORE_FULL' });
    expect((await full.find('kept'))?.version).toBe(1);
    expect(await full.find('big')).toBeUndefined();
    db.pragma('max_page_count = 1000000');
    expect((await full.insert('big', big)).created).toBe(true);
    await full.close();
  });
});

/** A store whose file may not grow, which is what a full disk looks like to SQLite. */
async function openWithPageLimit(file: string) {
  const store = openSqlite(file);
  const engine = new SqliteEngine(store);
  const parameters = await openParameters(engine, searchRules);
  store.db.pragma(`max_page_count = ${store.db.pragma('page_count', { simple: true })}`);
  return { full: createExamStore(engine, { tokens: new TokenDictionary(), parameters }), db: store.db };
}
