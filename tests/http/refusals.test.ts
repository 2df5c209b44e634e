import { request } from 'node:http';
import { gzipSync } from 'node:zlib';
import type { OperationOutcome } from 'fhir/r4.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { problemKinds } from '../../src/http/problems.ts';
import type { RunningService } from '../../src/service.ts';
import { type Answer, send, sendJson } from '../support/client.ts';
import { examNumbered } from '../support/example-exam.ts';
import { startTestService } from '../support/service.ts';

interface ProblemDetails {
  readonly title: string;
  readonly status: number;
  readonly code: string;
  readonly requestId: string;
  readonly errors?: readonly { pointer: string; detail: string; code: string }[];
}

describe('refusals', () => {
  let service: RunningService;
  beforeAll(async () => {
    service = await startTestService();
  });
  afterAll(() => service.stop());

  /** The same request to both sides: FHIR clients get an OperationOutcome, others problem details. */
  async function expectBoth(
    status: number,
    code: string,
    ask: (path: string) => Promise<Answer>,
    issueCode = code,
  ): Promise<void> {
    const fhir = await ask('/exams');
    expect([fhir.status, fhir.headers.get('Content-Type')]).toEqual([status, 'application/fhir+json; charset=utf-8']);
    const outcome = fhir.json<OperationOutcome>();
    expect(outcome.resourceType).toBe('OperationOutcome');
    expect(outcome.issue.length).toBeGreaterThan(0);
    expect(JSON.stringify(outcome)).toContain(issueCode);

    const plain = await ask('/localisation');
    expect([plain.status, plain.headers.get('Content-Type')]).toEqual([
      status,
      'application/problem+json; charset=utf-8',
    ]);
    const problem = plain.json<ProblemDetails>();
    expect(problem).toMatchObject({ status, code, requestId: plain.headers.get('X-Request-Id') });
    for (const answer of [fhir, plain]) expect(answer.text).not.toMatch(/\bat .*\.[jt]s|node_modules/);
  }

  it.each([
    ['text', 'hello', 400, 'NOT_JSON'],
    ['cut short', '{"identifier": ', 400, 'NOT_JSON'],
    ['a duplicate key', '{"status":"final","status":"amended"}', 400, 'NOT_JSON'],
    ['bytes that are not UTF-8', new Uint8Array([0x22, 0xff, 0xfe, 0x22]), 400, 'NOT_JSON'],
    ['empty', '', 400, 'BAD_REQUEST'],
    ['nested too deeply', `${'['.repeat(21)}${']'.repeat(21)}`, 400, 'TOO_DEEP'],
    ['larger than the limit', `"${'x'.repeat(262_144)}"`, 413, 'BODY_TOO_LARGE'],
  ] as const)('refuses a body that is %s', (_name, body, status, code) =>
    expectBoth(status, code, (path) => sendJson(service.url + path, body)),
  );

  it('reports every fault of an invalid exam with its place', async () => {
    const body = { ...examNumbered('invalid'), unheardOf: 1, alsoUnheardOf: 2 };
    await expectBoth(422, 'EXAM_INVALID', (path) => sendJson(service.url + path, body), 'UNKNOWN_PROPERTY');
    const outcome = (await sendJson(`${service.url}/exams`, body)).json<OperationOutcome>();
    expect(outcome.issue.map((issue) => issue.diagnostics).sort()).toEqual(['/alsoUnheardOf', '/unheardOf']);
    const problem = (await sendJson(`${service.url}/localisation`, body)).json<ProblemDetails>();
    expect(problem.code).toBe('EXAM_INVALID');
    expect(problem.errors?.map((error) => error.pointer).sort()).toEqual(['/alsoUnheardOf', '/unheardOf']);
  });

  it.each([
    ['text/plain', {}],
    ['application/xml', {}],
    ['application/x-www-form-urlencoded', {}],
    ['application/jsonp', {}],
    ['application/json; charset=utf-16', {}],
    ['application/json', { 'Content-Encoding': 'gzip' }],
    ['application/json', { 'Content-Encoding': 'br' }],
  ] as const)('refuses the media type %s with %o', (type, more) =>
    expectBoth(415, 'MEDIA_TYPE', (path) =>
      sendJson(service.url + path, gzipSync('{}'), { headers: { 'Content-Type': type, ...more } }),
    ),
  );

  it('takes both JSON media types, with or without the charset', async () => {
    for (const type of ['application/json', 'Application/FHIR+JSON; charset="UTF-8"']) {
      const answer = await sendJson(`${service.url}/localisation`, examNumbered('typed'), {
        headers: { 'Content-Type': type },
      });
      expect(answer.status).toBe(200);
    }
  });

  it('refuses to answer in a form that it does not have', async () => {
    const ask = (accept: string) => (path: string) =>
      sendJson(service.url + path, examNumbered('accepted'), { headers: { Accept: accept } });
    await expectBoth(406, 'NOT_ACCEPTABLE', ask('application/xml'));
    await expectBoth(406, 'NOT_ACCEPTABLE', ask('text/html, application/fhir+xml;q=0.9'));
    await expectBoth(406, 'NOT_ACCEPTABLE', ask('application/fhir+json; fhirVersion=3.0'));
    await expectBoth(406, 'NOT_ACCEPTABLE', ask('application/*;charset=utf-8;q=0'));
    for (const accept of [
      '*/*',
      'application/*',
      'application/json',
      'application/fhir+json',
      'text/html, */*;q=0.1',
      'application/fhir+json; fhirVersion=4.0',
      'application/json;charset=utf-8;q=0.9, text/plain',
    ]) {
      expect((await ask(accept)('/localisation')).status).toBe(200);
    }
  });

  it('refuses a method that a path does not have and says which it has', async () => {
    for (const [path, method, allow] of [
      ['/exams', 'GET', 'POST, OPTIONS'],
      ['/exams', 'DELETE', 'POST, OPTIONS'],
      ['/exams/00000000-0000-5000-8000-000000000000', 'DELETE', 'GET, PUT, HEAD, OPTIONS'],
      ['/localisation', 'GET', 'POST, OPTIONS'],
      ['/catalogue', 'POST', 'GET, HEAD, OPTIONS'],
      ['/fhir/metadata', 'PUT', 'GET, HEAD, OPTIONS'],
      ['/health/live', 'PATCH', 'GET, HEAD, OPTIONS'],
    ] as const) {
      const answer = await send(service.url + path, { method });
      expect([path, answer.status, answer.headers.get('Allow')]).toEqual([path, 405, allow]);
    }
    const options = await send(`${service.url}/exams`, { method: 'OPTIONS' });
    expect([options.status, options.headers.get('Allow')]).toEqual([204, 'POST, OPTIONS']);
    expect(options.headers.get('Access-Control-Allow-Origin')).toBeNull();
  });

  it('knows no other path', async () => {
    for (const path of ['/nothing', '/fhir', '/fhir/Patient', '/fhir/Observation/1', '/exams/x/y/z', '/EXAMS']) {
      expect([path, (await send(service.url + path)).status]).toEqual([path, 404]);
    }
    expect((await send(`${service.url}/exams/%E0%A4%A`)).status).toBe(400);
  });

  it('refuses query parameters that it does not know or that are there twice', async () => {
    for (const path of ['/catalogue?x=1', '/fhir/StructureDefinition?name=x']) {
      expect([path, (await send(service.url + path)).status]).toEqual([path, 400]);
    }
    // Source: HL7 FHIR R4, RESTful API, section 3.1.0.1.11: a format that is not there is not acceptable.
    expect((await send(`${service.url}/fhir/metadata?_format=xml`)).status).toBe(406);
    const exam = examNumbered('asked');
    for (const query of ['spelling=fr', 'spelling=uk&spelling=us', 'speling=us', '__proto__=1', 'spelling[a]=uk']) {
      expect((await sendJson(`${service.url}/localisation?${query}`, exam)).status).toBe(400);
    }
    expect((await sendJson(`${service.url}/localisation?spelling=us`, exam)).status).toBe(200);
  });

  it('has a status and a title for every code, and no code twice in meaning', () => {
    for (const kind of Object.values(problemKinds)) {
      expect(kind.status).toBeGreaterThanOrEqual(400);
      expect(kind.title.length).toBeGreaterThan(3);
    }
    const titles = Object.values(problemKinds).map((kind) => kind.title);
    expect(new Set(titles).size).toBe(titles.length);
  });

  it('answers a request that announces more than it may send without reading it', async () => {
    const status = await new Promise<number | undefined>((resolve, reject) => {
      const headers = { 'Content-Type': 'application/json', 'Content-Length': 10 ** 9 };
      const req = request(`${service.url}/exams`, { method: 'POST', headers }, (res) => {
        resolve(res.statusCode);
        req.destroy();
      });
      req.on('error', reject);
      req.write('{');
    });
    expect(status).toBe(413);
  });
});
