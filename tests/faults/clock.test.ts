import { rmSync } from 'node:fs';
import { setTimeout as pause } from 'node:timers/promises';
import type { Bundle } from 'fhir/r4.js';
import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import { readConfig } from '../../src/config.ts';
import { type RunningService, startService } from '../../src/service.ts';
import { compiledByBuild } from '../support/built.ts';
import { send, sendJson } from '../support/client.ts';
import { examNumbered } from '../support/example-exam.ts';
import { temporaryFolder } from '../support/service.ts';

const minute = 60_000;

/** The date of this process is that of the service, which runs in it; timers go on by the clock that only runs forward. */
describe('a clock that jumps', () => {
  let dataDir: string;
  let service: RunningService;
  const start = Date.parse('2026-03-29T00:30:00Z');
  beforeAll(async () => {
    vi.useFakeTimers({ toFake: ['Date'], now: start });
    dataDir = temporaryFolder();
    service = await startService(
      readConfig({ PORT: '0', LOG_LEVEL: 'silent', DATA_DIR: dataDir, VIEW_TABLES_SECONDS: '0' }),
      compiledByBuild(),
    );
  });
  afterEach(() => vi.setSystemTime(start));
  afterAll(async () => {
    vi.useRealTimers();
    await service.stop();
    rmSync(dataDir, { recursive: true, force: true });
  });

  const post = (name: string, examinedAt = '2026-01-01T10:00:00Z') =>
    sendJson(`${service.url}/exams`, examNumbered(name, { examinedAt, subject: { reference: `Patient/${name}` } }));

  /** Ids of the exams' impressions on all pages. */
  async function pages(path: string): Promise<string[]> {
    const ids: string[] = [];
    for (let url: string | undefined = service.url + path; url !== undefined; ) {
      const bundle: Bundle = (await send(url)).json<Bundle>();
      ids.push(...(bundle.entry ?? []).map(({ resource }) => String(resource?.id)));
      url = bundle.link?.find(({ relation }) => relation === 'next')?.url;
    }
    return ids;
  }

  async function exported(since?: string): Promise<{ until: string; ids: string[] }> {
    const query = new URLSearchParams({
      _type: 'ClinicalImpression',
      ...(since === undefined ? {} : { _since: since }),
    });
    const kickOff = await send(`${service.url}/fhir/$export?${query}`, { headers: { Prefer: 'respond-async' } });
    for (;;) {
      const status = await send(String(kickOff.headers.get('Content-Location')));
      if (status.status === 202) {
        await pause(10);
        continue;
      }
      const { transactionTime, output } = status.json<{ transactionTime: string; output: { url: string }[] }>();
      const files = await Promise.all(output.map(({ url }) => send(url)));
      const lines = files.flatMap(({ text }) => text.split('\n').filter((line) => line !== ''));
      return { until: transactionTime, ids: lines.map((line) => (JSON.parse(line) as { id: string }).id) };
    }
  }

  it('back by an hour between two posts hides nothing from an export since the one before', async () => {
    await post('before-jump');
    const first = await exported();
    vi.setSystemTime(start - 60 * minute);
    await post('after-jump');
    vi.setSystemTime(start - 59 * minute);
    const second = await exported(first.until);
    const all = await pages('/fhir/ClinicalImpression?_count=1');
    expect(new Set([...first.ids, ...second.ids])).toEqual(new Set(all));
  });

  it('keeps versions in the order in which they were stored', async () => {
    const first = await post('versions');
    const path = String(first.headers.get('Location'));
    for (const [version, jump] of [60, -120, 24 * 60, -366 * 24 * 60].entries()) {
      vi.setSystemTime(start + jump * minute);
      const exam = examNumbered('versions', {
        examinedAt: '2025-01-01T10:00:00Z',
        subject: { reference: 'Patient/versions' },
        status: 'amended',
        person: { ageYears: 50 + version },
      });
      const headers = { 'If-Match': `W/"${version + 1}"` };
      expect((await sendJson(service.url + path, exam, { method: 'PUT', headers })).status).toBe(200);
    }
    const [id] = await pages('/fhir/ClinicalImpression?subject=Patient/versions');
    const history = (await send(`${service.url}/fhir/ClinicalImpression/${id}/_history`)).json<Bundle>();
    const versions = (history.entry ?? []).map(({ resource }) => resource?.meta);
    expect(versions.map((meta) => meta?.versionId)).toEqual(['5', '4', '3', '2', '1']);
    // FHIR R4, RESTful API, history: the newest first, by when they were stored.
    const times = versions.map((meta) => String(meta?.lastUpdated));
    expect(times).toEqual([...times].sort().reverse());
  });

  it('while pages are read doubles and leaves out nothing', async () => {
    for (let n = 0; n < 6; n += 1) {
      vi.setSystemTime(start + (n % 2 === 0 ? n : -n) * 17 * minute);
      expect((await post(`page-${n}`, `2025-0${n + 1}-01T00:00:00Z`)).status).toBe(201);
    }
    for (const sort of ['_lastUpdated', '-_lastUpdated', 'date', '-date', '_id']) {
      const ids = await pages(`/fhir/ClinicalImpression?_count=2&_sort=${sort}`);
      expect([sort, new Set(ids).size]).toEqual([sort, ids.length]);
      expect(new Set(ids)).toEqual(new Set(await pages('/fhir/ClinicalImpression?_count=100')));
    }
  });

  it('takes days that not every year has, hours that a zone leaves out, and the ends of its span', async () => {
    for (const [examinedAt, status] of [
      ['2024-02-29T23:59:59Z', 201],
      ['2025-02-29T10:00:00Z', 422],
      ['2000-02-29T10:00:00+14:00', 201],
      ['1900-02-29T10:00:00Z', 422],
      ['1900-01-01T00:00:00Z', 201],
      ['1899-12-31T23:59:59Z', 422],
      // The hour that clocks of central Europe leave out on that day, in each of the offsets it could be written in.
      ['2026-03-29T02:30:00+02:00', 201],
      ['2026-03-29T02:30:00+01:00', 422],
      ['2025-10-26T02:30:00+02:00', 201],
      ['2025-10-26T02:30:00+01:00', 201],
      ['2100-01-01T00:00:00Z', 422],
    ] as const) {
      const answer = await post(`day-${examinedAt.replaceAll(/[^0-9a-zA-Z-]/g, '-')}`, examinedAt);
      expect([examinedAt, answer.status]).toEqual([examinedAt, status]);
    }
  });

  it.each(['1900-01-01T00:00:00Z', '2028-02-29T12:00:00Z', '2100-03-01T00:00:00Z'])('may stand at %s', async (now) => {
    vi.setSystemTime(Date.parse(now));
    const answer = await post(`at-${now.slice(0, 4)}`, now);
    expect(answer.status).toBe(201);
    const path = String(answer.headers.get('Location'));
    expect((await send(service.url + path)).status).toBe(200);
    expect((await post(`at-${now.slice(0, 4)}`, now)).status).toBe(200);
    expect(
      (
        await send(
          `${service.url}/fhir/ClinicalImpression?subject=Patient/at-${now.slice(0, 4)}&date=${now.slice(0, 10)}&_summary=count`,
        )
      ).json(),
    ).toMatchObject({ total: 1 });
  });
});
