import autocannon from 'autocannon';
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
  readonly p99Ms: { readonly floor: number; readonly candidate: number };
  readonly cpuMicroseconds: { readonly floor: number; readonly candidate: number };
  readonly acknowledged: number;
  readonly isSteady: boolean;
}

/**
 * Floor and candidate in turns, the same load on both.
 * @throws Error when any answer of the candidate is not a success: the round would measure something else
 */
export async function compare(
  path: string,
  exams: readonly ExamBody[],
  floor: Server,
  candidate: Server,
): Promise<Comparison> {
  const nextBody = bodies(exams);
  const load = async (server: Server, seconds: number) => {
    const cpu = server.cpuMicroseconds();
    const result = await autocannon({
      url: server.url,
      connections,
      duration: seconds,
      requests: [
        {
          method: 'POST',
          path,
          headers: { 'content-type': 'application/json' },
          setupRequest: (request) => ({ ...request, body: nextBody() }),
        },
      ],
    });
    if (result.non2xx + result.errors + result.timeouts > 0) {
      throw new Error(`${path}: ${result.non2xx} refusals, ${result.errors} errors, ${result.timeouts} time-outs`);
    }
    return {
      acknowledged: result['2xx'],
      perSecond: result['2xx'] / result.duration,
      p99: result.latency.p99,
      cpu: (server.cpuMicroseconds() - cpu) / result['2xx'],
    };
  };

  await load(floor, warmUpSeconds);
  const warmUp = await load(candidate, warmUpSeconds);
  const pairs = [];
  for (let round = 0; round < rounds; round++) {
    pairs.push({ floor: await load(floor, roundSeconds), candidate: await load(candidate, roundSeconds) });
  }
  const ratios = pairs.map((pair) => pair.candidate.perSecond / pair.floor.perSecond);
  const floorRates = pairs.map((pair) => pair.floor.perSecond);
  const floorPerSecond = median(floorRates);
  return {
    floorPerSecond,
    perSecond: median(pairs.map((pair) => pair.candidate.perSecond)),
    ratio: { median: median(ratios), least: Math.min(...ratios), most: Math.max(...ratios) },
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
