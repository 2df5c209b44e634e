import { describe, expect, it } from 'vitest';
import { findItem } from '../../src/exam/catalogue/catalogue.ts';
import { hypotheses, noLesionIndex } from '../../src/localisation/hypotheses/hypotheses.ts';
import { ageingShifts } from '../../src/localisation/inference/ageing-pattern.ts';
import { createLocaliser } from '../../src/localisation/localise.ts';
import { contextOf } from '../../src/localisation/observation/context.ts';
import { type ProbeTarget, probeModel } from '../../src/localisation/observation/probe-models.ts';
import { bedsideExam } from '../support/bedside.ts';
import { examBody, plantars, power, reflexes, sensation } from './case-writing.ts';
import { oddsBy } from './odds.ts';

const atAge = (ageYears: number) => ({ onset: {}, person: { ageYears } });

/** Chance of an abnormal result in a person without a lesion. */
function inHealth(
  target: ProbeTarget | null,
  from60: number,
  abnormalFrom: (value: string | number) => boolean,
): number {
  const model = target === null ? null : probeModel(target);
  const healthy = hypotheses[noLesionIndex];
  if (model === null || healthy === undefined) throw new RangeError('no model');
  const shares = model.distribution(model.state(healthy), { chronicity: 1, from60 });
  return model.values.reduce<number>(
    (sum, value, index) => (abnormalFrom(value) ? sum + (shares[index] ?? 0) : sum),
    0,
  );
}

function target(section: 'reflexes' | 'sensation', key: string, landmark?: string): ProbeTarget | null {
  const item = findItem(section, key);
  if (item === undefined) return null;
  return landmark === undefined
    ? { item, side: 'left' }
    : { item, side: 'left', place: { kind: 'landmark', key: landmark } };
}

// Vrancken 2006, pooled from 50 studies of 9,996 healthy adults: from 60 years on the ankle jerks are absent in 23 % (16 to
// 30), vibration at the great toe in 29 % (18 to 38) and at the ankle in 15 % (11 to 20); under 60 essentially never.
describe('what age alone does, within the published intervals', () => {
  it.each([
    ['reduced or absent ankle jerk', target('reflexes', 'ankle'), ['0', 'trace'], 0.16, 0.3],
    [
      'lost vibration at the great toe',
      target('sensation', 'vibration', 'great-toe'),
      ['reduced', 'absent', 'altered'],
      0.18,
      0.38,
    ],
    [
      'lost vibration at the ankle',
      target('sensation', 'vibration', 'ankle'),
      ['reduced', 'absent', 'altered'],
      0.11,
      0.2,
    ],
  ] as const)('%s from 60 years on', (_, where, values, least, most) => {
    const chance = inHealth(where, 1, (value) => (values as readonly (string | number)[]).includes(value));
    expect(chance).toBeGreaterThanOrEqual(least);
    expect(chance).toBeLessThanOrEqual(most);
  });

  it('hardly ever loses an ankle jerk under 60', () => {
    expect(inHealth(target('reflexes', 'ankle'), 0, (value) => value === '0')).toBeLessThan(0.05);
  });
});

// Mold, as reported in Am Fam Physician 2005: from 85 years on 54 % have a deficit at both feet, 86 % of those the ankle jerks.
describe('what great age does', () => {
  it('takes the ankle jerks of about half of the people from 85 on', () => {
    const chance = inHealth(
      target('reflexes', 'ankle'),
      contextOf(atAge(88)).from60,
      (value) => value === '0' || value === 'trace',
    );
    expect(chance).toBeGreaterThanOrEqual(0.3);
    expect(chance).toBeLessThanOrEqual(0.55);
  });
});

// The age trap: what is usual at 82 is a neuropathy at 45.
describe('absent ankle jerks and lost vibration at the toes, and nothing else', () => {
  const localiser = createLocaliser();
  const answerAt = (age: number) =>
    localiser.localise(
      bedsideExam(
        examBody({
          age,
          findings: {
            power: power({ 'great-toe-extension': '5', 'ankle-dorsiflexion': '5', 'hip-flexion': '5' }),
            reflexes: reflexes({ biceps: '2', knee: '2', ankle: '0' }),
            plantars: plantars('flexor'),
            sensation: [
              ...sensation('vibration', { 'great-toe': 'absent', ankle: 'normal' }),
              ...sensation('pinprick', { 'great-toe': 'normal' }),
            ],
          },
        }),
      ),
    );

  it('are put down to age at 82', () => {
    const { localisations, conclusion } = answerAt(82);
    expect(localisations[0]?.site).toBe('no-lesion');
    expect(conclusion).toBe('no-abnormality');
  });

  it('are a polyneuropathy at 45', () => {
    expect(answerAt(45).localisations[0]?.kind).toBe('polyneuropathy');
  });
});

// What age takes at both feet it takes together, so that nothing need be looked for in one nerve of one leg.
it('age, not one nerve, is the answer where a person of 84 without complaints has lost the same at both feet', () => {
  const findings = {
    reflexes: reflexes({ ankle: '0', knee: '2' }),
    sensation: [...sensation('vibration', { 'great-toe': 'reduced' }), ...sensation('pinprick', { toes: 'normal' })],
  };
  const history = { symptoms: ['numbness', 'falls'].map((key) => ({ key, present: false })) };
  const [first, ...others] = createLocaliser().localise(
    bedsideExam({ person: { ageYears: 84 }, history, findings }),
  ).localisations;
  expect(first?.site).toBe('no-lesion');
  for (const { kind, probability } of others.filter(({ kind }) => kind === 'nerve' || kind === 'root'))
    expect(probability, kind).toBeLessThan(0.1);
});

// Signs like those of parkinsonism in three in ten from 75 on: Bennett 1996 (recalled).
describe('careful steps of the old', () => {
  const odds = oddsBy(ageingShifts);
  const careful = {
    gait: [
      { sign: 'cautious', present: true },
      { sign: 'reduced-arm-swing', side: 'both', present: true },
    ],
  };
  const still = { sign: 'resting-tremor', site: 'hand', side: 'both', present: false };

  it('may be of age, where tremor at rest was looked for and is not there', () => {
    const draft = { person: { ageYears: 84 }, findings: { ...careful, involuntaryMovements: [still] } };
    expect(odds(draft, 'no-lesion', 'none')).toBeGreaterThan(1);
    expect(odds(draft, 'akinetic-rigid-syndrome', 'basal-ganglia')).toBeLessThan(1);
  });

  it('are left as they are before that age, unlooked for, or with tremor at rest', () => {
    const findings = { ...careful, involuntaryMovements: [still] };
    expect(odds({ person: { ageYears: 60 }, findings }, 'no-lesion', 'none')).toBe(1);
    expect(odds({ person: { ageYears: 84 }, findings: careful }, 'no-lesion', 'none')).toBe(1);
    const shaking = { ...careful, involuntaryMovements: [{ ...still, present: true }] };
    expect(odds({ person: { ageYears: 84 }, findings: shaking }, 'no-lesion', 'none')).toBe(1);
  });
});
