import { describe, expect, it } from 'vitest';
import { centralCordShifts } from '../../src/localisation/inference/central-cord-injury.ts';
import { plantars, power } from './case-writing.ts';
import { has, oddsBy } from './odds.ts';

const odds = oddsBy(centralCordShifts);
const struck = { exposures: has('trauma') };
const limbs = (hands: string, legs: string) => ({
  power: power({
    'finger-abduction': hands,
    'wrist-extension': hands,
    'hip-flexion': legs,
    'ankle-dorsiflexion': legs,
  }),
  plantars: plantars('extensor'),
});

// Central cord injury: Schneider 1954; arms at least ten points lower than legs: van Middendorp 2010 (both recalled).
describe('hands and legs after an injury', () => {
  it('are the middle of the cord when the hands are the weaker', () => {
    expect(odds({ history: struck, findings: limbs('2', '4') }, 'spinal-cord-central', 'cord')).toBeGreaterThan(1);
    expect(odds({ history: struck, findings: limbs('2', '4') }, 'spinal-cord-transverse', 'cord')).toBeLessThan(1);
  });

  it('are left as they are when alike, uninjured, or without a sign of the tracts', () => {
    expect(odds({ history: struck, findings: limbs('3', '3') }, 'spinal-cord-central', 'cord')).toBe(1);
    expect(odds({ findings: limbs('2', '4') }, 'spinal-cord-central', 'cord')).toBe(1);
    const { power: weak } = limbs('2', '4');
    expect(odds({ history: struck, findings: { power: weak } }, 'spinal-cord-central', 'cord')).toBe(1);
  });
});
