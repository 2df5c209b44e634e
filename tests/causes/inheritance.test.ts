import { describe, expect, it } from 'vitest';
import { inheritanceModifiers } from '../../src/causes/inheritance.ts';
import { type Cause, type Inheritance, tempos, told } from '../../src/causes/table/cause.ts';
import { fromMemory } from '../../src/kernel/cite.ts';
import { bedsideExam } from '../support/bedside.ts';

const disease = (...inheritance: readonly Inheritance[]): Cause => ({
  key: 'some-disease',
  label: 'Some disease',
  group: 'hereditary',
  inheritance,
  produces: [],
  tempo: tempos.lifelong,
  history: [told('family/similar-disorder', 10)],
  source: fromMemory,
});

const ratios = (cause: Cause, ...family: readonly unknown[]) =>
  inheritanceModifiers(cause, bedsideExam({ history: { family } })).map(({ ratio }) => ratio);
const alike = (relation: string, present = true) => ({ key: 'similar-disorder', present, relation });

// Mendel's rules, as any textbook of genetics has them.
describe('inheritance', () => {
  it('speaks for dominant and against recessive inheritance when a parent is affected', () => {
    expect(ratios(disease('autosomal-dominant'), alike('parent'))[0]).toBeGreaterThan(1);
    expect(ratios(disease('autosomal-recessive'), alike('parent'))[0]).toBeLessThan(1);
  });

  it('speaks for recessive inheritance when a sibling is affected or the parents are related', () => {
    expect(ratios(disease('autosomal-recessive'), alike('sibling'))[0]).toBeGreaterThan(1);
    const related = { key: 'consanguinity', present: true };
    expect(ratios(disease('autosomal-recessive'), related)[0]).toBeGreaterThan(1);
    expect(ratios(disease('autosomal-dominant'), related)).toEqual([]);
  });

  it('takes the way that fits best where a disease knows several', () => {
    const both = ratios(disease('autosomal-recessive', 'autosomal-dominant'), alike('parent'))[0];
    expect(both).toBe(ratios(disease('autosomal-dominant'), alike('parent'))[0]);
  });

  it('says nothing of what is denied, of other illnesses, of unnamed relatives, or of causes that are not inherited', () => {
    expect(ratios(disease('autosomal-dominant'), alike('parent', false))).toEqual([]);
    expect(ratios(disease('autosomal-dominant'), { key: 'diabetes', present: true, relation: 'parent' })).toEqual([]);
    expect(ratios(disease('autosomal-dominant'), { key: 'similar-disorder', present: true })).toEqual([]);
  });
});
