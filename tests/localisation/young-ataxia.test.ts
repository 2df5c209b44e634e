import { describe, expect, it } from 'vitest';
import { youngAtaxiaShifts } from '../../src/localisation/inference/young-ataxia.ts';
import { midline, power, reflexes, sensation } from './case-writing.ts';
import { oddsBy } from './odds.ts';

const odds = oddsBy(youngAtaxiaShifts, 'both');

const longAxons = ['length-dependent-polyneuropathy', 'polyneuropathy'] as const;
const ganglia = ['sensory-ganglionopathy', 'ganglion'] as const;
const over = (durationDays: number) => ({ onset: { pace: 'chronic', durationDays }, course: 'progressive' });
const findings = { gait: midline({ ataxic: true }), reflexes: reflexes({ ankle: '0', knee: '0' }) };
const child = { person: { ageYears: 12 }, history: over(400), findings };

describe('somebody young who sways and has no jerks', () => {
  it('has ganglia and columns ill before the longest axons', () => {
    expect(odds(child, ...ganglia)).toBeGreaterThan(1);
    expect(odds(child, 'spinal-cord-posterior', 'cord')).toBeGreaterThan(1);
    expect(odds(child, ...longAxons)).toBeLessThan(1);
  });

  it('may have told of it, where no position is felt at the toes', () => {
    const lost = {
      ...child,
      history: { ...over(400), symptoms: [{ key: 'unsteadiness', present: true }] },
      findings: { reflexes: findings.reflexes, sensation: sensation('joint-position', { 'great-toe': 'reduced' }) },
    };
    expect(odds(lost, ...ganglia)).toBeGreaterThan(1);
  });

  it('has long axons ill as often where the feet are weak, jerks are kept, or something starves nerves', () => {
    const weak = { ...findings, power: power({ 'ankle-dorsiflexion': '4' }) };
    expect(odds({ ...child, findings: weak }, ...longAxons)).toBe(1);
    const kept = { ...findings, reflexes: reflexes({ ankle: '2', knee: '2' }) };
    expect(odds({ ...child, findings: kept }, ...longAxons)).toBe(1);
    const treated = { ...over(400), medications: [{ key: 'vincristine', present: true }] };
    expect(odds({ ...child, history: treated }, ...longAxons)).toBe(1);
  });

  it('within days, or from later life on, may be anything', () => {
    expect(odds({ ...child, history: { onset: { pace: 'acute', durationDays: 7 } } }, ...longAxons)).toBe(1);
    expect(odds({ ...child, person: { ageYears: 60 } }, ...longAxons)).toBe(1);
    // It began in youth.
    expect(odds({ ...child, person: { ageYears: 32 }, history: over(15 * 365) }, ...ganglia)).toBeGreaterThan(1);
  });
});
