import { createReadStream } from 'node:fs';
import { type FileHandle, open, readFile } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { resolve } from 'node:path';
import { Command, Option } from 'commander';
import { type OutputType, outputTypes } from '../convert/convert-line.ts';
import {
  identify,
  type Journal,
  noProgress,
  openAt,
  type Progress,
  type RunFiles,
  readJournal,
  removeJournal,
  runFiles,
  writeJournal,
} from '../convert/journal.ts';
import { progressBar } from '../convert/progress-bar.ts';
import { runConversion } from '../convert/run-conversion.ts';
import { seenBytes } from '../convert/seen-exams.ts';
import { fileSink, type Sink, streamSink } from '../convert/sink.ts';
import { startWorkers } from '../convert/worker-pool.ts';
import { wholeNumber } from './numbers.ts';
import { exitCodes, type Surroundings, UsageError } from './surroundings.ts';

interface Options {
  readonly out: string;
  readonly faults?: string;
  readonly type: OutputType;
  readonly jobs: number;
  readonly resume: boolean;
}

/** Milliseconds between two entries of the journal. */
const journalEveryMs = 250;

export function convertCommand({ startConvertWorker }: Surroundings): Command {
  return new Command('convert')
    .description(
      'Convert exams to FHIR: NDJSON in, one exam (or QuestionnaireResponse to its form) a line; NDJSON out, one Bundle a line, in the same order.',
    )
    .argument('<input>', 'file of exams as NDJSON, or - for standard input')
    .option('-o, --out <file>', 'file for the output, or - for standard output', '-')
    .option('--faults <file>', 'file for the faults (default: OUT.faults.ndjson; standard error when --out is -)')
    .addOption(
      new Option('-t, --type <type>', 'form of the Bundle; resources: no Bundle, one resource a line')
        .choices(outputTypes)
        .default('transaction'),
    )
    .addOption(
      new Option('-j, --jobs <number>', 'workers; by default one for each core')
        .argParser(wholeNumber(1, 256))
        .default(availableParallelism()),
    )
    .option('--resume', 'go on where a run over the same files was broken off', false)
    .addHelpText(
      'after',
      `
Faults are NDJSON: {"line", "severity", "code", "pointer", "message", "suggestion"}, pointer into what stands on that
line, nothing of its content. A faulty line never stops the others; blank lines are passed over. An identifier that comes
again is a warning, and both exams are converted. With --type resources the software (Device) is written once, first.
While it runs OUT.journal and OUT.seen stand beside the output. Exit codes: 0 fine, 1 some lines had faults, 2 wrong use.`,
    )
    .action(async (input: string, options: Options) => {
      process.exitCode = await convert(input, options, startConvertWorker);
    });
}

async function convert(
  input: string,
  options: Options,
  startWorker: Surroundings['startConvertWorker'],
): Promise<number> {
  if (options.resume && (input === '-' || options.out === '-')) {
    throw new UsageError('--resume needs a file as input and --out with a file.');
  }
  const began = performance.now();
  const pool = startWorkers(startWorker, options.jobs);
  const now = Date.now();
  try {
    const { progress, start } =
      options.out === '-'
        ? await convertToStream(input, options, pool, now)
        : await convertToFile(input, options, pool, now);
    process.stderr.write(`${closingLine(progress, start, (performance.now() - began) / 1000, options.jobs)}\n`);
    return progress.errors === 0 ? exitCodes.fine : exitCodes.faults;
  } finally {
    await pool.stop();
  }
}

type Pool = ReturnType<typeof startWorkers>;
interface Ended {
  readonly progress: Progress;
  readonly start: Progress;
}

