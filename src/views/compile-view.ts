import fhirpath from 'fhirpath';
import { echoedName } from '../exam/faults/echo.ts';
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
   * @throws ViewFailedError when a path gives several values for one cell, or the view asks for more rows than `maxRows`
   *   or for too much time
   */
  readonly rowsOf: (resource: unknown) => readonly Row[];
}

/** Rows of one resource. Siblings multiply, so a small view can ask for very many. Judged. */
export const maxRows = 100_000;

/** Time for the rows of one resource, in ms: a hundred times what any shipped view needs. Judged. */
const longestMs = 1_000;

const tooMany = `more than ${maxRows} rows for one resource`;

/** A path and where in the definition it stands. */
interface Place {
  readonly path: string;
  /** JSON Pointer. */
  readonly pointer: string;
}

type Fail = (place: Place, problem: string, code?: 'TOO_LARGE' | 'WRONG_TYPE') => never;
type Compile = (place: Place) => ViewPath;
type Variables = Readonly<Record<string, unknown>>;
type PartialRow = Record<string, Cell>;
type Producer = (context: FhirPathNode, variables: Variables) => PartialRow[];

/**
 * Compiles a ViewDefinition once, for any number of resources.
 * @param base where the definition stands in what the caller sent; pointers of faults begin with it
 * @throws ViewInvalidError with every fault of the definition
 */
export function compileView(definition: unknown, base = ''): CompiledView {
  const faults = checkView(definition);
  if (faults.length > 0) {
    throw new ViewInvalidError(faults.map((fault) => ({ ...fault, pointer: `${base}${fault.pointer}` })));
  }
  const view = definition as ViewDefinition;
  const name = view.name ?? 'unnamed';
  const fail: Fail = ({ path, pointer }, problem, code = 'WRONG_TYPE') => {
    const message = `View ${echoedName(name)}, path ${withoutTexts(path)}, resource ${view.resource}: ${problem}.`;
    throw new ViewFailedError(message, { pointer: `${base}${pointer}`, code });
  };
  let deadline = 0;
  const guarded: Compile = (place) => {
    const run = compilePath(place.path);
    return (context, variables) => {
      if (performance.now() > deadline) fail(place, 'the view takes too long for one resource', 'TOO_LARGE');
      try {
        return run(context, variables);
      } catch (cause) {
        // The library's message may quote the data.
        if (cause instanceof ViewFailedError) throw cause;
        return fail(place, 'the path cannot be evaluated on this resource');
      }
    };
  };
  const columns = columnsOf(view.select);
  const produce = allOf(
    view.select.map((select, index) => producer(select, `/select/${index}`, guarded, fail)),
    '/select',
    fail,
  );
  const conditions = (view.where ?? []).map(({ path }, index) => {
    const place = { path, pointer: `/where/${index}/path` };
    return { place, run: guarded(place) };
  });
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
      for (const { place, run } of conditions) {
        const values = run(context, variables).map(plainValue);
        if (values.length > 1 || values.some((value) => typeof value !== 'boolean')) {
          fail(place, 'a condition gives true, false or nothing');
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

function producer(select: SelectDefinition, pointer: string, compile: Compile, fail: Fail): Producer {
  const columns = (select.column ?? []).map((column, index) => {
    const place = { path: column.path, pointer: `${pointer}/column/${index}/path` };
    return { column, place, run: compile(place) };
  });
  const children = (key: 'select' | 'unionAll') =>
    (select[key] ?? []).map((child, index) => producer(child, `${pointer}/${key}/${index}`, compile, fail));
  const own: Producer = (context, variables) => [
    Object.fromEntries(
      columns.map(({ column, place, run }) => [column.name, cell(column, run(context, variables), place, fail)]),
    ),
  ];
  const union = select.unionAll === undefined ? [] : [concatenated(children('unionAll'), `${pointer}/unionAll`, fail)];
  const inner = allOf([own, ...children('select'), ...union], pointer, fail);
  const items = ['forEach', 'forEachOrNull'].flatMap((key) => {
    const path = select[key as 'forEach' | 'forEachOrNull'];
    return path === undefined ? [] : [compile({ path, pointer: `${pointer}/${key}` })];
  })[0];
  const steps = select.repeat?.map((path, index) => compile({ path, pointer: `${pointer}/repeat/${index}` }));
  if (items === undefined && steps === undefined) return inner;
  return (context, variables) => {
    const nodes = items?.(context, variables) ?? descendants(context, variables, steps ?? [], pointer, fail);
    if (nodes.length === 0 && select.forEachOrNull !== undefined) return inner([], { ...variables, rowIndex: 0 });
    return limited(
      nodes.map((node, rowIndex) => () => inner(node, { ...variables, rowIndex })),
      pointer,
      fail,
    );
  };
}

function descendants(
  context: FhirPathNode,
  variables: Variables,
  steps: readonly ViewPath[],
  pointer: string,
  fail: Fail,
): FhirPathNode[] {
  const found: FhirPathNode[] = [];
  const place = { path: 'repeat', pointer: `${pointer}/repeat` };
  const visit = (node: FhirPathNode, depth: number) => {
    // A path such as `$this` finds its own start for ever; no resource is nested so deeply.
    if (depth > 100 || found.length > maxRows) fail(place, 'the paths lead on without end', 'TOO_LARGE');
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

function concatenated(branches: readonly Producer[], pointer: string, fail: Fail): Producer {
  return (context, variables) =>
    limited(
      branches.map((branch) => () => branch(context, variables)),
      pointer,
      fail,
    );
}

/** Rows of all parts one after another; stops at the limit rather than gather what will be refused. */
function limited(parts: readonly (() => PartialRow[])[], pointer: string, fail: Fail): PartialRow[] {
  const rows: PartialRow[] = [];
  for (const part of parts) {
    for (const row of part()) rows.push(row);
    if (rows.length > maxRows) fail({ path: 'select', pointer }, tooMany, 'TOO_LARGE');
  }
  return rows;
}

/** Rows of every part combined with rows of every other. */
function allOf(parts: readonly Producer[], pointer: string, fail: Fail): Producer {
  return (context, variables) => {
    let rows: PartialRow[] = [{}];
    for (const part of parts) {
      const more = part(context, variables);
      if (rows.length * more.length > maxRows) fail({ path: 'select', pointer }, tooMany, 'TOO_LARGE');
      rows = rows.flatMap((row) => more.map((next) => ({ ...row, ...next })));
    }
    return rows;
  };
}

/** A text in an expression may be what somebody is looked up by. */
function withoutTexts(path: string): string {
  return path.replaceAll(/'(?:[^'\\]|\\.)*'/g, "'...'");
}

function cell({ name, collection }: ColumnDefinition, nodes: readonly FhirPathNode[], place: Place, fail: Fail): Cell {
  const values = nodes.map(plainValue).filter((value) => value !== undefined) as Cell[];
  if (collection === true) return values;
  if (values.length > 1) fail(place, `several values for column ${echoedName(name)}, which is not a collection`);
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
