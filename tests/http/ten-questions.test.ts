import { readFileSync, rmSync } from 'node:fs';
import { setTimeout } from 'node:timers/promises';
import Database from 'better-sqlite3';
import { parse } from 'csv-parse/sync';
import type { Bundle, FhirResource } from 'fhir/r4.js';
import pg from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { postExams } from '../../src/cli/load-demo/post-exams.ts';
import { type InventedExam, inventExams } from '../../src/cli/simulated/invented-exams.ts';
import { simulationModel } from '../../src/cli/simulated/simulated-patient.ts';
import { readConfig } from '../../src/config.ts';
import { createExamReader } from '../../src/exam/read-exam.ts';
import { type RunningService, startService } from '../../src/service.ts';
import type { StoreTarget } from '../../src/store/open-stores.ts';
import { systems } from '../../src/terminology/systems.ts';
import { compiledByBuild } from '../support/built.ts';
import { send } from '../support/client.ts';
import { emptyStores, engines } from '../support/engines.ts';
import { temporaryFolder } from '../support/service.ts';

type CsvRow = Readonly<Record<string, string>>;

/** The three ways to an answer, as an analyst has them. */
interface Ways {
  /** Resources that a search counts. */
  readonly count: (search: string) => Promise<number>;
  /** Exams that the resources found belong to, by their tag. */
  readonly exams: (search: string) => Promise<ReadonlySet<string>>;
  /** The rows of a view, read back from its CSV. */
  readonly csv: (view: string) => Promise<readonly CsvRow[]>;
}

interface Question {
  readonly asks: string;
  readonly bySearch: (ways: Ways) => Promise<number>;
  readonly byCsv: (ways: Ways) => Promise<number>;
  /** One number; `table` gives the name of the table of a view. */
  readonly sql: (table: (view: string) => string) => string;
  /** The whole that the answer is a part of, by SQL. */
  readonly among: (table: (view: string) => string) => string;
}

const examsOf = (rows: readonly CsvRow[]) => new Set(rows.map(({ exam_key = '' }) => exam_key));
const inBoth = (one: ReadonlySet<string>, other: ReadonlySet<string>) =>
  [...one].filter((key) => other.has(key)).length;
const stands = ({ status }: CsvRow) => status !== 'entered-in-error';
const standing = 'status:not=entered-in-error';
const allExams = (table: (view: string) => string) =>
  `SELECT count(DISTINCT exam_key) AS n FROM ${table('impressions')}`;

/** The second quarter of 2025. */
const quarter = ['2025-04-01', '2025-07-01'] as const;
const inQuarter = (row: CsvRow) => String(row.effective) >= quarter[0] && String(row.effective) < quarter[1];
const neuropathies = `ClinicalImpression?finding-code=${systems.pattern}|polyneuropathy&${standing}&date=ge${quarter[0]}&date=lt${quarter[1]}`;
const neuropathyRows = async ({ csv }: Ways) =>
  (await csv('impressions')).filter(
    (row) => stands(row) && inQuarter(row) && row.kind === 'pattern' && row.code === 'polyneuropathy',
  );
const neuropathySql = (table: (view: string) => string) =>
  `SELECT exam_key FROM ${table('impressions')} WHERE kind = 'pattern' AND code = 'polyneuropathy'
   AND status <> 'entered-in-error' AND effective >= '${quarter[0]}' AND effective < '${quarter[1]}'`;

