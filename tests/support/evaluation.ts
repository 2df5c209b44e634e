import { relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { findCaseFiles } from '../../src/cli/evaluate/case-files.ts';
import { type EvaluationCase, faultText } from '../../src/cli/evaluate/evaluation-case.ts';
import { type Figures, figuresOf } from '../../src/cli/evaluate/figures.ts';
import { type Judgement, judge } from '../../src/cli/evaluate/judge.ts';
import { readCaseFiles } from '../../src/cli/evaluate/read-case-file.ts';
import { createExamReader } from '../../src/exam/read-exam.ts';
import { createLocaliser } from '../../src/localisation/localise.ts';

const tests = fileURLToPath(new URL('..', import.meta.url));
const reading = { reader: createExamReader(), now: new Date('2026-12-31T00:00:00Z') };
const localiser = createLocaliser();

/** The cases of a file or folder below `tests`. */
export function casesBelow(path: string): readonly EvaluationCase[] {
  const files = findCaseFiles(`${tests}${path}`).map(({ file, text }) => ({ file: relative(tests, file), text }));
  const { cases, faults } = readCaseFiles(files, reading);
  if (faults.length > 0) throw new Error(faults.map(faultText).join('\n'));
  return cases;
}

/** The figures of a file or folder of cases below `tests`, and the cases behind them. */
export function evaluate(path: string): { readonly figures: Figures; readonly judgements: readonly Judgement[] } {
  const judgements = casesBelow(path).map((one) => judge(one, localiser.localise(one.exam)));
  return { figures: figuresOf(judgements), judgements };
}
