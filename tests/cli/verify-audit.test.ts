import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { readConfig } from '../../src/config.ts';
import { type RunningService, startService } from '../../src/service.ts';
import { built, compiledByBuild, root } from '../support/built.ts';
import { send } from '../support/client.ts';
import { temporaryFolder } from '../support/service.ts';

let dataDir: string;
let service: RunningService;
beforeEach(async () => {
  dataDir = temporaryFolder();
  service = await startService(readConfig({ PORT: '0', LOG_LEVEL: 'silent', DATA_DIR: dataDir }), compiledByBuild());
});
afterEach(async () => {
  await service.stop();
  rmSync(dataDir, { recursive: true, force: true });
});

function verify(folder: string, ...args: readonly string[]) {
  const command = [...built('cli/neuroexam.js'), 'verify-audit', '--data-dir', folder, ...args];
  const { status, stdout, stderr } = spawnSync(process.execPath, command, { cwd: root, input: '', timeout: 60_000 });
  return { status, stdout: stdout.toString(), stderr: stderr.toString() };
}

it('verifies the trail of a running service and of a copy, by an anchor too, and tells where it is broken', async () => {
  const path = `${service.url}/fhir/Observation?_summary=count`;
  for (let n = 0; n < 5; n += 1) await send(path);
  const first = verify(dataDir);
  expect([first.status, first.stderr]).toEqual([0, '']);
  const { count, anchor } = JSON.parse(first.stdout) as { count: number; anchor: string };
  expect([count, anchor]).toEqual([5, expect.stringMatching(/^[0-9a-f]{64}$/)]);
  await send(path);
  expect(JSON.parse(verify(dataDir, '--anchor', anchor).stdout)).toMatchObject({ count: 6 });

  const copy = join(dataDir, 'copy');
  mkdirSync(copy);
  for (const name of ['exams.sqlite', 'exams.sqlite-wal']) copyFileSync(join(dataDir, name), join(copy, name));
  expect(JSON.parse(verify(copy, '--anchor', anchor).stdout)).toMatchObject({ count: 6 });
  const db = new Database(join(copy, 'exams.sqlite'));
  db.exec('DROP TRIGGER audit_event_stays; DELETE FROM audit_event WHERE n = 4');
  db.close();
  const broken = verify(copy);
  expect([broken.status, JSON.parse(broken.stdout)]).toEqual([
    1,
    expect.objectContaining({ count: 3, fault: { n: 4, text: 'it is missing' } }),
  ]);
  expect(broken.stderr).toMatch(/broken at entry 4/);

  expect(verify(dataDir, '--anchor', 'f'.repeat(64)).status).toBe(1);
  expect(verify(dataDir, '--anchor', 'x')).toMatchObject({ status: 2, stdout: '' });
  const none = verify(join(dataDir, 'nowhere'));
  expect([none.status, none.stdout]).toEqual([2, '']);
});
