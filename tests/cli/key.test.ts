import { spawnSync } from 'node:child_process';
import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { callerWithKey, readKeys } from '../../src/access/api-key.ts';
import { keyCommand } from '../../src/cli/commands/key.ts';
import { authorizationFor } from '../../src/cli/commands/service-token.ts';
import { UsageError } from '../../src/cli/commands/surroundings.ts';
import { built, root } from '../support/built.ts';
import { send } from '../support/client.ts';
import { temporaryFolder } from '../support/service.ts';
import { type SpawnedService, spawnService } from '../support/spawned-service.ts';

const folder = temporaryFolder();
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function run(args: readonly string[], env: Readonly<Record<string, string>> = {}) {
  const options = { cwd: root, env: { ...process.env, ...env }, timeout: 60_000, encoding: 'utf8' } as const;
  return spawnSync(process.execPath, [...built('cli/neuroexam.js'), ...args], options);
}

describe('neuroexam key', () => {
  let made: ReturnType<typeof run>;
  let key: string;
  let service: SpawnedService;
  beforeAll(async () => {
    made = run(['key', '--name', 'ward-7', '--scope', 'system/exam.cru', 'system/Observation.rs']);
    key = made.stderr.trim();
    const keysFile = join(folder, 'keys.ndjson');
    writeFileSync(keysFile, made.stdout);
    // Access control is what lets it listen on every address.
    service = await spawnService({ HOST: '0.0.0.0', DATA_DIR: folder, API_KEYS_FILE: keysFile });
  });
  afterAll(() => service.end('SIGKILL'));

  it('makes a key and the line for the file, which has the hash alone', () => {
    expect(made.status).toBe(0);
    expect(made.stdout).not.toContain(key);
    expect(callerWithKey(readKeys(made.stdout), key)).toEqual({
      client: 'key:ward-7',
      scopes: ['system/exam.cru', 'system/Observation.rs'],
    });
  });

  it('opens a service to the commands that send it', () => {
    const env = { NEUROEXAM_TOKEN: key };
    expect(run(['load-demo', '--count', '2', '--to', service.url], env).stderr).toMatch(/2 invented exams kept/);
    const table = run(['view', 'power', '--from', `${service.url}/fhir`], env);
    expect([table.status, table.stdout.split('\n').length > 2]).toEqual([0, true]);
  });

  it('is not let in when it is wrong, and never stands in the log', async () => {
    const wrong = `${key.slice(0, -3)}AAA`;
    const refused = await send(`${service.url}/exams/x`, { headers: { Authorization: `Bearer ${wrong}` } });
    expect(refused.status).toBe(401);
    expect((await send(`${service.url}/exams/x?access_token=${wrong}`)).status).toBe(400);
    await service.end('SIGTERM');
    expect(service.log()).not.toMatch(/neuroexam_[A-Za-z0-9_-]{10}/);
    expect(service.log()).not.toMatch(/WARNING|No access control/);
    expect(service.log()).toMatch(/"code":"INVALID_TOKEN","reason":"key"/);
  });

  it.each([
    ['a name with blanks', ['--name', 'Ward 7', '--scope', 'system/exam.c']],
    ['a scope that is not known', ['--name', 'ward-7', '--scope', 'system/exams.c']],
    ['a subject that is no reference', ['--name', 'ward-7', '--scope', 'system/exam.c', '--subject', '4711']],
  ])('refuses %s', (_, args) => {
    expect(() => keyCommand().parse(args, { from: 'user' })).toThrow(UsageError);
  });
});

describe('the token for a service', () => {
  it('goes to this machine or over https, and nowhere in the clear', () => {
    const env = { NEUROEXAM_TOKEN: ' secret ' };
    expect(authorizationFor('https://exams.example', env)).toEqual({ Authorization: 'Bearer secret' });
    expect(authorizationFor('http://127.0.0.1:8080', env)).toEqual({ Authorization: 'Bearer secret' });
    expect(authorizationFor('http://exams.example', {})).toEqual({});
    for (const url of ['http://exams.example', 'http://127.0.0.1.evil.example', 'http://localhost.evil.example']) {
      expect(() => authorizationFor(url, env)).toThrow(/https/);
    }
  });
});
