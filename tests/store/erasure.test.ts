import { existsSync, readFileSync } from 'node:fs';
import Database from 'better-sqlite3';
import { Client } from 'pg';
import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { createExamRecords } from '../../src/http/exam-records.ts';
import type { SearchQuery } from '../../src/search/query.ts';
import { storedTypes } from '../../src/store/index/stored-types.ts';
import type { Stores, StoreTarget } from '../../src/store/open-stores.ts';
import { builtSteps } from '../support/built.ts';
import { emptyStores, engines } from '../support/engines.ts';
import { type ExamBody, exampleExam } from '../support/example-exam.ts';
import { openTestStores } from '../support/stores.ts';

const steps = builtSteps();
const newStore = emptyStores();

/** Stands in a note, in the identifier and in the person's reference, so that content, index and ids are all looked through. */
const mark = 'Zyxwvut';
const identifier = (value: string) => ({ system: 'https://clinic.example/exams', value });
const bytes = (exam: ExamBody) => Buffer.from(JSON.stringify(exam));

const kept = exampleExam({ identifier: identifier('kept') });
const noted = { sign: 'wasting', site: 'leg-below-knee', side: 'both', present: false, note: `${mark} said so.` };
const marked = exampleExam({
  identifier: identifier(`${mark}-1`),
  subject: { reference: `Patient/${mark}` },
  encounter: { reference: `Encounter/${mark}` },
  findings: { inspection: [noted], power: [{ movement: 'ankle-dorsiflexion', side: 'left', grade: '2' }] },
});
const corrected = {
  ...marked,
  status: 'amended',
  subject: { reference: `Patient/${mark}-2` },
  findings: { inspection: [noted], power: [{ movement: 'ankle-dorsiflexion', side: 'right', grade: '3' }] },
};
const why = { reason: 'Asked for by the person; invented.', by: 'tester', at: new Date('2026-11-26T00:00:00Z') };

