import { createServer, type IncomingMessage, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import {
  type Client,
  createClient,
  type Exam,
  type LocalisationRequest,
  NeuroexamApiError,
} from '../../src/client/client.ts';
import { footDrop, footDropWithoutPerson, misspelt } from '../../src/http/api-description/example-exams.ts';
import type { RunningService } from '../../src/service.ts';
import { startTestService } from '../support/service.ts';

/** A fresh copy of an example, whose constants are narrower and read-only. */
const copy = <Body>(example: unknown) => structuredClone(example) as Body;

/** The example as a caller would write it, open for changes. */
const exam = (value: string): Exam => ({
  ...copy<Exam>(footDrop),
  identifier: { system: 'https://clinic.example/exams', value },
});

async function refusal(call: Promise<unknown>): Promise<NeuroexamApiError> {
  const error = await call.then(
    () => undefined,
    (caught: unknown) => caught,
  );
  if (!(error instanceof NeuroexamApiError)) throw new Error(`refused otherwise: ${String(error)}`);
  return error;
}

describe('the client and a running service', () => {
  let service: RunningService;
  let client: Client;
  beforeAll(async () => {
    service = await startTestService();
    client = createClient({ baseUrl: `${service.url}/` });
  });
  afterAll(() => service.stop());

  it('localises, with the places of the findings', async () => {
    const { body, requestId } = await client.localise(copy<LocalisationRequest>(footDropWithoutPerson));
    expect(body.localisations[0]?.site).toBe('common-fibular-nerve');
    expect(body.localisations[0]?.supporting[0]?.finding).toMatch(/^\/findings\//);
    expect(requestId).toMatch(/^[0-9a-f-]{32,36}$/);
  });

  it('keeps an exam, reads it, corrects it with its ETag, and reads the Bundle', async () => {
    const sent = exam('EX-CLIENT-1');
    const posted = await client.postExam(sent);
    expect([posted.status, posted.etag, posted.body.type]).toEqual([201, 'W/"1"', 'transaction']);
    expect((await client.postExam(sent)).status).toBe(200);
    const id = posted.location?.replace('/exams/', '') ?? '';
    expect((await client.readExam(id)).body).toEqual(sent);
    const amended: Exam = {
      ...sent,
      status: 'amended',
      findings: { reflexes: [{ reflex: 'ankle', side: 'left', grade: '0' }] },
    };
    const corrected = await client.correctExam(id, amended, { ifMatch: posted.etag ?? '' });
    expect([corrected.status, corrected.etag]).toEqual([200, 'W/"2"']);
    expect((await client.readExam(id, { version: 1 })).body).toEqual(sent);
    expect((await client.readExamBundle(id, { type: 'document' })).body.type).toBe('document');
    const stale = await refusal(client.correctExam(id, amended, { ifMatch: 'W/"1"' }));
    expect([stale.status, stale.code]).toEqual([412, 'VERSION_MISMATCH']);
  });

  it('searches page by page and reads what it found', async () => {
    await client.postExam(exam('EX-CLIENT-2'));
    const tag = { code: 'power/ankle-dorsiflexion', 'subject:identifier': undefined };
    const { body } = await client.searchResources('Observation', { ...tag, _total: 'accurate', _count: 0 });
    const ids: string[] = [];
    for await (const { id } of client.searchAll('Observation', { code: tag.code, _count: 1 })) ids.push(String(id));
    expect(ids.length).toBe(body.total);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.length).toBeGreaterThan(1);
    const found = await client.readResource<{ resourceType: string; id: string }>('Observation', ids[0] ?? '');
    expect([found.body.resourceType, found.body.id]).toEqual(['Observation', ids[0]]);
  });

  it('tells what is wrong alike for both forms of errors', async () => {
    const wrong = { ...copy<Exam>(misspelt), identifier: exam('EX').identifier, subject: footDrop.subject };
    const [details, outcome] = await Promise.all([
      refusal(client.localise(copy<LocalisationRequest>(misspelt))),
      refusal(client.postExam(wrong)),
    ]);
    for (const { status, faults } of [details, outcome]) {
      expect(status).toBe(422);
      expect(faults[0]).toMatchObject({
        code: 'UNKNOWN_KEY',
        pointer: '/findings/power/0/movement',
        suggestion: 'ankle-dorsiflexion',
      });
    }
    expect([details.code, details.problem?.title, outcome.outcome?.resourceType]).toEqual([
      'EXAM_INVALID',
      'Invalid exam',
      'OperationOutcome',
    ]);
  });

  it('ends a call by its signal, also where there are no parameters', async () => {
    const options = { signal: AbortSignal.abort() };
    await expect(client.readReadiness(options)).rejects.toThrow();
    await expect(client.postExam(exam('EX-CLIENT-3'), options)).rejects.toThrow();
  });

  it('gives the catalogue, the views, health and conformance', async () => {
    expect((await client.readCatalogue()).body.sections.length).toBeGreaterThan(10);
    expect((await client.listViews()).body.map(({ name }) => name)).toContain('power');
    expect((await client.readView('power.csv')).body).toContain('movement_code');
    expect((await client.readReadiness()).body).toEqual({ status: 'ready' });
    expect((await client.readCapabilities()).body.resourceType).toBe('CapabilityStatement');
    expect((await client.readResource('Questionnaire', 'neuro-exam')).body.resourceType).toBe('Questionnaire');
    const checked = await client.validateResource('Observation', { resourceType: 'Observation', status: 'done' });
    expect(checked.body.issue?.[0]?.severity).toBe('error');
  });

  it('takes a form for what it means, and gives the exam back as one', async () => {
    const posted = await client.postExam(exam('EX-CLIENT-4'));
    const id = posted.location?.replace('/exams/', '') ?? '';
    const { body: form } = await client.readExamForm(id);
    expect(form.resourceType).toBe('QuestionnaireResponse');
    expect((await client.extractForm(form)).body).toEqual(posted.body);
    const parameters = {
      resourceType: 'Parameters' as const,
      parameter: [{ name: 'questionnaire-response', resource: form }],
    };
    expect((await client.extractForm(parameters)).body).toEqual(posted.body);
    expect((await client.postExam(form)).status).toBe(200);
    const broken = await refusal(client.extractForm({ ...form, status: 'stopped' }));
    expect([broken.status, broken.faults[0]?.pointer]).toEqual([422, '/status']);
  });

  it('tells what became of sending an exam, and tries again what was given up', async () => {
    const id = (await client.postExam(exam('EX-CLIENT-5'))).location?.replace('/exams/', '') ?? '';
    expect((await client.readDeliveries(id)).body).toEqual({ deliveries: [] });
    expect((await client.retryDeliveries(id)).body).toEqual({ retried: 0, deliveries: [] });
    const none = await refusal(client.readDeliveries('6f1c2c56-0f3a-4c39-9d0e-1f7f5d3b8a10'));
    expect([none.status, none.code]).toEqual([404, 'NOT_FOUND']);
  });

  it('finds the services of CDS Hooks, gets cards and says what became of them', async () => {
    await client.postExam({ ...exam('EX-CLIENT-6'), subject: { reference: 'Patient/client-6' } });
    const { services } = (await client.discoverCdsServices()).body;
    expect(services.map(({ id }) => id)).toContain('neuroexam-localisation');
    const { cards } = (
      await client.callCdsService('neuroexam-localisation', {
        hook: 'patient-view',
        hookInstance: 'd1577c69-dfbe-44ad-ba6d-3e05e953b2ea',
        context: { userId: 'Practitioner/7', patientId: 'client-6' },
      })
    ).body;
    expect(cards.map(({ summary }) => summary).join()).toContain('Localisation: ');
    const [suggestion] = cards.flatMap(({ suggestions = [] }) => suggestions);
    expect(suggestion?.actions?.[0]?.resource?.resourceType).toBe('ServiceRequest');
    const feedback = cards.map(({ uuid = '' }) => ({
      card: uuid,
      outcome: 'overridden' as const,
      outcomeTimestamp: '2026-03-14T10:30:00Z',
    }));
    expect((await client.sendCdsFeedback('neuroexam-localisation', { feedback })).body).toEqual({});
    const elsewhere = await refusal(
      client.callCdsService('neuroexam-localisation', {
        hook: 'patient-view',
        hookInstance: 'd1577c69-dfbe-44ad-ba6d-3e05e953b2ea',
        context: { userId: 'Practitioner/7', patientId: 'nobody' },
      }),
    );
    expect([elsewhere.status, elsewhere.code]).toEqual([412, 'PREFETCH_MISSING']);
  });

  it('writes in the spelling that it was made with', async () => {
    const american = createClient({ baseUrl: service.url, spelling: 'us' });
    const body = copy<LocalisationRequest>(footDropWithoutPerson);
    const [own, other] = await Promise.all([american.localise(body), client.localise(body, { spelling: 'us' })]);
    expect(own.body).toEqual(other.body);
  });
});

describe('the client and a service that is busy', () => {
  const servers: Server[] = [];
  afterEach(async () => {
    for (const server of servers.splice(0)) await new Promise((resolve) => server.close(resolve));
  });

  /** Answers with the statuses given, one after another, the last one from then on. */
  async function busyServer(statuses: readonly number[], headers: Record<string, string> = { 'Retry-After': '0' }) {
    const seen: IncomingMessage[] = [];
    const server = createServer((req, res) => {
      const status = statuses[Math.min(seen.length, statuses.length - 1)] ?? 500;
      seen.push(req);
      res.writeHead(status, { 'Content-Type': 'application/json', Connection: 'close', ...headers });
      res.end('{"status":"ready"}');
    });
    servers.push(server);
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    return { url: `http://127.0.0.1:${(server.address() as AddressInfo).port}`, seen };
  }

  it('asks again after 429 and 503, with a new token each time', async () => {
    const { url, seen } = await busyServer([503, 429, 200]);
    let asked = 0;
    const client = createClient({ baseUrl: url, token: async () => `token-${++asked}` });
    expect((await client.readReadiness()).status).toBe(200);
    expect(seen.map(({ headers }) => headers.authorization)).toEqual([
      'Bearer token-1',
      'Bearer token-2',
      'Bearer token-3',
    ]);
  });

  it('sends an exam again, whose identifier makes that safe, but no correction', async () => {
    const posting = await busyServer([503, 201]);
    expect((await createClient({ baseUrl: posting.url }).postExam(exam('EX-1'))).status).toBe(201);
    const correcting = await busyServer([503, 200]);
    const client = createClient({ baseUrl: correcting.url });
    const error = await refusal(client.correctExam('an-id', exam('EX-1'), { ifMatch: 'W/"1"' }));
    expect([error.status, error.retryAfterSeconds, correcting.seen.length]).toEqual([503, 0, 1]);
  });

  it('gives up after as many repeats as it was told, and at once where the wait is too long', async () => {
    const always = await busyServer([503]);
    expect((await refusal(createClient({ baseUrl: always.url, retries: 2 }).readReadiness())).status).toBe(503);
    expect(always.seen.length).toBe(3);
    const later = await busyServer([429], { 'Retry-After': '3600' });
    expect((await refusal(createClient({ baseUrl: later.url }).readReadiness())).retryAfterSeconds).toBe(3600);
    expect(later.seen.length).toBe(1);
  });

  it('stops when it is told to, also while it waits', async () => {
    const { url } = await busyServer([503], { 'Retry-After': '20' });
    const controller = new AbortController();
    const call = createClient({ baseUrl: url }).readReadiness({ signal: controller.signal });
    setTimeout(() => controller.abort(new Error('no longer wanted')), 50);
    await expect(call).rejects.toThrow('no longer wanted');
  });

  it('follows no address that an answer gives, so that a token goes to the service alone', async () => {
    const elsewhere = await busyServer([200]);
    const page = (next: string) =>
      JSON.stringify({
        resourceType: 'Bundle',
        type: 'searchset',
        link: next === '' ? [] : [{ relation: 'next', url: next }],
      });
    const asked: string[] = [];
    const fetchPages = async (input: string | URL | Request) => {
      asked.push(String(input));
      const body = page(asked.length === 1 ? `${elsewhere.url}/fhir/Observation?_cursor=abc` : '');
      return new Response(body, { headers: { 'Content-Type': 'application/fhir+json' } });
    };
    const client = createClient({ baseUrl: 'http://service.example', token: 'secret', fetch: fetchPages });
    for await (const _ of client.searchAll('Observation')) throw new Error('there is nothing');
    expect(asked).toEqual([
      'http://service.example/fhir/Observation',
      'http://service.example/fhir/Observation?_cursor=abc',
    ]);
    expect(elsewhere.seen).toEqual([]);
  });
});
