import { readFile } from 'node:fs/promises';
import { buffer } from 'node:stream/consumers';
import { Command, Option } from 'commander';
import { withSuggestion } from '../../kernel/errors.ts';
import { checkLines, checkText, isByLine, type Purpose } from '../check/check-text.ts';
import type { LineFault } from '../convert/convert-line.ts';
import { exitCodes, type Surroundings, UsageError } from './surroundings.ts';

interface Options {
  readonly format: 'text' | 'json';
  readonly for: 'exams' | 'localisation';
}

const purposes: Readonly<Record<Options['for'], Purpose>> = { exams: 'record', localisation: 'localise' };

export function checkCommand({ loadSteps }: Surroundings): Command {
  return new Command('check')
    .description(
      'Check files of exams or of QuestionnaireResponses to their form and list every fault: where it is, what was expected, the nearest known key.',
    )
    .argument('<files...>', 'files of one exam (JSON) or of one exam a line (NDJSON), or - for standard input')
    .addOption(new Option('-f, --format <format>', 'how faults are written').choices(['text', 'json']).default('text'))
    .addOption(
      new Option('--for <endpoint>', 'what the exams are for; a localisation needs no identifier and subject')
        .choices(['exams', 'localisation'])
        .default('exams'),
    )
    .addHelpText(
      'after',
      `
A name that ends in .ndjson or .jsonl is read line by line, one in .json as a whole; else the first line decides. Text is
FILE:LINE POINTER: what was expected, with the place in what was sent; json is one array of {"file", "line", "code", "pointer", "message", "suggestion"}.
Faults go to standard output, the summary to standard error. Exit codes: 0 fine, 1 faults, 2 wrong use.`,
    )
    .action(async (files: readonly string[], options: Options) => {
      const steps = await loadSteps();
      const now = new Date();
      const purpose = purposes[options.for];
      let exams = 0;
      const faults: (LineFault & { readonly file: string })[] = [];
      for (const file of files) {
        const bytes = await bytesOf(file);
        const checked = isByLine(file, bytes)
          ? await checkLines(steps, bytes, purpose, now)
          : checkText(steps, bytes, purpose, now);
        exams += checked.exams;
        faults.push(...checked.faults.map((fault) => ({ file, ...fault })));
      }
      const text = options.format === 'json' ? `${JSON.stringify(faults, null, 2)}\n` : faults.map(inWords).join('');
      process.stdout.write(text);
      const faulty = new Set(faults.map(({ file, line }) => `${file}:${line}`)).size;
      process.stderr.write(`${exams} exams in ${files.length} files, ${faults.length} faults on ${faulty} lines\n`);
      process.exitCode = faults.length === 0 ? exitCodes.fine : exitCodes.faults;
    });
}

async function bytesOf(file: string): Promise<Uint8Array> {
  if (file === '-') return buffer(process.stdin);
  try {
    return await readFile(file);
  } catch {
    throw new UsageError(`There is no file ${file}, or it cannot be read.`);
  }
}

function inWords({ file, line, pointer, ...fault }: LineFault & { readonly file: string }): string {
  return `${file}:${line} ${pointer === '' ? '(whole exam)' : pointer}: ${withSuggestion(fault)}\n`;
}
