import { closeSync, fdatasyncSync, mkdtempSync, openSync, rmSync, statSync, writeSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { createExamSteps } from '../../src/context.ts';
import { examVariants } from './exam-variants.ts';
import { type Comparison, compare } from './http.ts';
import { reportLocalisation } from './localisation.ts';
import { timePipeline } from './pipeline.ts';
import { type Server, startCandidate, startFloor } from './processes.ts';
import { median, table } from './statistics.ts';

/**
 * `npm run bench`: how fast the service is beside a floor that does nothing but the unavoidable, measured in turns in
 * the same run. Only the ratios compare between machines. A figure is judged `goal`, `ok` or `below`; the run fails only
 * when it measured something else than it says: refusals, errors, lost exams.
 */

/** Ratio to the floor that a release must reach, and the one that is close to what the design allows. */
interface Target {
  readonly must: number;
  readonly goal: number;
  /** Whether a larger figure is better: a rate is, a time is not. */
  readonly larger: boolean;
}
const targets = {
  // Whole POST /exams, with a synced commit, beside an Express route that answers the same number of bytes.
  examRate: { must: 0.06, goal: 0.12, larger: true },
  // POST /localisation beside the same.
  localisationRate: { must: 0.22, goal: 0.4, larger: true },
  localisationP99: { must: 3, goal: 2, larger: false },
  // The pure steps in one go beside the sum of the steps timed alone, and the time itself in microseconds.
  pipelineRatio: { must: 2, goal: 1.2, larger: false },
  pipelineMicroseconds: { must: 1_000, goal: 400, larger: false },
  // From the start of the process to the first correct answer, beside bare Express.
  startRatio: { must: 2.5, goal: 1.6, larger: false },
} as const satisfies Record<string, Target>;

const exams = examVariants(600);
/** The in-process figures hold every intermediate result in memory, so they use fewer. */
const examsInProcess = exams.slice(0, 90);
const dataDir = mkdtempSync(join(tmpdir(), 'neuroexam-bench-'));
const rows: string[][] = [['measure', 'floor', 'service', 'ratio (range)', 'must', 'goal', 'verdict']];

function verdict(value: number, { must, goal, larger }: Target): string {
  const reaches = (limit: number) => (larger ? value >= limit : value <= limit);
  return reaches(goal) ? 'goal' : reaches(must) ? 'ok' : 'below';
}

function row(name: string, floor: string, service: string, value: number, target: Target, note = ''): void {
  const shown = value >= 10 ? value.toFixed(0) : value.toFixed(2);
  rows.push([name, floor, service, shown + note, String(target.must), String(target.goal), verdict(value, target)]);
}

const microseconds = (value: number) => `${value.toFixed(0)} us`;
const perSecond = (value: number) => `${value.toFixed(0)}/s`;

/** Median time to sync 4 KB in the folder of the store; a commit cannot be faster than this. */
function syncMicroseconds(): number {
  const file = openSync(join(dataDir, 'sync-probe'), 'w');
  const times = Array.from({ length: 50 }, () => {
    writeSync(file, Buffer.alloc(4096));
    const started = performance.now();
    fdatasyncSync(file);
    return (performance.now() - started) * 1000;
  });
  closeSync(file);
  return median(times);
}

/** Milliseconds from the start of a process to its first correct answer to a posted exam. */
async function startTimes(): Promise<{ floor: number; candidate: number }> {
  const body = JSON.stringify(exams[0]);
  const headers = { 'Content-Type': 'application/json' };
  const time = async (start: () => Promise<Server>, isRight: (text: string) => boolean) => {
    const started = performance.now();
    const server = await start();
    const response = await fetch(`${server.url}/localisation`, { method: 'POST', headers, body });
    const text = await response.text();
    const elapsed = performance.now() - started;
    await server.stop();
    if (response.status !== 200 || !isRight(text)) throw new Error('wrong first answer');
    return elapsed;
  };
  const floors: number[] = [];
  const candidates: number[] = [];
  for (let round = 0; round < 7; round++) {
    floors.push(
      await time(
        () => startFloor({ '/localisation': 2 }),
        (text) => text === 'xx',
      ),
    );
    candidates.push(
      await time(
        () => startCandidate(join(dataDir, 'start')),
        (text) => text.includes('"localisations"'),
      ),
    );
  }
  return { floor: median(floors), candidate: median(candidates) };
}

function reportLoad(name: string, result: Comparison, target: Target): void {
  const { ratio, p99Ms, cpuMicroseconds } = result;
  const range = ` (${ratio.least.toFixed(2)}-${ratio.most.toFixed(2)})`;
  row(name, perSecond(result.floorPerSecond), perSecond(result.perSecond), ratio.median, target, range);
  console.log(
    `${name}: p99 ${p99Ms.candidate} ms (floor ${p99Ms.floor} ms); CPU ${cpuMicroseconds.candidate.toFixed(0)} us per request (floor ${cpuMicroseconds.floor.toFixed(0)} us)${result.isSteady ? '' : '; UNSTEADY: the floor swung by more than 25 %'}`,
  );
}

/** Every acknowledged exam must be in the store; a few more may be, whose answers were cut off at the end of a round. */
function checkKept(file: string, acknowledged: number): number {
  const db = new Database(file, { readonly: true });
  const kept = Number(db.prepare('SELECT count(*) FROM exam_version').pluck().get());
  db.close();
  if (kept < acknowledged) throw new Error(`${acknowledged} exams acknowledged, but only ${kept} kept`);
  return kept;
}

/** The pure steps, the start, and the service under load, as one table of ratios. */
async function measureService(): Promise<void> {
  const pipeline = timePipeline(createExamSteps(), examsInProcess);
  console.log(
    `Steps in this process, ${examsInProcess.length} different exams, ${pipeline.examBytes} bytes in, ${pipeline.bundleBytes} bytes out:`,
  );
  const own = [
    ...pipeline.parts,
    ['sum of the parts', pipeline.sumOfParts],
    ['JSON alone', pipeline.jsonFloor],
  ] as const;
  console.log(`${table(own.map(([name, time]) => [`  ${name}`, microseconds(time).padStart(9)]))}\n`);
  const { pipelineRatio, pipelineMicroseconds } = targets;
  const whole = microseconds(pipeline.whole);
  row(
    'pipeline / sum of its parts',
    microseconds(pipeline.sumOfParts),
    whole,
    pipeline.whole / pipeline.sumOfParts,
    pipelineRatio,
  );
  row(
    'pipeline, microseconds',
    `${microseconds(pipeline.jsonFloor)} (JSON)`,
    whole,
    pipeline.whole,
    pipelineMicroseconds,
  );

  const start = await startTimes();
  row(
    'start to first answer',
    `${start.floor.toFixed(0)} ms`,
    `${start.candidate.toFixed(0)} ms`,
    start.candidate / start.floor,
    targets.startRatio,
  );

  const folder = join(dataDir, 'load');
  const floor = await startFloor({ '/exams': pipeline.bundleBytes, '/localisation': pipeline.localisationBytes });
  const candidate = await startCandidate(folder);
  try {
    const localisation = await compare('/localisation', exams, floor, candidate);
    reportLoad('POST /localisation', localisation, targets.localisationRate);
    const { p99Ms } = localisation;
    row(
      'POST /localisation, p99',
      `${p99Ms.floor} ms`,
      `${p99Ms.candidate} ms`,
      p99Ms.candidate / p99Ms.floor,
      targets.localisationP99,
    );
    const posted = await compare('/exams', exams, floor, candidate);
    reportLoad('POST /exams', posted, targets.examRate);
    const file = join(folder, 'exams.sqlite');
    const kept = checkKept(file, posted.acknowledged);
    const bytes = statSync(file).size;
    console.log(
      `${posted.acknowledged} exams acknowledged, ${kept} kept, ${(bytes / kept / 1024).toFixed(1)} KB each on disk`,
    );
  } finally {
    await Promise.all([floor.stop(), candidate.stop()]);
  }
  console.log(`\n${table(rows)}`);
}

try {
  console.log(`Node ${process.versions.node}, ${cpus().length} x ${cpus()[0]?.model ?? 'unknown processor'}`);
  console.log(`sync of 4 KB in the folder of the store: ${microseconds(syncMicroseconds())} (median)\n`);

  reportLocalisation();
  // `npm run bench -- localisation` stops here.
  if (!process.argv.includes('localisation')) await measureService();
} finally {
  rmSync(dataDir, { recursive: true, force: true });
}
