import { buffer } from 'node:stream/consumers';
import type { CompiledView } from '../../views/compile-view.ts';
import { runViewOver } from '../../views/run-view.ts';
import type { Row } from '../../views/view-definition.ts';
import { type RowFormat, writeRows } from '../../views/write-rows.ts';
import { UsageError } from '../commands/surroundings.ts';
import { readLines } from '../convert/read-lines.ts';
import type { Sink } from '../convert/sink.ts';

export interface TableRun {
  readonly format: RowFormat;
  readonly header: boolean;
  /** Most rows. */
  readonly limit?: number;
  readonly patient?: string;
  readonly since?: string;
  /** Takes what people should know; never the content of a resource. */
  readonly tell: (message: string) => void;
}

/** Longest line in bytes, which is the most that is held: a Bundle of a very long examination has a few MiB. */
const longestLineBytes = 64 * 1024 * 1024;

/**
 * The table of a view over resources or Bundles, one a line, or the one that the whole input is.
 * @returns whether every line could be made rows of
 * @throws UsageError when a line is too long to be read
 */
export async function tableOfFile(
  view: CompiledView,
  chunks: AsyncIterable<Uint8Array>,
  { format, header, limit = Number.POSITIVE_INFINITY, isWhole, tell }: TableRun & { readonly isWhole: boolean },
  sink: Sink,
): Promise<boolean> {
  let faults = 0;
  async function* rows(): AsyncGenerator<Row> {
    let left = limit;
    for await (const item of runViewOver(isWhole ? wholeOf(chunks) : linesOf(chunks), view)) {
      if ('fault' in item) {
        faults += 1;
        tell(`line ${item.fault.line}: ${item.fault.message}`);
        continue;
      }
      yield item.row;
      left -= 1;
      if (left === 0) return;
    }
  }
  for await (const text of writeRows(rows(), view.columns, format, { header })) {
    await sink.write(Buffer.from(text, 'utf8'));
  }
  return faults === 0;
}

async function* linesOf(chunks: AsyncIterable<Uint8Array>): AsyncGenerator<string> {
  for await (const { number, bytes } of readLines(chunks, longestLineBytes)) {
    if (bytes === null) throw new UsageError(`Line ${number} is longer than ${longestLineBytes} bytes.`);
    yield Buffer.from(bytes).toString('utf8');
  }
}

async function* wholeOf(chunks: AsyncIterable<Uint8Array>): AsyncGenerator<string> {
  yield (await buffer(chunks)).toString('utf8');
}