const questions: readonly Question[] = [
  {
    asks: 'In how many exams of the quarter with a suspected polyneuropathy was vibration tested?',
    bySearch: async ({ exams }) =>
      inBoth(
        await exams(neuropathies),
        await exams(`Observation?code=sensation/vibration&value-concept:missing=false&${standing}`),
      ),
    byCsv: async (ways) => {
      const tested = (await ways.csv('sensation')).filter(
        (row) => stands(row) && row.modality_code === 'sensation/vibration' && row.result_code !== '',
      );
      return inBoth(examsOf(await neuropathyRows(ways)), examsOf(tested));
    },
    sql: (table) => `SELECT count(DISTINCT exam_key) AS n FROM ${table('sensation')}
      WHERE modality_code = 'sensation/vibration' AND result_code IS NOT NULL AND status <> 'entered-in-error'
      AND exam_key IN (${neuropathySql(table)})`,
    among: allExams,
  },
  {
    asks: 'And how often, place by place, was vibration found absent or reduced in them?',
    bySearch: async ({ exams, count }) => {
      let found = 0;
      for (const exam of await exams(neuropathies)) {
        const tag = encodeURIComponent(`${systems.exam}|${exam}`);
        const values = 'value-concept=absent,reduced';
        found += await count(`Observation?code=sensation/vibration&${values}&${standing}&_tag=${tag}`);
      }
      return found;
    },
    byCsv: async (ways) => {
      const suspected = examsOf(await neuropathyRows(ways));
      return (await ways.csv('sensation')).filter(
        (row) =>
          stands(row) &&
          suspected.has(String(row.exam_key)) &&
          row.modality_code === 'sensation/vibration' &&
          ['absent', 'reduced'].includes(String(row.result_code)),
      ).length;
    },
    sql: (table) => `SELECT count(*) AS n FROM ${table('sensation')}
      WHERE modality_code = 'sensation/vibration' AND result_code IN ('absent', 'reduced')
      AND status <> 'entered-in-error' AND exam_key IN (${neuropathySql(table)})`,
    among: (table) => `SELECT count(*) AS n FROM ${table('sensation')} WHERE modality_code = 'sensation/vibration'
      AND status <> 'entered-in-error' AND exam_key IN (${neuropathySql(table)})`,
  },
  {
    asks: 'In how many exams were the ankle reflexes less than normal on both sides?',
    bySearch: async ({ exams }) => {
      const grades = ['0', 'trace', '1'].map((grade) => `reflexes/ankle$${grade}`).join(',');
      const lessOn = (side: string) =>
        exams(`Observation?code-value-concept=${grades}&body-site=foot.${side}&${standing}`);
      return inBoth(await lessOn('left'), await lessOn('right'));
    },
    byCsv: async ({ csv }) => {
      const rows = (await csv('reflexes')).filter(
        (row) => stands(row) && row.reflex_code === 'reflexes/ankle' && row.ordinal !== '' && Number(row.ordinal) < 2,
      );
      const on = (side: string) => examsOf(rows.filter((row) => row.side === side));
      return inBoth(on('left'), on('right'));
    },
    sql: (table) => `SELECT count(*) AS n FROM (SELECT exam_key FROM ${table('reflexes')}
      WHERE reflex_code = 'reflexes/ankle' AND ordinal < 2 AND status <> 'entered-in-error'
      GROUP BY exam_key HAVING count(DISTINCT side) = 2) AS less`,
    among: allExams,
  },
  {
    asks: 'How many exams have any red flag?',
    bySearch: async ({ exams }) =>
      (await exams(`Observation?method=computed-red-flag&value-concept=present&${standing}`)).size,
    byCsv: async ({ csv }) =>
      examsOf((await csv('red_flags')).filter((row) => stands(row) && row.state_code === 'present')).size,
    sql: (table) => `SELECT count(DISTINCT exam_key) AS n FROM ${table('red_flags')}
      WHERE state_code = 'present' AND status <> 'entered-in-error'`,
    among: allExams,
  },
  {
    asks: 'How many exams have ankle dorsiflexion weaker than 4?',
    bySearch: async ({ exams }) =>
      (await exams(`Observation?code=power/ankle-dorsiflexion&ordinal=lt4&${standing}`)).size,
    byCsv: async ({ csv }) =>
      examsOf(
        (await csv('power')).filter(
          (row) =>
            stands(row) &&
            row.movement_code === 'power/ankle-dorsiflexion' &&
            row.ordinal !== '' &&
            Number(row.ordinal) < 4,
        ),
      ).size,
    sql: (table) => `SELECT count(DISTINCT exam_key) AS n FROM ${table('power')}
      WHERE movement_code = 'power/ankle-dorsiflexion' AND ordinal < 4 AND status <> 'entered-in-error'`,
    among: allExams,
  },
  {
    asks: 'In how many exams is nothing stated of the reflexes?',
    bySearch: async ({ exams }) => {
      const stated = await exams(`Observation?code=section/reflexes&${standing}`);
      return [...(await exams(`ClinicalImpression?${standing}`))].filter((exam) => !stated.has(exam)).length;
    },
    byCsv: async ({ csv }) => {
      const panels = (await csv('completeness')).filter(stands);
      const stated = examsOf(panels.filter(({ panel_code }) => panel_code === 'section/reflexes'));
      return [...examsOf(panels)].filter((exam) => !stated.has(exam)).length;
    },
    sql: (table) => `SELECT count(DISTINCT exam_key) AS n FROM ${table('completeness')}
      WHERE status <> 'entered-in-error' AND exam_key NOT IN (SELECT exam_key FROM ${table('completeness')}
      WHERE panel_code = 'section/reflexes' AND status <> 'entered-in-error')`,
    among: allExams,
  },
  {
    asks: 'How many exams have an urgent proposal?',
    bySearch: async ({ exams }) =>
      (await exams(`ServiceRequest?priority=urgent,stat&status:not=revoked,entered-in-error`)).size,
    byCsv: async ({ csv }) =>
      examsOf(
        (await csv('requests')).filter(
          ({ status, priority }) => status === 'draft' && ['urgent', 'stat'].includes(String(priority)),
        ),
      ).size,
    sql: (table) => `SELECT count(DISTINCT exam_key) AS n FROM ${table('requests')}
      WHERE status = 'draft' AND priority IN ('urgent', 'stat')`,
    among: allExams,
  },
  {
    asks: 'How many items could not be tested because of pain?',
    bySearch: ({ count }) => count(`Observation?data-absent-reason=pain&${standing}`),
    byCsv: async ({ csv }) =>
      (await csv('findings')).filter((row) => stands(row) && row.not_tested_reason === 'pain').length,
    sql: (table) => `SELECT count(*) AS n FROM ${table('findings')}
      WHERE not_tested_reason = 'pain' AND status <> 'entered-in-error'`,
    among: (table) => `SELECT count(*) AS n FROM ${table('findings')} WHERE not_tested_reason IS NOT NULL`,
  },
  {
    asks: 'In how many exams does a cause reach 50 %?',
    bySearch: async ({ exams }) =>
      inBoth(await exams('RiskAssessment?probability=ge50'), await exams(`ClinicalImpression?${standing}`)),
    byCsv: async ({ csv }) =>
      examsOf((await csv('causes')).filter((row) => stands(row) && Number(row.probability_percent) >= 50)).size,
    sql: (table) => `SELECT count(DISTINCT exam_key) AS n FROM ${table('causes')}
      WHERE probability_percent >= 50 AND status <> 'entered-in-error'`,
    among: allExams,
  },
  {
    asks: 'In how many exams are nerve conduction studies proposed?',
    bySearch: ({ count }) => count(`ServiceRequest?code=http://loinc.org|29755-6&status=draft`),
    byCsv: async ({ csv }) =>
      (await csv('requests')).filter((row) => row.code === '29755-6' && row.status === 'draft').length,
    sql: (table) => `SELECT count(*) AS n FROM ${table('requests')}
      WHERE system = 'http://loinc.org' AND code = '29755-6' AND status = 'draft'`,
    among: allExams,
  },
];

