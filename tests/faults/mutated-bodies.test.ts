import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Chance } from '../../src/kernel/chance.ts';
import { type Answer, send, sendJson } from '../support/client.ts';
import { engines } from '../support/engines.ts';
import type { SpawnedService } from '../support/spawned-service.ts';
import { lookAtWholeApp, type MountedRoute, mountedRoutes } from '../support/whole-app.ts';
import { brokenBytes, forgedCursors, mutated, spoiltForm } from './mutations.ts';
import { type LastingStore, lastingStore } from './service-on.ts';
import { isFullRun, seed, sizes, tell } from './sizes.ts';
import { type ValidBodies, validBodies } from './valid-bodies.ts';
import { lookAt, watchedEnvironment } from './watched.ts';

const clients = 4;
/** A request that took longer is sent again alone; the machine may have been busy with something else. */
const noticedMs = 250;
/** Longest time that one body may hold the service, judged in the full run only. */
const longestMs = 1_000;
/** What the heap may have grown by, in bytes, after a collection. */
const mostGrowth = 48 * 1024 * 1024;

interface Sent {
  readonly row: MountedRoute;
  readonly path: string;
  readonly init: RequestInit;
}

describe.each(engines)('mutated bodies, on %s', (engine) => {
  let store: LastingStore;
  let service: SpawnedService;
  let bodies: ValidBodies;
  let rows: readonly MountedRoute[];
  let kept: { readonly exam: string; readonly measure: string; readonly patient: string };

  beforeAll(async () => {
    const table = await lookAtWholeApp(mountedRoutes);
    bodies = validBodies(40, seed);
    store = await lastingStore(engine);
    service = await store.start(watchedEnvironment(store.dataDir));
    rows = table.filter(({ method, path }) => method === 'POST' || method === 'PUT' || takesQuery(path));
    const exam = await sendJson(`${service.url}/exams`, bodies.exams[0]);
    const measure = await sendJson(`${service.url}/fhir/Measure`, { ...bodies.measures[0], id: undefined });
    const patient = await sendJson(`${service.url}/practice/patients`, { seed: 1 });
    kept = {
      patient: patient.json<{ patient: string }>().patient,
      exam: String(exam.headers.get('Location')).slice('/exams/'.length),
      measure: measure.json<{ id: string }>().id,
    };
  }, 120_000);
  afterAll(() => store.remove());

  it('get an answer soon that is well-formed and no fault of the service', { timeout: 36_000_000 }, async () => {
    const count = Math.ceil(sizes.bodies / engines.length);
    const warm = Math.ceil(count / 5);
    const statuses = new Map<number, number>();
    const faults: string[] = [];
    const slow: { n: number; ms: number }[] = [];
    const sendAll = async (from: number, to: number) => {
      let next = from;
      const client = async () => {
        while (next < to) {
          const n = next++;
          const sent = drawn(n);
          const began = performance.now();
          const answer = await send(service.url + sent.path, sent.init).catch((error: unknown) => error);
          const ms = performance.now() - began;
          if (ms > noticedMs) slow.push({ n, ms });
          const fault = answer instanceof Error ? String(answer.cause ?? answer) : faultOf(answer as Answer);
          if (fault !== undefined)
            faults.push(`${n}: ${sent.row.method} ${sent.path.slice(0, 300)} ${fault} ${bodyOf(sent)}`);
          else statuses.set((answer as Answer).status, (statuses.get((answer as Answer).status) ?? 0) + 1);
        }
      };
      await Promise.all(Array.from({ length: clients }, client));
    };
    await sendAll(0, warm);
    const before = await lookAt(service, store.dataDir);
    await sendAll(warm, count);
    const after = await lookAt(service, store.dataDir);
    const slowest = await alone(slow);
    const summary = [...statuses].sort(([a], [b]) => a - b).map(([status, times]) => `${times} × ${status}`);
    const mib = (bytes: number) => Math.round(bytes / 1024 / 1024);
    tell(
      `${engine}: ${count} bodies over ${rows.length} endpoints: ${summary.join(', ')}; ` +
        `event loop held for ${Math.round(after.longestHoldMs)} ms at most with ${clients} clients, ` +
        `${slowest === undefined ? `no request over ${noticedMs} ms` : `slowest alone ${Math.round(slowest.ms)} ms (${slowest.what})`}; ` +
        `RSS ${mib(before.rss)} to ${mib(after.rss)} MiB, heap ${mib(before.heap)} to ${mib(after.heap)} MiB`,
    );
    expect(faults.slice(0, 20)).toEqual([]);
    expect(service.log()).not.toMatch(/UNEXPECTED|RangeError/);
    expect(after.heap - before.heap).toBeLessThan(mostGrowth);
    if (isFullRun && slowest !== undefined) expect(slowest.ms).toBeLessThan(longestMs);
    expect((await send(`${service.url}/health/ready`)).status).toBe(200);
  });

  it('are refused as a cursor that no link has given', async () => {
    for (const cursor of forgedCursors) {
      for (const path of ['Observation?_sort=date&', 'Observation?_sort=_id&', 'Observation/_history?']) {
        const { status } = await send(`${service.url}/fhir/${path}_cursor=${cursor}`);
        expect([path, cursor, status]).toSatisfy(
          ([, , found]: [string, string, number]) => found === 200 || found === 400,
        );
      }
    }
  });

  it('are refused with the character NUL, wherever a caller may write', async () => {
    const form = { 'Content-Type': 'application/x-www-form-urlencoded' };
    for (const [path, init] of [
      ['Observation?_id=%00', {}],
      ['Observation/a%00b', {}],
      ['Observation/_search', { method: 'POST', headers: form, body: 'subject=Patient/%00' }],
      ['Observation/_search', { method: 'POST', headers: form, body: 'subject=Patient/\0' }],
    ] as const) {
      const { status } = await send(`${service.url}/fhir/${path}`, init);
      expect([path, status]).toEqual([path, 400]);
    }
  });

  it('reach every endpoint that takes a body', () => {
    for (const { method, path } of rows) {
      if (method === 'GET') continue;
      expect([path, drawBody(path, new Chance('any'))]).not.toEqual([path, undefined]);
    }
  });

  /** The slow ones again, one at a time, the better of two. */
  async function alone(slow: readonly { n: number; ms: number }[]): Promise<{ ms: number; what: string } | undefined> {
    const again: { ms: number; what: string }[] = [];
    for (const { n } of [...slow].sort((a, b) => b.ms - a.ms).slice(0, 20)) {
      const times: number[] = [];
      const { path, init, row } = drawn(n);
      for (let attempt = 0; attempt < 2; attempt += 1) {
        const began = performance.now();
        await send(service.url + path, init).catch(() => undefined);
        times.push(performance.now() - began);
      }
      again.push({ ms: Math.min(...times), what: `body ${n} to ${row.method} ${row.path}` });
    }
    return again.sort((a, b) => b.ms - a.ms)[0];
  }

  /** Request number `n` of this seed. */
  function drawn(n: number): Sent {
    const chance = new Chance(`${seed} body ${n}`);
    const row = drawRow(chance);
    const path = row.path
      .replace('/exams/:id', `/exams/${kept.exam}`)
      .replace('Measure/:id', `Measure/${kept.measure}`)
      .replace('ViewDefinition/:id', 'ViewDefinition/power')
      .replace('CodeSystem/:id', 'CodeSystem/tone')
      .replace(':id', 'a');
    if (row.method === 'GET') {
      const form = spoiltForm(pickOne(bodies.forms, chance), chance);
      return { row, path: `${path}?${form}`, init: {} };
    }
    const headers: Record<string, string> = { 'Content-Type': 'application/json', Prefer: 'respond-async' };
    if (row.method === 'PUT') headers['If-Match'] = 'W/"1"';
    const drawnBody = drawBody(row.path, chance);
    if (typeof drawnBody === 'string') {
      headers['Content-Type'] = 'application/x-www-form-urlencoded';
      const form = spoiltForm(drawnBody, chance);
      return { row, path, init: { method: row.method, headers, body: chance.isSo(0.2) ? bytes(form, chance) : form } };
    }
    const body = chance.isSo(0.25) ? bytes(JSON.stringify(drawnBody), chance) : mutated(drawnBody, chance);
    return { row, path, init: { method: row.method, headers, body } };
  }

  /** Exams and views come more often than the many forms of terminology. */
  function drawRow(chance: Chance): MountedRoute {
    const dear = rows.filter(({ path }) => /^\/(exams|localisation)|viewdefinition|Measure$|Measure\/:id$/.test(path));
    return pickOne(chance.isSo(0.4) ? dear : rows, chance);
  }

  function drawBody(path: string, chance: Chance): object | string | undefined {
    if (path.endsWith('_search')) return pickOne(bodies.forms, chance);
    if (path.startsWith('/exams') || path === '/localisation') return pickOne(bodies.exams, chance);
    if (/\/Subscription(\/:id)?$/.test(path)) return pickOne(bodies.subscriptions, chance);
    if (path.endsWith('/feedback')) return pickOne(bodies.feedback, chance);
    if (path.startsWith('/cds-services/')) return pickOne(bodies.hooks, chance);
    if (/\/Measure(\/:id)?$/.test(path)) return pickOne(bodies.measures, chance);
    if (path.startsWith('/practice/')) {
      const body = pickOne(bodies.practice[path.slice('/practice/'.length)] ?? [], chance);
      return 'patient' in body ? { ...body, patient: kept.patient } : body;
    }
    const operation = /\$[a-z-]+$/.exec(path)?.[0] ?? '';
    const known = bodies.parameters[operation];
    return known && pickOne(known, chance);
  }
});

