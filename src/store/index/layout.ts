import { deflateRawSync, inflateRawSync } from 'node:zlib';
import type { IndexEntries, Token } from '../../search/index-entries.ts';
import type { StoredType } from './stored-types.ts';
import { present, type TokenIds } from './tokens.ts';

/**
 * How the index is kept. The resources that one write brings are dealt into parts of up to 32 with the same clinical
 * date, and each has its bit there. A posting says for one value of one search parameter which bits of a part have it:
 * "normal" is one row for a whole section, not one for each finding. A search joins postings by part and combines their
 * bits, so that AND, OR and NOT are arithmetic on integers.
 */
export const bitsOfPart = 32;

/** The part that a resource lies in, by its key. */
export function partOf(key: number): number {
  return Math.floor(key / bitsOfPart);
}

/** Numbers of parts and chunks that are kept free for one batch. */
export const partsOfBatch = 128;
export const chunksOfBatch = 1024;

/** The batch that brought a resource, by its key. */
export function batchOf(key: number): number {
  return Math.floor(partOf(key) / partsOfBatch);
}

/** Clinical date of what has none; below every date. */
export const noMoment = -8_640_000_000_000_001;

export interface LaidOutResource {
  readonly type: StoredType;
  readonly id: string;
  readonly entries: IndexEntries;
  /** ms since 1970 of its last change. */
  readonly updated: number;
}

export interface Posting {
  readonly param: number;
  readonly token: number;
  readonly moment: number;
  readonly part: number;
  readonly mask: number;
}

export interface RangePosting {
  readonly param: number;
  readonly moment: number;
  readonly part: number;
  /** Code that the value belongs to, where that counts. */
  readonly about: number;
  readonly unit: number;
  readonly low: number;
  readonly high: number;
  readonly mask: number;
}

export interface Layout {
  /** Key of each resource, in the order given. */
  readonly keys: readonly number[];
  readonly postings: readonly Posting[];
  readonly ranges: readonly RangePosting[];
  /** Parameter, key of the resource, key of the one it refers to. */
  readonly links: readonly (readonly [param: number, from: number, to: number])[];
}

/** Numbers of the search parameters of the types. */
export interface ParameterIds {
  /** Where the values of a parameter are indexed: itself, or those that it is the union of. */
  under(type: StoredType, name: string): readonly number[];
  /** Whether values are indexed under the parameter itself. */
  isIndexed(type: StoredType, name: string): boolean;
  number(type: StoredType, name: string): number;
}

/**
 * Lays out the resources of one batch.
 * @throws RangeError for more resources than a batch can hold (4,096)
 */
export function layOut(
  batch: number,
  resources: readonly LaidOutResource[],
  parameters: ParameterIds,
  tokens: TokenIds,
): Layout {
  const open = new Map<number, { part: number; used: number }>();
  let parts = 0;
  const keys = resources.map(({ entries }) => {
    const moment = entries.at ?? noMoment;
    let place = open.get(moment);
    if (place === undefined || place.used === bitsOfPart) {
      if (parts === partsOfBatch) throw new RangeError('A batch cannot hold so many resources.');
      place = { part: batch * partsOfBatch + parts, used: 0 };
      parts += 1;
      open.set(moment, place);
    }
    place.used += 1;
    return place.part * bitsOfPart + place.used - 1;
  });
  const keyOf = new Map(resources.map(({ type, id }, index) => [`${type}/${id}`, keys[index] as number]));
  const postings = new Map<string, Posting & { mask: number }>();
  const ranges = new Map<string, RangePosting & { mask: number }>();
  const links: [number, number, number][] = [];

  for (const [index, { type, entries, updated }] of resources.entries()) {
    const key = keys[index] as number;
    const part = partOf(key);
    const bit = (1 << (key % bitsOfPart)) >>> 0;
    const moment = entries.at ?? noMoment;
    const post = (param: number, token: number) => {
      const at = `${part} ${param} ${token}`;
      const row = postings.get(at);
      if (row === undefined) postings.set(at, { param, token, moment, part, mask: bit });
      else row.mask = (row.mask | bit) >>> 0;
    };
    const postRange = (param: number, about: number, unit: number, low: number, high: number) => {
      const at = `${part} ${param} ${about} ${unit} ${low} ${high}`;
      const row = ranges.get(at);
      if (row === undefined) ranges.set(at, { param, moment, part, about, unit, low, high, mask: bit });
      else row.mask = (row.mask | bit) >>> 0;
    };
    const seen = (name: string): number => {
      const param = parameters.number(type, name);
      post(param, present);
      return param;
    };
    seen('_id');
    postRange(parameters.number(type, '_lastUpdated'), present, present, updated, updated);
    for (const { param, token } of entries.tokens) post(seen(param), tokens.id(token));
    for (const { param, first, second } of entries.pairs) post(seen(param), tokens.pair(first, second));
    const numberOf = (token: Token | undefined) => (token === undefined ? present : tokens.id(token));
    for (const { param, low, high, unit, of } of entries.ranges) {
      postRange(seen(param), numberOf(of), numberOf(unit), low, high);
    }
    for (const { param, target } of entries.links) {
      const to = keyOf.get(target);
      if (to !== undefined) links.push([seen(param), key, to]);
    }
  }
  return { keys, postings: [...postings.values()], ranges: [...ranges.values()], links };
}

/** What has to be known of a layout to take it back, and its links: small, and read only when they are asked for. */
export interface LayoutRecord {
  /** Parameter, token, clinical date, part. */
  readonly postings: readonly (readonly [number, number, number, number])[];
  /** Parameter, clinical date, part. */
  readonly ranges: readonly (readonly [number, number, number])[];
  readonly links: Layout['links'];
}

export function packLayout({ postings, ranges, links }: Layout): Buffer {
  const record: LayoutRecord = {
    postings: postings.map(({ param, token, moment, part }) => [param, token, moment, part]),
    ranges: [...new Map(ranges.map((row) => [`${row.param} ${row.part}`, row])).values()].map(
      ({ param, moment, part }) => [param, moment, part],
    ),
    links,
  };
  return deflateRawSync(Buffer.from(JSON.stringify(record), 'utf8'), { level: 1 });
}

export function unpackLayout(bytes: Buffer): LayoutRecord {
  return JSON.parse(inflateRawSync(bytes).toString('utf8')) as LayoutRecord;
}
