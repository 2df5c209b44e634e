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

  it('of feet that hurt and tingle point to the longest axons, of one foot to the tunnel at its ankle', () => {
    const ratio = (side: object) => {
      const symptoms = ['foot-pain', 'numbness'].map((key) => ({ key, present: true, ...side }));
      const shifts = toldPatternShifts(bedsideExam({ history: { symptoms } }));
      const of = (site: Site) => shifts.reduce((all, one) => (one.applies(site) ? all * one.factor : all), 1);
      return of(named('length-dependent-polyneuropathy')) / of(named('tibial-nerve-tarsal-tunnel'));
    };
    expect(ratio({})).toBeGreaterThanOrEqual(1);
    expect(ratio({ side: 'left' })).toBeLessThan(0.5);
  });

  it('of weak legs that do not hurt are seldom of one nerve', () => {
    expect(factor(named('common-fibular-nerve'), ['leg-weakness'])).toBeLessThan(1);
    expect(factor(named('common-fibular-nerve'), ['leg-weakness', 'leg-pain'])).toBeGreaterThanOrEqual(1);
  });

  it('of both halves, as far as anybody said, are not of half the cord', () => {
    expect(factor(named('spinal-cord-hemisection'), ['leg-weakness'])).toBeLessThan(1);
    expect(factor(named('spinal-cord-hemisection'), ['leg-weakness', 'arm-weakness'])).toBeLessThan(1);
    const symptoms = [{ key: 'leg-weakness', present: true, side: 'left' }];
    const left = toldPatternShifts(bedsideExam({ history: { symptoms } }));
    expect(left.some(({ applies }) => applies(named('spinal-cord-hemisection')))).toBe(false);
  });

  it('that tingles somewhere is of the limb in which signs were looked for in vain', () => {
    const history = { symptoms: has('numbness') };
    const looked = (site: Site, tests: readonly string[]) =>
      toldPatternShifts(
        bedsideExam({
          history,
          findings: { specialTests: tests.map((test) => ({ test, side: 'both', result: 'negative' })) },
        }),
      ).reduce((all, one) => (one.applies(site) ? all * one.factor : all), 1);
    expect(looked(named('ulnar-nerve-elbow'), ['tinel-wrist', 'tinel-elbow'])).toBeGreaterThan(1);
    expect(looked(named('common-fibular-nerve'), ['tinel-wrist', 'tinel-elbow'])).toBeLessThan(1);
    expect(looked(named('common-fibular-nerve'), ['tinel-fibular-neck'])).toBeGreaterThan(1);
    expect(looked(named('ulnar-nerve-elbow'), ['tinel-wrist', 'tinel-fibular-neck'])).toBe(1);
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
