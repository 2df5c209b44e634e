import { describe, expect, it, vi } from 'vitest';
import { type QuantityResult, resultByKey, resultRows } from '../../src/exam/catalogue/results.ts';
import type { InvestigationResult } from '../../src/exam/exam.ts';
import { canonicalValue, unitsTaken } from '../../src/exam/results/canonical-quantity.ts';
import { convertUnit } from '../../src/exam/results/ucum.ts';
import { requestWith } from './support/exam-request.ts';
import { faultsOf, read } from './support/read.ts';

const ucum = 'http://unitsofmeasure.org';
const one = (entry: unknown): InvestigationResult | undefined => read(requestWith({ results: [entry] })).results[0];
const faults = (...results: readonly unknown[]) => faultsOf(requestWith({ results }));
const measured = (key: string, value: number, code: string) => ({ key, valueQuantity: { value, system: ucum, code } });

function row(key: string): QuantityResult {
  const found = resultByKey.get(key);
  if (found?.kind !== 'quantity') throw new Error(`no measured result ${key}`);
  return found;
}

describe('units', () => {
  it.each([
    // ADA Standards of Care, diagnosis: 126 mg/dL is 7.0 mmol/L, 200 mg/dL is 11.1 mmol/L.
    ['glucose-fasting', 126, 'mg/dL', 7.0, 1],
    ['glucose-random', 200, 'mg/dL', 11.1, 1],
    // NGSP and IFCC: 48 mmol/mol is 6.5 %, 42 mmol/mol is 6.0 %, 75 mmol/mol is 9.0 %.
    ['hba1c', 48, 'mmol/mol', 6.5, 1],
    ['hba1c', 42, 'mmol/mol', 6.0, 1],
    ['hba1c', 75, 'mmol/mol', 9.0, 1],
    // NICE NG239: 180 ng/L of total vitamin B12 is 133 pmol/L.
    ['vitamin-b12', 180, 'ng/L', 133, 0],
    ['vitamin-b12', 180, 'pg/mL', 133, 0],
    ['creatinine', 1, 'mg/dL', 88.4, 1],
    ['body-temperature', 98.6, '[degF]', 37, 6],
    ['white-cells', 7200, '/uL', 7.2, 6],
    ['white-cells', 7.2, '10*3/uL', 7.2, 6],
    ['haemoglobin', 14, 'g/dL', 140, 6],
    ['tsh', 2.5, 'uU/mL', 2.5, 6],
    ['tsh', 2.5, 'u[IU]/mL', 2.5, 6],
    ['tsh', 0.0025, '[iU]/L', 2.5, 6],
  ])('%s: %f %s is %f', (key, value, unit, expected, digits) => {
    expect(canonicalValue(row(key), value, unit)).toBeCloseTo(expected, digits);
  });

  it('leaves a value in the canonical unit untouched, with or without an annotation', () => {
    expect(canonicalValue(row('hba1c'), 5.3, '%')).toBe(5.3);
    expect(canonicalValue(row('hba1c'), 5.3, '%{Hb}')).toBe(5.3);
    expect(canonicalValue(row('hba1c'), 48, 'mmol/mol{Hb}')).toBe(canonicalValue(row('hba1c'), 48, 'mmol/mol'));
  });

  it('never takes HbA1c through the plain ratio, which would be wrong', () => {
    expect(canonicalValue(row('hba1c'), 0.048, 'mol/mol')).toBeNull();
    expect(canonicalValue(row('hba1c'), 0.065, '1')).toBeNull();
  });

  it.each(['kg', 'mmHg', 'IU/L', 'furlongs', '(((', 'm/'.repeat(28), ' '])('refuses %j for glucose', (unit) => {
    expect(canonicalValue(row('glucose-fasting'), 5, unit)).toBeNull();
  });

  it('finds every unit of the catalogue in UCUM', () => {
    for (const each of resultRows) {
      if (each.kind !== 'quantity') continue;
      // An annotation makes it another text of the same meaning, so that the library has to read both.
      for (const unit of unitsTaken(each).filter((code) => !code.includes('{'))) {
        expect(convertUnit(1, `${unit}{test}`, unit), `${each.key} in ${unit}`).toBe(1);
      }
    }
  });
});

