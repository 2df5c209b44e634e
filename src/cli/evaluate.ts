import { writeFileSync } from 'node:fs';
import { createExamReader } from '../exam/read-exam.ts';
import { createLocaliser } from '../localisation/localise.ts';
import { findCaseFiles } from './evaluate/case-files.ts';
import { faultText } from './evaluate/evaluation-case.ts';
import { judge } from './evaluate/judge.ts';
import { help, readOptions } from './evaluate/options.ts';
import { readCaseFiles } from './evaluate/read-case-file.ts';
import { reportFigures, reportMisses } from './evaluate/report.ts';

/** `npm run evaluate -- [FOLDER] [options]`: how often the localisation is right, for a person; `--help` says more. */

const width = Math.max(process.stdout.columns ?? 150, 100);

function evaluate(words: readonly string[]): void {
  const options = readOptions(words);
  if (options.help) {
    print(help);
    return;
  }
  const reader = createExamReader();
  const { cases, faults } = readCaseFiles(findCaseFiles(options.folder), { reader, now: new Date() });
  if (faults.length > 0) throw new Error(faults.map(faultText).join('\n'));
  const localiser = createLocaliser();
  const judgements = cases.map((one) => judge(one, localiser.localise(one.exam)));
  print(reportFigures(judgements, options.folder));
  if (!options.onlyFigures && options.misses > 0) print(`\n${reportMisses(judgements, options.misses, width)}`);
  if (options.json !== undefined) writeFileSync(options.json, '');
}

function print(text: string): void {
  process.stdout.write(`${text}\n`);
}

try {
  evaluate(process.argv.slice(2));
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exit(1);
}
