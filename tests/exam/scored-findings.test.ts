import { describe, expect, it } from 'vitest';
import { describeFinding } from '../../src/exam/describe.ts';
import { scoredFindings, withScoredFindings } from '../../src/exam/scored-findings.ts';
import { bedsideExam } from '../support/bedside.ts';

type Part = number | { readonly notTested: string };

const scored = (eye: Part, verbal: Part, motor: Part, ...others: readonly Record<string, unknown>[]) =>
  bedsideExam({
    findings: { higherFunction: [{ scale: 'glasgow-coma-scale', eye, verbal, motor }, ...others] },
  });

const said = (...parts: Parameters<typeof scored>) => scoredFindings(scored(...parts)).map(describeFinding);

describe('what a coma score says in signs', () => {
  // Teasdale and Jennett, Lancet 1974: coma is to open no eye, utter no word and obey no command; 8 of 15 and less is so used since.
  it.each([
    [[1, 2, 4], ['coma']],
    [
      [1, 1, 2],
      ['coma', 'decorticate or decerebrate posturing'],
    ],
    [[2, 2, 4], ['coma']],
    [[2, 3, 5], ['stupor']],
    [
      [3, 4, 6],
      ['drowsiness', 'confusion'],
    ],
    [
      [4, 5, 6],
      ['no drowsiness', 'no disorientation in time, place or person'],
    ],
  ] as const)('%j: %j', (parts, signs) => {
    expect(said(...(parts as unknown as [number, number, number])).toSorted()).toEqual([...signs].sort());
  });

  it('takes a part that could not be tested for unknown: a tube in the throat', () => {
    expect(said(1, { notTested: 'unable' }, 4)).toEqual(['coma']);
    expect(said(4, { notTested: 'unable' }, 6)).toEqual(['no drowsiness']);
  });

  it('says nothing beside what the examiner recorded', () => {
    expect(said(3, 5, 6, { sign: 'drowsiness', present: false }, { sign: 'disorientation', present: false })).toEqual(
      [],
    );
  });

  it('points to the score, and is added once', () => {
    const exam = withScoredFindings(scored(1, 1, 4));
    expect(exam.findings.map(({ pointer }) => pointer)).toEqual(['/findings/higherFunction/0']);
    expect(withScoredFindings(exam)).toBe(exam);
  });
});
