import { readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { StoreError } from '../../src/kernel/errors.ts';
import { contentHash } from '../../src/store/content-hash.ts';
import type { ExamContent, ExamRepository } from '../../src/store/exam-repository.ts';
import { openSqlite } from '../../src/store/sqlite-connection.ts';
import { openSqliteExamRepository, SqliteExamRepository } from '../../src/store/sqlite-exam-repository.ts';
import { temporaryFolder } from '../support/service.ts';

const receivedAt = new Date('2026-03-14T09:21:00Z');

function content(text: string): ExamContent {
  return {
    raw: Buffer.from(`{"note": "${text}"}`),
    contentHash: contentHash({ note: text }),
    bundle: Buffer.from(`{"resourceType":"Bundle","id":"${text}"}`),
    modelVersion: '1.0.0',
    receivedAt,
  };
}

describe('the SQLite exam store', () => {
  let folder: string;
  let file: string;
  let exams: ExamRepository;

  beforeEach(() => {
    folder = temporaryFolder();
    file = join(folder, 'data', 'exams.sqlite');
    exams = openSqliteExamRepository(file);
  });
  afterEach(async () => {
    await exams.close();
    rmSync(folder, { recursive: true, force: true });
  });

  async function reopen(): Promise<void> {
    await exams.close();
    exams = openSqliteExamRepository(file);
  }

  it('returns what was kept, byte for byte, also after a restart', async () => {
    const first = await exams.insert('a', content('one'));
    expect(first).toMatchObject({ created: true, exam: { id: 'a', version: 1, modelVersion: '1.0.0' } });
    await reopen();
    const found = await exams.find('a');
    expect(found?.raw.toString()).toBe('{"note": "one"}');
    expect(found?.bundle.toString()).toBe('{"resourceType":"Bundle","id":"one"}');
    expect(found?.receivedAt).toBe('2026-03-14T09:21:00.000Z');
  });

  it('keeps nothing on a repeat and answers the first Bundle', async () => {
    await exams.insert('a', content('one'));
    const repeat = await exams.insert('a', { ...content('one'), bundle: Buffer.from('another') });
    expect(repeat.created).toBe(false);
    expect(repeat.exam.bundle.toString()).toBe('{"resourceType":"Bundle","id":"one"}');
    expect(await exams.history('a')).toHaveLength(1);
  });

  it('refuses other content under the same identifier and leaves the rest of the group alone', async () => {
    await exams.insert('a', content('one'));
    const group = await Promise.allSettled([
      exams.insert('b', content('two')),
      exams.insert('a', content('changed')),
      exams.insert('c', content('three')),
    ]);
    expect(group.map((result) => result.status)).toEqual(['fulfilled', 'rejected', 'fulfilled']);
    expect(group[1]).toMatchObject({ reason: { code: 'IDENTIFIER_IN_USE' } });
    expect((await exams.find('c'))?.version).toBe(1);
  });

  it('lets exactly one of several corrections of the same version win and keeps the old version', async () => {
    await exams.insert('a', content('one'));
    const race = await Promise.allSettled(
      Array.from({ length: 40 }, (_, n) => exams.correct('a', 1, content(`correction ${n}`))),
    );
    const winners = race.filter((result) => result.status === 'fulfilled');
    expect(winners).toHaveLength(1);
    for (const result of race) {
      if (result.status === 'rejected') expect(result.reason.code).toBe('VERSION_MISMATCH');
    }
    expect((await exams.history('a')).map((version) => version.version)).toEqual([1, 2]);
    expect((await exams.find('a', 1))?.raw.toString()).toBe('{"note": "one"}');
    expect((await exams.find('a'))?.raw).toEqual(winners[0]?.value.raw);
  });

  it('knows no exam and no version that was never kept', async () => {
    await exams.insert('a', content('one'));
    expect(await exams.find('b')).toBeUndefined();
    expect(await exams.find('a', 2)).toBeUndefined();
    expect(await exams.history('b')).toEqual([]);
    await expect(exams.correct('b', 1, content('x'))).rejects.toMatchObject({ code: 'NOT_FOUND' });
  });

  it('settles every write that was accepted before it closes, and none after', async () => {
    const accepted = Array.from({ length: 50 }, (_, n) => exams.insert(`exam-${n}`, content(`${n}`)));
    const closed = exams.close();
    await expect(exams.insert('late', content('late'))).rejects.toMatchObject({ code: 'STORE_UNAVAILABLE' });
    expect((await Promise.all(accepted)).every((result) => result.created)).toBe(true);
    await closed;
    await expect(exams.find('exam-0')).rejects.toMatchObject({ code: 'STORE_UNAVAILABLE' });
    await expect(exams.check()).rejects.toBeInstanceOf(StoreError);
    exams = openSqliteExamRepository(file);
    expect((await exams.find('exam-49'))?.version).toBe(1);
  });

  it('is closed to a second writer while it is open', async () => {
    expect(() => openSqliteExamRepository(file)).toThrow(/Another process/);
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
    const refused = (path: string) => {
      const before = readFileSync(path);
      expect(() => openSqliteExamRepository(path)).toThrow(expect.objectContaining({ code: 'STORE_CORRUPT' }));
      expect(readFileSync(path).equals(before)).toBe(true);
    };
    const foreign = join(folder, 'foreign.sqlite');
    const other = new Database(foreign);
    other.pragma('journal_mode = WAL');
    other.exec('CREATE TABLE theirs (x)');
    other.close();
    refused(foreign);

    await exams.close();
    const newer = new Database(file);
    newer.pragma('user_version = 99');
    newer.close();
    refused(file);

    const text = join(folder, 'text.sqlite');
    writeFileSync(text, 'This is not a database. '.repeat(400));
    refused(text);
  });

  it('reports a damaged Bundle as damage and not as an answer', async () => {
    await exams.insert('a', content('one'));
    await exams.close();
    const db = new Database(file);
    db.exec("DROP TRIGGER exam_version_is_kept; UPDATE exam_version SET bundle = x'789c00'");
    db.close();
    exams = openSqliteExamRepository(file);
    await expect(exams.find('a')).rejects.toMatchObject({ code: 'STORE_CORRUPT' });
  });

  it('reports a full store, keeps what was acknowledged, and goes on when there is room again', async () => {
    await exams.insert('kept', content('kept'));
    await exams.close();
    const { full, db } = openWithPageLimit(file);
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
function openWithPageLimit(file: string) {
  const store = openSqlite(file);
  store.db.pragma('max_page_count = 20');
  return { full: new SqliteExamRepository(store), db: store.db };
}
