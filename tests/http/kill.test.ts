import { rmSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import sql from 'sql-template-tag';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openAuditReader } from '../../src/store/audit/open-audit-reader.ts';
import { verifyAudit } from '../../src/store/audit/verify-audit.ts';
import { send, sendJson } from '../support/client.ts';
import { examNumbered } from '../support/example-exam.ts';
import { temporaryFolder } from '../support/service.ts';
import { type SpawnedService, spawnService } from '../support/spawned-service.ts';

const kills = 6;

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

describe('a service that is killed', () => {
  let dataDir: string;
  let service: SpawnedService | undefined;
  beforeAll(() => {
    dataDir = temporaryFolder();
  });
  afterAll(async () => {
    await service?.end('SIGKILL');
    rmSync(dataDir, { recursive: true, force: true });
  });

  it(`keeps every exam that it acknowledged, through ${kills} kills under load`, { timeout: 120_000 }, async () => {
    const acknowledged = new Map<string, { raw: string; bundle: string }>();
    for (let round = 0; round < kills; round++) {
      service = await spawnService({ DATA_DIR: dataDir, LOG_LEVEL: 'silent' });
      const running = service;
      let killed = false;
      const before = acknowledged.size;
      const clients = Array.from({ length: 4 }, async (_, client) => {
        for (let n = 0; !killed; n++) {
          const raw = JSON.stringify(examNumbered(`kill-${round}-${client}-${n}`));
          const answer = await sendJson(`${running.url}/exams`, raw).catch(() => undefined);
          if (answer?.status === 201) {
            acknowledged.set(String(answer.headers.get('Location')), { raw, bundle: answer.text });
          }
        }
      });
      while (acknowledged.size === before) await pause(10);
      await pause(37 * round);
      const ended = running.end('SIGKILL');
      killed = true;
      expect(await ended).toBe('SIGKILL');
      await Promise.all(clients);
    }

    service = await spawnService({ DATA_DIR: dataDir, LOG_LEVEL: 'silent' });
    let lost = 0;
    for (const [location, sent] of acknowledged) {
      const raw = await send(`${service.url}${location}`);
      const bundle = await send(`${service.url}${location}/bundle`);
      if (raw.text !== sent.raw || bundle.text !== sent.bundle) lost++;
    }
    process.stdout.write(`${kills} kills, ${acknowledged.size} exams acknowledged, ${lost} lost\n`);
    expect(acknowledged.size).toBeGreaterThanOrEqual(kills);
    expect(lost).toBe(0);

    expect(await service.end('SIGTERM')).toBe(0);
    const db = new Database(join(dataDir, 'exams.sqlite'), { readonly: true });
    expect(db.pragma('integrity_check', { simple: true })).toBe('ok');
    const incomplete = 'SELECT count(*) FROM exam WHERE NOT EXISTS (SELECT 1 FROM exam_version WHERE exam = n)';
    expect(db.prepare(incomplete).pluck().get()).toBe(0);
    db.close();

    const reader = await openAuditReader({ engine: 'sqlite', file: join(dataDir, 'exams.sqlite') });
    const { fault } = await verifyAudit(reader);
    const created = await reader.all<{ exam: string }>(
      sql`SELECT value AS exam FROM audit_entry JOIN audit_event USING (n)
          WHERE kind = 2 AND interaction = 'create' AND action = 'C' AND outcome = '0'`,
    );
    await reader.close();
    expect(fault).toBeUndefined();
    const audited = created.map(({ exam }) => `/exams/${exam}`);
    expect(new Set(audited).size).toBe(audited.length);
    expect([...acknowledged.keys()].filter((location) => !audited.includes(location))).toEqual([]);
  });
});
