import { describe, expect, it } from 'vitest';
import { scales } from '../../src/exam/scales.ts';

const label = (scale: 'mrc-power' | 'reflex-grade', key: string): string =>
  scales[scale].grades.find((grade) => grade.key === key)?.label.toLowerCase() ?? '';

// Aids to the Examination of the Peripheral Nervous System (after MRC Memorandum 45): 0 no contraction; 1 flicker or trace of
// contraction; 2 active movement, with gravity eliminated; 3 active movement against gravity; 4 active movement against
// gravity and resistance; 5 normal power. 4-, 4 and 4+ stand for slight, moderate and strong resistance.
describe('the power grades say what the Medical Research Council says', () => {
  it.each([
    ['0', /^no contraction/],
    ['1', /flicker or trace/],
    ['2', /gravity eliminated/],
    ['3', /against gravity$/],
    ['4-', /against gravity and slight resistance/],
    ['4', /against gravity and moderate resistance/],
    ['4+', /against gravity and strong resistance/],
    ['5', /normal/],
  ] as const)('grade %s', (key, words) => {
    expect(label('mrc-power', key)).toMatch(words);
  });

  it('has these eight grades and no other', () => {
    expect(scales['mrc-power'].grades.map(({ key }) => key)).toEqual(['0', '1', '2', '3', '4-', '4', '4+', '5']);
  });
});

// The usual grading of muscle stretch reflexes (DeJong's The Neurologic Examination): 0 absent, 1+ reduced, 2+ normal,
// 3+ brisk, 4+ very brisk with clonus. It is not the NINDS scale, whose 3 is the upper half of normal.
describe('the reflex grades say what the usual 0 to 4+ grading says', () => {
  it.each([
    ['0', /absent/],
    ['1', /reduced/],
    ['2', /normal/],
    ['3', /brisk/],
    ['4', /clonus/],
  ] as const)('grade %s', (key, words) => {
    expect(label('reflex-grade', key)).toMatch(words);
  });

  it('takes only 2 for normal', () => {
    expect(scales['reflex-grade'].normal).toEqual(['2']);
  });
});

describe('ordinals', () => {
  it.each(['mrc-power', 'reflex-grade', 'superficial-reflex'] as const)('of %s rise from grade to grade', (scale) => {
    const ordinals = scales[scale].grades.map(({ ordinal }) => ordinal);
    expect(ordinals).toEqual([...ordinals].sort((a, b) => a - b));
    expect(new Set(ordinals).size).toBe(ordinals.length);
  });
});
