import { randomUUID } from 'node:crypto';
import type { ClaimedDelivery, Outbox, Settlement } from '../store/outbox/outbox-repository.ts';
import { type BackOff, pauseAfter, retryAfterMs } from './back-off.ts';
import { SendError } from './delivery-error.ts';
import type { Verdict } from './judge-answer.ts';
import type { Target } from './target.ts';

/** Sends what lies in the outbox, in the background. */
export interface DeliveryWorker {
  /** Something may be there to be sent. */
  wake(): void;
  /** Takes nothing more, gives what is under way a few seconds, and breaks off the rest, which will be sent again. */
  stop(): Promise<void>;
}

export interface WorkerOptions {
  readonly outbox: Outbox;
  /** How to send to a target; undefined for one that is not there any more. */
  readonly targetNamed: (name: string) => Promise<Target | undefined>;
  /** What is to be done every now and then. */
  readonly onRound?: () => Promise<void>;
  readonly onError: (error: unknown) => void;
  /** ms since 1970. */
  readonly now: () => number;
  /** Pause in ms after which the outbox is looked at unasked: for other instances' exams, and for what waits for its time. */
  readonly pollMs: number;
  /** Pauses of a target whose server does not answer as it should; no delivery is sent meanwhile, whosever turn it is. */
  readonly circuit: Omit<BackOff, 'random'>;
}

interface TargetState {
  underWay: number;
  /** Attempts that failed for the server's sake, since the last that did not. */
  failures: number;
  /** ms since 1970. */
  pausedUntil: number;
  /** The claim that is under way, or the last one. */
  claiming: Promise<unknown>;
}

/** More than a request takes before its holder is taken for dead, in ms: clocks of two instances differ by a little. */
const spareMs = 15_000;
/** Time that requests get to end in when the service stops, in ms. */
const graceMs = 5_000;
/** Deliveries under way at once in this process, whatever the targets. */
const mostUnderWay = 8;

export function startDeliveryWorker(options: WorkerOptions): DeliveryWorker {
  const { outbox, targetNamed, onRound, onError, now, pollMs, circuit } = options;
  const holder = randomUUID();
  const provenSince = now();
  const states = new Map<string, TargetState>();
  const underWay = new Set<Promise<void>>();
  const breakOff = new AbortController();
  let isStopped = false;
  let isAsked = false;
  let looking: Promise<void> | undefined;
  let timer: NodeJS.Timeout | undefined;

  async function look(): Promise<void> {
    while (isAsked && !isStopped) {
      isAsked = false;
      await onRound?.().catch(onError);
      try {
        for (const name of await outbox.dueTargets(now())) await takeFrom(name);
      } catch (error) {
        onError(error);
      }
    }
    looking = undefined;
    plan();
  }

  async function takeFrom(name: string): Promise<void> {
    const target = await targetNamed(name);
    const state = stateOf(name);
    if (target === undefined || isStopped || now() < state.pausedUntil) return;
    // A server in trouble is asked by one delivery, until it answers.
    const most = Math.min(state.failures > 0 ? 1 : target.concurrency, mostUnderWay - underWay.size + state.underWay);
    if (most <= state.underWay) return;
    const until = now() + target.timeoutMs + spareMs;
    const claim = { holder, now: now(), until, most: most - state.underWay, provenSince };
    const claimed = outbox.claim(name, claim);
    state.claiming = claimed.catch(() => undefined);
    for (const delivery of await claimed) {
      state.underWay += 1;
      const sending = deliver(delivery, target, state)
        .catch(onError)
        .finally(() => {
          state.underWay -= 1;
          underWay.delete(sending);
          wake();
        });
      underWay.add(sending);
    }
  }

  async function deliver(delivery: ClaimedDelivery, target: Target, state: TargetState): Promise<void> {
    const keep = () => outbox.keep(delivery.n, holder, now() + target.timeoutMs + spareMs);
    const isSpent = delivery.attempts > target.maxAttempts;
    const verdict = isSpent ? spent : await target.send(delivery, { signal: breakOff.signal, keep }).catch(verdictOf);
    const asked = 'retryAfter' in verdict ? retryAfterMs(verdict.retryAfter, now()) : 0;
    if (verdict.kind === 'again') {
      state.failures += 1;
      state.pausedUntil = now() + pauseAfter(state.failures, { ...circuit, random: target.backOff.random }, asked);
    } else {
      state.failures = 0;
      state.pausedUntil = 0;
    }
    const settlement = settlementOf(
      verdict,
      delivery,
      target,
      now() + pauseAfter(delivery.attempts, target.backOff, asked),
    );
    // A claim that began before this answer must not take what this delivery held back from a server that asks to wait.
    await state.claiming;
    if (!(await outbox.settle(delivery.n, holder, settlement, now()))) return;
    if (settlement.state !== 'waiting') await target.onSettled?.(verdict);
  }

  function stateOf(name: string): TargetState {
    const known = states.get(name) ?? { underWay: 0, failures: 0, pausedUntil: 0, claiming: Promise.resolve() };
    states.set(name, known);
    return known;
  }

  function wake(): void {
    if (isStopped) return;
    isAsked = true;
    looking ??= look();
  }

  function plan(): void {
    clearTimeout(timer);
    if (!isStopped) timer = setTimeout(wake, pollMs).unref();
  }

  wake();
  return {
    wake,
    async stop() {
      isStopped = true;
      clearTimeout(timer);
      await looking;
      const grace = setTimeout(() => breakOff.abort(), graceMs);
      await Promise.allSettled(underWay);
      clearTimeout(grace);
    },
  };
}

/** A process that dies of what it sends leaves no verdict, only a count. */
const spent: Verdict = { kind: 'dead', reason: 'NETWORK' };

function verdictOf(error: unknown): Verdict {
  if (error instanceof SendError) return { kind: 'again', reason: error.reason };
  throw error;
}

function settlementOf(
  verdict: Verdict,
  { attempts }: ClaimedDelivery,
  { maxAttempts }: Target,
  nextAt: number,
): Settlement {
  if (verdict.kind === 'delivered') return { state: 'delivered', answer: verdict.status };
  const { kind, reason, status, issues } = verdict;
  const told = {
    reason,
    ...(status === undefined ? {} : { answer: status }),
    ...(issues === undefined ? {} : { issues }),
  };
  return kind === 'dead' || attempts >= maxAttempts
    ? { state: 'dead', ...told }
    : { state: 'waiting', nextAt, ...told };
}
