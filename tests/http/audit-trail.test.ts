import fc from 'fast-check';
import type { AuditEvent, Bundle, CapabilityStatement, OperationOutcome } from 'fhir/r4.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readConfig } from '../../src/config.ts';
import { type RunningService, startService } from '../../src/service.ts';
import { openAuditReader } from '../../src/store/audit/open-audit-reader.ts';
import { verifyAudit } from '../../src/store/audit/verify-audit.ts';
import type { StoreTarget } from '../../src/store/open-stores.ts';
import { ruleProblems, structureProblems } from '../fhir/support/r4-rules.ts';
import { compiledByBuild } from '../support/built.ts';
import { type Answer, send, sendJson } from '../support/client.ts';
import { emptyStores, engines } from '../support/engines.ts';
import { examNumbered, exampleExam } from '../support/example-exam.ts';
import { startTestService } from '../support/service.ts';

const newStore = emptyStores();

async function eventsOf(url: string, query = ''): Promise<AuditEvent[]> {
  const found: AuditEvent[] = [];
  for (let next: string | undefined = `${url}/fhir/AuditEvent?_count=100&_sort=date${query}`; next !== undefined; ) {
    const page: Bundle = (await send(next)).json<Bundle>();
    for (const { resource } of page.entry ?? [])
      if (resource?.resourceType === 'AuditEvent') found.push(resource as AuditEvent);
    next = page.link?.find(({ relation }) => relation === 'next')?.url;
  }
  return found;
}
const entity = ({ entity = [] }: AuditEvent, code: string) =>
  entity.filter(({ role, type }) => role?.code === code || type?.code === code);
const requestOf = (event: AuditEvent) => entity(event, 'XrequestId')[0]?.what?.identifier?.value;

/** What an event says, in short. */
function told(event: AuditEvent) {
  return {
    interaction: event.subtype?.[0]?.code,
    action: event.action,
    outcome: event.outcome,
    what: entity(event, '4').map(({ what }) => what?.reference ?? what?.identifier?.value),
    patients: entity(event, '1').map(({ what }) => what?.reference ?? what?.identifier?.value),
    client: event.agent[0]?.name,
  };
}
type Told = Partial<ReturnType<typeof told>>;

interface Step {
  readonly name: string;
  readonly run: (headers: Record<string, string>) => Promise<Answer>;
  readonly status: number;
  /** Undefined for what is not to be recorded. */
  readonly expected: Told | undefined;
}

