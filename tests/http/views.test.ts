import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { setTimeout } from 'node:timers/promises';
import { parse } from 'csv-parse/sync';
import type { Bundle, CapabilityStatement, OperationOutcome } from 'fhir/r4.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { streamChunks } from '../../src/http/stream-chunks.ts';
import type { RunningService } from '../../src/service.ts';
import { send, sendJson } from '../support/client.ts';
import { exampleExam, exampleNames } from '../support/example-exam.ts';
import { startTestService } from '../support/service.ts';

let service: RunningService;
beforeAll(async () => {
  service = await startTestService();
  for (const name of exampleNames) {
    const exam = exampleExam({}, name);
    expect((await sendJson(`${service.url}/exams`, exam)).status).toBe(201);
  }
}, 120_000);
afterAll(() => service.stop());

type Table = readonly Record<string, unknown>[];
const run = (query: string, init?: RequestInit) => send(`${service.url}/fhir/$viewdefinition-run?${query}`, init);
const runBody = (...parameter: object[]) =>
  sendJson(`${service.url}/fhir/$viewdefinition-run`, { resourceType: 'Parameters', parameter });
const rowsOf = async (query: string) => (await run(`_format=json&viewReference=ViewDefinition/${query}`)).json<Table>();
const total = async (path: string) =>
  (await send(`${service.url}/fhir/${path}&_summary=count`)).json<Bundle>().total as number;
const issues = (text: string) => (JSON.parse(text) as OperationOutcome).issue;
const view = (changes: object = {}) => ({
  name: 'v',
  resource: 'Observation',
  select: [{ column: [{ name: 'key', path: 'id', type: 'string' }] }],
  ...changes,
});

const parseCsv = (text: string): string[][] => parse(text);

