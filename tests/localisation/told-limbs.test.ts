import { describe, expect, it } from 'vitest';
import { hypotheses } from '../../src/localisation/hypotheses/hypotheses.ts';
import type { Site } from '../../src/localisation/hypothesis.ts';
import { toldPatternShifts } from '../../src/localisation/inference/told-patterns.ts';
import { bedsideExam } from '../support/bedside.ts';

const has = (...keys: readonly string[]) => keys.map((key) => ({ key, present: true }));

function where(wanted: (site: Site) => boolean): Site {
  const found = hypotheses.find(({ site }) => wanted(site));
  if (found === undefined) throw new RangeError('no such site');
  return found.site;
}
const named = (name: string): Site => where(({ key }) => key === name);
const root = (segment: string): Site => where(({ kind, level }) => kind === 'root' && level === segment);

const factor = (site: Site, symptoms: readonly string[], exposures: readonly string[] = []): number =>
  toldPatternShifts(bedsideExam({ history: { symptoms: has(...symptoms), exposures: has(...exposures) } })).reduce(
    (product, shift) => (shift.applies(site) ? product * shift.factor : product),
    1,
  );

describe('complaints of a limb that nobody has examined', () => {
  it.each([
    ['arm-pain', 'common-fibular-nerve'],
    ['arm-pain', 'lumbosacral-plexus'],
    ['leg-pain', 'long-thoracic-nerve'],
    ['foot-pain', 'ulnar-nerve-elbow'],
  ])('%s is not that of the %s', (complaint, site) => {
    expect(factor(named(site), [complaint])).toBeLessThan(0.3);
  });

  it('leave the roots of the other limb behind', () => {
    expect(factor(root('C6'), ['leg-pain'])).toBeLessThan(0.3);
    expect(factor(root('L5'), ['arm-pain'])).toBeLessThan(0.3);
  });

  it('of arms and legs are not of what serves one limb', () => {
    const both = ['arm-weakness', 'leg-weakness'];
    expect(factor(named('common-fibular-nerve'), both)).toBeLessThan(0.5);
    expect(factor(named('length-dependent-polyneuropathy'), both)).toBe(1);
  });

  it.each([
    [['foot-pain', 'neuropathic-pain'], 'tibial-nerve-tarsal-tunnel'],
    [['thigh-pain', 'numbness'], 'lateral-femoral-cutaneous-nerve'],
    [['shoulder-pain', 'arm-weakness'], 'brachial-plexus'],
  ])('%s point to the %s', (symptoms, site) => {
    expect(factor(named(site), symptoms)).toBeGreaterThan(2);
  });

  it('after hours without moving point to the nerve in the buttock before that at the knee', () => {
    const numb = ['leg-pain', 'numbness'];
    const ratio = (site: string) => factor(named(site), numb, ['prolonged-immobility']) / factor(named(site), numb);
    expect(ratio('sciatic-nerve')).toBeGreaterThan(2);
    expect(ratio('common-fibular-nerve')).toBe(1);
  });

  it('that tingle or waste come from a lesion', () => {
    expect(
      factor(
        where(({ kind }) => kind === 'none'),
        ['arm-pain', 'paraesthesiae'],
      ),
    ).toBeLessThan(1);
    expect(
      factor(
        where(({ kind }) => kind === 'none'),
        ['arm-pain'],
      ),
    ).toBe(1);
  });

  it('say nothing once a sign was found', () => {
    const history = { symptoms: has('foot-pain', 'paraesthesiae') };
    const reflexes = [{ reflex: 'ankle', side: 'left', grade: '0' }];
    expect(toldPatternShifts(bedsideExam({ history, findings: { reflexes } }))).toEqual([]);
  });
});
