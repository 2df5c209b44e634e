import { Client } from 'pg';
import { beforeEach, describe, expect, it } from 'vitest';
import { exportEndRecord, failureOf } from '../../src/audit/export-end.ts';
import { createExamRecords } from '../../src/http/exam-records.ts';
import { StoreError } from '../../src/kernel/errors.ts';
import type { ExportRepository } from '../../src/store/export-store.ts';
import { isReady } from '../../src/store/export-store.ts';
import { startExportWorker } from '../../src/store/export-worker.ts';
import type { StoredType } from '../../src/store/index/stored-types.ts';
import type { Stores, StoreTarget } from '../../src/store/open-stores.ts';
import { builtSteps } from '../support/built.ts';
import { emptyStores, engines } from '../support/engines.ts';
import { type ExamBody, examNumbered } from '../support/example-exam.ts';
import { openTestStores } from '../support/stores.ts';

const steps = builtSteps();
const newStore = emptyStores();
const types: readonly StoredType[] = ['Observation', 'ClinicalImpression', 'Provenance', 'Device'];
const url = 'http://127.0.0.1/fhir/$export';

/**
 * Source: HL7 FHIR Bulk Data Access 2.0.0, http://hl7.org/fhir/uv/bulkdata/STU2/export.html: no resource changed after
 * the transactionTime is in an export (Response - Complete Status); `_since` asks for what changed after it (Query
 * Parameters); a client that goes on asking gets its export in the end, so that no stop may lose it.
 */
