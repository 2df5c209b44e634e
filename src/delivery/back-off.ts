export interface BackOff {
  /** Longest pause after the first failure, in ms; doubled after each further one. */
  readonly baseMs: number;
  /** Longest pause ever, in ms. */
  readonly mostMs: number;
  /** From 0 to less than 1. */
  readonly random: () => number;
}

/** However long a server asks for, in ms: a mistaken header must not hold a delivery for ever. */
const longestAskedMs = 24 * 3_600_000;

/**
 * Pause before the next attempt, in ms: anything up to a limit that doubles with each failure ("full jitter", which
 * spreads those who failed together best), and never less than the server asked for.
 * Source: Marc Brooker, Exponential Backoff And Jitter (2015).
 * @param failures from 1
 * @param askedMs  pause that the server asked for
 */
export function pauseAfter(failures: number, { baseMs, mostMs, random }: BackOff, askedMs = 0): number {
  const limit = Math.min(mostMs, baseMs * 2 ** Math.min(failures - 1, 40));
  return Math.max(Math.floor(random() * limit), Math.min(askedMs, longestAskedMs));
}

/**
 * Value of `Retry-After` in ms from now: seconds or an HTTP date; 0 for none or one that cannot be read.
 * Source: RFC 9110, section 10.2.3.
 */
export function retryAfterMs(header: string | undefined, now: number): number {
  const text = header?.trim() ?? '';
  if (/^\d{1,9}$/.test(text)) return Number(text) * 1000;
  const date = /^[A-Za-z]{3},/.test(text) ? Date.parse(text) : Number.NaN;
  return Number.isNaN(date) ? 0 : Math.max(0, date - now);
}
