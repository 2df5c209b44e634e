import { describe, expect, it } from 'vitest';
import { type FittedCase, fitLogOdds } from '../../src/cli/fit/fit-log-odds.ts';

const answer = (key: string, isRight: boolean, log = 0) => ({ key, log, isRight });
const own = (key: string) => [key];
const weak = 1e-6;

function repeated(count: number, one: FittedCase): FittedCase[] {
  return Array.from({ length: count }, () => one);
}

describe('log odds fitted to cases', () => {
  // Agresti, Categorical Data Analysis: with intercepts alone the fitted probabilities of a baseline-category logit model
  // are the proportions observed.
  it('are those of the counts where nothing else tells the answers apart', () => {
    const rows = [
      ...repeated(20, [answer('a', true), answer('b', false), answer('c', false)]),
      ...repeated(10, [answer('a', false), answer('b', true), answer('c', false)]),
      ...repeated(5, [answer('a', false), answer('b', false), answer('c', true)]),
    ];
    const shifts = fitLogOdds(rows, own, weak);
    const at = (key: string): number => shifts.get(key) ?? Number.NaN;
    expect(at('a') - at('b')).toBeCloseTo(Math.log(2), 3);
    expect(at('b') - at('c')).toBeCloseTo(Math.log(2), 3);
  });

  it('take away what was told before', () => {
    const rows = [
      ...repeated(15, [answer('a', true, 3), answer('b', false, 0)]),
      ...repeated(15, [answer('a', false, 3), answer('b', true, 0)]),
    ];
    const shifts = fitLogOdds(rows, own, weak);
    expect((shifts.get('b') ?? 0) - (shifts.get('a') ?? 0)).toBeCloseTo(3, 2);
  });

  // With one free difference d the penalised score equation is n_right - n p(d) = shrinkage d / 2, worked out by hand here.
  it('are held back as far as the precision before any case says', () => {
    const rows = repeated(4, [answer('a', true), answer('b', false)]);
    const shifts = fitLogOdds(rows, own, 1);
    const difference = (shifts.get('a') ?? 0) - (shifts.get('b') ?? 0);
    expect(4 - 4 / (1 + Math.exp(-difference))).toBeCloseTo(difference / 2, 4);
  });

  it('leave alone what was right already, and several right answers share the credit', () => {
    const sure = repeated(10, [answer('a', true, 15), answer('b', false, 0)]);
    expect(Math.abs(fitLogOdds(sure, own, 1).get('a') ?? 1)).toBeLessThan(1e-3);
    const either = repeated(10, [answer('a', true), answer('b', true), answer('c', false)]);
    const shifts = fitLogOdds(either, own, 1);
    expect(shifts.get('a')).toBeCloseTo(shifts.get('b') ?? Number.NaN, 9);
    expect(shifts.get('a') ?? 0).toBeGreaterThan(shifts.get('c') ?? 0);
  });

  it('are shared by answers of one group, and are none for an answer that has no share', () => {
    const rows = repeated(10, [answer('a', true), answer('b', false), answer('fixed', false)]);
    const sharesOf = (key: string) => (key === 'fixed' ? [] : [key, 'group']);
    const shifts = fitLogOdds(rows, sharesOf, 1);
    expect(shifts.get('group') ?? 0).toBeGreaterThan(0);
    expect(shifts.has('fixed')).toBe(false);
  });

  it('do not heed a case in which no answer that is right has a chance', () => {
    expect(fitLogOdds([[answer('a', true, -50), answer('b', false, 0)]], own, 1).size).toBe(0);
    expect(fitLogOdds([], own, 1).size).toBe(0);
  });
});
