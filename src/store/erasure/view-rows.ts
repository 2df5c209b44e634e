import sql, { join, raw } from 'sql-template-tag';
import type { Session } from '../engine.ts';

/** Columns of the tables of views that hold the key of a resource. */
const keyColumns = /_key$/;

/**
 * Removes the rows that views have of resources, where the tables of views are there.
 * @param addresses such as `Observation/ID`; a key is this, or the id alone
 */
export async function removeViewRows(session: Session, addresses: readonly string[]): Promise<void> {
  const columns = await session.all<{ table: string; column: string }>(
    session.dialect === 'postgres'
      ? sql`SELECT format('%I.%I', table_schema, table_name) AS "table", column_name AS "column"
            FROM information_schema.columns WHERE table_schema = 'views'`
      : sql`SELECT '"' || replace(m.name, '"', '""') || '"' AS "table", c.name AS "column"
            FROM sqlite_schema AS m JOIN pragma_table_info(m.name) AS c
            WHERE m.type = 'table' AND m.name LIKE 'views\\_%' ESCAPE '\\'`,
  );
  const keys = [...new Set(addresses.flatMap((address) => [address, address.slice(address.indexOf('/') + 1)]))];
  for (const { table, column } of columns.filter(({ column }) => keyColumns.test(column))) {
    for (let start = 0; start < keys.length; start += keysOfStatement) {
      const group = join(keys.slice(start, start + keysOfStatement));
      await session.run(sql`DELETE FROM ${raw(table)} WHERE ${raw(`"${column}"`)} IN (${group})`);
    }
  }
}

const keysOfStatement = 400;
