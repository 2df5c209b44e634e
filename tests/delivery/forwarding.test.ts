import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Bundle, FhirResource, Provenance } from 'fhir/r4.js';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { DeliveryWorker } from '../../src/delivery/delivery-worker.ts';
import type { ForwardSettings } from '../../src/delivery/settings.ts';
import { type DeliveryPace, startDeliveries } from '../../src/delivery/start-deliveries.ts';
import { createSubscriptions } from '../../src/delivery/subscriptions.ts';
import { servedResources } from '../../src/fhir/served.ts';
import { createExamRecords } from '../../src/http/exam-records.ts';
import { searchRules } from '../../src/search/search-rules.ts';
import { openStores, type Stores, type StoreTarget } from '../../src/store/open-stores.ts';
import { builtSteps } from '../support/built.ts';
import { emptyStores, engines } from '../support/engines.ts';
import { examNumbered } from '../support/example-exam.ts';
import { type FhirReceiver, heldAsOurs, type Mood, startFhirReceiver } from '../support/fhir-receiver.ts';
import { temporaryFolder } from '../support/service.ts';

const steps = builtSteps();
const newStore = emptyStores();
const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/** Small findings, so that a Bundle is quickly made; nobody's. */
const small = (value: string, grade: string, status = 'final') =>
  Buffer.from(
    JSON.stringify(
      examNumbered(value, {
        status,
        findings: { power: [{ movement: 'ankle-dorsiflexion', side: 'left', grade }] },
        otherwiseNormal: [],
      }),
    ),
  );

const pace: DeliveryPace = {
  now: Date.now,
  pollMs: 10,
  backOff: { baseMs: 4, mostMs: 30, random: Math.random },
  circuit: { baseMs: 4, mostMs: 30 },
  webhookTimeoutMs: 1000,
  lookup: () => {
    throw new Error('no name is resolved here');
  },
};

