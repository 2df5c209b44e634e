import { describe, expect, it } from 'vitest';
import { nervePatternShifts } from '../../src/localisation/inference/nerve-patterns.ts';
import { plantars, power, reflexes, sensation } from './case-writing.ts';
import { oddsBy } from './odds.ts';

const odds = oddsBy(nervePatternShifts, 'both');

const told = (...keys: readonly string[]) => ({ symptoms: keys.map((key) => ({ key, present: true })) });

describe('what tells nerves from roots, plexus, cord and muscle', () => {
  const eachInItsWay = power({ 'ankle-dorsiflexion': [null, '2'], 'ankle-plantarflexion': ['3', null] });

  it('limbs that each fail in another way are of several nerves, unless tracts are ill', () => {
    const findings = { power: eachInItsWay };
    expect(odds({ findings }, 'spinal-cord-transverse', 'cord')).toBeLessThan(1);
    expect(odds({ findings }, 'multiple-mononeuropathy', 'multiple-nerves')).toBeGreaterThan(1);
    const rising = { power: eachInItsWay, plantars: plantars('extensor', 'extensor') };
    expect(odds({ findings: rising }, 'spinal-cord-transverse', 'cord')).toBe(1);
  });

  it('the same movement lost in both limbs says nothing of that sort', () => {
    const findings = { power: power({ 'ankle-dorsiflexion': '2', 'hip-flexion': '4' }) };
    expect(odds({ findings }, 'multiple-mononeuropathy', 'multiple-nerves')).toBe(1);
  });

  // Mononeuritis multiplex comes step by step: Amato and Russell, vasculitic neuropathy (recalled).
  it('the same muscles of both hands, failing within days, are not of several single nerves', () => {
    const hands = { power: power({ 'finger-abduction': '3', 'thumb-abduction': '3', 'finger-extension': '3' }) };
    const several = ['multiple-mononeuropathy', 'multiple-nerves'] as const;
    const days = { onset: { pace: 'acute', durationDays: 4 } };
    expect(odds({ history: days, findings: hands }, ...several)).toBeLessThan(1);
    expect(odds({ history: { onset: { pace: 'chronic' } }, findings: hands }, ...several)).toBe(1);
    const pressed = { ...days, exposures: [{ key: 'surgical-positioning', present: true }] };
    expect(odds({ history: pressed, findings: hands }, ...several)).toBe(1);
    const uneven = {
      power: power({ 'finger-abduction': ['1', '4'], 'thumb-abduction': '3', 'finger-extension': '3' }),
    };
    expect(odds({ history: days, findings: uneven }, ...several)).toBe(1);
  });

  it('both feet deformed speak for an inherited neuropathy, but not beside a bladder that fails', () => {
    const findings = { inspection: [{ sign: 'claw-toes', side: 'both', present: true }] };
    expect(odds({ findings }, 'length-dependent-polyneuropathy', 'polyneuropathy')).toBeGreaterThan(1);
    const history = told('bladder-disturbance');
    expect(odds({ findings, history }, 'length-dependent-polyneuropathy', 'polyneuropathy')).toBe(1);
  });

  it('both feet that drop in somebody who slimmed are of both fibular nerves, not of muscle', () => {
    const findings = { inspection: [{ sign: 'foot-drop', side: 'both', present: true }] };
    const history = { exposures: [{ key: 'recent-weight-loss', present: true }] };
    expect(odds({ findings, history }, 'common-fibular-nerve', 'nerve')).toBeGreaterThan(1);
    expect(odds({ findings, history }, 'distal-myopathy', 'muscle')).toBeLessThan(1);
    expect(odds({ findings }, 'common-fibular-nerve', 'nerve')).toBe(1);
    const withHips = { ...findings, power: power({ 'hip-flexion': '3' }) };
    expect(odds({ findings: withHips, history }, 'common-fibular-nerve', 'nerve')).toBe(1);
  });

  it('both feet that drop are not dropped from above when nothing else of the legs fails', () => {
    const findings = { inspection: [{ sign: 'foot-drop', side: 'both', present: true }] };
    expect(odds({ findings }, 'cortex-parasagittal', 'hemisphere')).toBeLessThan(1);
    const withHips = { ...findings, power: power({ 'hip-flexion': '3' }) };
    expect(odds({ findings: withHips }, 'cortex-parasagittal', 'hemisphere')).toBe(1);
  });

  it('a cauda equina without pain, saddle or sphincters is doubted, as is one of one leg alone', () => {
    const findings = { power: power({ 'ankle-dorsiflexion': '3' }) };
    expect(odds({ findings, history: told('leg-weakness') }, 'cauda-equina', 'cauda-equina')).toBeLessThan(1);
    expect(odds({ findings, history: told('back-pain') }, 'cauda-equina', 'cauda-equina')).toBe(1);
    const oneLeg = {
      power: power({ 'ankle-dorsiflexion': [null, '3'] }),
      sensation: sensation('light-touch', { sole: [null, 'reduced'] }),
    };
    expect(odds({ findings: oneLeg, history: told('back-pain') }, 'cauda-equina', 'cauda-equina')).toBeLessThan(1);
  });

  it('weak legs without jerks are not of a cord that has been ill for weeks', () => {
    const findings = { power: power({ 'knee-extension': '4' }), reflexes: reflexes({ knee: '0', ankle: '0' }) };
    const onset = { pace: 'subacute' };
    expect(odds({ findings, history: { onset } }, 'spinal-cord-transverse', 'cord')).toBeLessThan(1);
    expect(odds({ findings, history: { onset: { pace: 'hyperacute' } } }, 'spinal-cord-transverse', 'cord')).toBe(1);
  });

  it('a hand that wastes with a numb inner forearm is of the lower plexus', () => {
    const findings = {
      inspection: [{ sign: 'wasting', site: 'thenar-eminence', side: 'left', present: true }],
      sensation: sensation('light-touch', { 'inner-forearm': ['reduced', null] }),
    };
    expect(odds({ findings }, 'lower-trunk', 'plexus', 'left')).toBeGreaterThan(1);
    expect(odds({ findings }, 'median-nerve-wrist', 'nerve', 'left')).toBeLessThan(1);
    expect(odds({ findings }, 'median-nerve-wrist', 'nerve', 'right')).toBe(1);
  });

  it('a loss that splits the ring finger is below the roots, one of the whole finger is not', () => {
    const half = { sensation: sensation('light-touch', { 'ring-finger-ulnar-half': ['reduced', null] }) };
    expect(odds({ findings: half }, 'nerve-root', 'root', 'left')).toBeLessThan(1);
    const whole = {
      sensation: sensation('light-touch', {
        'ring-finger-ulnar-half': ['reduced', null],
        'ring-finger-radial-half': ['reduced', null],
      }),
    };
    expect(odds({ findings: whole }, 'nerve-root', 'root', 'left')).toBe(1);
  });

  it('the accessory nerve is not blamed while its muscles work', () => {
    const ear = { sensation: sensation('light-touch', { 'ear-lobe': ['reduced', null] }) };
    expect(odds({ findings: ear }, 'spinal-accessory-nerve', 'nerve', 'left')).toBeLessThan(1);
    const droop = { inspection: [{ sign: 'shoulder-droop', side: 'left', present: true }] };
    expect(odds({ findings: droop }, 'spinal-accessory-nerve', 'nerve', 'left')).toBe(1);
  });

  it('both arms alone are not of the whole cord, unless legs or bladder are told of', () => {
    const findings = { power: power({ 'shoulder-abduction': '3' }) };
    expect(odds({ findings, history: told('arm-weakness') }, 'spinal-cord-transverse', 'cord')).toBeLessThan(1);
    expect(odds({ findings, history: told('difficulty-walking') }, 'spinal-cord-transverse', 'cord')).toBe(1);
  });

  it('a numb little finger beside a back of the hand that feels is of the wrist, not of what lies above', () => {
    const feeling = (back: string) => ({
      sensation: sensation('light-touch', {
        'little-finger': ['reduced', null],
        'dorsum-of-hand-ulnar-side': [back, null],
      }),
    });
    const spared = { findings: feeling('normal') };
    expect(odds(spared, 'ulnar-nerve-elbow', 'nerve', 'left')).toBeLessThan(1);
    expect(odds(spared, 'nerve-root', 'root', 'left')).toBeLessThan(1);
    expect(odds(spared, 'ulnar-nerve-wrist', 'nerve', 'left')).toBe(1);
    expect(odds({ findings: feeling('reduced') }, 'ulnar-nerve-elbow', 'nerve', 'left')).toBe(1);
  });

  it('one leg that fails within days of a birth does not fail from above, unless tracts are ill', () => {
    const findings = { power: power({ 'hip-adduction': [null, '4'] }) };
    const history = { onset: { pace: 'acute' }, conditions: [{ key: 'pregnancy', present: true }] };
    expect(odds({ findings, history }, 'cortex-anterior-cerebral', 'hemisphere')).toBeLessThan(1);
    expect(odds({ findings, history: { onset: history.onset } }, 'cortex-anterior-cerebral', 'hemisphere')).toBe(1);
    expect(odds({ findings, history }, 'nerve-root', 'root')).toBeLessThan(1);
    expect(odds({ findings, history: { ...history, ...told('back-pain') } }, 'nerve-root', 'root')).toBe(1);
    const extensor = { ...findings, plantars: plantars('flexor', 'extensor') };
    expect(odds({ findings: extensor, history }, 'cortex-anterior-cerebral', 'hemisphere')).toBe(1);
    const withArm = { power: power({ 'hip-adduction': [null, '4'], 'finger-abduction': [null, '4'] }) };
    expect(odds({ findings: withArm, history }, 'cortex-anterior-cerebral', 'hemisphere')).toBe(1);
  });

  it('arms and legs that fail alike on both sides are not of single nerves, those that differ may be', () => {
    const several = ['multiple-mononeuropathy', 'multiple-nerves'] as const;
    const months = { history: { onset: { pace: 'chronic' } } };
    const alike = { power: power({ 'wrist-extension': '4', 'ankle-dorsiflexion': '3' }) };
    expect(odds({ ...months, findings: alike }, ...several)).toBeLessThan(1);
    const unlike = { power: power({ 'wrist-extension': ['4', '2'], 'ankle-dorsiflexion': '3' }) };
    expect(odds({ ...months, findings: unlike }, ...several)).toBe(1);
  });
});
