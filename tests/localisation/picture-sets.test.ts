import { describe, expect, it } from 'vitest';
import { ratio } from '../../src/cli/evaluate/figures.ts';
import { evaluate } from '../support/evaluation.ts';
import { publishedSites } from '../support/published-sites.ts';
import { bounds } from './figure-bounds.ts';

describe.each(Object.entries(bounds))('%s', (path, least) => {
  const { figures, judgements } = evaluate(path);

  it(`names a right site first in ${least.first * 100} % and among the first three in ${least.firstThree * 100} %`, () => {
    expect(ratio(figures.first)).toBeGreaterThanOrEqual(least.first);
    expect(ratio(figures.firstThree)).toBeGreaterThanOrEqual(least.firstThree);
  });

  it('names side, level and conclusion right', () => {
    expect(ratio(figures.side)).toBeGreaterThanOrEqual(least.side);
    expect(ratio(figures.level)).toBeGreaterThanOrEqual(least.level);
    expect(ratio(figures.conclusion)).toBeGreaterThanOrEqual(least.conclusion);
  });

  it('answers in codes that are published', () => {
    const answered = judgements.flatMap(({ answer }) => answer.localisations.map(({ code }) => code.code ?? ''));
    expect(answered.filter((code) => !publishedSites.has(code))).toEqual([]);
  });

  it('is not sure of a wrong site', () => {
    const sure = judgements.filter(({ isSureAndWrong }) => isSureAndWrong).map(({ evaluated }) => evaluated.name);
    expect(sure.length, sure.join(', ')).toBeLessThanOrEqual(least.sureAndWrong);
  });
});
