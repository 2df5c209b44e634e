import { describe, expect, it } from 'vitest';
import { createLocaliser } from '../../src/localisation/localise.ts';
import { siteCatalogue, siteCoding } from '../../src/localisation/sites.ts';
import { createAssessor } from '../../src/summary/assess.ts';
import { bedsideExam } from '../support/bedside.ts';
import { publishedSites } from '../support/published-sites.ts';

const localiser = createLocaliser();
const assessor = createAssessor(localiser);
const history = {
  onset: { pace: 'chronic', durationDays: 300 },
  symptoms: [{ key: 'leg-pain', present: true }],
  exposures: [{ key: 'leg-crossing', present: true }],
};
const told = bedsideExam({ history });
const pairs = (exam: typeof told) =>
  localiser.localise(exam).localisations.map(({ site, level, side }) => `${site} ${level} ${side}`);

describe('a side that nothing tells', () => {
  it('is left open: the place is named once, as likely as on both sides', () => {
    const nerve = localiser.localise(told).localisations.find(({ site }) => site === 'common-fibular-nerve');
    expect(nerve).toMatchObject({ side: null, isEitherSide: true });
    expect(nerve?.code).toMatchObject({ code: 'common-fibular-nerve', display: nerve?.label });
    expect(pairs(told).filter((one) => /left|right/.test(one))).toEqual([]);
    expect(new Set(pairs(told)).size).toBe(pairs(told).length);
    expect(assessor.assess(told).presentation).not.toMatch(/\b(?:left|right)\b/);
  });

  it('leaves a code of the published code system, whichever the place', () => {
    const sided = siteCatalogue().filter(({ site }) => site.side === 'left' || site.side === 'right');
    expect(sided.length).toBeGreaterThan(100);
    expect(sided.filter(({ site }) => !publishedSites.has(siteCoding({ ...site, side: null }).code ?? ''))).toEqual([]);
  });

  it('is named as soon as anything was found on one', () => {
    const power = [{ movement: 'ankle-dorsiflexion', side: 'left', grade: '3' }];
    const [first] = localiser.localise(bedsideExam({ history, findings: { power } })).localisations;
    expect(first).toMatchObject({ site: 'common-fibular-nerve', side: 'left' });
    expect(first).not.toHaveProperty('isEitherSide');
  });

  it('does not put a place before health that is likelier only with both its sides', () => {
    const nothing = bedsideExam({ history: { symptoms: [{ key: 'headache', present: true }] } });
    const first = localiser.localise(nothing).localisations[0];
    expect(first?.site).toBe('no-lesion');
  });
});
