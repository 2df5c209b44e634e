import { expect, it } from 'vitest';
import { startDeliveryWorker } from '../../src/delivery/delivery-worker.ts';
import type { Verdict } from '../../src/delivery/judge-answer.ts';
import type { ClaimedDelivery, Outbox } from '../../src/store/outbox/outbox-repository.ts';

/** A promise that is settled from outside. */
function later<T>() {
  let settle: (value: T) => void = () => undefined;
  const promise = new Promise<T>((resolve) => {
    settle = resolve;
  });
  return { promise, settle };
}

const soon = () => new Promise((resolve) => setTimeout(resolve, 20));

it('settles a delivery that is to wait only when the claim that began before its answer has ended', async () => {
  const answer = later<Verdict>();
  const secondClaim = later<readonly ClaimedDelivery[]>();
  const first: ClaimedDelivery = { n: 1, target: 'forward', examId: 'e1', version: 1, attempts: 1, resources: [] };
  const done: string[] = [];
  const outbox: Pick<Outbox, 'dueTargets' | 'claim' | 'keep' | 'settle'> = {
    dueTargets: async () => ['forward'],
    claim: (_target, { now }) => {
      done.push(`claim at ${now}`);
      return done.length === 1 ? Promise.resolve([first]) : secondClaim.promise;
    },
    keep: async () => true,
    settle: async (n, _holder, { state }) => {
      done.push(`settle ${n} as ${state}`);
      return true;
    },
  };
  const worker = startDeliveryWorker({
    outbox: outbox as Outbox,
    targetNamed: async () => ({
      send: () => answer.promise,
      concurrency: 4,
      maxAttempts: 10,
      timeoutMs: 1000,
      backOff: { baseMs: 1, mostMs: 2, random: () => 0.5 },
    }),
    onError: (error) => {
      throw error;
    },
    now: () => 0,
    pollMs: 1_000_000,
    circuit: { baseMs: 1, mostMs: 2 },
  });
  await soon();
  worker.wake();
  await soon();
  answer.settle({ kind: 'again', reason: 'BUSY', status: 429, retryAfter: '3600' });
  await soon();
  expect(done).toEqual(['claim at 0', 'claim at 0']);
  secondClaim.settle([]);
  await soon();
  expect(done).toEqual(['claim at 0', 'claim at 0', 'settle 1 as waiting']);
  await worker.stop();
});
