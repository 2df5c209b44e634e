import type { BatchAnswer } from './convert-batch.ts';
import { type LineFault, longestLineBytes, type OutputType } from './convert-line.ts';
import type { Progress } from './journal.ts';
import { type Line, readLines } from './read-lines.ts';
import { SeenExams, seenBytes } from './seen-exams.ts';
import type { Sink } from './sink.ts';
import type { WorkerPool } from './worker-pool.ts';

export interface Conversion {
  /** The input from `start.inputOffset` on. */
  readonly chunks: AsyncIterable<Uint8Array>;
  readonly type: OutputType;
  readonly now: number;
  readonly jobs: number;
  readonly pool: WorkerPool;
  readonly output: Sink;
  readonly faults: Sink;
  /** The record of the exams met, and what it holds already. */
  readonly seen?: Sink;
  readonly seenBefore: Uint8Array;
  readonly start: Progress;
  /** Called at times when everything counted is written. */
  readonly onProgress: (progress: Progress) => Promise<void>;
}

/** A batch is large enough to make the way to a worker cheap, and small enough to keep the order in little memory. */
const batchLines = 16;
const batchBytes = 256 * 1024;
const batchesPerWorker = 3;

interface Batch {
  readonly lines: readonly Line[];
  readonly answer: Promise<BatchAnswer>;
}

/**
 * Converts lines on all workers and writes in the order of the input; reads on only while few batches are under way.
 * @returns how far it came: all the way
 */
export async function runConversion(conversion: Conversion): Promise<Progress> {
  const { pool, type, now, jobs, start } = conversion;
  const write = createWriter(conversion);
  const underWay: Batch[] = [];
  let progress = start;
  const writeNext = async (): Promise<void> => {
    const batch = underWay.shift();
    if (batch === undefined) return;
    progress = await write(progress, batch.lines, await batch.answer);
    await conversion.onProgress(progress);
  };
  const lines = readLines(conversion.chunks, longestLineBytes, { offset: start.inputOffset, lines: start.lines });
  for await (const batch of inBatches(lines)) {
    const answer = pool.run({ type, now, lines: batch.map(({ number, bytes }) => ({ number, bytes })) });
    // A failure is met where its turn comes; until then it is no unhandled one.
    answer.catch(() => {});
    underWay.push({ lines: batch, answer });
    if (underWay.length >= jobs * batchesPerWorker) await writeNext();
  }
  while (underWay.length > 0) await writeNext();
  return progress;
}

async function* inBatches(lines: AsyncIterable<Line>): AsyncGenerator<readonly Line[]> {
  let batch: Line[] = [];
  let bytes = 0;
  for await (const line of lines) {
    batch.push(line);
    bytes += line.bytes?.length ?? 0;
    if (batch.length < batchLines && bytes < batchBytes) continue;
    yield batch;
    batch = [];
    bytes = 0;
  }
  if (batch.length > 0) yield batch;
}

function createWriter({ output, faults, seen, seenBefore }: Conversion) {
  const exams = new SeenExams();
  const record = new DataView(seenBefore.buffer, seenBefore.byteOffset, seenBefore.byteLength);
  for (let at = 0; at < seenBefore.length; at += seenBytes) exams.meet(record.getFloat64(at), record.getUint32(at + 8));

  return async (before: Progress, lines: readonly Line[], answer: BatchAnswer): Promise<Progress> => {
    const warnings = answer.exams.flatMap(({ key, line }) => {
      const earlier = exams.meet(key, line);
      return earlier === undefined ? [] : [repeated(line, earlier)];
    });
    const told = [...answer.faults, ...warnings].sort((a, b) => a.line - b.line);
    const faultBytes = Buffer.from(told.map((fault) => `${JSON.stringify(fault)}\n`).join(''), 'utf8');
    const isFirst = before.exams === 0 && answer.exams.length > 0;
    const device = Buffer.from(isFirst && answer.device !== undefined ? `${answer.device}\n` : '', 'utf8');
    await output.write(device);
    await output.write(answer.output);
    await faults.write(faultBytes);
    await seen?.write(recordOf(answer.exams));
    const last = lines.at(-1);
    return {
      inputOffset: last?.end ?? before.inputOffset,
      lines: last?.number ?? before.lines,
      outputBytes: before.outputBytes + device.length + answer.output.length,
      faultsBytes: before.faultsBytes + faultBytes.length,
      exams: before.exams + answer.exams.length,
      errors: before.errors + answer.faults.length,
      warnings: before.warnings + warnings.length,
    };
  };
}

function recordOf(exams: BatchAnswer['exams']): Uint8Array {
  const bytes = new Uint8Array(exams.length * seenBytes);
  const view = new DataView(bytes.buffer);
  exams.forEach(({ key, line }, place) => {
    view.setFloat64(place * seenBytes, key);
    view.setUint32(place * seenBytes + 8, line);
  });
  return bytes;
}

/** Both are converted: their resources have the same ids, and which of the two is right is for the sender to say. */
function repeated(line: number, earlier: number): LineFault {
  const message = `The exam on line ${earlier} has the same identifier, so the resources of both have the same ids.`;
  return { line, severity: 'warning', code: 'IDENTIFIER_IN_USE', pointer: '/identifier', message };
}
