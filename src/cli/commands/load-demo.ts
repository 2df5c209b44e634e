import { open } from 'node:fs/promises';
import { Command, InvalidArgumentError, Option } from 'commander';
import { progressBar } from '../convert/progress-bar.ts';
import { fileSink, streamSink } from '../convert/sink.ts';
import { postExams } from '../load-demo/post-exams.ts';
import { type InventedExam, inventExams } from '../simulated/invented-exams.ts';
import { wholeNumber } from './numbers.ts';
import { authorizationFor, tokenVariable } from './service-token.ts';
import { exitCodes, type Surroundings, UsageError } from './surroundings.ts';

interface Options {
  readonly count: number;
  readonly seed: number;
  readonly until: Date;
  readonly to?: string;
  readonly out?: string;
  readonly dataDir?: string;
}

/** Fixed, so that the same seed gives the same bytes on every day. */
const defaultUntil = '2026-01-01';

export function loadDemoCommand(surroundings: Surroundings): Command {
  return new Command('load-demo')
    .description('Make invented exams of invented people, consistent with the anatomy, in any number.')
    .addOption(new Option('-n, --count <number>', 'exams').argParser(wholeNumber(1, 100_000_000)).default(100))
    .addOption(
      new Option('-s, --seed <number>', 'other exams for another seed').argParser(wholeNumber(0, 2 ** 31)).default(1),
    )
    .addOption(
      new Option('--until <date>', 'the exams lie in the two years before this day')
        .argParser(dateOf)
        .default(dateOf(defaultUntil), defaultUntil),
    )
    .addOption(new Option('--to <url>', 'post them to a running service').conflicts(['out', 'dataDir']))
    .addOption(new Option('-o, --out <file>', 'write them as NDJSON, - for standard output').conflicts('dataDir'))
    .option('--data-dir <folder>', 'keep them in the data folder of a service that is not running')
    .addHelpText(
      'after',
      `
Name one of --to, --out and --data-dir. Some exams are corrected or taken back after they are kept; --out has the first
version alone. The same seed and date give the same bytes. Nobody in these exams exists. Exit codes: 0 fine, 1 the
service refused some, 2 wrong use. ${tokenVariable} holds the token or key for a service that asks for one.`,
    )
    .action(async (options: Options) => {
      process.exitCode = await loadDemo(options, surroundings);
    });
}

async function loadDemo(options: Options, { loadModel, startService }: Surroundings): Promise<number> {
  const { count, out, to, dataDir } = options;
  if (out === undefined && to === undefined && dataDir === undefined) {
    throw new UsageError('Name one of --to URL, --out FILE and --data-dir FOLDER.');
  }
  if (to !== undefined && !(URL.canParse(to) && /^https?:$/.test(new URL(to).protocol))) {
    throw new UsageError('--to takes the address of a service, such as http://127.0.0.1:8080.');
  }
  const authorization = to === undefined ? {} : authorizationFor(to);
  const began = performance.now();
  const exams = inventExams(await loadModel(), options);
  const bar = progressBar(count, 0, 'exams');
  const rate = (): string => {
    const seconds = (performance.now() - began) / 1000;
    return `${seconds.toFixed(1)} s, ${(count / seconds).toFixed(1)} exams/s`;
  };
  if (out !== undefined) {
    await writeExams(out, exams, bar.update);
    bar.stop();
    process.stderr.write(`${count} invented exams, ${rate()}\n`);
    return exitCodes.fine;
  }
  const service = to === undefined ? await startService({ DATA_DIR: dataDir, LOG_LEVEL: 'error' }) : undefined;
  try {
    const posted = await postExams((to ?? service?.url ?? '').replace(/\/+$/, ''), exams, bar.update, authorization);
    bar.stop();
    process.stderr.write(
      `${posted.exams} invented exams kept, ${posted.corrections} of them corrected, ${posted.refused} refused, ${rate()}\n`,
    );
    return posted.refused === 0 ? exitCodes.fine : exitCodes.faults;
  } finally {
    await service?.stop();
  }
}

/** Exams that are written at once. */
const writtenTogether = 64;

async function writeExams(
  out: string,
  exams: Iterable<InventedExam>,
  onWritten: (count: number) => void,
): Promise<void> {
  const sink = out === '-' ? streamSink(process.stdout) : fileSink(await open(out, 'w', 0o600), 0);
  let lines: string[] = [];
  let count = 0;
  const flush = async (): Promise<void> => {
    await sink.write(Buffer.from(lines.join(''), 'utf8'));
    lines = [];
    onWritten(count);
  };
  for (const { exam } of exams) {
    lines.push(`${JSON.stringify(exam)}\n`);
    count += 1;
    if (lines.length >= writtenTogether) await flush();
  }
  await flush();
  await sink.close();
}

function dateOf(value: string): Date {
  const date = /^\d{4}-\d{2}-\d{2}$/.test(value) ? new Date(`${value}T00:00:00Z`) : new Date(Number.NaN);
  if (Number.isNaN(date.getTime())) throw new InvalidArgumentError('Expected a date such as 2026-01-01.');
  return date;
}
