import { writeFileSync } from 'node:fs';
import { createExamReader } from '../exam/read-exam.ts';
import { createLocaliser } from '../localisation/localise.ts';
import { modelVersion } from '../localisation/model-version.ts';
import { createAssessor } from '../summary/assess.ts';
import { casesBelow } from './evaluate/case-files.ts';
import { judge } from './evaluate/judge.ts';
import { expectsAdvice, judgeAdvice } from './evaluate/judge-advice.ts';
import { help, readOptions } from './evaluate/options.ts';
import { reportFigures, reportMisses } from './evaluate/report.ts';
import { reportAdvice, reportAdviceMisses, reportFlags } from './evaluate/report-advice.ts';
import { reportSequential, reportSimulation } from './evaluate/report-simulation.ts';
import { resultsOf } from './evaluate/results.ts';
import { examineInOrder } from './evaluate/sequential.ts';
import { simulate } from './evaluate/simulate.ts';
import { simulationModel } from './simulated/simulated-patient.ts';

/** `npm run evaluate -- [FOLDER] [options]`: how often the localisation is right, for a person; `--help` says more. */

const width = Math.max(process.stdout.columns ?? 150, 100);

function evaluate(words: readonly string[]): void {
  const options = readOptions(words);
  if (options.help) {
    print(help);
    return;
  }
  const reader = createExamReader();
  const cases = casesBelow(options.folder, reader);

  const localiser = createLocaliser();
  const assessor = createAssessor(localiser);
  const answered = cases.map((one) => ({ one, answer: assessor.assess(one.exam) }));
  const judgements = answered
    .filter(({ one: { expect } }) => expect.sites.length > 0 || expect.conclusions !== undefined)
    .map(({ one, answer }) => judge(one, answer));
  const advice = answered.filter(({ one }) => expectsAdvice(one)).map(({ one, answer }) => judgeAdvice(one, answer));
  print(reportFigures(judgements, options.folder));
  if (advice.length > 0) print(`\n${reportAdvice(advice, options.folder)}`);
  if (advice.some(({ flags }) => flags !== null)) print(`\n${reportFlags(advice)}`);
  if (!options.onlyFigures && options.misses > 0) {
    print(`\n${reportMisses(judgements, options.misses, width)}`);
    if (advice.length > 0) print(`\n${reportAdviceMisses(advice, options.misses, width)}`);
  }

  const model = simulationModel(reader);
  const simulation = options.simulate === 0 ? null : simulate(model, localiser, options.simulate, options.seed);
  if (simulation !== null) print(`\n${reportSimulation(simulation, options.seed)}`);
  const sequential =
    options.sequential === 0 ? null : examineInOrder(model, localiser, options.sequential, options.seed);
  if (sequential !== null) print(`\n${reportSequential(sequential, options.seed)}`);

  if (options.json !== undefined) {
    const results = resultsOf({ judgements, advice, simulation, sequential }, { ...options, modelVersion });
    writeFileSync(options.json, `${JSON.stringify(results, null, 2)}\n`);
  }
}

function print(text: string): void {
  process.stdout.write(`${text}\n`);
}

// Who reads only the first lines, as `| head` does, has not met a fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => process.exit(error.code === 'EPIPE' ? 0 : 1));

try {
  evaluate(process.argv.slice(2));
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exit(1);
}
