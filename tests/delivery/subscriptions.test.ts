import { randomUUID } from 'node:crypto';
import { beforeAll, describe, expect, it } from 'vitest';
import type { AuditRecord } from '../../src/audit/audit-record.ts';
import { readSubscription } from '../../src/delivery/read-subscription.ts';
import { createSubscriptions, type Subscriptions } from '../../src/delivery/subscriptions.ts';
import type { Stores } from '../../src/store/open-stores.ts';
import { emptyStores, engines } from '../support/engines.ts';
import { openTestStores } from '../support/stores.ts';

const newStore = emptyStores();
const now = () => new Date('2026-11-01T08:00:00Z');

const audit = (id: string, changes: Partial<AuditRecord> = {}): AuditRecord => ({
  at: now().toISOString(),
  interaction: 'create',
  action: 'C',
  outcome: '0',
  client: 'tester',
  resource: `Subscription/${id}`,
  ...changes,
});
/** The trail has a place for a time and for nothing else, so this entry cannot be written. */
const unwritable = { at: 'never' };

const wanted = (status = 'requested') =>
  readSubscription(
    {
      resourceType: 'Subscription',
      status,
      reason: 'Invented.',
      criteria: 'ClinicalImpression?status=in-progress',
      channel: { type: 'rest-hook', endpoint: 'https://hooks.example/impressions' },
    },
    { allowedHosts: new Set(['hooks.example']), checkCriteria: () => {}, now: now().getTime() },
  );

describe.each(engines)('a subscription and what the audit trail says of it, on %s', (engine) => {
  let stores: Stores;
  let subscriptions: Subscriptions;
  beforeAll(async () => {
    stores = await openTestStores(await newStore(engine));
    subscriptions = createSubscriptions(stores.resources, stores.channels, now);
    return () => stores.exams.close();
  }, 120_000);

  const stateOf = async (id: string) => ({
    resource: (await stores.resources.read('Subscription', id))?.version,
    channel: (await stores.channels.find(id))?.state,
  });
  const told = async (id: string) =>
    (
      await stores.audit.search({
        filters: [{ by: 'resource', match: 'whole', anyOf: [`Subscription/${id}`] }],
        direction: 'ascending',
        count: 10,
        isCounted: false,
      })
    ).matches.map(({ record }) => record.action);

  it('are there together', async () => {
    const id = randomUUID();
    await subscriptions.keep(id, wanted(), { audit: audit(id) });
    // The same content again makes no version of its own, but somebody did it.
    await subscriptions.keep(id, wanted(), { expectedVersion: 1, audit: audit(id, { action: 'U' }) });
    expect(await subscriptions.turnOff(id, audit(id, { action: 'D' }))).toBe(true);
    expect(await subscriptions.turnOff(id, audit(id, { action: 'D' }))).toBe(false);
    expect(await stateOf(id)).toEqual({ resource: 2, channel: 'off' });
    expect(await told(id)).toEqual(['C', 'U', 'D']);
  });

  it('are not there together: without its entry nothing is kept, changed or ended', async () => {
    const id = randomUUID();
    await expect(subscriptions.keep(id, wanted(), { audit: audit(id, unwritable) })).rejects.toThrow();
    expect(await stateOf(id)).toEqual({ resource: undefined, channel: undefined });
    await subscriptions.keep(id, wanted(), { audit: audit(id) });
    const change = { expectedVersion: 1, audit: audit(id, unwritable) };
    await expect(subscriptions.keep(id, wanted('off'), change)).rejects.toThrow();
    await expect(subscriptions.turnOff(id, audit(id, unwritable))).rejects.toThrow();
    expect(await stateOf(id)).toEqual({ resource: 1, channel: 'active' });
    expect(await told(id)).toEqual(['C']);
  });

  it('have no entry of a change that met another one', async () => {
    const id = randomUUID();
    await subscriptions.keep(id, wanted(), { audit: audit(id) });
    const late = { expectedVersion: 7, audit: audit(id, { action: 'U' }) };
    await expect(subscriptions.keep(id, wanted(), late)).rejects.toMatchObject({ code: 'VERSION_MISMATCH' });
    expect(await told(id)).toEqual(['C']);
  });
});
