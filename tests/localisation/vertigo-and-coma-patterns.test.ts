import { describe, expect, it } from 'vitest';
import { comaPatternShifts } from '../../src/localisation/inference/coma-patterns.ts';
import { headPatternShifts } from '../../src/localisation/inference/head-patterns.ts';
import { vertigoPatternShifts } from '../../src/localisation/inference/vertigo-patterns.ts';
import { createLocaliser } from '../../src/localisation/localise.ts';
import { bedsideExam } from '../support/bedside.ts';
import { coordination, midline, power, reflexes, signs, tests } from './case-writing.ts';
import { oddsBy } from './odds.ts';

const has = (...keys: readonly string[]) => ({ symptoms: keys.map((key) => ({ key, present: true })) });
const atNight = { pace: 'acute' };

describe('what vertigo says with limbs and eyes', () => {
  const odds = oddsBy(vertigoPatternShifts);
  const hanging = tests({ 'dix-hallpike': [null, 'positive'] });

  it.each([
    ['misses', { coordination: coordination({ 'heel-shin': [null, 'impaired'] }), specialTests: hanging }],
    ['sinks', { specialTests: [...hanging, ...tests({ 'pronator-drift': [null, 'positive'] })] }],
    ['is weak', { power: power({ 'shoulder-abduction': [null, '4'] }), specialTests: hanging }],
  ])('is not of the ear beside a limb of one half that %s', (_, findings) => {
    const draft = { history: { onset: atNight, ...has('positional-vertigo') }, findings };
    expect(odds(draft, 'vestibular-nerve', 'cranial-nerve')).toBeLessThan(1);
    expect(odds(draft, 'cerebellar-vermis', 'cerebellum')).toBeGreaterThan(1);
  });

  it('stays of the ear beside sound limbs, in feet that sway both, and after years', () => {
    const positional = has('positional-vertigo');
    const sound = coordination({ 'heel-shin': 'normal' });
    const both = coordination({ 'heel-shin': 'impaired' });
    const one = coordination({ 'heel-shin': [null, 'impaired'] });
    const of = (onset: object, heels: object[]) =>
      odds(
        { history: { onset, ...positional }, findings: { coordination: heels, specialTests: hanging } },
        'vestibular-nerve',
        'cranial-nerve',
      );
    expect(of(atNight, sound)).toBe(1);
    expect(of(atNight, both)).toBe(1);
    expect(of({ pace: 'chronic' }, one)).toBe(1);
    expect(of(atNight, one)).toBeLessThan(1);
  });

  it('leaves the ear where an old man sways at once, and where nobody of any age can stand', () => {
    const of = (ageYears: number, gait: string, symptom = 'vertigo', pace = 'acute') =>
      odds(
        {
          person: { ageYears },
          history: { onset: { pace }, ...has(symptom) },
          findings: { gait: midline({ [gait]: true }) },
        },
        'vestibular-nerve',
        'cranial-nerve',
      );
    expect(of(70, 'ataxic')).toBeLessThan(1);
    expect(of(30, 'ataxic')).toBe(1);
    expect(of(30, 'unable-to-stand')).toBeLessThan(1);
    expect(of(70, 'ataxic', 'unsteadiness')).toBe(1);
    expect(of(70, 'ataxic', 'vertigo', 'chronic')).toBe(1);
  });

  it('eyes that beat with a sound head impulse on both sides are not of the nerve', () => {
    const of = (impulse: [boolean, boolean]) =>
      odds(
        {
          history: { onset: atNight, ...has('vertigo') },
          findings: { cranialNerves: signs({ nystagmus: [true, null], 'abnormal-head-impulse': impulse }) },
        },
        'vestibular-nerve',
        'cranial-nerve',
      );
    expect(of([false, false])).toBeLessThan(1);
    expect(of([false, true])).toBe(1);
  });
});

