import { stringify } from 'csv-stringify/sync';
import type { Cell, Row, ViewColumn } from './view-definition.ts';

type Rows = AsyncIterable<Row> | Iterable<Row>;
export const rowFormats = ['csv', 'ndjson', 'json'] as const;
export type RowFormat = (typeof rowFormats)[number];

/** Text is handed on in chunks of about this many characters; no more is held. */
const chunkLength = 16_384;

const numeric = new Set(['integer', 'integer64', 'positiveInt', 'unsignedInt', 'decimal', 'boolean']);

/**
 * Writes rows one after another in constant memory.
 * In CSV, a cell of text that begins with = + - @, a tab or a carriage return gets an apostrophe in front, since
 * spreadsheets would run it as a formula; numbers and booleans stay as they are. Collections become JSON text.
 */
export async function* writeRows(
  rows: Rows,
  columns: readonly ViewColumn[],
  format: RowFormat,
  { header = true }: { readonly header?: boolean } = {},
): AsyncGenerator<string> {
  let pending = '';
  for await (const piece of pieces[format](rows, columns, header)) {
    pending += piece;
    if (pending.length < chunkLength) continue;
    yield pending;
    pending = '';
  }
  if (pending !== '') yield pending;
}

type Pieces = (rows: Rows, columns: readonly ViewColumn[], header: boolean) => AsyncGenerator<string>;

const pieces: Readonly<Record<RowFormat, Pieces>> = {
  async *csv(rows, columns, header) {
    if (header) yield stringify([columns.map(({ name }) => name)]);
    for await (const row of rows) yield stringify([columns.map((column) => csvCell(row[column.name] ?? null, column))]);
  },
  async *ndjson(rows) {
    for await (const row of rows) yield `${JSON.stringify(row)}\n`;
  },
  async *json(rows) {
    let before = '[';
    for await (const row of rows) {
      yield before + JSON.stringify(row);
      before = ',\n';
    }
    yield before === '[' ? '[]' : ']';
  },
};

function csvCell(cell: Cell, { type }: ViewColumn): string {
  if (cell === null) return '';
  const text = typeof cell === 'object' ? JSON.stringify(cell) : String(cell);
  const isText = typeof cell === 'string' && !numeric.has(type ?? 'string');
  return isText && /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
}
