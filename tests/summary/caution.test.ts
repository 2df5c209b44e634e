import { describe, expect, it } from 'vitest';
import { caution, cautionFor } from '../../src/summary/caution.ts';

describe('the caution', () => {
  it('says to whom it speaks and what comes first', () => {
    expect(caution).toContain('not a diagnosis');
    expect(caution).toContain('local protocols and licensed practice come first');
  });

  it('adds for a child that the model knows adults only', () => {
    expect(cautionFor(17.9)).toContain('made for adults');
    expect(cautionFor(18)).toBe(caution);
    expect(cautionFor(undefined)).toBe(caution);
  });
});
