import { describe, expect, it } from 'vitest';
import { createLocaliser } from '../../src/localisation/localise.ts';
import { bedsideExam } from '../support/bedside.ts';
import { type ExamDraft, examBody, midline, plantars, power, signs, tone } from './case-writing.ts';

const localiser = createLocaliser();
const chanceOf = (draft: ExamDraft, ...sites: readonly string[]): number =>
  localiser
    .localise(bedsideExam(examBody(draft)))
    .localisations.filter((one) => sites.includes(one.site))
    .reduce((sum, { probability }) => sum + probability, 0);

const has = (...keys: readonly string[]) => keys.map((key) => ({ key, present: true }));
const atOnce = { pace: 'hyperacute' } as const;

describe('what lies in midbrain and deep nuclei', () => {
  // Büttner-Ennever and Büttner, interstitial nucleus of Cajal (recalled).
  it('eyes that beat downwards beside a third nerve are of the midbrain and not of the nerve', () => {
    const third = signs({ 'third-nerve-palsy': [true, null] });
    const alone = { onset: atOnce, findings: { cranialNerves: third } };
    const beats = {
      onset: atOnce,
      findings: { cranialNerves: [...third, ...midline({ 'downbeat-nystagmus': true })] },
    };
    expect(chanceOf(alone, 'oculomotor-nerve')).toBeGreaterThan(chanceOf(alone, 'midbrain-tegmentum'));
    expect(chanceOf(beats, 'midbrain-tegmentum')).toBeGreaterThan(chanceOf(beats, 'oculomotor-nerve'));
  });

  // Brazis, dorsal midbrain syndrome (recalled): the same loss, told of each eye or of gaze.
  it('two eyes that do not look up, with pupils that answer to near alone, are of the dorsal midbrain', () => {
    const pupils = midline({ 'light-near-dissociation': true, 'impaired-convergence': true });
    const findings = { cranialNerves: [...pupils, ...signs({ 'eye-elevation-weakness': true })] };
    expect(chanceOf({ age: 15, findings }, 'midbrain-dorsal')).toBeGreaterThan(0.5);
  });

  it('a limb that was found spastic was not left out because it is strong', () => {
    const findings = {
      higherFunction: midline({ mutism: true, coma: false }),
      tone: tone({ 'upper-limb': 'spastic', 'lower-limb': 'spastic' }),
      power: power({ 'shoulder-abduction': ['0', null], 'finger-flexion': ['0', null], 'hip-flexion': ['0', null] }),
      plantars: plantars('extensor'),
    };
    const draft = { age: 59, onset: atOnce, history: { symptoms: has('vertigo') }, findings };
    expect(chanceOf(draft, 'pons-ventral', 'brainstem-diffuse')).toBeGreaterThan(0.6);
  });

  it('arm and leg of one half that dance in a muddled diabetic are of the striatum', () => {
    const chorea = ['upper-limb', 'lower-limb'].map((part) => ({
      sign: 'chorea',
      site: part,
      side: 'right',
      present: true,
    }));
    const findings = { involuntaryMovements: chorea, higherFunction: midline({ confusion: true }) };
    const history = { conditions: has('diabetes-mellitus') };
    const draft = { age: 61, onset: { pace: 'acute', durationDays: 3 }, history, findings };
    expect(chanceOf(draft, 'striatum', 'subthalamic-nucleus')).toBeGreaterThan(0.4);
  });

  // Adams and Victor, disorders of movement (recalled): what is complained of before anybody has examined.
  it('movements that come unwilled, and slowness, are of the basal nuclei though nobody has looked', () => {
    const told = (key: string, age: number): ExamDraft => ({
      age,
      onset: { pace: 'chronic', durationDays: 700 },
      history: { symptoms: has(key) },
      findings: {},
    });
    expect(chanceOf(told('involuntary-movements', 40), 'hyperkinetic-syndrome', 'striatum')).toBeGreaterThan(0.3);
    expect(chanceOf(told('slowness', 70), 'akinetic-rigid-syndrome')).toBeGreaterThan(0.3);
  });
});
