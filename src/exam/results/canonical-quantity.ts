import type { QuantityResult } from '../catalogue/results.ts';
import { convertUnit, significant } from './ucum.ts';

/**
 * A measured value in the unit of its row of the catalogue; null if the unit is not of the right kind.
 * A unit with a line of its own (HbA1c in mmol/mol) takes that line. Where UCUM would convert such a unit to something
 * else, a third unit of that kind would be wrong as well and is not taken.
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

/** Whether UCUM would convert a unit of the row's lines too, but to another number than the line gives. */
export function takesOnlyItsOwnUnits(row: QuantityResult): boolean {
  return (row.lines ?? []).some((line) => {
    const byRatio = convertUnit(1, line.unit, row.unit);
    return byRatio !== null && byRatio !== significant(line.factor + line.offset);
  });
}

/** Units to suggest, the canonical one first. */
export function unitsTaken(row: QuantityResult): readonly string[] {
  return [row.unit, ...(row.lines ?? []).map((line) => line.unit)];
}

function plainUnit(unit: string): string {
  const plain = unit.replaceAll(/\{[^{}]*\}/g, '');
  return plain === '' ? '1' : plain;
}
