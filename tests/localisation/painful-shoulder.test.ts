import { describe, expect, it } from 'vitest';
import type { SiteKind } from '../../src/anatomy/site-kind.ts';
import type { Site } from '../../src/localisation/hypothesis.ts';
import { painfulShoulderShifts } from '../../src/localisation/inference/painful-shoulder.ts';
import { createLocaliser } from '../../src/localisation/localise.ts';
import { bedsideExam } from '../support/bedside.ts';
import { power, sensation, wasting } from './case-writing.ts';

const has = (...keys: readonly string[]) => keys.map((key) => ({ key, present: true }));
const painful = { symptoms: has('shoulder-pain') };

/** What a painful shoulder makes of the odds of a site. */
function odds(draft: Parameters<typeof bedsideExam>[0], key: string, kind: SiteKind): number {
  const site: Site = { key, kind, label: '', side: 'left', level: null };
  return painfulShoulderShifts(bedsideExam(draft)).reduce(
    (product, { applies, factor }) => (applies(site) ? product * factor : product),
    1,
  );
}

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
});
