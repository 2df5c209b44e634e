import sql, { join } from 'sql-template-tag';
import type { Include, SearchQuery } from '../../search/query.ts';
import type { Session } from '../engine.ts';
import { type ParameterIds, partOf } from '../index/layout.ts';
import { isStoredType, numberOfType, type StoredType, storedTypes } from '../index/stored-types.ts';
import { numberOfKind } from '../index/tokens.ts';
import type { SearchResult } from '../resource-repository.ts';
import type { MatchRow } from './find-matches.ts';
import { keysIn, linksAround } from './keys.ts';

interface IncludeTools {
  readonly session: Session;
  readonly parameters: ParameterIds;
  readonly search: (query: SearchQuery) => Promise<SearchResult>;
}

/** How many steps an iterative include follows: no chain of references that is made here is longer. */
const mostSteps = 5;

/** A resource that is followed from. */
interface Node {
  readonly key: number;
  readonly type: string;
  readonly id: string;
}

/** Keys of what a page brings along, none of it twice and none of it a match. */
export async function includedKeys(
  tools: IncludeTools,
  query: SearchQuery,
  matches: readonly MatchRow[],
  most: number,
): Promise<readonly number[]> {
  if (query.includes.length + query.revIncludes.length === 0 || matches.length === 0) return [];
  const start = matches.map(({ key, type, id }) => ({ key, type: storedTypes[type] as string, id }));
  const seen = new Set(matches.map(({ key }) => key));
  const found: Node[] = [];
  let edge: readonly Node[] = start;
  for (let step = 0; step < mostSteps && edge.length > 0; step += 1) {
    const counts = (include: Include) => step === 0 || include.isIterative;
    const reached = new Set<number>();
    for (const include of query.includes.filter(counts)) {
      for (const key of await targets(tools, include, edge)) reached.add(key);
    }
    for (const include of query.revIncludes.filter(counts)) {
      for (const key of await sources(tools, include, edge)) reached.add(key);
    }
    const fresh = [...reached].filter((key) => !seen.has(key)).slice(0, most - found.length);
    for (const key of fresh) seen.add(key);
    edge = await nodes(tools.session, fresh);
    found.push(...edge);
  }
  return found.map(({ key }) => key);
}

/** What the nodes refer to by the parameter. */
async function targets(
  { session, parameters }: IncludeTools,
  include: Include,
  edge: readonly Node[],
): Promise<number[]> {
  const from = edge.filter(({ type }) => type === include.source);
  if (from.length === 0) return [];
  const param = parameters.number(include.source as StoredType, include.param);
  const keys = new Set(from.map(({ key }) => key));
  const links = await linksAround(session, [...keys], param);
  const linked = links.filter(([source]) => keys.has(source)).map(([, target]) => target);
  const shared = await sharedTargets(session, param, [...keys]);
  return ofType(session, [...linked, ...shared], include.targetType);
}

/** Resources of no exam, such as the software, are referred to by a token. */
async function sharedTargets(session: Session, param: number, keys: readonly number[]): Promise<number[]> {
  const parts = [...new Set(keys.map(partOf))];
  const rows = await session.all<{ part: number; mask: number; system: string; code: string }>(
    sql`SELECT p.part, p.mask, t.system, t.code FROM posting AS p JOIN token AS t ON t.n = p.token
        WHERE p.param = ${param} AND p.part IN (${join(parts)}) AND t.kind = ${numberOfKind('reference')}`,
  );
  const wanted = new Set(keys);
  const named = rows.filter(
    ({ part, mask, system }) => isStoredType(system) && keysIn(part, mask).some((key) => wanted.has(key)),
  );
  if (named.length === 0) return [];
  const found = await session.all<{ key: number }>(
    sql`SELECT key FROM resource WHERE ${join(
      named.map(({ system, code }) => sql`(type = ${numberOfType(system as StoredType)} AND id = ${code})`),
      ' OR ',
    )}`,
  );
  return found.map(({ key }) => key);
}

/** What refers to the nodes by the parameter. */
async function sources(tools: IncludeTools, include: Include, edge: readonly Node[]): Promise<number[]> {
  const { session, parameters } = tools;
  const to = edge.filter(({ type }) => include.targetType === undefined || type === include.targetType);
  if (to.length === 0) return [];
  const param = parameters.number(include.source as StoredType, include.param);
  const keys = new Set(to.map(({ key }) => key));
  const links = await linksAround(session, [...keys], param);
  const linked = links.filter(([, target]) => keys.has(target)).map(([source]) => source);
  const shared = await session.all<{ part: number; mask: number }>(
    sql`SELECT part, mask FROM posting WHERE param = ${param} AND token IN (
          SELECT n FROM token WHERE kind = ${numberOfKind('reference')} AND (${join(
            to.map(({ type, id }) => sql`(system = ${type} AND code = ${id})`),
            ' OR ',
          )})) ORDER BY moment DESC, part DESC LIMIT 200`,
  );
  return [...linked, ...shared.flatMap(({ part, mask }) => keysIn(part, mask))];
}

async function ofType(session: Session, keys: readonly number[], type: string | undefined): Promise<number[]> {
  if (type === undefined || keys.length === 0) return [...keys];
  return (await nodes(session, keys)).filter((node) => node.type === type).map(({ key }) => key);
}

async function nodes(session: Session, keys: readonly number[]): Promise<Node[]> {
  if (keys.length === 0) return [];
  const rows = await session.all<{ key: number; type: number; id: string }>(
    sql`SELECT key, type, id FROM resource WHERE key IN (${join(keys)})`,
  );
  const byKey = new Map(rows.map((row) => [row.key, row]));
  return keys.flatMap((key) => {
    const row = byKey.get(key);
    return row === undefined ? [] : [{ key, type: storedTypes[row.type] as string, id: row.id }];
  });
}
