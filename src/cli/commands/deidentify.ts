import { randomBytes } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { open, readFile, writeFile } from 'node:fs/promises';
import { Command } from 'commander';
import { deidentifyLine, type ReadSent } from '../../deidentify/line.ts';
import { createPseudonyms, leastKeyBytes, type Pseudonyms } from '../../deidentify/pseudonyms.ts';
import { readSent } from '../convert/read-exam-line.ts';
import { isBlank, readLines } from '../convert/read-lines.ts';
import { fileSink, type Sink, streamSink } from '../convert/sink.ts';
import { exitCodes, type Surroundings, UsageError } from './surroundings.ts';

interface Options {
  readonly key?: string;
  readonly newKey?: string;
  readonly out: string;
}

/** Longest line in bytes: a Bundle of a very long examination has a few MiB. */
const longestLineBytes = 64 * 1024 * 1024;

export function deidentifyCommand({ loadSteps }: Surroundings): Command {
  return new Command('deidentify')
    .description(
      'Take out of exams or resources what names a person, for research: pseudonyms, moved dates, no free text.',
    )
    .argument(
      '[input]',
      'exams (as QuestionnaireResponses too), resources or Bundles, one a line (NDJSON), or - for standard input',
    )
    .option('-k, --key <file>', 'the key of the pseudonyms; the same key always gives the same ones')
    .option('--new-key <file>', 'make a key, in a file that must not be there yet, and do nothing else')
    .option('-o, --out <file>', 'file for the output, or - for standard output', '-')
    .addHelpText(
      'after',
      `
Subjects, exams, encounters and ids get pseudonyms by a keyed hash; all times of a subject move by the same span of up to a
year into the past; ages above 90 become 90. Only elements known to hold codes, values, references or times are kept. Who
has the key can work the pseudonyms out again: keep it apart from the output and destroy it when nobody need do that. Rare
findings can point to a person even so. Exit codes: 0 fine, 1 some lines had faults and were left out, 2 wrong use.`,
    )
    .action(async (input: string | undefined, options: Options) => {
      if (options.newKey !== undefined) return makeKey(options.newKey);
      if (options.key === undefined)
        throw new UsageError('Name the key with --key FILE, or make one with --new-key FILE.');
      if (input === undefined) throw new UsageError('Name an input file, or - for standard input.');
      const pseudonyms = createPseudonyms(await readKey(options.key));
      const steps = await loadSteps();
      const now = new Date();
      const read = (sent: unknown) => readSent(steps, sent, { purpose: 'record', now });
      const chunks = input === '-' ? process.stdin : createReadStream('', { fd: await opened(input, 'r') });
      const sink = options.out === '-' ? streamSink(process.stdout) : fileSink(await opened(options.out, 'w'), 0);
      try {
        process.exitCode = await deidentify(chunks, pseudonyms, read, sink);
      } finally {
        await sink.close();
      }
    });
}

async function deidentify(
  chunks: AsyncIterable<Uint8Array>,
  pseudonyms: Pseudonyms,
  read: ReadSent,
  sink: Sink,
): Promise<number> {
  const counts = { written: 0, omitted: 0, faults: 0 };
  for await (const { number, bytes } of readLines(chunks, longestLineBytes)) {
    if (bytes === null) throw new UsageError(`Line ${number} is longer than ${longestLineBytes} bytes.`);
    if (isBlank(bytes)) continue;
    const result = deidentifyLine(Buffer.from(bytes).toString('utf8'), pseudonyms, read);
    if ('fault' in result) {
      counts.faults += 1;
      process.stderr.write(`line ${number}: ${result.fault} It is left out.\n`);
      continue;
    }
    counts.written += result.lines.length;
    counts.omitted += result.omitted;
    await sink.write(Buffer.from(result.lines.map((line) => `${line}\n`).join(''), 'utf8'));
  }
  const { written, omitted, faults } = counts;
  process.stderr.write(
    `${written} exams or resources written, ${omitted} of types without use for research left out, ${faults} faults\n`,
  );
  return faults === 0 ? exitCodes.fine : exitCodes.faults;
}

async function makeKey(file: string): Promise<void> {
  try {
    await writeFile(file, `${randomBytes(leastKeyBytes).toString('base64')}\n`, { flag: 'wx', mode: 0o600 });
  } catch {
    throw new UsageError(`The file ${file} is there already or cannot be written.`);
  }
}

async function readKey(file: string): Promise<Buffer> {
  let text: string;
  try {
    text = await readFile(file, 'utf8');
  } catch {
    throw new UsageError(`There is no file ${file}, or it cannot be read.`);
  }
  const key = Buffer.from(text.trim(), 'base64');
  if (!/^[A-Za-z0-9+/]+={0,2}$/.test(text.trim()) || key.length < leastKeyBytes) {
    throw new UsageError(`The file ${file} is no key: at least ${leastKeyBytes} random bytes in Base64 were expected.`);
  }
  return key;
}

async function opened(file: string, flags: 'r' | 'w') {
  try {
    return await open(file, flags, 0o600);
  } catch {
    throw new UsageError(`The file ${file} cannot be ${flags === 'r' ? 'read' : 'written'}.`);
  }
}
