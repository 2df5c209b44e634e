import type { Spelling } from '../settings.ts';

const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;

/**
 * The moment as it was recorded, in the time of the place where it was: "14 Mar 2026, 10:20 (+01:00)".
 * @param examinedAt ISO 8601 with zone
 */
export function dateInWords(examinedAt: string, spelling: Spelling): string {
  const [, year, month, day, time, zone] =
    /^(\d{4})-(\d{2})-(\d{2})T(\d{2}:\d{2})[\d:.]*(Z|[+-]\d{2}:\d{2})$/.exec(examinedAt) ?? [];
  if (year === undefined) return examinedAt;
  const name = months[Number(month) - 1];
  const date = spelling === 'us' ? `${name} ${Number(day)}, ${year}` : `${Number(day)} ${name} ${year}`;
  return `${date}, ${time} (${zone === 'Z' ? 'UTC' : zone})`;
}
