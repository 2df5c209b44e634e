/** Ends of a span of time in ms since 1970, both included. */
export interface DateRange {
  readonly low: number;
  readonly high: number;
}

/** Ends of what JavaScript and FHIR can name; they stand for an open end of a Period. */
export const earliest = -8.64e15;
export const latest = 8.64e15;

const form =
  /^(?<year>\d{4})(?:-(?<month>0[1-9]|1[0-2])(?:-(?<day>0[1-9]|[12]\d|3[01])(?:T(?<hour>[01]\d|2[0-3]):(?<minute>[0-5]\d)(?::(?<second>[0-5]\d|60)(?:\.(?<fraction>\d{1,9}))?)?(?<zone>Z|[+ -](?:0\d|1[0-4]):[0-5]\d)?)?)?)?$/;

/**
 * The span that a date or time stands for by its precision: a year, month, day, minute, second or fraction of one.
 * A time without a zone is taken as UTC; a blank before the offset is a `+` that a URL has eaten.
 * @returns null when the text is no such date
 * Source: FHIR R4, Search, 3.1.1.5.2 date.
 */
export function dateRange(text: string): DateRange | null {
  const parts = form.exec(text)?.groups;
  if (parts === undefined) return null;
  const { year = '', month, day, hour, minute, second, fraction, zone } = parts;
  const y = Number(year);
  if (month === undefined) return { low: utc(y, 0, 1), high: utc(y + 1, 0, 1) - 1 };
  const m = Number(month) - 1;
  if (day === undefined) return { low: utc(y, m, 1), high: utc(y, m + 1, 1) - 1 };
  const start = utc(y, m, Number(day));
  if (start >= utc(y, m + 1, 1)) return null; // 31 February
  if (hour === undefined) return { low: start, high: start + dayMs - 1 };
  const time = start + Number(hour) * 3_600_000 + Number(minute) * 60_000 - offsetMs(zone);
  if (second === undefined) return { low: time, high: time + 60_000 - 1 };
  const low = time + Number(second) * 1000;
  if (fraction === undefined) return { low, high: low + 999 };
  const ms = Number(fraction.slice(0, 3).padEnd(3, '0'));
  return { low: low + ms, high: low + ms + 10 ** Math.max(0, 3 - fraction.length) - 1 };
}

const dayMs = 86_400_000;

/** `Date.UTC` takes the years 0 to 99 for the twentieth century. */
function utc(year: number, month: number, day: number): number {
  return new Date(0).setUTCFullYear(year, month, day);
}

function offsetMs(zone: string | undefined): number {
  if (zone === undefined || zone === 'Z') return 0;
  const minutes = Number(zone.slice(1, 3)) * 60 + Number(zone.slice(4, 6));
  return (zone.startsWith('-') ? -minutes : minutes) * 60_000;
}
