import { describe, expect, it } from 'vitest';
import { slackBellyShifts } from '../../src/localisation/inference/slack-belly.ts';
import { oddsBy } from './odds.ts';

const odds = oddsBy(slackBellyShifts);
const bulge = (...sides: readonly string[]) => ({
  findings: { inspection: sides.map((side) => ({ sign: 'abdominal-bulge', side, present: true })) },
});

// Paresis of the abdominal wall in zoster: Chernev 2013 (recalled).
describe('half of a belly that bulges', () => {
  it('hangs on the thoracic roots of that side, and on no sacral root', () => {
    expect(odds(bulge('left'), 'intercostal-nerves', 'nerve', 'left')).toBeGreaterThan(1);
    expect(odds(bulge('left'), 'intercostal-nerves', 'nerve', 'right')).toBe(1);
    expect(odds(bulge('left'), 'cauda-equina', 'cauda-equina', 'both')).toBeLessThan(1);
  });

  it('on both sides says nothing of one root', () => {
    expect(odds(bulge('left', 'right'), 'intercostal-nerves', 'nerve', 'left')).toBe(1);
  });
});
