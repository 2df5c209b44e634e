import type { Subscription } from 'fhir/r4.js';
import type { AuditRecord } from '../audit/audit-record.ts';
import type { Identified } from '../fhir/entry.ts';
import type { SubscriptionChannel, SubscriptionChannels } from '../store/outbox/subscription-channels.ts';
import type { ResourceRepository, StoredResource } from '../store/resource-repository.ts';
import { type DeliveryReason, deliveryReasons } from './delivery-error.ts';
import { headerParts, type ReadSubscription } from './read-subscription.ts';
import { SubscriptionInvalidError } from './subscription-error.ts';

/** Stands for the value of a header: values go in and never come out. */
export const maskedValue = '***';

/** Active ones; each is looked at with every exam that is kept. */
const mostActive = 100;

/** Subscriptions with their channels, each change of both in one transaction with what the audit trail says of it. */
export interface Subscriptions {
  /**
   * Keeps a new one or a change; one that was asked for becomes active. A header that comes back masked keeps its value.
   * @param options.expectedVersion the version that it replaces; undefined for a new one
   * @throws SubscriptionInvalidError when there are too many, ConflictError VERSION_MISMATCH, StoreError
   */
  keep(id: string, read: ReadSubscription, options?: KeepOptions): Promise<StoredResource>;
  /**
   * Ends it: nothing more is sent, and the values of its headers are forgotten.
   * @returns whether it was on until then; `audit` is kept only if so
   * @throws StoreError
   */
  turnOff(id: string, audit?: AuditRecord): Promise<boolean>;
  /** Nothing more is sent until its owner asks for it again. @throws StoreError */
  fail(id: string, reason: DeliveryReason): Promise<void>;
  /** Turns off those whose end has come. @throws StoreError */
  endDue(): Promise<void>;
}

export interface KeepOptions {
  readonly expectedVersion?: number;
  readonly audit?: AuditRecord;
}

export function createSubscriptions(
  resources: ResourceRepository,
  channels: SubscriptionChannels,
  now: () => Date,
): Subscriptions {
  function write(subscription: Subscription, channel: SubscriptionChannel, options: KeepOptions) {
    const shown = { ...subscription, id: channel.id, channel: withoutValues(subscription.channel) } as Identified;
    return resources.put(shown, now(), {
      ...options,
      alongside: (session) => channels.write(session, channel),
    });
  }

  async function change(
    id: string,
    state: 'off' | 'error',
    { error, audit }: { readonly error?: string; readonly audit?: AuditRecord | undefined } = {},
  ): Promise<boolean> {
    const [kept, channel] = await Promise.all([resources.read('Subscription', id), channels.find(id)]);
    if (kept === undefined || channel === undefined || channel.state === 'off') return false;
    const { meta, error: _before, ...rest } = JSON.parse(kept.json) as Subscription;
    const { versionId: _version, lastUpdated: _time, ...ownMeta } = meta ?? {};
    const changed: Subscription = {
      ...rest,
      ...(Object.keys(ownMeta).length === 0 ? {} : { meta: ownMeta }),
      status: state,
      ...(error === undefined ? {} : { error }),
    };
    const told = audit === undefined ? {} : { audit };
    await write(changed, { ...channel, state }, { expectedVersion: kept.version, ...told });
    return true;
  }

  return {
    async keep(id, { definition, endpoint, endsAt }, options = {}) {
      const before = await channels.find(id);
      const { header = [], payload, ...channel } = definition.channel;
      const values = new Map(before?.headers.map((line) => [nameOf(line), line]));
      const headers = header.map((line) => (isMasked(line) ? (values.get(nameOf(line)) ?? line) : line));
      const { status } = definition;
      const state = status === 'off' || status === 'error' ? status : 'active';
      if (state === 'active' && before?.state !== 'active' && (await channels.active()) >= mostActive) {
        const message = `There are ${mostActive} active subscriptions already; turn one off first.`;
        throw new SubscriptionInvalidError([{ pointer: '', code: 'TOO_LARGE', message }]);
      }
      return write(
        {
          ...definition,
          status: state,
          channel: { ...channel, ...(payload === undefined ? {} : { payload }), header: headers },
        },
        {
          id,
          state,
          criteria: definition.criteria,
          endpoint: endpoint.href,
          payload: payload ?? null,
          headers,
          endsAt,
        },
        options,
      );
    },
    turnOff: (id, audit) => change(id, 'off', { audit }),
    async fail(id, reason) {
      await change(id, 'error', { error: `Notifications could not be delivered: ${deliveryReasons[reason]}` });
    },
    async endDue() {
      for (const id of await channels.ended(now().getTime())) await change(id, 'off');
    },
  };
}

function withoutValues({ header = [], ...channel }: Subscription['channel']): Subscription['channel'] {
  const names = header.map((line) => `${headerParts(line)[0]}: ${maskedValue}`);
  return { ...channel, ...(names.length === 0 ? {} : { header: names }) };
}

function isMasked(line: string): boolean {
  return headerParts(line)[1] === maskedValue;
}

function nameOf(line: string): string {
  return headerParts(line)[0].toLowerCase();
}
