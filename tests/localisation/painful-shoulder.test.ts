import { describe, expect, it } from 'vitest';
import { bothShouldersThinShifts, painfulShoulderShifts } from '../../src/localisation/inference/painful-shoulder.ts';
import { createLocaliser } from '../../src/localisation/localise.ts';
import { bedsideExam } from '../support/bedside.ts';
import { power, reflexes, sensation, wasting } from './case-writing.ts';
import { has, oddsBy } from './odds.ts';

const painful = { symptoms: has('shoulder-pain') };

const odds = oddsBy(painfulShoulderShifts, 'left');

describe('a shoulder that hurts', () => {
  const slight = { power: power({ 'shoulder-abduction': ['4+', null] }) };

  it('and is strong or nearly so is the joint', () => {
    for (const grade of ['5', '4+']) {
      const findings = { power: power({ 'shoulder-abduction': [grade, null] }) };
      expect(odds({ history: painful, findings }, 'no-lesion', 'none')).toBeGreaterThan(1);
      expect(odds({ history: painful, findings }, 'suprascapular-nerve', 'nerve')).toBeLessThan(1);
    }
  });

  it('and is weak, thin or numb, or of whom nerves are told, may be a nerve', () => {
    const weak = { power: power({ 'shoulder-abduction': ['3', null] }) };
    const thin = { ...slight, inspection: wasting({ shoulder: [true, null] }) };
    const numb = { ...slight, sensation: sensation('light-touch', { 'outer-upper-arm': ['reduced', null] }) };
    for (const findings of [weak, thin, numb])
      expect(odds({ history: painful, findings }, 'no-lesion', 'none')).toBe(1);
    const told = { symptoms: has('shoulder-pain', 'paraesthesiae') };
    expect(odds({ history: told, findings: slight }, 'no-lesion', 'none')).toBe(1);
  });

  // Rotator cuff disease in practice: Luime 2004 (recalled); neuralgic amyotrophy: van Alfen 2015 (recalled).
  it('leads the answer from no lesion to the nerves only when strength fails', () => {
    const siteOf = (grade: string) =>
      createLocaliser().localise(
        bedsideExam({
          history: { ...painful, onset: { pace: 'subacute', durationDays: 30 } },
          findings: {
            power: power({ 'shoulder-abduction': [grade, null], 'shoulder-external-rotation': [grade, null] }),
          },
        }),
      ).localisations[0]?.site;
    expect(siteOf('4+')).toBe('no-lesion');
    expect(siteOf('2')).not.toBe('no-lesion');
  });

  it('with its fellow, and thins or loses its jerks, is not of muscle', () => {
    const both = oddsBy(bothShouldersThinShifts, 'both');
    const history = { ...painful, onset: { pace: 'acute' } };
    const weak = { power: power({ 'shoulder-abduction': '3' }) };
    const thin = { ...weak, inspection: wasting({ shoulder: true }) };
    const faint = { ...weak, reflexes: reflexes({ biceps: '1' }) };
    for (const findings of [thin, faint])
      expect(both({ history, findings }, 'proximal-myopathy', 'muscle')).toBeLessThan(1);
    expect(both({ history, findings: weak }, 'proximal-myopathy', 'muscle')).toBe(1);
    const years = { ...painful, onset: { pace: 'chronic' } };
    expect(both({ history: years, findings: thin }, 'proximal-myopathy', 'muscle')).toBe(1);
  });
});