describe('$viewdefinition-run', () => {
  it('gives as many rows as a search counts resources, in every format the same', async () => {
    const searched = await total('RiskAssessment?_tag:not=x');
    const causes = await rowsOf('causes');
    expect(new Set(causes.map(({ resource_key }) => resource_key)).size).toBe(searched);
    const power = await rowsOf('power');
    const codes = [...new Set(power.map(({ movement_code }) => String(movement_code)))];
    for (const code of codes.slice(0, 5)) {
      const rows = power.filter(({ movement_code }) => movement_code === code);
      expect(rows, code).toHaveLength(await total(`Observation?code=${encodeURIComponent(code)}`));
    }
    const csv = await run('_format=csv&viewReference=ViewDefinition/power');
    expect(csv.headers.get('content-type')).toBe('text/csv; charset=utf-8');
    const [header = [], ...lines] = parseCsv(csv.text);
    const asText = (cell: unknown) => (cell === null ? '' : String(cell));
    expect(lines).toEqual(power.map((row) => header.map((name) => asText(row[name]))));
    const ndjson = await run('viewReference=ViewDefinition/power', { headers: { Accept: 'application/x-ndjson' } });
    expect(ndjson.headers.get('content-type')).toBe('application/x-ndjson');
    expect(
      ndjson.text
        .trimEnd()
        .split('\n')
        .map((line) => JSON.parse(line)),
    ).toEqual(power);
  });

  it('takes _format before Accept, leaves the header out, and stops at _limit', async () => {
    const answer = await run('_format=csv&header=false&_limit=3&viewReference=ViewDefinition/power', {
      headers: { Accept: 'application/xml' },
    });
    expect(answer.status).toBe(200);
    expect(parseCsv(answer.text)).toHaveLength(3);
    const refused = await run('viewReference=ViewDefinition/power', { headers: { Accept: 'application/xml' } });
    expect(refused.status).toBe(406);
  });

  it('answers HEAD as GET, without the rows', async () => {
    const answer = await run('_format=csv&viewReference=ViewDefinition/power', { method: 'HEAD' });
    expect([answer.status, answer.headers.get('content-type'), answer.text]).toEqual([
      200,
      'text/csv; charset=utf-8',
      '',
    ]);
  });

  it('runs a shipped view by its id, and a view that is the whole body, as servers of later versions do', async () => {
    const base = `${service.url}/fhir/ViewDefinition`;
    const power = await rowsOf('power');
    const byId = `${base}/power/$viewdefinition-run`;
    expect((await send(byId, { headers: { Accept: 'application/json' } })).json()).toEqual(power);
    const parameters = [{ name: '_format', valueCode: 'json' }];
    expect((await sendJson(byId, { resourceType: 'Parameters', parameter: parameters })).json()).toEqual(power);
    expect((await send(`${base}/$viewdefinition-run?_format=json&viewReference=ViewDefinition/power`)).json()).toEqual(
      power,
    );
    const whole = { resourceType: 'ViewDefinition', ...view() };
    const bare = await sendJson(`${base}/$viewdefinition-run?_format=ndjson&_limit=2`, whole);
    expect(bare.text.trimEnd().split('\n')).toHaveLength(2);
    expect((await sendJson(byId, whole)).status).toBe(400);
    const missing = await send(`${base}/powr/$viewdefinition-run`);
    expect(missing.status).toBe(404);
    expect(missing.text).toContain('Did you mean ViewDefinition/power?');
  });

  it('finds a view by its canonical address, and answers 404 for one that is not there', async () => {
    const url = 'https://neuroexam-fhir.example/fhir/ViewDefinition/red-flags';
    expect((await run(`viewReference=${encodeURIComponent(url)}&_limit=1`)).status).toBe(200);
    const answer = await run('viewReference=ViewDefinition/none');
    expect(answer.status).toBe(404);
    expect(issues(answer.text)[0]?.code).toBe('not-found');
  });

  it('gives one patient alone, and what changed since', async () => {
    const all = await rowsOf('findings');
    const [first] = all;
    const patient = String(first?.patient_key);
    const own = await rowsOf(`findings&patient=Patient/${patient}`);
    const keys = (rows: Table) => rows.map(({ resource_key }) => resource_key).sort();
    expect(keys(own)).toEqual(keys(all.filter(({ patient_key }) => patient_key === patient)));
    expect(own.length).toBeLessThan(all.length);
    expect(await rowsOf('findings&patient=Patient/nobody')).toEqual([]);
    expect(await rowsOf('findings&_since=2100-01-01T00:00:00Z')).toEqual([]);
    expect(await rowsOf('findings&_since=2000-01-01T00:00:00%2B01:00')).toHaveLength(all.length);
    const device = await runBody(
      { name: 'viewResource', resource: view({ resource: 'Device' }) },
      { name: 'patient', valueReference: { reference: 'Patient/x' } },
    );
    expect(device.status).toBe(400);
  });

  it('runs a view that comes with the request, over the store or over resources that come with it', async () => {
    const format = { name: '_format', valueCode: 'json' };
    const stored = await runBody(format, { name: 'viewResource', resource: view() });
    expect(stored.json<Table>()).toHaveLength(await total('Observation?_tag:not=x'));
    const given = await runBody(
      format,
      { name: 'viewResource', resource: view({ resource: 'Patient' }) },
      { name: 'resource', resource: { resourceType: 'Patient', id: 'a' } },
      { name: 'resource', resource: { resourceType: 'Observation', id: 'b' } },
      { name: 'resource', resource: { resourceType: 'Patient', id: 'c' } },
    );
    expect(given.json()).toEqual([{ key: 'a' }, { key: 'c' }]);
    const ofPatient = await runBody(
      format,
      { name: 'patient', valueReference: { reference: 'Patient/1' } },
      { name: 'viewResource', resource: view() },
      ...['1', '2'].map((id) => ({
        name: 'resource',
        resource: { resourceType: 'Observation', id, subject: { reference: `Patient/${id}` } },
      })),
    );
    expect(ofPatient.json()).toEqual([{ key: '1' }]);
  });

  it('keeps a spreadsheet from running what a caller wrote', async () => {
    const formula = '=HYPERLINK("https://evil.example")';
    const answer = await runBody(
      { name: '_format', valueCode: 'csv' },
      {
        name: 'viewResource',
        resource: view({
          resource: 'Patient',
          select: [{ column: [{ name: 'family', path: 'name.family', type: 'string' }] }],
        }),
      },
      { name: 'resource', resource: { resourceType: 'Patient', name: [{ family: formula }] } },
    );
    expect(parseCsv(answer.text)).toEqual([['family'], [`'${formula}`]]);
  });

  it.each([
    ['no view', [], 400],
    ['two views', [{ name: 'viewReference', valueString: 'ViewDefinition/power' }], 400],
    ['parquet', [{ name: '_format', valueCode: 'parquet' }], 400],
    ['a group', [{ name: 'group', valueReference: { reference: 'Group/1' } }], 400],
    ['a source', [{ name: 'source', valueString: 'https://else.example' }], 400],
    ['a parameter that is not there', [{ name: 'grup', valueString: 'x' }], 400],
    ['a limit that is no number', [{ name: '_limit', valueInteger: -1 }], 400],
    ['a time that is none', [{ name: '_since', valueInstant: 'yesterday' }], 400],
  ])('refuses %s with an OperationOutcome', async (what, parameters, status) => {
    const given = what === 'no view' ? [] : [{ name: 'viewResource', resource: view() }];
    const answer = await runBody(...given, ...parameters);
    expect(answer.status).toBe(status);
    expect(issues(answer.text)[0]?.severity).toBe('error');
  });

  it('answers an invalid view with 422 and a pointer to every fault', async () => {
    const answer = await runBody({
      name: 'viewResource',
      resource: view({ were: [], select: [{ column: [{ name: '1', path: 'id(' }] }] }),
    });
    expect(answer.status).toBe(422);
    const text = JSON.stringify(issues(answer.text));
    for (const pointer of ['/were', '/select/0/column/0/path', '/select/0/column/0/name'])
      expect(text).toContain(`"/parameter/0/resource${pointer}"`);
    expect(issues(answer.text)).toHaveLength(3);
    const other = await runBody({ name: 'viewResource', resource: view({ resource: 'Patient' }) });
    expect(other.status).toBe(422);
    expect(issues(other.text).map(({ diagnostics }) => diagnostics)).toEqual(['/parameter/0/resource/resource']);
    const bare = await sendJson(`${service.url}/fhir/$viewdefinition-run`, {
      resourceType: 'ViewDefinition',
      ...view({ were: [] }),
    });
    expect(issues(bare.text).map(({ diagnostics }) => diagnostics)).toEqual(['/were']);
  });

  it('answers 422 when a view cannot be run over the first resources, without telling of them', async () => {
    const answer = await runBody({
      name: 'viewResource',
      resource: view({ select: [{ column: [{ name: 'c', path: 'code.coding.code', type: 'string' }] }] }),
    });
    expect(answer.status).toBe(422);
    expect(issues(answer.text)[0]?.details?.text).toMatch(/several values for column c/);
    expect(issues(answer.text)[0]?.diagnostics).toBe('/parameter/0/resource/select/0/column/0/path');
  });

  it('bounds what hostile views cost', async () => {
    const each = (name: string) => ({ forEach: '%resource.hasMember', column: [{ name, path: 'reference' }] });
    const nested = (depth: number): string =>
      depth === 0 ? 'reference.exists()' : `%resource.hasMember.where(${nested(depth - 1)}).exists()`;
    const hostile = [
      view({ select: ['a', 'b', 'c', 'd', 'e'].map(each) }),
      view({ select: [{ repeat: ['$this', '%resource.hasMember'], column: [{ name: 'a', path: 'id' }] }] }),
      view({ where: [{ path: nested(12) }] }),
      view({ select: Array.from({ length: 450 }, (_, n) => ({ column: [{ name: `c${n}`, path: nested(2) }] })) }),
      view({ select: [{ column: [{ name: 'a', path: `${'('.repeat(900)}id${')'.repeat(900)}` }] }] }),
    ];
    for (const resource of hostile) {
      const began = performance.now();
      // What fails after the first rows are sent breaks the answer off.
      const some = { name: '_limit', valueInteger: 50 };
      const status = await runBody(some, { name: 'viewResource', resource }).then(
        (answer) => answer.status,
        () => 'broken off',
      );
      expect([200, 422, 'broken off']).toContain(status);
      expect(performance.now() - began).toBeLessThan(20_000);
    }
    expect((await send(`${service.url}/health/ready`)).status).toBe(200);
  }, 120_000);

  it('stands in the statement of capabilities', async () => {
    const { rest } = (await send(`${service.url}/fhir/metadata`)).json<CapabilityStatement>();
    expect(rest?.[0]?.operation?.map(({ name }) => name)).toContain('viewdefinition-run');
  });
});

