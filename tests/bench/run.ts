import { closeSync, fdatasyncSync, mkdtempSync, openSync, rmSync, writeSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { createExamSteps } from '../../src/context.ts';
import { modelVersion } from '../../src/localisation/model-version.ts';
import { measureBatch } from './batch.ts';
import { examVariants } from './exam-variants.ts';
import { keepInHistory } from './history.ts';
import { measureHostile } from './hostile.ts';
import { reportLocalisation } from './localisation.ts';
import { measurePage } from './page.ts';
import { type PipelineTimes, timePipeline } from './pipeline.ts';
import { createReport, microseconds } from './report.ts';
import { measureLoad, measureStart } from './service-load.ts';
import { median, table } from './statistics.ts';
import { measureStore } from './store-load.ts';

/**
 * `npm run bench`: how fast the service is beside a floor that does nothing but the unavoidable, measured in turns in
 * the same run. Only the ratios compare between machines. A figure is judged `goal`, `ok` or `below`; the run fails only
 * when it measured something else than it says: refusals, errors, lost exams. `npm run bench -- store batch` runs parts.
 */
const parts = ['localisation', 'pipeline', 'start', 'load', 'store', 'batch', 'hostile', 'page'] as const;
type Part = (typeof parts)[number];

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { exams: { type: 'string', default: '1600' }, history: { type: 'boolean', default: false } },
});
const unknown = positionals.filter((name) => !parts.includes(name as Part));
if (unknown.length > 0) {
  console.error(`Parts of the benchmark are: ${parts.join(', ')}.`);
  process.exit(2);
}
const isWanted = (part: Part) => positionals.length === 0 || positionals.includes(part);

const exams = examVariants(600);
/** The in-process figures hold every intermediate result in memory, so they use fewer. */
const examsInProcess = exams.slice(0, 90);
const dataDir = mkdtempSync(join(tmpdir(), 'neuroexam-bench-'));
const report = createReport();

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

/** The pure steps in this process. */
function measurePipeline(): PipelineTimes {
  const pipeline = timePipeline(createExamSteps(), examsInProcess);
  const sizes = `${pipeline.examBytes} bytes in, ${pipeline.bundleBytes} bytes out`;
  report.say(`Steps in this process, ${examsInProcess.length} different exams, ${sizes}:`);
  const own = [
    ...pipeline.parts,
    ['sum of the parts', pipeline.sumOfParts],
    ['JSON alone', pipeline.jsonFloor],
  ] as const;
  report.say(`${table(own.map(([name, time]) => [`  ${name}`, microseconds(time).padStart(9)]))}\n`);
  const whole = microseconds(pipeline.whole);
  const sum = microseconds(pipeline.sumOfParts);
  report.add('pipelineRatio', 'pipeline / sum of its parts', sum, whole, pipeline.whole / pipeline.sumOfParts);
  const json = `${microseconds(pipeline.jsonFloor)} (JSON)`;
  report.add('pipelineMicroseconds', 'pipeline, microseconds', json, whole, pipeline.whole);
  return pipeline;
}

try {
  report.say(`Node ${process.versions.node}, ${cpus().length} cores`);
  report.say(`sync of 4 KB in the folder of the store: ${microseconds(syncMicroseconds())} (median)\n`);

  if (isWanted('localisation')) reportLocalisation();
  // The load needs the sizes of the answers.
  const pipeline = isWanted('pipeline') || isWanted('load') ? measurePipeline() : undefined;
  const [first] = exams;
  if (isWanted('start') && first !== undefined) await measureStart(report, join(dataDir, 'start'), first);
  if (isWanted('load') && pipeline !== undefined) await measureLoad(report, join(dataDir, 'load'), exams, pipeline);
  if (isWanted('store')) await measureStore(report, dataDir, exams, Number(values.exams));
  if (isWanted('batch')) measureBatch(report, dataDir);
  if (isWanted('hostile')) await measureHostile(report, join(dataDir, 'hostile'));
  if (isWanted('page')) await measurePage(report, join(dataDir, 'page'));
  report.print();
  if (values.history) keepInHistory(report.values, modelVersion);
} finally {
  rmSync(dataDir, { recursive: true, force: true });
}