describe.each(engines)('the audit trail of a service on %s', (engine) => {
  let target: StoreTarget;
  let service: RunningService;
  let steps: readonly Step[];
  let fresh = 0;

  beforeAll(async () => {
    target = await newStore(engine);
    const url = target.engine === 'sqlite' ? `sqlite:${target.file}` : target.url;
    service = await startService(readConfig({ PORT: '0', LOG_LEVEL: 'silent', DATABASE_URL: url }), compiledByBuild());
    const { otherwiseNormal: _, ...first } = exampleExam({ subject: { reference: 'Patient/first' } });
    const posted = await sendJson(`${service.url}/exams`, first);
    const exam = String(posted.headers.get('Location')).replace('/exams/', '');
    const observation = `Observation/${posted.json<Bundle>().entry?.find(({ resource }) => resource?.resourceType === 'Observation')?.resource?.id}`;
    const get =
      (path: string, more: Record<string, string> = {}) =>
      (headers: Record<string, string>) =>
        send(service.url + path, { headers: { ...headers, ...more } });
    const post =
      (path: string, body: () => unknown, method = 'POST', more: Record<string, string> = {}) =>
      (headers: Record<string, string>) =>
        sendJson(service.url + path, body(), { method, headers: { ...headers, ...more } });
    const another = () => {
      fresh += 1;
      return examNumbered(`audited-${fresh}`);
    };
    const none = '00000000-0000-5000-8000-000000000000';
    const patients = ['Patient/first'];
    const period = 'periodStart=2026&periodEnd=2026';
    const exported = await send(`${service.url}/fhir/$export`, { headers: { Prefer: 'respond-async' } });
    const job = String(exported.headers.get('Content-Location')).slice(service.url.length);
    const form = 'subject=Patient/first&code=x';
    steps = [
      {
        name: 'create',
        run: post('/exams', another),
        status: 201,
        expected: { interaction: 'create', action: 'C', outcome: '0' },
      },
      {
        name: 'repeat',
        run: post('/exams', () => first),
        status: 200,
        expected: { interaction: 'create', action: 'R', outcome: '0', what: [exam], patients },
      },
      {
        name: 'invalid',
        run: post('/exams', () => ({ ...first, findings: 3 })),
        status: 422,
        expected: { interaction: 'create', action: 'C', outcome: '4', what: [] },
      },
      {
        name: 'no JSON',
        run: post('/exams', () => '{'),
        status: 400,
        expected: { interaction: 'create', outcome: '4' },
      },
      {
        name: 'conflict',
        run: post('/exams', () => ({ ...first, findings: {} })),
        status: 409,
        expected: { interaction: 'create', action: 'C', outcome: '4', what: [exam], patients },
      },
      {
        name: 'read',
        run: get(`/exams/${exam}`),
        status: 200,
        expected: { interaction: 'read', action: 'R', outcome: '0', what: [exam], patients },
      },
      {
        name: 'read nothing',
        run: get(`/exams/${none}`),
        status: 404,
        expected: { interaction: 'read', outcome: '4', what: [none], patients: [] },
      },
      {
        name: 'bundle',
        run: get(`/exams/${exam}/bundle?type=document`),
        status: 200,
        expected: { interaction: 'read', outcome: '0', what: [exam], patients },
      },
      {
        name: 'bad bundle',
        run: get(`/exams/${exam}/bundle?type=x`),
        status: 400,
        expected: { interaction: 'read', outcome: '4', what: [exam] },
      },
      {
        name: 'blind correction',
        run: post(`/exams/${exam}`, () => first, 'PUT'),
        status: 428,
        expected: { interaction: 'update', action: 'U', outcome: '4', what: [exam] },
      },
      {
        name: 'late correction',
        run: post(`/exams/${exam}`, () => ({ ...first, status: 'amended' }), 'PUT', { 'If-Match': 'W/"9"' }),
        status: 412,
        expected: { interaction: 'update', action: 'U', outcome: '4', what: [exam] },
      },
      {
        name: 'resource',
        run: get(`/fhir/${observation}`),
        status: 200,
        expected: { interaction: 'read', action: 'R', outcome: '0', what: [exam, observation], patients },
      },
      {
        name: 'known resource',
        run: get(`/fhir/${observation}`, { 'If-None-Match': '*' }),
        status: 304,
        expected: { interaction: 'read', outcome: '0', what: [exam, observation], patients },
      },
      {
        name: 'no resource',
        run: get('/fhir/Observation/none'),
        status: 404,
        expected: { interaction: 'read', outcome: '4', what: ['Observation/none'] },
      },
      {
        name: 'version',
        run: get(`/fhir/${observation}/_history/1`),
        status: 200,
        expected: {
          interaction: 'vread',
          action: 'R',
          outcome: '0',
          what: [exam, `${observation}/_history/1`],
          patients,
        },
      },
      {
        name: 'history',
        run: get(`/fhir/${observation}/_history`),
        status: 200,
        expected: { interaction: 'history-instance', outcome: '0', what: [exam, observation], patients },
      },
      {
        name: 'history of a type',
        run: get('/fhir/Observation/_history?_count=1'),
        status: 200,
        expected: { interaction: 'history-type', outcome: '0', what: [] },
      },
      {
        name: 'search',
        run: get('/fhir/Observation?patient=first,second&_count=1'),
        status: 200,
        expected: {
          interaction: 'search',
          action: 'E',
          outcome: '0',
          what: [],
          patients: ['Patient/first', 'Patient/second'],
        },
      },
      {
        name: 'bad search',
        run: get('/fhir/Observation?date=yesterday'),
        status: 400,
        expected: { interaction: 'search', outcome: '4' },
      },
      {
        name: 'search by form',
        run: (headers) =>
          send(`${service.url}/fhir/Observation/_search`, {
            method: 'POST',
            headers: { ...headers, 'Content-Type': 'application/x-www-form-urlencoded' },
            body: form,
          }),
        status: 200,
        expected: { interaction: 'search', outcome: '0', patients },
      },
      {
        name: 'view',
        run: get('/views/power.csv?patient=Patient/first'),
        status: 200,
        expected: { interaction: 'operation', action: 'E', outcome: '0', patients },
      },
      {
        name: 'view run',
        run: get('/fhir/$viewdefinition-run?viewReference=ViewDefinition/power&_format=json&_limit=1'),
        status: 200,
        expected: { interaction: 'operation', outcome: '0' },
      },
      {
        name: 'no view',
        run: get('/views/none.csv'),
        status: 404,
        expected: { interaction: 'operation', outcome: '4' },
      },
      { name: 'definition of a view', run: get('/views/power'), status: 200, expected: undefined },
      {
        name: 'measure',
        run: get(`/fhir/Measure/red-flag-minutes/$evaluate-measure?${period}&subject=first`),
        status: 200,
        expected: { interaction: 'operation', action: 'E', outcome: '0', what: ['Measure/red-flag-minutes'], patients },
      },
      {
        name: 'no measure',
        run: get(`/fhir/Measure/none/$evaluate-measure?${period}`),
        status: 404,
        expected: { interaction: 'operation', outcome: '4', what: ['Measure/none'] },
      },
      {
        name: 'bad measure',
        run: post('/fhir/Measure', () => ({ resourceType: 'Measure' })),
        status: 422,
        expected: { interaction: 'create', action: 'C', outcome: '4' },
      },
      {
        name: 'shipped measure',
        run: post('/fhir/Measure/red-flag-minutes', () => ({ resourceType: 'Measure' }), 'PUT'),
        status: 409,
        expected: { interaction: 'update', action: 'U', outcome: '4', what: ['Measure/red-flag-minutes'] },
      },
      {
        name: 'export',
        run: get('/fhir/$export?_type=Device', { Prefer: 'respond-async' }),
        status: 202,
        expected: { interaction: 'operation', action: 'E', outcome: '0' },
      },
      {
        name: 'bad export',
        run: get('/fhir/$export'),
        status: 400,
        expected: { interaction: 'operation', outcome: '4' },
      },
      {
        name: 'no file',
        run: get(`${job.replace('export-status', 'export-files')}/Nothing.ndjson`),
        status: 404,
        expected: { interaction: 'operation', action: 'R', outcome: '4' },
      },
      {
        name: 'file',
        run: get(`${job.replace('export-status', 'export-files')}/Device.ndjson`),
        status: 200,
        expected: { interaction: 'operation', action: 'R', outcome: '0' },
      },
      {
        name: 'no export',
        run: (headers) => send(`${service.url}/fhir/export-status/${none}`, { method: 'DELETE', headers }),
        status: 404,
        expected: { interaction: 'delete', action: 'D', outcome: '4' },
      },
      {
        name: 'localisation',
        run: post('/localisation', () => first),
        status: 200,
        expected: { interaction: 'operation', action: 'E', outcome: '0', what: [], patients: [] },
      },
      {
        name: 'validation',
        run: post('/fhir/Observation/$validate', () => ({ resourceType: 'Observation' })),
        status: 200,
        expected: { interaction: 'operation', outcome: '0' },
      },
      {
        name: 'trail',
        run: get('/fhir/AuditEvent?_count=1&patient=Patient/first'),
        status: 200,
        expected: { interaction: 'search', action: 'E', outcome: '0', patients },
      },
      {
        name: 'entry of the trail',
        run: get('/fhir/AuditEvent/1'),
        status: 200,
        expected: { interaction: 'read', action: 'R', outcome: '0', what: ['AuditEvent/1'] },
      },
      {
        name: 'wrong method',
        run: (headers) => send(`${service.url}/exams/${exam}`, { method: 'DELETE', headers }),
        status: 405,
        expected: undefined,
      },
      { name: 'catalogue', run: get('/catalogue'), status: 200, expected: undefined },
      { name: 'health', run: get('/health/ready'), status: 200, expected: undefined },
      { name: 'capabilities', run: get('/fhir/metadata'), status: 200, expected: undefined },
      { name: 'terminology', run: get('/fhir/ValueSet?_format=json'), status: 200, expected: undefined },
      { name: 'nothing', run: get('/nothing'), status: 404, expected: undefined },
      {
        name: 'options',
        run: (headers) => send(`${service.url}/exams`, { method: 'OPTIONS', headers }),
        status: 204,
        expected: undefined,
      },
    ];
  }, 120_000);
  afterAll(() => service.stop());

  it('has exactly one event of each request, with actor, target and outcome', { timeout: 180_000 }, async () => {
    let trace = 0;
    const seen = new Set<string>();
    const play = async (sequence: readonly Step[], atOnce: number) => {
      const sent = new Map<string, Step>();
      for (let from = 0; from < sequence.length; from += atOnce) {
        await Promise.all(
          sequence.slice(from, from + atOnce).map(async (step) => {
            trace += 1;
            const id = trace.toString(16).padStart(32, '0');
            sent.set(id, step);
            seen.add(step.name);
            const answer = await step.run({ traceparent: `00-${id}-00000000000000aa-01` });
            expect([step.name, answer.status, answer.headers.get('X-Request-Id')]).toEqual([
              step.name,
              step.status,
              id,
            ]);
          }),
        );
      }
      const events = await eventsOf(service.url);
      for (const [id, { name, expected }] of sent) {
        const own = events.filter((event) => requestOf(event) === id).map(told);
        const wanted = expected === undefined ? [] : [{ client: 'anonymous', ...expected }];
        expect([name, own]).toEqual([name, wanted.map((one) => expect.objectContaining(one))]);
      }
    };
    await play(steps, 1);
    await fc.assert(
      fc.asyncProperty(fc.infiniteStream(fc.constantFrom(...steps)), fc.integer({ min: 1, max: 8 }), (stream, atOnce) =>
        play([...stream.take(24)], atOnce),
      ),
      { numRuns: 4 },
    );
    expect(seen.size).toBe(steps.length);

    const events = await eventsOf(service.url);
    expect(events.map(({ id }) => Number(id)).sort((a, b) => a - b)).toEqual(events.map((_, index) => index + 1));
    for (const event of events.slice(0, 60)) {
      expect([...structureProblems(event), ...ruleProblems(event)]).toEqual([]);
    }
    const reader = await openAuditReader(target);
    const check = await verifyAudit(reader);
    await reader.close();
    expect(check.fault).toBeUndefined();
    expect(check.count).toBeGreaterThan(events.length);
  });

  it('keeps what was asked, and finds a person by what was sent', async () => {
    await send(
      `${service.url}/fhir/Observation?subject:identifier=${encodeURIComponent('https://clinic.example/mrn|77')}`,
    );
    const named = await eventsOf(
      service.url,
      `&patient:identifier=${encodeURIComponent('https://clinic.example/mrn|77')}`,
    );
    expect(named.map(told)[0]).toMatchObject({ interaction: 'search', patients: ['77'] });
    const [query] = entity(named[0] as AuditEvent, '24');
    expect(Buffer.from(query?.query ?? '', 'base64').toString()).toBe(
      'GET /fhir/Observation?subject:identifier=https%3A%2F%2Fclinic.example%2Fmrn%7C77',
    );
  });

  it('is searched by what the statement of capabilities lists, and cannot be written to', async () => {
    const { rest } = (await send(`${service.url}/fhir/metadata`)).json<CapabilityStatement>();
    const said = rest?.[0]?.resource?.find(({ type }) => type === 'AuditEvent');
    expect(said?.interaction?.map(({ code }) => code)).toEqual(['read', 'search-type']);
    const strict = { headers: { Prefer: 'handling=strict' } };
    const values: Record<string, string> = { token: '4', reference: 'Patient/1', date: 'ge2026', string: 'a' };
    for (const { name, type } of said?.searchParam ?? []) {
      const answer = await send(`${service.url}/fhir/AuditEvent?${name}=${values[type]}&_count=1`, strict);
      expect([name, answer.status]).toEqual([name, 200]);
    }
    for (const query of ['agent=x', 'source=x', 'patient:missing=true', 'actoin=R', '_include=AuditEvent:patient']) {
      const answer = await send(`${service.url}/fhir/AuditEvent?${query}`, strict);
      expect([query, answer.status]).toEqual([query, 400]);
      expect(answer.json<OperationOutcome>().issue[0]?.details?.text).toMatch(/does not understand/);
      expect((await send(`${service.url}/fhir/AuditEvent?${query}&_count=1`)).text).toMatch(/does not understand/);
    }
    expect((await send(`${service.url}/fhir/AuditEvent?actoin=R`, strict)).text).toMatch(/did you mean action\?/);
    for (const [path, method] of [
      ['', 'POST'],
      ['/1', 'PUT'],
      ['/1', 'DELETE'],
      ['/1', 'PATCH'],
    ] as const) {
      const answer = await send(`${service.url}/fhir/AuditEvent${path}`, { method });
      expect([path, method, answer.status]).toEqual([path, method, 405]);
    }
    for (const id of ['0', '-1', 'x', '999999999999']) {
      expect((await send(`${service.url}/fhir/AuditEvent/${id}`)).status).toBe(404);
    }
    const exported = await send(`${service.url}/fhir/$export?_type=AuditEvent`, {
      headers: { Prefer: 'respond-async' },
    });
    expect(exported.status).toBe(400);
  });

  it('counts one more entry for each look at it, and no more', async () => {
    const total = async () => (await send(`${service.url}/fhir/AuditEvent?_summary=count`)).json<Bundle>().total ?? 0;
    const before = await total();
    expect([await total(), await total()]).toEqual([before + 1, before + 2]);
  });
});

it('tells a service without requests of nothing', async () => {
  const service = await startTestService();
  expect(await eventsOf(service.url)).toEqual([]);
  await service.stop();
});
