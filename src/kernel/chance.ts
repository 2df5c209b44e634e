/** Chance that can be repeated: the same words give the same numbers on every machine. */

/** 32 bits that are fixed by a text. Source: FNV-1a hash, then the finaliser of MurmurHash3 (from memory). */
function hash(text: string): number {
  let bits = 0x811c9dc5;
  for (let at = 0; at < text.length; at += 1) bits = Math.imul(bits ^ text.charCodeAt(at), 0x01000193);
  bits = Math.imul(bits ^ (bits >>> 16), 0x85ebca6b);
  bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2ae35);
  return (bits ^ (bits >>> 16)) >>> 0;
}

const unit = 2 ** 32;

/** A number from 0 up to, not including, 1 that is fixed by a text and looks like chance. */
export function chanceFrom(text: string): number {
  return hash(text) / unit;
}

/** A run of numbers from 0 up to, not including, 1, one after the other. */
export class Chance {
  private state: number;

  constructor(seed: string) {
    this.state = hash(seed);
  }

  /** Source: mulberry32, a public-domain generator (from memory). */
  next(): number {
    this.state = (this.state + 0x6d2b79f5) >>> 0;
    let bits = Math.imul(this.state ^ (this.state >>> 15), this.state | 1);
    bits ^= bits + Math.imul(bits ^ (bits >>> 7), bits | 61);
    return ((bits ^ (bits >>> 14)) >>> 0) / unit;
  }

  /** Whether something with this probability happens. */
  isSo(probability: number): boolean {
    return this.next() < probability;
  }
}

/** Index of the weight into which a number from 0 to 1 falls, the weights laid end to end; they need not sum to 1. */
export function pick(weights: ArrayLike<number>, chance: number): number {
  let total = 0;
  for (let index = 0; index < weights.length; index += 1) total += weights[index] ?? 0;
  let left = chance * total;
  let last = 0;
  for (let index = 0; index < weights.length; index += 1) {
    const weight = weights[index] ?? 0;
    if (weight === 0) continue;
    if (left < weight) return index;
    left -= weight;
    last = index;
  }
  return last;
}
