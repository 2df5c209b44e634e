import { dateRange } from './date-range.ts';
import { splitEscaped, unescaped } from './escaped.ts';
import { malformed } from './malformed.ts';
import type { Prefix, RangePattern, TokenPattern } from './query.ts';

const prefixed = /^(?<prefix>eq|ne|gt|lt|ge|le|sa|eb|ap)?(?<rest>.*)$/s;

function splitPrefix(text: string): { readonly prefix: Prefix; readonly rest: string } {
  const { prefix, rest = '' } = prefixed.exec(text)?.groups ?? {};
  return { prefix: (prefix as Prefix | undefined) ?? 'eq', rest };
}

/**
 * A date with its prefix. `ap` widens it by its own length on either side, so a day reaches from the day before to the
 * day after; R4 leaves that to the server.
 * @throws RequestError BAD_REQUEST
 */
export function readDatePattern(text: string, parameter: string): RangePattern {
  const { prefix, rest } = splitPrefix(unescaped(text));
  const range = dateRange(rest);
  if (range === null) {
    throw malformed(
      parameter,
      'a date such as 2026, 2026-03, 2026-03-14 or 2026-03-14T10:20:00+01:00, after one of eq ne gt lt ge le sa eb ap or nothing',
    );
  }
  const { low, high } = range;
  const margin = prefix === 'ap' ? high - low + 1 : 0;
  return { prefix, low: low - margin, high: high + margin };
}

const decimalForm = /^[+-]?(?<digits>\d{1,18}(?:\.\d{1,18})?)(?:[eE](?<exponent>[+-]?\d{1,2}))?$/;

/**
 * A number with its prefix. Without one, or with `ne`, it stands for what rounds to it: 100 for 99.5 up to 100.5, 5.40
 * for 5.395 up to 5.405. `ap` reaches a tenth of it to either side; the other prefixes take it as exact.
 * @throws RequestError BAD_REQUEST
 * Source: FHIR R4, Search, 3.1.1.5.1 number and 3.1.1.4.5 prefixes.
 */
export function readNumberPattern(text: string, parameter: string): RangePattern {
  const { prefix, rest } = splitPrefix(unescaped(text));
  const groups = decimalForm.exec(rest)?.groups;
  const value = Number(rest);
  if (groups === undefined || !Number.isFinite(value)) {
    throw malformed(parameter, 'a number such as 4, 3.67 or 1e2, after one of eq ne gt lt ge le sa eb ap or nothing');
  }
  if (prefix === 'ap') return { prefix, low: value - Math.abs(value) / 10, high: value + Math.abs(value) / 10 };
  if (prefix !== 'eq' && prefix !== 'ne') return { prefix, low: value, high: value };
  return { prefix, ...roundingTo(rest, groups.digits ?? '', Number(groups.exponent ?? 0)) };
}

/** Worked out in whole numbers of half the last digit, so that no binary fraction shifts an end. */
function roundingTo(text: string, digits: string, exponent: number) {
  const fractionDigits = digits.split('.')[1]?.length ?? 0;
  const whole = BigInt(digits.replace('.', '')) * (text.startsWith('-') ? -10n : 10n);
  const scale = `e${exponent - fractionDigits - 1}`;
  const end = Number(`${whole + 5n}${scale}`);
  // The upper end rounds upwards and so does not belong; ends are included, so the number just below is given.
  return { low: Number(`${whole - 5n}${scale}`), high: end - Math.abs(end) * Number.EPSILON };
}

/**
 * number, number|system|code or number||code, with a prefix.
 * @throws RequestError BAD_REQUEST
 */
export function readQuantityPattern(text: string, parameter: string): RangePattern {
  const parts = splitEscaped(text, '|');
  if (parts.length > 3 || parts.length === 2) throw malformed(parameter, 'number, number|system|code or number||code');
  const [number = '', system = '', code = ''] = parts;
  const pattern = readNumberPattern(number, parameter);
  const unit: TokenPattern = {
    ...(system === '' ? {} : { system: unescaped(system) }),
    ...(code === '' ? {} : { code: unescaped(code) }),
  };
  return Object.keys(unit).length === 0 ? pattern : { ...pattern, unit };
}
