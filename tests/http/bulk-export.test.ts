import { rmSync } from 'node:fs';
import { setTimeout as pause } from 'node:timers/promises';
import type { AuditEvent, Bundle, FhirResource, OperationOutcome, Parameters } from 'fhir/r4.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readConfig } from '../../src/config.ts';
import { type RunningService, startService } from '../../src/service.ts';
import { compiledByBuild } from '../support/built.ts';
import { type Answer, send, sendJson } from '../support/client.ts';
import { examNumbered, exampleExam } from '../support/example-exam.ts';
import { startTestService, temporaryFolder } from '../support/service.ts';
import { spawnService } from '../support/spawned-service.ts';

/** Source: HL7 FHIR Bulk Data Access 2.0.0, http://hl7.org/fhir/uv/bulkdata/STU2/export.html; sections named below. */
interface Manifest {
  readonly transactionTime: string;
  readonly request: string;
  readonly requiresAccessToken: boolean;
  readonly output: readonly { readonly type: string; readonly url: string; readonly count: number }[];
  readonly error: readonly { readonly type: string; readonly url: string; readonly count: number }[];
}

const respondAsync = { Accept: 'application/fhir+json', Prefer: 'respond-async' };
const lenient = { ...respondAsync, Prefer: 'respond-async, handling=lenient' };

const kickOff = (url: string, query = '', headers: Record<string, string> = respondAsync) =>
  send(`${url}/fhir/$export${query}`, { headers });

/** Asks for the status until it is no longer "in progress". */
async function finished(status: string): Promise<Answer> {
  for (;;) {
    const answer = await send(status, { headers: { Accept: 'application/json' } });
    if (answer.status !== 202) return answer;
    // Response - In-Progress Status: X-Progress is text of at most 100 characters, Retry-After seconds or a date.
    expect(answer.headers.get('X-Progress')).toMatch(/^\d of \d types$/);
    expect(answer.headers.get('Retry-After')).toMatch(/^\d+$/);
    expect(answer.text).toBe('');
    await pause(20);
  }
}

async function manifestOf(started: Answer): Promise<Manifest> {
  expect([started.status, started.text]).toEqual([202, '']);
  const answer = await finished(String(started.headers.get('Content-Location')));
  expect(answer.status).toBe(200);
  return answer.json<Manifest>();
}

async function linesOf(url: string): Promise<FhirResource[]> {
  const answer = await send(url, { headers: { Accept: 'application/fhir+ndjson' } });
  expect([answer.status, answer.headers.get('Content-Type')]).toEqual([200, 'application/fhir+ndjson']);
  // NDJSON: one JSON text a line, each ended by a line feed.
  expect(answer.text.endsWith('\n')).toBe(true);
  return answer.text
    .slice(0, -1)
    .split('\n')
    .map((line) => JSON.parse(line) as FhirResource);
}

/** `Type/id` of everything in the files, in alphabetical order; each file holds its type and its count. */
async function exported({ output }: Manifest): Promise<string[]> {
  const all: string[] = [];
  for (const { type, url, count } of output) {
    const lines = await linesOf(url);
    expect(lines).toHaveLength(count);
    expect(new Set(lines.map(({ resourceType }) => resourceType))).toEqual(new Set([type]));
    all.push(...lines.map(({ id }) => `${type}/${id}`));
  }
  return all.sort();
}

/** `Type/id` of everything that the Bundles of the exams hold. */
async function inBundles(url: string, locations: readonly string[]): Promise<string[]> {
  const all = new Set<string>();
  for (const location of locations) {
    const bundle = (await send(`${url}${location}/bundle?type=collection`)).json<Bundle>();
    for (const { resource } of bundle.entry ?? []) all.add(`${resource?.resourceType}/${resource?.id}`);
  }
  return [...all].sort();
}

async function post(url: string, exam: unknown): Promise<string> {
  const answer = await sendJson(`${url}/exams`, exam);
  expect(answer.status).toBe(201);
  return String(answer.headers.get('Location'));
}

const diagnostics = (answer: Answer) => answer.json<OperationOutcome>().issue.map((issue) => issue.details?.text);

