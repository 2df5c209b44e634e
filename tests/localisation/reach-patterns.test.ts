import { describe, expect, it } from 'vitest';
import { reachPatternShifts } from '../../src/localisation/inference/reach-patterns.ts';
import { plantars, power, reflexes, sensation } from './case-writing.ts';
import { oddsBy } from './odds.ts';

const odds = oddsBy(reachPatternShifts, 'both');

describe('how far over the limbs findings reach', () => {
  const thinHand = [{ sign: 'wasting', site: 'hand', side: 'right', present: true }];

  it('a brisk jerk in a limb that wastes speaks for motor neuron disease, unless skin is numb', () => {
    const brisk = { inspection: thinHand, reflexes: reflexes({ triceps: [null, '3'] }) };
    expect(odds({ findings: brisk }, 'motor-neuron-system', 'motor-neuron-system')).toBeGreaterThan(1);
    const numb = { ...brisk, sensation: sensation('pinprick', { 'little-finger': [null, 'reduced'] }) };
    expect(odds({ findings: numb }, 'motor-neuron-system', 'motor-neuron-system')).toBe(1);
  });

  it('a rising toe below a wasted hand does not', () => {
    const findings = { inspection: thinHand, plantars: plantars(null, 'extensor') };
    expect(odds({ findings }, 'motor-neuron-system', 'motor-neuron-system')).toBe(1);
  });

  // Upper and lower signs of one region: revised El Escorial criteria (recalled).
  it('a whole tongue that is thin under a brisk jaw is of motor neurons, half a tongue of its nerve', () => {
    const throat = (side: object) => ({
      findings: {
        cranialNerves: [
          { sign: 'tongue-wasting', present: true, ...side },
          { sign: 'palatal-weakness', side: 'right', present: true },
        ],
        reflexes: [{ reflex: 'jaw', grade: '3' }],
      },
    });
    expect(odds(throat({}), 'motor-neuron-system', 'motor-neuron-system')).toBeGreaterThan(1);
    expect(odds(throat({}), 'jugular-foramen', 'cranial-nerve')).toBeLessThan(1);
    expect(odds(throat({ side: 'both' }), 'jugular-foramen', 'cranial-nerve')).toBeLessThan(1);
    expect(odds(throat({ side: 'right' }), 'jugular-foramen', 'cranial-nerve')).toBe(1);
  });

  it('dermatomes of one half speak against what takes all nerves, those of both do not', () => {
    const lost = (side: string) => ({
      sensation: [{ modality: 'pinprick', dermatome: 'L5', side, result: 'reduced' }],
    });
    expect(odds({ findings: lost('left') }, 'length-dependent-polyneuropathy', 'polyneuropathy')).toBeLessThan(1);
    expect(odds({ findings: lost('both') }, 'length-dependent-polyneuropathy', 'polyneuropathy')).toBe(1);
  });

  it('both wrists that drop are not dropped by the cord', () => {
    const inspection = [{ sign: 'wrist-drop', side: 'both', present: true }];
    expect(odds({ findings: { inspection } }, 'spinal-cord-central', 'cord')).toBeLessThan(1);
    const one = [{ sign: 'wrist-drop', side: 'left', present: true }];
    expect(odds({ findings: { inspection: one } }, 'spinal-cord-central', 'cord')).toBe(1);
  });

  it('hands and feet alone speak against segments, but not against columns that starve', () => {
    const findings = { sensation: sensation('light-touch', { palm: 'reduced', sole: 'reduced' }) };
    expect(odds({ findings }, 'spinal-cord-transverse', 'cord')).toBeLessThan(1);
    expect(odds({ findings }, 'spinal-cord-posterolateral', 'cord')).toBe(1);
  });

  // Healton 1991, neurologic aspects of cobalamin deficiency (recalled).
  it('columns that starve are not cut across, unless pain, bladder or a level says so', () => {
    const sensed = sensation('joint-position', { 'great-toe': 'reduced' });
    const starved = { onset: { pace: 'chronic' }, exposures: [{ key: 'zinc-excess', present: true }] };
    const across = ['spinal-cord-transverse', 'cord'] as const;
    expect(odds({ history: starved, findings: { sensation: sensed } }, ...across)).toBeLessThan(1);
    expect(odds({ history: starved, findings: { sensation: sensed } }, 'spinal-cord-posterolateral', 'cord')).toBe(1);
    expect(odds({ history: { onset: { pace: 'chronic' } }, findings: { sensation: sensed } }, ...across)).toBe(1);
    const hurts = { ...starved, symptoms: [{ key: 'neck-pain', present: true }] };
    expect(odds({ history: hurts, findings: { sensation: sensed } }, ...across)).toBe(1);
    const level = [...sensed, ...sensation('pinprick', { 'below:T6': 'reduced' })];
    expect(odds({ history: starved, findings: { sensation: level } }, ...across)).toBe(1);
  });

  it('both legs alone are not of the brainstem, but may be when speech is slurred', () => {
    const findings = { power: power({ 'hip-flexion': '3', 'ankle-dorsiflexion': '3' }) };
    expect(odds({ findings }, 'pons-ventral', 'brainstem')).toBeLessThan(1);
    const slurred = { symptoms: [{ key: 'slurred-speech', present: true }] };
    expect(odds({ findings, history: slurred }, 'pons-ventral', 'brainstem')).toBe(1);
  });

  it('arm and leg of one half that grow numb below a face that is not said to are of the neck as well', () => {
    const findings = {
      sensation: sensation('light-touch', { 'whole-arm': [null, 'altered'], 'whole-leg': [null, 'altered'] }),
    };
    const slow = { onset: { pace: 'subacute', durationDays: 30 }, course: 'progressive' };
    expect(odds({ history: slow, findings }, 'thalamus', 'hemisphere')).toBeLessThan(1);
    expect(odds({ history: { onset: { pace: 'hyperacute' } }, findings }, 'thalamus', 'hemisphere')).toBe(1);
    const face = { ...slow, symptoms: [{ key: 'face-numbness', present: true }] };
    expect(odds({ history: face, findings }, 'thalamus', 'hemisphere')).toBe(1);
  });

  it('brisk arms over quiet legs and a narrow lumbar canal are of a narrow neck', () => {
    const findings = { reflexes: reflexes({ biceps: '3', knee: '1' }) };
    const walks = (...keys: string[]) => ({ symptoms: keys.map((key) => ({ key, present: true })) });
    const narrow = walks('neurogenic-claudication', 'clumsiness');
    expect(odds({ history: narrow, findings }, 'motor-neuron-system', 'motor-neuron-system')).toBeLessThan(1);
    expect(odds({ history: narrow, findings }, 'nerve-root', 'root')).toBeLessThan(1);
    const brisk = { reflexes: reflexes({ biceps: '3', knee: '3' }) };
    expect(odds({ history: narrow, findings: brisk }, 'nerve-root', 'root')).toBe(1);
    expect(odds({ history: walks('clumsiness'), findings }, 'nerve-root', 'root')).toBe(1);
  });

  it('lively jerks alike on both sides over flexor toes are of no tract, unless the walk is complained of', () => {
    const lively = { reflexes: reflexes({ biceps: '3', knee: '3' }), plantars: plantars('flexor') };
    const hurts = { symptoms: [{ key: 'back-pain', present: true }] };
    const tracts = ['spinal-cord-posterolateral', 'cord'] as const;
    expect(odds({ history: hurts, findings: lively }, ...tracts)).toBeLessThan(1);
    const sways = { symptoms: [...hurts.symptoms, { key: 'unsteadiness', present: true }] };
    expect(odds({ history: sways, findings: lively }, ...tracts)).toBe(1);
    const uneven = { ...lively, reflexes: reflexes({ biceps: '3', knee: ['3', '2'] }) };
    expect(odds({ history: hurts, findings: uneven }, ...tracts)).toBe(1);
    const rising = { ...lively, plantars: plantars('extensor') };
    expect(odds({ history: hurts, findings: rising }, ...tracts)).toBe(1);
  });

  // Dissociated loss of feeling: Brazis, Localization in Clinical Neurology (recalled).
  it('pain alone that fades in arm and leg of one half below the face is lost in the cord', () => {
    const months = { onset: { pace: 'chronic' } };
    const lost = sensation('temperature', { 'whole-arm': [null, 'reduced'], 'whole-leg': [null, 'reduced'] });
    expect(odds({ history: months, findings: { sensation: lost } }, 'spinal-cord-hemisection', 'cord')).toBeGreaterThan(
      2,
    );
    expect(odds({ history: months, findings: { sensation: lost } }, 'thalamus', 'hemisphere')).toBeLessThan(0.6);
    const atOnce = { onset: { pace: 'hyperacute' } };
    expect(odds({ history: atOnce, findings: { sensation: lost } }, 'thalamus', 'hemisphere')).toBe(1);
    const touchToo = [...lost, ...sensation('light-touch', { 'whole-arm': [null, 'reduced'] })];
    expect(odds({ history: months, findings: { sensation: touchToo } }, 'spinal-cord-central', 'cord')).toBe(1);
  });

  it('a cord of which nothing passes carries no position', () => {
    const below = (result: string) => ({
      sensation: [
        { modality: 'pinprick', levelBelow: 'T8', side: 'both', result },
        ...sensation('joint-position', { 'great-toe': 'normal' }),
      ],
    });
    const absent = odds({ findings: below('absent') }, 'spinal-cord-transverse', 'cord');
    expect(absent).toBeLessThan(odds({ findings: below('reduced') }, 'spinal-cord-transverse', 'cord'));
  });
});
