import { spawn } from 'node:child_process';
import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { buffer } from 'node:stream/consumers';
import { parse } from 'csv-parse/sync';
import type { Bundle, FhirResource } from 'fhir/r4.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { RunningService } from '../../src/service.ts';
import { built, root } from '../support/built.ts';
import { send, sendJson } from '../support/client.ts';
import { exampleExam, exampleNames } from '../support/example-exam.ts';
import { startTestService, temporaryFolder } from '../support/service.ts';

let service: RunningService;
let folder: string;
/** The Bundles of the examples, one a line, and where they lie. */
let lines: string[];
let bundles: string;
beforeAll(async () => {
  folder = temporaryFolder();
  service = await startTestService();
  lines = [];
  for (const name of exampleNames) {
    const posted = await sendJson(`${service.url}/exams`, exampleExam({}, name));
    const collection = await send(`${service.url}${posted.headers.get('location')}/bundle?type=collection`);
    lines.push(JSON.stringify(collection.json()));
  }
  bundles = join(folder, 'bundles.ndjson');
  writeFileSync(bundles, `${lines.join('\n')}\n`);
}, 120_000);
afterAll(async () => {
  await service.stop();
  rmSync(folder, { recursive: true, force: true });
});

/** Not in the way of the service, which runs in this process. */
async function run(args: readonly string[], input = '') {
  const child = spawn(process.execPath, [...built('cli/neuroexam.js'), 'view', ...args], { cwd: root });
  const ended = new Promise<number | null>((resolve) => child.on('close', resolve));
  child.stdin.end(input);
  const [stdout, stderr] = await Promise.all([buffer(child.stdout), buffer(child.stderr)]);
  return { status: await ended, stdout: stdout.toString(), stderr: stderr.toString() };
}

const rowsIn = (csv: string): Record<string, string>[] => parse(csv, { columns: true });

describe('neuroexam view', () => {
  it('makes the table of a shipped view that has a row for each such Observation in the Bundles', async () => {
    const wanted = lines
      .flatMap((line) => (JSON.parse(line) as Bundle<FhirResource>).entry ?? [])
      .flatMap(({ resource }) => (resource?.resourceType === 'Observation' ? [resource] : []))
      .filter(
        ({ code, meta }) =>
          code.coding?.some((coding) => coding.code?.startsWith('power/')) &&
          meta?.profile?.some((profile) => profile.endsWith('/neuro-exam-finding')),
      );
    const { status, stdout, stderr } = await run(['power', bundles]);
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    const rows = rowsIn(stdout);
    expect(rows.map(({ resource_key }) => resource_key)).toEqual(wanted.map(({ id }) => id));
    expect(rows.length).toBeGreaterThan(10);
  });

  it('gives of a running service the same rows as of its Bundles, and as the service itself', async () => {
    const out = join(folder, 'flags.ndjson');
    const options = ['red-flags', '--format', 'ndjson'];
    const ofFile = await run([...options, bundles]);
    const ofService = await run([...options, '--from', `${service.url}/fhir/`, '--output', out]);
    expect([ofFile.status, ofService.status, ofService.stdout]).toEqual([0, 0, '']);
    const keys = (text: string) =>
      text
        .trimEnd()
        .split('\n')
        .map((line) => (JSON.parse(line) as { resource_key: string }).resource_key)
        .sort();
    expect(keys(readFileSync(out, 'utf8'))).toEqual(keys(ofFile.stdout));
    expect(readFileSync(out, 'utf8')).toBe((await send(`${service.url}/views/red_flags.ndjson`)).text);
    expect(keys(ofFile.stdout).length).toBeGreaterThan(3);
  });

  it('runs a view of ones own over standard input, goes on after faulty lines, and says nothing of a person', async () => {
    const file = join(folder, 'own.json');
    writeFileSync(
      file,
      JSON.stringify({
        resourceType: 'ViewDefinition',
        resource: 'Patient',
        select: [{ column: [{ name: 'id', path: 'id', type: 'id' }] }],
      }),
    );
    const patient = (id: string) => JSON.stringify({ resourceType: 'Patient', id });
    const input = [patient('a'), '{"Secret', '', '"Secret"', patient('b'), patient('c')].join('\r\n');
    const { status, stdout, stderr } = await run([file, '-', '--no-header', '--limit', '2'], input);
    expect({ status, stdout }).toEqual({ status: 1, stdout: 'a\nb\n' });
    expect(stderr).toBe(
      'line 2: Expected one JSON object on the line.\nline 4: Expected a FHIR resource or a Bundle of resources.\n',
    );
    const whole = join(folder, 'whole.json');
    writeFileSync(
      whole,
      JSON.stringify({ resourceType: 'Bundle', entry: [{ resource: JSON.parse(patient('d')) }] }, null, 2),
    );
    expect(await run([file, whole, '-f', 'json'])).toEqual({ status: 0, stdout: '[{"id":"d"}]', stderr: '' });
  });

  it('tells the faults of a view with their places, whoever finds them', async () => {
    const file = join(folder, 'faulty.json');
    const own = { resourceType: 'ViewDefinition', resource: 'Observation' };
    writeFileSync(file, JSON.stringify({ ...own, selct: [], select: [{ column: [{ name: 'a', path: 'id(' }] }] }));
    const here = await run([file, bundles]);
    expect([here.status, here.stdout]).toEqual([1, '']);
    expect(here.stderr).toMatch(/\/selct: .*select/);
    expect(here.stderr).toContain('/select/0/column/0/path');
    writeFileSync(file, JSON.stringify({ ...own, select: [{ column: [{ name: 'a', path: 'code.coding.code' }] }] }));
    const there = await run([file, '--from', `${service.url}/fhir`]);
    expect([there.status, there.stdout]).toEqual([1, '']);
    expect(there.stderr).toMatch(/^\/select\/0\/column\/0\/path: .*several values for column a/);
  });

  it.each([
    ['no input', ['power'], /--from/],
    ['two inputs', ['power', '-', '--from', 'http://127.0.0.1:1/fhir'], /--from/],
    ['a view that is not there', ['powr', '-'], /Did you mean power\?/],
    ['a file that is not there', ['power', 'none.ndjson'], /no file none.ndjson/],
    ['an address that is none', ['power', '--from', 'localhost'], /FHIR base/],
    ['nobody at the address', ['power', '--from', 'http://127.0.0.1:1/fhir'], /cannot be reached/],
    ['a patient without a service', ['power', '-', '--patient', 'Patient/1'], /--from/],
    ['a form that is not there', ['power', '-', '--format', 'xlsx'], /csv, ndjson, json/],
  ])('answers %s with 2', async (_what, args, said) => {
    const { status, stdout, stderr } = await run(args);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toMatch(said);
  });

  it('leaves no file behind when it was used wrongly', async () => {
    const out = join(folder, 'never.csv');
    expect((await run(['power', 'none.ndjson', '--output', out])).status).toBe(2);
    expect(existsSync(out)).toBe(false);
  });

  it('says so when a service breaks off in the middle', async () => {
    const server: Server = createServer((_req, res) => {
      res.write('a,b\n', () => res.destroy());
    });
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    const { port } = server.address() as AddressInfo;
    const { status, stderr } = await run(['power', '--from', `http://127.0.0.1:${port}`]);
    server.close();
    expect(status).toBe(2);
    expect(stderr).toContain('not the whole table');
  });
});
