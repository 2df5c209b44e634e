import { describe, expect, it } from 'vitest';
import type { SiteKind } from '../../src/anatomy/site-kind.ts';
import type { Exam } from '../../src/exam/exam.ts';
import type { Site } from '../../src/localisation/hypothesis.ts';
import { porphyricShifts } from '../../src/localisation/inference/porphyric-pattern.ts';
import type { Shift } from '../../src/localisation/inference/shift.ts';
import { stiffNeckShift } from '../../src/localisation/inference/stiff-neck.ts';
import { bedsideExam } from '../support/bedside.ts';
import { power } from './case-writing.ts';

const claims = (...keys: readonly string[]) => keys.map((key) => ({ key, present: true }));

/** What a pattern makes of the odds of a site. */
function odds(
  shiftsOf: (exam: Exam) => readonly Shift[],
  draft: Parameters<typeof bedsideExam>[0],
  key: string,
  kind: SiteKind,
): number {
  const site: Site = { key, kind, label: '', side: 'both', level: null };
  return shiftsOf(bedsideExam(draft)).reduce(
    (product, { applies, factor }) => (applies(site) ? product * factor : product),
    1,
  );
}

describe('a stiff neck', () => {
  const findings = { specialTests: [{ test: 'neck-stiffness', result: 'positive' }] };
  const meninges = (...symptoms: readonly string[]): number =>
    odds(stiffNeckShift, { history: { symptoms: claims(...symptoms) }, findings }, 'meningeal-irritation', 'meninges');

  it('is less often of the meninges where nobody speaks of fever or headache', () => {
    expect(meninges('neck-pain')).toBeLessThan(1);
    expect(meninges('neck-pain', 'headache')).toBe(1);
    expect(meninges('fever')).toBe(1);
  });

  it('says nothing where nobody was asked', () => {
    expect(meninges()).toBe(1);
  });
});

describe('belly pain before limbs that fail', () => {
  const findings = { power: power({ 'shoulder-abduction': '3', 'hip-flexion': '4' }) };
  const motorAxons = (pace: string, ...symptoms: readonly string[]): number =>
    odds(
      porphyricShifts,
      { history: { onset: { pace }, symptoms: claims(...symptoms) }, findings },
      'motor-polyneuropathy',
      'polyneuropathy',
    );

  it('speaks for motor axons with dark urine, and not alone', () => {
    expect(motorAxons('acute', 'abdominal-pain', 'dark-urine')).toBeGreaterThan(1);
    expect(motorAxons('acute', 'abdominal-pain')).toBe(1);
  });

  it('does not in the feverish, nor over years', () => {
    expect(motorAxons('acute', 'abdominal-pain', 'vomiting', 'fever')).toBe(1);
    expect(motorAxons('chronic', 'abdominal-pain', 'dark-urine')).toBe(1);
  });
});
