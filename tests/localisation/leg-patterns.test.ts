import { describe, expect, it } from 'vitest';
import { legPatternShifts } from '../../src/localisation/inference/leg-patterns.ts';
import { plantars, power, reflexes, sensation } from './case-writing.ts';
import { oddsBy } from './odds.ts';

const odds = oddsBy(legPatternShifts, 'both');

const told = (...keys: string[]) => keys.map((key) => ({ key, present: true }));
const acute = { onset: { pace: 'acute', durationDays: 4 } };
const gone = reflexes({ knee: '0', ankle: '0' });

describe('what fails in the legs', () => {
  const knees = { power: power({ 'knee-extension': '4' }), reflexes: gone };

  it('strength and skin of the fibular nerve alone are not of the whole sciatic nerve, unless the buttock was hurt', () => {
    const fibular = {
      power: power({ 'ankle-dorsiflexion': [null, '2'], 'ankle-eversion': [null, '2'] }),
      sensation: sensation('light-touch', { 'dorsum-of-foot': [null, 'reduced'] }),
    };
    const sciatic = ['sciatic-nerve', 'nerve', 'right'] as const;
    expect(odds({ findings: fibular }, ...sciatic)).toBeLessThan(1);
    const hip = { conditions: told('hip-replacement') };
    expect(odds({ history: hip, findings: fibular }, ...sciatic)).toBe(1);
    const sole = {
      ...fibular,
      sensation: sensation('light-touch', { 'dorsum-of-foot': [null, 'reduced'], sole: [null, 'reduced'] }),
    };
    expect(odds({ findings: sole }, ...sciatic)).toBe(1);
  });

  it('weak knees with no ankle jerks are not of two femoral nerves, unless something hurt both', () => {
    expect(odds({ history: acute, findings: knees }, 'femoral-nerve-pelvis', 'nerve')).toBeLessThan(0.1);
    const operated = { ...acute, exposures: told('recent-surgery') };
    expect(odds({ history: operated, findings: knees }, 'femoral-nerve-pelvis', 'nerve')).toBe(1);
    const kept = { ...knees, reflexes: reflexes({ knee: '0', ankle: '2' }) };
    expect(odds({ history: acute, findings: kept }, 'femoral-nerve-pelvis', 'nerve')).toBe(1);
  });

  it('jerks that are lost in both legs speak against the brain, a rising toe takes that back', () => {
    expect(odds({ history: acute, findings: knees }, 'cortex-parasagittal', 'hemisphere')).toBeLessThan(1);
    const rising = { ...knees, plantars: plantars('extensor') };
    expect(odds({ history: acute, findings: rising }, 'cortex-parasagittal', 'hemisphere')).toBe(1);
  });

  it('legs that fail alike within days are not of motor cells, one worse than the other may be', () => {
    const alike = { power: power({ 'hip-flexion': '3', 'knee-extension': '3' }) };
    expect(odds({ history: acute, findings: alike }, 'lower-motor-neuron-system', 'anterior-horn')).toBeLessThan(1);
    const uneven = { power: power({ 'hip-flexion': ['1', '4'], 'knee-extension': ['2', '4'] }) };
    expect(odds({ history: acute, findings: uneven }, 'lower-motor-neuron-system', 'anterior-horn')).toBe(1);
    expect(odds({ findings: alike }, 'lower-motor-neuron-system', 'anterior-horn')).toBe(1);
  });

  it('a foot that drops with a bladder that fails is of the cauda equina, not of a nerve', () => {
    const findings = { power: power({ 'ankle-dorsiflexion': [null, '2'] }) };
    const bladder = { symptoms: told('bladder-disturbance', 'back-pain') };
    expect(odds({ history: bladder, findings }, 'cauda-equina', 'cauda-equina')).toBeGreaterThan(1);
    expect(odds({ history: bladder, findings }, 'common-fibular-nerve', 'nerve', 'right')).toBeLessThan(1);
    expect(odds({ findings }, 'cauda-equina', 'cauda-equina')).toBe(1);
    const stiff = { ...findings, plantars: plantars(null, 'extensor') };
    expect(odds({ history: bladder, findings: stiff }, 'cauda-equina', 'cauda-equina')).toBe(1);
  });

  it('a leg that misses warmth alone has a crossed tract, of the other half of the cord', () => {
    const warmth = { sensation: sensation('temperature', { 'whole-leg': ['reduced', null] }) };
    expect(odds({ findings: warmth }, 'spinal-cord-hemisection', 'cord', 'right')).toBeGreaterThan(1);
    expect(odds({ findings: warmth }, 'spinal-cord-hemisection', 'cord', 'left')).toBe(1);
    expect(odds({ findings: warmth }, 'sciatic-nerve', 'nerve', 'left')).toBeLessThan(1);
    const touchToo = {
      sensation: [...warmth.sensation, ...sensation('light-touch', { 'whole-leg': ['reduced', null] })],
    };
    expect(odds({ findings: touchToo }, 'sciatic-nerve', 'nerve', 'left')).toBe(1);
  });

  it('and more surely so where touch was found kept', () => {
    const warmth = sensation('temperature', { 'whole-leg': ['reduced', null] });
    const kept = [...warmth, ...sensation('light-touch', { 'whole-leg': ['normal', null] })];
    expect(odds({ findings: { sensation: kept } }, 'sciatic-nerve', 'nerve', 'left')).toBeLessThan(
      odds({ findings: { sensation: warmth } }, 'sciatic-nerve', 'nerve', 'left'),
    );
  });

  it('a numb trunk over weak hips is not of the longest axons, unless the hands are numb as well', () => {
    const findings = {
      power: power({ 'hip-flexion': '3', 'ankle-dorsiflexion': '3' }),
      sensation: sensation('light-touch', { T8: 'reduced', L4: 'reduced' }),
    };
    expect(odds({ findings }, 'length-dependent-polyneuropathy', 'polyneuropathy')).toBeLessThan(1);
    const hands = [...findings.sensation, ...sensation('light-touch', { 'glove-to-elbow': 'reduced' })];
    expect(
      odds({ findings: { ...findings, sensation: hands } }, 'length-dependent-polyneuropathy', 'polyneuropathy'),
    ).toBe(1);
  });

  it('feet that burn under stockings are not of a level of the cord, unless the bladder fails', () => {
    const findings = { sensation: sensation('temperature', { 'stocking-to-mid-calf': 'reduced' }) };
    const burning = { symptoms: told('burning-feet') };
    expect(odds({ history: burning, findings }, 'spinal-cord-transverse', 'cord')).toBeLessThan(1);
    expect(odds({ history: burning, findings }, 'spinal-cord-posterolateral', 'cord')).toBe(1);
    const wet = { symptoms: told('burning-feet', 'bladder-disturbance') };
    expect(odds({ history: wet, findings }, 'spinal-cord-transverse', 'cord')).toBe(1);
  });

  it('feet that burn and cannot bear a touch are of the ends of their fibres, one foot is not', () => {
    const history = { symptoms: told('burning-feet') };
    const tender = { sensation: sensation('light-touch', { 'whole-foot': 'increased' }) };
    expect(odds({ history, findings: tender }, 'small-fibre-polyneuropathy', 'polyneuropathy')).toBeGreaterThan(1);
    expect(odds({ history, findings: tender }, 'spinal-cord-hemisection', 'cord')).toBeLessThan(1);
    const one = { sensation: sensation('light-touch', { 'whole-foot': [null, 'increased'] }) };
    expect(odds({ history, findings: one }, 'small-fibre-polyneuropathy', 'polyneuropathy')).toBe(1);
    expect(odds({ findings: tender }, 'small-fibre-polyneuropathy', 'polyneuropathy')).toBe(1);
  });

  it('a jerk that is gone in the weak leg alone is not lost from above, unless within hours or with tracts', () => {
    const leg = {
      power: power({ 'knee-flexion': ['4', null], 'ankle-dorsiflexion': ['4', null] }),
      reflexes: reflexes({ ankle: ['0', '2'] }),
    };
    const cortex = ['cortex-anterior-cerebral', 'hemisphere'] as const;
    const days = { onset: { pace: 'acute' } };
    expect(odds({ history: days, findings: leg }, ...cortex)).toBeLessThan(0.5);
    expect(odds({ history: { onset: { pace: 'hyperacute' } }, findings: leg }, ...cortex)).toBe(1);
    const bothGone = { ...leg, reflexes: reflexes({ ankle: '0' }) };
    expect(odds({ history: days, findings: bothGone }, ...cortex)).toBe(1);
    const rising = { ...leg, plantars: plantars('extensor', 'flexor') };
    expect(odds({ history: days, findings: rising }, ...cortex)).toBe(1);
  });
});
