import { describe, expect, it } from 'vitest';
import { createLocaliser } from '../../../src/localisation/localise.ts';
import { bedsideExam } from '../../support/bedside.ts';
import { type ExamDraft, examBody, fasciculation, midline, power, reflexes, signs, tone } from '../case-writing.ts';

const localiser = createLocaliser();

function answer(exam: ExamDraft) {
  const { localisations } = localiser.localise(bedsideExam(examBody(exam)));
  const likely = (key: string): number =>
    localisations.filter(({ site }) => site === key).reduce((sum, { probability }) => sum + probability, 0);
  return { first: localisations[0]?.site, likely };
}

const has = (...keys: readonly string[]) => keys.map((key) => ({ key, present: true }));
const trembling = ['left', 'right'].map((side) => ({ sign: 'postural-tremor', site: 'hand', side, present: true }));

// Adams and Victor, tetany (recalled).
describe('spasms after an operation on the neck', () => {
  const history = { symptoms: has('cramps'), exposures: has('recent-surgery', 'neck-or-chest-surgery') };
  const onset = { pace: 'acute', durationDays: 2 };
  const spasm = midline({ 'carpopedal-spasm': true });

  it('come of whole nerves that want calcium', () => {
    expect(answer({ onset, history, findings: { involuntaryMovements: spasm } }).first).toBe('no-lesion');
  });

  it('do not hide a nerve that was cut', () => {
    const shrug = power({ 'shoulder-shrug': ['2', '5'] });
    const findings = { involuntaryMovements: spasm, power: shrug };
    expect(answer({ onset, history, findings }).first).toMatch(/accessory/);
  });
});

// Adams and Victor, enhanced physiologic tremor; delirium tremens (recalled).
describe('trembling hands, a racing heart and sweat', () => {
  const onset = { pace: 'subacute', durationDays: 60 };
  const driven = {
    involuntaryMovements: trembling,
    autonomic: midline({ 'resting-tachycardia': true, hyperhidrosis: true }),
    reflexes: reflexes({ biceps: '3', knee: '3', ankle: '3' }),
  };

  it('are the tremor of health made coarse while nothing is wrong with the mind', () => {
    expect(answer({ age: 34, onset, findings: driven }).first).toBe('action-tremor');
  });

  it('are a brain in turmoil when the mind is clouded', () => {
    const findings = { ...driven, higherFunction: midline({ confusion: true, agitation: true, hallucinations: true }) };
    expect(answer({ onset: { pace: 'acute', durationDays: 2 }, findings }).first).toBe('diffuse-encephalopathy');
  });
});

// Adams and Victor, organophosphate poisoning; pontine haemorrhage (recalled).
describe('small pupils', () => {
  const onset = { pace: 'hyperacute', durationDays: 0 };

  it('beside all that flows and twitches come of acetylcholine', () => {
    const findings = {
      cranialNerves: [...signs({ 'small-pupil': true }), ...midline({ drooling: true })],
      inspection: fasciculation(['calf', 'left'], ['calf', 'right']),
      sphincters: midline({ 'urinary-incontinence': true, 'faecal-incontinence': true }),
      autonomic: midline({ hypersecretion: true, bradycardia: true }),
    };
    expect(answer({ onset, findings }).first).toBe('diffuse-encephalopathy');
  });

  it('beside eyes that do not turn are of the brainstem', () => {
    const findings = {
      cranialNerves: signs({ 'small-pupil': true, 'gaze-palsy': true }),
      higherFunction: midline({ coma: true }),
    };
    expect(answer({ onset, findings }).likely('diffuse-encephalopathy')).toBeLessThan(0.2);
  });
});

// Plum and Posner, paratonic rigidity in metabolic coma (recalled).
describe('limbs that resist being moved', () => {
  const resisting = tone({ 'upper-limb': 'paratonic', 'lower-limb': 'paratonic' });

  it('are met when the whole brain is clouded', () => {
    const findings = { higherFunction: midline({ confusion: true, inattention: true }), tone: resisting };
    const onset = { pace: 'acute', durationDays: 4 };
    expect(answer({ age: 84, onset, history: { symptoms: has('fever') }, findings }).first).toBe(
      'diffuse-encephalopathy',
    );
  });

  it('speak for the frontal lobes more than for the whole brain all the same', () => {
    const higherFunction = [...midline({ apathy: true, disinhibition: true }), ...signs({ 'grasp-reflex': true })];
    const onset = { pace: 'chronic', durationDays: 300 };
    const share = (findings: ExamDraft['findings']): number => {
      const { likely } = answer({ onset, findings });
      return likely('cortex-frontal') / likely('diffuse-encephalopathy');
    };
    expect(share({ higherFunction, tone: resisting })).toBeGreaterThan(share({ higherFunction }));
  });
});
