import type { CompiledView } from './compile-view.ts';
import type { Cell, ViewColumn } from './view-definition.ts';

export type SqlDialect = 'postgres' | 'sqlite';

/** Schema of the tables of views, apart from the tables of the store. SQLite has none, so it becomes a prefix there. */
export const viewSchema = 'views';

type Shape = Pick<CompiledView, 'name' | 'columns'>;

/** Every type not named here is text: dates and times may be partial (`2026-03`), which no type of SQL keeps. */
const sqlTypes: Readonly<Record<SqlDialect, Readonly<Record<string, string>>>> = {
  postgres: {
    boolean: 'boolean',
    decimal: 'numeric',
    instant: 'timestamptz',
    integer: 'bigint',
    integer64: 'bigint',
    positiveInt: 'bigint',
    unsignedInt: 'bigint',
  },
  // SQLite keeps booleans as 0 and 1, and a decimal as the number that JSON has.
  sqlite: {
    boolean: 'integer',
    decimal: 'real',
    integer: 'integer',
    integer64: 'integer',
    positiveInt: 'integer',
    unsignedInt: 'integer',
  },
};

/** Columns by which tables are joined, and those by which rows are looked for. */
const indexed = /^(exam_key|patient_key|code|[a-z]+_code|effective|occurrence|authored_on)$/;

/** Name of the table of a view, quoted and with its schema. */
export function viewTableName(name: string, dialect: SqlDialect): string {
  return dialect === 'postgres' ? `${quoted(viewSchema)}.${quoted(name)}` : quoted(`${viewSchema}_${name}`);
}

/** Quoted names of the columns with their types of SQL; collections are jsonb in PostgreSQL, JSON text in SQLite. */
export function columnTypes({ columns }: Shape, dialect: SqlDialect): Readonly<Record<string, string>> {
  const typeOf = ({ collection, type }: ViewColumn) =>
    (collection ? dialect === 'postgres' && 'jsonb' : sqlTypes[dialect][type ?? '']) || 'text';
  return Object.fromEntries(columns.map((column) => [quoted(column.name), typeOf(column)]));
}

/** Statement that makes the table of a view, one column each. */
export function createTableSql(view: Shape, dialect: SqlDialect): string {
  const lines = Object.entries(columnTypes(view, dialect)).map(([name, type]) => `  ${name} ${type}`);
  return `CREATE TABLE ${viewTableName(view.name, dialect)} (\n${lines.join(',\n')}\n)`;
}

/** Statements that make the indexes of a view's table, where it has the columns. */
export function createIndexesSql({ name, columns }: Shape, dialect: SqlDialect): readonly string[] {
  const table = viewTableName(name, dialect);
  return columns
    .filter((column) => indexed.test(column.name))
    .map((column) => {
      const index = quoted(`${viewSchema}_${name}_by_${column.name}`);
      return `CREATE INDEX ${index} ON ${table} (${quoted(column.name)})`;
    });
}

/** Statements that put the view's own words beside its table and columns; SQLite has no place for them. */
export function describeTableSql(view: Shape, description: string | undefined): readonly string[] {
  const table = viewTableName(view.name, 'postgres');
  return [
    ...(description === undefined ? [] : [`COMMENT ON TABLE ${table} IS ${literal(description)}`]),
    ...view.columns.flatMap(({ name, description: words }) =>
      words === undefined ? [] : [`COMMENT ON COLUMN ${table}.${quoted(name)} IS ${literal(words)}`],
    ),
  ];
}

/** A cell as the driver of a database takes it. */
export function sqlValue(cell: Cell, dialect: SqlDialect): string | number | boolean | null {
  if (typeof cell === 'object' && cell !== null) return JSON.stringify(cell);
  return dialect === 'sqlite' && typeof cell === 'boolean' ? Number(cell) : cell;
}

function quoted(name: string): string {
  return `"${name.replaceAll('"', '""')}"`;
}

/** A text of SQL, read the same whatever the server says of backslashes. */
function literal(text: string): string {
  const escaped = text.replaceAll("'", "''");
  return text.includes('\\') ? `E'${escaped.replaceAll('\\', '\\\\')}'` : `'${escaped}'`;
}
