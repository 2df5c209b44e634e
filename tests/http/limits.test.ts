import { type AddressInfo, connect, createServer, type Socket } from 'node:net';
import express from 'express';
import { pino } from 'pino';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { errorHandler } from '../../src/http/error-handler.ts';
import { createLoadGate, type LoadLimits } from '../../src/http/limits/load-gate.ts';
import { timeLimit } from '../../src/http/limits/time-limit.ts';
import { listen } from '../../src/http/server.ts';
import type { RunningService } from '../../src/service.ts';
import { send, sendJson } from '../support/client.ts';
import { examNumbered } from '../support/example-exam.ts';
import { startPostgres } from '../support/postgres.ts';
import { startTestService } from '../support/service.ts';

const cleanUp: (() => unknown)[] = [];
afterEach(async () => {
  for (const step of cleanUp.splice(0).reverse()) await step();
});

async function start(env: Readonly<Record<string, string>>): Promise<RunningService> {
  const service = await startTestService(env);
  cleanUp.push(service.stop);
  return service;
}

/** Begins a request whose body never comes to its end; the service goes on to wait for it. */
function hold(url: string, bytes: number): Socket {
  const socket = connect(Number(new URL(url).port), '127.0.0.1');
  socket.on('error', () => undefined);
  socket.write(
    `POST /exams HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\nContent-Length: ${bytes}\r\n\r\n{`,
  );
  cleanUp.push(() => socket.destroy());
  return socket;
}

async function metric(url: string, line: string): Promise<number> {
  const { text } = await send(`${url}/metrics`);
  return Number(
    text
      .split('\n')
      .find((one) => one.startsWith(`${line} `))
      ?.slice(line.length + 1),
  );
}

async function until(url: string, line: string, value: number): Promise<void> {
  await vi.waitFor(async () => expect(await metric(url, line)).toBe(value), { timeout: 20_000 });
}

describe('a service with too much to do', () => {
  it('refuses what is above its limit, keeps all that it took, and takes more afterwards', async () => {
    const { url } = await start({ MAX_REQUESTS: '3' });
    const held = [hold(url, 50), hold(url, 50)];
    await until(url, 'http_requests_in_flight', 2);
    // One place is left.
    const answers = await Promise.all(
      Array.from({ length: 12 }, (_, n) => sendJson(`${url}/exams`, examNumbered(`load-${n}`))),
    );
    const kept = answers.filter(({ status }) => status === 201);
    const refused = answers.filter(({ status }) => status === 503);
    expect(kept.length + refused.length).toBe(12);
    expect(kept.length).toBeGreaterThan(0);
    held.push(hold(url, 50));
    await until(url, 'http_requests_in_flight', 3);
    refused.push(await sendJson(`${url}/exams`, examNumbered('one-too-many')), await send(`${url}/catalogue`));
    for (const { status, headers, json } of refused) {
      expect(status).toBe(503);
      expect(Number(headers.get('Retry-After'))).toBeGreaterThanOrEqual(1);
      expect(JSON.stringify(json())).toContain('OVERLOADED');
    }
    expect(await metric(url, 'neuroexam_refusals_total{reason="requests"}')).toBe(refused.length);
    for (const path of ['/health/live', '/health/ready', '/metrics']) expect((await send(url + path)).status).toBe(200);
    for (const socket of held) socket.destroy();
    await until(url, 'http_requests_in_flight', 0);
    const again = await sendJson(`${url}/exams`, examNumbered('afterwards'));
    expect(again.status).toBe(201);
    for (const { headers } of [...kept, again]) {
      expect((await send(url + headers.get('Location'))).status).toBe(200);
    }
    expect(await metric(url, 'neuroexam_exams_total{event="created"}')).toBe(kept.length + 1);
  });

  it('takes only so many bytes of bodies at once, and still answers what has no body', async () => {
    const { url } = await start({ BODY_LIMIT_BYTES: '20000', MAX_BODY_BYTES: '20000' });
    const held = hold(url, 19_000);
    await until(url, 'http_request_body_bytes_in_flight', 19_000);
    const exam = JSON.stringify(examNumbered('bytes'));
    expect((await sendJson(`${url}/exams`, exam)).status).toBe(503);
    expect((await send(`${url}/catalogue`)).status).toBe(200);
    expect(await metric(url, 'http_request_body_bytes_in_flight')).toBe(19_000);
    held.destroy();
    await until(url, 'http_request_body_bytes_in_flight', 0);
    expect((await sendJson(`${url}/exams`, exam)).status).toBe(201);
  });

  it('begins nothing while memory is short', async () => {
    // No Node process is as small as this.
    const { url } = await start({ MAX_MEMORY_MB: '64' });
    const answer = await sendJson(`${url}/localisation`, {});
    expect([answer.status, answer.headers.get('Content-Type')]).toEqual([
      503,
      'application/problem+json; charset=utf-8',
    ]);
    expect((await send(`${url}/health/ready`)).status).toBe(200);
  });

  it('refuses for each reason by itself', () => {
    const limits: LoadLimits = { requests: 2, bodyBytes: 100, pendingWrites: 5, delayMs: 50, memoryMb: 0 };
    const rest = { pendingWrites: () => 0, delayMs: () => 0, isMemoryShort: () => false };
    const reasonFor = (busy: Partial<typeof rest>, bytes: number, path = '/exams') => {
      const reasons: string[] = [];
      const gate = createLoadGate(limits, 80, { ...rest, ...busy }, (reason) => reasons.push(reason));
      const req = { path, headers: bytes === 0 ? {} : { 'content-length': String(bytes) } };
      try {
        gate.handle(req as never, { once: () => undefined } as never, () => undefined);
      } catch {
        return reasons.join();
      }
      return 'taken';
    };
    expect(reasonFor({}, 70)).toBe('taken');
    expect(reasonFor({ pendingWrites: () => 5 }, 70)).toBe('pending-writes');
    expect(reasonFor({ pendingWrites: () => 5 }, 0)).toBe('taken');
    expect(reasonFor({ delayMs: () => 51 }, 0)).toBe('delay');
    expect(reasonFor({ isMemoryShort: () => true }, 0)).toBe('memory');
    expect(reasonFor({ isMemoryShort: () => true, delayMs: () => 51 }, 0, '/health/live')).toBe('taken');
  });
});

