import { describe, expect, it } from 'vitest';
import { handPatternShifts } from '../../src/localisation/inference/hand-patterns.ts';
import { power, sensation, signs, tests, wasting } from './case-writing.ts';
import { oddsBy } from './odds.ts';

const odds = oddsBy(handPatternShifts, 'right');

const told = (...keys: string[]) => keys.map((key) => ({ key, present: true }));

describe('what fails in the hands', () => {
  it('fingers that hang from a wrist that is not said to are not of the radial nerve in the arm', () => {
    const inspection = signs({ 'finger-drop': [null, true] });
    const groove = ['radial-nerve-spiral-groove', 'nerve'] as const;
    expect(odds({ findings: { inspection } }, ...groove)).toBeLessThan(1);
    expect(odds({ findings: { inspection } }, 'posterior-interosseous-nerve', 'nerve')).toBe(1);
    const wrist = { inspection, power: power({ 'wrist-extension': [null, '2'] }) };
    expect(odds({ findings: wrist }, ...groove)).toBe(1);
  });

  it('nor of a root, unless something hurts', () => {
    const findings = { inspection: signs({ 'finger-drop': [null, true] }) };
    expect(odds({ history: { symptoms: told('weakness') }, findings }, 'nerve-root', 'root')).toBeLessThan(1);
    expect(odds({ history: { symptoms: told('neck-pain') }, findings }, 'nerve-root', 'root')).toBe(1);
  });

  it('both balls of one hand have two nerves and one segment', () => {
    const both = { inspection: wasting({ 'thenar-eminence': [null, true], 'hypothenar-eminence': [null, true] }) };
    expect(odds({ findings: both }, 'ulnar-nerve-elbow', 'nerve')).toBeLessThan(1);
    expect(odds({ findings: both }, 'ulnar-nerve-elbow', 'nerve', 'left')).toBe(1);
    expect(odds({ findings: both }, 'lower-motor-neuron-system', 'anterior-horn')).toBeGreaterThan(1);
    const one = { inspection: wasting({ 'hypothenar-eminence': [null, true], 'first-web-space': [null, true] }) };
    expect(odds({ findings: one }, 'ulnar-nerve-elbow', 'nerve')).toBe(1);
  });

  it('a hand that thins and feels is not of a mixed nerve, unless the nerve answers to the finger', () => {
    const history = { onset: { pace: 'chronic' }, symptoms: told('weakness') };
    const thin = { inspection: wasting({ hand: [null, true] }) };
    const feels = { ...thin, sensation: sensation('pinprick', { 'little-finger': 'normal' }) };
    const ulnar = ['ulnar-nerve-elbow', 'nerve'] as const;
    expect(odds({ history, findings: feels }, ...ulnar)).toBeLessThan(1);
    expect(odds({ history, findings: feels }, 'deep-branch-of-ulnar-nerve', 'nerve')).toBe(1);
    expect(odds({ history, findings: thin }, ...ulnar)).toBe(1);
    const tender = { ...feels, specialTests: tests({ 'tinel-elbow': [null, 'positive'] }) };
    expect(odds({ history, findings: tender }, ...ulnar)).toBe(1);
  });

  it('thumbs and first fingers of both hands alone are of the median nerves, with the little finger not', () => {
    const thumbs = {
      inspection: wasting({ 'thenar-eminence': true }),
      power: power({ 'thumb-abduction': '4' }),
      sensation: sensation('pinprick', { 'index-finger': 'reduced' }),
    };
    expect(odds({ findings: thumbs }, 'spinal-cord-central', 'cord', 'both')).toBeLessThan(1);
    expect(odds({ findings: thumbs }, 'motor-polyneuropathy', 'polyneuropathy', 'both')).toBeLessThan(1);
    const more = { ...thumbs, power: power({ 'thumb-abduction': '4', 'finger-abduction': '4' }) };
    expect(odds({ findings: more }, 'spinal-cord-central', 'cord', 'both')).toBe(1);
  });

  // The anterior interosseous nerve serves the long flexor of the thumb and that of the index finger: Stewart (recalled).
  it('the far joints of thumb and index finger alone are of one branch, with the fingers that spread not', () => {
    const far = { power: power({ 'thumb-flexion': [null, '0'], 'index-distal-flexion': [null, '0'] }) };
    expect(odds({ findings: far }, 'cortex-hand-area', 'hemisphere', 'left')).toBeLessThan(1);
    expect(odds({ findings: far }, 'anterior-interosseous-nerve', 'nerve')).toBe(1);
    const pinch = { specialTests: tests({ 'pinch-sign': [null, 'positive'] }) };
    expect(odds({ findings: pinch }, 'cortex-hand-area', 'hemisphere', 'left')).toBeLessThan(1);
    const one = { power: power({ 'thumb-flexion': [null, '0'] }) };
    expect(odds({ findings: one }, 'cortex-hand-area', 'hemisphere', 'left')).toBe(1);
    const more = {
      power: power({
        ...{ 'thumb-flexion': [null, '0'], 'index-distal-flexion': [null, '0'] },
        'finger-abduction': [null, '2'],
      }),
    };
    expect(odds({ findings: more }, 'cortex-hand-area', 'hemisphere', 'left')).toBe(1);
  });

  it('ends of several limbs that something pressed on have a nerve hurt in each', () => {
    const findings = { inspection: signs({ 'wrist-drop': [null, true], 'foot-drop': true }) };
    const history = { onset: { pace: 'hyperacute' }, exposures: told('external-pressure') };
    expect(odds({ history, findings }, 'multiple-mononeuropathy', 'multiple-nerves')).toBeGreaterThan(1);
    expect(odds({ history, findings }, 'spinal-cord-central', 'cord', 'both')).toBeLessThan(1);
    const neck = { ...history, exposures: told('external-pressure', 'neck-trauma') };
    expect(odds({ history: neck, findings }, 'multiple-mononeuropathy', 'multiple-nerves')).toBe(1);
  });

  it('one arm that thins in youth without pain or tingling has lost motor cells', () => {
    const thin = { inspection: wasting({ 'upper-limb': [true, null] }) };
    const slow = { onset: { pace: 'chronic', durationDays: 300 }, symptoms: told('muscle-thinning') };
    const motorCells = ['lower-motor-neuron-system', 'anterior-horn', 'both'] as const;
    expect(odds({ person: { ageYears: 20 }, history: slow, findings: thin }, ...motorCells)).toBeGreaterThan(1);
    expect(odds({ person: { ageYears: 60 }, history: slow, findings: thin }, ...motorCells)).toBe(1);
    const tingling = { ...slow, symptoms: told('muscle-thinning', 'paraesthesiae') };
    expect(odds({ person: { ageYears: 20 }, history: tingling, findings: thin }, ...motorCells)).toBe(1);
    const both = { inspection: wasting({ 'upper-limb': true }) };
    expect(odds({ person: { ageYears: 20 }, history: slow, findings: both }, ...motorCells)).toBe(1);
  });
});
