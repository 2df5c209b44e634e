import { promisify } from 'node:util';
import { inflate } from 'node:zlib';
import type { Bundle } from 'fhir/r4.js';
import sql from 'sql-template-tag';
import { servedResources } from '../../fhir/served.ts';
import type { Engine, Session } from '../engine.ts';
import { batchOfExam, type IndexTools, writeBatch, writeExamResources } from './write-batch.ts';

const expand = promisify(inflate) as (bytes: Buffer) => Promise<Buffer>;

const settingName = 'index';

/**
 * Brings the index of every exam to the present rules, when it was made by others: exams of a layout without an index
 * are read in from their Bundles, version by version; the others are laid out again. Stops and goes on at any exam.
 */
export async function reindex(engine: Engine, tools: IndexTools, fingerprint: string): Promise<void> {
  const [setting] = await engine.reader.all<{ value: string }>(
    sql`SELECT value FROM setting WHERE name = ${settingName}`,
  );
  if (setting?.value === fingerprint) return;
  const [last] = await engine.reader.all<{ n: number | null }>(sql`SELECT max(n) AS n FROM batch`);
  for await (const exams of engine.stream<{ n: number }>(sql`SELECT n FROM exam ORDER BY n`)) {
    for (const { n } of exams) await reindexExam(engine, tools, n, last?.n ?? 0);
  }
  const shared = await engine.reader.all<{ n: number; writtenAt: number }>(
    sql`SELECT n, written_at AS "writtenAt" FROM batch WHERE exam IS NULL AND layout IS NOT NULL AND n <= ${last?.n ?? 0}`,
  );
  for (const { n, writtenAt } of shared) {
    const { remember } = await engine.write((session) =>
      writeBatch(session, tools, { exam: null, replaces: n }, [], writtenAt),
    );
    remember();
  }
  await engine.write((session) =>
    session.run(
      sql`INSERT INTO setting (name, value) VALUES (${settingName}, ${fingerprint})
          ON CONFLICT (name) DO UPDATE SET value = excluded.value`,
    ),
  );
}

/** @param last number of the last batch of the earlier rules */
async function reindexExam(engine: Engine, tools: IndexTools, exam: number, last: number): Promise<void> {
  const { remember } = await engine.write(async (session) => {
    const batch = await batchOfExam(session, exam);
    if (batch !== null && batch > last) return { remember: () => {} };
    if (batch === null) return { remember: await readIn(session, tools, exam) };
    const [row] = await session.all<{ version: number; writtenAt: number }>(
      sql`SELECT version, written_at AS "writtenAt" FROM batch WHERE n = ${batch}`,
    );
    const { version, writtenAt } = row as { version: number; writtenAt: number };
    return writeBatch(session, tools, { exam: { n: exam, version }, replaces: batch }, [], writtenAt);
  });
  remember();
}

async function readIn(session: Session, tools: IndexTools, exam: number): Promise<() => void> {
  const versions = await session.all<{ version: number; receivedAt: string; bundle: Buffer }>(
    sql`SELECT version, received_at AS "receivedAt", bundle FROM exam_version WHERE exam = ${exam} ORDER BY version`,
  );
  const done: (() => void)[] = [];
  for (const { version, receivedAt, bundle } of versions) {
    const transaction = JSON.parse((await expand(bundle)).toString('utf8')) as Bundle;
    const resources = servedResources(transaction);
    done.push(await writeExamResources(session, tools, { n: exam, version }, resources, Date.parse(receivedAt)));
  }
  return () => {
    for (const remember of done) remember();
  };
}
