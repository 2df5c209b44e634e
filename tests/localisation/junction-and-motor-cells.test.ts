import { describe, expect, it } from 'vitest';
import { createLocaliser } from '../../src/localisation/localise.ts';
import { bedsideExam } from '../support/bedside.ts';
import { midline, plantars, power, reflexes, sensation, tone } from './case-writing.ts';

const { localise } = createLocaliser();
const all = (draft: Parameters<typeof bedsideExam>[0]) => localise(bedsideExam(draft)).localisations;
const first = (draft: Parameters<typeof bedsideExam>[0]) => all(draft)[0]?.site;
const claims = (...keys: readonly string[]) => keys.map((key) => ({ key, present: true }));
const months = { pace: 'chronic', durationDays: 60 };

describe('sparse pictures of junction, motor cells, muscle and columns', () => {
  it('a jaw and a palate that fail within days while eyes, tongue and neck are sound are of the junction', () => {
    const draft = {
      person: { ageYears: 75 },
      history: { onset: { pace: 'acute', durationDays: 5 }, symptoms: claims('slurred-speech', 'dysphagia') },
      findings: { cranialNerves: midline({ 'jaw-weakness': true, 'nasal-speech': true, dysphonia: true }) },
      otherwiseNormal: [{ section: 'cranialNerves' }, { section: 'power' }, { section: 'reflexes' }],
    };
    expect(first(draft)).toBe('postsynaptic-junction');
  });

  it('a voice that tires says nothing of limbs, and limbs that do not tire nothing of the voice', () => {
    const draft = {
      person: { ageYears: 69 },
      history: { onset: { pace: 'acute', durationDays: 14 }, symptoms: claims('slurred-speech', 'dysphagia') },
      findings: {
        cranialNerves: midline({ dysarthria: true, dysphagia: true }),
        specialTests: [
          { test: 'counting-fatigability', result: 'positive' },
          { test: 'limb-fatigability', result: 'negative' },
        ],
      },
      otherwiseNormal: [{ section: 'cranialNerves' }, { section: 'power' }],
    };
    expect(first(draft)).toBe('postsynaptic-junction');
  });

  it('an infant that feeds badly, passes no stool and cannot hold the head has too little transmitter', () => {
    const draft = {
      person: { ageYears: 0.4 },
      history: { onset: { pace: 'subacute', durationDays: 14 }, symptoms: claims('weakness', 'dysphagia') },
      findings: {
        cranialNerves: midline({ dysphagia: true }),
        sphincters: midline({ constipation: true }),
        power: [{ movement: 'neck-flexion', grade: '2' }],
      },
    };
    expect(first(draft)).toBe('presynaptic-junction');
  });

  describe('girdles that fail under brisk jerks', () => {
    const girdles = {
      power: power({ 'shoulder-abduction': ['4', '4'], 'hip-flexion': ['4', '4'], 'knee-extension': ['4', '4'] }),
      reflexes: reflexes({ knee: '3', ankle: '3' }),
    };
    const slowly = { onset: months, course: 'progressive' };

    it('are of muscle where the toes go down and heart and hands are driven', () => {
      const driven = {
        ...girdles,
        plantars: [{ side: 'both', response: 'flexor' }],
        autonomic: midline({ 'resting-tachycardia': true }),
        involuntaryMovements: [{ sign: 'postural-tremor', site: 'hand', side: 'both', present: true }],
      };
      expect(first({ person: { ageYears: 44 }, history: slowly, findings: driven })).toBe('proximal-myopathy');
    });

    it('are of the motor cells where the toes go up and a thigh flickers', () => {
      const released = {
        ...girdles,
        plantars: [{ side: 'both', response: 'extensor' }],
        inspection: [
          { sign: 'fasciculation', site: 'thigh', side: 'right', present: true },
          { sign: 'wasting', site: 'thigh', side: 'both', present: true },
        ],
      };
      const draft = { person: { ageYears: 62 }, history: slowly, findings: released };
      const otherwiseNormal = [{ section: 'sensation' }, { section: 'cranialNerves' }];
      expect(first({ ...draft, otherwiseNormal })).toBe('motor-neuron-system');
    });
  });

  it('a limp infant whose chest sinks with every breath has lost motor cells', () => {
    const draft = {
      person: { ageYears: 0.3 },
      history: { onset: months, symptoms: claims('weakness') },
      findings: {
        tone: tone({ 'upper-limb': 'reduced', 'lower-limb': 'reduced' }),
        autonomic: midline({ 'paradoxical-breathing': true }),
        reflexes: reflexes({ knee: '0' }),
      },
    };
    expect(first(draft)).toBe('lower-motor-neuron-system');
  });

  it('a feverish child with one limp arm and a slow bladder has an inflamed cord, not a disease of autonomic nerves', () => {
    const draft = {
      person: { ageYears: 2 },
      history: { onset: { pace: 'acute', durationDays: 1 }, symptoms: claims('fever', 'arm-weakness') },
      findings: {
        sphincters: midline({ 'urinary-hesitancy': true, constipation: true }),
        power: power({ 'shoulder-abduction': [null, '0'], 'elbow-flexion': [null, '0'] }),
        reflexes: reflexes({ biceps: [null, '0'] }),
      },
      otherwiseNormal: [{ section: 'sensation' }],
    };
    expect(first(draft)).toBe('lower-motor-neuron-system');
  });

  it('feet that are weak for ten years before hips and shoulders are of the far muscles', () => {
    const draft = {
      person: { ageYears: 31 },
      history: { onset: { pace: 'chronic', durationDays: 4000 }, course: 'progressive' },
      findings: { power: power({ 'ankle-dorsiflexion': '1', 'hip-flexion': '3', 'shoulder-abduction': '3' }) },
      otherwiseNormal: [{ section: 'sensation' }],
    };
    expect(first(draft)).toBe('distal-myopathy');
  });

  it('columns that fail while the legs are strong are no pressed cord', () => {
    const draft = {
      person: { ageYears: 76 },
      history: { onset: { pace: 'chronic', durationDays: 200 }, symptoms: claims('numbness', 'unsteadiness') },
      findings: {
        sensation: [
          ...sensation('vibration', { ankle: 'absent' }),
          ...sensation('joint-position', { toes: 'reduced' }),
        ],
        reflexes: reflexes({ knee: '3' }),
        plantars: plantars('extensor'),
      },
      otherwiseNormal: [{ section: 'power' }],
    };
    expect(first(draft)).toBe('spinal-cord-posterolateral');
  });

  it('thighs that are gone within hours speak against the cauda equina, though the back hurts', () => {
    const cauda = (pace: string) =>
      all({
        history: { onset: { pace, durationDays: 0.2 }, symptoms: claims('back-pain') },
        findings: {
          power: power({ 'hip-flexion': '0', 'knee-extension': '0', 'ankle-dorsiflexion': '0' }),
          sensation: sensation('pinprick', { L2: 'reduced' }),
        },
      }).find(({ site }) => site === 'cauda-equina')?.probability ?? 0;
    expect(cauda('hyperacute')).toBeLessThan(cauda('acute'));
  });

  it('hips and shoulders alone, slowly, are not of the cord', () => {
    const cord = (symptoms: readonly object[]) =>
      all({
        history: { onset: { pace: 'subacute', durationDays: 180 }, symptoms },
        findings: { power: power({ 'hip-flexion': '4', 'shoulder-abduction': '4' }) },
      }).reduce((sum, { kind, probability }) => sum + (kind === 'cord' ? probability : 0), 0);
    expect(cord(claims('weakness'))).toBeLessThan(cord(claims('weakness', 'clumsiness')));
  });
});
