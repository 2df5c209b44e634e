import { describe, expect, it } from 'vitest';
import type { SiteKind } from '../../src/anatomy/site-kind.ts';
import type { Site } from '../../src/localisation/hypothesis.ts';
import { lidsAndThroatShifts } from '../../src/localisation/inference/lids-and-throat.ts';
import { bedsideExam } from '../support/bedside.ts';
import { power } from './case-writing.ts';

function odds(draft: Record<string, unknown>, key: string, kind: SiteKind): number {
  const site: Site = { key, kind, label: '', side: 'both', level: null };
  return lidsAndThroatShifts(bedsideExam(draft)).reduce(
    (product, { applies, factor }) => (applies(site) ? product * factor : product),
    1,
  );
}

const junction = ['presynaptic-junction', 'junction'] as const;
const brain = ['diffuse-encephalopathy', 'encephalopathy'] as const;
const lids = (side: string) => ({ sign: 'ptosis', side, present: true });
const gag = { sign: 'absent-gag-reflex', side: 'both', present: true };
const history = { onset: { pace: 'hyperacute' } };

describe('lids and a throat that fail within days', () => {
  it('are of the junctions in somebody whose mind is clear', () => {
    const draft = { history, findings: { cranialNerves: [lids('both'), gag] } };
    expect(odds(draft, ...junction)).toBeGreaterThan(1);
    expect(odds(draft, ...brain)).toBeLessThan(1);
  });

  it('are less of the brainstem, whichever word is used of speech', () => {
    const slurred = { sign: 'dysarthria', present: true };
    const draft = { history, findings: { cranialNerves: [lids('both'), slurred] } };
    expect(odds(draft, 'brainstem-diffuse', 'brainstem')).toBeLessThan(1);
  });

  it('may be of the brain where the mind dims, one lid droops, or it took weeks', () => {
    const cranialNerves = [lids('both'), gag];
    const drowsy = { cranialNerves, higherFunction: [{ sign: 'drowsiness', present: true }] };
    expect(odds({ history, findings: drowsy }, ...brain)).toBe(1);
    expect(odds({ history, findings: { cranialNerves: [lids('left'), gag] } }, ...brain)).toBe(1);
    expect(odds({ history: { onset: { pace: 'subacute' } }, findings: { cranialNerves } }, ...brain)).toBe(1);
    const half = { cranialNerves, power: power({ 'elbow-flexion': ['3', null] }) };
    expect(odds({ history, findings: half }, ...brain)).toBe(1);
    const told = { ...history, symptoms: [{ key: 'headache', present: true }] };
    expect(odds({ history: told, findings: { cranialNerves } }, ...brain)).toBe(1);
  });
});
