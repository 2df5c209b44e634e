/**
 * The exams met so far, by the first 48 bits of their ids, with the line of each: a table with open addressing of twelve
 * bytes a place, so that a million exams take some 25 MB. Two of a million exams share their 48 bits with a chance of 0.2 %,
 * and what follows from that is one needless warning.
 */
export class SeenExams {
  private keys = new Float64Array(1 << 12);
  private lines = new Uint32Array(1 << 12);
  private count = 0;

  /** The line on which the exam was met before, or undefined, and then it is remembered. */
  meet(key: number, line: number): number | undefined {
    if (2 * (this.count + 1) > this.keys.length) this.grow();
    const place = this.placeOf(key);
    if (this.lines[place] !== 0) return this.lines[place];
    this.keys[place] = key;
    this.lines[place] = line;
    this.count += 1;
    return undefined;
  }

  private placeOf(key: number): number {
    const last = this.keys.length - 1;
    let place = key % this.keys.length;
    while (this.lines[place] !== 0 && this.keys[place] !== key) place = (place + 1) & last;
    return place;
  }

  private grow(): void {
    const { keys, lines } = this;
    this.keys = new Float64Array(2 * keys.length);
    this.lines = new Uint32Array(2 * keys.length);
    lines.forEach((line, at) => {
      if (line === 0) return;
      const place = this.placeOf(keys[at] ?? 0);
      this.keys[place] = keys[at] ?? 0;
      this.lines[place] = line;
    });
  }
}

/** Bytes of one exam in the record of those met: the key, then the line. */
export const seenBytes = 12;

/** First 48 bits of an id, which is a UUID by name and so spread evenly. */
export function keyOf(id: string): number {
  return Number.parseInt(id.replaceAll('-', '').slice(0, 12), 16);
}
