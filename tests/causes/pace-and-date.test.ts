import { describe, expect, it } from 'vitest';
import { queryExam } from '../../src/causes/exam-query.ts';
import { allCauses } from '../../src/causes/table/all-causes.ts';
import type { Cause } from '../../src/causes/table/cause.ts';
import { weighCause } from '../../src/causes/weigh-cause.ts';
import { historyLists } from '../../src/exam/catalogue/history.ts';
import { bedsideExam } from '../support/bedside.ts';

const daysAgo = { onset: { pace: 'acute', durationDays: 3 }, course: 'progressive' };
const forYears = { onset: { pace: 'chronic', durationDays: 1500 }, course: 'progressive' };

const lists = ['symptoms', 'conditions', 'exposures', 'medications'] as const;

/** Whatever can be told that speaks for the cause, so that nothing but the tempo speaks against it. */
function storyOf(cause: Cause): Record<string, unknown> {
  const speaking = new Set((cause.history ?? []).flatMap(({ keys, present }) => (present > 1 ? keys.slice(0, 1) : [])));
  const told = lists.map((list) => {
    const rows = historyLists[list].filter(({ key }) => speaking.has(key));
    return [list, rows.map(({ key }) => ({ key, present: true }))] as const;
  });
  return Object.fromEntries(told);
}

function ratio(cause: Cause, tempo: object): number {
  return weighCause(cause, queryExam(bedsideExam({ history: { ...tempo, ...storyOf(cause) } }))).ratio;
}

const slowGroups: ReadonlySet<string> = new Set(['neoplastic', 'degenerative', 'hereditary']);
const slow = allCauses.filter(
  ({ group, tempo }) => slowGroups.has(group) && tempo.chronic >= 0.5 && tempo.acute < 0.15,
);
/** Without those that come in attacks over years. */
const quick = allCauses.filter(({ tempo }) => tempo.hyperacute + tempo.acute >= 0.7 && tempo.chronic < 0.15);

describe('pace and date', () => {
  it('are written for many causes of each kind', () => {
    expect(slow.length).toBeGreaterThan(100);
    expect(quick.length).toBeGreaterThan(100);
  });

  it.each(slow.map((cause) => [cause.key, cause] as const))('of days speak against %s, whatever fits', (_, cause) => {
    expect(ratio(cause, daysAgo) / ratio(cause, forYears)).toBeLessThan(0.2);
  });

  it.each(quick.map((cause) => [cause.key, cause] as const))('of years speak against %s, whatever fits', (_, cause) => {
    expect(ratio(cause, forYears) / ratio(cause, daysAgo)).toBeLessThan(0.2);
  });
});
