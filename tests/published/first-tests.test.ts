import { describe, expect, it } from 'vitest';
import { rankCauses } from '../../src/differential/rank-causes.ts';
import type { Localisation } from '../../src/localisation/localisation.ts';
import { proposeWorkup, type Workup, workupRules } from '../../src/workup/propose-workup.ts';
import { assessRedFlags, redFlagRules } from '../../src/workup/red-flags.ts';
import { bedsideExam, localised, nothingFound, site } from '../support/bedside.ts';

type Parts = Record<string, unknown>;

function workupOf(parts: Parts, localisation: Localisation): Workup {
  const exam = bedsideExam(parts);
  return proposeWorkup(exam, localisation, rankCauses(exam, localisation), assessRedFlags(exam, localisation));
}

const keysOf = ({ workup }: Workup) => workup.map(({ key }) => key);
const needlessIn = ({ needless }: Workup) => needless.map(({ key }) => key);
const measured = (key: string, value: number, unit: string) => ({
  key,
  valueQuantity: { value, unit, code: unit, system: 'http://unitsofmeasure.org' },
});
const has = (...keys: readonly string[]) => keys.map((key) => ({ key, present: true }));

const distal = localised(site('length-dependent-polyneuropathy', 'polyneuropathy'));
const chronic = { onset: { pace: 'chronic', durationDays: 900 } };

// Saporta 2011: with a motor velocity of the arm under 38 m/s PMP22 first, found in 70 % of type 1; axonal genes when the
// velocity is kept. The conduction study comes before the gene.
describe('genes of hereditary neuropathy', () => {
  const family = [
    { key: 'similar-disorder', present: true, relation: 'parent' },
    { key: 'high-arched-feet', present: true, relation: 'parent' },
  ];
  const feet = { inspection: [{ sign: 'pes-cavus', side: 'both', present: true }] };
  const hereditary = (...results: readonly unknown[]) =>
    keysOf(
      workupOf(
        {
          person: { ageYears: 30 },
          history: { onset: { pace: 'chronic', durationDays: 6000 }, family },
          findings: feet,
          results,
        },
        distal,
      ),
    );

  it('wait for the conduction study', () => {
    expect(hereditary()).toContain('nerve-conduction-study');
    expect(hereditary()).not.toContain('pmp22-gene');
  });

  it('begin with PMP22 at 24 m/s, and with the axonal genes at 46 m/s', () => {
    const slow = hereditary(measured('motor-conduction-velocity-arm', 24, 'm/s'), {
      key: 'nerve-conduction-pattern',
      value: 'demyelinating-uniform',
    });
    expect(slow).toContain('pmp22-gene');
    expect(slow).not.toContain('axonal-neuropathy-genes');
    const kept = hereditary(measured('motor-conduction-velocity-arm', 46, 'm/s'), {
      key: 'nerve-conduction-pattern',
      value: 'axonal',
    });
    expect(kept).toContain('axonal-neuropathy-genes');
    expect(kept).not.toContain('pmp22-gene');
  });
});

// NICE NG239: a total vitamin B12 of 133 to 258 pmol/L is borderline and is followed by methylmalonic acid.
it.each([
  [200, true],
  [420, false],
])('a vitamin B12 of %i pmol/L asks for homocysteine and methylmalonic acid: %s', (value, asks) => {
  const results = [measured('vitamin-b12', value, 'pmol/L')];
  expect(keysOf(workupOf({ history: chronic, results }, distal)).includes('homocysteine')).toBe(asks);
});

