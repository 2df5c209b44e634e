import { describe, expect, it } from 'vitest';
import { legTremorShifts } from '../../src/localisation/inference/tremor-patterns.ts';
import { oddsBy } from './odds.ts';

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
