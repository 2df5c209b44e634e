import { setTimeout as pause } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readConfig } from '../../src/config.ts';
import { Chance } from '../../src/kernel/chance.ts';
import { openAuditReader } from '../../src/store/audit/open-audit-reader.ts';
import { verifyAudit } from '../../src/store/audit/verify-audit.ts';
import { engines } from '../support/engines.ts';
import { Witness } from './exam-load.ts';
import { type LastingStore, lastingStore } from './service-on.ts';
import { seed, sizes, tell } from './sizes.ts';

const clients = 8;
/** Longest time in ms from the first acknowledgement to the kill. */
const longestLoadMs = 400;

describe.each(engines)('a service that is killed, on %s', (engine) => {
  let store: LastingStore;
  beforeAll(async () => {
    store = await lastingStore(engine);
  });
  afterAll(() => store.remove());

  it('loses and doubles no exam that it acknowledged', { timeout: 3_600_000 }, async () => {
    const chance = new Chance(`${seed} kill ${engine}`);
    const witness = new Witness();
    const settled = { kept: 0, lost: 0 };
    let service = await store.start();
    for (let round = 0; round < sizes.kills; round += 1) {
      const before = witness.acknowledged.size;
      const { url } = service;
      const load = witness.load(`kill-${round}`, clients, () => url);
      while (witness.acknowledged.size === before) await pause(2);
      await pause(chance.next() * longestLoadMs);
      expect(await service.end('SIGKILL')).toBe('SIGKILL');
      await load.stop();

      service = await store.start();
      expect(await witness.faults(service.url, before)).toEqual([]);
      const { kept, lost } = await witness.settle(service.url);
      settled.kept += kept;
      settled.lost += lost;
    }
    expect(await witness.faults(service.url)).toEqual([]);
    expect(await service.end('SIGTERM')).toBe(0);

    const { size } = witness.acknowledged;
    tell(
      `${engine}: ${sizes.kills} kills, ${size} exams acknowledged, 0 lost, 0 doubled; ` +
        `${settled.kept} whose answer was lost had been kept whole, ${settled.lost} not at all`,
    );
    expect(size).toBeGreaterThanOrEqual(sizes.kills);
    expect([...witness.statuses.keys()].filter((status) => status !== 201)).toEqual([]);
    expect(await store.rows('SELECT count(*) AS n FROM exam')).toEqual([{ n: size }]);
    expect(await store.rows(incomplete)).toEqual([]);
    const reader = await openAuditReader(readConfig({ DATABASE_URL: store.databaseUrl }).store);
    const { fault } = await verifyAudit(reader);
    await reader.close();
    expect(fault).toBeUndefined();
    expect(await store.rows(unaudited)).toEqual([]);
    if (engine === 'sqlite') {
      expect(await store.rows('PRAGMA integrity_check')).toEqual([{ integrity_check: 'ok' }]);
    }
  });
});

/** Exams that do not stand in the audit trail exactly once as created. */
const unaudited = `SELECT id FROM exam
  WHERE (SELECT count(*) FROM audit_entry JOIN audit_event USING (n)
    WHERE kind = 2 AND value = exam.id AND interaction = 'create' AND action = 'C' AND outcome = '0') <> 1`;

/** Exams that do not have exactly one version and one batch of resources. */
const incomplete = `SELECT n FROM exam
  WHERE (SELECT count(*) FROM exam_version WHERE exam = exam.n) <> 1
  OR (SELECT count(*) FROM batch WHERE exam = exam.n AND layout IS NOT NULL) <> 1`;
