import { createReadStream } from 'node:fs';
import { open, readFile } from 'node:fs/promises';
import { Command, Option } from 'commander';
import { nearestKey } from '../../exam/faults/nearest-key.ts';
import { type CompiledView, compileView } from '../../views/compile-view.ts';
import type { LoadedView } from '../../views/load-views.ts';
import { ViewInvalidError } from '../../views/view-errors.ts';
import { type RowFormat, rowFormats } from '../../views/write-rows.ts';
import { fileSink, type Sink, streamSink } from '../convert/sink.ts';
import { tableFromService } from '../view/table-from-service.ts';
import { type TableRun, tableOfFile } from '../view/table-of-file.ts';
import { wholeNumber } from './numbers.ts';
import { authorizationFor, tokenVariable } from './service-token.ts';
import { exitCodes, type Surroundings, UsageError } from './surroundings.ts';

interface Options {
  readonly from?: string;
  readonly patient?: string;
  readonly since?: string;
  readonly output: string;
  readonly format: RowFormat;
  readonly header: boolean;
  readonly limit?: number;
}

export function viewCommand({ loadViews }: Surroundings): Command {
  return new Command('view')
    .description('Make a table of FHIR resources by a ViewDefinition (HL7 SQL on FHIR): of a file, or of a service.')
    .argument('<view>', 'a view that comes with this program, such as power, or the file of a ViewDefinition')
    .argument('[input]', 'resources or Bundles, one a line (NDJSON) or one in a .json; - for standard input')
    .addOption(new Option('--from <url>', 'of the FHIR base of a running service, such as http://127.0.0.1:8080/fhir'))
    .option('--patient <reference>', 'with --from: resources of this patient alone, such as Patient/4711')
    .option('--since <instant>', 'with --from: resources that changed later')
    .option('-o, --output <file>', 'file for the table, or - for standard output', '-')
    .addOption(new Option('-f, --format <format>', 'form of the table').choices(rowFormats).default('csv'))
    .option('--no-header', 'leave out the names of the columns in CSV')
    .addOption(new Option('-n, --limit <number>', 'most rows').argParser(wholeNumber(1, 999_999_999)))
    .addHelpText(
      'after',
      `
The views that come with this program lie in profiles/views. A line that cannot be read or made rows of is told on
standard error by its number, and the others go on. In CSV, text that a spreadsheet would run as a formula gets an
apostrophe in front. ${tokenVariable} holds the token or key for a service that asks for one. Exit codes: 0 fine, 1 some lines or the view were faulty, 2 wrong use.`,
    )
    .action(async (name: string, input: string | undefined, options: Options) => {
      process.exitCode = await view(name, input, options, await loadViews());
    });
}

async function view(
  name: string,
  input: string | undefined,
  options: Options,
  shipped: ReadonlyMap<string, LoadedView>,
): Promise<number> {
  const { from, patient, since } = options;
  if ((input === undefined) === (from === undefined)) throw new UsageError('Name one of an input file and --from URL.');
  if (from === undefined && (patient ?? since) !== undefined) {
    throw new UsageError('--patient and --since go with --from.');
  }
  if (from !== undefined && !(URL.canParse(from) && /^https?:$/.test(new URL(from).protocol))) {
    throw new UsageError('--from takes the FHIR base of a service, such as http://127.0.0.1:8080/fhir.');
  }
  const { definition, compiled } = await viewNamed(name, shipped);
  if (compiled === undefined) return exitCodes.faults;
  const run: TableRun = { ...options, tell: (message) => void process.stderr.write(`${message}\n`) };
  const isFine =
    from === undefined
      ? await withSink(options.output, await inputOf(input ?? '-'), (chunks, sink) =>
          tableOfFile(compiled, chunks, { ...run, isWhole: /\.json$/i.test(input ?? '') }, sink),
        )
      : await withSink(options.output, from, (base, sink) =>
          tableFromService(definition, base, run, sink, authorizationFor(base)),
        );
  return isFine ? exitCodes.fine : exitCodes.faults;
}

interface Found {
  readonly definition: unknown;
  /** Undefined when it has faults, which were told. */
  readonly compiled: CompiledView | undefined;
}

async function viewNamed(name: string, shipped: ReadonlyMap<string, LoadedView>): Promise<Found> {
  const known = shipped.get(name.replaceAll('-', '_'));
  if (known !== undefined) return known;
  let text: string;
  try {
    text = await readFile(name, 'utf8');
  } catch {
    const near = nearestKey(name, shipped.keys());
    const hint = near === undefined ? '' : ` Did you mean ${near}?`;
    const names = [...shipped.keys()].join(', ');
    throw new UsageError(`There is no view and no file of this name. The views: ${names}.${hint}`);
  }
  let definition: unknown;
  try {
    definition = JSON.parse(text);
  } catch {
    throw new UsageError(`The file ${name} is not JSON; a ViewDefinition was expected.`);
  }
  try {
    return { definition, compiled: compileView(definition) };
  } catch (error) {
    if (!(error instanceof ViewInvalidError)) throw error;
    for (const { pointer, message, suggestion } of error.faults) {
      const hint = suggestion === undefined ? '' : ` Did you mean ${suggestion}?`;
      process.stderr.write(`${name} ${pointer === '' ? '(whole view)' : pointer}: ${message}${hint}\n`);
    }
    return { definition, compiled: undefined };
  }
}

async function inputOf(input: string): Promise<AsyncIterable<Uint8Array>> {
  if (input === '-') return process.stdin;
  try {
    const handle = await open(input, 'r');
    return createReadStream('', { fd: handle });
  } catch {
    throw new UsageError(`There is no file ${input}, or it cannot be read.`);
  }
}

/** Opened last, so that wrong use leaves no empty file behind. */
async function withSink<Source>(
  output: string,
  source: Source,
  work: (source: Source, sink: Sink) => Promise<boolean>,
): Promise<boolean> {
  const sink = output === '-' ? streamSink(process.stdout) : fileSink(await openOutput(output), 0);
  try {
    return await work(source, sink);
  } finally {
    await sink.close();
  }
}

async function openOutput(output: string) {
  try {
    return await open(output, 'w', 0o600);
  } catch {
    throw new UsageError(`The file ${output} cannot be written.`);
  }
}
