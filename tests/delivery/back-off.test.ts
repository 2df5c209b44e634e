import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pauseAfter, retryAfterMs } from '../../src/delivery/back-off.ts';

describe('the pause after a failure', () => {
  const failures = fc.integer({ min: 1, max: 5000 });
  const chance = fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true });

  it('lies between nothing and a limit that doubles up to the longest', () => {
    fc.assert(
      fc.property(failures, chance, (count, random) => {
        const pause = pauseAfter(count, { baseMs: 2000, mostMs: 3_600_000, random: () => random });
        const limit = Math.min(3_600_000, 2000 * 2 ** (count - 1));
        expect(pause).toBeGreaterThanOrEqual(0);
        expect(pause).toBeLessThanOrEqual(limit);
        expect(Math.abs(pause - random * limit)).toBeLessThanOrEqual(1);
      }),
    );
  });

  it('is as long as the server asks for, a day at most', () => {
    const never = { baseMs: 2000, mostMs: 3_600_000, random: () => 0 };
    expect(pauseAfter(1, never, 120_000)).toBe(120_000);
    expect(pauseAfter(1, never, 10 ** 12)).toBe(86_400_000);
  });
});

describe('Retry-After', () => {
  // The two examples of RFC 9110, section 10.2.3.
  it('is read as seconds or as a date', () => {
    expect(retryAfterMs('120', 0)).toBe(120_000);
    const date = 'Fri, 31 Dec 1999 23:59:59 GMT';
    expect(retryAfterMs(date, Date.UTC(1999, 11, 31, 23, 59, 0))).toBe(59_000);
    expect(retryAfterMs(date, Date.UTC(2026, 0, 1))).toBe(0);
  });

  it('counts for nothing when it cannot be read', () => {
    for (const text of [undefined, '', 'soon', '-5', '1e9', '99999999999']) expect(retryAfterMs(text, 0)).toBe(0);
  });
});
