import { createHash } from 'node:crypto';
import { setImmediate } from 'node:timers/promises';
import sql, { raw } from 'sql-template-tag';
import { AppError } from '../kernel/errors.ts';
import type { CompiledView } from '../views/compile-view.ts';
import {
  columnTypes,
  createIndexesSql,
  createTableSql,
  describeTableSql,
  sqlValue,
  viewTableName,
} from '../views/create-table.ts';
import type { LoadedView } from '../views/load-views.ts';
import { parseLossless } from '../views/lossless-json.ts';
import type { ViewDefinition } from '../views/view-definition.ts';
import type { Engine, Session } from './engine.ts';
import { isStoredType, numberOfType } from './index/stored-types.ts';
import { batchesBetween, examVersionsInSnapshot, type Snapshot, takeSnapshot } from './snapshot.ts';
import { openVersions, type VersionRow } from './versions.ts';
import { createViewLease } from './view-lease.ts';

/** Exams whose rows are replaced in one transaction. */
const examsTogether = 10;
/** Resources that are made into rows before other work has its turn. */
const resourcesOfTurn = 5;

export interface ViewTables {
  /**
   * Brings every table up to what is committed; only what exams wrote since then is read.
   * @param isStopped asked between transactions; what was done until then stays, and the next call goes on from there
   * @returns exams whose rows were made again, or null when another instance is at work
   * @throws StoreError
   */
  refresh(isStopped?: () => boolean): Promise<number | null>;
}

interface TableRow {
  readonly name: string;
  readonly hash: string;
  /** Everything up to here is in the table. */
  readonly snapshot: Snapshot | null;
  /** What it is being brought to, if that was begun. */
  readonly target: Snapshot | null;
  /** Number of the last batch of the target that is in the table. */
  readonly reached: number;
}

interface ViewTable {
  readonly view: CompiledView;
  readonly definition: ViewDefinition;
  readonly hash: string;
}

/**
 * The views as tables of the database, for programs that read SQL: in the schema `views` of PostgreSQL, named
 * `views_<name>` in SQLite. Rows belong to exams by their column `exam_key`, the id of the exam.
 * @param onFault is told of a resource that a view cannot make rows of; the others go on
 */
