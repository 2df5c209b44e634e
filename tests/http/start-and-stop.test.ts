import { spawnSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { connect } from 'node:net';
import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import { built, root } from '../support/built.ts';
import { send, sendJson } from '../support/client.ts';
import { examNumbered } from '../support/example-exam.ts';
import { temporaryFolder } from '../support/service.ts';
import { type SpawnedService, spawnService } from '../support/spawned-service.ts';

describe('start and stop', () => {
  let dataDir: string;
  const services: SpawnedService[] = [];
  beforeAll(() => {
    dataDir = temporaryFolder();
  });
  afterEach(async () => {
    for (const service of services.splice(0)) await service.end('SIGKILL');
  });
  afterAll(() => rmSync(dataDir, { recursive: true, force: true }));

  async function start(env: Record<string, string> = {}): Promise<SpawnedService> {
    const service = await spawnService({ DATA_DIR: dataDir, LOG_LEVEL: 'info', ...env });
    services.push(service);
    return service;
  }

  /** Runs a start that is expected to fail. */
  function failedStart(env: Record<string, string>) {
    const options = { cwd: root, env: { ...process.env, PORT: '0', DATA_DIR: dataDir, ...env }, timeout: 60_000 };
    const run = spawnSync(process.execPath, built('main.js'), options);
    return { status: run.status, stdout: run.stdout.toString(), stderr: run.stderr.toString() };
  }

  it('answers the requests that it accepted, then closes every socket and exits with 0', async () => {
    const service = await start();
    const running = Array.from({ length: 30 }, (_, n) => sendJson(`${service.url}/exams`, examNumbered(`stop-${n}`)));
    await running[0];
    const started = performance.now();
    const exit = service.end('SIGTERM');
    const answers = await Promise.allSettled(running);
    expect(await exit).toBe(0);
    expect(performance.now() - started).toBeLessThan(20_000); // a kept-alive socket would hold it for 65 s
    const answered = answers.filter((answer) => answer.status === 'fulfilled');
    expect(answered.length).toBeGreaterThan(0);
    for (const { value } of answered) expect([200, 201]).toContain(value.status);
  });

  it('first says that it is not ready, goes on for DRAIN_SECONDS, and keeps all that it acknowledged', async () => {
    const service = await start({ DRAIN_SECONDS: '6' });
    const kept: string[] = [];
    let sent = 0;
    let isOver = false;
    /** Posts until nothing answers any more; what was not accepted is no loss. */
    const post = async (): Promise<void> => {
      while (!isOver) {
        sent += 1;
        const answer = await sendJson(`${service.url}/exams`, examNumbered(`drain-${sent}`)).catch(() => undefined);
        if (answer === undefined) return;
        expect(answer.status).toBe(201);
        kept.push(answer.headers.get('Location') ?? '');
      }
    };
    const posting = [post(), post(), post()];
    await vi.waitFor(() => expect(kept.length).toBeGreaterThan(0), { timeout: 20_000 });
    const exit = service.end('SIGTERM');
    await vi.waitFor(async () => expect((await send(`${service.url}/health/ready`)).status).toBe(503), {
      timeout: 6_000,
    });
    expect((await send(`${service.url}/health/live`)).status).toBe(200);
    const late = await sendJson(`${service.url}/exams`, examNumbered('late'));
    expect([late.status, late.headers.get('Connection')]).toEqual([201, 'close']);
    kept.push(late.headers.get('Location') ?? '');
    expect(await exit).toBe(0);
    isOver = true;
    await Promise.all(posting);
    const again = await start();
    for (const path of kept) expect((await send(again.url + path)).status).toBe(200);
  });

  it('ends at once at the second signal, even with a request that never ends', async () => {
    const service = await start();
    const socket = connect(Number(new URL(service.url).port), '127.0.0.1');
    socket.on('error', () => undefined);
    socket.write('POST /exams HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\nContent-Length: 100\r\n\r\n{');
    await new Promise((resolve) => setTimeout(resolve, 200));
    service.process.kill('SIGTERM');
    await new Promise((resolve) => setTimeout(resolve, 200));
    expect(service.process.exitCode).toBeNull();
    expect(await service.end('SIGTERM')).toBe(130);
    socket.destroy();
  });

  it('refuses a second service on the same store while the first one goes on', async () => {
    const service = await start();
    const second = failedStart({});
    expect(second).toMatchObject({ status: 1, stdout: '' });
    expect(second.stderr).toMatch(/cannot start: Another process is using this exam store/);
    expect((await send(`${service.url}/health/ready`)).status).toBe(200);
  });

  it('refuses to start on a port in use, an impossible setting, and a database that it does not know', async () => {
    const service = await start();
    const { port } = new URL(service.url);
    const other = temporaryFolder();
    expect(failedStart({ PORT: port, DATA_DIR: other }).stderr).toMatch(/the port is in use/);
    expect(failedStart({ HOST: '0.0.0.0', PORT: 'x' }).stderr).toMatch(/no access control[\s\S]*PORT must be/);
    expect(failedStart({ DATABASE_URL: 'mysql://db/exams' }).stderr).toMatch(/must be sqlite: .* or postgres:/);
    expect(failedStart({ DATABASE_URL: `postgres://127.0.0.1:${port}/exams` }).stderr).toMatch(
      /store is not available/,
    );
    expect(failedStart({ DATA_DIR: '/dev/null/x' }).stderr).toMatch(/store is not available \(ENOTDIR\)\. DATA_DIR/);
    expect(failedStart({ HOST: 'no.such.invalid', ALLOW_OPEN_NETWORK: 'true', DATA_DIR: other }).stderr).toMatch(
      /cannot start: HOST and PORT cannot be used \(E\w+\)\.\n$/,
    );
    rmSync(other, { recursive: true, force: true });
  }, 120_000); // six processes, each of which may have to wait for a busy machine

  it('warns when it is open to the network', async () => {
    const service = await start({ HOST: '0.0.0.0', ALLOW_OPEN_NETWORK: 'true' });
    expect(service.url).toMatch(/^http:\/\/localhost:\d+$/);
    // Two pipes are read in no certain order.
    await vi.waitFor(() => {
      expect(service.log()).toMatch(/"level":"warn",.*open to the network without access control/);
    });
  });

  it('logs one line for each request, without anything that a person could be known by', async () => {
    const canary = 'Canary-7f3a';
    const service = await start();
    const exam = examNumbered(canary, { subject: { reference: `Patient/${canary}`, display: canary } });
    const { headers } = await sendJson(`${service.url}/exams?x=${canary}`, exam, {
      headers: { Authorization: `Bearer ${canary}`, Cookie: canary },
    });
    const trace = '0af7651916cd43dd8448eb211c80319c';
    const own = '2f1d3a90-9c1b-4a39-8c64-0f2f5c0d1f11';
    const traced = await sendJson(`${service.url}/exams`, exam, {
      headers: { 'X-Canary': canary, 'X-Request-Id': own, traceparent: `00-${trace}-b7ad6b7169203331-01` },
    });
    await sendJson(`${service.url}/exams`, { [canary]: canary }, { headers: { 'X-Request-Id': canary } });
    await sendJson(`${service.url}/exams`, `{"${canary}`);
    await send(`${service.url}/exams/${canary}`);
    await send(`${service.url}/${canary}?name=${canary}`);
    await service.end('SIGTERM');

    expect(service.log()).not.toContain(canary);
    const all = service.log().trim().split('\n');
    const lines = all.map((line) => JSON.parse(line) as Record<string, unknown>);
    const entries = lines.filter(({ msg }) => msg === 'request');
    expect(lines.filter(({ msg }) => msg !== 'request').map(({ msg }) => msg)).toEqual([
      'started',
      'no access control is configured: listening on loopback only, for this machine alone',
      'stopping',
      'stopped',
    ]);
    expect(entries).toHaveLength(6);
    expect(traced.headers.get('X-Request-Id')).toBe(own);
    expect(entries[1]).toMatchObject({ requestId: own, traceId: trace, parentId: 'b7ad6b7169203331' });
    for (const { status, code, parentId: _, ...entry } of entries) {
      const ids = ['requestId', 'spanId', 'traceId'];
      expect(Object.keys(entry).sort()).toEqual(
        ['bytes', 'durationMs', 'level', 'method', 'msg', 'route', 'time', ...ids].sort(),
      );
      expect(code === undefined).toBe(Number(status) < 400);
    }
    expect(entries[0]?.requestId).toBe(headers.get('X-Request-Id'));
    expect(entries.map((entry) => entry.route)).toEqual(['/exams', '/exams', '/exams', '/exams', '/exams/:id', 'none']);
  });
});