describe.each(engines)('forwarding from %s', (engine) => {
  let folder: string;
  let target: StoreTarget;
  let stores: Stores;
  let receiver: FhirReceiver;
  let workers: DeliveryWorker[];
  let more: Stores[];

  beforeAll(() => {
    folder = temporaryFolder();
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  beforeEach(async () => {
    target = await newStore(engine);
    stores = await open();
    workers = [];
    more = [];
  });
  afterEach(async () => {
    await Promise.all(workers.map((worker) => worker.stop()));
    await Promise.all([stores, ...more].map(({ exams }) => exams.close()));
    await receiver.stop();
  });

  const open = () =>
    openStores(target, searchRules, {
      forwards: true,
      readCriteria: () => {
        throw new RangeError('there is no subscription');
      },
      onEnqueued: () => {
        for (const worker of workers) worker.wake();
      },
    });

  function start(on = stores, changes: Partial<ForwardSettings> = {}): void {
    const { resources, channels } = on;
    const forward = {
      url: new URL(receiver.url),
      credentials: { kind: 'none' },
      timeoutMs: 20_000,
      maxAttempts: 1000,
      ...changes,
    } as const;
    workers.push(
      startDeliveries(
        {
          ...on,
          settings: { forward, webhookHosts: [], webhookMaxAttempts: 1 },
          subscriptions: createSubscriptions(resources, channels, () => new Date()),
          onError: (error) => {
            throw error;
          },
        },
        pace,
      ),
    );
  }

  const records = () => createExamRecords(steps, stores.exams, () => new Date());

  /** Exams with two corrections each. */
  async function keepExams(count: number): Promise<string[]> {
    const ids: string[] = [];
    for (let n = 0; n < count; n++) ids.push((await records().record(small(`e${n}`, '3'))).exam.id);
    for (const [n, id] of ids.entries()) {
      await records().correct(id, 1, small(`e${n}`, '4', 'amended'));
      await records().correct(id, 2, small(`e${n}`, '2', 'amended'));
    }
    return ids;
  }

  async function settled(): Promise<void> {
    for (;;) {
      const [forward] = await stores.outbox.figures(Date.now());
      if (forward?.waiting === 0) return;
      await pause(10);
    }
  }

  /** What the receiver should hold: the newest of everything that any version brought. */
  async function expected(ids: readonly string[]): Promise<Map<string, unknown>> {
    const all = new Map<string, unknown>();
    for (const id of ids) {
      for (const { version } of await stores.exams.history(id)) {
        const exam = await stores.exams.find(id, version);
        const bundle = JSON.parse(String(exam?.bundle)) as Bundle;
        for (const resource of servedResources(bundle))
          all.set(`${resource.resourceType}/${resource.id}`, { ...resource });
      }
    }
    return all;
  }

  /** Versions of each exam in the order in which they were taken, without repeats of the one before. */
  function orders(): Map<string, string[]> {
    const found = new Map<string, string[]>();
    for (const { bundle } of receiver.taken) {
      const of = (type: string) => bundle.entry?.find(({ resource }) => resource?.resourceType === type);
      const impression = String(of('ClinicalImpression')?.fullUrl);
      const provenance = String((of('Provenance')?.resource as Provenance | undefined)?.meta?.tag?.[0]?.code);
      const order = found.get(impression) ?? [];
      if (order.at(-1) !== provenance) order.push(provenance);
      found.set(impression, order);
    }
    return found;
  }

  it('brings every version of every exam to a server that fails in every way, in order and once', {
    timeout: 60_000,
  }, async () => {
    const moods: Mood[] = ['error', 'lost', 'busy', 'fine', 'reset', 'silent', 'cut', 'page', 'fine', 'unauthorised'];
    receiver = await startFhirReceiver(({ n }) => moods[(n * 7) % moods.length] ?? 'fine');
    start(stores, { timeoutMs: 400 });
    const ids = await keepExams(4);
    await settled();
    expect(heldAsOurs(receiver)).toEqual(await expected(ids));
    for (const order of orders().values()) expect(order).toHaveLength(3);
    for (const id of ids) {
      const deliveries = await stores.outbox.ofExam(id);
      expect(deliveries.map(({ version, state }) => [version, state])).toEqual([1, 2, 3].map((n) => [n, 'delivered']));
    }
    // Some were taken although the answer was lost, and came again.
    expect(receiver.taken.length).toBeGreaterThan(12);
  });

  it('sends several at once, but no two that would make the same software twice', { timeout: 60_000 }, async () => {
    receiver = await startFhirReceiver();
    const ids: string[] = [];
    for (let n = 0; n < 12; n++) ids.push((await records().record(small(`e${n}`, '3'))).exam.id);
    start();
    await settled();
    expect(receiver.mostAtOnce()).toBeGreaterThan(1);
    expect(receiver.taken).toHaveLength(12);
    expect(heldAsOurs(receiver)).toEqual(await expected(ids));
  });

  it('waits for as long as the server asks, with everything', { timeout: 60_000 }, async () => {
    receiver = await startFhirReceiver(() => 'later');
    const ids = [
      (await records().record(small('e1', '3'))).exam.id,
      (await records().record(small('e2', '3'))).exam.id,
    ];
    start();
    const all = async () => (await Promise.all(ids.map((id) => stores.outbox.ofExam(id)))).flat();
    while (!(await all()).some(({ lastStatus }) => lastStatus === 429)) await pause(10);
    workers[0]?.wake();
    await pause(100);
    const [asked, other] = (await all()).sort((one, next) => next.attempts - one.attempts);
    expect(asked).toMatchObject({ state: 'waiting', attempts: 1, reason: 'BUSY', issues: ['throttled'] });
    expect(Date.parse(String(asked?.nextAttemptAt)) - Date.now()).toBeGreaterThan(3_000_000);
    expect(other).toMatchObject({ state: 'waiting', attempts: 0 });
    expect(receiver.requests).toHaveLength(1);
  });

  it('asks for a token once more when it is not accepted, within the same attempt', { timeout: 60_000 }, async () => {
    const file = join(folder, `token-${engine}`);
    writeFileSync(file, 'worn-out');
    receiver = await startFhirReceiver(({ headers }) => {
      if (headers.authorization === 'Bearer fresh') return 'fine';
      writeFileSync(file, 'fresh');
      return 'unauthorised';
    });
    const id = (await records().record(small('e', '3'))).exam.id;
    start(stores, { credentials: { kind: 'token-file', file } });
    await settled();
    expect(await stores.outbox.ofExam(id)).toMatchObject([{ state: 'delivered', attempts: 1 }]);
    expect(receiver.requests.map(({ headers }) => headers.authorization)).toEqual(['Bearer worn-out', 'Bearer fresh']);
  });

  it('gives up what is refused, tells why in codes alone, and goes on with the next', { timeout: 60_000 }, async () => {
    const ids = await (async () => {
      receiver = await startFhirReceiver(({ body }) =>
        body.includes('"EX-bad"') ? 'refused' : body.includes('"EX-entry"') ? 'entry-failed' : 'fine',
      );
      const names = ['EX-bad', 'EX-good', 'EX-entry'];
      return Promise.all(names.map(async (name) => (await records().record(small(name, '3'))).exam.id));
    })();
    start();
    await settled();
    const states = await Promise.all(ids.map(async (id) => (await stores.outbox.ofExam(id))[0]));
    expect(states).toMatchObject([
      { state: 'dead', attempts: 1, lastStatus: 422, reason: 'REFUSED', issues: ['business-rule'] },
      { state: 'delivered', attempts: 1 },
      { state: 'dead', lastStatus: 200, reason: 'ENTRY_FAILED', issues: ['invalid'] },
    ]);
    expect(JSON.stringify(states)).not.toContain('somebody');
    expect((await stores.outbox.figures(Date.now()))[0]).toMatchObject({ waiting: 0, dead: 2 });
    expect((await stores.outbox.dead(10)).map(({ examId }) => examId).sort()).toEqual([ids[0], ids[2]].sort());
  });

  it('does not follow a redirect, and gives up after the attempts that were set', { timeout: 60_000 }, async () => {
    receiver = await startFhirReceiver(({ body }) => (body.includes('"EX-moved"') ? 'redirect' : 'error'));
    const moved = (await records().record(small('EX-moved', '3'))).exam.id;
    const failing = (await records().record(small('EX-failing', '3'))).exam.id;
    start(stores, { maxAttempts: 3 });
    await settled();
    expect(await stores.outbox.ofExam(moved)).toMatchObject([
      { state: 'dead', reason: 'REDIRECT', lastStatus: 307, attempts: 1 },
    ]);
    expect(await stores.outbox.ofExam(failing)).toMatchObject([
      { state: 'dead', reason: 'SERVER_ERROR', lastStatus: 500, attempts: 3 },
    ]);
    expect(receiver.requests.every(({ path }) => path === '/')).toBe(true);
    expect(receiver.requests).toHaveLength(4);
  });

  it('tries again on request, but nothing that a later version has overtaken', { timeout: 60_000 }, async () => {
    let refuses = true;
    receiver = await startFhirReceiver(({ body }) => (refuses && body.includes('"EX-') ? 'refused' : 'fine'));
    const id = (await records().record(small('EX-1', '3'))).exam.id;
    await records().correct(id, 1, small('EX-1', '4', 'amended'));
    start();
    await settled();
    refuses = false;
    await records().correct(id, 2, small('EX-1', '2', 'amended'));
    await settled();
    const states = async () => (await stores.outbox.ofExam(id)).map(({ state }) => state);
    expect(await states()).toEqual(['dead', 'dead', 'delivered']);
    // Version 1 creates what is missing and overwrites nothing; version 2 would bring back what version 3 corrected.
    expect(await stores.outbox.retry(Date.now(), id)).toBe(1);
    await settled();
    expect(await states()).toEqual(['delivered', 'dead', 'delivered']);
    const held = heldAsOurs(receiver);
    const third = JSON.parse(String((await stores.exams.find(id, 3))?.bundle)) as Bundle;
    for (const resource of servedResources(third) as FhirResource[]) {
      expect(held.get(`${resource.resourceType}/${resource.id}`)).toEqual({ ...resource });
    }
  });

  it('sends what was kept before, when it is asked to, each version once', { timeout: 60_000 }, async () => {
    receiver = await startFhirReceiver();
    await stores.exams.close();
    stores = await openStores(target, searchRules);
    const ids = await keepExams(2);
    expect((await stores.outbox.figures(Date.now()))[0]).toMatchObject({ waiting: 0, dead: 0 });
    const now = Date.now();
    const all = { since: '1970-01-01T00:00:00.000Z', again: false, now };
    expect(await stores.outbox.enqueueKept({ ...all, since: new Date(now + 60_000).toISOString() })).toBe(0);
    expect(await stores.outbox.enqueueKept(all)).toBe(6);
    expect(await stores.outbox.enqueueKept(all)).toBe(0);
    start();
    await settled();
    expect(await stores.outbox.enqueueKept({ ...all, again: true })).toBe(6);
    workers[0]?.wake();
    await settled();
    expect(receiver.taken).toHaveLength(12);
    expect(heldAsOurs(receiver)).toEqual(await expected(ids));
  });

  it('forgets what waits of an exam that is erased', async () => {
    receiver = await startFhirReceiver();
    const [id = ''] = await keepExams(1);
    expect(await stores.outbox.ofExam(id)).toHaveLength(3);
    await stores.erasures.erase(id, { reason: 'Invented.', by: 'tester', at: new Date() });
    expect(await stores.outbox.ofExam(id)).toEqual([]);
    expect((await stores.outbox.figures(Date.now()))[0]?.waiting).toBe(0);
  });

  it.runIf(engine === 'postgres')(
    'shares the work among instances and sends nothing twice',
    { timeout: 60_000 },
    async () => {
      receiver = await startFhirReceiver();
      more = [await open(), await open()];
      const ids: string[] = [];
      for (let n = 0; n < 8; n++) ids.push((await records().record(small(`e${n}`, '3'))).exam.id);
      for (const id of ids) await records().correct(id, 1, small(`e${ids.indexOf(id)}`, '4', 'amended'));
      for (const one of [stores, ...more]) start(one);
      await settled();
      expect(receiver.taken).toHaveLength(16);
      expect(heldAsOurs(receiver)).toEqual(await expected(ids));
      for (const order of orders().values()) expect(order).toHaveLength(2);
    },
  );
});
