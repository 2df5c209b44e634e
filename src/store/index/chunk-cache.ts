import { type Line, unpackLines } from './lines.ts';

/** Characters of opened chunks that a process keeps at hand: some 2,000 chunks, or the newest few hundred exams. */
const mostCharacters = 32 * 1024 * 1024;

/**
 * The chunks that were read last, opened. A chunk never changes, so what is kept stays true; the one that was not asked
 * for longest goes first.
 */
export class ChunkCache {
  readonly #opened = new Map<number, readonly Line[]>();
  #characters = 0;

  /** Chunks of these numbers that are at hand. */
  find(numbers: Iterable<number>): Map<number, readonly Line[]> {
    const found = new Map<number, readonly Line[]>();
    for (const n of numbers) {
      const lines = this.#opened.get(n);
      if (lines === undefined) continue;
      this.#opened.delete(n);
      this.#opened.set(n, lines);
      found.set(n, lines);
    }
    return found;
  }

  /** Opens a chunk and keeps it. */
  open(n: number, chunk: Buffer): readonly Line[] {
    const lines = unpackLines(chunk);
    this.#opened.set(n, lines);
    this.#characters += sizeOf(lines);
    for (const [oldest, others] of this.#opened) {
      if (this.#characters <= mostCharacters) break;
      this.#opened.delete(oldest);
      this.#characters -= sizeOf(others);
    }
    return lines;
  }
}

function sizeOf(lines: readonly Line[]): number {
  return lines.reduce((sum, line) => sum + line.length, 0);
}