const newStore = emptyStores();
const howMany = 60;
const invented = [
  ...inventExams(simulationModel(createExamReader()), {
    count: howMany,
    seed: 7,
    until: new Date('2026-01-01T00:00:00Z'),
  }),
];
const onBothSides = (rows: readonly object[]) => rows.map((row) => ({ ...row, side: 'both' }));
/** What two of the questions ask for, which chance need not have drawn. Invented. */
const polyneuropathyOfTheQuarter = {
  examinedAt: '2025-05-06T09:30:00Z',
  person: { ageYears: 61, sex: 'female' },
  history: { onset: { pace: 'chronic', durationDays: 900 }, course: 'progressive' },
  findings: {
    sensation: onBothSides([
      { modality: 'vibration', site: 'great-toe', result: 'absent' },
      { modality: 'vibration', site: 'medial-malleolus', result: 'reduced' },
      { modality: 'vibration', site: 'tibial-tuberosity', result: 'normal' },
      { modality: 'pinprick', site: 'great-toe', result: 'reduced' },
      { modality: 'light-touch', site: 'great-toe', result: 'reduced' },
    ]),
    reflexes: onBothSides([
      { reflex: 'ankle', grade: '0' },
      { reflex: 'knee', grade: '2' },
    ]),
  },
} as const;
/** The first exam has a red flag and urgent proposals; taken back, it counts nowhere. */
const posted: readonly InventedExam[] = invented.map((one, index) => {
  if (index === 0) return { ...one, correction: { ...one.exam, status: 'entered-in-error' } };
  return index === howMany - 1 ? { ...one, exam: { ...one.exam, ...polyneuropathyOfTheQuarter } } : one;
});
/** Some of the invented exams are taken back as well. */
const takenBack = posted.filter(({ correction }) => correction?.status === 'entered-in-error').length;

