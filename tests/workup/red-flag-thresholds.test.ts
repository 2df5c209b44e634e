import { describe, expect, it } from 'vitest';
import { assessRedFlags } from '../../src/workup/red-flags.ts';
import { bedsideExam, localised, site } from '../support/bedside.ts';
import { days, has, hours, measured, on, type Parts, power, signs, weeks } from './red-flag-stories/story.ts';

/** A flag that hangs on a number: the number on the side that raises it, and its neighbour that does not. */
interface Threshold {
  readonly flag: string;
  /** Work that gives the limit, or that it was judged. */
  readonly by: string;
  readonly raises: number;
  readonly spares: number;
  readonly withValue: (value: number) => Parts;
}

const clouded = { higherFunction: signs('confusion') };
const result = (key: string, unit: string, others: Parts) => (value: number) => ({
  ...others,
  results: [measured(key, value, unit)],
});
const weakToday = { history: { onset: hours }, findings: { power: power('both', '3', 'hip-flexion') } };

const thresholds: readonly Threshold[] = [
  {
    flag: 'dangerous-sodium-or-calcium',
    by: 'Spasovski 2014: profound hyponatraemia is under 125 mmol/L',
    raises: 124,
    spares: 125,
    withValue: result('sodium', 'mmol/L', {}),
  },
  {
    flag: 'dangerous-sodium-or-calcium',
    by: 'judged: over 155 mmol/L',
    raises: 156,
    spares: 155,
    withValue: result('sodium', 'mmol/L', {}),
  },
  {
    flag: 'dangerous-sodium-or-calcium',
    by: 'Turner 2016: symptoms under about 1.9 mmol/L',
    raises: 1.89,
    spares: 1.9,
    withValue: result('calcium', 'mmol/L', {}),
  },
  {
    flag: 'dangerous-sodium-or-calcium',
    by: 'Walsh 2016: prompt treatment from 3.0 mmol/L',
    raises: 3.01,
    spares: 3,
    withValue: result('calcium', 'mmol/L', {}),
  },
  {
    flag: 'potassium-paralysis',
    by: 'judged: under 3 mmol/L',
    raises: 2.9,
    spares: 3,
    withValue: result('potassium', 'mmol/L', weakToday),
  },
  {
    flag: 'potassium-paralysis',
    by: 'judged: over 6 mmol/L',
    raises: 6.1,
    spares: 6,
    withValue: result('potassium', 'mmol/L', weakToday),
  },
  {
    flag: 'hypoglycaemia-with-deficit',
    by: 'joint British societies: treated under 4 mmol/L (recalled)',
    raises: 3.9,
    spares: 4,
    withValue: result('glucose-random', 'mmol/L', { history: { onset: hours } }),
  },
  {
    flag: 'suspected-giant-cell-arteritis',
    by: 'ACR/EULAR 2022: erythrocyte sedimentation rate of 50 mm/h',
    raises: 50,
    spares: 49,
    withValue: result('esr', 'mm/h', {
      person: { ageYears: 70 },
      history: { onset: weeks, symptoms: has('new-headache') },
    }),
  },
  {
    flag: 'suspected-giant-cell-arteritis',
    by: 'ACR/EULAR 2022: C-reactive protein of 10 mg/L',
    raises: 10,
    spares: 9,
    withValue: result('crp', 'mg/L', {
      person: { ageYears: 70 },
      history: { onset: weeks, symptoms: has('new-headache') },
    }),
  },
  {
    flag: 'suspected-giant-cell-arteritis',
    by: 'ACR/EULAR 2022: age of 50',
    raises: 50,
    spares: 49,
    withValue: (ageYears) => ({
      person: { ageYears },
      history: { onset: weeks, symptoms: has('new-headache', 'scalp-tenderness') },
    }),
  },
  {
    flag: 'compressive-third-nerve-palsy',
    by: 'Fang 2017: under 50 years',
    raises: 49,
    spares: 50,
    withValue: (ageYears) => ({
      person: { ageYears },
      history: { onset: days, conditions: has('hypertension') },
      findings: { cranialNerves: on('left', 'third-nerve-palsy') },
    }),
  },
  {
    flag: 'suspected-spinal-infection',
    by: 'common practice: 38 degrees are a fever',
    raises: 38,
    spares: 37.9,
    withValue: result('body-temperature', 'Cel', {
      history: { onset: days, symptoms: has('back-pain'), conditions: has('diabetes-mellitus') },
    }),
  },
  {
    flag: 'suspected-meningitis',
    by: 'judged: a C-reactive protein of 50 mg/L stands for fever in a clouded mind',
    raises: 50,
    spares: 49,
    withValue: result('crp', 'mg/L', {
      history: { onset: { pace: 'subacute', durationDays: 50 }, symptoms: has('headache') },
      findings: clouded,
    }),
  },
  {
    flag: 'suspected-eclampsia',
    by: 'NICE NG133: hypertension in pregnancy from 140 mmHg',
    raises: 140,
    spares: 139,
    withValue: result('systolic-pressure-supine', 'mm[Hg]', {
      history: { onset: days, symptoms: has('new-headache'), conditions: has('pregnancy') },
    }),
  },
  {
    flag: 'rhabdomyolysis',
    by: 'judged: from a creatine kinase of 5000 U/L the kidneys are in danger',
    raises: 5000,
    spares: 4999,
    withValue: result('creatine-kinase', 'U/L', { history: { onset: days, symptoms: has('muscle-pain') } }),
  },
  {
    flag: 'suspected-vasculitic-neuropathy',
    by: 'common definition of hypereosinophilia: 1.5 x 10^9/L',
    raises: 1.5,
    spares: 1.4,
    withValue: result('eosinophils', '10*9/L', {
      history: { onset: weeks, course: 'progressive' },
      findings: { power: power('left', '2', 'ankle-dorsiflexion') },
    }),
  },
  {
    flag: 'acute-facial-palsy',
    by: 'Baugh 2013: steroid within 72 hours',
    raises: 3,
    spares: 4,
    withValue: (durationDays) => ({
      history: { onset: { pace: 'acute', durationDays } },
      findings: { cranialNerves: on('left', 'facial-weakness') },
    }),
  },
  {
    flag: 'acute-ascending-weakness',
    by: 'van Doorn 2023: the weakness grows for at most four weeks',
    raises: 28,
    spares: 29,
    withValue: (durationDays) => ({
      history: { onset: { pace: 'subacute', durationDays }, course: 'progressive' },
      findings: {
        power: power('both', '3', 'hip-flexion'),
        reflexes: [{ reflex: 'knee', side: 'both', grade: '0' }],
      },
    }),
  },
  {
    flag: 'suspected-encephalitis',
    by: 'Graus 2016: under three months',
    raises: 92,
    spares: 93,
    withValue: (durationDays) => ({
      history: { onset: { pace: 'subacute', durationDays }, symptoms: has('seizure') },
      findings: clouded,
    }),
  },
  {
    flag: 'newborn-with-neurological-signs',
    by: 'World Health Organization: a newborn is at most 28 days old, as hundredths of a year tell it',
    raises: 28 / 365.25,
    spares: 30 / 365.25,
    withValue: (ageYears) => ({
      person: { ageYears },
      history: { onset: { pace: 'hyperacute', durationDays: 0.3 }, symptoms: has('seizure') },
    }),
  },
];

