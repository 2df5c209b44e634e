import { describe, expect, it } from 'vitest';
import { hypotheses } from '../../src/localisation/hypotheses/hypotheses.ts';
import type { Site } from '../../src/localisation/hypothesis.ts';
import { toldPatternShifts } from '../../src/localisation/inference/told-patterns.ts';
import { bedsideExam } from '../support/bedside.ts';

const has = (...keys: readonly string[]) => keys.map((key) => ({ key, present: true }));
const slowly = { onset: { pace: 'chronic', durationDays: 900 }, course: 'progressive' };

const where = (wanted: (site: Site) => boolean): Site => {
  const found = hypotheses.find(({ site }) => wanted(site));
  if (found === undefined) throw new RangeError('no such site');
  return found.site;
};
const cerebellum = where(({ key }) => key === 'cerebellar-degeneration');
const nigra = where(({ key }) => key === 'akinetic-rigid-syndrome');
const neck = where(({ kind, level }) => kind === 'cord' && level === 'C5');
const chest = where(({ kind, level }) => kind === 'cord' && level === 'T5');
const leftHalf = where(({ kind, side }) => kind === 'hemisphere' && side === 'left');
const rightHalf = where(({ kind, side }) => kind === 'hemisphere' && side === 'right');

const factor = (site: Site, parts: Record<string, unknown>): number =>
  toldPatternShifts(bedsideExam(parts)).reduce(
    (product, shift) => (shift.applies(site) ? product * shift.factor : product),
    1,
  );

describe('complaints told together', () => {
  const slurring = { ...slowly, symptoms: has('unsteadiness', 'slurred-speech') };
  const failing = { ...slowly, symptoms: has('unsteadiness', 'light-headed-on-standing', 'bladder-disturbance') };
  const fumbling = { ...slowly, symptoms: has('clumsiness', 'difficulty-walking', 'neck-pain') };

  it('place numbness of those whose long axons are harmed in these, unless one side is named', () => {
    const axons = where(({ key }) => key === 'length-dependent-polyneuropathy');
    const diabetic = { ...slowly, symptoms: has('numbness'), conditions: has('diabetes-mellitus') };
    expect(factor(axons, { history: diabetic })).toBeGreaterThan(2);
    expect(factor(axons, { history: { ...slowly, symptoms: has('numbness') } })).toBe(1);
    const oneSided = { ...diabetic, symptoms: [{ key: 'numbness', present: true, side: 'left' }] };
    expect(factor(axons, { history: oneSided })).toBe(1);
  });

  it('place gait and speech that fail over months in the cerebellum', () => {
    expect(factor(cerebellum, { history: slurring })).toBeGreaterThan(2);
    expect(factor(nigra, { history: slurring })).toBe(1);
  });

  it('place blood pressure and bladder that fail with the gait in nigra and cerebellum', () => {
    expect(factor(cerebellum, { history: failing })).toBeGreaterThan(2);
    expect(factor(nigra, { history: failing })).toBeGreaterThan(2);
  });

  it('place clumsy hands and failing legs in the cord of the neck', () => {
    expect(factor(neck, { history: fumbling })).toBeGreaterThan(2);
    expect(factor(chest, { history: fumbling })).toBe(1);
  });

  it('place a headache with a failing limb in the other half of the brain', () => {
    const symptoms = [...has('headache'), { key: 'arm-weakness', side: 'left', present: true }];
    const history = { onset: { pace: 'subacute', durationDays: 20 }, symptoms };
    expect(factor(rightHalf, { history })).toBeGreaterThan(2);
    expect(factor(leftHalf, { history })).toBe(1);
    expect(factor(rightHalf, { history: { ...history, conditions: has('migraine') } })).toBe(1);
  });

  it('say nothing of what came at once, nor once a sign was found', () => {
    const sudden = { ...slurring, onset: { pace: 'hyperacute', durationDays: 0 } };
    expect(factor(cerebellum, { history: sudden })).toBe(1);
    expect(factor(cerebellum, { history: slurring, findings: { gait: [{ sign: 'ataxic', present: true }] } })).toBe(1);
  });

  it('place numbness that came at once and has gone in the thalamus, unless anything else went with it', () => {
    const thalamus = where(({ key }) => key === 'thalamus');
    const gone = { onset: { pace: 'hyperacute' }, symptoms: has('numbness', 'resolved-deficit') };
    expect(factor(thalamus, { history: gone })).toBeGreaterThan(2);
    expect(factor(thalamus, { history: { ...gone, symptoms: has('numbness', 'weakness', 'resolved-deficit') } })).toBe(
      1,
    );
    expect(factor(thalamus, { history: { ...gone, conditions: has('migraine') } })).toBe(1);
    expect(factor(thalamus, { history: { ...gone, onset: { pace: 'chronic', durationDays: 400 } } })).toBe(1);
  });

  it('place lids that droop with other failing muscles, and muscles that a poison stops, at the junction', () => {
    const junction = where(({ kind }) => kind === 'junction');
    const onset = { pace: 'acute', durationDays: 2 };
    expect(factor(junction, { history: { onset, symptoms: has('drooping-eyelids', 'weakness') } })).toBeGreaterThan(2);
    expect(factor(junction, { history: { onset, symptoms: has('drooping-eyelids', 'diplopia', 'eye-pain') } })).toBe(1);
    const bitten = { onset, symptoms: has('drooping-eyelids'), exposures: has('venomous-bite') };
    expect(factor(junction, { history: bitten })).toBeGreaterThan(2);
  });

  it('legs that grow numb and weak with the bladder are of the cord below the arms, or of the cauda equina', () => {
    const history = { ...slowly, symptoms: has('numbness', 'leg-weakness', 'bladder-disturbance') };
    expect(factor(chest, { history })).toBeGreaterThan(1);
    expect(factor(nigra, { history })).toBe(1);
    const hands = { ...history, symptoms: [...history.symptoms, ...has('clumsiness')] };
    expect(factor(chest, { history: hands })).toBeLessThan(factor(chest, { history }));
  });
});
