import { describe, expect, it } from 'vitest';
import type { SiteKind } from '../../src/anatomy/site-kind.ts';
import { stockingEdgeShifts } from '../../src/localisation/inference/stocking-edge.ts';
import { plantars, sensation } from './case-writing.ts';
import { oddsBy } from './odds.ts';

/** What an edge makes of the odds of a site. */
const oddsOf = oddsBy(stockingEdgeShifts, 'both');
const odds = (findings: Record<string, unknown>, ...where: readonly [key: string, kind: SiteKind]): number =>
  oddsOf({ findings }, ...where);

const columns = ['spinal-cord-posterolateral', 'cord'] as const;

// Loss by the length of the fibres: England and Asbury 2004, peripheral neuropathy (recalled).
describe('feeling that ends as a stocking does', () => {
  const stockings = sensation('light-touch', { 'stocking-to-knee': 'reduced' });
  const gloves = sensation('light-touch', { 'stocking-to-knee': 'reduced', 'glove-to-wrist': 'reduced' });

  it('is not of roots or a level of the cord, less so with gloves', () => {
    expect(odds({ sensation: stockings }, 'cauda-equina', 'cauda-equina')).toBeLessThan(0.5);
    expect(odds({ sensation: gloves }, 'cauda-equina', 'cauda-equina')).toBeLessThan(
      odds({ sensation: stockings }, 'cauda-equina', 'cauda-equina'),
    );
    expect(odds({ sensation: stockings }, 'length-dependent-polyneuropathy', 'polyneuropathy')).toBe(1);
  });

  it('with nothing of a tract is not of the columns of the cord, nor of the ganglia', () => {
    expect(odds({ sensation: stockings }, ...columns)).toBeLessThan(1);
    expect(odds({ sensation: stockings }, 'sensory-ganglionopathy', 'ganglion')).toBeLessThan(1);
    expect(odds({ sensation: gloves }, ...columns)).toBeLessThan(odds({ sensation: stockings }, ...columns));
  });

  it('may be of the columns where a toe goes up or position is lost', () => {
    expect(odds({ sensation: stockings, plantars: plantars('extensor', 'extensor') }, ...columns)).toBe(1);
    const deep = [...stockings, ...sensation('joint-position', { 'great-toe': 'absent' })];
    expect(odds({ sensation: deep }, ...columns)).toBe(1);
  });

  it('where the fork is not felt either, says less at the feet and nothing at the knees', () => {
    const fork = (place: string) => ({ sensation: [...stockings, ...sensation('vibration', { [place]: 'absent' })] });
    expect(odds(fork('great-toe'), ...columns)).toBeGreaterThan(odds({ sensation: stockings }, ...columns));
    expect(odds(fork('great-toe'), ...columns)).toBeLessThan(1);
    expect(odds(fork('knee'), ...columns)).toBe(1);
  });

  it('of one leg alone says nothing', () => {
    const one = sensation('light-touch', { 'stocking-to-knee': [null, 'reduced'] });
    expect(odds({ sensation: one }, 'cauda-equina', 'cauda-equina')).toBe(1);
  });
});
