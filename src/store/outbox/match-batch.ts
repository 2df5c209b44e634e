import sql, { join } from 'sql-template-tag';
import type { SearchQuery } from '../../search/query.ts';
import type { Session } from '../engine.ts';
import { chunksOfBatch, partsOfBatch, unpackLayout } from '../index/layout.ts';
import { type MatchRow, matchingParts, rowsAt } from '../search/find-matches.ts';
import { keysIn } from '../search/keys.ts';
import { type PlanTools, planFilters } from '../search/plan.ts';

/**
 * What a search would find among the resources that a batch brought or changed; what a correction left as it was is not
 * among them. Within the transaction that writes the batch, so the answer is about that version and no later one.
 * @param moments clinical dates in the batch; with them the index is read at one place, however much is kept
 */
export async function matchesInBatch(
  tools: PlanTools,
  query: SearchQuery,
  batch: number,
  moments: readonly number[],
): Promise<readonly MatchRow[]> {
  if (moments.length === 0) return [];
  const { session, parameters } = tools;
  const parts = await matchingParts(session, parameters, query, await planFilters(tools, query));
  const first = batch * partsOfBatch;
  const inBatch = sql`AND d.moment IN (${join(moments)}) AND d.part >= ${first} AND d.part < ${first + partsOfBatch}`;
  const found = await session.all<{ part: number; m: number }>(parts.query({ after: inBatch }));
  const rows = await rowsAt(
    session,
    found.flatMap(({ part, m }) => keysIn(part, m)),
  );
  // A new version of a resource lies in a chunk of the batch that brought it.
  return rows.filter(({ chunk }) => Math.floor(chunk / chunksOfBatch) === batch);
}

/** Clinical dates of the resources of a batch, in ms since 1970. */
export async function momentsOfBatch(session: Session, batch: number): Promise<readonly number[]> {
  const [row] = await session.all<{ layout: Buffer | null }>(sql`SELECT layout FROM batch WHERE n = ${batch}`);
  if (row?.layout == null) return [];
  return [...new Set(unpackLayout(row.layout).postings.map(([, , moment]) => moment))];
}