describe('the bulk export', () => {
  let service: RunningService;
  let locations: string[];

  beforeAll(async () => {
    service = await startTestService();
    const second = { identifier: { system: 'https://clinic.example/exams', value: 'E-2' } };
    locations = [
      await post(service.url, examNumbered('E-1')),
      await post(service.url, exampleExam(second, 'cervical-cord')),
    ];
  });
  afterAll(() => service.stop());

  it('gives all of every exam as NDJSON under a manifest (Response - Complete Status)', async () => {
    const before = Date.now();
    const started = await kickOff(service.url);
    const status = String(started.headers.get('Content-Location'));
    expect(status.startsWith(`${service.url}/fhir/`)).toBe(true);
    const answer = await finished(status);
    expect(answer.headers.get('Content-Type')).toMatch(/^application\/json/);
    expect(Date.parse(String(answer.headers.get('Expires')))).toBeGreaterThan(before);
    const manifest = answer.json<Manifest>();
    expect(manifest).toMatchObject({
      request: `${service.url}/fhir/$export`,
      requiresAccessToken: false,
      error: [],
    });
    expect(manifest.transactionTime).toMatch(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}\.\d{3}Z$/);
    expect(Date.parse(manifest.transactionTime)).toBeLessThanOrEqual(Date.now());
    expect(await exported(manifest)).toEqual(await inBundles(service.url, locations));
  });

  it('is asked for by POST with Parameters as well as by GET (Bulk Data Kick-off Request)', async () => {
    const asked: Parameters = {
      resourceType: 'Parameters',
      parameter: [
        { name: '_outputFormat', valueString: 'application/fhir+ndjson' },
        { name: '_type', valueString: 'ClinicalImpression' },
        { name: '_type', valueString: 'Provenance,RiskAssessment' },
        { name: '_since', valueInstant: '2001-01-01T00:00:00Z' },
      ],
    };
    const posted = await manifestOf(
      await sendJson(`${service.url}/fhir/$export`, asked, {
        headers: { ...respondAsync, 'Content-Type': 'application/fhir+json' },
      }),
    );
    const fetched = await manifestOf(
      await kickOff(
        service.url,
        '?_outputFormat=application/fhir%2Bndjson&_type=ClinicalImpression,Provenance&_type=RiskAssessment&_since=2001-01-01T00:00:00Z',
      ),
    );
    expect(posted.output.map(({ type }) => type).sort()).toEqual([
      'ClinicalImpression',
      'Provenance',
      'RiskAssessment',
    ]);
    expect(await exported(posted)).toEqual(await exported(fetched));
  });

  it('since the time of an earlier export has what came later (_since)', async () => {
    const { url } = service;
    const there = await manifestOf(await kickOff(url, '?_type=ClinicalImpression'));
    const times = (await linesOf(String(there.output[0]?.url))).map(({ meta }) => String(meta?.lastUpdated));
    const since = String(times.sort().at(-1));
    while (Date.now() <= Date.parse(since)) await pause(1);
    const late = await post(url, examNumbered('late'));
    const after = await manifestOf(await kickOff(url, `?_since=${since}`));
    const device = (one: string) => one.startsWith('Device/');
    expect(await exported(after)).toEqual((await inBundles(url, [late])).filter((one) => !device(one)));
    // transactionTime: a later export since then misses nothing that this one did not have.
    const whole = await manifestOf(await kickOff(url));
    const last = await post(url, examNumbered('last'));
    locations.push(late, last);
    const next = await exported(await manifestOf(await kickOff(url, `?_since=${whole.transactionTime}`)));
    expect(next).toEqual(expect.arrayContaining((await inBundles(url, [last])).filter((one) => !device(one))));
    const future = await manifestOf(await kickOff(url, '?_since=2999-01-01T00:00:00Z'));
    expect([future.output, future.error]).toEqual([[], []]);
  });

  it.each([
    ['no wish for an asynchronous answer', '', { Accept: 'application/fhir+json' }, /respond-async/],
    ['another format', '?_outputFormat=text/csv', lenient, /application\/fhir\+ndjson/],
    ['a time without its zone', '?_since=2026-03-14', lenient, /2026-03-14T10:20:00Z/],
    ['a type that is not here', '?_type=Observation,Patient', respondAsync, /Observation, ClinicalImpression/],
    ['a parameter that is not supported', '?_typeFilter=Observation%3Fstatus=final', respondAsync, /_typeFilter/],
  ])('refuses %s with an OperationOutcome (Response - Error)', async (_, query, headers, told) => {
    const answer = await kickOff(service.url, query, headers);
    expect(answer.status).toBe(400);
    expect(diagnostics(answer).join()).toMatch(told);
  });

  it('leaves out what is not supported where lenient handling is preferred, and says so in the error files', async () => {
    const manifest = await manifestOf(
      await kickOff(service.url, '?_type=Provenance,Patient&_typeFilter=Observation%3Fstatus=final', lenient),
    );
    expect(manifest.output.map(({ type }) => type)).toEqual(['Provenance']);
    expect(manifest.error.map(({ type, count }) => [type, count])).toEqual([['OperationOutcome', 2]]);
    const outcomes = (await linesOf(String(manifest.error[0]?.url))) as OperationOutcome[];
    expect(outcomes.map(({ issue }) => issue[0]?.severity)).toEqual(['warning', 'warning']);
    const told = outcomes.map(({ issue }) => issue[0]?.details?.text).join();
    expect(told).toContain('_typeFilter');
    expect(told).toContain('_type takes');
  });

  it.each([
    ['no JSON', '{'],
    ['another resource', { resourceType: 'Patient' }],
    ['parameters that are no list', { resourceType: 'Parameters', parameter: {} }],
    ['a parameter without a name', { resourceType: 'Parameters', parameter: [{ valueString: 'Observation' }] }],
    ['a value that is no text', { resourceType: 'Parameters', parameter: [{ name: '_type', valueInteger: 3 }] }],
    ['nothing in a parameter', { resourceType: 'Parameters', parameter: [null] }],
  ])('refuses a body with %s by 400', async (_, body) => {
    const answer = await sendJson(`${service.url}/fhir/$export`, body, { headers: respondAsync });
    expect([answer.status, answer.json<OperationOutcome>().resourceType]).toEqual([400, 'OperationOutcome']);
  });

  it('is gone when it was deleted: 202, then 404 with an OperationOutcome (Bulk Data Delete Request)', async () => {
    const started = await kickOff(service.url);
    const status = String(started.headers.get('Content-Location'));
    const { output } = await manifestOf(started);
    expect((await send(status, { method: 'DELETE' })).status).toBe(202);
    const urls = [status, String(output[0]?.url)];
    for (const answer of [
      ...(await Promise.all(urls.map((url) => send(url)))),
      await send(status, { method: 'DELETE' }),
      await send(`${service.url}/fhir/export-status/no-such-job`),
    ]) {
      expect([answer.status, answer.json<OperationOutcome>().resourceType]).toEqual([404, 'OperationOutcome']);
    }
  });

  it('is in the audit trail from its beginning to its end', async () => {
    const started = await kickOff(service.url, '?_type=Provenance');
    const job = String(started.headers.get('Content-Location')).split('/').at(-1);
    await manifestOf(started);
    const { entry = [] } = (await send(`${service.url}/fhir/AuditEvent?_sort=date&subtype=operation&_count=500`)).json<
      Bundle<AuditEvent>
    >();
    const own = entry.flatMap(({ resource }) =>
      resource?.entity?.some(({ what }) => what?.identifier?.value === job) ? [resource] : [],
    );
    const [begun, ...later] = own.filter(({ action }) => action === 'E');
    expect(begun?.type.code).toBe('rest');
    expect(later.map(({ type, outcome, agent }) => [type.code, outcome, agent.length])).toEqual([['110106', '0', 1]]);
    const ends = (await send(`${service.url}/fhir/AuditEvent?type=110106&_summary=count`)).json<Bundle>();
    expect(ends.total).toBeGreaterThan(0);
    for (const method of ['POST', 'PUT', 'DELETE']) {
      expect((await send(`${service.url}/fhir/AuditEvent/${later[0]?.id}`, { method })).status).toBe(405);
    }
  });

  it('has no file of a type that was not asked for', async () => {
    const { output } = await manifestOf(await kickOff(service.url, '?_type=Provenance'));
    const folder = String(output[0]?.url).replace(/[^/]+$/, '');
    for (const file of ['Observation.ndjson', 'Patient.ndjson', 'OperationOutcome.ndjson', 'exams.sqlite']) {
      expect((await send(`${folder}${file}`)).status).toBe(404);
    }
  });
});

describe('a bulk export that meets a kill of the service', () => {
  it('is finished by the next process, under the same address, with what stood when it was asked for', async () => {
    const dataDir = temporaryFolder();
    const first = await spawnService({ DATA_DIR: dataDir, LOG_LEVEL: 'silent' });
    const locations: string[] = [];
    for (let n = 0; n < 5; n++) locations.push(await post(first.url, examNumbered(`kept-${n}`)));
    const started = await kickOff(first.url);
    // Not waited for, so that the kill meets the work.
    expect(await first.end('SIGKILL')).toBe('SIGKILL');
    const second = await startService(
      readConfig({ DATA_DIR: dataDir, PORT: '0', LOG_LEVEL: 'silent' }),
      compiledByBuild(),
    );
    await post(second.url, examNumbered('later'));
    const path = String(started.headers.get('Content-Location')).slice(first.url.length);
    const answer = await finished(`${second.url}${path}`);
    expect(answer.status).toBe(200);
    expect(await exported(answer.json<Manifest>())).toEqual(await inBundles(second.url, locations));
    await second.stop();
    rmSync(dataDir, { recursive: true, force: true });
  }, 240_000);
});