describe('tests that guidance finds needless', () => {
  it('no imaging of a length-dependent neuropathy (NICE NG127), unless the reflexes are brisk', () => {
    const plain = workupOf({ history: chronic }, distal);
    expect(needlessIn(plain)).toContain('no-imaging-of-length-dependent-neuropathy');
    expect(keysOf(plain)).not.toContain('mri-brain');
    const brisk = { plantars: [{ side: 'both', response: 'extensor' }] };
    expect(needlessIn(workupOf({ history: chronic, findings: brisk }, distal))).toEqual([]);
  });

  it('no routine blood tests or imaging of a typical Bell palsy (Baugh 2013)', () => {
    const palsy = workupOf(
      {
        person: { ageYears: 34 },
        history: { onset: { pace: 'acute', durationDays: 2 }, symptoms: has('ear-pain') },
        findings: { cranialNerves: [{ sign: 'facial-weakness', side: 'left', present: true }] },
      },
      localised(site('facial-nerve', 'cranial-nerve')),
    );
    expect(needlessIn(palsy)).toContain('no-routine-tests-of-bell-palsy');
    for (const needless of ['mri-brain', 'vital-capacity', 'electrocardiogram'])
      expect(keysOf(palsy)).not.toContain(needless);
  });

  it('no imaging of positional vertigo with a positive Dix-Hallpike manoeuvre (Bhattacharyya 2017)', () => {
    const vertigo = workupOf(
      {
        person: { ageYears: 60 },
        history: {
          onset: { pace: 'acute', durationDays: 8 },
          course: 'fluctuating',
          symptoms: has('positional-vertigo'),
        },
        findings: { specialTests: [{ test: 'dix-hallpike', side: 'right', result: 'positive' }] },
      },
      localised(site('vestibular-nerve', 'cranial-nerve')),
    );
    expect(needlessIn(vertigo)).toContain('no-imaging-of-positional-vertigo');
    expect(keysOf(vertigo)).toEqual([]);
  });

  // Where nobody has asked for the saddle and the bladder the red flag of the cauda equina asks for the image.
  const denied = ['saddle-numbness', 'bladder-disturbance'].map((key) => ({ key, present: false }));

  // NICE NG59: imaging only if it would change what is done; marked or growing weakness would.
  it.each([
    ['4+', 'improving', false],
    ['2', 'progressive', true],
  ])('sciatica of three weeks with power %s, %s, is imaged: %s', (grade, course, isImaged) => {
    const sciatica = workupOf(
      {
        person: { ageYears: 41 },
        history: {
          onset: { pace: 'subacute', durationDays: 21 },
          course,
          symptoms: [...has('radicular-leg-pain', 'back-pain'), ...denied],
        },
        findings: { power: [{ movement: 'great-toe-extension', side: 'left', grade }] },
      },
      localised(site('nerve-root', 'root', 1, 'L5')),
    );
    expect(keysOf(sciatica).includes('mri-lumbar-spine')).toBe(isImaged);
    expect(needlessIn(sciatica).includes('no-imaging-of-recent-radiculopathy')).toBe(!isImaged);
  });

  // NICE NG240: a lumbar puncture is unsafe below a mass, whatever else asks for it.
  it('no lumbar puncture below a mass, even with fever and a clouded mind', () => {
    const abscess = workupOf(
      {
        history: { onset: { pace: 'acute', durationDays: 5 }, symptoms: has('fever', 'headache') },
        findings: { higherFunction: [{ sign: 'confusion', present: true }] },
        results: [{ key: 'ct-head', value: 'space-occupying' }],
      },
      localised(site('cortex-temporal', 'hemisphere')),
    );
    expect(keysOf(abscess)).not.toContain('lumbar-puncture');
    expect(needlessIn(abscess)).toContain('no-lumbar-puncture-below-a-mass');
  });

  // The same: signs of raised pressure with a focal deficit are imaged first; a fever makes it a meningitis.
  it.each([
    [[], true],
    [['fever'], false],
  ] as const)('a lumbar puncture waits for the image in pressure with a focal deficit, with %j: %s', (also, waits) => {
    const pressed = workupOf(
      {
        person: { ageYears: 7 },
        history: {
          onset: { pace: 'subacute', durationDays: 42 },
          course: 'progressive',
          symptoms: has('morning-headache', ...also),
        },
        findings: { plantars: [{ side: 'right', response: 'extensor' }] },
      },
      localised(site('brainstem-diffuse', 'brainstem')),
    );
    expect(needlessIn(pressed).includes('no-lumbar-puncture-before-an-image')).toBe(waits);
  });
});

