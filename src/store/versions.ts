import type { Session } from './engine.ts';
import type { ChunkCache } from './index/chunk-cache.ts';
import { servedLine } from './index/lines.ts';
import { storedTypes } from './index/stored-types.ts';
import { linesAt } from './index/write-batch.ts';
import type { StoredResource } from './resource-repository.ts';

/** A version of a resource as it lies in a table. */
export interface VersionRow {
  readonly type: number;
  readonly id: string;
  readonly version: number;
  readonly updated: number;
  readonly chunk: number;
  readonly slot: number;
}

/**
 * The versions with their content, in the order given; without those of an exam that was erased between the reading of
 * the rows and of their content.
 * @throws StoreError
 */
export async function openVersions(
  session: Session,
  rows: readonly VersionRow[],
  cache?: ChunkCache,
): Promise<StoredResource[]> {
  if (rows.length === 0) return [];
  const lines = await linesAt(session, rows, cache);
  const opened: StoredResource[] = [];
  for (const [index, { type, id, version, updated }] of rows.entries()) {
    const line = lines[index];
    if (line === undefined) continue;
    opened.push({ type: storedTypes[type] as string, id, version, updated, json: servedLine(line, version, updated) });
  }
  return opened;
}
