import type { QuantityResult } from '../catalogue/results.ts';
import { convertUnit, significant } from './ucum.ts';

/**
 * A measured value in the unit of its row of the catalogue; null if the unit is not of the right kind.
 * A unit with a line of its own (HbA1c in mmol/mol) takes that line. Where such a unit is of the same UCUM kind as the
 * canonical one, UCUM would convert it wrongly, so no third unit is taken either.
 * @param unit UCUM code; annotations in braces are without meaning
 */
export function canonicalValue(row: QuantityResult, value: number, unit: string): number | null {
  const wanted = plainUnit(unit);
  if (wanted === plainUnit(row.unit)) return value;
  const line = row.lines?.find((one) => plainUnit(one.unit) === wanted);
  if (line !== undefined) return significant(line.factor * value + line.offset);
  if (takesOnlyItsOwnUnits(row)) return null;
  return convertUnit(value, unit, row.unit, row.molarMass);
}

/** Whether UCUM would convert a unit of the row's lines as well, and wrongly. */
export function takesOnlyItsOwnUnits(row: QuantityResult): boolean {
  return (row.lines ?? []).some((line) => convertUnit(1, line.unit, row.unit) !== null);
}

/** Units to suggest, the canonical one first. */
export function unitsTaken(row: QuantityResult): readonly string[] {
  return [row.unit, ...(row.lines ?? []).map((line) => line.unit)];
}

function plainUnit(unit: string): string {
  const plain = unit.replaceAll(/\{[^{}]*\}/g, '');
  return plain === '' ? '1' : plain;
}