export function createViewTables(
  engine: Engine,
  views: Iterable<LoadedView>,
  onFault: (error: AppError) => void,
): ViewTables {
  const { dialect } = engine;
  const lease = createViewLease(engine);
  const tables: readonly ViewTable[] = [...views].map(({ compiled, definition }) => ({
    view: compiled,
    definition,
    hash: createHash('sha256').update(JSON.stringify(definition)).digest('hex'),
  }));

  const states = () =>
    engine.reader.all<TableRow>(
      sql`SELECT name, definition_hash AS hash, snapshot, target, reached FROM view_table ORDER BY name`,
    );

  /** Whether there is anything to do; asked without writing, since mostly there is not. */
  async function isBehind(): Promise<boolean> {
    const rows = await states();
    const isOther = tables.some(({ view, hash }) => !rows.some((row) => row.name === view.name && row.hash === hash));
    if (isOther || rows.length !== tables.length) return true;
    if (rows.some(({ snapshot, target }) => snapshot === null || target !== null)) return true;
    const now = await takeSnapshot(engine);
    for (const from of new Set(rows.map(({ snapshot }) => snapshot))) {
      if ((await engine.reader.all(batchesBetween(dialect, from, now, 0, 1))).length > 0) return true;
    }
    return false;
  }

  /** Drops what no view asks for any more, and makes what is missing or was made by another definition, empty. */
  async function prepare(): Promise<void> {
    const kept = new Map((await states()).map((row) => [row.name, row.hash]));
    const names = new Set(tables.map(({ view }) => view.name));
    for (const name of kept.keys()) {
      if (!names.has(name)) await engine.write((session) => drop(session, name));
    }
    for (const table of tables) {
      if (kept.get(table.view.name) === table.hash) continue;
      await engine.write(async (session) => {
        await drop(session, table.view.name);
        for (const statement of [
          createTableSql(table.view, dialect),
          ...createIndexesSql(table.view, dialect),
          ...(dialect === 'postgres' ? describeTableSql(table.view, table.definition.description) : []),
        ]) {
          await session.run(sql`${raw(statement)}`);
        }
        await session.run(
          sql`INSERT INTO view_table (name, definition_hash, reached) VALUES (${table.view.name}, ${table.hash}, 0)`,
        );
      });
    }
  }

  async function drop(session: Session, name: string): Promise<void> {
    await lease.keep(session);
    await session.run(sql`DROP TABLE IF EXISTS ${raw(viewTableName(name, dialect))}`);
    await session.run(sql`DELETE FROM view_table WHERE name = ${name}`);
  }

  /** Brings tables that stand at the same place to the target. */
  async function advance(
    group: readonly ViewTable[],
    { snapshot, reached }: Pick<TableRow, 'snapshot' | 'reached'>,
    target: Snapshot,
    isStopped: () => boolean,
    done: Set<number>,
  ): Promise<void> {
    const ofGroup = amongNames(group);
    for (let after = reached; !isStopped(); ) {
      const batches = await engine.reader.all<{ n: number; exam: number }>(
        batchesBetween(dialect, snapshot, target, after, examsTogether),
      );
      const last = batches.at(-1);
      if (last === undefined) {
        if (snapshot === target) return;
        await engine.write(async (session) => {
          await lease.keep(session);
          await session.run(
            sql`UPDATE view_table SET snapshot = ${target}, target = NULL, reached = 0 WHERE ${ofGroup}`,
          );
        });
        return;
      }
      const exams = [...new Set(batches.map(({ exam }) => exam))];
      const rows = await rowsOfExams(group, exams, target);
      const ids = await engine.reader.all<{ id: string }>(
        dialect === 'postgres'
          ? sql`SELECT id FROM exam WHERE n = ANY (${exams}::bigint[])`
          : sql`SELECT id FROM exam WHERE n IN (SELECT value FROM json_each(${JSON.stringify(exams)}))`,
      );
      await engine.write(async (session) => {
        await lease.keep(session);
        for (const { view } of group) {
          const table = viewTableName(view.name, dialect);
          for (const { id } of ids) {
            await session.run(sql`DELETE FROM ${raw(table)} WHERE exam_key = ${id}`);
          }
          await session.insert(table, columnTypes(view, dialect), rows.get(view.name) ?? []);
        }
        await session.run(sql`UPDATE view_table SET target = ${target}, reached = ${last.n} WHERE ${ofGroup}`);
      });
      after = last.n;
      for (const exam of exams) done.add(exam);
    }
  }

  async function rowsOfExams(group: readonly ViewTable[], exams: readonly number[], target: Snapshot) {
    const types = [...new Set(group.map(({ view }) => view.resource))].filter(isStoredType).map(numberOfType);
    const versions = await engine.reader.all<VersionRow>(examVersionsInSnapshot(dialect, target, exams, types));
    const resources = await openVersions(engine.reader, versions);
    const rows = new Map<string, unknown[][]>(group.map(({ view }) => [view.name, []]));
    for (const [index, resource] of resources.entries()) {
      if (index % resourcesOfTurn === resourcesOfTurn - 1) await setImmediate();
      const parsed = parseLossless(resource.json);
      for (const { view } of group) {
        if (view.resource === resource.type) rows.get(view.name)?.push(...cellsOf(view, parsed));
      }
    }
    return rows;
  }

  function cellsOf(view: CompiledView, parsed: unknown): unknown[][] {
    try {
      return view.rowsOf(parsed).map((row) => view.columns.map(({ name }) => sqlValue(row[name] ?? null, dialect)));
    } catch (error) {
      if (!(error instanceof AppError)) throw error;
      onFault(error);
      return [];
    }
  }

  return {
    async refresh(isStopped = () => false) {
      if (!(await isBehind())) return 0;
      if (!(await lease.take())) return null;
      const done = new Set<number>();
      try {
        await prepare();
        // Twice, since what was begun by an earlier call is first brought to the place where that one wanted to be.
        for (const isRest of [true, false]) {
          const now = await takeSnapshot(engine);
          const rows = (await states()).filter(({ target }) => !isRest || target !== null);
          const places = new Map(rows.map((row) => [placeOf(row), row]));
          for (const [place, row] of places) {
            const names = rows.filter((other) => placeOf(other) === place).map(({ name }) => name);
            const group = tables.filter(({ view }) => names.includes(view.name));
            await advance(group, row, row.target ?? now, isStopped, done);
          }
        }
        return done.size;
      } finally {
        await lease.release();
      }
    },
  };
}

/** Tables with the same place are brought on together, so that each resource is read once. */
function placeOf({ snapshot, target, reached }: TableRow): string {
  return JSON.stringify([snapshot, target, reached]);
}

function amongNames(group: readonly ViewTable[]) {
  const names = group.map(({ view }) => view.name);
  return sql`name IN (${raw(names.map((name) => `'${name.replaceAll("'", "''")}'`).join(', '))})`;
}