describe.each(engines)('ten questions of an audit over invented exams on %s', (engine) => {
  let service: RunningService;
  let target: StoreTarget;
  let dataDir: string;
  let ways: Ways;

  /** One number, as another program reads it from the database beside the running service. */
  async function numberBySql(text: string): Promise<number> {
    if (target.engine === 'sqlite') {
      const database = new Database(target.file, { readonly: true });
      try {
        return (database.prepare(text).get() as { n: number }).n;
      } finally {
        database.close();
      }
    }
    const client = new pg.Client({ connectionString: target.url });
    await client.connect();
    try {
      const { rows } = await client.query<{ n: string }>(text);
      return Number(rows[0]?.n);
    } finally {
      await client.end();
    }
  }
  const table = (view: string) => (engine === 'sqlite' ? `views_${view}` : `views.${view}`);

  beforeAll(async () => {
    target = await newStore(engine);
    dataDir = temporaryFolder();
    service = await startService(
      readConfig({
        PORT: '0',
        LOG_LEVEL: 'silent',
        DATA_DIR: dataDir,
        DATABASE_URL: target.engine === 'sqlite' ? `sqlite:${target.file}` : target.url,
        VIEW_TABLES_SECONDS: '1',
      }),
      compiledByBuild(),
    );
    const counts = await postExams(service.url, posted[Symbol.iterator](), () => {});
    expect(counts).toMatchObject({ exams: howMany, refused: 0 });
    ways = waysOver(service.url);
    const states = engine === 'sqlite' ? 'view_table' : 'neuroexam.view_table';
    const isCurrent = `SELECT count(*) AS n FROM ${states} WHERE snapshot IS NOT NULL AND target IS NULL`;
    const withdrawn = `SELECT count(DISTINCT exam_key) AS n FROM ${table('impressions')} WHERE status = 'entered-in-error'`;
    const isThere = async (text: string, n: number) => (await numberBySql(text).catch(() => -1)) === n;
    for (;;) {
      if (
        (await isThere(isCurrent, 10)) &&
        (await isThere(allExams(table), howMany)) &&
        (await isThere(withdrawn, takenBack))
      )
        break;
      await setTimeout(500);
    }
  }, 400_000);
  afterAll(async () => {
    await service?.stop();
    rmSync(dataDir, { recursive: true, force: true });
  });

  it.each(questions)('$asks', async ({ bySearch, byCsv, sql, among }) => {
    const answer = await numberBySql(sql(table));
    expect({ search: await bySearch(ways), csv: await byCsv(ways) }).toEqual({ search: answer, csv: answer });
    expect(answer).toBeGreaterThan(0);
    expect(answer).toBeLessThan(await numberBySql(among(table)));
  });

  it('gives by the query of the README the same number of exams with weak ankle dorsiflexion', async () => {
    const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');
    const query = /SELECT count\(DISTINCT p\.exam_key\) AS weak[^"]*/.exec(readme)?.[0] ?? '';
    const weak = questions.find(({ asks }) => asks.includes('weaker than 4'));
    const number = `SELECT weak AS n FROM (${query.replaceAll('views_', table(''))}) AS worked`;
    expect(await numberBySql(number)).toBe(await numberBySql(String(weak?.sql(table))));
  });
});

function waysOver(url: string): Ways {
  const tables = new Map<string, readonly CsvRow[]>();
  const bundle = async (address: string) => {
    const answer = await send(address, { headers: { Prefer: 'handling=strict' } });
    expect(answer.status, answer.text.slice(0, 300)).toBe(200);
    return answer.json<Bundle<FhirResource>>();
  };
  return {
    count: async (search) => (await bundle(`${url}/fhir/${search}&_summary=count`)).total ?? -1,
    async exams(search) {
      const found = new Set<string>();
      let next: string | undefined = `${url}/fhir/${search}&_elements=meta&_count=200`;
      while (next !== undefined) {
        const { entry = [], link = [] }: Bundle<FhirResource> = await bundle(next);
        for (const { resource } of entry) {
          const tag = resource?.meta?.tag?.find(({ system }) => system === systems.exam);
          if (tag?.code !== undefined) found.add(tag.code);
        }
        next = link.find(({ relation }) => relation === 'next')?.url;
      }
      return found;
    },
    async csv(view) {
      const known = tables.get(view);
      if (known !== undefined) return known;
      const rows: CsvRow[] = parse((await send(`${url}/views/${view}.csv`)).text, { columns: true });
      tables.set(view, rows);
      return rows;
    },
  };
}
