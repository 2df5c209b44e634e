import { describe, expect, it } from 'vitest';
import { type Asked, testsOf } from './asked-tests.ts';
import { has, signs } from './red-flag-stories/story.ts';

const weeks = { pace: 'subacute', durationDays: 40 };
const years = { pace: 'chronic', durationDays: 1500 };
const days = { pace: 'acute', durationDays: 2 };

const asked: readonly Asked[] = [
  {
    what: 'a head that drops, and not a neck that aches',
    test: 'thyroid-stimulating-hormone',
    asks: { history: { onset: years, symptoms: has('neck-pain') }, findings: { inspection: signs('dropped-head') } },
    not: { history: { onset: years, symptoms: has('neck-pain') } },
  },
  {
    what: 'hair that falls over nerves and a belly that were ill',
    test: 'heavy-metals',
    asks: { history: { onset: years, symptoms: has('hair-loss', 'numbness', 'abdominal-pain') } },
    not: { history: { onset: years, symptoms: has('hair-loss', 'tremor') } },
  },
  {
    what: 'a breath that grows short on lying flat, unless the heart is known to fail',
    test: 'diaphragm-ultrasound',
    asks: { history: { onset: weeks, symptoms: has('orthopnoea') } },
    not: { history: { onset: weeks, symptoms: has('orthopnoea'), conditions: has('heart-failure') } },
  },
  {
    what: 'a headache of the upright without a puncture',
    test: 'mri-brain',
    asks: { history: { onset: weeks, symptoms: has('orthostatic-headache') } },
    not: {
      history: {
        onset: weeks,
        symptoms: has('orthostatic-headache'),
        exposures: has('lumbar-puncture-or-epidural'),
      },
    },
  },
  {
    what: 'a clouded, hot and racing body that wasted for weeks',
    test: 'thyroid-stimulating-hormone',
    asks: {
      history: { onset: weeks, course: 'progressive', symptoms: has('fever', 'weight-loss', 'tremor') },
      findings: { higherFunction: signs('confusion'), autonomic: signs('resting-tachycardia') },
    },
    not: {
      history: { onset: days, course: 'progressive', symptoms: has('fever') },
      findings: { higherFunction: signs('confusion'), autonomic: signs('resting-tachycardia') },
    },
  },
  {
    what: 'fever and headache of weeks, and not of two days',
    test: 'csf-tuberculosis-and-fungi',
    asks: {
      history: { onset: weeks, course: 'progressive', symptoms: has('fever', 'headache') },
      findings: { specialTests: [{ test: 'neck-stiffness', result: 'positive' }] },
    },
    not: {
      history: { onset: days, course: 'progressive', symptoms: has('fever', 'headache') },
      findings: { specialTests: [{ test: 'neck-stiffness', result: 'positive' }] },
    },
  },
  {
    what: 'a stroke with fever',
    test: 'blood-cultures',
    asks: {
      history: { onset: days, symptoms: [...has('fever'), { key: 'arm-weakness', present: true, side: 'right' }] },
    },
    not: { history: { onset: days, symptoms: [{ key: 'arm-weakness', present: true, side: 'right' }] } },
  },
  {
    what: 'muscles that ache and tire for years',
    test: 'thyroid-stimulating-hormone',
    asks: { history: { onset: years, symptoms: has('muscle-pain', 'fatigue', 'cramps') } },
    not: { history: { onset: days, symptoms: has('muscle-pain', 'fatigue', 'cramps') } },
  },
  {
    what: 'hands that are numb in a pregnancy',
    test: 'nerve-conduction-study',
    asks: {
      person: { ageYears: 31, sex: 'female' },
      history: {
        onset: { pace: 'subacute', durationDays: 14 },
        symptoms: has('nocturnal-hand-paraesthesiae'),
        conditions: has('pregnancy'),
      },
    },
    not: {
      person: { ageYears: 31, sex: 'female' },
      history: { onset: { pace: 'subacute', durationDays: 14 }, symptoms: has('nocturnal-hand-paraesthesiae') },
    },
  },
  {
    what: 'speech, hands and manner that fail in the young',
    test: 'caeruloplasmin',
    asks: {
      person: { ageYears: 17 },
      history: { onset: weeks, symptoms: has('slurred-speech', 'tremor', 'behaviour-change') },
    },
    not: {
      person: { ageYears: 70 },
      history: { onset: weeks, symptoms: has('slurred-speech', 'tremor', 'behaviour-change') },
    },
  },
  {
    what: 'a walk that sways over lost jerks in a child',
    test: 'vitamin-e',
    asks: {
      person: { ageYears: 11 },
      history: { onset: weeks, course: 'progressive', symptoms: has('unsteadiness') },
      findings: {
        reflexes: [{ reflex: 'ankle', side: 'both', grade: '0' }],
        gait: signs('ataxic'),
        inspection: signs('scoliosis'),
      },
    },
    not: {
      person: { ageYears: 11 },
      history: { onset: weeks, course: 'progressive', symptoms: has('unsteadiness') },
      findings: { gait: signs('ataxic') },
    },
  },
  {
    what: 'jerks of a girl in the mornings',
    test: 'electroencephalogram',
    asks: {
      person: { ageYears: 16 },
      history: { onset: years },
      findings: { involuntaryMovements: signs('myoclonus') },
    },
    not: { person: { ageYears: 16 }, history: { onset: years }, findings: { involuntaryMovements: signs('tics') } },
  },
];

describe('tests that one telling complaint asks for', () => {
  it.each(asked)('$test: $what', ({ test, asks, not }) => {
    expect(testsOf(asks)).toContain(test);
    expect(testsOf(not)).not.toContain(test);
  });

  it('veins of the head are not looked at for a hand that tingles', () => {
    const hand = {
      person: { ageYears: 32, sex: 'female' },
      history: { onset: weeks, symptoms: has('numbness'), conditions: has('pregnancy') },
    };
    expect(testsOf(hand)).not.toContain('mr-venography');
  });
});
