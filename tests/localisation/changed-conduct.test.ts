import { describe, expect, it } from 'vitest';
import { changedConductShifts } from '../../src/localisation/inference/changed-conduct.ts';
import { midline } from './case-writing.ts';
import { oddsBy } from './odds.ts';

const odds = oddsBy(changedConductShifts);
const changed = { disinhibition: true, 'executive-dysfunction': true };
const over = (durationDays: number) => ({ onset: { durationDays } });

// International criteria of behavioural-variant frontotemporal dementia: Rascovsky 2011 (recalled).
describe('conduct that changes over months', () => {
  it('is of the frontal lobes where memory and attention are not found wanting', () => {
    const findings = { higherFunction: midline(changed) };
    expect(odds({ history: over(700), findings }, 'cortex-frontal', 'hemisphere')).toBeGreaterThan(1);
    expect(odds({ history: over(700), findings }, 'diffuse-encephalopathy', 'encephalopathy')).toBeLessThan(1);
  });

  it('may be of the whole brain within weeks, with memory that fails, or by one sign alone', () => {
    expect(
      odds({ history: over(20), findings: { higherFunction: midline(changed) } }, 'cortex-frontal', 'hemisphere'),
    ).toBe(1);
    for (const mind of [{ ...changed, 'memory-impairment': true }, { disinhibition: true }]) {
      const findings = { higherFunction: midline(mind) };
      expect(odds({ history: over(700), findings }, 'cortex-frontal', 'hemisphere')).toBe(1);
    }
  });
});
