const newline = 0x0a;

export interface Line {
  /** Counted from 1. */
  readonly number: number;
  /** Without the end of line; null when it was longer than is read. */
  readonly bytes: Uint8Array | null;
  /** Offset in the input of the byte behind this line and its end. */
  readonly end: number;
}

/**
 * The lines of an input, one after the other, without ever holding more than one and one chunk. A line above the limit is
 * passed over and told as such. An end of line after the last line makes no further line.
 * @param start offset and number of lines of what was read before
 */
export async function* readLines(
  chunks: AsyncIterable<Uint8Array>,
  longestBytes: number,
  start: { readonly offset: number; readonly lines: number } = { offset: 0, lines: 0 },
): AsyncGenerator<Line> {
  let number = start.lines;
  let offset = start.offset;
  let parts: Uint8Array[] = [];
  let length = 0;
  const take = (part: Uint8Array): void => {
    length += part.length;
    if (length > longestBytes) parts = [];
    else if (part.length > 0) parts.push(part);
  };
  const finish = (): Line => {
    number += 1;
    const bytes = length > longestBytes ? null : Buffer.concat(parts, length);
    parts = [];
    length = 0;
    return { number, bytes, end: offset };
  };
  for await (const chunk of chunks) {
    let from = 0;
    for (;;) {
      const at = chunk.indexOf(newline, from);
      if (at < 0) break;
      take(chunk.subarray(from, at));
      offset += at + 1 - from;
      yield finish();
      from = at + 1;
    }
    take(chunk.subarray(from));
    offset += chunk.length - from;
  }
  if (length > 0) yield finish();
}

/** Whether a line has nothing but spaces, tabs and a carriage return. */
export function isBlank(bytes: Uint8Array): boolean {
  return bytes.every((byte) => byte === 0x20 || byte === 0x09 || byte === 0x0d);
}
