import type { CompiledView } from './compile-view.ts';

export type SqlDialect = 'postgres' | 'sqlite';

/** Schema of the tables of views, apart from the tables of the store. SQLite has none, so it becomes a prefix there. */
export const viewSchema = 'views';

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

/** Statement that makes the table of a view, one column each; collections are jsonb in PostgreSQL, JSON text in SQLite. */
export function createTableSql({ name, columns }: Pick<CompiledView, 'name' | 'columns'>, dialect: SqlDialect): string {
  const lines = columns.map((column) => {
    const type = column.collection ? (dialect === 'postgres' ? 'jsonb' : 'text') : sqlTypes[dialect][column.type ?? ''];
    return `  ${quoted(column.name)} ${type ?? 'text'}`;
  });
  const table = dialect === 'postgres' ? `${quoted(viewSchema)}.${quoted(name)}` : quoted(`${viewSchema}_${name}`);
  return `CREATE TABLE ${table} (\n${lines.join(',\n')}\n)`;
}

function quoted(name: string): string {
  return `"${name.replaceAll('"', '""')}"`;
}
