/** Clocks of two machines may differ by this much before an exam counts as made in the future. */
const clockSkewMs = 5 * 60_000;

/**
 * What is wrong with the moment of an exam whose form is already known to be right; null if nothing is.
 * @param examinedAt date, time with seconds and zone, such as `2026-03-14T10:20:00+01:00`
 */
export function examinedAtProblem(examinedAt: string, now: Date): string | null {
  const year = Number(examinedAt.slice(0, 4));
  const month = Number(examinedAt.slice(5, 7));
  const day = Number(examinedAt.slice(8, 10));
  if (year < 1900) return 'The exam is dated before 1900.';
  // Day 0 of the next month is the last of this one; no zone is involved, so the answer is the same everywhere.
  const lastDay = new Date(Date.UTC(year, month, 0)).getUTCDate();
  if (day > lastDay) return `That month has only ${lastDay} days.`;
  const time = Date.parse(examinedAt);
  if (Number.isNaN(time)) return 'That moment does not exist.';
  if (time > now.getTime() + clockSkewMs) return 'The exam is dated in the future.';
  return null;
}