describe('streamChunks', () => {
  it('makes no more than the caller takes, and stops when the caller goes', async () => {
    let made = 0;
    let isStopped = false;
    async function* endless() {
      try {
        for (;;) {
          made += 1;
          yield 'x'.repeat(16_384);
        }
      } finally {
        isStopped = true;
      }
    }
    const server = createServer((_req, res) => void streamChunks(res as never, endless()).catch(() => {}));
    server.listen(0, '127.0.0.1');
    await once(server, 'listening');
    const caller = new AbortController();
    const { port } = server.address() as AddressInfo;
    const response = await fetch(`http://127.0.0.1:${port}`, { signal: caller.signal });
    await response.body?.getReader().read();
    let before = -1;
    for (let waits = 0; made !== before && waits < 50; waits += 1) {
      before = made;
      await setTimeout(100);
    }
    expect(made).toBe(before);
    caller.abort();
    for (let waits = 0; !isStopped && waits < 50; waits += 1) await setTimeout(50);
    expect(isStopped).toBe(true);
    server.close();
  });
});

describe('/views', () => {
  it('lists the views, gives each as it is published, and its table for a spreadsheet', async () => {
    const list = (await send(`${service.url}/views`)).json<
      { name: string; title: string; url: string; tables: { csv: string }; columns: { name: string }[] }[]
    >();
    expect(list).toHaveLength(10);
    for (const { name, title, url, tables, columns } of list) {
      expect(title).toMatch(/\w/);
      const file = new URL(`../../profiles/views/ViewDefinition-${name.replaceAll('_', '-')}.json`, import.meta.url);
      expect((await send(url)).json()).toEqual(JSON.parse(readFileSync(file, 'utf8')));
      const [header] = parseCsv((await send(`${tables.csv}?_limit=1`)).text);
      expect(header).toEqual(columns.map((column) => column.name));
    }
    expect((await send(`${service.url}/views/power.json`)).json()).toEqual(await rowsOf('power'));
  });

  it.each(['none', 'none.csv', 'power.xml', '..%2Fpower'])('answers 404 for %s', async (name) => {
    const answer = await send(`${service.url}/views/${name}`);
    expect(answer.status).toBe(404);
    expect(answer.headers.get('content-type')).toMatch('problem+json');
  });

  it('names the nearest view for one that is not there', async () => {
    expect((await send(`${service.url}/views/redflags.csv`)).text).toContain('Did you mean red_flags?');
  });

  it('refuses a parameter that it does not know', async () => {
    expect((await send(`${service.url}/views/power.csv?viewReference=x`)).status).toBe(400);
  });
});