describe('what coma says with the brainstem and the halves of the body', () => {
  const odds = oddsBy(comaPatternShifts);
  const coma = midline({ coma: true });
  const lost = signs({ 'unreactive-pupil': true, 'absent-corneal-reflex': true });

  it('reflexes that are lost on both sides are not of nerves at the base of the skull', () => {
    const draft = { findings: { higherFunction: coma, cranialNerves: lost } };
    expect(odds(draft, 'cavernous-sinus', 'cranial-nerve')).toBeLessThan(1);
    expect(odds(draft, 'basal-meningeal-process', 'meninges')).toBeLessThan(1);
    expect(odds(draft, 'brainstem-diffuse', 'brainstem')).toBe(1);
    expect(odds(draft, 'raised-intracranial-pressure', 'intracranial-pressure')).toBe(1);
  });

  it('nerves may fail in who is awake, and on one side in coma', () => {
    const awake = { findings: { higherFunction: midline({ drowsiness: true }), cranialNerves: lost } };
    expect(odds(awake, 'cavernous-sinus', 'cranial-nerve')).toBe(1);
    const oneSide = { findings: { higherFunction: coma, cranialNerves: signs({ 'dilated-pupil': [true, null] }) } };
    expect(odds(oneSide, 'oculomotor-nerve', 'cranial-nerve')).toBe(1);
  });

  it('one place of the hemispheres shows on one half of the body', () => {
    const both = { higherFunction: coma, plantars: [{ side: 'both', response: 'extensor' }] };
    expect(odds({ findings: both }, 'cortex-parasagittal', 'hemisphere')).toBeLessThan(1);
    const one = { higherFunction: coma, plantars: [{ side: 'left', response: 'extensor' }] };
    expect(odds({ findings: one }, 'cortex-middle-cerebral', 'hemisphere')).toBe(1);
  });
});

describe('what a face or a chin says by itself', () => {
  const odds = oddsBy(headPatternShifts);
  const face = signs({ 'facial-weakness': [true, null] });
  const mouth = midline({ drooling: true, dysarthria: true });

  it('one whole half of the face that slurs and drools is one nerve, until limbs fail with it', () => {
    const alone = { findings: { cranialNerves: [...face, ...mouth] } };
    expect(odds(alone, 'demyelinating-polyradiculoneuropathy', 'polyradiculoneuropathy')).toBeLessThan(1);
    expect(odds(alone, 'facial-nerve', 'cranial-nerve')).toBe(1);
    const weak = { findings: { cranialNerves: [...face, ...mouth], power: power({ 'hip-flexion': '4' }) } };
    expect(odds(weak, 'demyelinating-polyradiculoneuropathy', 'polyradiculoneuropathy')).toBe(1);
    const told = { ...alone, history: has('paraesthesiae') };
    expect(odds(told, 'demyelinating-polyradiculoneuropathy', 'polyradiculoneuropathy')).toBe(1);
    const two = { findings: { cranialNerves: signs({ 'facial-weakness': true }) } };
    expect(odds(two, 'demyelinating-polyradiculoneuropathy', 'polyradiculoneuropathy')).toBe(1);
  });

  it('nobody names a sixth nerve without an eye that stays in or anything seen double', () => {
    expect(odds({ findings: { cranialNerves: face } }, 'abducens-nerve', 'cranial-nerve')).toBeLessThan(1);
    const turned = [...face, ...signs({ 'sixth-nerve-palsy': [true, null] })];
    expect(odds({ findings: { cranialNerves: turned } }, 'abducens-nerve', 'cranial-nerve')).toBe(1);
    const double = { findings: { cranialNerves: face }, history: has('diplopia') };
    expect(odds(double, 'abducens-nerve', 'cranial-nerve')).toBe(1);
  });
});

describe('a whole brain or brainstem that sleeps', () => {
  const { localise } = createLocaliser();
  const first = (draft: Parameters<typeof bedsideExam>[0]) => localise(bedsideExam(draft)).localisations[0]?.site;
  const atOnce = { pace: 'hyperacute', durationDays: 0.2 };

  it('with narrow pupils has taken an opioid, and with lost gaze and corneas has a pons that bleeds', () => {
    const asleep = { higherFunction: midline({ coma: true }) };
    const narrow = signs({ 'small-pupil': true });
    const history = { onset: atOnce };
    expect(
      first({
        history: { ...history, medications: [{ key: 'opioid', present: true }] },
        findings: { ...asleep, cranialNerves: narrow },
      }),
    ).toBe('diffuse-encephalopathy');
    const lost = signs({ 'absent-corneal-reflex': true, 'gaze-palsy': true });
    expect(first({ history, findings: { ...asleep, cranialNerves: [...narrow, ...lost] } })).toBe('brainstem-diffuse');
  });

  it.each([
    ['without jerks', { reflexes: reflexes({ biceps: '0', knee: '0', ankle: '0' }) }],
    ['with extensor plantars', { plantars: [{ side: 'both', response: 'extensor' }] }],
  ])('is inflamed after an infection, where eyes and balance are lost %s', (_, more) => {
    const history = { onset: { pace: 'acute', durationDays: 6 }, ...has('preceding-infection', 'diplopia') };
    const findings = {
      higherFunction: midline({ drowsiness: true }),
      cranialNerves: signs({ ophthalmoplegia: true }),
      gait: midline({ ataxic: true }),
      ...more,
    };
    expect(first({ history, findings })).toBe('brainstem-diffuse');
  });
});
