import { describe, expect, it } from 'vitest';
import { tetanyShifts } from '../../src/localisation/inference/tetany-pattern.ts';
import { midline, power, reflexes, sensation } from './case-writing.ts';
import { oddsBy } from './odds.ts';

const odds = oddsBy(tetanyShifts);

describe('nerves that fire too readily', () => {
  const spasm = midline({ 'carpopedal-spasm': true });
  const answers = [{ test: 'chvostek-or-trousseau', result: 'positive' }];

  it.each([
    { involuntaryMovements: spasm },
    { specialTests: answers },
    { involuntaryMovements: spasm, specialTests: answers, reflexes: reflexes({ biceps: '3', knee: '3' }) },
  ])('speak for no lesion and against one of a nerve or cord when nothing is lost', (findings) => {
    expect(odds({ findings }, 'no-lesion', 'none')).toBeGreaterThan(1);
    expect(odds({ findings }, 'obturator-nerve', 'nerve')).toBeLessThan(1);
    expect(odds({ findings }, 'spinal-cord-transverse', 'cord')).toBeLessThan(1);
  });

  it.each([
    { power: power({ 'hip-adduction': ['3', null] }) },
    { sensation: sensation('light-touch', { 'inner-thigh': ['reduced', null] }) },
    { reflexes: reflexes({ ankle: '0' }) },
  ])('say nothing of it beside strength, feeling or a jerk that is lost', (lost) => {
    const findings = { ...lost, involuntaryMovements: spasm };
    expect(odds({ findings }, 'obturator-nerve', 'nerve')).toBe(1);
    expect(odds({ findings }, 'no-lesion', 'none')).toBe(1);
  });

  it('are not known where neither spasm nor answer was found', () => {
    const findings = { specialTests: [{ test: 'chvostek-or-trousseau', result: 'negative' }] };
    expect(odds({ findings }, 'obturator-nerve', 'nerve')).toBe(1);
  });
});
