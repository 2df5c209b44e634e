import { describe, expect, it } from 'vitest';
import { struckEnd, struckLimbShifts } from '../../src/localisation/inference/struck-limb.ts';
import { createLocaliser } from '../../src/localisation/localise.ts';
import { bedsideExam } from '../support/bedside.ts';

const { localise } = createLocaliser();
const claims = (...keys: readonly string[]) => keys.map((key) => ({ key, present: true }));

const strong = (...movements: readonly string[]) =>
  movements.map((movement) => ({ movement, side: 'left', grade: '5' }));
const weak = (...movements: readonly string[]) => movements.map((movement) => ({ movement, side: 'left', grade: '2' }));

const dropped = {
  person: { ageYears: 70, sex: 'male' },
  history: {
    onset: { pace: 'hyperacute', durationDays: 1 },
    symptoms: claims('leg-weakness'),
    conditions: claims('hypertension'),
  },
  findings: {
    power: [...weak('ankle-dorsiflexion', 'great-toe-extension'), ...strong('hip-flexion', 'knee-extension')],
  },
};

describe('a hand or a foot that failed at once', () => {
  it('may be that of the motor strip, where arteries are at risk and nothing pressed on a nerve', () => {
    const sites = localise(bedsideExam(dropped)).localisations.slice(0, 3);
    const cortex = sites.find(({ site }) => site === 'cortex-anterior-cerebral');
    expect(cortex?.side).toBe('right');
  });

  it('of the hand is that of the hand area', () => {
    const findings = {
      power: [...weak('wrist-extension', 'finger-extension', 'finger-abduction'), ...strong('elbow-flexion')],
    };
    const history = { ...dropped.history, symptoms: claims('arm-weakness') };
    expect(localise(bedsideExam({ ...dropped, history, findings })).localisations[0]?.site).toBe('cortex-hand-area');
  });

  const { history, findings } = dropped;
  it.each([
    ['came over days', { ...dropped, history: { ...history, onset: { pace: 'acute', durationDays: 3 } } }],
    ['was pressed upon', { ...dropped, history: { ...history, exposures: claims('leg-crossing') } }],
    ['hurts', { ...dropped, history: { ...history, symptoms: claims('radicular-leg-pain') } }],
    [
      'is weak at the hip too',
      { ...dropped, findings: { power: [...findings.power.slice(0, 2), ...weak('hip-flexion')] } },
    ],
    [
      'has lost its jerk',
      { ...dropped, findings: { ...findings, reflexes: [{ reflex: 'ankle', side: 'left', grade: '0' }] } },
    ],
    [
      'turns in and does not turn out',
      {
        ...dropped,
        findings: { power: [...weak('ankle-dorsiflexion', 'ankle-eversion'), ...strong('ankle-inversion')] },
      },
    ],
  ])('is left to its nerves where it %s', (_, exam) => {
    expect(struckEnd(bedsideExam(exam))).toEqual([]);
  });

  it('is left to its nerves in the young whose arteries are well', () => {
    const exam = bedsideExam({ ...dropped, person: { ageYears: 30 }, history: { ...history, conditions: [] } });
    expect(struckEnd(exam).length).toBeGreaterThan(0);
    expect(struckLimbShifts(exam)).toEqual([]);
  });
});
