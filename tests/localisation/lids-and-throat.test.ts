import { describe, expect, it } from 'vitest';
import { lidsAndThroatShifts, pupilsAndLidsShifts } from '../../src/localisation/inference/lids-and-throat.ts';
import { power } from './case-writing.ts';
import { oddsBy } from './odds.ts';

const odds = oddsBy(lidsAndThroatShifts);
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

// Pupils in food-borne botulism and in inflamed roots: Amato and Russell (recalled).
describe('pupils that fail with lids within days', () => {
  const withPupils = oddsBy(pupilsAndLidsShifts);
  const pupils = { sign: 'sluggish-pupil', side: 'both', present: true };

  it('are of junctions that let no transmitter go, and not of blocked receptors', () => {
    const draft = { history, findings: { cranialNerves: [lids('both'), pupils] } };
    expect(withPupils(draft, ...junction)).toBeGreaterThan(1);
    expect(withPupils(draft, 'postsynaptic-junction', 'junction')).toBeLessThan(1);
  });

  it('say nothing where something tingles or sways, or one pupil alone fails', () => {
    const tingling = { ...history, symptoms: [{ key: 'paraesthesiae', present: true }] };
    expect(withPupils({ history: tingling, findings: { cranialNerves: [lids('both'), pupils] } }, ...junction)).toBe(1);
    const one = { ...pupils, side: 'left' };
    expect(withPupils({ history, findings: { cranialNerves: [lids('both'), one] } }, ...junction)).toBe(1);
  });
});