describe.each(engines)('an export on %s', (engine) => {
  let target: StoreTarget;
  let stores: Stores;
  let clock: number;

  beforeEach(async () => {
    target = await newStore(engine);
    stores = await openTestStores(target);
    clock = Date.parse('2026-11-01T00:00:00Z');
    return () => stores.exams.close();
  });

  const recordOf = exportEndRecord(() => new Date(clock), '0.1.0');
  const trail = () => ({ recordOf, append: stores.audit.append });
  /** What the trail says of the ends of exports, in its order. */
  async function ends(): Promise<readonly (string | undefined)[]> {
    const { matches } = await stores.audit.search({
      filters: [{ by: 'interaction', anyOf: ['export-end'] }],
      direction: 'ascending',
      count: 100,
      isCounted: false,
    });
    return matches.map(({ record: { job, outcome, reason } }) => [job, outcome, reason].join(' ').trim());
  }

  async function keep(exam: ExamBody): Promise<string> {
    clock += 1000;
    return (await records().record(Buffer.from(JSON.stringify(exam)))).exam.id;
  }
  const records = () => createExamRecords(steps, stores.exams, () => new Date(clock));
  const amended = (name: string) =>
    Buffer.from(
      JSON.stringify(
        examNumbered(name, {
          status: 'amended',
          findings: { power: [{ movement: 'ankle-dorsiflexion', side: 'right', grade: '3' }] },
        }),
      ),
    );

  async function filesOf(exports: ExportRepository, id: string): Promise<Record<string, string[]>> {
    const files: Record<string, string[]> = {};
    for (const type of (await exports.find(id)).request.types) {
      files[type] = [];
      for await (const group of await exports.stream(id, type)) files[type].push(...group.map(({ json }) => json));
    }
    return files;
  }

  async function finish(id: string): Promise<Readonly<Partial<Record<StoredType, number>>>> {
    for (;;) {
      const job = await stores.exports.advance(id, recordOf);
      if (isReady(job)) return job.counts;
    }
  }

  /** What stands in the store, without the help of a snapshot. */
  async function standing(): Promise<Record<string, string[]>> {
    const found: Record<string, string[]> = {};
    for (const type of types) {
      found[type] = [];
      for await (const group of stores.resources.stream({ type })) found[type].push(...group.map(({ json }) => json));
    }
    return found;
  }
  const sorted = (files: Record<string, string[]>) =>
    Object.fromEntries(Object.entries(files).map(([type, lines]) => [type, [...lines].sort()]));
  const counted = (files: Record<string, string[]>) =>
    Object.fromEntries(Object.entries(files).map(([type, lines]) => [type, lines.length]));

  it('has what stood when it began, whatever is posted, corrected or withdrawn after', async () => {
    const one = await keep(examNumbered('one'));
    const two = await keep(examNumbered('two'));
    clock += 1000;
    await records().correct(two, 1, amended('two'));
    const before = await standing();
    const { id } = await stores.exports.start({ url, types }, new Date(clock));

    await keep(examNumbered('three'));
    for (const [exam, version, name] of [
      [one, 1, 'one'],
      [one, 2, 'one'],
      [two, 2, 'two'],
    ] as const) {
      clock += 1000;
      await records().correct(exam, version, amended(name));
    }
    expect(counted(await standing())).not.toEqual(counted(before));
    expect(await finish(id)).toEqual(counted(before));
    expect(sorted(await filesOf(stores.exports, id))).toEqual(sorted(before));
    const next = await stores.exports.start({ url, types }, new Date(clock));
    expect(sorted(await filesOf(stores.exports, next.id))).toEqual(sorted(await standing()));
  });

  it('since a moment has what changed later', async () => {
    await keep(examNumbered('one'));
    const since = clock;
    const two = await keep(examNumbered('two'));
    clock += 1000;
    await records().correct(two, 1, amended('two'));
    const { id } = await stores.exports.start({ url, types, since }, new Date(clock));
    const changed = Object.fromEntries(
      Object.entries(await standing()).map(([type, lines]) => [
        type,
        lines.filter(
          (line) => Date.parse((JSON.parse(line) as { meta: { lastUpdated: string } }).meta.lastUpdated) > since,
        ),
      ]),
    );
    expect(await finish(id)).toEqual(counted(changed));
    expect(sorted(await filesOf(stores.exports, id))).toEqual(sorted(changed));
    expect(changed.Observation?.length).toBeGreaterThan(10);
    expect(changed.Device).toEqual([]);
  });

  it('that was begun before a stop is finished after it', async () => {
    await keep(examNumbered('one'));
    const before = await standing();
    const { id } = await stores.exports.start({ url, types }, new Date(clock));
    const halfway = await stores.exports.advance(id, recordOf);
    expect([Object.keys(halfway.counts).length, isReady(halfway)]).toEqual([1, false]);
    await stores.exams.close();

    stores = await openTestStores(target);
    await keep(examNumbered('two'));
    const failures: unknown[] = [];
    const worker = startExportWorker(stores.exports, trail(), (error) => failures.push(error));
    await expect.poll(async () => isReady(await stores.exports.find(id)), { timeout: 10_000 }).toBe(true);
    await worker.stop();
    expect(failures).toEqual([]);
    expect((await stores.exports.find(id)).counts).toEqual(counted(before));
    expect(sorted(await filesOf(stores.exports, id))).toEqual(sorted(before));
  });

  it('is gone when it was removed or is too old, without a failure of the worker', async () => {
    await keep(examNumbered('one'));
    const failures: unknown[] = [];
    const worker = startExportWorker(stores.exports, trail(), (error) => failures.push(error));
    const { id } = await stores.exports.start({ url, types }, new Date(clock));
    worker.wake(id);
    await stores.exports.remove(id);
    const old = await stores.exports.start({ url, types }, new Date(clock - 1));
    const young = await stores.exports.start({ url, types }, new Date(clock));
    expect(await stores.exports.removeBefore(new Date(clock), recordOf)).toBe(1);
    await worker.stop();
    for (const gone of [id, old.id]) {
      await expect(stores.exports.find(gone)).rejects.toMatchObject({ code: 'NOT_FOUND' });
      await expect(stores.exports.stream(gone, 'Device')).rejects.toMatchObject({ code: 'NOT_FOUND' });
    }
    await expect(stores.exports.stream(young.id, 'ServiceRequest')).rejects.toMatchObject({ code: 'NOT_FOUND' });
    expect(failures).toEqual([]);
  });

  it('is told of when it ends, once, however many are at work on it', async () => {
    await keep(examNumbered('one'));
    const { id } = await stores.exports.start({ url, types }, new Date(clock));
    expect(await ends()).toEqual([]);
    const others = engine === 'sqlite' ? [] : await Promise.all([openTestStores(target), openTestStores(target)]);
    await Promise.all(
      [stores, stores, ...others].map(async ({ exports }) => {
        while (!isReady(await exports.advance(id, recordOf)));
      }),
    );
    await Promise.all(others.map(({ exams }) => exams.close()));
    await stores.exports.advance(id, recordOf);
    expect(await ends()).toEqual([`${id} 0`]);
  });

  it('is told of when it fails, in general words, and when its time is over', async () => {
    const { id } = await stores.exports.start({ url, types }, new Date(clock));
    const failing: ExportRepository = {
      ...stores.exports,
      advance: async () => {
        throw new StoreError('STORE_UNAVAILABLE', 'Patient/4711 is mentioned here.');
      },
    };
    const failures: unknown[] = [];
    const worker = startExportWorker(failing, trail(), (error) => failures.push(error));
    worker.wake(id);
    await expect.poll(() => worker.pending).toBe(0);
    await worker.stop();
    expect(failures).toHaveLength(1);
    expect(await ends()).toEqual([`${id} 8 Store not available`]);
    expect(failureOf(new Error('secret'))).toEqual({ failure: 'Unexpected error' });

    const ready = await stores.exports.start({ url, types: ['Device'] }, new Date(clock));
    await stores.exports.advance(ready.id, recordOf);
    expect(await stores.exports.removeBefore(new Date(clock + 1), recordOf)).toBe(2);
    expect(await ends()).toEqual([
      `${id} 8 Store not available`,
      `${ready.id} 0`,
      `${id} 8 Not ready when its time was over`,
    ]);
  });

  it('is not ready without its entry in the trail', async () => {
    const { id } = await stores.exports.start({ url, types: ['Device'] }, new Date(clock));
    // No time, so that it cannot be written.
    const unwritable: typeof recordOf = (job, end) => ({ ...recordOf(job, end), at: 'never' });
    await expect(stores.exports.advance(id, unwritable)).rejects.toThrow();
    expect(isReady(await stores.exports.find(id))).toBe(false);
    expect(await ends()).toEqual([]);
  });

  it.runIf(engine === 'postgres')('has nothing of a transaction that was open when it began', async () => {
    if (target.engine !== 'postgres') return;
    await keep(examNumbered('one'));
    const client = new Client({ connectionString: target.url, options: '-c search_path=neuroexam' });
    await client.connect();
    // Holds the exam that is corrected, so that its transaction has its number and stays open.
    const two = await keep(examNumbered('two'));
    const before = await standing();
    await client.query('BEGIN');
    await client.query('SELECT 1 FROM exam WHERE id = $1 FOR UPDATE', [two]);
    clock += 1000;
    const correction = records().correct(two, 1, amended('two'));
    await waiting(client);
    const { id } = await stores.exports.start({ url, types }, new Date(clock));
    await client.query('COMMIT');
    await correction;
    await client.end();
    expect(sorted(await filesOf(stores.exports, id))).toEqual(sorted(before));
    expect(await finish(id)).toEqual(counted(before));
    expect(sorted(await standing())).not.toEqual(sorted(before));
  });
});

/** Resolves when another connection waits for a row. */
async function waiting(client: Client): Promise<void> {
  const text = `SELECT count(*)::integer AS n FROM pg_stat_activity WHERE wait_event_type = 'Lock' AND query LIKE '%FOR UPDATE%'`;
  while ((await client.query<{ n: number }>(text)).rows[0]?.n === 0) {
    // Within a transaction the server shows what it showed first, until it is told to look again.
    await client.query('SELECT pg_stat_clear_snapshot()');
  }
}