describe('results', () => {
  it('knows a result by LOINC code and by key', () => {
    const byCode = one({
      code: { system: 'http://loinc.org', code: '4548-4' },
      valueQuantity: { value: 5.3, unit: '%' },
    });
    expect(byCode).toEqual({
      key: 'hba1c',
      label: 'Haemoglobin A1c',
      quantity: { value: 5.3, unit: '%' },
      pointer: '/results/0',
    });
    expect(one(measured('hba1c', 5.3, '%'))).toEqual(byCode);
    expect(one({ key: 'nerve-conduction-pattern', value: 'axonal', note: 'sural' })).toMatchObject({
      value: 'axonal',
      note: 'sural',
    });
  });

  it('keeps a comparator', () => {
    const entry = { key: 'vitamin-b12', valueQuantity: { value: 50, comparator: '<', code: 'pmol/L' } };
    expect(one(entry)).toMatchObject({ comparator: '<', quantity: { value: 50, unit: 'pmol/L' } });
  });

  it.each([
    [
      'an unknown code',
      { code: { system: 'http://loinc.org', code: '4548-5' }, valueQuantity: { value: 5, unit: '%' } },
      '/code/code',
      'UNKNOWN_KEY',
      "'4548-4'",
    ],
    [
      'another code system',
      { code: { system: 'http://example.org', code: '4548-4' }, valueQuantity: { value: 5, unit: '%' } },
      '/code/system',
      'UNKNOWN_KEY',
      'http://loinc.org',
    ],
    ['an unknown key', measured('hba1', 5, '%'), '/key', 'UNKNOWN_KEY', "'hba1c'"],
    ['neither code nor key', { valueQuantity: { value: 5, unit: '%' } }, '', 'REQUIRED', '`code` or `key`'],
    ['no value', { key: 'hba1c' }, '', 'REQUIRED', '`valueQuantity` or `value`'],
    [
      'a code and a key that disagree',
      { ...measured('tsh', 5, '%'), code: { system: 'http://loinc.org', code: '4548-4' } },
      '/key',
      'CONTRADICTION',
      "'hba1c'",
    ],
    ['a unit of another kind', measured('glucose-fasting', 5, 'kg'), '/valueQuantity/code', 'UNIT', 'mmol/L'],
    [
      'a unit in print that is not UCUM',
      { key: 'systolic-pressure-supine', valueQuantity: { value: 120, unit: 'mmHg' } },
      '/valueQuantity/unit',
      'UNIT',
      'mm[Hg]',
    ],
    [
      'a number without a unit',
      { key: 'hba1c', valueQuantity: { value: 5 } },
      '/valueQuantity',
      'REQUIRED',
      '`code` or `unit`',
    ],
    [
      'a value that nobody has',
      measured('glucose-fasting', 1260, 'mmol/L'),
      '/valueQuantity/value',
      'OUT_OF_RANGE',
      'is the unit right?',
    ],
    [
      'a word for a measured result',
      { key: 'glucose-fasting', value: 'high' },
      '/value',
      'WRONG_VALUE_PROPERTY',
      'give `valueQuantity`',
    ],
    [
      'a number for a coded result',
      { key: 'nerve-conduction-pattern', valueQuantity: { value: 1, code: '1' } },
      '/valueQuantity',
      'WRONG_VALUE_PROPERTY',
      'give `value`',
    ],
    ['a misspelt value', { key: 'nerve-conduction-pattern', value: 'axonl' }, '/value', 'UNKNOWN_KEY', "'axonal'"],
  ])('refuses %s', (_name, entry, pointer, code, words) => {
    expect(faults(entry)).toMatchObject([
      { pointer: `/results/0${pointer}`, code, message: expect.stringContaining(words) },
    ]);
  });

  it.each(['__proto__', 'toString', 'kconstructor', 'mol()', 'm.(1)g', '{)}', 'Ashby Doe'])(
    'refuses the unit %s and prints nothing',
    (unit) => {
      const printed = (['log', 'error'] as const).map((way) => vi.spyOn(console, way).mockReturnValue());
      expect(faults({ key: 'glucose-fasting', valueQuantity: { value: 5, unit } })).toMatchObject([
        { pointer: '/results/0/valueQuantity/unit', code: 'UNIT', message: expect.stringContaining('mmol/L') },
      ]);
      for (const way of printed) expect(way).not.toHaveBeenCalled();
      vi.restoreAllMocks();
    },
  );

  it('compares two of the same result in the same unit', () => {
    expect(faults(measured('haemoglobin', 14, 'g/dL'), measured('haemoglobin', 140, 'g/L'))).toEqual([]);
    expect(
      faults(measured('haemoglobin', 14, 'g/dL'), measured('haemoglobin', 14, 'g/L')).map((fault) => fault.pointer),
    ).toEqual(['/results/0', '/results/1']);
  });
});
