import sql, { join } from 'sql-template-tag';
import type { Session } from '../engine.ts';
import { batchOf, bitsOfPart, partOf, unpackLayout } from '../index/layout.ts';
import { numberOfType, type StoredType } from '../index/stored-types.ts';

/** Part to the mask of the resources meant in it. */
export type PartMasks = ReadonlyMap<number, number>;

export function masksOf(keys: Iterable<number>): PartMasks {
  const masks = new Map<number, number>();
  for (const key of keys) {
    const part = partOf(key);
    masks.set(part, ((masks.get(part) ?? 0) | (1 << (key % bitsOfPart))) >>> 0);
  }
  return masks;
}

/** Keys of the bits of a mask, lowest first. */
export function keysIn(part: number, mask: number): number[] {
  const keys: number[] = [];
  for (let bit = 0; bit < bitsOfPart; bit += 1) if ((mask >>> bit) & 1) keys.push(part * bitsOfPart + bit);
  return keys;
}

export async function keysOfIds(session: Session, type: StoredType, ids: readonly string[]): Promise<PartMasks> {
  if (ids.length === 0) return new Map();
  const rows = await session.all<{ key: number }>(
    sql`SELECT key FROM resource WHERE type = ${numberOfType(type)} AND id IN (${join(ids)})`,
  );
  return masksOf(rows.map(({ key }) => key));
}

/**
 * Resources that refer by a parameter to one of those given; both belong to the same exam.
 * @param targets each `Type/id`, or an id alone
 */
export async function keysReferringTo(session: Session, param: number, targets: readonly string[]): Promise<PartMasks> {
  const ids = targets.map((target) => target.slice(target.lastIndexOf('/') + 1));
  const rows = await session.all<{ key: number }>(sql`SELECT key FROM resource WHERE id IN (${join(ids)})`);
  const wanted = new Set(rows.map(({ key }) => key));
  const sources: number[] = [];
  for (const [from, to] of await linksAround(session, [...wanted], param)) if (wanted.has(to)) sources.push(from);
  return masksOf(sources);
}

/** All links by a parameter within the batches of the resources given: key of the source, key of the target. */
export async function linksAround(
  session: Session,
  keys: readonly number[],
  param: number,
): Promise<(readonly [number, number])[]> {
  const batches = [...new Set(keys.map(batchOf))];
  if (batches.length === 0) return [];
  const rows = await session.all<{ layout: Buffer | null }>(
    sql`SELECT layout FROM batch WHERE n IN (${join(batches)})`,
  );
  return rows.flatMap(({ layout }) =>
    layout === null
      ? []
      : unpackLayout(layout)
          .links.filter(([linkParam]) => linkParam === param)
          .map(([, from, to]) => [from, to] as const),
  );
}
