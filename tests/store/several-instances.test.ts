import { rmSync } from 'node:fs';
import { setTimeout as pause } from 'node:timers/promises';
import type { Bundle, Observation } from 'fhir/r4.js';
import { Client } from 'pg';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { type Answer, send, sendJson } from '../support/client.ts';
import { examNumbered } from '../support/example-exam.ts';
import { startPostgres, type TestPostgres } from '../support/postgres.ts';
import { temporaryFolder } from '../support/service.ts';
import { type SpawnedService, spawnService } from '../support/spawned-service.ts';

/** Nobody. */
const person = { system: 'https://clinic.example/patients', value: 'shared' };

/** Ids of the resources of a type in a Bundle. */
const idsIn = (answer: Answer, type: string): string[] =>
  (answer.json<Bundle>().entry ?? []).flatMap(({ resource }) =>
    resource?.resourceType === type ? [String(resource.id)] : [],
  );

/** The first is killed and started anew, so that three processes have the database open one time or another. */
const instances = 2;

describe('two instances on one PostgreSQL', () => {
  let postgres: TestPostgres;
  let databaseUrl: string;
  let dataDir: string;
  let services: SpawnedService[];

  beforeAll(async () => {
    postgres = await startPostgres();
    databaseUrl = await postgres.newDatabase();
    dataDir = temporaryFolder();
    // At once, on a database without a schema.
    services = await Promise.all(Array.from({ length: instances }, start));
    // A process is slow with its first exam.
    await Promise.all(services.map(({ url }, n) => sendJson(`${url}/exams`, examNumbered(`first-${n}`))));
  }, 120_000);
  afterAll(async () => {
    await Promise.all(services.map((service) => service.end('SIGKILL')));
    await postgres.stop();
    rmSync(dataDir, { recursive: true, force: true });
  });
  afterEach(() => {
    for (const service of services) expect(service.log()).not.toMatch(/unexpected/);
  });

  /** Until it is taken: an instance that is asked for too much at once says so by 503. */
  async function posted(url: string, raw: string): Promise<Answer> {
    for (;;) {
      const answer = await sendJson(`${url}/exams`, raw);
      if (answer.status !== 503) return answer;
      await pause(50);
    }
  }
  const start = () => spawnService({ DATABASE_URL: databaseUrl, DATA_DIR: dataDir, LOG_LEVEL: 'silent' });
  const instance = (n: number) => (services[n % services.length] as SpawnedService).url;

  it('keep each exam once, whoever brings it where, and find it on all', { timeout: 180_000 }, async () => {
    const exams = Array.from({ length: 16 }, (_, n) =>
      JSON.stringify(examNumbered(`shared-${n}`, { subject: { identifier: person } })),
    );
    const answers = await Promise.all(
      exams.flatMap((raw, n) => [posted(instance(n), raw), posted(instance(n + 1), raw)]),
    );
    for (let n = 0; n < exams.length; n++) {
      const [one, other] = answers.slice(2 * n, 2 * n + 2) as [Answer, Answer];
      expect([one.status, other.status].sort()).toEqual([200, 201]);
      expect(one.text).toBe(other.text);
    }
    const expected = new Set<string>();
    for (const path of new Set(answers.map(({ headers }) => String(headers.get('Location'))))) {
      const bundle = await send(`${instance(0)}${path}/bundle?type=collection`);
      for (const id of idsIn(bundle, 'ClinicalImpression')) expected.add(id);
    }
    expect(expected.size).toBe(exams.length);
    for (const { url } of services) {
      const found = await send(
        `${url}/fhir/ClinicalImpression?subject:identifier=${person.system}|${person.value}&_count=100&_elements=id`,
      );
      expect(idsIn(found, 'ClinicalImpression').sort()).toEqual([...expected].sort());
    }
  });

  it('take one of many corrections of one version, and search by it on all', { timeout: 180_000 }, async () => {
    const first = await sendJson(`${instance(0)}/exams`, examNumbered('corrected'));
    const path = String(first.headers.get('Location'));
    const corrections = await Promise.all(
      Array.from({ length: 12 }, (_, n) =>
        sendJson(
          `${instance(n)}${path}`,
          examNumbered('corrected', { status: 'amended', person: { ageYears: 30 + n } }),
          {
            method: 'PUT',
            headers: { 'If-Match': 'W/"1"' },
          },
        ),
      ),
    );
    // RFC 9110, 13.1.1: whoever names a version that is no longer current changes nothing.
    expect(corrections.map(({ status }) => status).sort()).toEqual([200, ...Array(11).fill(412)]);
    const winner = corrections.find(({ status }) => status === 200) as Answer;
    for (const { url } of services) {
      expect((await send(`${url}${path}/bundle`)).text).toBe(winner.text);
      expect((await send(`${url}${path}/bundle?version=1`)).text).toBe(first.text);
      const found = await send(`${url}/fhir/Observation?status=amended&_count=500&_elements=id`);
      const collection = await send(`${url}${path}/bundle?type=collection`);
      const amended = (collection.json<Bundle>().entry ?? [])
        .map(({ resource }) => resource as Observation)
        .filter(({ resourceType, status }) => resourceType === 'Observation' && status === 'amended')
        .map(({ id }) => String(id));
      expect(idsIn(found, 'Observation').sort()).toEqual(amended.sort());
    }
    expect(await rows('SELECT max(version) AS version FROM exam_version')).toEqual([{ version: 2 }]);
  });

  it('lose and double nothing when one of them is killed', { timeout: 180_000 }, async () => {
    const load = underLoad('kill');
    await load.reaches(6);
    const [killed] = services;
    expect(await killed?.end('SIGKILL')).toBe('SIGKILL');
    await load.reaches(load.acknowledged.size + 6);
    services[0] = await start();
    await load.reaches(load.acknowledged.size + 6);
    await load.stop();
    await expectKept(load.acknowledged);
  });

  it.each(['SIGKILL', 'SIGINT'] as const)(
    'say so while the database is gone by %s, and go on by themselves when it is back',
    { timeout: 180_000 },
    async (signal) => {
      const load = underLoad(signal);
      await load.reaches(6);
      await postgres.end(signal);
      for (const { url } of services) {
        for (const answer of [
          await sendJson(`${url}/exams`, examNumbered('while-it-was-gone')),
          await send(`${url}/fhir/Observation`),
        ]) {
          expect([answer.status, Number(answer.headers.get('Retry-After')) > 0]).toEqual([503, true]);
        }
        expect((await send(`${url}/health/ready`)).status).toBe(503);
        expect((await send(`${url}/health/live`)).status).toBe(200);
      }
      await postgres.restart();
      for (const { url } of services) {
        while ((await send(`${url}/health/ready`)).status !== 200) await pause(20);
        expect((await sendJson(`${url}/exams`, examNumbered('after-it-was-back'))).status).toBeLessThan(300);
      }
      await load.reaches(load.acknowledged.size + 6);
      await load.stop();
      expect(load.statuses).toEqual(new Set([201, 503]));
      await expectKept(load.acknowledged);
    },
  );

  /** Three clients that post new exams to all instances, each until it is acknowledged. */
  function underLoad(name: string) {
    const acknowledged = new Map<string, { raw: string; bundle: string }>();
    const statuses = new Set<number>();
    let isStopped = false;
    const clients = Array.from({ length: 3 }, async (_, client) => {
      for (let n = 0; !isStopped; n++) {
        const raw = JSON.stringify(examNumbered(`${name}-${client}-${n}`));
        for (let attempt = 0; !isStopped; attempt++) {
          const answer = await sendJson(`${instance(client + n + attempt)}/exams`, raw).catch(() => undefined);
          // A repeat of what was kept before the answer was lost is answered with 200.
          if (answer !== undefined && !(attempt > 0 && answer.status === 200)) statuses.add(answer.status);
          if (answer?.status === 201 || answer?.status === 200) {
            acknowledged.set(String(answer.headers.get('Location')), { raw, bundle: answer.text });
            break;
          }
          await pause(20);
        }
      }
    });
    return {
      acknowledged,
      statuses,
      async reaches(count: number) {
        while (acknowledged.size < count) await pause(10);
      },
      async stop() {
        isStopped = true;
        await Promise.all(clients);
      },
    };
  }

  async function expectKept(acknowledged: ReadonlyMap<string, { raw: string; bundle: string }>): Promise<void> {
    let n = 0;
    for (const [path, { raw, bundle }] of acknowledged) {
      const url = instance(n++);
      expect((await send(`${url}${path}`)).text).toBe(raw);
      expect((await send(`${url}${path}/bundle`)).text).toBe(bundle);
    }
    const incomplete = `SELECT n FROM exam WHERE NOT EXISTS (SELECT 1 FROM exam_version WHERE exam = exam.n)
      OR (SELECT count(*) FROM batch WHERE exam = exam.n AND layout IS NOT NULL) <> 1`;
    expect(await rows(incomplete)).toEqual([]);
    const total = (await send(`${instance(0)}/fhir/ClinicalImpression?_summary=count`)).json<{ total: number }>().total;
    expect(await rows('SELECT count(*) AS n FROM exam')).toEqual([{ n: total }]);
    expect(total).toBeGreaterThanOrEqual(acknowledged.size);
  }

  async function rows(text: string): Promise<Record<string, unknown>[]> {
    const client = new Client({ connectionString: databaseUrl, options: '-c search_path=neuroexam' });
    await client.connect();
    try {
      return (await client.query(text)).rows;
    } finally {
      await client.end();
    }
  }
});
