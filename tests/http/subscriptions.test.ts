import { rmSync } from 'node:fs';
import type { AuditEvent, ClinicalImpression, OperationOutcome, Subscription } from 'fhir/r4.js';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { readConfig } from '../../src/config.ts';
import { type RunningService, startService } from '../../src/service.ts';
import type { DeliveryStatus } from '../../src/store/outbox/outbox-repository.ts';
import { compiledByBuild } from '../support/built.ts';
import { send, sendJson } from '../support/client.ts';
import { examNumbered } from '../support/example-exam.ts';
import { type FhirReceiver, type Mood, startFhirReceiver } from '../support/fhir-receiver.ts';
import { temporaryFolder } from '../support/service.ts';

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

describe('subscriptions', () => {
  let dataDir: string;
  let service: RunningService;
  let receiver: FhirReceiver;
  let mood: Mood = 'fine';
  let exams = 0;

  beforeAll(async () => {
    dataDir = temporaryFolder();
    receiver = await startFhirReceiver(() => mood);
    const settings = { PORT: '0', LOG_LEVEL: 'silent', DATA_DIR: dataDir };
    const hooks = { WEBHOOK_ALLOWED_HOSTS: '127.0.0.1', WEBHOOK_MAX_ATTEMPTS: '2' };
    service = await startService(readConfig({ ...settings, ...hooks }), compiledByBuild());
  }, 60_000);
  afterAll(async () => {
    await service.stop();
    await receiver.stop();
    rmSync(dataDir, { recursive: true, force: true });
  });
  beforeEach(() => {
    mood = 'fine';
  });

  const subscription = (
    changes: Partial<Subscription> = {},
    channel: Partial<Subscription['channel']> = {},
  ): Subscription => ({
    resourceType: 'Subscription',
    status: 'requested',
    reason: 'A list of new impressions; invented.',
    criteria: 'ClinicalImpression?status=in-progress',
    ...changes,
    channel: { type: 'rest-hook', endpoint: `${receiver.url}/hooks`, ...channel },
  });
  const base = () => `${service.url}/fhir/Subscription`;
  const keep = async (value: unknown) => sendJson(base(), value);
  async function newExam(status = 'final') {
    exams += 1;
    const answer = await sendJson(`${service.url}/exams`, examNumbered(`sub-${exams}`, { status }));
    expect(answer.status).toBe(201);
    const location = String(answer.headers.get('Location'));
    const found = await send(
      `${service.url}/fhir/ClinicalImpression?identifier=https://clinic.example/exams|sub-${exams}`,
    );
    return { location, impression: found.json<{ entry: { resource: ClinicalImpression }[] }>().entry[0]?.resource };
  }
  const deliveriesOf = async (location: string) =>
    (await send(`${service.url}${location}/deliveries`)).json<{ deliveries: DeliveryStatus[] }>().deliveries;
  const arrived = async (count: number) => {
    while (receiver.requests.length < count) await pause(10);
  };
  const off = async (id: string | undefined) =>
    expect((await send(`${base()}/${id}`, { method: 'DELETE' })).status).toBe(204);

  it('tells of a new impression by an empty POST, or by the resource under its own address', {
    timeout: 60_000,
  }, async () => {
    const before = receiver.requests.length;
    const plain = (await keep(subscription({}, { header: ['Authorization: Bearer for-hooks'] }))).json<Subscription>();
    const whole = (await keep(subscription({}, { payload: 'application/fhir+json' }))).json<Subscription>();
    expect([plain.status, whole.status]).toEqual(['active', 'active']);
    const { location, impression } = await newExam();
    await arrived(before + 2);
    const told = receiver.requests.slice(before);
    const ping = told.find(({ method }) => method === 'POST');
    expect(ping).toMatchObject({ path: '/hooks', body: '', headers: { authorization: 'Bearer for-hooks' } });
    const put = told.find(({ method }) => method === 'PUT');
    expect(put?.path).toBe(`/hooks/ClinicalImpression/${impression?.id}`);
    expect(JSON.parse(String(put?.body))).toEqual(impression);
    expect(put?.headers.authorization).toBeUndefined();

    while ((await deliveriesOf(location)).some(({ state }) => state === 'waiting')) await pause(10);
    const deliveries = await deliveriesOf(location);
    expect(deliveries).toHaveLength(2);
    expect(deliveries).toEqual(
      expect.arrayContaining([
        expect.objectContaining({
          target: `Subscription/${plain.id}`,
          version: 1,
          state: 'delivered',
          attempts: 1,
          lastStatus: 200,
        }),
      ]),
    );
    await off(plain.id);
    await off(whole.id);
    expect(await deliveriesOf((await newExam()).location)).toEqual([]);
    expect(receiver.requests).toHaveLength(before + 2);
  });

  it('tells of what matches and changed, and of nothing else', { timeout: 60_000 }, async () => {
    const before = receiver.requests.length;
    const ends = [
      (await keep(subscription({ criteria: 'ClinicalImpression?patient=Patient/nobody' }))).json<Subscription>(),
      (
        await keep(
          subscription(
            { criteria: 'ClinicalImpression?status=entered-in-error' },
            { endpoint: `${receiver.url}/gone` },
          ),
        )
      ).json<Subscription>(),
    ];
    const { location } = await newExam();
    const sent = (await send(`${service.url}${location}`)).json();
    const corrected = await sendJson(
      `${service.url}${location}`,
      { ...sent, status: 'entered-in-error' },
      { method: 'PUT', headers: { 'If-Match': 'W/"1"' } },
    );
    expect(corrected.status).toBe(200);
    await arrived(before + 1);
    expect(receiver.requests.slice(before).map(({ path }) => path)).toEqual(['/gone']);
    expect(await deliveriesOf(location)).toMatchObject([{ target: `Subscription/${ends[1]?.id}`, version: 2 }]);
    for (const { id } of ends) await off(id);
  });

  it('shows names of headers and never their values, and keeps a value that comes back masked', {
    timeout: 60_000,
  }, async () => {
    const kept = await keep(subscription({}, { header: ['Authorization: Bearer first-secret', 'X-Room: 12'] }));
    const shown = kept.json<Subscription>();
    expect(shown.channel.header).toEqual(['Authorization: ***', 'X-Room: ***']);
    const address = `${base()}/${shown.id}`;
    const headers = { 'If-Match': String(kept.headers.get('ETag')) };
    const changed = await sendJson(address, { ...shown, reason: 'Another; invented.' }, { method: 'PUT', headers });
    expect([changed.status, changed.json<Subscription>().meta?.versionId]).toEqual([200, '2']);
    expect((await sendJson(address, shown, { method: 'PUT', headers })).status).toBe(412);
    const before = receiver.requests.length;
    await newExam();
    await arrived(before + 1);
    expect(receiver.requests[before]?.headers).toMatchObject({ authorization: 'Bearer first-secret', 'x-room': '12' });
    await off(shown.id);
    for (const place of ['', '/_history', '/_history/1', '/_history/2']) {
      expect((await send(`${address}${place}`)).text).not.toMatch(/secret/);
    }
    const found = await send(`${base()}?status=off&url=${encodeURIComponent(`${receiver.url}/hooks`)}&type=rest-hook`);
    expect(found.text).toContain(String(shown.id));
    expect(found.text).not.toMatch(/secret/);
  });

  it('becomes an error when its receiver fails, says so, and goes on when it is asked for again', {
    timeout: 60_000,
  }, async () => {
    mood = 'error';
    const made = await keep(subscription());
    const { id } = made.json<Subscription>();
    await newExam();
    const read = async () => (await send(`${base()}/${id}`)).json<Subscription>();
    while ((await read()).status === 'active') await pause(20);
    const failed = await read();
    expect(failed).toMatchObject({
      status: 'error',
      error: 'Notifications could not be delivered: The server failed.',
    });
    mood = 'fine';
    const headers = { 'If-Match': `W/"${failed.meta?.versionId}"` };
    const again = await sendJson(`${base()}/${id}`, { ...failed, status: 'requested' }, { method: 'PUT', headers });
    expect(again.json<Subscription>()).toMatchObject({ status: 'active' });
    expect(again.json<Subscription>().error).toBeUndefined();
    const before = receiver.requests.length;
    await newExam();
    await arrived(before + 1);
    await off(id);
  });

  it('leaves one event of each change, also of one that was refused', async () => {
    const { id } = (await keep(subscription())).json<Subscription>();
    const change = (version: number) =>
      sendJson(
        `${base()}/${id}`,
        { ...subscription({ status: 'off' }), id },
        {
          method: 'PUT',
          headers: { 'If-Match': `W/"${version}"` },
        },
      );
    expect((await change(3)).status).toBe(412);
    expect((await change(1)).status).toBe(200);
    await off(id);
    const events = await send(`${service.url}/fhir/AuditEvent?entity=Subscription/${id}&_sort=date`);
    const { entry } = events.json<{ entry: { resource: AuditEvent }[] }>();
    expect(entry.map(({ resource: { action, outcome } }) => `${action} ${outcome}`)).toEqual([
      'C 0',
      'U 4',
      'U 0',
      'D 0',
    ]);
  });

  it('ends at its end', { timeout: 60_000 }, async () => {
    // Long enough to be ahead when a busy machine reads it.
    const end = new Date(Date.now() + 3_000).toISOString();
    const { id } = (await keep(subscription({ end }))).json<Subscription>();
    while ((await send(`${base()}/${id}`)).json<Subscription>().status !== 'off') await pause(20);
  });

  it('is refused with every fault, none of which repeats what was sent', async () => {
    const { criteria: _criteria, ...without } = subscription();
    const cases: [unknown, RegExp[]][] = [
      [{ resourceType: 'Patient' }, [/type Subscription/]],
      [without, [/needed/]],
      [subscription({ criteria: 'Patient?name=Smith' }), [/begin with one of/]],
      [subscription({ criteria: 'ClinicalImpression?stats=final' }), [/did you mean status/]],
      [
        subscription({ criteria: 'ClinicalImpression?_include=ClinicalImpression:subject' }),
        [/not how a result is shown/],
      ],
      [subscription({ end: '2001-01-01T00:00:00Z' }), [/over/]],
      [subscription({}, { type: 'email' }), [/rest-hook/]],
      [subscription({}, { endpoint: 'http://169.254.169.254/latest' }), [/https/]],
      [subscription({}, { endpoint: 'https://169.254.169.254/latest' }), [/public internet/]],
      [subscription({}, { endpoint: 'https://[::ffff:127.0.0.1]/' }), [/public internet/]],
      [subscription({}, { payload: 'application/fhir+xml' }), [/application\/fhir\+json/]],
      [subscription({}, { header: ['Host: elsewhere', 'A: b\r\nC: d'] }), [/own to set/, /ASCII/]],
      [{ ...subscription(), topic: 'x', status: 'on' }, [/Known here/, /requested, active/]],
    ];
    for (const [sent, expected] of cases) {
      const answer = await keep(sent);
      expect(answer.status).toBe(422);
      const { issue } = answer.json<OperationOutcome>();
      expect(issue).toHaveLength(expected.length);
      const texts = issue.map(({ diagnostics, details }) => `${diagnostics} ${details?.text}`);
      for (const form of expected) expect(texts.some((text) => form.test(text))).toBe(true);
      expect(answer.text).not.toMatch(/Smith|169\.254|elsewhere/);
    }
    expect((await keep('{')).status).toBe(400);
  });

  it('may be active a hundred at a time', { timeout: 120_000 }, async () => {
    const ids: (string | undefined)[] = [];
    for (;;) {
      const answer = await keep(subscription({ criteria: 'ClinicalImpression?patient=Patient/nobody' }));
      if (answer.status === 422) break;
      ids.push(answer.json<Subscription>().id);
    }
    expect(ids).toHaveLength(100);
    for (const id of ids) await off(id);
    await off((await keep(subscription())).json<Subscription>().id);
  });

  it('answers for an exam that nobody has, and retries nothing where nothing was given up', async () => {
    const none = `${service.url}/exams/00000000-0000-4000-8000-000000000000/deliveries`;
    expect((await send(none)).status).toBe(404);
    expect((await sendJson(`${none}/retry`, '')).status).toBe(404);
    const { location } = await newExam();
    const retried = await send(`${service.url}${location}/deliveries/retry`, { method: 'POST' });
    expect(retried.json()).toEqual({ retried: 0, deliveries: [] });
  });
});
