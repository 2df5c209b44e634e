import { setTimeout as pause } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Chance } from '../../src/kernel/chance.ts';
import { type Answer, send, sendJson } from '../support/client.ts';
import { type SpawnedService, spawnService } from '../support/spawned-service.ts';
import { numberedExam, Witness } from './exam-load.ts';
import { type FaultyLine, faultyLine, lineFaults } from './faulty-line.ts';
import { type LastingStore, lastingStore } from './service-on.ts';
import { isFullRun, seed, sizes, tell } from './sizes.ts';

/** Clients that correct one version at the same time. */
const rivals = 6;

describe('faults of the database and of the line to it', () => {
  let store: LastingStore;
  let line: FaultyLine;
  /** One reaches the database directly, the other by the line. */
  let direct: SpawnedService;
  let lined: SpawnedService;
  beforeAll(async () => {
    store = await lastingStore('postgres');
    const url = new URL(store.databaseUrl);
    line = await faultyLine({ host: url.hostname, port: Number(url.port) });
    url.port = String(line.port);
    direct = await store.start();
    lined = await spawnService({ DATA_DIR: store.dataDir, DATABASE_URL: url.href, LOG_LEVEL: 'error' });
  }, 120_000);
  afterAll(async () => {
    await lined?.end('SIGKILL');
    await line?.close();
    await store.remove();
  });

  it('let one of several corrections of one version win, on whichever instance', { timeout: 3_600_000 }, async () => {
    for (let race = 0; race < sizes.races; race += 1) {
      const name = `race-${race}`;
      const first = await sendJson(`${direct.url}/exams`, numberedExam(name));
      const path = String(first.headers.get('Location'));
      for (const version of [1, 2]) {
        const answers = await Promise.all(
          Array.from({ length: rivals }, (_, n) => {
            const exam = { ...numberedExam(name), status: 'amended', person: { ageYears: 30 + version * rivals + n } };
            const headers = { 'If-Match': `W/"${version}"` };
            return untilTaken(() =>
              sendJson(`${n % 2 === 0 ? direct.url : lined.url}${path}`, exam, { method: 'PUT', headers }),
            );
          }),
        );
        expect(answers.map(({ status }) => status).sort()).toEqual([200, ...Array(rivals - 1).fill(412)]);
        const winner = answers.find(({ status }) => status === 200);
        expect((await send(`${lined.url}${path}/bundle`)).text).toBe(winner?.text);
      }
      expect((await send(`${direct.url}${path}/bundle?version=1`)).text).toBe(first.text);
      expect((await send(`${direct.url}${path}?version=4`)).status).toBe(404);
    }
    tell(`postgres: ${sizes.races * 2} versions corrected by ${rivals} at once on two instances: one won each time`);
  });

  it('by resets, silence, half-open and cut lines lose, double and hang nothing', { timeout: 3_600_000 }, async () => {
    const chance = new Chance(`${seed} line`);
    const witness = new Witness();
    let longestMs = 0;
    for (let n = 0; n < sizes.lineFaults; n += 1) {
      const fault = lineFaults[n % lineFaults.length] as (typeof lineFaults)[number];
      const posts = Array.from({ length: 3 }, async (_, client) => {
        const began = performance.now();
        await witness.post(`line-${n}-${client}`, lined.url);
        longestMs = Math.max(longestMs, performance.now() - began);
      });
      await pause(chance.next() * 60);
      line.spoil(fault);
      await pause(50 + chance.next() * 200);
      line.mend();
      await Promise.all(posts);
      while ((await send(`${lined.url}/health/ready`)).status !== 200) await pause(20);
    }
    const { kept, lost } = await witness.settle(lined.url);
    expect(await witness.faults(direct.url)).toEqual([]);
    expect([...witness.statuses.keys()].filter((status) => ![200, 201, 503].includes(status))).toEqual([]);
    expect(lined.log()).not.toMatch(/UNEXPECTED/);
    tell(
      `${sizes.lineFaults} faults of the line: ${witness.acknowledged.size} exams, ${kept} kept without an answer, ` +
        `${lost} refused and taken at the repeat; longest answer ${Math.round(longestMs)} ms`,
    );
  });

  it('by its end lead to 503 until it is back, and everything acknowledged is there', {
    timeout: 3_600_000,
  }, async () => {
    const chance = new Chance(`${seed} outage`);
    const witness = new Witness();
    const urls = [direct.url, lined.url];
    for (let n = 0; n < sizes.outages; n += 1) {
      const before = witness.acknowledged.size;
      const load = witness.load(`outage-${n}`, 4, (k) => String(urls[k % 2]));
      while (witness.acknowledged.size < before + 2) await pause(2);
      await store.postgres?.end(n % 3 === 2 ? 'SIGQUIT' : 'SIGKILL');
      for (const url of urls) {
        const refused = await sendJson(`${url}/exams`, numberedExam(`gone-${n}`));
        expect([refused.status, Number(refused.headers.get('Retry-After')) > 0]).toEqual([503, true]);
        expect((await send(`${url}/fhir/Observation?_count=1`)).status).toBe(503);
        expect((await send(`${url}/health/ready`)).status).toBe(503);
        expect((await send(`${url}/health/live`)).status).toBe(200);
      }
      if (isFullRun) await pause(chance.next() * 5_000);
      await store.postgres?.restart();
      for (const url of urls) while ((await send(`${url}/health/ready`)).status !== 200) await pause(20);
      const back = witness.acknowledged.size;
      while (witness.acknowledged.size < back + 2) await pause(2);
      await load.stop();
      expect(await witness.faults(direct.url, before)).toEqual([]);
    }
    const { kept, lost } = await witness.settle(lined.url);
    expect(await witness.faults(lined.url)).toEqual([]);
    expect([...witness.statuses.keys()].filter((status) => ![200, 201, 503].includes(status))).toEqual([]);
    const [row] = await store.rows(
      'SELECT count(*) AS n FROM (SELECT id FROM exam GROUP BY id HAVING count(*) > 1) AS twice',
    );
    expect(row).toEqual({ n: 0 });
    tell(
      `${sizes.outages} times the database was gone: ${witness.acknowledged.size} exams acknowledged, 0 lost, 0 doubled; ` +
        `of those refused or without an answer ${kept} had been kept, ${lost} not`,
    );
  });
});

/** Again where an instance had too much to do; a correction that was not made may be sent again. */
async function untilTaken(ask: () => Promise<Answer>): Promise<Answer> {
  for (;;) {
    const answer = await ask();
    if (answer.status !== 503) return answer;
    await pause(50);
  }
}
