import { fileURLToPath } from 'node:url';
import sql, { raw } from 'sql-template-tag';
import { beforeAll, describe, expect, it } from 'vitest';
import { createExamRecords } from '../../src/http/exam-records.ts';
import { isStoredType } from '../../src/store/index/stored-types.ts';
import type { Stores, StoreTarget } from '../../src/store/open-stores.ts';
import { startViewRefresher } from '../../src/store/view-refresher.ts';
import { createViewTables, type ViewTables } from '../../src/store/view-tables.ts';
import { compileView } from '../../src/views/compile-view.ts';
import { sqlValue, viewTableName } from '../../src/views/create-table.ts';
import { type LoadedView, viewsFrom } from '../../src/views/load-views.ts';
import type { ViewDefinition } from '../../src/views/view-definition.ts';
import { builtSteps } from '../support/built.ts';
import { emptyStores, engines } from '../support/engines.ts';
import { type ExamBody, examNumbered, exampleExam, exampleNames } from '../support/example-exam.ts';
import { openTestStores } from '../support/stores.ts';

const steps = builtSteps();
const newStore = emptyStores();
const views = [...viewsFrom(fileURLToPath(new URL('../../profiles/views', import.meta.url))).values()];
const bytes = (exam: ExamBody) => Buffer.from(JSON.stringify(exam));
const fail = (error: unknown) => {
  throw error;
};
const weak = (grade: string) => ({ power: [{ movement: 'ankle-dorsiflexion', side: 'left', grade }] });

