import { setImmediate } from 'node:timers/promises';
import sql from 'sql-template-tag';
import type { Identified } from '../fhir/entry.ts';
import type { Engine, Session } from './engine.ts';
import { partsOfBatch } from './index/layout.ts';
import { present } from './index/tokens.ts';
import { batchOfExam, type IndexTools, resourcesOf } from './index/write-batch.ts';
import type { ExamQuery } from './resource-repository.ts';

/**
 * The resources of each exam whose impression has its clinical date in the span. Which exams these are is read as of one
 * moment; one that is corrected while the stream runs comes as it is when its turn has come.
 */
export async function* streamExams(
  engine: Engine,
  { parameters }: IndexTools,
  { from, until }: ExamQuery,
): AsyncIterable<readonly Identified[]> {
  const query = sql`
    SELECT part FROM posting
    WHERE param = ${parameters.number('ClinicalImpression', '_id')} AND token = ${present}
      AND moment >= ${from} AND moment <= ${until}
    ORDER BY moment, part`;
  for await (const rows of engine.stream<{ part: number }>(query)) {
    for (const { part } of rows) {
      yield await examIn(engine.reader, Math.floor(part / partsOfBatch));
      await setImmediate();
    }
  }
}

/** A correction moves an exam to a new batch and empties the one before. */
async function examIn(session: Session, batch: number): Promise<readonly Identified[]> {
  const rows = await resourcesOf(session, batch);
  if (rows.length > 0) return rows.map(({ line }) => JSON.parse(line) as Identified);
  const [moved] = await session.all<{ exam: number | null }>(sql`SELECT exam FROM batch WHERE n = ${batch}`);
  const current = moved?.exam == null ? null : await batchOfExam(session, moved.exam);
  return current === null || current === batch ? [] : examIn(session, current);
}
