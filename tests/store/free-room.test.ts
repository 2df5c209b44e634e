import { rmSync } from 'node:fs';
import { statfs } from 'node:fs/promises';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import type { ExamRepository } from '../../src/store/exam-repository.ts';
import { temporaryFolder } from '../support/service.ts';
import { openExams } from '../support/stores.ts';

vi.mock('node:fs/promises', { spy: true });

let folder: string;
let exams: ExamRepository;
beforeEach(async () => {
  folder = temporaryFolder();
  exams = await openExams(join(folder, 'exams.sqlite'));
});
afterEach(async () => {
  await exams.close();
  rmSync(folder, { recursive: true, force: true });
});

it('is ready only while the disk has room for some exams', async () => {
  await expect(exams.check()).resolves.toBeUndefined();
  const disk = await statfs(folder);
  vi.mocked(statfs).mockResolvedValueOnce({ ...disk, bsize: 4096, bavail: 100 });
  await expect(exams.check()).rejects.toMatchObject({ code: 'STORE_FULL' });
  await expect(exams.check()).resolves.toBeUndefined();
});

it('is not ready when the folder cannot be looked at', async () => {
  vi.mocked(statfs).mockRejectedValueOnce(Object.assign(new Error('gone'), { code: 'ENOENT' }));
  await expect(exams.check()).rejects.toMatchObject({ code: 'STORE_UNAVAILABLE' });
});