describe.each(engines)('an exam that is erased on %s', (engine) => {
  let target: StoreTarget;
  let stores: Stores;
  let id: string;
  let clock: number;

  beforeAll(() => expect(JSON.stringify(corrected)).toContain(mark));
  beforeEach(async () => {
    target = await newStore(engine);
    stores = await openTestStores(target);
    clock = Date.parse('2026-11-01T00:00:00Z');
    await records().record(bytes(kept));
    return () => stores.exams.close();
  });

  const records = () => createExamRecords(steps, stores.exams, () => new Date(clock));

  async function keepMarked(): Promise<void> {
    clock += 1000;
    id = (await records().record(bytes(marked))).exam.id;
    clock += 1000;
    await records().correct(id, 1, bytes(corrected));
  }

  const query = (type: string, filters: SearchQuery['filters'] = []): SearchQuery => ({
    type,
    filters,
    sort: { by: 'date', direction: 'descending' },
    count: 1000,
    total: 'accurate',
    includes: [],
    revIncludes: [],
  });

  /** Everything that can be read back, by search, history and stream, and how many rows each table has. */
  async function everything() {
    const read: unknown[] = [];
    for (const type of storedTypes) {
      const { matches, total } = await stores.resources.search(query(type));
      const streamed = [];
      for await (const group of stores.resources.stream({ type })) streamed.push(...group);
      read.push({ type, total, matches, streamed, history: await stores.resources.history({ type, count: 1000 }) });
    }
    const counts: Record<string, number> = {};
    for (const table of tables) counts[table] = Number((await select(`SELECT count(*) AS n FROM ${table}`))[0]?.n);
    return { read, counts };
  }
  const tables = ['exam', 'exam_version', 'batch', 'chunk', 'resource', 'past_resource', 'posting', 'range_posting'];

  async function select(text: string): Promise<Record<string, unknown>[]> {
    return stores.engine.reader.all({ text, sql: text, values: [] } as never);
  }

  it('leaves what there would be without it, and a record', async () => {
    const before = await everything();
    await keepMarked();
    expect((await everything()).counts.resource).toBeGreaterThan(before.counts.resource ?? 0);
    const erasure = await stores.erasures.erase(id, why);
    expect(erasure).toMatchObject({ examId: id, reason: why.reason, by: 'tester', versions: 2 });
    expect(erasure.resources).toBeGreaterThan(5);
    expect(await everything()).toEqual(before);
    expect(await stores.exams.find(id)).toBeUndefined();
    expect(await stores.exams.history(id)).toEqual([]);
    expect(await stores.erasures.list()).toEqual([erasure]);
    expect(await stores.erasures.find(id)).toEqual(erasure);
    await expect(stores.erasures.erase(id, why)).rejects.toMatchObject({ code: 'NOT_FOUND' });
  });

  it('can be posted again as a new exam, which is found', async () => {
    await keepMarked();
    await stores.erasures.erase(id, why);
    clock += 1000;
    const again = await records().record(bytes(marked));
    expect([again.created, again.exam.id, again.exam.version]).toEqual([true, id, 1]);
    const filters: SearchQuery['filters'] = [
      { kind: 'reference', param: 'subject', anyOf: [`Patient/${mark}`] } as SearchQuery['filters'][number],
    ];
    const { total, matches } = await stores.resources.search(query('Observation', filters));
    expect(total).toBeGreaterThan(3);
    expect(new Set(matches.map(({ version }) => version))).toEqual(new Set([1]));
  });

  it('leaves nothing that names the person in any table', async () => {
    await keepMarked();
    const text = `SELECT count(*) AS n FROM token WHERE code LIKE '%${mark}%' OR code LIKE '%${mark.toLowerCase()}%'`;
    expect(Number((await select(text))[0]?.n)).toBeGreaterThan(0);
    await stores.erasures.erase(id, why);
    expect(Number((await select(text))[0]?.n)).toBe(0);
    await stores.erasures.purge();
    if (target.engine !== 'sqlite') return;
    for (const file of [target.file, `${target.file}-wal`]) {
      if (!existsSync(file)) continue;
      const content = readFileSync(file).toString('latin1').toLowerCase();
      expect(content.includes(mark.toLowerCase()), file).toBe(false);
    }
  });

  it('takes the exports with it that were begun before', async () => {
    await keepMarked();
    const job = await stores.exports.start({ url: 'http://x/fhir/$export', types: ['Observation'] }, new Date());
    await stores.erasures.erase(id, why);
    await expect(stores.exports.find(job.id)).rejects.toMatchObject({ code: 'NOT_FOUND' });
  });

  it('is the only way to remove a stored version', async () => {
    await keepMarked();
    await stores.erasures.erase(id, why);
    clock += 1000;
    id = (await records().record(bytes(marked))).exam.id;
    clock += 1000;
    await records().correct(id, 1, bytes(corrected));
    const way = `INSERT INTO erasure (exam_id, erased_at, reason, erased_by, versions, resources, content_hashes, open_for)
      SELECT id, 'now', 'by hand', 'x', 0, 0, '[]', n FROM exam WHERE id = '${id}'`;
    const refused: (readonly [string, RegExp])[] = [
      ['DELETE FROM exam_version', /never removed/],
      ["UPDATE exam_version SET content_hash = ''", /never changes/],
      ['DELETE FROM past_resource', /never removed/],
      ['DELETE FROM chunk', /never removed/],
      ['UPDATE past_resource SET slot = 0', /never changes/],
      ['DELETE FROM erasure', /never removed/],
      ["UPDATE erasure SET reason = 'another'", /never changes/],
      // The way may not stay open beyond the transaction, nor lead to any other exam.
      [way, /FOREIGN KEY|foreign key/],
      [`BEGIN; ${way}; DELETE FROM exam_version; COMMIT`, /never removed/],
      ...(engine === 'postgres' ? [['TRUNCATE exam_version', /never removed/] as const] : []),
    ];
    const before = await everything();
    await stores.exams.close();
    for (const [statement, message] of refused) await expect(byHand(statement), statement).rejects.toThrow(message);
    stores = await openTestStores(target);
    expect(await everything()).toEqual(before);
  });

  async function byHand(statement: string): Promise<void> {
    if (target.engine === 'sqlite') {
      const db = new Database(target.file);
      try {
        db.exec(statement);
      } finally {
        db.close();
      }
      return;
    }
    const client = new Client({ connectionString: target.url, options: '-c search_path=neuroexam' });
    await client.connect();
    try {
      await client.query(statement);
    } finally {
      await client.end();
    }
  }
});