describe('red flags and their first tests', () => {
  const today = { pace: 'hyperacute', durationDays: 0.2 };
  const cold = {
    inspection: [{ sign: 'colour-or-temperature-change', site: 'leg-below-knee', side: 'left', present: true }],
  };
  const danger: readonly (readonly [string, Parts, readonly string[]])[] = [
    [
      // Krumholz 2007: electroencephalogram and image, level B; NICE NG217: electrocardiogram for everybody.
      'a first seizure',
      { history: { onset: today, symptoms: has('seizure') } },
      ['electroencephalogram', 'mri-brain', 'electrocardiogram', 'blood-glucose', 'sodium'],
    ],
    [
      // Spasovski 2014: osmolality and sodium of a spot urine first.
      'a sodium of 112 mmol/L',
      { history: { onset: today }, results: [measured('sodium', 112, 'mmol/L')] },
      ['osmolality', 'renal-function'],
    ],
    [
      // Walsh 2016 and Turner 2016: electrocardiogram, parathyroid hormone, magnesium, creatinine.
      'a calcium of 1.6 mmol/L',
      { history: { onset: today }, results: [measured('calcium', 1.6, 'mmol/L')] },
      ['electrocardiogram', 'parathyroid-hormone', 'magnesium', 'renal-function'],
    ],
    [
      // Common practice; cholinesterase after Adams and Victor.
      'an organophosphate',
      { history: { onset: today, symptoms: has('vomiting'), exposures: has('organophosphate') } },
      ['blood-gas', 'electrocardiogram', 'cholinesterase'],
    ],
    [
      'a dose of thallium',
      { history: { onset: today, symptoms: has('abdominal-pain'), exposures: has('thallium') } },
      ['heavy-metals'],
    ],
    [
      // ESVS 2020: CT angiography is the first imaging where it does not delay treatment.
      'a cold numb leg',
      { history: { onset: today, symptoms: has('leg-pain', 'numbness') }, findings: cold },
      ['limb-angiography', 'electrocardiogram', 'creatine-kinase'],
    ],
  ];

  it.each(danger)('%s asks for them', (_, parts, expected) => {
    expect(keysOf(workupOf(parts, nothingFound))).toEqual(expect.arrayContaining([...expected]));
  });

  it('a sodium that is off asks for no parathyroid hormone, carbon monoxide for no cholinesterase', () => {
    const salt = workupOf({ results: [measured('sodium', 112, 'mmol/L')] }, nothingFound);
    expect(keysOf(salt)).not.toContain('parathyroid-hormone');
    const gas = workupOf(
      { history: { onset: today, symptoms: has('headache'), exposures: has('carbon-monoxide') } },
      nothingFound,
    );
    expect(keysOf(gas)).toContain('blood-gas');
    expect(keysOf(gas)).not.toContain('cholinesterase');
  });

  /** Dangers that are met with an act at once, and for which no test comes first. */
  const withoutTest: ReadonlySet<string> = new Set([
    'acute-facial-palsy', // Baugh 2013: no routine tests
    'complete-nerve-injury', // the surgeon's opinion
    'harmful-medicine', // it is stopped or changed
    'suspected-tetanus', // the diagnosis is clinical
  ]);

  it('each have one, but for those that need an act and no test', () => {
    const asking = new Set(workupRules.flatMap(({ flags = [] }) => flags));
    expect(
      redFlagRules
        .map(({ key }) => key)
        .filter((key) => !asking.has(key))
        .toSorted(),
    ).toEqual([...withoutTest].toSorted());
  });
});
