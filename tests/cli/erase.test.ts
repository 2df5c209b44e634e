import { spawnSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import type { AuditEvent } from 'fhir/r4.js';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { readConfig } from '../../src/config.ts';
import { type RunningService, startService } from '../../src/service.ts';
import { built, compiledByBuild, root } from '../support/built.ts';
import { send, sendJson } from '../support/client.ts';
import { examNumbered } from '../support/example-exam.ts';
import { temporaryFolder } from '../support/service.ts';

let dataDir: string;
let service: RunningService | undefined;
beforeEach(() => {
  dataDir = temporaryFolder();
});
afterEach(async () => {
  await service?.stop();
  rmSync(dataDir, { recursive: true, force: true });
});

async function start(): Promise<string> {
  service = await startService(readConfig({ PORT: '0', LOG_LEVEL: 'silent', DATA_DIR: dataDir }), compiledByBuild());
  return service.url;
}

async function stop(): Promise<void> {
  await service?.stop();
  service = undefined;
}

function run(...args: readonly string[]) {
  const command = [...built('cli/neuroexam.js'), ...args, '--data-dir', dataDir];
  const { status, stdout, stderr } = spawnSync(process.execPath, command, { cwd: root, input: '', timeout: 60_000 });
  return { status, stdout: stdout.toString(), stderr: stderr.toString() };
}

it('erases an exam by command, answers 410 for it, and takes it again as a new one', async () => {
  let url = await start();
  const exam = examNumbered('to-be-erased');
  const posted = await sendJson(`${url}/exams`, exam);
  const path = String(posted.headers.get('Location'));
  const id = path.replace('/exams/', '');
  const impression = posted
    .json<{ entry: { resource: { resourceType: string; id: string } }[] }>()
    .entry.find(({ resource }) => resource.resourceType === 'ClinicalImpression')?.resource.id;
  expect((await send(`${url}/fhir/ClinicalImpression/${impression}`)).status).toBe(200);

  expect(run('erase', '--exam', id, '--reason', 'a trial', '--yes')).toMatchObject({
    status: 2,
    stdout: '',
    stderr: expect.stringContaining('Another process'),
  });
  await stop();
  for (const [wrong, said] of [
    [['--exam', 'x', '--reason', 'a trial', '--yes'], /UUID/],
    [['--exam', id, '--reason', ' ', '--yes'], /1 to 500/],
    [['--exam', id, '--reason', 'a trial'], /--yes/],
  ] as const) {
    const answer = run('erase', ...wrong);
    expect([answer.status, answer.stdout]).toEqual([2, '']);
    expect(answer.stderr).toMatch(said);
  }
  const none = id.replace(/^./, (sign) => (sign === '0' ? '1' : '0'));
  expect(run('erase', '--exam', none, '--reason', 'a trial', '--yes').status).toBe(1);
  expect(run('erasures')).toMatchObject({ status: 0, stdout: '' });

  const erased = run('erase', '--exam', id, '--reason', 'a trial', '--yes');
  expect([erased.status, erased.stderr]).toEqual([0, '']);
  expect(JSON.parse(erased.stdout)).toMatchObject({ examId: id, reason: 'a trial', versions: 1 });
  expect(run('erasures', '--purge').stdout).toBe(erased.stdout);

  url = await start();
  for (const answer of [
    await send(`${url}${path}`),
    await send(`${url}${path}?version=1`),
    await send(`${url}${path}/bundle`),
    await sendJson(
      `${url}${path}`,
      { ...exam, status: 'amended' },
      { method: 'PUT', headers: { 'If-Match': 'W/"1"' } },
    ),
  ]) {
    expect(answer.status).toBe(410);
    expect(JSON.stringify(answer.json())).toContain('ERASED');
  }
  expect((await send(`${url}/fhir/ClinicalImpression/${impression}`)).status).toBe(404);
  expect((await send(`${url}/exams/${none}`)).status).toBe(404);

  // Who had to do with it stays on record, and that it was erased.
  const trail = await send(`${url}/fhir/AuditEvent?entity:identifier=${id}&subtype=create,delete&_sort=date`);
  const events = trail.json<{ entry: { resource: AuditEvent }[] }>().entry.map(({ resource }) => resource);
  expect(events.map(({ action, type }) => [action, type.code])).toEqual([
    ['C', 'rest'],
    ['D', '110110'],
  ]);
  expect(run('verify-audit')).toMatchObject({ status: 0, stderr: '' });

  expect((await sendJson(`${url}/exams`, exam)).status).toBe(201);
  expect((await send(`${url}${path}`)).status).toBe(200);
  expect((await send(`${url}${path}?version=2`)).status).toBe(404);
  expect((await send(`${url}/fhir/ClinicalImpression/${impression}`)).status).toBe(200);
}, 120_000);
