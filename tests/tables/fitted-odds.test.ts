import { describe, expect, it } from 'vitest';
import { allCauses } from '../../src/causes/table/all-causes.ts';
import { fittedCauseOdds } from '../../src/causes/table/fitted-cause-odds.ts';
import { fittedSiteOdds } from '../../src/localisation/hypotheses/fitted-site-odds.ts';
import { hypotheses } from '../../src/localisation/hypotheses/hypotheses.ts';

const sites = new Map(hypotheses.map(({ site: { key, kind } }) => [key, kind]));

describe('the odds fitted to the cases', () => {
  it.each([
    ['sites', fittedSiteOdds, new Set(sites.keys())],
    ['causes', fittedCauseOdds, new Set(allCauses.map(({ key }) => key))],
  ] as const)('are of %s that there are, and correct none more than three times', (_, table, known) => {
    expect(Object.keys(table).filter((key) => !known.has(key))).toEqual([]);
    const far = Object.entries(table).filter(([, odds = 1]) => !(odds >= 0.33 && odds <= 3));
    expect(far).toEqual([]);
    expect(Object.keys(table).length).toBeGreaterThan(0);
  });

  it('leave alone how often nothing is found', () => {
    const nothing = [...sites].filter(([, kind]) => kind === 'none').map(([key]) => key);
    expect(nothing.length).toBeGreaterThan(0);
    expect(nothing.filter((key) => fittedSiteOdds[key] !== undefined)).toEqual([]);
  });
});
