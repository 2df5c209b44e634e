import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { durationBetween } from '../../src/measures/duration.ts';
import { periodOf, spanOf } from '../../src/measures/period.ts';
import { scoreOf } from '../../src/measures/score.ts';

const none = () => 0;
const counts = (numbers: Record<string, number>) => (population: string) => numbers[population] ?? 0;

describe('the score of a group', () => {
  // Source: HL7 FHIR R4, MeasureReport examples measurereport-cms146-cat1 to cat3 and the Quality Measure IG, "Proportion".
  it('is numerator by denominator, each without what is taken out of it', () => {
    const numbers = { denominator: 200, 'denominator-exclusion': 40, 'denominator-exception': 10, numerator: 100 };
    expect(scoreOf('proportion', counts(numbers), [], undefined)).toBeCloseTo(100 / 150, 12);
    expect(scoreOf('proportion', counts({ ...numbers, 'numerator-exclusion': 25 }), [], undefined)).toBe(0.5);
    expect(scoreOf('proportion', none, [], undefined)).toBeUndefined();
    expect(scoreOf('cohort', counts(numbers), [], undefined)).toBeUndefined();
  });

  it('has a median that half of the numbers do not exceed', () => {
    expect(scoreOf('continuous-variable', none, [4, 1, 9], 'median')).toBe(4);
    expect(scoreOf('continuous-variable', none, [4, 1, 9, 5], 'median')).toBe(4.5);
    expect(scoreOf('continuous-variable', none, [], 'median')).toBeUndefined();
    fc.assert(
      fc.property(fc.array(fc.integer(), { minLength: 1 }), (values) => {
        const median = scoreOf('continuous-variable', none, values, 'median') ?? Number.NaN;
        expect(values.filter((value) => value < median).length).toBeLessThanOrEqual(values.length / 2);
        expect(values.filter((value) => value > median).length).toBeLessThanOrEqual(values.length / 2);
      }),
    );
  });

  it.each([
    ['sum', 18],
    ['average', 4.5],
    ['minimum', 1],
    ['maximum', 9],
    ['count', 4],
  ] as const)('takes the %s', (method, expected) => {
    expect(scoreOf('continuous-variable', none, [4, 1, 9, 4], method)).toBe(expected);
  });
});

describe('periods', () => {
  it.each([
    ['2026', '2026-01-01T00:00:00.000Z', '2026-12-31T23:59:59.999Z'],
    ['2024-02', '2024-02-01T00:00:00.000Z', '2024-02-29T23:59:59.999Z'],
    ['2026-03-14', '2026-03-14T00:00:00.000Z', '2026-03-14T23:59:59.999Z'],
    ['2026-03-14T10:20+01:00', '2026-03-14T09:20:00.000Z', '2026-03-14T09:20:59.999Z'],
    ['2026-03-14T10:20:05Z', '2026-03-14T10:20:05.000Z', '2026-03-14T10:20:05.999Z'],
  ])('%s stands for all of it', (text, from, until) => {
    expect(spanOf(text)).toEqual({ from: Date.parse(from), until: Date.parse(until) });
  });

  it('take no day that does not exist, and no end before the start', () => {
    expect(spanOf('2026-02-29')).toBeUndefined();
    expect(() => periodOf('2026-02', '2026-01')).toThrow('periodEnd');
    expect(() => periodOf('today', '2026')).toThrow('periodStart');
  });
});

describe('durations', () => {
  // Source: FHIRPath, continuous build, `duration`: whole units that have passed, negative backwards.
  it.each([
    ['2026-03-14T10:00:00Z', '2026-03-14T11:59:59Z', 'hours', [1]],
    ['2026-03-14T10:00:00+02:00', '2026-03-14T09:30:00Z', 'minutes', [90]],
    ['2026-03-14T10:00:00Z', '2026-03-13T09:00:00Z', 'days', [-1]],
    ['2026-03-14T10:00:00Z', '2026-03-14T10:00:00Z', 'fortnights', []],
    ['2026-03-14', '2026-03-15', 'hours', []],
  ])('from %s to %s in %s', (from, to, unit, expected) => {
    expect(durationBetween([from], to, unit)).toEqual(expected);
  });
});
