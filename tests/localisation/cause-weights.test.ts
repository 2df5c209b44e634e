import { describe, expect, it } from 'vitest';
import { causeShifts } from '../../src/localisation/inference/cause-weights.ts';
import { createLocaliser } from '../../src/localisation/localise.ts';
import { siteCatalogue } from '../../src/localisation/sites.ts';
import { bedsideExam } from '../support/bedside.ts';
import { power } from './case-writing.ts';

const { localise } = createLocaliser();
const sites = siteCatalogue().map(({ site }) => site);
const has = (...keys: readonly string[]) => keys.map((key) => ({ key, present: true }));

/** Natural log of the odds factor of a site. */
function logFactor(parts: Record<string, unknown>, key: string): number {
  const shifts = causeShifts(bedsideExam(parts));
  const site = sites.find((one) => one.key === key);
  if (site === undefined) throw new RangeError(`there is no site ${key}`);
  return shifts.filter(({ applies }) => applies(site)).reduce((sum, { factor }) => sum + Math.log(factor), 0);
}

describe('the story, by the diseases that strike at a place', () => {
  it('says nothing of any place when nothing was told', () => {
    expect(causeShifts(bedsideExam())).toEqual([]);
  });

  it.each([
    [
      'diabetes',
      { conditions: has('diabetes-mellitus') },
      'length-dependent-polyneuropathy',
      'sensory-ganglionopathy',
      'Visser 2015',
    ],
    [
      'weight lost',
      { exposures: has('recent-weight-loss') },
      'common-fibular-nerve',
      'axillary-nerve',
      'Cruz-Martinez 1993, slimming palsy',
    ],
    [
      'radiotherapy',
      { exposures: has('radiotherapy') },
      'brachial-plexus',
      'proximal-myopathy',
      'Preston and Shapiro, plexopathy',
    ],
    [
      'a statin',
      { medications: has('statin') },
      'proximal-myopathy',
      'anterior-interosseous-nerve',
      'Adams and Victor, toxic myopathy',
    ],
  ])('of %s speaks for one place before another', (_, history, likelier, other, _source) => {
    expect(logFactor({ history }, likelier)).toBeGreaterThan(logFactor({ history }, other) + 0.3);
  });

  it('knows no side, and gives a place no more than one factor', () => {
    const shifts = causeShifts(
      bedsideExam({ person: { ageYears: 60 }, history: { conditions: has('cancer', 'diabetes-mellitus') } }),
    );
    for (const site of sites) {
      const own = shifts.filter(({ applies }) => applies(site));
      expect(own.length, site.key).toBeLessThanOrEqual(1);
      const { side } = site;
      if (side !== 'left' && side !== 'right') continue;
      expect(shifts.filter(({ applies }) => applies({ ...site, side: side === 'left' ? 'right' : 'left' }))).toEqual(
        own,
      );
    }
  });

  it('is said among the reasons, with where it stands in the request', () => {
    const { localisations } = localise(
      bedsideExam({
        person: { ageYears: 16 },
        history: { onset: { pace: 'acute' }, exposures: has('recent-weight-loss') },
        findings: {
          power: power({
            'ankle-dorsiflexion': [null, '2'],
            'ankle-eversion': [null, '2'],
            'ankle-inversion': [null, '5'],
          }),
        },
      }),
    );
    const [first] = localisations;
    expect([first?.site, first?.side]).toEqual(['common-fibular-nerve', 'right']);
    const reason = first?.supporting.find(({ because }) => because.includes('which is met there'));
    expect(reason?.finding).toBe('/history/exposures/0');
    expect(reason?.because).toMatch(/^it speaks for /);
  });
});
