import { describe, expect, it } from 'vitest';
import { hypotheses } from '../../src/localisation/hypotheses/hypotheses.ts';
import { muscleHypotheses } from '../../src/localisation/hypotheses/muscle-and-junction.ts';
import { Coverage } from '../../src/localisation/inference/coverage.ts';
import { bedsideExam } from '../support/bedside.ts';
import { power, tone } from './case-writing.ts';

const generalised = muscleHypotheses().filter(({ variant }) => variant === 'generalised');

/** Natural log of the odds of myasthenia of all limbs, by what an examination of face and arms leaves out. */
function cost(history: Record<string, unknown> = {}): number {
  const weights = new Float64Array(generalised.length);
  const findings = {
    cranialNerves: [{ sign: 'ptosis', side: 'both', present: true }],
    power: power({ 'shoulder-abduction': '4', 'elbow-flexion': '4' }),
  };
  new Coverage(generalised).discount(weights, bedsideExam({ history, findings }));
  return weights[0] ?? 0;
}

/** The same of a lesion of the brain in a person of whom one sign of the mind is known. */
function costOfBrain(key: string, side: 'left' | 'both', sign: string): number {
  const lesions = hypotheses.filter(
    ({ site, variant }) => site.key === key && site.side === side && variant.endsWith('-whole'),
  );
  const weights = new Float64Array(lesions.length);
  const findings = { higherFunction: [{ sign, present: true }] };
  new Coverage(lesions).discount(weights, bedsideExam({ history: {}, findings }));
  return Math.min(...weights);
}

/** The same of both medial thalami, which keep people awake. */
function costOfThalami(findings: Record<string, unknown>): number {
  const lesions = hypotheses.filter(
    ({ site, variant }) => site.key === 'thalamus' && site.side === 'both' && variant.endsWith('-whole'),
  );
  const weights = new Float64Array(lesions.length);
  new Coverage(lesions).discount(weights, bedsideExam({ history: {}, findings }));
  return weights[0] ?? 0;
}

describe('what a lesion would trouble and nobody found', () => {
  it('two legs that nobody looked at are less than two omissions', () => {
    expect(cost()).toBeLessThan(Math.log(0.15));
    expect(cost()).toBeGreaterThan(2 * Math.log(0.15));
  });

  it('a limb that hurts, tingles or is clumsy is no omission of whom nobody has examined', () => {
    const roots = hypotheses.filter(
      ({ site, variant }) => site.key === 'nerve-root' && site.level === 'L5' && variant === 'severe',
    );
    const costOfRoots = (...keys: readonly string[]): number => {
      const weights = new Float64Array(roots.length);
      const symptoms = keys.map((key) => ({ key, present: true }));
      new Coverage(roots).discount(weights, bedsideExam({ history: { symptoms } }));
      return weights[0] ?? 0;
    };
    expect(costOfRoots('radicular-leg-pain')).toBe(0);
    expect(costOfRoots('numbness')).toBe(0);
    expect(costOfRoots('unsteadiness')).toBe(0);
    expect(costOfRoots('unsteadiness', 'vertigo')).toBeLessThan(0);
    // It says of which limb.
    expect(costOfRoots('numbness', 'hand-pain')).toBeLessThan(0);
    expect(costOfRoots('headache')).toBeLessThan(0);
  });

  it('legs that the patient told of are no omission', () => {
    expect(cost({ symptoms: [{ key: 'leg-weakness', present: true }] })).toBeGreaterThan(cost() / 4);
  });

  it('nobody complains of four limbs out of coma, but one half that moves less is looked for', () => {
    const pontine = costOfBrain('pons-ventral', 'both', 'coma');
    expect(pontine).toBe(0);
    expect(costOfBrain('pons-ventral', 'both', 'inattention')).toBeLessThan(Math.log(0.15));
    expect(costOfBrain('internal-capsule', 'left', 'coma')).toBeLessThan(pontine);
  });

  it('of an infant that is weak and limp nobody says which limb, or how weak', () => {
    const infant = muscleHypotheses().filter(({ variant }) => variant === 'from-birth');
    const costAt = (ageYears: number): number => {
      const weights = new Float64Array(infant.length);
      const history = { symptoms: [{ key: 'weakness', present: true }] };
      const findings = { tone: tone({ 'lower-limb': 'reduced' }) };
      new Coverage(infant).discount(weights, bedsideExam({ person: { ageYears }, history, findings }));
      return weights[0] ?? 0;
    };
    expect(costAt(0.5)).toBeGreaterThan(costAt(20) + 1);
  });

  it('who moves on command is taken for awake unless something else was said', () => {
    const asked = { power: power({ 'elbow-flexion': '4' }) };
    const asleep = { ...asked, higherFunction: [{ sign: 'drowsiness', present: true }] };
    expect(costOfThalami(asked)).toBeLessThan(costOfThalami(asleep) - 0.3);
  });

  const costAt = (site: string, variant: string, history: object, findings: Record<string, unknown>): number => {
    const lesions = hypotheses.filter((one) => one.site.key === site && one.variant === variant);
    const weights = new Float64Array(lesions.length);
    new Coverage(lesions).discount(weights, bedsideExam({ history: { ...history }, findings }));
    return weights[0] ?? 0;
  };
  const told = (...keys: string[]): object => ({ symptoms: keys.map((key) => ({ key, present: true })) });

  it('a tremor that is told of and not yet seen is one of the hands', () => {
    expect(costAt('action-tremor', '0', told('tremor'), {})).toBe(0);
    expect(costAt('action-tremor', '0', told('headache'), {})).toBeLessThan(Math.log(0.1));
  });

  it('who is clumsy and sways is troubled in the legs though the head swims on standing', () => {
    const swimming = ['unsteadiness', 'light-headed-on-standing', 'slurred-speech'];
    const pure = (...keys: string[]): number => costAt('cerebellar-degeneration', 'pure', told(...keys), {});
    expect(pure(...swimming, 'clumsiness')).toBeGreaterThan(pure(...swimming) + 1);
  });

  it('arms that nobody tested do not clear the cerebellum of somebody whose steps and eyes sway', () => {
    const ataxic = { sign: 'ataxic', present: true };
    const eyes = [{ sign: 'gaze-evoked-nystagmus', side: 'both', present: true }];
    const tested = [{ test: 'finger-nose', side: 'both', result: 'normal' }];
    const pure = (findings: Record<string, unknown>): number =>
      costAt('cerebellar-degeneration', 'pure', {}, { gait: [ataxic], ...findings });
    expect(pure({ cranialNerves: eyes })).toBeCloseTo(Math.log(0.5));
    expect(pure({ cranialNerves: eyes, coordination: tested })).toBeLessThan(Math.log(0.1));
    expect(pure({})).toBeLessThan(Math.log(0.1));
  });
});
