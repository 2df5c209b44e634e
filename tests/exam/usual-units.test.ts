import { describe, expect, it } from 'vitest';
import { type QuantityResult, resultByKey, resultRows } from '../../src/exam/catalogue/results.ts';
import { canonicalValue } from '../../src/exam/results/canonical-quantity.ts';
import { usualUnits } from '../../src/exam/results/usual-units.ts';

const measured = resultRows.filter((row): row is QuantityResult => row.kind === 'quantity');

/** One conventional unit in SI units: AMA Manual of Style (11th ed.), table of conversion factors; recalled. */
const conversionFactors: readonly (readonly [key: string, unit: string, factor: number])[] = [
  ['glucose-fasting', 'mg/dL', 0.0555],
  ['csf-glucose', 'mg/dL', 0.0555],
  ['lactate', 'mg/dL', 0.111],
  ['creatinine', 'mg/dL', 88.4],
  ['urea-nitrogen', 'mg/dL', 0.357],
  ['calcium', 'mg/dL', 0.25],
  ['magnesium', 'mg/dL', 0.411],
  ['phosphate', 'mg/dL', 0.323],
  ['ammonia', 'ug/dL', 0.587],
  ['vitamin-b12', 'pg/mL', 0.738],
  ['folate', 'ng/mL', 2.266],
  ['vitamin-d', 'ng/mL', 2.496],
  ['cortisol', 'ug/dL', 27.59],
  ['free-t4', 'ng/dL', 12.87],
  ['copper', 'ug/dL', 0.157],
  ['zinc', 'ug/dL', 0.153],
  ['lead', 'ug/dL', 0.0483],
  ['haemoglobin', 'g/dL', 10],
  ['creatine-kinase', 'ukat/L', 60],
];

describe('the units offered for a result', () => {
  it('are all taken, the canonical one first', () => {
    for (const row of measured) {
      const units = usualUnits(row);
      expect(units[0], row.key).toBe(row.unit);
      expect(new Set(units).size, row.key).toBe(units.length);
      expect(
        units.filter((unit) => canonicalValue(row, 1, unit) === null),
        row.key,
      ).toEqual([]);
    }
  });

  it.each(conversionFactors)('%s in %s', (key, unit, factor) => {
    const row = resultByKey.get(key) as QuantityResult;
    expect(usualUnits(row)).toContain(unit);
    // Three digits are what the table gives.
    expect((canonicalValue(row, 1, unit) ?? 0) / factor).toBeCloseTo(1, 2);
  });
});
