import { promisify } from 'node:util';
import { deflateRaw, inflateRawSync } from 'node:zlib';
import type { Identified } from '../../fhir/entry.ts';
import { remembered } from '../../kernel/remembered.ts';

/**
 * A kept resource is one line of JSON that begins with type, id and `meta`; version and time of its last change stand in
 * columns and are put into the line when it is read. Lines lie together in compressed chunks, since one alone would
 * hardly shrink and a whole exam would have to be opened for a single finding.
 */
export type Line = string;

const compress = promisify(deflateRaw) as (bytes: Buffer, options: { level: number }) => Promise<Buffer>;

/** The higher levels take three times as long for a few percent. */
const fastest = { level: 1 };

/** Characters of a chunk before it is closed: about ten findings. */
const chunkSize = 16_000;

export function lineOf(resource: Identified): Line {
  const [first, second, third] = Object.keys(resource);
  const isInOrder = first === 'resourceType' && second === 'id' && (third === 'meta' || !('meta' in resource));
  if (isInOrder) return JSON.stringify(resource);
  const { resourceType, id, meta, ...rest } = resource as Identified & { meta?: object };
  return JSON.stringify({ resourceType, id, ...(meta === undefined ? {} : { meta }), ...rest });
}

/** Times that were written out last; a page asks for few, and for the same ones again. */
const mostInstants = 10_000;
const instantOf = remembered(mostInstants, (ms: number) => new Date(ms).toISOString());

/** The line as answered. @param updated ms since 1970 */
export function servedLine(line: Line, version: number, updated: number): string {
  const own = `"versionId":"${version}","lastUpdated":"${instantOf(updated)}"`;
  const start = line.indexOf('"', line.indexOf('"id":"') + 6) + 1;
  const meta = ',"meta":{';
  return line.startsWith(meta, start)
    ? `${line.slice(0, start)}${meta}${own},${line.slice(start + meta.length)}`
    : `${line.slice(0, start)}${meta}${own}}${line.slice(start)}`;
}

export interface PackedLines {
  readonly chunks: readonly Buffer[];
  /** Chunk and place in it of each line, in the order given. */
  readonly places: readonly { readonly chunk: number; readonly slot: number }[];
}

export async function packLines(lines: readonly Line[]): Promise<PackedLines> {
  const groups: Line[][] = [];
  const places: { chunk: number; slot: number }[] = [];
  let room = 0;
  for (const line of lines) {
    if (room < line.length || groups.length === 0) {
      groups.push([]);
      room = chunkSize;
    }
    const group = groups.at(-1) ?? [];
    places.push({ chunk: groups.length - 1, slot: group.length });
    group.push(line);
    room -= line.length;
  }
  const chunks = await Promise.all(groups.map((group) => compress(Buffer.from(group.join('\n'), 'utf8'), fastest)));
  return { chunks, places };
}

/** Every line of a chunk, at once: to hand so little to another thread takes longer. JSON text has no line breaks of its own. */
export function unpackLines(chunk: Buffer): Line[] {
  return inflateRawSync(chunk).toString('utf8').split('\n');
}