const takesQuery = (path: string) => /^\/fhir\/[A-Z]\w+(\/_search|\/_history)?$/.test(path);

const bytes = (text: string, chance: Chance): Uint8Array<ArrayBuffer> => new Uint8Array(brokenBytes(text, chance));

function pickOne<T>(list: readonly T[], chance: Chance): T {
  return list[Math.floor(chance.next() * list.length)] as T;
}

function bodyOf({ init }: Sent): string {
  const { body } = init;
  return typeof body === 'string' ? body.slice(0, 1_500) : body === undefined ? '' : '(bytes)';
}

/** What is wrong with an answer: a fault of the service, or an error that is not in the form that it promises. */
function faultOf({ status, headers, text }: Answer): string | undefined {
  if (status >= 500) return `was answered ${status}: ${text.slice(0, 300)}`;
  const type = headers.get('Content-Type') ?? '';
  if (status < 400)
    return text === '' || !type.includes('json') || type.includes('ndjson') || isJson(text)
      ? undefined
      : 'was answered with no JSON';
  if (!isJson(text)) return `was answered ${status} without JSON`;
  const body = JSON.parse(text) as Record<string, unknown>;
  if (type.startsWith('application/problem+json')) {
    return body.status === status && typeof body.code === 'string' && typeof body.title === 'string'
      ? undefined
      : 'has bad problem details';
  }
  const issues = body.issue as { severity?: unknown; code?: unknown; details?: { coding?: unknown } }[] | undefined;
  const isOutcome =
    body.resourceType === 'OperationOutcome' &&
    Array.isArray(issues) &&
    issues.length > 0 &&
    issues.every(({ severity, code, details }) => severity && code && details?.coding);
  return isOutcome ? undefined : `has a bad OperationOutcome: ${text.slice(0, 200)}`;
}

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}
