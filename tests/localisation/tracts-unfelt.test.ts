import { describe, expect, it } from 'vitest';
import { tractsUnfeltShifts } from '../../src/localisation/inference/tracts-unfelt.ts';
import { power, sensation } from './case-writing.ts';
import { has, oddsBy } from './odds.ts';

const odds = oddsBy(tractsUnfeltShifts);
const weak = power({ 'hip-flexion': '4' });
const pained = { symptoms: has('back-pain', 'bladder-disturbance') };

describe('weak legs of which nobody has felt', () => {
  it('with back and bladder are of the cord as a whole before its motor tracts alone', () => {
    expect(odds({ history: pained, findings: { power: weak } }, 'spinal-cord-lateral', 'cord')).toBeLessThan(1);
    expect(odds({ history: pained, findings: { power: weak } }, 'spinal-cord-transverse', 'cord')).toBe(1);
  });

  it('are left as they are where feeling was tried, or nothing of back and bladder is told', () => {
    const felt = { power: weak, sensation: sensation('pinprick', { 'great-toe': 'normal' }) };
    expect(odds({ history: pained, findings: felt }, 'spinal-cord-lateral', 'cord')).toBe(1);
    expect(odds({ findings: { power: weak } }, 'spinal-cord-lateral', 'cord')).toBe(1);
  });
});