const isRaised = (flag: string, parts: Parts): boolean =>
  assessRedFlags(bedsideExam(parts), localised(site('common-fibular-nerve', 'nerve'))).some(
    ({ key, state }) => key === flag && state === 'present',
  );

describe('red flags that hang on a number', () => {
  it.each(thresholds)('$flag: at $raises and not at $spares ($by)', ({ flag, raises, spares, withValue }) => {
    expect(isRaised(flag, withValue(raises))).toBe(true);
    expect(isRaised(flag, withValue(spares))).toBe(false);
  });

  // FHIR R4, Quantity.comparator: the number is a bound. "< 10" says nothing of 10.
  it.each([
    ['<', 10, false],
    ['>', 10, true],
    ['>=', 10, true],
    ['>', 8, false],
  ] as const)('take a C-reactive protein of %s %i mg/L for a bound: fever %s', (comparator, value, isFever) => {
    const bound = measured('crp', value, 'mg/L');
    const results = [{ ...bound, valueQuantity: { ...bound.valueQuantity, comparator } }];
    const history = { onset: days, symptoms: has('back-pain'), conditions: has('diabetes-mellitus') };
    expect(isRaised('suspected-spinal-infection', { history, results })).toBe(isFever);
  });

  it.each([
    ['sodium', '<', 125, true],
    ['sodium', '<', 130, false],
    ['sodium', '>', 155, true],
    ['sodium', '>=', 155, false],
  ] as const)('raise %s %s %i mmol/L: %s', (key, comparator, value, raised) => {
    const bound = measured(key, value, 'mmol/L');
    const results = [{ ...bound, valueQuantity: { ...bound.valueQuantity, comparator } }];
    expect(isRaised('dangerous-sodium-or-calcium', { results })).toBe(raised);
  });

  it('call the breathing not assessable when its bound leaves the limit open', () => {
    const bound = measured('vital-capacity-per-kg', 15, 'mL/kg');
    const exam = bedsideExam({
      history: { onset: days, course: 'progressive' },
      findings: {
        power: power('both', '3', 'hip-flexion'),
        reflexes: [{ reflex: 'knee', side: 'both', grade: '0' }],
      },
      results: [{ ...bound, valueQuantity: { ...bound.valueQuantity, comparator: '>' } }],
    });
    const flag = assessRedFlags(
      exam,
      localised(site('demyelinating-polyradiculoneuropathy', 'polyradiculoneuropathy')),
    );
    expect(flag.find(({ key }) => key === 'neuromuscular-respiratory-failure')?.state).toBe('not-assessable');
  });
});
