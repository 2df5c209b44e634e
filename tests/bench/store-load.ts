import { spawn } from 'node:child_process';
import { statSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import type { ExamBody } from '../support/example-exam.ts';
import { compare, load, posts } from './http.ts';
import { type Server, startCandidate, startFloor } from './processes.ts';
import { megabytes, milliseconds, type Report } from './report.ts';
import { reportScale } from './scale.ts';
import { addRate } from './service-load.ts';
import { median } from './statistics.ts';

const search = '/fhir/Observation?code-value-concept=power/ankle-dorsiflexion$5&_count=50&_total=none';
const exportRounds = 4;

/** Search, export and size over a store of some thousand exams, beside plain tables with the same JSON in the same file. */
export async function measureStore(report: Report, folder: string, exams: readonly ExamBody[], kept: number) {
  const file = join(folder, 'scale.sqlite');
  const target = { engine: 'sqlite' as const, file };
  const { asked, json } = await reportScale({ exams: kept, distinct: 200, folder, target, bodies: true });
  for (const isCount of [false, true]) {
    const some = asked.filter((question) => question.isCount === isCount);
    const ratios = some.map(({ byHand, store }) => store / byHand);
    const [byHand, store] = [median(some.map((one) => one.byHand)), median(some.map((one) => one.store))];
    const range = ` (${Math.min(...ratios).toFixed(1)}-${Math.max(...ratios).toFixed(1)})`;
    const name = `search, ${isCount ? 'counts' : 'pages of 50'}, ${kept} exams`;
    report.add(
      isCount ? 'searchCount' : 'searchPage',
      name,
      milliseconds(byHand),
      milliseconds(store),
      median(ratios),
      range,
    );
  }
  const own = ownBytes(file);
  const perExam = (bytes: number) => `${(bytes / kept / 1024).toFixed(0)} KB`;
  report.add('storedBytes', 'room of an exam', `${perExam(json)} (JSON)`, perExam(own), own / json);

  // The tables by hand stay in the file; the service does not look at them.
  const settings = { DATABASE_URL: `sqlite:${file}`, VIEW_TABLES_SECONDS: '0' };
  const candidate = await startCandidate(folder, settings);
  const page = await fetch(candidate.url + search).then((response) => response.arrayBuffer());
  const floor = await startFloor({ '/fhir/Observation': page.byteLength });
  try {
    const found = await compare({ method: 'GET', path: search }, floor, candidate);
    addRate(report, 'searchRate', 'GET, a page of 50', found);
    await measureExport(report, file, candidate, exams);
  } finally {
    await Promise.all([floor.stop(), candidate.stop()]);
  }
}

async function measureExport(report: Report, file: string, candidate: Server, exams: readonly ExamBody[]) {
  const address = await exported(candidate);
  const rates: { floor: number; candidate: number }[] = [];
  let bytes = 0;
  for (let round = 0; round < exportRounds; round += 1) {
    const a = performance.now();
    const floorBytes = selectAll(file);
    const b = performance.now();
    bytes = await download(address);
    const c = performance.now();
    rates.push({ floor: floorBytes / (b - a), candidate: bytes / (c - b) });
  }
  const shown = (bytesPerMs: number) => `${megabytes(bytesPerMs * 1000)}/s`;
  report.add(
    'exportRate',
    `export of ${megabytes(bytes)} as NDJSON`,
    shown(median(rates.map((rate) => rate.floor))),
    shown(median(rates.map((rate) => rate.candidate))),
    median(rates.map((rate) => rate.candidate / rate.floor)),
  );

  const pace = { connections: 4 };
  const calm = await load(candidate, posts('/exams', exams), 5, pace);
  const reader = spawn(process.execPath, ['--input-type=module', '--eval', readAgainAndAgain, address]);
  const busy = await load(candidate, posts('/exams', exams), 5, pace);
  reader.kill();
  report.add(
    'postDuringExport',
    'POST /exams while an export is read, p99',
    milliseconds(calm.p99),
    milliseconds(busy.p99),
    busy.p99 / calm.p99,
  );
}

/** Addresses of the files of an export of the observations. */
async function exported(candidate: Server): Promise<string> {
  const started = await fetch(`${candidate.url}/fhir/$export?_type=Observation`, {
    headers: { Prefer: 'respond-async' },
  });
  const status = started.headers.get('Content-Location') ?? '';
  for (;;) {
    const answer = await fetch(status);
    if (answer.status === 200) {
      const { output } = (await answer.json()) as { output: readonly { url: string }[] };
      return output[0]?.url ?? '';
    }
    if (answer.status !== 202) throw new Error(`export: ${answer.status}`);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

/** In a process of its own, since this one could not send and count requests beside so many bytes. */
const readAgainAndAgain = `
  for (;;) {
    const { body } = await fetch(process.argv[1]);
    for await (const chunk of body) chunk;
  }
`;

async function download(url: string): Promise<number> {
  const { body } = await fetch(url);
  let bytes = 0;
  for await (const chunk of body ?? []) bytes += (chunk as Uint8Array).length;
  return bytes;
}

/** The same resources as JSON lines, by the plainest program there is. */
function selectAll(file: string): number {
  const db = new Database(file, { readonly: true });
  let bytes = 0;
  for (const body of db.prepare('SELECT body FROM hand_resource ORDER BY n').pluck().iterate()) {
    bytes += Buffer.from(`${body}\n`).length;
  }
  db.close();
  return bytes;
}

/** Bytes of the file without the tables by hand. */
function ownBytes(file: string): number {
  const db = new Database(file, { readonly: true });
  const hand = Number(
    db
      .prepare(
        "SELECT sum(pgsize) FROM dbstat WHERE aggregate = TRUE AND name IN (SELECT name FROM sqlite_schema WHERE tbl_name LIKE 'hand%')",
      )
      .pluck()
      .get(),
  );
  db.close();
  return statSync(file).size - hand;
}
