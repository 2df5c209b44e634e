import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { brierScore, calibrationError, reliability } from '../../src/cli/evaluate/calibration.ts';

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

describe('the Brier score', () => {
  it('is 0.19 on the ten forecasts of rain in the paper that defines it', () => {
    // Brier, Monthly Weather Review 78 (1950), table 1 (recalled). By hand: 2 (0.49 + 0.01 + 0.04 + 0.36 + 0.04 + 0.01) / 10.
    const rain = [0.7, 0.9, 0.8, 0.4, 0.2, 0, 0, 0, 0, 0.1];
    const fell = [false, true, true, true, false, false, false, false, false, false];
    expect(mean(rain.map((chance, day) => brierScore([chance, 1 - chance], fell[day] ? 0 : 1)))).toBeCloseTo(0.19, 10);
    // A list that names rain alone says the same: the rest is the class that was not named.
    expect(mean(rain.map((chance, day) => brierScore([chance], fell[day] ? 0 : null)))).toBeCloseTo(0.19, 10);
  });

  it('is twice the square that is given for one of two classes', () => {
    // Squares of one class in common explanations of the score: 70 % and rain 0.09, 30 % and rain 0.49, 50 % 0.25.
    expect(brierScore([0.7, 0.3], 0)).toBeCloseTo(2 * 0.09, 10);
    expect(brierScore([0.3, 0.7], 0)).toBeCloseTo(2 * 0.49, 10);
    expect(brierScore([0.5, 0.5], 1)).toBeCloseTo(2 * 0.25, 10);
  });

  it('is 0 for sure and right, 2 for sure and wrong, and counts what was left unnamed', () => {
    expect(brierScore([1], 0)).toBe(0);
    expect(brierScore([1], null)).toBe(2);
    expect(brierScore([1, 0], 1)).toBe(2);
    // By hand: 0.4 squared for the right class, 0.3 squared for the wrong one, 0.1 squared for the rest.
    expect(brierScore([0.6, 0.3], 0)).toBeCloseTo(0.16 + 0.09 + 0.01, 10);
  });

  it('rewards nobody for stating anything but what he believes', () => {
    // Properness, the reason for the score: the expected score is least where stated and true chance agree.
    const expected = (stated: number, truth: number) =>
      truth * brierScore([stated], 0) + (1 - truth) * brierScore([stated], null);
    const chance = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(chance, chance, (stated, truth) => expected(stated, truth) >= expected(truth, truth) - 1e-12),
    );
  });
});

describe('the reliability table', () => {
  const forecasts = (stated: number, right: number, of: number) =>
    Array.from({ length: of }, (_, index) => ({ stated, isRight: index < right }));

  it('finds nothing wrong when 6 of 30 forecasts of 20 % come true', () => {
    // The example by which the European weather centre explains a reliable forecast.
    const table = reliability(forecasts(0.2, 6, 30));
    expect(table).toEqual([{ from: 0.2, to: 0.3, count: 30, meanStated: expect.closeTo(0.2, 10), shareRight: 0.2 }]);
    expect(calibrationError(table)).toBeCloseTo(0, 10);
  });

  it('sorts by tenths, leaves out empty ones, and weighs each by its forecasts', () => {
    // Grouping by stated probability as in Murphy and Winkler, Applied Statistics 26 (1977) 41-47 (recalled). By hand: in
    // the ninth tenth 0.8 and 0.86 with 3 of 4 right, distance |0.83 - 0.75| = 0.08; in the fifth 0.4 with 1 of 1, 0.6.
    const table = reliability([...forecasts(0.8, 1, 2), ...forecasts(0.86, 2, 2), ...forecasts(0.4, 1, 1)]);
    expect(table.map(({ from, count, shareRight }) => [from, count, shareRight])).toEqual([
      [0.4, 1, 1],
      [0.8, 4, 0.75],
    ]);
    expect(table[1]?.meanStated).toBeCloseTo(0.83, 10);
    expect(calibrationError(table)).toBeCloseTo((4 * 0.08 + 1 * 0.6) / 5, 10);
  });

  it('puts a bound into the tenth above it, and certainty into the last', () => {
    for (const bound of [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9]) {
      expect(reliability(forecasts(bound, 0, 1))[0]?.from).toBe(bound);
    }
    expect(reliability(forecasts(1, 1, 1))[0]?.from).toBe(0.9);
  });
});
