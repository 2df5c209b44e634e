import { statSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import type { ExamBody } from '../support/example-exam.ts';
import { startPostgres } from '../support/postgres.ts';
import { type Comparison, compare, load, posts } from './http.ts';
import { type Server, startCandidate, startFloor } from './processes.ts';
import { megabytes, milliseconds, perSecond, type Report } from './report.ts';
import { median } from './statistics.ts';
import type { Figure } from './targets.ts';

export interface AnswerBytes {
  readonly bundleBytes: number;
  readonly localisationBytes: number;
}

/** The service as a process under load, beside an Express route that takes and answers the same number of bytes. */
export async function measureLoad(
  report: Report,
  folder: string,
  exams: readonly ExamBody[],
  bytes: AnswerBytes,
): Promise<void> {
  const startFloorServer = () => startFloor({ '/exams': bytes.bundleBytes, '/localisation': bytes.localisationBytes });
  const floor = await startFloorServer();
  const candidate = await startCandidate(folder);
  try {
    const first = posts('/localisation', exams);
    await Promise.all([load(floor, first, 1, { connections: 1 }), load(candidate, first, 1, { connections: 1 })]);
    const rest = { floor: floor.memory().now, candidate: candidate.memory().now };
    report.add(
      'memoryAtRest',
      'resident memory, after the first requests',
      megabytes(rest.floor),
      megabytes(rest.candidate),
      rest.candidate / rest.floor,
    );
    const alone = await compare(posts('/localisation', exams), floor, candidate, { connections: 1 });
    report.add(
      'localisationAlone',
      'POST /localisation, one connection, mean',
      milliseconds(alone.meanMs.floor),
      milliseconds(alone.meanMs.candidate),
      alone.meanMs.candidate / alone.meanMs.floor,
    );
    const localisation = await compare(posts('/localisation', exams), floor, candidate);
    addRate(report, 'localisationRate', 'POST /localisation', localisation);
    const { p99Ms } = localisation;
    report.add(
      'localisationP99',
      'POST /localisation, p99',
      milliseconds(p99Ms.floor),
      milliseconds(p99Ms.candidate),
      p99Ms.candidate / p99Ms.floor,
    );
    const posted = await compare(posts('/exams', exams), floor, candidate);
    addRate(report, 'examRate', 'POST /exams', posted);
    const most = { floor: floor.memory().most, candidate: candidate.memory().most };
    report.add(
      'memoryUnderLoad',
      'resident memory, at its highest',
      megabytes(most.floor),
      megabytes(most.candidate),
      most.candidate / most.floor,
    );
    const rate = Math.max(1, Math.floor(posted.perSecond / 2));
    const [calmFloor, calm] = [
      await load(floor, posts('/exams', exams), 5, { perSecond: rate }),
      await load(candidate, posts('/exams', exams), 10, { perSecond: rate }),
    ];
    const at = ` at ${rate}/s`;
    report.add(
      'examP99AtHalfLoad',
      'POST /exams, p99 in ms',
      milliseconds(calmFloor.p99) + at,
      milliseconds(calm.p99) + at,
      calm.p99,
    );
    checkKept(report, join(folder, 'exams.sqlite'), posted.acknowledged + calm.acknowledged);
  } finally {
    await Promise.all([floor.stop(), candidate.stop()]);
  }
  await measurePostgres(report, folder, exams, startFloorServer);
}

async function measurePostgres(
  report: Report,
  folder: string,
  exams: readonly ExamBody[],
  startFloorServer: () => Promise<Server>,
): Promise<void> {
  const postgres = await startPostgres();
  try {
    const floor = await startFloorServer();
    const candidate = await startCandidate(folder, { DATABASE_URL: await postgres.newDatabase() });
    try {
      addRate(
        report,
        'examRatePostgres',
        'POST /exams, PostgreSQL beside it',
        await compare(posts('/exams', exams), floor, candidate),
      );
    } finally {
      await Promise.all([floor.stop(), candidate.stop()]);
    }
  } finally {
    await postgres.stop();
  }
}

export function addRate(report: Report, figure: Figure, name: string, result: Comparison): void {
  const { ratio, p99Ms, cpuMicroseconds } = result;
  const range = ` (${ratio.least.toFixed(2)}-${ratio.most.toFixed(2)})`;
  report.add(figure, name, perSecond(result.floorPerSecond), perSecond(result.perSecond), ratio.median, range);
  report.say(
    `  p99 ${p99Ms.candidate} ms (floor ${p99Ms.floor} ms); CPU ${cpuMicroseconds.candidate.toFixed(0)} us a request (floor ${cpuMicroseconds.floor.toFixed(0)} us)${result.isSteady ? '' : '; UNSTEADY: the floor swung by more than 25 %'}`,
  );
}

/** Every acknowledged exam must be in the store; a few more may be, whose answers were cut off at the end of a round. */
function checkKept(report: Report, file: string, acknowledged: number): void {
  const db = new Database(file, { readonly: true });
  const kept = Number(db.prepare('SELECT count(*) FROM exam_version').pluck().get());
  db.close();
  if (kept < acknowledged) throw new Error(`${acknowledged} exams acknowledged, but only ${kept} kept`);
  const bytes = statSync(file).size;
  report.say(`  ${acknowledged} exams acknowledged, ${kept} kept, ${(bytes / kept / 1024).toFixed(1)} KB each on disk`);
}

const starts = 7;

/** From the start of a process to its first correct answer, beside bare Express. */
export async function measureStart(report: Report, dataDir: string, exam: ExamBody): Promise<void> {
  const body = JSON.stringify(exam);
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
  for (let round = 0; round < starts; round++) {
    floors.push(
      await time(
        () => startFloor({ '/localisation': 2 }),
        (text) => text === 'xx',
      ),
    );
    candidates.push(
      await time(
        () => startCandidate(dataDir),
        (text) => text.includes('"localisations"'),
      ),
    );
  }
  const [floor, candidate] = [median(floors), median(candidates)];
  report.add('startRatio', 'start to first answer', milliseconds(floor), milliseconds(candidate), candidate / floor);
}
