import { RequestError } from '../kernel/errors.ts';

/** Ends of a span of time in ms since 1970, both included. */
export interface Span {
  readonly from: number;
  readonly until: number;
}

const form = /^[1-9]\d{3}(-\d{2}(-\d{2}(T\d{2}:\d{2}(:\d{2}(\.\d{1,3})?)?(Z|[+-]\d{2}:\d{2}))?)?)?$/;

/**
 * The span between two dates, both included; a year, month or day stands for all of it, in UTC.
 * @throws RequestError BAD_REQUEST when one is no date, or the end lies before the start
 */
export function periodOf(periodStart: string, periodEnd: string): Span {
  const [start, end] = [spanOf(periodStart), spanOf(periodEnd)];
  for (const [name, span] of Object.entries({ periodStart: start, periodEnd: end })) {
    if (span === undefined)
      throw bad(`${name} must be a date such as 2026, 2026-03, 2026-03-14 or 2026-03-14T10:20:00Z.`);
  }
  const span = { from: (start as Span).from, until: (end as Span).until };
  if (span.until < span.from) throw bad('periodEnd must not lie before periodStart.');
  return span;
}

/** All that a date or time stands for by its precision; undefined when it is none. */
export function spanOf(text: string): Span | undefined {
  if (!form.test(text)) return undefined;
  const from = Date.parse(text);
  // A 31 February would otherwise become a day of March.
  if (Number.isNaN(from) || (!text.includes('T') && !new Date(from).toISOString().startsWith(text))) return undefined;
  const date = new Date(from);
  if (text.length === 4) return { from, until: date.setUTCFullYear(date.getUTCFullYear() + 1) - 1 };
  if (text.length === 7) return { from, until: date.setUTCMonth(date.getUTCMonth() + 1) - 1 };
  if (text.length === 10) return { from, until: from + 86_400_000 - 1 };
  const [, seconds, fraction] = /T\d{2}:\d{2}(:\d{2})?(\.\d+)?/.exec(text) ?? [];
  if (seconds === undefined) return { from, until: from + 60_000 - 1 };
  return { from, until: fraction === undefined ? from + 999 : from };
}

function bad(message: string): RequestError {
  return new RequestError('BAD_REQUEST', message);
}
