import type { Bundle } from 'fhir/r4.js';
import { afterEach, describe, expect, it } from 'vitest';
import { servedResources } from '../../src/fhir/served.ts';
import type { DeliveryStatus } from '../../src/store/outbox/outbox-repository.ts';
import { send, sendJson } from '../support/client.ts';
import { emptyStores, engines } from '../support/engines.ts';
import { examNumbered } from '../support/example-exam.ts';
import { type FhirReceiver, heldAsOurs, type Mood, startFhirReceiver } from '../support/fhir-receiver.ts';
import { type SpawnedService, spawnService } from '../support/spawned-service.ts';

const kills = 2;
/** Exams that each client sends without a pause. */
const atOnce = 6;
const newStore = emptyStores();
const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

describe.each(engines)('a service on %s that forwards and is killed', (engine) => {
  let receiver: FhirReceiver | undefined;
  let service: SpawnedService | undefined;
  afterEach(async () => {
    await service?.end('SIGKILL');
    await receiver?.stop();
  });

  it('brings all that it acknowledged to the other server, once and whole', { timeout: 240_000 }, async () => {
    const store = await newStore(engine);
    let isDown = false;
    const moods: Mood[] = ['fine', 'lost', 'fine', 'error', 'reset', 'fine'];
    receiver = await startFhirReceiver(({ n }) => (isDown ? 'reset' : (moods[n % moods.length] ?? 'fine')));
    const { taken, url: FORWARD_URL } = receiver;
    const DATABASE_URL = store.engine === 'sqlite' ? `sqlite:${store.file}` : store.url;
    // A killed instance holds what it was sending for four times the time-out and a little more.
    const env = { DATABASE_URL, FORWARD_URL, FORWARD_TIMEOUT_SECONDS: '1', LOG_LEVEL: 'silent' };
    const acknowledged = new Map<string, number>();

    for (let round = 0; round < kills; round++) {
      service = await spawnService(env);
      const { url } = service;
      let isKilled = false;
      isDown = round === 0;
      const clients = [0, 1].map(async (client) => {
        for (let n = 0; !isKilled; n++) {
          const findings = (grade: string) => ({ power: [{ movement: 'ankle-dorsiflexion', side: 'left', grade }] });
          const exam = examNumbered(`${round}-${client}-${n}`, { findings: findings('3') });
          const kept = await sendJson(`${url}/exams`, exam).catch(() => undefined);
          const location = kept?.headers.get('Location');
          if (kept?.status !== 201 || location == null) continue;
          acknowledged.set(location, 1);
          const amended = { ...exam, status: 'amended', findings: findings('4') };
          const headers = { 'If-Match': 'W/"1"' };
          const corrected = await sendJson(`${url}${location}`, amended, { method: 'PUT', headers }).catch(
            () => undefined,
          );
          if (corrected?.status === 200) acknowledged.set(location, 2);
          // What a killed instance held keeps the others back for a while; thousands of exams must not pile up behind it.
          if (n >= atOnce) await pause(2_000);
        }
      });
      const [before, known] = [taken.length, acknowledged.size];
      while (acknowledged.size < known + 3 || (!isDown && taken.length < before + 2)) await pause(10);
      const ended = service.end('SIGKILL');
      isKilled = true;
      expect(await ended).toBe('SIGKILL');
      await Promise.all(clients);
    }

    service = await spawnService(env);
    const { url } = service;
    const expected = new Map<string, unknown>();
    for (const [location, version] of acknowledged) {
      let deliveries: DeliveryStatus[] = [];
      while (deliveries.length === 0 || deliveries.some(({ state }) => state === 'waiting')) {
        await pause(50);
        ({ deliveries } = (await send(`${url}${location}/deliveries`)).json<{ deliveries: DeliveryStatus[] }>());
      }
      expect(deliveries.every(({ state }) => state === 'delivered')).toBe(true);
      // A correction may have been kept although its answer was lost in a kill.
      expect(deliveries.length).toBeGreaterThanOrEqual(version);
      for (const { version: n } of deliveries) {
        const bundle = (await send(`${url}${location}/bundle?version=${n}`)).json<Bundle>();
        for (const resource of servedResources(bundle)) {
          expected.set(`${resource.resourceType}/${resource.id}`, { ...resource });
        }
      }
    }
    const held = heldAsOurs(receiver);
    for (const [address, resource] of expected) expect(held.get(address)).toEqual(resource);
    process.stdout.write(`${engine}: ${acknowledged.size} exams acknowledged, ${taken.length} transactions taken\n`);
    expect(await service.end('SIGTERM')).toBe(0);
  });
});
