import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { StoreError } from '../../src/kernel/errors.ts';
import { contentHash } from '../../src/store/content-hash.ts';
import type { ExamContent, ExamRepository } from '../../src/store/exam-repository.ts';
import type { StoreTarget } from '../../src/store/open-stores.ts';
import { startPostgres, type TestPostgres } from '../support/postgres.ts';
import { temporaryFolder } from '../support/service.ts';
import { openTestStores } from '../support/stores.ts';

// One contract for both engines.

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

let postgres: TestPostgres;
beforeAll(async () => {
  postgres = await startPostgres();
});
afterAll(() => postgres.stop());

describe.each(['sqlite', 'postgres'] as const)('the exam store on %s', (engine) => {
  let folder: string;
  let target: StoreTarget;
  let exams: ExamRepository;

  beforeEach(async () => {
    folder = temporaryFolder();
    target =
      engine === 'sqlite'
        ? { engine, file: join(folder, 'exams.sqlite') }
        : { engine, url: await postgres.newDatabase() };
    ({ exams } = await openTestStores(target));
  });
  afterEach(async () => {
    await exams.close();
    rmSync(folder, { recursive: true, force: true });
  });

  async function reopen(): Promise<void> {
    await exams.close();
    ({ exams } = await openTestStores(target));
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
    await reopen();
    expect((await exams.find('exam-49'))?.version).toBe(1);
  });
});
