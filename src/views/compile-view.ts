import fhirpath from 'fhirpath';
import { checkView, columnsOf } from './check-view.ts';
import { r4Model } from './r4-model.ts';
import type { Cell, ColumnDefinition, Row, SelectDefinition, ViewColumn, ViewDefinition } from './view-definition.ts';
import { ViewFailedError, ViewInvalidError } from './view-errors.ts';
import { compilePath, type FhirPathNode, plainValue, type ViewPath } from './view-path.ts';

export interface CompiledView {
  readonly name: string;
  readonly resource: string;
  /** In the order of the cells of every row. */
  readonly columns: readonly ViewColumn[];
  /**
   * Rows of one resource, in document order; none for a resource of another type.
   * @throws ViewFailedError when a path gives several values for one cell, or it asks for more rows than `maxRows` or too much time
   */
  readonly rowsOf: (resource: unknown) => readonly Row[];
}

/** Rows of one resource. Siblings multiply, so a small view can ask for very many. Judged. */
export const maxRows = 100_000;

/** Time for the rows of one resource, in ms: a hundred times what any shipped view needs. Judged. */
const longestMs = 2_000;

const tooMany = `more than ${maxRows} rows for one resource`;

type Fail = (path: string, problem: string) => never;
type Variables = Readonly<Record<string, unknown>>;
type PartialRow = Record<string, Cell>;
type Producer = (context: FhirPathNode, variables: Variables) => PartialRow[];

/**
 * Compiles a ViewDefinition once, for any number of resources.
 * @throws ViewInvalidError with every fault of the definition
 */
export function compileView(definition: unknown): CompiledView {
  const faults = checkView(definition);
  if (faults.length > 0) throw new ViewInvalidError(faults);
  const view = definition as ViewDefinition;
  const name = view.name ?? '(unnamed)';
  const fail: Fail = (path, problem) => {
    throw new ViewFailedError(`View ${name}, path ${path}, resource ${view.resource}: ${problem}.`);
  };
  let deadline = 0;
  const guarded = (path: string): ViewPath => {
    const run = compilePath(path);
    return (context, variables) => {
      if (performance.now() > deadline) fail(path, 'the view takes too long for one resource');
      try {
        return run(context, variables);
      } catch (cause) {
        // The library's message may quote the data.
        if (cause instanceof ViewFailedError) throw cause;
        return fail(path, 'the path cannot be evaluated on this resource');
      }
    };
  };
  const columns = columnsOf(view.select);
  const produce = allOf(
    view.select.map((select) => producer(select, guarded, fail)),
    fail,
  );
  const conditions = (view.where ?? []).map(({ path }) => ({ path, run: guarded(path) }));
  const constants = { ...constantsOf(view), rowIndex: 0 };
  return {
    name,
    resource: view.resource,
    columns,
    rowsOf(resource) {
      deadline = performance.now() + longestMs;
      const variables = { ...constants, resource, rootResource: resource };
      if ((resource as { resourceType?: unknown } | null)?.resourceType !== view.resource) return [];
      const context = compiledContext(resource, variables);
      for (const { path, run } of conditions) {
        const values = run(context, variables).map(plainValue);
        if (values.length > 1 || values.some((value) => typeof value !== 'boolean')) {
          fail(path, 'a condition gives true, false or nothing');
        }
        if (values[0] !== true) return [];
      }
      const rows = produce(context, variables);
      return rows.map((row) => Object.fromEntries(columns.map((column) => [column.name, row[column.name] ?? null])));
    },
  };
}

const self = compilePath('$this');

/** The resource as a node, made once and shared by all paths. */
function compiledContext(resource: unknown, variables: Variables): FhirPathNode {
  return self(resource, variables)[0];
}

function producer(select: SelectDefinition, compile: (path: string) => ViewPath, fail: Fail): Producer {
  const columns = (select.column ?? []).map((column) => ({ column, run: compile(column.path) }));
  const inner = allOf(
    [
      (context, variables) => [
        Object.fromEntries(
          columns.map(({ column, run }) => [column.name, cell(column, run(context, variables), fail)]),
        ),
      ],
      ...(select.select ?? []).map((child) => producer(child, compile, fail)),
      ...(select.unionAll === undefined
        ? []
        : [
            concatenated(
              select.unionAll.map((c) => producer(c, compile, fail)),
              fail,
            ),
          ]),
    ],
    fail,
  );
  const path = select.forEach ?? select.forEachOrNull;
  const items = path === undefined ? undefined : compile(path);
  const steps = select.repeat?.map(compile);
  if (items === undefined && steps === undefined) return inner;
  return (context, variables) => {
    const nodes = items?.(context, variables) ?? descendants(context, variables, steps ?? [], fail);
    if (nodes.length === 0 && select.forEachOrNull !== undefined) return inner([], { ...variables, rowIndex: 0 });
    return limited(
      nodes.map((node, rowIndex) => () => inner(node, { ...variables, rowIndex })),
      fail,
    );
  };
}

function descendants(
  context: FhirPathNode,
  variables: Variables,
  steps: readonly ViewPath[],
  fail: Fail,
): FhirPathNode[] {
  const found: FhirPathNode[] = [];
  const visit = (node: FhirPathNode, depth: number) => {
    // A path such as `$this` finds its own start for ever; no resource is nested so deeply.
    if (depth > 100 || found.length > maxRows) fail('repeat', 'the paths lead on without end');
    for (const step of steps) {
      for (const child of step(node, variables)) {
        found.push(child);
        visit(child, depth + 1);
      }
    }
  };
  visit(context, 0);
  return found;
}

function concatenated(branches: readonly Producer[], fail: Fail): Producer {
  return (context, variables) =>
    limited(
      branches.map((branch) => () => branch(context, variables)),
      fail,
    );
}

/** Rows of all parts one after another; stops at the limit rather than gather what will be refused. */
function limited(parts: readonly (() => PartialRow[])[], fail: Fail): PartialRow[] {
  const rows: PartialRow[] = [];
  for (const part of parts) {
    for (const row of part()) rows.push(row);
    if (rows.length > maxRows) fail('select', tooMany);
  }
  return rows;
}

/** Rows of every part combined with rows of every other. */
function allOf(parts: readonly Producer[], fail: Fail): Producer {
  return (context, variables) => {
    let rows: PartialRow[] = [{}];
    for (const part of parts) {
      const more = part(context, variables);
      if (rows.length * more.length > maxRows) fail('select', tooMany);
      rows = rows.flatMap((row) => more.map((next) => ({ ...row, ...next })));
    }
    return rows;
  };
}

function cell({ name, path, collection }: ColumnDefinition, nodes: readonly FhirPathNode[], fail: Fail): Cell {
  const values = nodes.map(plainValue).filter((value) => value !== undefined) as Cell[];
  if (collection === true) return values;
  if (values.length > 1) fail(path, `several values for column ${name}, which is not a collection`);
  return values[0] ?? null;
}

/** Times compare only with times, so constants of these types are made by the library from a literal. */
function constantsOf(view: ViewDefinition): Variables {
  return Object.fromEntries(
    (view.constant ?? []).map((constant) => {
      const [key = '', value] = Object.entries(constant).find(([name]) => name.startsWith('value')) ?? [];
      if (!/^value(Date|DateTime|Instant|Time)$/.test(key)) return [constant.name, value];
      const literal = key === 'valueTime' ? `@T${value}` : `@${value}`;
      const options = { resolveInternalTypes: false };
      return [constant.name, fhirpath.evaluate({}, literal, {}, r4Model, options as never)[0]];
    }),
  );
}