describe.each(engines)('tables of views on %s', (engine) => {
  let target: StoreTarget;
  let stores: Stores;
  let tables: ViewTables;
  let clock = Date.parse('2026-11-01T00:00:00Z');
  const records = () => {
    clock += 1000;
    return createExamRecords(steps, stores.exams, () => new Date(clock));
  };
  const post = async (exam: ExamBody) => (await records().record(bytes(exam))).exam.id;
  const correct = (id: string, version: number, exam: ExamBody) => records().correct(id, version, bytes(exam));

  beforeAll(async () => {
    target = await newStore(engine);
    stores = await openTestStores(target);
    tables = createViewTables(stores.engine, views, fail);
    return () => stores.engine.close();
  });

  /** Rows of a view over everything that is current, as a database would give them. */
  async function expectedRows({ compiled }: LoadedView): Promise<unknown[]> {
    const rows: unknown[] = [];
    if (!isStoredType(compiled.resource)) return rows;
    for await (const group of stores.resources.stream({ type: compiled.resource })) {
      for (const { json } of group) {
        for (const row of compiled.rowsOf(JSON.parse(json))) {
          rows.push(Object.fromEntries(Object.entries(row).map(([name, cell]) => [name, sqlValue(cell, engine)])));
        }
      }
    }
    return rows;
  }
  let questions = 0;
  /** Each question has a text of its own, since PostgreSQL keeps the plan of one and the columns may change. */
  const inTable = ({ compiled }: LoadedView) => {
    const table = viewTableName(compiled.name, engine);
    return stores.engine.reader.all<Record<string, unknown>>(sql`SELECT * FROM ${raw(`${table} AS t${questions++}`)}`);
  };
  const sorted = (rows: readonly unknown[]) => rows.map((row) => JSON.stringify(row)).sort();

  async function expectCurrent(wanted: readonly LoadedView[] = views): Promise<void> {
    for (const view of wanted) {
      const [found, expected] = [await inTable(view), await expectedRows(view)];
      expect(expected.length).toBeGreaterThan(0);
      expect(sorted(found), view.compiled.name).toEqual(sorted(expected));
    }
  }

  it('hold what the views say of all current resources after posts, and nothing is done twice', async () => {
    expect(await tables.refresh()).toBe(0);
    for (const name of exampleNames) await post(exampleExam({}, name));
    expect(await tables.refresh()).toBe(3);
    await expectCurrent();
    expect(await tables.refresh()).toBe(0);
  });

  it('follow corrections and withdrawals, exam by exam', async () => {
    const id = await post(examNumbered('C-1', { findings: weak('2') }));
    await tables.refresh();
    await correct(id, 1, examNumbered('C-1', { status: 'amended', findings: weak('4') }));
    await post(examNumbered('C-2'));
    expect(await tables.refresh()).toBe(2);
    await expectCurrent();
    await correct(id, 2, examNumbered('C-1', { status: 'entered-in-error', findings: weak('4') }));
    expect(await tables.refresh()).toBe(1);
    await expectCurrent();
    const power = views.filter(({ compiled }) => compiled.name === 'power')[0] as LoadedView;
    const ofExam = (await inTable(power)).filter(({ exam_key }) => exam_key === id);
    expect([...new Set(ofExam.map(({ status }) => status))]).toEqual(['entered-in-error']);
  });

  it('go on where they were after being stopped in the middle, also when corrections came between', async () => {
    const ids: string[] = [];
    for (let n = 0; n < 11; n += 1) ids.push(await post(examNumbered(`S-${n}`, { findings: weak('3') })));
    let asked = 0;
    const first = await tables.refresh(() => {
      asked += 1;
      return asked > 1;
    });
    expect(first).toBeGreaterThan(0);
    expect(first).toBeLessThan(11);
    for (const n of [0, 10]) {
      await correct(ids[n] as string, 1, examNumbered(`S-${n}`, { status: 'amended', findings: weak('5') }));
    }
    await tables.refresh();
    await expectCurrent();
  });

  it('are still current after a restart', async () => {
    await stores.engine.close();
    stores = await openTestStores(target);
    tables = createViewTables(stores.engine, views, fail);
    expect(await tables.refresh()).toBe(0);
    await post(examNumbered('R-1'));
    expect(await tables.refresh()).toBe(1);
    await expectCurrent();
  });

  it('are made again when a definition has changed, and go when their view has gone', async () => {
    const [first, ...others] = views as [LoadedView, ...LoadedView[]];
    const definition: ViewDefinition = {
      ...first.definition,
      select: [
        ...first.definition.select.slice(0, 1),
        { column: [{ name: 'more', path: 'id', type: 'string', description: "The id: it's all." }] },
      ],
    };
    const changed = [{ definition, compiled: compileView(definition) }, ...others.slice(1)];
    expect(await createViewTables(stores.engine, changed, fail).refresh()).toBeGreaterThan(3);
    await expectCurrent(changed);
    await expect(inTable(others[0] as LoadedView)).rejects.toThrow();
    if (engine === 'postgres') {
      const [said] = await stores.engine.reader.all<{ words: string }>(
        sql`SELECT col_description(${viewTableName(first.compiled.name, engine)}::regclass, attnum) AS words
            FROM pg_attribute WHERE attrelid = ${viewTableName(first.compiled.name, engine)}::regclass AND attname = 'more'`,
      );
      expect(said?.words).toBe("The id: it's all.");
    }
    await tables.refresh();
    await expectCurrent();
  });

  it('tell of a resource that a view cannot make rows of, and keep the rest', async () => {
    const definition: ViewDefinition = {
      name: 'failing',
      resource: 'Observation',
      select: [
        {
          column: [
            { name: 'key', path: 'id', type: 'string' },
            { name: 'exam_key', path: 'meta.tag.code.first()', type: 'string' },
            { name: 'member', path: 'hasMember.reference', type: 'string' },
          ],
        },
      ],
    };
    const codes: string[] = [];
    const failing = { definition, compiled: compileView(definition) };
    await createViewTables(stores.engine, [failing], ({ code }) => codes.push(code)).refresh();
    expect(new Set(codes)).toEqual(new Set(['VIEW_FAILED']));
    expect((await inTable(failing)).length).toBeGreaterThan(50);
    await tables.refresh();
  });

  it('are brought up in the background, and a failure is told and stops nothing', async () => {
    const told: unknown[] = [];
    let calls = 0;
    const flaky: ViewTables = {
      refresh: (isStopped) => (++calls === 1 ? Promise.reject(new RangeError('no')) : tables.refresh(isStopped)),
    };
    await post(examNumbered('B-1'));
    const refresher = startViewRefresher(flaky, 5, (error) => told.push(error));
    await expect.poll(() => calls, { timeout: 10_000 }).toBeGreaterThan(3);
    await refresher.stop();
    expect(told).toHaveLength(1);
    await expectCurrent();
    const then = calls;
    await new Promise((resolve) => setTimeout(resolve, 30));
    expect(calls).toBe(then);
  });

  it.runIf(engine === 'postgres')('are refreshed by one of two openers at a time, and end up right', async () => {
    const second = await openTestStores(target);
    try {
      const other = createViewTables(second.engine, views, fail);
      for (let n = 0; n < 3; n += 1) {
        const mine = post(examNumbered(`T-${n}`));
        const theirs = createExamRecords(steps, second.exams, () => new Date(clock)).record(
          bytes(examNumbered(`U-${n}`)),
        );
        const both = Promise.all([tables.refresh(), other.refresh()]);
        await Promise.all([mine, theirs, both]);
        expect(await both).not.toContain(undefined);
      }
      const [one, two] = await Promise.all([post(examNumbered('V-1')), post(examNumbered('V-2'))]);
      expect(one).not.toBe(two);
      const counts = await Promise.all([tables.refresh(), other.refresh()]);
      expect(counts.filter((count) => count === null).length).toBeLessThan(2);
      await other.refresh();
      await expectCurrent();
    } finally {
      await second.engine.close();
    }
  });

  it.runIf(engine === 'postgres')('are left by an instance that was taken for dead', async () => {
    await post(examNumbered('W-1'));
    let hasLost = false;
    const lost = tables.refresh(() => {
      hasLost = true;
      return false;
    });
    // The row of the right is taken while that instance makes its rows.
    const taken = stores.engine.write(async (session) => {
      while (!hasLost) await new Promise((resolve) => setTimeout(resolve, 1));
      await session.run(sql`UPDATE view_refresh SET holder = 'another', seen_at = ${Date.now()}`);
    });
    await expect(lost).rejects.toThrow('Another instance');
    await taken;
    expect(await tables.refresh()).toBeNull();
    await stores.engine.write((session) => session.run(sql`UPDATE view_refresh SET seen_at = 0`));
    expect(await tables.refresh()).toBe(1);
    await expectCurrent();
  });
});
