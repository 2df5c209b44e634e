import { describe, expect, it } from 'vitest';
import { onBothSides } from '../../src/causes/reasons.ts';

describe('what is found alike on both sides', () => {
  it.each([
    ['left knee extension 4/5', 'knee extension 4/5 on both sides'],
    ['no ptosis on the left', 'no ptosis on either side'],
    ['homonymous hemianopia on the left', 'homonymous hemianopia on both sides'],
    ['neglect of the left side', 'neglect of each side'],
    ['no extinction of touch on the left side', 'no extinction of touch on either side'],
    ['tongue does not deviate to the left side', 'tongue does not deviate to either side'],
    ['no visual field defect of the left eye alone', 'no visual field defect of either eye alone'],
    ['no unequal pupils, the left one abnormal', 'no unequal pupils'],
  ])('%s: %s', (one, both) => {
    expect(onBothSides(one, 'left')).toBe(both);
  });
});
