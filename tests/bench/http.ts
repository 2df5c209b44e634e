import autocannon, { type Request as LoadRequest } from 'autocannon';
import type { ExamBody } from '../support/example-exam.ts';
import type { Server } from './processes.ts';
import { median } from './statistics.ts';

const connections = 16;
const warmUpSeconds = 2;
const roundSeconds = 3;
const rounds = 4;

/** A floor that swings more than this says that the machine was busy, and the ratios with it. */
const steadyWithin = 0.25;

export interface Comparison {
  readonly floorPerSecond: number;
  readonly perSecond: number;
  /** Candidate to floor, per adjacent pair of rounds. */
  readonly ratio: { readonly median: number; readonly least: number; readonly most: number };
  /** Mean latency in ms, of the medians of the rounds. */
  readonly meanMs: { readonly floor: number; readonly candidate: number };
  readonly p99Ms: { readonly floor: number; readonly candidate: number };
  readonly cpuMicroseconds: { readonly floor: number; readonly candidate: number };
  readonly acknowledged: number;
  readonly isSteady: boolean;
}

/** Posts of exams without end, see `bodies`. */
export function posts(path: string, exams: readonly ExamBody[]): LoadRequest {
  const nextBody = bodies(exams);
  return {
    method: 'POST',
    path,
    headers: { 'content-type': 'application/json' },
    setupRequest: (request) => ({ ...request, body: nextBody() }),
  };
}

/**
 * @param pace connections at once, and requests in a second where the load is to be an open one: a late answer then
 *   counts from when its request was due
 * @throws Error when any answer is not a success: the figure would measure something else
 */
export async function load(
  server: Server,
  request: LoadRequest,
  seconds: number,
  pace: { readonly connections?: number; readonly perSecond?: number } = {},
) {
  const cpu = server.cpuMicroseconds();
  const result = await autocannon({
    url: server.url,
    connections: pace.connections ?? connections,
    duration: seconds,
    ...(pace.perSecond === undefined ? {} : { overallRate: pace.perSecond }),
    requests: [request],
  });
  if (result.non2xx + result.errors + result.timeouts > 0) {
    throw new Error(
      `${request.path}: ${result.non2xx} refusals, ${result.errors} errors, ${result.timeouts} time-outs`,
    );
  }
  if (result['2xx'] === 0) throw new Error(`${request.path}: nothing was answered in ${seconds} s`);
  return {
    acknowledged: result['2xx'],
    perSecond: result['2xx'] / result.duration,
    p50: result.latency.p50,
    mean: result.latency.mean,
    p99: result.latency.p99,
    cpu: (server.cpuMicroseconds() - cpu) / result['2xx'],
  };
}

/** Floor and candidate in turns, the same load on both. @throws Error as `load` does */
export async function compare(
  request: LoadRequest,
  floor: Server,
  candidate: Server,
  pace: { readonly connections?: number } = {},
): Promise<Comparison> {
  await load(floor, request, warmUpSeconds, pace);
  const warmUp = await load(candidate, request, warmUpSeconds, pace);
  const pairs = [];
  for (let round = 0; round < rounds; round++) {
    pairs.push({
      floor: await load(floor, request, roundSeconds, pace),
      candidate: await load(candidate, request, roundSeconds, pace),
    });
  }
  const ratios = pairs.map((pair) => pair.candidate.perSecond / pair.floor.perSecond);
  const floorRates = pairs.map((pair) => pair.floor.perSecond);
  const floorPerSecond = median(floorRates);
  return {
    floorPerSecond,
    perSecond: median(pairs.map((pair) => pair.candidate.perSecond)),
    ratio: { median: median(ratios), least: Math.min(...ratios), most: Math.max(...ratios) },
    meanMs: {
      floor: median(pairs.map((pair) => pair.floor.mean)),
      candidate: median(pairs.map((pair) => pair.candidate.mean)),
    },
    p99Ms: {
      floor: median(pairs.map((pair) => pair.floor.p99)),
      candidate: median(pairs.map((pair) => pair.candidate.p99)),
    },
    cpuMicroseconds: {
      floor: median(pairs.map((pair) => pair.floor.cpu)),
      candidate: median(pairs.map((pair) => pair.candidate.cpu)),
    },
    acknowledged: warmUp.acknowledged + pairs.reduce((sum, pair) => sum + pair.candidate.acknowledged, 0),
    isSteady: (Math.max(...floorRates) - Math.min(...floorRates)) / floorPerSecond <= steadyWithin,
  };
}

/** Bodies without end: the exams in turn, each time under an identifier that was never used before. */
function bodies(exams: readonly ExamBody[]): () => string {
  const mark = 'identifier-goes-here';
  const halves = exams.map((exam) => {
    const identifier = { system: 'https://bench.example/exams', value: mark };
    const [before = '', after = ''] = JSON.stringify({ ...exam, identifier }).split(mark);
    return { before, after };
  });
  const run = Date.now().toString(36);
  let count = 0;
  return () => {
    const { before, after } = halves[count % halves.length] ?? { before: '', after: '' };
    count++;
    return `${before}${run}-${count}${after}`;
  };
}
