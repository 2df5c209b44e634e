import type { LookupFunction } from 'node:net';
import type { ExamRepository } from '../store/exam-repository.ts';
import { forwardTarget, type Outbox } from '../store/outbox/outbox-repository.ts';
import type { SubscriptionChannels } from '../store/outbox/subscription-channels.ts';
import type { ResourceRepository } from '../store/resource-repository.ts';
import { accessToken } from './access-token.ts';
import { guardedLookup } from './address-rules.ts';
import type { BackOff } from './back-off.ts';
import { type DeliveryWorker, startDeliveryWorker } from './delivery-worker.ts';
import { createForwarding } from './forward-exam.ts';
import type { Verdict } from './judge-answer.ts';
import { createNotifier } from './notify-subscriber.ts';
import type { DeliverySettings } from './settings.ts';
import type { Subscriptions } from './subscriptions.ts';
import type { Target } from './target.ts';

export interface DeliveryParts {
  readonly settings: DeliverySettings;
  readonly outbox: Outbox;
  readonly exams: ExamRepository;
  readonly resources: ResourceRepository;
  readonly channels: SubscriptionChannels;
  readonly subscriptions: Subscriptions;
  readonly onError: (error: unknown) => void;
}

/** What tests replace, to have chance and time in their hands. */
export interface DeliveryPace {
  readonly now: () => number;
  readonly pollMs: number;
  readonly backOff: BackOff;
  readonly circuit: Omit<BackOff, 'random'>;
  readonly webhookTimeoutMs: number;
  readonly lookup: LookupFunction;
}

export const defaultPace: DeliveryPace = {
  now: Date.now,
  pollMs: 1_000,
  backOff: { baseMs: 2_000, mostMs: 3_600_000, random: Math.random },
  circuit: { baseMs: 1_000, mostMs: 60_000 },
  webhookTimeoutMs: 10_000,
  lookup: guardedLookup(),
};

/** Deliveries to one server at once, from one process. */
const forwardsAtOnce = 4;
const noticesAtOnce = 2;
/** Notifications that were refused one after the other before a subscription is given up. */
const mostRefused = 3;

/**
 * Starts to send what lies in the outbox.
 * @throws ConfigError when a file with a token or key cannot be used
 */
export function startDeliveries(parts: DeliveryParts, pace: DeliveryPace = defaultPace): DeliveryWorker {
  const { settings, outbox, exams, resources, channels, subscriptions, onError } = parts;
  const { forward, webhookMaxAttempts } = settings;
  const { now, pollMs, backOff, circuit, webhookTimeoutMs, lookup } = pace;
  const allowedHosts = new Set(settings.webhookHosts);
  const forwarding: Target | undefined =
    forward === undefined
      ? undefined
      : {
          send: createForwarding(exams, forward, accessToken(forward.credentials, forward.timeoutMs, now)),
          concurrency: forwardsAtOnce,
          maxAttempts: forward.maxAttempts,
          // A token may have to be asked for, and the request to be sent again with it.
          timeoutMs: forward.timeoutMs * 4,
          backOff,
        };

  async function targetNamed(name: string): Promise<Target | undefined> {
    if (name === forwardTarget) return forwarding;
    const id = name.slice('Subscription/'.length);
    const channel = await channels.find(id);
    if (channel?.state !== 'active') return undefined;
    return {
      send: createNotifier({ resources, channel, allowedHosts, lookup, timeoutMs: webhookTimeoutMs }),
      concurrency: noticesAtOnce,
      maxAttempts: webhookMaxAttempts,
      timeoutMs: webhookTimeoutMs,
      backOff,
      onSettled: (verdict) => settled(id, verdict),
    };
  }

  /** A receiver that cannot be reached for as long as was tried, or keeps on refusing, is asked no more. */
  async function settled(id: string, verdict: Verdict): Promise<void> {
    const failures = await channels.count(id, verdict.kind === 'delivered');
    if (verdict.kind === 'delivered') return;
    if (verdict.kind === 'again' || failures >= mostRefused) await subscriptions.fail(id, verdict.reason);
  }

  const onRound = () => subscriptions.endDue();
  return startDeliveryWorker({ outbox, targetNamed, onRound, onError, now, pollMs, circuit });
}
