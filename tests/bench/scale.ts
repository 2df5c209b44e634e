import { spawnSync } from 'node:child_process';
import { createReadStream, mkdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { setTimeout as pause } from 'node:timers/promises';
import type { Bundle, ClinicalImpression, Observation, ServiceRequest } from 'fhir/r4.js';
import sql, { raw } from 'sql-template-tag';
import { servedResources } from '../../src/fhir/served.ts';
import { StoreError } from '../../src/kernel/errors.ts';
import { readSearch } from '../../src/search/read-search.ts';
import { searchRules } from '../../src/search/search-rules.ts';
import { contentHash } from '../../src/store/content-hash.ts';
import type { Engine } from '../../src/store/engine.ts';
import { openStores, type Stores, type StoreTarget } from '../../src/store/open-stores.ts';
import { systems } from '../../src/terminology/systems.ts';
import { median, table } from './statistics.ts';

/**
 * `npm run bench -- scale`: how the store behaves as it grows, beside plain tables with the indexes that a hand-written
 * program would have, in the same database and in turns with it.
 *
 * A few thousand exams are invented and converted in full; each is then kept many times over with other ids, patients
 * and days, since inventing a hundred thousand would take an hour that measures nothing of the store.
 */
export interface ScaleOptions {
  readonly exams: number;
  readonly distinct: number;
  readonly target: StoreTarget;
  readonly folder: string;
  /** Whether the tables by hand hold each resource as JSON too, so that a page of them answers what a page of ours does. */
  readonly bodies: boolean;
}

interface Prepared {
  readonly raw: string;
  readonly bundle: string;
  readonly examId: string;
  readonly device: string;
  readonly examinedAt: string;
  readonly patient: string;
}

const neuroexam = join(import.meta.dirname, '..', '..', 'dist', 'cli', 'neuroexam.js');

async function prepare({ folder, distinct }: ScaleOptions): Promise<Prepared[]> {
  mkdirSync(folder, { recursive: true });
  const examsFile = join(folder, `exams-${distinct}.ndjson`);
  const bundlesFile = join(folder, `bundles-${distinct}.ndjson`);
  const run = (...args: string[]) => {
    const { status, stderr } = spawnSync(process.execPath, [neuroexam, ...args], { encoding: 'utf8' });
    if (status !== 0) throw new Error(`neuroexam ${args[0]}: ${stderr}`);
  };
  if (statSync(bundlesFile, { throwIfNoEntry: false }) === undefined) {
    run('load-demo', '--count', String(distinct), '--seed', '7', '--out', examsFile);
    run('convert', examsFile, '--out', bundlesFile);
  }
  const [exams, bundles] = await Promise.all([linesOf(examsFile), linesOf(bundlesFile)]);
  return bundles.map((bundle, index) => {
    const exam = JSON.parse(exams[index] as string) as { examinedAt: string; subject: { reference: string } };
    const { entry = [] } = JSON.parse(bundle) as Bundle;
    const tags = entry.flatMap(({ resource }) => resource?.meta?.tag ?? []);
    return {
      raw: exams[index] as string,
      bundle,
      examId: tags.find(({ system }) => system === systems.exam)?.code as string,
      device: entry.find(({ resource }) => resource?.resourceType === 'Device')?.fullUrl?.slice(9) as string,
      examinedAt: exam.examinedAt,
      patient: exam.subject.reference,
    };
  });
}

async function linesOf(file: string): Promise<string[]> {
  const lines: string[] = [];
  for await (const line of createInterface({ input: createReadStream(file) })) lines.push(line);
  return lines;
}

/** The same exam of another patient on another day: `copy` changes every id in the same way. */
function copyOf(exam: Prepared, copy: number) {
  const change = (Math.imul(copy, 0x9e3779b1) >>> 0) & 0xffffffff;
  const id = (text: string) =>
    text === exam.device
      ? text
      : `${text.slice(0, 28)}${((Number.parseInt(text.slice(28), 16) ^ change) >>> 0).toString(16).padStart(8, '0')}`;
  const uuids = /[0-9a-f]{8}-[0-9a-f]{4}-5[0-9a-f]{3}-[0-9a-f]{4}-[0-9a-f]{12}/g;
  const day = new Date(Date.parse(exam.examinedAt) - copy * 7 * 86_400_000).toISOString();
  const changed = (text: string) =>
    text
      .replace(uuids, id)
      .replaceAll(exam.examinedAt, day)
      .replaceAll(`"${exam.patient}"`, `"${exam.patient}-${copy % 40}"`);
  const bundle = changed(exam.bundle);
  const rawText = changed(exam.raw);
  return {
    id: id(exam.examId),
    day,
    patient: `${exam.patient}-${copy % 40}`,
    content: {
      raw: Buffer.from(rawText),
      contentHash: contentHash([rawText]),
      bundle: Buffer.from(bundle),
      resources: servedResources(JSON.parse(bundle) as Bundle),
      modelVersion: 'bench',
      receivedAt: new Date(),
    },
  };
}

const handTables = (engine: Engine) => {
  const [int, blob, text] = engine.dialect === 'postgres' ? ['bigint', 'bytea', 'text'] : ['INTEGER', 'BLOB', 'TEXT'];
  return [
    `CREATE TABLE hand_exam (n ${int} PRIMARY KEY, patient ${int}, moment ${int}, raw ${blob}, bundle ${blob})`,
    `CREATE TABLE hand_resource (n ${int} PRIMARY KEY, body ${text})`,
    `CREATE TABLE hand_finding (n ${int}, exam ${int}, code ${int}, value ${int}, absent ${int}, patient ${int}, moment ${int})`,
    `CREATE INDEX hand_by_value ON hand_finding (code, value, moment)`,
    `CREATE INDEX hand_by_code ON hand_finding (code, moment)`,
    `CREATE INDEX hand_by_patient ON hand_finding (patient, moment)`,
    `CREATE INDEX hand_by_absence ON hand_finding (absent, code)`,
    `CREATE TABLE hand_impression (exam ${int}, code ${int}, moment ${int})`,
    `CREATE INDEX hand_impression_by_code ON hand_impression (code, moment)`,
    `CREATE TABLE hand_request (exam ${int}, code ${int}, priority ${int}, moment ${int})`,
    `CREATE INDEX hand_request_by_priority ON hand_request (priority, moment)`,
  ];
};

/** Words to small numbers, as a careful hand would. */
const numbers = new Map<string, number>();
function numberOf(word: string | undefined): number | null {
  if (word === undefined) return null;
  const found = numbers.get(word) ?? numbers.size + 1;
  numbers.set(word, found);
  return found;
}

/** Number of the last resource that the tables by hand hold. */
let lastByHand = 0;

async function writeByHand(
  engine: Engine,
  exams: readonly ReturnType<typeof copyOf>[],
  first: number,
  withBodies: boolean,
): Promise<void> {
  await engine.write(async (session) => {
    const int = 'bigint';
    const rows = exams.map((exam, index) => ({
      exam,
      n: first + index,
      moment: Date.parse(exam.day),
      patient: numberOf(exam.patient),
    }));
    await session.insert(
      'hand_exam',
      { n: int, patient: int, moment: int, raw: 'bytea', bundle: 'bytea' },
      rows.map(({ exam, n, moment, patient }) => [n, patient, moment, exam.content.raw, exam.content.raw]),
    );
    const findings: unknown[][] = [];
    const impressions: unknown[][] = [];
    const requests: unknown[][] = [];
    const bodies: unknown[][] = [];
    for (const { exam, n, moment, patient } of rows) {
      for (const resource of exam.content.resources) {
        const { resourceType } = resource;
        if (resourceType === 'Observation') {
          const { code, valueCodeableConcept: value, dataAbsentReason: absent } = resource as Observation;
          lastByHand += 1;
          if (withBodies) bodies.push([lastByHand, JSON.stringify(resource)]);
          findings.push([
            lastByHand,
            n,
            numberOf(code.coding?.[0]?.code),
            numberOf(value?.coding?.[0]?.code),
            numberOf(absent?.coding?.[0]?.code),
            patient,
            moment,
          ]);
        } else if (resourceType === 'ClinicalImpression') {
          const { finding = [] } = resource as ClinicalImpression;
          for (const { itemCodeableConcept } of finding)
            impressions.push([n, numberOf(itemCodeableConcept?.coding?.[0]?.code), moment]);
        } else if (resourceType === 'ServiceRequest') {
          const { code, priority } = resource as ServiceRequest;
          requests.push([n, numberOf(code?.coding?.[0]?.code), numberOf(`priority ${priority}`), moment]);
        }
      }
    }
    await session.insert(
      'hand_finding',
      { n: int, exam: int, code: int, value: int, absent: int, patient: int, moment: int },
      findings,
    );
    await session.insert('hand_resource', { n: int, body: 'text' }, bodies);
    await session.insert('hand_impression', { exam: int, code: int, moment: int }, impressions);
    await session.insert('hand_request', { exam: int, code: int, priority: int, moment: int }, requests);
  });
}

interface Question {
  readonly says: string;
  readonly type: string;
  readonly ours: readonly (readonly [string, string])[];
  readonly byHand: string;
}

/** Questions of an analyst; codes are those of the catalogue, `from` and `to` bound a quarter. */
function questions(patient: string, from: string, to: string, withBodies: boolean): readonly Question[] {
  const n = (word: string) => String(numberOf(word));
  const between = `moment >= ${Date.parse(from)} AND moment < ${Date.parse(to)}`;
  const dates = [
    ['date', `ge${from}`],
    ['date', `lt${to}`],
  ] as const;
  const findings = withBodies
    ? 'SELECT body FROM hand_finding JOIN hand_resource USING (n)'
    : 'SELECT exam FROM hand_finding';
  const page = 'ORDER BY moment DESC LIMIT 50';
  const grades = ['0', '1', '2', '3', '4-', '4', '4+'];
  return [
    {
      says: 'newest 50: ankle dorsiflexion 4/5',
      type: 'Observation',
      ours: [['code-value-concept', 'power/ankle-dorsiflexion$4']],
      byHand: `${findings} WHERE code = ${n('power/ankle-dorsiflexion')} AND value = ${n('4')} ${page}`,
    },
    {
      says: 'count: ankle dorsiflexion 5/5',
      type: 'Observation',
      ours: [
        ['code-value-concept', 'power/ankle-dorsiflexion$5'],
        ['_summary', 'count'],
      ],
      byHand: `SELECT count(*) AS c FROM hand_finding WHERE code = ${n('power/ankle-dorsiflexion')} AND value = ${n('5')}`,
    },
    {
      says: 'newest 50 of one patient',
      type: 'Observation',
      ours: [['subject', patient]],
      byHand: `${findings} WHERE patient = ${n(patient)} ${page}`,
    },
    {
      says: 'newest 50: plantar responses of a quarter',
      type: 'Observation',
      ours: [['code', 'plantars/plantar-response'], ...dates],
      byHand: `${findings} WHERE code = ${n('plantars/plantar-response')} AND ${between} ${page}`,
    },
    {
      says: 'count: polyneuropathies of a quarter',
      type: 'ClinicalImpression',
      ours: [['finding-code', 'polyneuropathy'], ...dates, ['_summary', 'count']],
      byHand: `SELECT count(DISTINCT exam) AS c FROM hand_impression WHERE code = ${n('polyneuropathy')} AND ${between}`,
    },
    {
      says: 'count: vibration tested in a quarter',
      type: 'Observation',
      ours: [['code', 'sensation/vibration'], ['data-absent-reason:missing', 'true'], ...dates, ['_summary', 'count']],
      byHand: `SELECT count(*) AS c FROM hand_finding WHERE code = ${n('sensation/vibration')} AND absent IS NULL AND ${between}`,
    },
    {
      says: 'count: vibration declined',
      type: 'Observation',
      ours: [
        ['code', 'sensation/vibration'],
        ['data-absent-reason', 'asked-declined'],
        ['_summary', 'count'],
      ],
      byHand: `SELECT count(*) AS c FROM hand_finding WHERE absent = ${n('asked-declined')} AND code = ${n('sensation/vibration')}`,
    },
    {
      says: 'newest 50: hip flexion below 5',
      type: 'Observation',
      ours: [
        ['code', 'power/hip-flexion'],
        ['value-concept', grades.join(',')],
      ],
      byHand: `${findings} WHERE code = ${n('power/hip-flexion')} AND value IN (${grades.map(n).join(', ')}) ${page}`,
    },
    {
      says: 'newest 50: cord compression flagged',
      type: 'Observation',
      ours: [['code-value-concept', 'red-flag/suspected-cord-compression$present']],
      byHand: `${findings} WHERE code = ${n('red-flag/suspected-cord-compression')} AND value = ${n('present')} ${page}`,
    },
    {
      says: 'count: immediate proposals of a quarter',
      type: 'ServiceRequest',
      ours: [
        ['priority', 'stat'],
        ['authored', `ge${from}`],
        ['authored', `lt${to}`],
        ['_summary', 'count'],
      ],
      byHand: `SELECT count(*) AS c FROM hand_request WHERE priority = ${n('priority stat')} AND ${between}`,
    },
  ];
}

/** As a client does that is told to come again, so that a disk which is slow for a moment does not end an hour of loading. */
async function untilKept<T>(work: () => Promise<T>): Promise<T> {
  for (let attempt = 1; ; attempt += 1) {
    try {
      return await work();
    } catch (error) {
      if (!(error instanceof StoreError) || error.code !== 'STORE_UNAVAILABLE' || attempt === mostAttempts) throw error;
      process.stdout.write(`tried again after: ${error.message}\n`);
      await pause(attempt * 1000);
    }
  }
}

const mostAttempts = 10;
const noTerminology = { strict: true, expandValueSet: () => undefined, descendants: () => [] };
const rounds = 60;

/** Medians in ms of one question. */
export interface Asked {
  readonly says: string;
  readonly answers: string;
  readonly isCount: boolean;
  readonly byHand: number;
  readonly store: number;
}

async function ask({ engine, resources }: Stores, question: Question): Promise<Asked> {
  const { query } = readSearch(
    question.type,
    [...question.ours, ...(question.ours.some(([name]) => name === '_summary') ? [] : ([['_total', 'none']] as const))],
    noTerminology,
  );
  const isCount = query.count === 0;
  const [ours, byHand]: [number[], number[]] = [[], []];
  let answers = '';
  for (let round = 0; round < rounds; round += 1) {
    const a = performance.now();
    const found = await resources.search(query);
    const b = performance.now();
    const rows = await engine.reader.all<{ c: number }>(sql`${raw(question.byHand)}`);
    const c = performance.now();
    ours.push(b - a);
    byHand.push(c - b);
    answers = isCount ? `${found.total} / ${rows[0]?.c}` : `${found.matches.length} / ${rows.length}`;
  }
  return { says: question.says, answers, isCount, byHand: median(byHand), store: median(ours) };
}

function cellsOf({ says, answers, byHand, store }: Asked): string[] {
  return [says, answers, `${byHand.toFixed(2)} ms`, `${store.toFixed(2)} ms`, (store / byHand).toFixed(1)];
}

/** @returns the questions as they were asked, and bytes of JSON of all Bundles */
export async function reportScale(options: ScaleOptions): Promise<{ asked: readonly Asked[]; json: number }> {
  const { exams, target, bodies } = options;
  const prepared = await prepare(options);
  const stores = await openStores(target, searchRules);
  const { engine } = stores;
  for (const statement of handTables(engine)) await engine.write((session) => session.run(sql`${raw(statement)}`));
  const group = 16;
  const tenth = Math.ceil(exams / 10 / group) * group;
  const spent = { ours: 0, hand: 0 };
  const rows: string[][] = [['exams', 'by hand', 'store', 'time over by hand']];
  let sample: ReturnType<typeof copyOf> | undefined;
  let json = 0;
  for (let done = 0; done < exams; done += group) {
    const batch = Array.from({ length: group }, (_, index) => {
      const n = done + index;
      return copyOf(prepared[n % prepared.length] as Prepared, Math.floor(n / prepared.length));
    });
    sample = batch[0];
    json += batch.reduce((sum, { content }) => sum + content.bundle.length, 0);
    const a = performance.now();
    await Promise.all(batch.map(({ id, content }) => untilKept(() => stores.exams.insert(id, content))));
    const b = performance.now();
    await untilKept(() => writeByHand(engine, batch, done + 1, bodies));
    spent.ours += b - a;
    spent.hand += performance.now() - b;
    if ((done + group) % tenth === 0 || done + group >= exams) {
      const rate = (ms: number) => `${(((done % tenth) + group) / (ms / 1000)).toFixed(0)}/s`;
      rows.push([String(done + group), rate(spent.hand), rate(spent.ours), (spent.ours / spent.hand).toFixed(1)]);
      process.stdout.write(`${rows.at(-1)?.join('  ')}\n`);
      spent.ours = 0;
      spent.hand = 0;
    }
  }
  process.stdout.write(`\nWriting\n${table(rows)}\n`);
  if (engine.dialect === 'postgres') await engine.write((session) => session.run(sql`ANALYZE`)).catch(() => {});
  const middle = Date.parse((prepared[0] as Prepared).examinedAt) - 100 * 86_400_000;
  const quarter = [middle, middle + 91 * 86_400_000].map((time) => new Date(time).toISOString().slice(0, 10)) as [
    string,
    string,
  ];
  const asked: Asked[] = [];
  for (const question of questions(sample?.patient as string, ...quarter, bodies))
    asked.push(await ask(stores, question));
  const shown = [['question', 'answers', 'by hand', 'store', 'ratio'], ...asked.map(cellsOf)];
  process.stdout.write(
    `\nAsking (${rounds} rounds in turns, median; a page of the store brings the resources, most of them at hand since the round before; one by hand ${bodies ? 'their JSON too' : 'numbers alone'})\n${table(shown)}\n`,
  );
  await reportSize(engine, exams, json);
  await stores.exams.close();
  return { asked, json };
}

async function reportSize(engine: Engine, exams: number, json: number): Promise<void> {
  const tables = [
    'exam_version',
    'chunk',
    'resource',
    'posting',
    'range_posting',
    'token',
    'batch',
    'hand_finding',
    'hand_resource',
  ];
  const perExam = (bytes: number) => `${(bytes / 1024 / exams).toFixed(1)} KB`;
  const rows: string[][] = [['table with its indexes', 'rows', 'per exam']];
  for (const name of tables) {
    const [count] = await engine.reader.all<{ c: number }>(sql`SELECT count(*) AS c FROM ${raw(name)}`);
    const size =
      engine.dialect === 'postgres'
        ? sql`SELECT pg_total_relation_size(${name}::regclass) AS bytes`
        : sql`SELECT sum(pgsize) AS bytes FROM dbstat WHERE aggregate = TRUE AND name IN (SELECT name FROM sqlite_schema WHERE tbl_name = ${name})`;
    const [row] = await engine.reader.all<{ bytes: number }>(size);
    rows.push([name, String(count?.c), perExam(row?.bytes ?? 0)]);
  }
  process.stdout.write(`\nSize (the Bundle as JSON: ${perExam(json)})\n${table(rows)}\n`);
}
