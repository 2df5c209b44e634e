import { describe, expect, it } from 'vitest';
import { infantPatternShifts } from '../../src/localisation/inference/infant-patterns.ts';
import { createLocaliser } from '../../src/localisation/localise.ts';
import { bedsideExam } from '../support/bedside.ts';
import { coordination, midline, reflexes, signs, tone } from './case-writing.ts';
import { has, oddsBy } from './odds.ts';

const odds = oddsBy(infantPatternShifts);

const of = (ageYears: number) => ({ person: { ageYears } });
const limp = { tone: tone({ 'upper-limb': 'reduced', 'lower-limb': 'reduced' }), reflexes: reflexes({ knee: '0' }) };

describe('what the signs of an infant say together', () => {
  it('limp infants have no ill cord, unless it was torn or malformed or a level was found', () => {
    expect(odds({ ...of(0.2), findings: limp }, 'spinal-cord-transverse', 'cord')).toBeLessThan(0.2);
    expect(odds({ ...of(0.2), findings: limp }, 'lower-motor-neuron-system', 'motor-neuron-system')).toBe(1);
    const torn = { exposures: has('shoulder-dystocia') };
    expect(odds({ ...of(0.2), history: torn, findings: limp }, 'spinal-cord-transverse', 'cord')).toBe(1);
    const mark = { ...limp, inspection: midline({ 'lumbosacral-skin-mark': true }) };
    expect(odds({ ...of(0.2), findings: mark }, 'spinal-cord-transverse', 'cord')).toBe(1);
    const brisk = { ...limp, reflexes: reflexes({ knee: '4' }) };
    expect(odds({ ...of(0.2), findings: brisk }, 'spinal-cord-transverse', 'cord')).toBe(1);
  });

  it('and no part of the brainstem that one artery feeds', () => {
    expect(odds({ ...of(0), findings: limp }, 'medulla-medial', 'brainstem', 'both')).toBeLessThan(0.1);
  });

  it('limp grown-ups and children who walk may have one', () => {
    expect(odds({ ...of(5), findings: limp }, 'spinal-cord-transverse', 'cord')).toBe(1);
    expect(odds({ findings: limp }, 'spinal-cord-transverse', 'cord')).toBe(1);
  });

  it('who has it of a parent has receptors that fail, and was not poisoned', () => {
    const family = [{ key: 'similar-disorder', present: true, relation: 'parent' }];
    const draft = {
      ...of(0),
      history: { onset: { pace: 'acute' }, family },
      findings: { cranialNerves: midline({ 'weak-suck-or-cry': true }) },
    };
    expect(odds(draft, 'postsynaptic-junction', 'junction', 'both')).toBeGreaterThan(1);
    expect(odds(draft, 'presynaptic-junction', 'junction', 'both')).toBeLessThan(1);
  });

  it('one nerve leaves an infant its suck, unless one half of the face is named', () => {
    const throat = midline({ 'weak-suck-or-cry': true, drooling: true });
    const acute = { history: { onset: { pace: 'acute' } } };
    const draft = { ...of(0.4), ...acute, findings: { cranialNerves: throat } };
    expect(odds(draft, 'facial-nerve', 'cranial-nerve', 'left')).toBeLessThan(0.2);
    expect(odds(draft, 'presynaptic-junction', 'junction')).toBeGreaterThan(1);
    const faces = { cranialNerves: [...throat, ...signs({ 'facial-weakness': true })] };
    expect(odds({ ...of(0.4), ...acute, findings: faces }, 'facial-nerve', 'cranial-nerve', 'left')).toBeLessThan(0.2);
    const half = { cranialNerves: [...throat, ...signs({ 'facial-weakness': [true, false] })] };
    expect(odds({ ...of(0.4), ...acute, findings: half }, 'facial-nerve', 'cranial-nerve', 'left')).toBe(1);
  });

  it('skills that are lost are of the whole brain, unless the child sways', () => {
    const history = { symptoms: has('loss-of-skills') };
    const sits = coordination({ 'finger-nose': 'impaired' });
    const still = { tone: limp.tone, higherFunction: midline({ apathy: true }) };
    expect(odds({ ...of(0.9), history, findings: still }, 'diffuse-encephalopathy', 'encephalopathy')).toBeGreaterThan(
      2,
    );
    expect(odds({ ...of(0.9), history, findings: still }, 'cerebellar-degeneration', 'cerebellum')).toBeLessThan(0.2);
    const sways = { ...still, coordination: sits };
    expect(odds({ ...of(0.9), history, findings: sways }, 'cerebellar-degeneration', 'cerebellum')).toBe(1);
  });

  it('a month-old child that is limp, sleepy and constipated has a poisoned junction', () => {
    const [first] = createLocaliser().localise(
      bedsideExam({
        ...of(0.1),
        history: { onset: { pace: 'acute' }, symptoms: has('dysphagia', 'breathlessness') },
        findings: {
          ...limp,
          cranialNerves: midline({ 'weak-suck-or-cry': true }),
          sphincters: midline({ constipation: true }),
        },
      }),
    ).localisations;
    expect(first?.site).toBe('presynaptic-junction');
  });
});

describe('half a small child that is stiff', () => {
  const stiff = { tone: tone({ 'upper-limb': ['spastic', null], 'lower-limb': ['spastic', null] }) };

  it('has a hemisphere that was hurt around birth, and seldom half a cord', () => {
    for (const ageYears of [1, 2, 4]) {
      const draft = { ...of(ageYears), history: { onset: { pace: 'chronic' } }, findings: stiff };
      expect(odds(draft, 'internal-capsule', 'hemisphere', 'right')).toBeGreaterThan(1);
      expect(odds(draft, 'spinal-cord-hemisection', 'cord', 'left')).toBeLessThan(0.3);
    }
  });

  it('may have the cord ill where the neck hurts, within days, on both sides, or later in life', () => {
    const half = (draft: object) => odds({ findings: stiff, ...draft }, 'spinal-cord-hemisection', 'cord', 'left');
    expect(half({ ...of(2), history: { symptoms: has('neck-pain') } })).toBe(1);
    expect(half({ ...of(2), history: { onset: { pace: 'acute' } } })).toBe(1);
    expect(half(of(9))).toBe(1);
    expect(half({ ...of(2), findings: { tone: tone({ 'upper-limb': 'spastic', 'lower-limb': 'spastic' }) } })).toBe(1);
  });
});
