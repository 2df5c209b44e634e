import { once } from 'node:events';
import type { Socket } from 'node:net';
import { setTimeout as pause } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Chance } from '../../src/kernel/chance.ts';
import { send, sendJson } from '../support/client.ts';
import type { SpawnedService } from '../support/spawned-service.ts';
import { numberedExam } from './exam-load.ts';
import { connectTo, sendRaw, statusesIn } from './raw-socket.ts';
import { type LastingStore, lastingStore } from './service-on.ts';
import { isFullRun, seed, sizes, tell } from './sizes.ts';
import { lookAt, watchedEnvironment } from './watched.ts';

const idleConnections = isFullRun ? 500 : 60;
const slowReaders = isFullRun ? 100 : 20;
/** What readers who never read may cost, in bytes: no answer is made faster than it is taken. */
const mostHeld = 96 * 1024 * 1024;

const posted = (raw: string, more = '') =>
  `POST /exams HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\n${more}Content-Length: ${Buffer.byteLength(raw)}\r\n\r\n${raw}`;

describe('slow and broken clients', () => {
  let store: LastingStore;
  let service: SpawnedService;
  const held: Socket[] = [];
  beforeAll(async () => {
    store = await lastingStore('sqlite');
    service = await store.start(watchedEnvironment(store.dataDir));
    for (let n = 0; n < 8; n += 1) {
      expect((await sendJson(`${service.url}/exams`, numberedExam(`slow-${n}`))).status).toBe(201);
    }
  });
  afterAll(async () => {
    letGo();
    await store.remove();
  });

  it('that say nothing, or half of something, keep nobody from being served', async () => {
    const halves = [
      '',
      'GET /hea',
      'GET /health/live HTTP/1.1\r\nHost: x\r\n',
      posted(JSON.stringify(numberedExam('half'))).slice(0, 900),
    ];
    for (let n = 0; n < idleConnections; n += 1) hold(halves[n % halves.length] ?? '');
    await honest('among-silent');
    letGo();
    await atRest();
  });

  it('that never read what they asked for keep nobody from being served, and cost little', async () => {
    const before = await lookAt(service, store.dataDir);
    const large = ['/fhir/Observation?_count=500', '/views/findings.csv', '/fhir/Observation/_history?_count=500'];
    for (let n = 0; n < slowReaders; n += 1) {
      hold(`GET ${large[n % large.length]} HTTP/1.1\r\nHost: x\r\n\r\n`).pause();
    }
    await honest('among-slow-readers');
    const during = await lookAt(service, store.dataDir);
    const grown = Math.round((during.heap - before.heap) / 1024 / 1024);
    tell(`${slowReaders} readers who never read: heap grew by ${grown} MiB`);
    expect(during.heap - before.heap).toBeLessThan(mostHeld);
    letGo();
    await atRest();
  });

  it('that go away in the middle leave nothing behind but whole exams', { timeout: 600_000 }, async () => {
    const chance = new Chance(`${seed} aborts`);
    const raws: string[] = [];
    for (let n = 0; n < sizes.aborts; n += 1) {
      const raw = JSON.stringify(numberedExam(`abort-${n}`));
      const bytes = posted(raw);
      const socket = connectTo(service.url);
      // A third of them is sent to the end and does not wait for the answer.
      socket.write(bytes.slice(0, Math.floor(bytes.length * Math.min(1, chance.next() * 1.5))));
      await pause(chance.next() * 20);
      if (chance.isSo(0.5)) socket.destroy();
      else socket.resetAndDestroy();
      raws.push(raw);
    }
    await honest('after-aborts');
    await atRest();
    let kept = 0;
    for (const raw of raws) {
      const answer = await sendJson(`${service.url}/exams`, raw);
      expect([200, 201]).toContain(answer.status);
      if (answer.status === 200) kept += 1;
      expect((await send(service.url + answer.headers.get('Location'))).text).toBe(raw);
    }
    tell(`${sizes.aborts} requests broken off: ${kept} had been sent whole and were kept, the others left nothing`);
  });

  it('that send several requests at once get their own answers in order', async () => {
    const raws = Array.from({ length: 6 }, (_, n) => JSON.stringify(numberedExam(`pipelined-${n}`)));
    const { text } = await sendRaw(
      service.url,
      raws.map((raw, n) => (n === raws.length - 1 ? posted(raw, 'Connection: close\r\n') : posted(raw))).join(''),
      15_000,
    );
    expect(statusesIn(text)).toEqual(raws.map(() => 201));
    const locations = [...text.matchAll(/^Location: (\S+)/gim)].map(([, path]) => String(path));
    for (const [n, path] of locations.entries()) expect((await send(service.url + path)).text).toBe(raws[n]);
  });

  it.runIf(isFullRun)('that dribble are cut off in time', async () => {
    for (const [start, mostSeconds] of [
      ['GET /health/live HTTP/1.1\r\nX-A: ', 13],
      [posted(JSON.stringify(numberedExam('dribble'))).slice(0, 600), 23],
    ] as const) {
      const began = performance.now();
      const socket = hold(start);
      let text = '';
      socket.on('data', (chunk) => {
        text += chunk.toString('latin1');
      });
      const drip = setInterval(() => socket.write('a'), 500);
      await once(socket, 'close');
      clearInterval(drip);
      const seconds = (performance.now() - began) / 1000;
      tell(`a dribbling client was cut off after ${seconds.toFixed(1)} s by ${statusesIn(text)}`);
      expect(statusesIn(text)).toEqual([408]);
      expect(seconds).toBeLessThan(mostSeconds);
    }
    await honest('after-dribble');
  });

  function hold(start: string): Socket {
    const socket = connectTo(service.url);
    socket.write(start);
    held.push(socket);
    return socket;
  }

  function letGo(): void {
    for (const socket of held.splice(0)) socket.destroy();
  }

  async function honest(name: string): Promise<void> {
    expect((await sendJson(`${service.url}/exams`, numberedExam(name))).status).toBe(201);
    expect((await send(`${service.url}/health/ready`)).status).toBe(200);
  }

  /** Until no connection is left but the few that this process keeps alive. */
  async function atRest(): Promise<void> {
    while ((await lookAt(service, store.dataDir)).sockets > 10) await pause(50);
  }
});
