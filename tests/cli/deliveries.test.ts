import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { rmSync } from 'node:fs';
import { text } from 'node:stream/consumers';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { readConfig } from '../../src/config.ts';
import { type RunningService, startService } from '../../src/service.ts';
import type { DeliveryStatus } from '../../src/store/outbox/outbox-repository.ts';
import { built, compiledByBuild, root } from '../support/built.ts';
import { send, sendJson } from '../support/client.ts';
import { examNumbered } from '../support/example-exam.ts';
import { type FhirReceiver, type Mood, startFhirReceiver } from '../support/fhir-receiver.ts';
import { temporaryFolder } from '../support/service.ts';

let dataDir: string;
let service: RunningService | undefined;
let receiver: FhirReceiver;
let mood: Mood;
beforeEach(async () => {
  dataDir = temporaryFolder();
  receiver = await startFhirReceiver(() => mood);
});
afterEach(async () => {
  await service?.stop();
  await receiver.stop();
  rmSync(dataDir, { recursive: true, force: true });
});

async function start(env: Record<string, string> = {}): Promise<string> {
  const settings = { PORT: '0', LOG_LEVEL: 'silent', DATA_DIR: dataDir, ...env };
  service = await startService(readConfig(settings), compiledByBuild());
  return service.url;
}

async function stop(): Promise<void> {
  await service?.stop();
  service = undefined;
}

async function run(...args: readonly string[]) {
  const command = [...built('cli/neuroexam.js'), ...args, '--data-dir', dataDir];
  const child = spawn(process.execPath, command, { cwd: root, stdio: ['ignore', 'pipe', 'pipe'] });
  const [stdout, stderr, [status]] = await Promise.all([text(child.stdout), text(child.stderr), once(child, 'exit')]);
  return { status, stdout, stderr };
}

it('puts earlier exams into the queue by command, lists what was given up, and has it tried again', {
  timeout: 90_000,
}, async () => {
  const posted = await sendJson(`${await start()}/exams`, examNumbered('earlier'));
  const location = String(posted.headers.get('Location'));
  await stop();
  expect((await run('forward')).status).toBe(2);
  expect((await run('forward', '--since', 'yesterday')).status).toBe(2);
  expect((await run('forward', '--since', '2999-01-01')).stdout).toBe('0 versions put into the queue\n');
  expect((await run('forward', '--all')).stdout).toBe('1 versions put into the queue\n');

  mood = 'refused';
  const settled = async (url: string): Promise<DeliveryStatus | undefined> => {
    for (;;) {
      const { deliveries } = (await send(`${url}${location}/deliveries`)).json<{ deliveries: DeliveryStatus[] }>();
      if (deliveries[0]?.state !== 'waiting') return deliveries[0];
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
  };
  expect(await settled(await start({ FORWARD_URL: receiver.url }))).toMatchObject({ state: 'dead', reason: 'REFUSED' });
  await stop();
  const listed = await run('deliveries', '--retry');
  expect(listed.status).toBe(0);
  expect(JSON.parse(listed.stdout)).toMatchObject({
    examId: location.split('/').at(-1),
    state: 'dead',
    lastStatus: 422,
  });
  expect(listed.stderr).toBe(
    '1 will be tried again\nforward: 1 waiting, 0 given up\nsubscription: 0 waiting, 0 given up\n',
  );

  mood = 'fine';
  expect(await settled(await start({ FORWARD_URL: receiver.url }))).toMatchObject({ state: 'delivered' });
  expect((await run('forward', '--all')).status).not.toBe(0);
});