async function convertToStream(input: string, options: Options, pool: Pool, now: number): Promise<Ended> {
  const file = input === '-' ? null : await openInput(input);
  const bar = progressBar(file === null ? null : (await file.stat()).size, 0);
  const faults =
    options.faults === undefined ? streamSink(process.stderr) : fileSink(await open(options.faults, 'w', 0o600), 0);
  const progress = await runConversion({
    ...options,
    pool,
    now,
    chunks: file === null ? process.stdin : createReadStream('', { fd: file, start: 0 }),
    output: streamSink(process.stdout),
    faults,
    seenBefore: new Uint8Array(),
    start: noProgress,
    onProgress: async ({ inputOffset }) => bar.update(inputOffset),
  });
  bar.stop();
  await faults.close();
  return { progress, start: noProgress };
}

async function convertToFile(input: string, options: Options, pool: Pool, now: number): Promise<Ended> {
  const files = runFiles(options.out, options.faults);
  const file = input === '-' ? null : await openInput(input);
  const identity =
    file === null
      ? { type: options.type, faultsFile: resolve(files.faults), inputBytes: 0, inputHead: '' }
      : await identify(file, options.type, resolve(files.faults));
  const journal = options.resume ? await readJournal(files.journal) : undefined;
  if (
    journal !== undefined &&
    Object.entries(identity).some(([key, value]) => journal[key as keyof Journal] !== value)
  ) {
    throw new UsageError('The run that was broken off had another input, --type or --faults; --resume needs the same.');
  }
  if (options.resume && journal === undefined) process.stderr.write('No run was broken off here; it starts afresh.\n');
  const start: Progress = journal ?? noProgress;
  const own = { ...identity, now: journal?.now ?? now };
  const { output, faults, seen, seenBefore } = await openRun(files, start);
  const bar = progressBar(file === null ? null : identity.inputBytes, start.inputOffset);
  let written = performance.now();
  const onProgress = async (progress: Progress): Promise<void> => {
    bar.update(progress.inputOffset);
    if (file === null || performance.now() - written < journalEveryMs) return;
    await Promise.all([output.sync(), faults.sync(), seen.sync()]);
    await writeJournal(files.journal, { ...own, ...progress });
    written = performance.now();
  };
  const progress = await runConversion({
    ...options,
    pool,
    now: own.now,
    chunks: file === null ? process.stdin : createReadStream('', { fd: file, start: start.inputOffset }),
    output,
    faults,
    seen,
    seenBefore,
    start,
    onProgress,
  });
  bar.stop();
  await output.sync();
  await Promise.all([output.close(), faults.close(), seen.close()]);
  await removeJournal(files);
  return { progress, start };
}

interface OpenRun {
  readonly output: Sink;
  readonly faults: Sink;
  readonly seen: Sink;
  readonly seenBefore: Uint8Array;
}

/** The files of a run, each cut to what the journal says of it. */
async function openRun(files: RunFiles, start: Progress): Promise<OpenRun> {
  const seenStart = start.exams * seenBytes;
  const open = async (file: string, bytes: number): Promise<Sink> => {
    const handle = await openAt(file, bytes);
    if (handle === null)
      throw new UsageError('The files of the broken-off run are shorter than its journal says; start afresh.');
    return fileSink(handle, bytes);
  };
  // A run that starts afresh leaves no journal of an older one behind.
  if (start === noProgress) await removeJournal(files);
  const output = await open(files.out, start.outputBytes);
  const faults = await open(files.faults, start.faultsBytes);
  const seen = await open(files.seen, seenStart);
  return { output, faults, seen, seenBefore: await readFile(files.seen) };
}

async function openInput(file: string): Promise<FileHandle> {
  try {
    return await open(file, 'r');
  } catch {
    throw new UsageError(`There is no file ${file}, or it cannot be read.`);
  }
}

function closingLine(progress: Progress, start: Progress, seconds: number, jobs: number): string {
  const exams = progress.exams - start.exams;
  const rate = exams / seconds;
  const { errors, warnings } = progress;
  const resumed = start.exams > 0 ? `, after ${start.exams} of the run before` : '';
  return `${exams} exams${resumed}, ${errors} faults, ${warnings} warnings, ${seconds.toFixed(1)} s, ${rate.toFixed(1)} exams/s, ${(rate / jobs).toFixed(1)} a worker`;
}
