import { readFileSync } from 'node:fs';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import type { Exam } from '../../src/exam/exam.ts';
import { createExamReader } from '../../src/exam/read-exam.ts';
import { hypotheses, noLesionIndex } from '../../src/localisation/hypotheses/hypotheses.ts';
import { StateColumns } from '../../src/localisation/inference/columns.ts';
import { Coverage } from '../../src/localisation/inference/coverage.ts';
import { gatherEvidence } from '../../src/localisation/inference/evidence.ts';
import { infer } from '../../src/localisation/inference/infer.ts';
import { Priors } from '../../src/localisation/inference/prior.ts';
import { scoreHypotheses } from '../../src/localisation/inference/score.ts';
import { groupSites } from '../../src/localisation/inference/site-groups.ts';
import { createLocaliser } from '../../src/localisation/localise.ts';
import { contextOf } from '../../src/localisation/observation/context.ts';
import { examVariants } from './exam-variants.ts';
import { median, table } from './statistics.ts';

/** Varied examples beside the pictures of two files of tests/cases: more than 500 exams together. */
const variants = 400;
const rounds = 5;

/** One finding as the bare sum takes it: the state of each hypothesis, and what a state adds. */
interface Plain {
  readonly states: Uint8Array;
  readonly gains: Float32Array;
}

interface Case {
  readonly exam: Exam;
  readonly matrix: readonly Plain[];
  /** Whether the engine looks for a second site. */
  readonly isSeveral: boolean;
}

/** Every exam once with everything that is not the bare sum and everything that is; prints figures side by side. */
export function reportLocalisation(): void {
  const before = memory();
  const localiser = createLocaliser();
  for (const _ of localiser.prepare());
  const after = memory();
  const { cases, stateBytes } = prepared();
  const data = cases.reduce((sum, { matrix }) => sum + matrix.length, 0) / cases.length;
  console.log(
    `Localisation alone, ${cases.length} different exams, ${hypotheses.length} hypotheses x ${data.toFixed(0)} data each:`,
  );
  const rows = [['  exams', 'bare sum', 'localisation', 'ratio (range)']];
  const kinds = [
    ['one site', cases.filter(({ isSeveral }) => !isSeveral)],
    ['search for several', cases.filter(({ isSeveral }) => isSeveral)],
    ['all', cases],
  ] as const;
  for (const [name, some] of kinds) {
    const { floor, own, ratios } = inTurns(some, (exam) => localiser.localise(exam));
    const range = `${median(ratios).toFixed(1)} (${Math.min(...ratios).toFixed(1)}-${Math.max(...ratios).toFixed(1)})`;
    rows.push([`  ${name} (${some.length})`, `${floor.toFixed(0)} us`, `${own.toFixed(0)} us`, range]);
  }
  console.log(table(rows));
  const matrix = hypotheses.length * data * Float32Array.BYTES_PER_ELEMENT;
  console.log(
    `  memory: states of ${hypotheses.length} hypotheses ${megabytes(stateBytes)}; whole engine, compiled: heap ${megabytes(after.heap - before.heap)}, outside the heap ${megabytes(after.outside - before.outside)}, RSS ${megabytes(after.rss - before.rss)}; one exam as a plain Float32 matrix ${megabytes(matrix)}\n`,
  );
}

/** Floor and engine take the same exam in turn, so that what else the machine does falls on both. */
function inTurns(
  cases: readonly Case[],
  localise: (exam: Exam) => unknown,
): { readonly floor: number; readonly own: number; readonly ratios: readonly number[] } {
  const scores = new Float32Array(hypotheses.length);
  let sink: unknown;
  const round = () => {
    let floor = 0;
    let own = 0;
    for (const { exam, matrix } of cases) {
      const started = performance.now();
      bareSum(scores, matrix);
      const between = performance.now();
      sink = localise(exam);
      floor += between - started;
      own += performance.now() - between;
    }
    return { floor: (floor * 1000) / cases.length, own: (own * 1000) / cases.length };
  };
  round();
  const all = Array.from({ length: rounds }, round);
  if (sink === Symbol.for('never') || scores[0] === Number.POSITIVE_INFINITY) throw new Error('unreachable');
  return {
    floor: median(all.map(({ floor }) => floor)),
    own: median(all.map(({ own }) => own)),
    ratios: all.map(({ floor, own }) => own / floor),
  };
}

function bareSum(scores: Float32Array, matrix: readonly Plain[]): void {
  scores.fill(0);
  for (const { states, gains } of matrix) {
    for (let index = 0; index < states.length; index += 1)
      scores[index] = (scores[index] ?? 0) + (gains[states[index] ?? 0] ?? 0);
  }
}

function prepared(): { readonly cases: readonly Case[]; readonly stateBytes: number } {
  const columns = new StateColumns(hypotheses, noLesionIndex);
  const sites = groupSites(hypotheses);
  const priors = new Priors(hypotheses);
  const coverage = new Coverage(hypotheses);
  const cases = allExams().map((exam): Case => {
    const logPrior = priors.logWeights(exam);
    coverage.discount(logPrior, exam);
    const data = gatherEvidence(exam.findings, columns);
    const scored = scoreHypotheses(data, columns, contextOf(exam), logPrior, noLesionIndex);
    const { combinations } = infer(hypotheses, sites, scored, logPrior, 0);
    const matrix = scored.data.map(({ states, logs, weight }) => ({
      states,
      gains: Float32Array.from(logs, (log) => weight * log),
    }));
    return { exam, matrix, isSeveral: combinations.length > 0 };
  });
  return { cases, stateBytes: columns.stateBytes() };
}

function allExams(): readonly Exam[] {
  const reader = createExamReader();
  const now = new Date();
  const pictures = ['pictures-one', 'pictures-two'].flatMap((name) =>
    readFileSync(new URL(`../cases/${name}.ndjson`, import.meta.url), 'utf8')
      .split('\n')
      .filter((line) => line !== '')
      .map((line) => (JSON.parse(line) as { readonly exam: unknown }).exam),
  );
  return [...pictures, ...examVariants(variants)].map((body) => reader.read(body, { purpose: 'localise', now }));
}

function memory(): { readonly rss: number; readonly heap: number; readonly outside: number } {
  setFlagsFromString('--expose-gc');
  (runInNewContext('gc') as () => void)();
  const { rss, heapUsed, arrayBuffers } = process.memoryUsage();
  return { rss, heap: heapUsed, outside: arrayBuffers };
}

function megabytes(bytes: number): string {
  return `${(bytes / 1e6).toFixed(1)} MB`;
}
