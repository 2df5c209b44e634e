import { type DateRange, dateRange, earliest, latest } from './date-range.ts';
import type { RangeEntry, Token } from './index-entries.ts';
import { isObject, type Json, listOf, textOf } from './json.ts';
import type { Datatype } from './parameter.ts';

/** HL7's extension that gives a coded grade its rank. */
const ordinalValue = 'http://hl7.org/fhir/StructureDefinition/ordinalValue';

type Range = Omit<RangeEntry, 'param'>;

/** The span of time or numbers that a value covers; null for one that covers none. */
export function rangeOf(value: unknown, datatype: Datatype): Range | null {
  if (datatype === 'dateTime') return typeof value === 'string' ? dateRange(value) : null;
  if (datatype === 'decimal') return numberRange(value);
  if (!isObject(value)) return null;
  if (datatype === 'Period') return periodRange(value);
  if (datatype === 'Timing') return timingRange(value);
  if (datatype === 'Quantity') return quantityRange(value);
  return value.url === ordinalValue ? numberRange(value.valueDecimal) : null;
}

function numberRange(value: unknown): Range | null {
  return typeof value === 'number' ? { low: value, high: value } : null;
}

/** An end that is not given is open. */
function periodRange({ start, end }: Json): DateRange | null {
  const first = typeof start === 'string' ? dateRange(start) : null;
  const last = typeof end === 'string' ? dateRange(end) : null;
  if (first === null && last === null) return null;
  return { low: first?.low ?? earliest, high: last?.high ?? latest };
}

/** From the first event to the last: of a schedule "only the outer limits matter" (R4, Search, date). */
function timingRange({ event, repeat }: Json): DateRange | null {
  const spans = listOf(event).map((time) => (typeof time === 'string' ? dateRange(time) : null));
  if (isObject(repeat) && isObject(repeat.boundsPeriod)) spans.push(periodRange(repeat.boundsPeriod));
  const known = spans.filter((span) => span !== null);
  if (known.length === 0) return null;
  return { low: Math.min(...known.map(({ low }) => low)), high: Math.max(...known.map(({ high }) => high)) };
}

/** A comparator opens one end. */
function quantityRange({ value, comparator, unit, system, code }: Json): Range | null {
  if (typeof value !== 'number') return null;
  const isBelow = comparator === '<' || comparator === '<=';
  const isAbove = comparator === '>' || comparator === '>=';
  const range = {
    low: isBelow ? -Number.MAX_VALUE : value,
    high: isAbove ? Number.MAX_VALUE : value,
  };
  const symbol = textOf(code) ?? textOf(unit);
  if (symbol === undefined) return range;
  const token: Token = { kind: 'coding', system: textOf(system) ?? '', code: symbol };
  return { ...range, unit: token };
}
