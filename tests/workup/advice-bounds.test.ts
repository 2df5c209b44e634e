import { describe, expect, it } from 'vitest';
import { ratio } from '../../src/cli/evaluate/figures.ts';
import { adviceFiguresOf, judgeAdvice } from '../../src/cli/evaluate/judge-advice.ts';
import { createAssessor } from '../../src/summary/assess.ts';
import { casesBelow } from '../support/evaluation.ts';

/**
 * What the engine must reach on the development cases of causes, red flags and first tests; shares from 0 to 1. They lie a
 * little below what it reaches, so that a change that harms it shows.
 */
const bounds = {
  'evaluation/development/causes.ndjson': {
    firstThreeCauses: 0.92,
    flagsRaised: 0.97,
    falseAlarms: 0.04,
    testsProposed: 0.91,
  },
  'evaluation/development/emergencies.ndjson': {
    firstThreeCauses: 0.78,
    flagsRaised: 0.97,
    falseAlarms: 0,
    testsProposed: 0.93,
  },
  'evaluation/development/emergencies-two.ndjson': {
    firstThreeCauses: 0.85,
    flagsRaised: 0.99,
    falseAlarms: 0,
    testsProposed: 0.95,
  },
  'evaluation/development/published-three.ndjson': {
    firstThreeCauses: 0.72,
    flagsRaised: 0.97,
    falseAlarms: 0.03,
    testsProposed: 0,
  },
} as const;

const assessor = createAssessor();

describe.each(Object.entries(bounds))('causes, red flags and first tests of %s', (path, least) => {
  const judged = casesBelow(path).map((one) => judgeAdvice(one, assessor.assess(one.exam)));
  const figures = adviceFiguresOf(judged);

  it('name the right cause among the first three', () => {
    expect(ratio(figures.firstThreeCauses)).toBeGreaterThanOrEqual(least.firstThreeCauses);
  });

  it('raise the red flags, and few where nothing is urgent', () => {
    const missed = judged.flatMap(({ evaluated, flags }) =>
      (flags?.missed ?? []).map((key) => `${evaluated.name}: ${key}`),
    );
    expect(ratio(figures.flagsRaised), missed.join(', ')).toBeGreaterThanOrEqual(least.flagsRaised);
    const { right, of } = figures.falseAlarms;
    expect(right).toBeLessThanOrEqual(least.falseAlarms * of);
  });

  it('propose the first tests of published guidance', () => {
    expect(ratio(figures.testsProposed)).toBeGreaterThanOrEqual(least.testsProposed);
  });
});
