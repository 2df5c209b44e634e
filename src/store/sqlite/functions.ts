import type { Database } from 'better-sqlite3';

/** Gives a connection the two functions over sets of bits that PostgreSQL has by itself. */
export function addFunctions(db: Database): void {
  db.function('popcount', { deterministic: true, directOnly: false }, (mask: unknown) => bitsIn(Number(mask)));
  db.aggregate('bit_or', {
    start: 0,
    step: (sum: number, mask: unknown) => (sum | Number(mask)) >>> 0,
    deterministic: true,
  });
}

/** Number of bits set in an unsigned 32-bit number. */
export function bitsIn(mask: number): number {
  let rest = mask >>> 0;
  let count = 0;
  while (rest !== 0) {
    rest = (rest & (rest - 1)) >>> 0;
    count += 1;
  }
  return count;
}
