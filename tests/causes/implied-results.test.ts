import { describe, expect, it } from 'vitest';
import { queryExam } from '../../src/causes/exam-query.ts';
import { withImpliedResults } from '../../src/causes/implied-results.ts';
import { bedsideExam } from '../support/bedside.ts';

const measured = (key: string, value: number, code: string, comparator?: string) => ({
  key,
  valueQuantity: { value, code, unit: code, system: 'http://unitsofmeasure.org', ...(comparator && { comparator }) },
});
const level = (value: number, comparator?: string) => measured('achr-antibody-level', value, 'nmol/L', comparator);
const pressures = (lying: number, standing: number) => [
  measured('systolic-pressure-supine', lying, 'mm[Hg]'),
  measured('systolic-pressure-standing', standing, 'mm[Hg]'),
];
const readAs = (key: string, results: readonly unknown[], findings = {}) =>
  queryExam(bedsideExam({ results, findings })).result(key)?.value;

describe('what numbers imply', () => {
  it('a level of the receptor antibody is positive, negative or neither', () => {
    expect(readAs('achr-antibody', [level(8)])).toBe('positive');
    expect(readAs('achr-antibody', [level(0.1)])).toBe('negative');
    expect(readAs('achr-antibody', [level(0.3)])).toBe('equivocal');
    expect(readAs('achr-antibody', [level(0.2, '<')])).toBe('negative');
    expect(readAs('achr-antibody', [level(0.4, '<')])).toBeUndefined();
    expect(readAs('achr-antibody', [level(20, '>')])).toBe('positive');
  });

  it('what was read by the laboratory stands', () => {
    expect(readAs('achr-antibody', [level(8), { key: 'achr-antibody', value: 'negative' }])).toBe('negative');
  });

  it('a pressure that falls by 20 on standing, or by 30 from a high one, is orthostatic hypotension', () => {
    expect(readAs('autonomic-tests', pressures(130, 110))).toBe('orthostatic-hypotension');
    expect(readAs('autonomic-tests', pressures(130, 115))).toBeUndefined();
    expect(readAs('autonomic-tests', pressures(170, 145))).toBeUndefined();
    expect(readAs('autonomic-tests', pressures(170, 140))).toBe('orthostatic-hypotension');
  });

  it('a pressure that the examiner has judged is not read once more', () => {
    const autonomic = [{ sign: 'orthostatic-hypotension', present: true }];
    expect(readAs('autonomic-tests', pressures(130, 80), { autonomic })).toBeUndefined();
  });

  it('adds nothing to results that need no reading', () => {
    const exam = bedsideExam({ results: [{ key: 'ana', value: 'positive' }] });
    expect(withImpliedResults(exam)).toBe(exam.results);
  });
});
