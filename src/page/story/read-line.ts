import type { HistoryEntry } from '../draft/draft.ts';
import { findRows, findValue, type Row, type Value } from './find-rows.ts';
import { type NumberRead, readNumber } from './read-number.ts';

/** What a line typed into a field of the history or the results may mean. */
export interface LineRead {
  readonly row: Row;
  /** Whether the line itself says "no": then Enter records it as asked and absent. */
  readonly isNegated: boolean;
  readonly side?: NonNullable<HistoryEntry['side']>;
  /** The number that stands behind the name of a result. */
  readonly number?: NumberRead;
  /** The value that is named behind the name of a result. */
  readonly value?: Value;
}

const sides: Readonly<Record<string, NonNullable<HistoryEntry['side']>>> = {
  l: 'left',
  left: 'left',
  r: 'right',
  right: 'right',
  both: 'both',
  bilateral: 'both',
};

/**
 * Reads "no back pain", "- ataxia", "leg pain left", "ck 1200", "glucose 98 mg/dL", "ana positive". A side is read for
 * symptoms alone, a number or value for results alone, and only where the words before it name something.
 */
export function readLine(line: string, rows: readonly Row[], limit: number): readonly LineRead[] {
  const [, negation, rest = ''] = /^\s*(?:(no|not|denies|without)\s+(?=\S)|(?:[-−–]\s*))?(.*)$/is.exec(line) ?? [];
  const isNegated = negation !== undefined || /^\s*[-−–]\s*\S/.test(line);
  const whole = findRows(rest, rows, limit).map((row): LineRead => ({ row, isNegated }));
  const filled = isNegated ? [] : [...withNumber(rest, rows, limit), ...withValue(rest, rows, limit)];
  // "no" may also be the beginning of a name.
  const plain = negation === undefined ? [] : findRows(line, rows, limit).map((row) => ({ row, isNegated: false }));
  const seen = new Set<Row>();
  return [...withSide(rest, rows, limit, isNegated), ...whole, ...filled, ...plain]
    .filter(({ row, isNegated: negated }) => {
      if (seen.has(row) || (negated && row.kind === 'results')) return false;
      seen.add(row);
      return true;
    })
    .slice(0, limit);
}

function withSide(line: string, rows: readonly Row[], limit: number, isNegated: boolean): readonly LineRead[] {
  const [, name = '', word = ''] = /^(.*\S)\s+(\S+)\s*$/.exec(line) ?? [];
  const side = sides[word.toLowerCase()];
  if (side === undefined) return [];
  return findRows(
    name,
    rows.filter(({ kind }) => kind === 'symptoms'),
    limit,
  ).map((row) => ({ row, isNegated, side }));
}

/** The shortest beginning that names a result, the rest being its number; "b12 300" keeps the 12 in the name. */
function withNumber(line: string, rows: readonly Row[], limit: number): readonly LineRead[] {
  const results = rows.filter(({ kind, values }) => kind === 'results' && values === undefined);
  for (const { index } of line.matchAll(/\s+(?=[<>=≤≥+-]*\s*[\d.])/g)) {
    const found = findRows(line.slice(0, index), results, limit);
    if (found.length > 0 && index > 0) {
      const number = readNumber(line.slice(index));
      return found.map((row) => ({ row, isNegated: false, number }));
    }
  }
  return [];
}

/** As many words as name a result, the rest being one of its values. */
function withValue(line: string, rows: readonly Row[], limit: number): readonly LineRead[] {
  const results = rows.filter(({ values }) => values !== undefined);
  for (const { index } of [...line.matchAll(/\s+(?=\S)/g)].reverse()) {
    const found = findRows(line.slice(0, index), results, limit).flatMap((row) => {
      const value = findValue(line.slice(index), row.values ?? []);
      return value === undefined ? [] : [{ row, isNegated: false, value }];
    });
    if (found.length > 0) return found;
  }
  return [];
}
