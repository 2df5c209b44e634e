import { spawnSync } from 'node:child_process';
import { readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { perSecond, type Report } from './report.ts';
import { median } from './statistics.ts';

const neuroexam = join(import.meta.dirname, '..', '..', 'dist', 'cli', 'neuroexam.js');
const exams = 400;
const rounds = 3;

/** Exams to Bundles by the command line, beside a program that parses the same lines and writes as many bytes. */
export function measureBatch(report: Report, folder: string): void {
  const input = join(folder, 'exams.ndjson');
  const output = join(folder, 'bundles.ndjson');
  const run = (...args: string[]) => {
    const started = performance.now();
    const { status, stderr } = spawnSync(process.execPath, [neuroexam, ...args], { encoding: 'utf8' });
    if (status !== 0) throw new Error(`neuroexam ${args[0]}: ${stderr}`);
    return performance.now() - started;
  };
  run('load-demo', '--count', String(exams), '--seed', '7', '--out', input);
  const few = join(folder, 'few.ndjson');
  writeFileSync(few, `${readFileSync(input, 'utf8').split('\n', 4).join('\n')}\n`);

  const floors: number[] = [];
  const singles: number[] = [];
  const doubles: number[] = [];
  for (let round = 0; round < rounds; round += 1) {
    // What a process takes to start and to load its tables is taken off: it does not grow with the exams.
    const started = run('convert', few, '--out', output, '--jobs', '1');
    singles.push(run('convert', input, '--out', output, '--jobs', '1') - started);
    const started2 = run('convert', few, '--out', output, '--jobs', '2');
    doubles.push(run('convert', input, '--out', output, '--jobs', '2') - started2);
    floors.push(copy(input, join(folder, 'copy.ndjson'), statSync(output).size));
  }
  const rate = (ms: readonly number[]) => exams / (median(ms) / 1000);
  const ratios = singles.map((ms, index) => (floors[index] ?? Number.NaN) / ms);
  report.add(
    'batchRate',
    'neuroexam convert, one core',
    perSecond(rate(floors)),
    perSecond(rate(singles)),
    median(ratios),
  );
  report.add(
    'batchSecondCore',
    'neuroexam convert, two cores beside one',
    perSecond(rate(singles)),
    perSecond(rate(doubles)),
    median(singles.map((ms, index) => ms / (doubles[index] ?? Number.NaN))),
  );
}

/** Milliseconds to parse every line and to write a line of the mean length for it. */
function copy(input: string, output: string, bytes: number): number {
  const started = performance.now();
  const lines = readFileSync(input, 'utf8').trimEnd().split('\n');
  const line = 'x'.repeat(Math.round(bytes / lines.length) - 3);
  const out = lines.map((text) => JSON.stringify(JSON.parse(text) === null ? '' : line));
  writeFileSync(output, `${out.join('\n')}\n`);
  return performance.now() - started;
}
