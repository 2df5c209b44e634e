import { readFileSync } from 'node:fs';
import { join } from 'node:path';

export const openTableNames = ['hpo', 'loinc', 'uberon', 'mondo', 'hl7'] as const;
export type OpenTableName = (typeof openTableNames)[number];

/** A committed list of the codes of one open vocabulary that the project ships. */
export interface OpenTable {
  /** Code system of every row that does not name its own. */
  readonly system: string;
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  /** To be shown wherever the content is. */
  readonly notice: string;
  readonly citation?: string;
  readonly source: string;
  readonly codes: readonly OpenCode[];
}

export interface OpenCode {
  readonly system?: string;
  readonly code: string;
  readonly display: string;
  /** File in which code and display were seen side by side, where the table has more than one source. */
  readonly seenIn?: string;
}

export type OpenTables = Readonly<Record<OpenTableName, OpenTable>>;

export function readOpenTables(rootDir: string): OpenTables {
  const read = (name: OpenTableName): OpenTable =>
    JSON.parse(readFileSync(join(rootDir, 'terminology', 'tables', `${name}.json`), 'utf8'));
  return { hpo: read('hpo'), loinc: read('loinc'), uberon: read('uberon'), mondo: read('mondo'), hl7: read('hl7') };
}
