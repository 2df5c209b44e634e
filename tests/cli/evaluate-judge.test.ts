import { describe, expect, it } from 'vitest';
import type { EvaluationCase, Expectation } from '../../src/cli/evaluate/evaluation-case.ts';
import { figuresOf, ratio } from '../../src/cli/evaluate/figures.ts';
import { judge } from '../../src/cli/evaluate/judge.ts';
import { worstMisses } from '../../src/cli/evaluate/misses.ts';
import type { Localisation, RankedLocalisation } from '../../src/localisation/localisation.ts';

type Short = readonly [site: string, side: RankedLocalisation['side'], level: string | null, probability: number];

function answer(conclusion: Localisation['conclusion'], ...sites: readonly Short[]): Localisation {
  return {
    localisations: sites.map(([site, side, level, probability]) => ({ site, side, level, probability })),
    conclusion,
  } as unknown as Localisation;
}

function expecting(expect: Partial<Expectation>): EvaluationCase {
  return {
    name: 'one',
    file: 'cases.ndjson',
    line: 1,
    expect: { sites: [], levelWithin: 1, ...expect },
  } as EvaluationCase;
}

const roots = answer(
  'single-site',
  ['nerve-root', 'left', 'L5', 0.6],
  ['common-fibular-nerve', 'left', null, 0.3],
  ['nerve-root', 'left', 'S1', 0.05],
);

describe('an answer beside what was expected', () => {
  it('is right in site, side and level, within the tolerance and exactly', () => {
    const judged = judge(
      expecting({ sites: ['nerve-root'], sides: ['left'], levels: ['S1'], conclusions: ['single-site'] }),
      roots,
    );
    expect(judged).toMatchObject({
      rank: 1,
      side: true,
      level: true,
      exactLevel: false,
      conclusion: true,
      isRight: true,
      stated: 0.6,
    });
    // Both roots are within a segment of S1. By hand: (0.65 - 1)^2 + 0.3^2 for the nerve + 0.05^2 for what is not listed.
    expect(judged.accepted).toBeCloseTo(0.65, 10);
    expect(judged.brier).toBeCloseTo(0.1225 + 0.09 + 0.0025, 10);
  });

  it('is not right with the wrong side, nor with a level beyond the tolerance', () => {
    const side = judge(expecting({ sites: ['nerve-root'], sides: ['right'] }), roots);
    expect(side).toMatchObject({ rank: 1, side: false, level: null, isRight: false, accepted: 0 });
    // By hand: 0.6, 0.3 and 0.05 squared, and 0.95 squared for the unnamed class, which was so.
    expect(side.brier).toBeCloseTo(0.36 + 0.09 + 0.0025 + 0.9025, 10);
    const level = judge(expecting({ sites: ['nerve-root'], levels: ['L3'] }), roots);
    expect(level).toMatchObject({ rank: 1, level: false, isRight: false });
    const exact = judge(expecting({ sites: ['nerve-root'], levels: ['L4', 'S1'], levelWithin: 0 }), roots);
    expect(exact).toMatchObject({ level: false, exactLevel: false });
  });

  it('takes a right site without a level at any level, and does not count it for the level', () => {
    const judged = judge(
      expecting({ sites: ['common-fibular-nerve', 'nerve-root'], levels: ['L5'] }),
      answer('single-site', ['common-fibular-nerve', 'left', null, 0.9]),
    );
    expect(judged).toMatchObject({ rank: 1, level: null, isRight: true });
  });

  it('judges side and level of the first answer alone, and finds the rank of a later one', () => {
    const judged = judge(expecting({ sites: ['common-fibular-nerve'], sides: ['left'] }), roots);
    expect(judged).toMatchObject({ rank: 2, side: null, level: null, isRight: false });
    expect(judge(expecting({ sites: ['ulnar-nerve-elbow'] }), roots).rank).toBeNull();
  });

  it('is sure and wrong from 0.8 on, or when it names a place where none can be named', () => {
    const sure = answer('single-site', ['nerve-root', 'left', 'L5', 0.8]);
    expect(judge(expecting({ sites: ['sciatic-nerve'] }), sure).isSureAndWrong).toBe(true);
    expect(judge(expecting({ sites: ['nerve-root'] }), sure).isSureAndWrong).toBe(false);
    expect(judge(expecting({ conclusions: ['insufficient'] }), sure).isSureAndWrong).toBe(true);
    const doubtful = answer('not-anatomical', ['nerve-root', 'left', 'L5', 0.9]);
    expect(judge(expecting({ conclusions: ['insufficient'] }), doubtful).isSureAndWrong).toBe(false);
  });

  it('shares out the probabilities of several sites that were found at once', () => {
    const both = answer(
      'multiple-sites',
      ['median-nerve-wrist', 'left', null, 1],
      ['median-nerve-wrist', 'right', null, 1],
    );
    const judged = judge(expecting({ sites: ['median-nerve-wrist'], sides: ['left'] }), both);
    expect(judged.accepted).toBeCloseTo(0.5, 10);
    expect(judged.brier).toBeCloseTo(0.5, 10);
  });
});

describe('the figures of a set', () => {
  const set = [
    judge(expecting({ sites: ['nerve-root'], sides: ['left'], levels: ['L5'] }), roots),
    judge(expecting({ sites: ['common-fibular-nerve'] }), roots),
    judge(expecting({ sites: ['ulnar-nerve-elbow'] }), roots),
    judge(expecting({ conclusions: ['insufficient'] }), roots),
  ];

  it('counts what each case fixes', () => {
    expect(figuresOf(set)).toMatchObject({
      cases: 4,
      first: { right: 1, of: 3 },
      firstThree: { right: 2, of: 3 },
      side: { right: 1, of: 1 },
      exactLevel: { right: 1, of: 1 },
      conclusion: { right: 0, of: 1 },
      sureAndWrong: { right: 0, of: 4 },
      reliability: [{ from: 0.6, count: 3 }],
    });
    expect(figuresOf(set).reciprocalRank).toBeCloseTo((1 + 1 / 2 + 0) / 3, 10);
  });

  it('has no means of nothing, and a bound on nothing holds', () => {
    const { brier, reciprocalRank, calibrationError, first } = figuresOf([]);
    expect({ brier, reciprocalRank, calibrationError }).toEqual({
      brier: null,
      reciprocalRank: null,
      calibrationError: null,
    });
    expect(ratio(first)).toBe(1);
  });

  it('lists wrong sites before wrong conclusions, the surest first', () => {
    const surer = judge(
      expecting({ sites: ['ulnar-nerve-elbow'] }),
      answer('single-site', ['nerve-root', 'left', 'L5', 0.9]),
    );
    const misses = worstMisses([...set, surer]);
    expect(misses[0]).toBe(surer);
    expect(misses.at(-1)).toBe(set[3]);
    expect(misses).not.toContain(set[0]);
  });
});
