import { describe, expect, it } from 'vitest';
import { itemById } from '../../src/exam/catalogue/catalogue.ts';
import { createLocaliser } from '../../src/localisation/localise.ts';
import { requestWith } from '../exam/support/exam-request.ts';
import { read } from '../exam/support/read.ts';

const localiser = createLocaliser();
const footDrop = [
  { movement: 'ankle-dorsiflexion', side: 'left', grade: '3' },
  { movement: 'ankle-eversion', side: 'left', grade: '4' },
];

function fibularAtTheNeck(findings: object): number {
  const { localisations } = localiser.localise(read(requestWith({ findings })));
  return localisations.find(({ site }) => site === 'common-fibular-nerve')?.probability ?? 0;
}

describe('a mass that is felt', () => {
  it('speaks for the nerve that runs there, on its own side alone', () => {
    const mass = (side: string) => [{ sign: 'palpable-mass', site: 'knee', side, present: true }];
    const without = fibularAtTheNeck({ power: footDrop });
    expect(fibularAtTheNeck({ power: footDrop, inspection: mass('left') })).toBeGreaterThan(without * 1.3);
    expect(fibularAtTheNeck({ power: footDrop, inspection: mass('right') })).toBeLessThanOrEqual(without);
  });

  it.each(itemById.get('inspection/palpable-mass')?.sites ?? [])('has a nerve near it at the %s', (site) => {
    const mass = [{ sign: 'palpable-mass', site, side: 'left', present: true }];
    const { localisations } = localiser.localise(read(requestWith({ findings: { inspection: mass } })));
    const reasons = localisations.flatMap(({ supporting }) => supporting.map(({ because }) => because));
    expect(reasons).toContain('the nerve runs where the mass is felt');
  });
});
