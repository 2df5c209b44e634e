import { describe, expect, it } from 'vitest';
import { hypotheses } from '../../src/localisation/hypotheses/hypotheses.ts';
import type { Site } from '../../src/localisation/hypothesis.ts';
import { acuteLimbShifts } from '../../src/localisation/inference/acute-limb-patterns.ts';
import { toldInDaysShifts } from '../../src/localisation/inference/told-in-days.ts';
import { bedsideExam } from '../support/bedside.ts';
import { power, reflexes, sensation } from './case-writing.ts';

const has = (...keys: readonly string[]) => keys.map((key) => ({ key, present: true }));
const where = (wanted: (site: Site) => boolean): Site => {
  const found = hypotheses.find(({ site }) => wanted(site));
  if (found === undefined) throw new RangeError('no such site');
  return found.site;
};
const neck = where(({ key, level }) => key === 'spinal-cord-transverse' && level === 'C5');
const muscle = where(({ key }) => key === 'proximal-myopathy');
const inflamedRoots = where(({ kind }) => kind === 'polyradiculoneuropathy');
const root = where(({ key, level }) => key === 'nerve-root' && level === 'L5');
const trunk = where(({ key }) => key === 'lumbosacral-trunk');
const armNerve = where(({ key }) => key === 'ulnar-nerve-elbow');
const half = where(({ kind }) => kind === 'hemisphere');

const product = (site: Site, shifts: ReturnType<typeof acuteLimbShifts>): number =>
  shifts.reduce((all, shift) => (shift.applies(site) ? all * shift.factor : all), 1);
const odds = (site: Site, parts: Record<string, unknown>): number => product(site, acuteLimbShifts(bedsideExam(parts)));
const told = (site: Site, parts: Record<string, unknown>): number => {
  const exam = bedsideExam(parts);
  return product(site, toldInDaysShifts(exam, new Map(exam.history.map((one) => [one.key, one]))));
};

describe('limbs that fail within hours or days', () => {
  const findings = { power: power({ 'elbow-extension': '3', 'finger-abduction': '3', 'hip-flexion': '2' }) };
  const inHours = { pace: 'hyperacute' };

  // Spinal shock: Brazis, Localization in Clinical Neurology (recalled).
  it('limp legs that are numb up to the trunk while the bladder holds are of the cord', () => {
    const limp = {
      power: power({ 'hip-flexion': '2', 'ankle-dorsiflexion': '1' }),
      sensation: sensation('light-touch', { 'whole-leg': 'reduced' }),
      sphincters: [{ sign: 'urinary-retention', present: true }],
    };
    const history = { onset: { pace: 'acute', durationDays: 2 } };
    expect(odds(neck, { history, findings: limp })).toBeGreaterThan(1);
    expect(odds(inflamedRoots, { history, findings: limp })).toBeLessThan(1);
    const feet = { ...limp, sensation: sensation('light-touch', { 'stocking-to-ankle': 'reduced' }) };
    expect(odds(inflamedRoots, { history, findings: feet })).toBe(1);
    const dry = { power: limp.power, sensation: limp.sensation };
    expect(odds(inflamedRoots, { history, findings: dry })).toBe(1);
  });

  it('weakness and tingling that grow for days on no side are of all roots', () => {
    const symptoms = has('weakness', 'paraesthesiae');
    const onset = { pace: 'acute', durationDays: 5 };
    expect(told(inflamedRoots, { history: { onset, course: 'progressive', symptoms } })).toBeGreaterThan(2);
    expect(told(inflamedRoots, { history: { onset, symptoms } })).toBe(1);
    const sided = symptoms.map((one) => ({ ...one, side: 'left' }));
    expect(told(inflamedRoots, { history: { onset, course: 'progressive', symptoms: sided } })).toBe(1);
  });

  it('all four of them under a neck that hurt are of its cord, not of muscle', () => {
    const history = { onset: inHours, symptoms: has('neck-pain') };
    expect(odds(neck, { history, findings })).toBeGreaterThan(1);
    expect(odds(muscle, { history, findings })).toBeLessThan(1);
    expect(odds(inflamedRoots, { history, findings })).toBeLessThan(1);
  });

  it('say nothing of the kind without that pain, with sore muscles, over weeks, or in legs alone', () => {
    expect(odds(muscle, { history: { onset: inHours, symptoms: has('back-pain') }, findings })).toBe(1);
    expect(odds(muscle, { history: { onset: inHours, symptoms: has('neck-pain', 'muscle-pain') }, findings })).toBe(1);
    const slow = { onset: { pace: 'subacute' }, symptoms: has('neck-pain') };
    expect(odds(muscle, { history: slow, findings })).toBe(1);
    const legs = { power: power({ 'hip-flexion': '2' }) };
    expect(odds(muscle, { history: { onset: inHours, symptoms: has('neck-pain') }, findings: legs })).toBe(1);
  });

  it('a needle in the back that struck a nerve struck it within the canal', () => {
    const foot = { power: power({ 'ankle-dorsiflexion': [null, '1'] }) };
    const both = { exposures: has('lumbar-puncture-or-epidural', 'needle-near-nerve') };
    expect(odds(root, { history: both, findings: foot })).toBeGreaterThan(1);
    expect(odds(trunk, { history: both, findings: foot })).toBeLessThan(1);
    expect(odds(armNerve, { history: both, findings: foot })).toBe(1);
    expect(odds(trunk, { history: { exposures: has('needle-near-nerve') }, findings: foot })).toBe(1);
  });
});

