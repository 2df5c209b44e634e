import { describe, expect, it } from 'vitest';
import { describeFinding } from '../../src/exam/describe.ts';
import { impliedFindings, withImpliedFacts } from '../../src/exam/implied-facts.ts';
import { bedsideExam } from '../support/bedside.ts';

type Part = number | { readonly notTested: string };

const scored = (eye: Part, verbal: Part, motor: Part, ...others: readonly Record<string, unknown>[]) =>
  bedsideExam({
    findings: { higherFunction: [{ scale: 'glasgow-coma-scale', eye, verbal, motor }, ...others] },
  });

const said = (...parts: Parameters<typeof scored>) => impliedFindings(scored(...parts)).map(describeFinding);

describe('what scores and measurements say in signs', () => {
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

  it.each([
    ['body-temperature', 38, 'Cel', ['fever on examination']],
    ['body-temperature', 101.3, '[degF]', ['fever on examination']],
    ['body-temperature', 37.9, 'Cel', []],
    ['heart-rate', 118, '/min', ['resting tachycardia']],
    ['heart-rate', 44, '/min', ['bradycardia']],
    ['heart-rate', 72, '/min', []],
  ] as const)('a measured %s of %d %s: %j', (key, value, unit, signs) => {
    const exam = bedsideExam({
      results: [{ key, valueQuantity: { value, unit, system: 'http://unitsofmeasure.org', code: unit } }],
    });
    expect(impliedFindings(exam).map(describeFinding)).toEqual(signs);
    expect(impliedFindings(exam).every(({ pointer }) => pointer === '/results/0')).toBe(true);
  });

  it('takes a fever that was found for one that the patient has, but not against what was told', () => {
    const found = { autonomic: [{ sign: 'fever', present: true }] };
    const told = (symptoms: readonly Record<string, unknown>[]) =>
      withImpliedFacts(bedsideExam({ history: { symptoms }, findings: found })).history.map(({ key, present }) => [
        key,
        present,
      ]);
    expect(told([])).toEqual([['fever', true]]);
    expect(told([{ key: 'fever', present: false }])).toEqual([['fever', false]]);
  });

  it.each([
    ['seizure-seen', 'seizure'],
    ['postural-tremor', 'tremor'],
  ])('takes %s for a complaint of %s, told once', (sign, symptom) => {
    const involuntaryMovements = [
      { sign, present: true },
      ...(symptom === 'tremor' ? [{ sign: 'action-tremor', present: true }] : []),
    ];
    const { history } = withImpliedFacts(bedsideExam({ findings: { involuntaryMovements } }));
    expect(history.map(({ key, present }) => [key, present])).toEqual([[symptom, true]]);
  });

  it('points to the score, and is added once', () => {
    const exam = withImpliedFacts(scored(1, 1, 4));
    expect(exam.findings.map(({ pointer }) => pointer)).toEqual(['/findings/higherFunction/0']);
    expect(withImpliedFacts(exam)).toBe(exam);
  });
});
