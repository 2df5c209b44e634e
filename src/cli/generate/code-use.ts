import { type OpenCode, type OpenTableName, type OpenTables, openTableNames } from './open-tables.ts';

/** One place of the project that names an open code. */
export interface CodeUse {
  readonly table: OpenTableName;
  /** Only for HL7, whose table has codes of several systems. */
  readonly system?: string;
  readonly code: string;
  readonly display: string;
  /** For people: which row names it. */
  readonly where: string;
}

/**
 * Every disagreement between the codes in use and the committed tables, in words: a code that no table has, one that has
 * another name there, and one that a table has but nothing uses.
 */
export function codeUseProblems(uses: readonly CodeUse[], tables: OpenTables): string[] {
  const problems: string[] = [];
  for (const name of openTableNames) {
    const table = tables[name];
    const keyOf = (row: Pick<OpenCode, 'system' | 'code'>) => `${row.system ?? table.system}|${row.code}`;
    const rows = new Map(table.codes.map((row) => [keyOf(row), row]));
    const unused = new Set(rows.keys());
    for (const use of uses.filter((candidate) => candidate.table === name)) {
      const row = rows.get(keyOf(use));
      unused.delete(keyOf(use));
      if (!row) problems.push(`${use.where}: ${use.code} "${use.display}" is not in terminology/tables/${name}.json`);
      else if (row.display !== use.display) {
        problems.push(`${use.where}: ${use.code} is called "${use.display}", but "${row.display}" in ${name}.json`);
      }
    }
    for (const key of unused) problems.push(`terminology/tables/${name}.json: nothing uses ${key}`);
  }
  return problems;
}