describe('limbs of which it was told that they failed within hours or days', () => {
  const climbing = {
    onset: { pace: 'hyperacute' },
    symptoms: has('leg-weakness', 'arm-weakness', 'ascending-weakness'),
  };

  it('from the legs to the arms in hours are of muscle, unless they tingle or the face droops', () => {
    expect(told(muscle, { history: climbing })).toBeGreaterThan(1);
    expect(told(half, { history: climbing })).toBeLessThan(1);
    for (const other of ['paraesthesiae', 'face-droop', 'neck-pain'])
      expect(told(muscle, { history: { ...climbing, symptoms: [...climbing.symptoms, ...has(other)] } })).toBe(1);
  });

  it('both arms after a blow in later life are of the cord of the neck, one arm is not', () => {
    const blow = (arm: Record<string, unknown>) => ({
      onset: { pace: 'acute' },
      symptoms: [{ key: 'arm-weakness', present: true, ...arm }],
      exposures: has('trauma'),
    });
    expect(told(neck, { person: { ageYears: 73 }, history: blow({}) })).toBeGreaterThan(1);
    expect(told(neck, { person: { ageYears: 73 }, history: blow({ side: 'left' }) })).toBe(1);
    expect(told(neck, { person: { ageYears: 20 }, history: blow({}) })).toBe(1);
  });

  it('a child whose legs fail more each day has inflamed roots sooner than an adult', () => {
    const history = {
      onset: { pace: 'acute' },
      course: 'progressive',
      symptoms: has('leg-weakness', 'difficulty-walking', 'leg-pain'),
    };
    expect(told(inflamedRoots, { person: { ageYears: 4 }, history })).toBeGreaterThan(1);
    expect(told(inflamedRoots, { person: { ageYears: 40 }, history })).toBe(1);
    const hot = { ...history, symptoms: [...history.symptoms, ...has('fever')] };
    expect(told(inflamedRoots, { person: { ageYears: 4 }, history: hot })).toBe(1);
  });

  // Criteria for Guillain-Barré syndrome: Asbury 1990 (recalled).
  it('a bladder that holds from the first is of the canal, unless a jerk is gone', () => {
    const findings = { power: power({ 'hip-flexion': '2', 'ankle-dorsiflexion': '3' }) };
    const history = { onset: { pace: 'acute', durationDays: 4 } };
    const holds = { ...findings, sphincters: [{ sign: 'urinary-retention', present: true }] };
    expect(odds(neck, { history, findings: holds })).toBeGreaterThan(1);
    expect(odds(inflamedRoots, { history, findings: holds })).toBeLessThan(0.5);
    const gone = { ...holds, reflexes: reflexes({ knee: '0' }) };
    expect(odds(inflamedRoots, { history, findings: gone })).toBe(1);
    const late = { onset: { pace: 'acute', durationDays: 20 } };
    expect(odds(inflamedRoots, { history: late, findings: holds })).toBe(1);
  });

  it('both arms alone after an infection are of inflamed roots and not of the hemispheres', () => {
    const findings = { power: power({ 'finger-abduction': '3', 'hip-flexion': '2' }) };
    const arms = { power: power({ 'wrist-extension': '3', 'finger-abduction': '3' }) };
    const after = { onset: { pace: 'acute', durationDays: 4 }, symptoms: has('preceding-gastroenteritis') };
    expect(odds(inflamedRoots, { history: after, findings: arms })).toBeGreaterThan(1);
    expect(odds(half, { history: after, findings: arms })).toBeLessThan(0.2);
    expect(odds(half, { history: { onset: after.onset }, findings: arms })).toBe(1);
    expect(odds(half, { history: after, findings })).toBe(1);
  });

  it('no limb that moves, with feeling and breath kept, is of muscle before the cord', () => {
    const findings = { power: power({ 'elbow-flexion': '0', 'finger-abduction': '0', 'hip-flexion': '0' }) };
    const kept = ['numbness', 'breathlessness'].map((key) => ({ key, present: false }));
    const history = { onset: { pace: 'hyperacute' }, symptoms: kept };
    expect(odds(muscle, { history, findings })).toBeGreaterThan(1);
    expect(odds(neck, { history, findings })).toBeLessThan(0.5);
    const pain = { ...history, symptoms: [...kept, ...has('neck-pain')] };
    expect(odds(neck, { history: pain, findings })).toBeGreaterThan(1);
    const untold = { onset: history.onset };
    expect(odds(neck, { history: untold, findings })).toBe(1);
  });

  it('legs that fail under a tender spine with sepsis are of the canal, not of inflamed roots', () => {
    const findings = {
      power: power({ 'hip-flexion': '3' }),
      inspection: [{ sign: 'spinal-tenderness', present: true }],
    };
    const septic = { onset: { pace: 'acute' }, conditions: has('sepsis') };
    expect(odds(neck, { history: septic, findings })).toBeGreaterThan(1);
    expect(odds(inflamedRoots, { history: septic, findings })).toBeLessThan(1);
    expect(odds(inflamedRoots, { history: { onset: septic.onset }, findings })).toBe(1);
  });
});
