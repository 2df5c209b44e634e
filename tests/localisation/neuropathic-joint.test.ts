import { describe, expect, it } from 'vitest';
import { neuropathicJointShifts } from '../../src/localisation/inference/neuropathic-joint.ts';
import { oddsBy } from './odds.ts';

const odds = oddsBy(neuropathicJointShifts);
const joint = (site: string) => ({
  findings: { inspection: [{ sign: 'neuropathic-joint', site, side: 'left', present: true }] },
});

// Neuropathic joints of the arm: Hatzis 1998 (from memory).
describe('a joint that has gone without pain', () => {
  it('is of a cavity in the cord when it is one of the arm', () => {
    expect(odds(joint('shoulder'), 'spinal-cord-central', 'cord')).toBeGreaterThan(1);
    expect(odds(joint('shoulder'), 'nerve-root', 'root')).toBeLessThan(1);
  });

  it('says nothing of the neck when it is one of the foot', () => {
    expect(odds(joint('foot'), 'spinal-cord-central', 'cord')).toBe(1);
  });
});