describe('a service with a limit of requests', () => {
  it('answers 429 above it, and says beforehand how much is left', async () => {
    const { url } = await start({ RATE_LIMIT_PER_MINUTE: '3' });
    const answers = [];
    for (let n = 0; n < 5; n += 1) answers.push(await send(`${url}/fhir/metadata`));
    expect(answers.map(({ status }) => status)).toEqual([200, 200, 200, 429, 429]);
    // draft-ietf-httpapi-ratelimit-headers-08, sections 3 and 4.
    expect(answers[0]?.headers.get('RateLimit-Policy')).toMatch(/^"requests"; q=3; w=60/);
    expect(answers[0]?.headers.get('RateLimit')).toMatch(/^"requests"; r=2; t=\d+$/);
    const refused = answers[3];
    expect(Number(refused?.headers.get('Retry-After'))).toBeGreaterThan(0);
    expect(refused?.json()).toMatchObject({ resourceType: 'OperationOutcome', issue: [{ code: 'throttled' }] });
    for (let n = 0; n < 4; n += 1) expect((await send(`${url}/health/live`)).status).toBe(200);
    expect((await send(`${url}/metrics`)).text).toContain('neuroexam_refusals_total{reason="rate"} 2');
  });

  it('believes X-Forwarded-For only of a proxy that is named', async () => {
    const statuses = async (env: Record<string, string>) => {
      const { url } = await start({ RATE_LIMIT_PER_MINUTE: '1', ...env });
      const from = (address: string) => send(`${url}/fhir/metadata`, { headers: { 'X-Forwarded-For': address } });
      return [(await from('192.0.2.1')).status, (await from('192.0.2.2')).status, (await from('192.0.2.2')).status];
    };
    expect(await statuses({})).toEqual([200, 429, 429]);
    expect(await statuses({ TRUST_PROXY: 'loopback' })).toEqual([200, 200, 429]);
  });
});

describe('a request that takes too long', () => {
  it('is answered 503, and what its handler says later is not sent', async () => {
    const app = express();
    const late: Promise<void>[] = [];
    app.use(timeLimit(1));
    app.get('/hangs', (_req, res) => {
      late.push(
        new Promise((resolve) => {
          res.once('finish', () => {
            expect(() => res.setHeader('X-Late', '1')).toThrow();
            resolve();
          });
        }),
      );
    });
    app.get('/quick', (_req, res) => void res.end('quick'));
    app.use(errorHandler(pino({ level: 'silent' })));
    const server = await listen(() => app, { host: '127.0.0.1', port: 0 });
    cleanUp.push(server.stop);
    const answer = await send(`${server.url}/hangs`);
    expect(answer.status).toBe(503);
    expect(answer.headers.get('Retry-After')).toBe('5');
    expect(answer.json()).toMatchObject({ code: 'TIMED_OUT' });
    await Promise.all(late);
    expect((await send(`${server.url}/quick`)).text).toBe('quick');
  });

  it('is answered 503 while the database says nothing, and as ever when it is back', async () => {
    const postgres = await startPostgres();
    cleanUp.push(postgres.stop);
    const database = new URL(await postgres.newDatabase());
    const port = Number(database.port);
    // Stands between service and database, and can stop to pass anything on without closing a connection.
    const sockets: Socket[] = [];
    let isStalled = false;
    const proxy = createServer((near) => {
      const far = connect(port, '127.0.0.1');
      for (const [one, other] of [
        [near, far],
        [far, near],
      ] as const) {
        one.pipe(other);
        one.on('error', () => other.destroy());
        one.on('close', () => other.destroy());
        if (isStalled) one.pause();
        sockets.push(one);
      }
    });
    await new Promise<void>((resolve) => proxy.listen(0, '127.0.0.1', resolve));
    database.port = String((proxy.address() as AddressInfo).port);
    cleanUp.push(() => {
      for (const socket of sockets) socket.destroy();
      proxy.close();
    });
    const { url } = await start({
      DATABASE_URL: database.href,
      REQUEST_TIMEOUT_SECONDS: '2',
      VIEW_TABLES_SECONDS: '0',
    });
    expect((await send(`${url}/fhir/Observation`)).status).toBe(200);
    isStalled = true;
    for (const socket of sockets) socket.pause();
    for (const path of ['/fhir/Observation', '/health/ready']) {
      const answer = await send(url + path);
      expect(answer.status, path).toBe(503);
      expect(Number(answer.headers.get('Retry-After'))).toBeGreaterThan(0);
    }
    expect((await send(`${url}/metrics`)).text).toMatch(/^neuroexam_store_up 0$/m);
    isStalled = false;
    for (const socket of sockets) socket.resume();
    await vi.waitFor(async () => expect((await send(`${url}/health/ready`)).status).toBe(200), { timeout: 20_000 });
    expect((await sendJson(`${url}/exams`, examNumbered('back'))).status).toBe(201);
  }, 90_000);
});
