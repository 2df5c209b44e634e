import { describe, expect, it } from 'vitest';
import { legTremorShifts, unseenTremorShifts } from '../../src/localisation/inference/tremor-patterns.ts';
import { reflexes } from './case-writing.ts';
import { has, oddsBy } from './odds.ts';

const odds = oddsBy(legTremorShifts);
const tremor = (sign: string, site: string) => ({ sign, site, side: 'both', present: true });

// Orthostatic tremor: Gerschlager 2004; tremor of neuropathies shakes the hands: Bain 1996 (both recalled).
describe('legs that shake when they bear weight', () => {
  it('have a tremor, and not nerves that have lost their large fibres', () => {
    const findings = { involuntaryMovements: [tremor('postural-tremor', 'lower-limb')] };
    expect(odds({ findings }, 'action-tremor', 'basal-ganglia')).toBeGreaterThan(1);
    expect(odds({ findings }, 'sensory-polyneuropathy', 'polyneuropathy')).toBeLessThan(1);
  });

  it('say nothing of the kind where the hands shake as well', () => {
    const findings = {
      involuntaryMovements: [tremor('postural-tremor', 'lower-limb'), tremor('postural-tremor', 'hand')],
    };
    expect(odds({ findings }, 'action-tremor', 'basal-ganglia')).toBe(1);
  });
});

describe('brisk jerks without a tremor', () => {
  const odds = oddsBy(unseenTremorShifts);
  const brisk = { reflexes: reflexes({ biceps: '3', triceps: '3', knee: '3' }) };

  it('say nothing of a tremor that nobody tells of or has seen', () => {
    expect(odds({ findings: brisk }, 'action-tremor', 'basal-ganglia')).toBeLessThan(0.2);
  });

  it('may go with one that is told or seen, or with a racing heart', () => {
    const told = { symptoms: has('tremor') };
    expect(odds({ history: told, findings: brisk }, 'action-tremor', 'basal-ganglia')).toBe(1);
    const seen = { ...brisk, involuntaryMovements: [tremor('postural-tremor', 'hand')] };
    const racing = { ...brisk, autonomic: [{ sign: 'resting-tachycardia', present: true }] };
    for (const findings of [seen, racing]) expect(odds({ findings }, 'action-tremor', 'basal-ganglia')).toBe(1);
  });
});
