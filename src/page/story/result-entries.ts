import type { Catalogue } from '../../client/generated/api-types.ts';
import type { ResultEntry } from '../draft/draft.ts';
import { printedUnit, unitTyped } from './printed-unit.ts';
import type { Comparator } from './read-number.ts';

export type Result = Catalogue['results'][number];

const ucum = 'http://unitsofmeasure.org';

/** The row of the catalogue that an entry is of, by its key or its LOINC code. */
export function resultOf(entry: ResultEntry, results: readonly Result[]): Result | undefined {
  return results.find(
    ({ key, codes }) =>
      key === entry.key || codes.some(({ system, code }) => system === entry.code?.system && code === entry.code.code),
  );
}

/** Where the result stands among the entries; below 0 where it does not. */
export function placeOf(result: Result, entries: readonly ResultEntry[]): number {
  return entries.findIndex((entry) => resultOf(entry, [result]) !== undefined);
}

/** UCUM codes to choose from, the catalogue's own first. */
export function unitsOf({ unit, units }: Result): readonly string[] {
  return units ?? (unit === undefined ? [] : [unit]);
}

/** The code of the unit that a number without one is meant in: that of what is stated, or the catalogue's. */
export function unitInUse(result: Result, entries: readonly ResultEntry[]): string {
  const units = unitsOf(result);
  const quantity = entries[placeOf(result, entries)]?.valueQuantity;
  return unitTyped(quantity?.code ?? quantity?.unit ?? units[0] ?? '1', units);
}

export interface Measured {
  readonly value: number;
  readonly comparator?: Comparator;
  /** As typed or chosen: a UCUM code or its print. */
  readonly unit: string;
}

/** States a number of a result in place of what was stated before; note and code stand. */
export function withQuantity(
  entries: readonly ResultEntry[],
  result: Result,
  { value, comparator, unit }: Measured,
): readonly ResultEntry[] {
  const code = unitTyped(unit, unitsOf(result));
  const print = printedUnit(code);
  return stated(entries, result, {
    valueQuantity: {
      value,
      ...(comparator && { comparator }),
      // The contract wants a unit in print that is not empty.
      unit: print === '' ? code : print,
      system: ucum,
      code,
    },
  });
}

export function withValue(entries: readonly ResultEntry[], result: Result, value: string): readonly ResultEntry[] {
  return stated(entries, result, { value });
}

export function withNote(entries: readonly ResultEntry[], result: Result, text: string): readonly ResultEntry[] {
  const at = placeOf(result, entries);
  const note = text.trim();
  return entries.map((entry, place) => {
    if (place !== at) return entry;
    const { note: _before, ...rest } = entry;
    return note === '' ? rest : { ...rest, note };
  });
}

export function withoutResult(entries: readonly ResultEntry[], result: Result): readonly ResultEntry[] {
  const at = placeOf(result, entries);
  return entries.filter((_, place) => place !== at);
}

function stated(
  entries: readonly ResultEntry[],
  result: Result,
  value: Pick<ResultEntry, 'valueQuantity' | 'value'>,
): readonly ResultEntry[] {
  const at = placeOf(result, entries);
  if (at < 0) return [...entries, { key: result.key, ...value }];
  return entries.map((entry, place) => {
    if (place !== at) return entry;
    const { valueQuantity: _quantity, value: _value, ...rest } = entry;
    return { ...rest, ...value };
  });
}

/** A result in words: "<0.5 mmol/L", "Axonal"; empty while nothing is stated. */
export function resultWords(result: Result, entry: ResultEntry | undefined): string {
  const quantity = entry?.valueQuantity;
  if (quantity !== undefined) {
    const unit = quantity.code === undefined ? (quantity.unit ?? '') : printedUnit(quantity.code);
    return `${quantity.comparator ?? ''}${quantity.value} ${unit}`.trim();
  }
  return result.values?.find(({ key }) => key === entry?.value)?.label ?? entry?.value ?? '';
}
