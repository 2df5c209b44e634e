import { codedResults } from './coded-results.ts';
import { quantityResults } from './quantity-results.ts';
import type { ResultRow } from './result-row.ts';

export type { CodedResult, QuantityResult, ResultRow } from './result-row.ts';

/** Every investigation whose result may be sent with an exam, measured ones first. */
export const resultRows: readonly ResultRow[] = [...quantityResults, ...codedResults];

export const resultByKey: ReadonlyMap<string, ResultRow> = new Map(resultRows.map((row) => [row.key, row]));

/** LOINC code to result; each code belongs to one result. */
export const resultByLoinc: ReadonlyMap<string, ResultRow> = new Map(
  resultRows.flatMap((row) => row.loinc.map(({ code }) => [code, row] as const)),
);
