import { describe, expect, it } from 'vitest';
import { type Asked, testsOf } from './asked-tests.ts';
import { days, has, measured, months, on, power, signs, weeks, years } from './red-flag-stories/story.ts';

const today = { pace: 'acute', durationDays: 0.5 };
const climbing = { onset: months, course: 'progressive' };

const asked: readonly Asked[] = [
  {
    what: 'a fit of today in a known epilepsy, and not a shoulder that hurts',
    test: 'blood-glucose',
    asks: { history: { onset: today, symptoms: has('seizure'), conditions: has('epilepsy') } },
    not: { history: { onset: today, symptoms: has('shoulder-pain') } },
  },
  {
    what: 'a muddled mind of today',
    test: 'sodium',
    asks: { history: { onset: today, symptoms: has('cognitive-change') } },
    not: { history: { onset: today, symptoms: has('numbness') } },
  },
  {
    what: 'a clouded mind under tacrolimus',
    test: 'electroencephalogram',
    asks: {
      history: { onset: months, symptoms: has('tremor', 'behaviour-change'), medications: has('tacrolimus') },
      findings: { higherFunction: signs('drowsiness') },
    },
    not: { history: { onset: months, symptoms: has('tremor'), medications: has('tacrolimus') } },
  },
  {
    what: 'a mind that fails within months with a swaying gait',
    test: 'lumbar-puncture',
    asks: {
      person: { ageYears: 61 },
      history: { ...climbing, symptoms: has('cognitive-change', 'unsteadiness') },
      findings: { gait: signs('ataxic'), higherFunction: signs('memory-impairment') },
    },
    not: {
      person: { ageYears: 61 },
      history: { onset: years, course: 'progressive', symptoms: has('cognitive-change') },
      findings: { higherFunction: signs('memory-impairment') },
    },
  },
  {
    what: 'a dark skin with faints and vomiting',
    test: 'cortisol',
    asks: {
      history: { onset: days, symptoms: has('vomiting', 'fatigue') },
      findings: { inspection: signs('skin-hyperpigmentation'), higherFunction: signs('confusion') },
    },
    not: {
      history: { onset: days, symptoms: has('vomiting', 'fatigue') },
      findings: { higherFunction: signs('confusion') },
    },
  },
  {
    what: 'weakness with a very high creatine kinase under a statin',
    test: 'hmgcr-antibody',
    asks: {
      history: { symptoms: has('weakness'), medications: has('statin') },
      results: [measured('creatine-kinase', 8200, 'U/L')],
    },
    not: {
      history: { symptoms: has('muscle-pain'), medications: has('statin') },
      results: [measured('creatine-kinase', 420, 'U/L')],
    },
  },
  {
    what: 'a sciatica with a leg told to weaken, unless the foot was tried and is strong',
    test: 'mri-lumbar-spine',
    asks: { history: { onset: days, symptoms: has('back-pain', 'radicular-leg-pain', 'leg-weakness') } },
    not: {
      history: { onset: days, symptoms: has('back-pain', 'radicular-leg-pain') },
      findings: { power: power('left', '5', 'ankle-dorsiflexion', 'great-toe-extension') },
    },
  },
  {
    what: 'legs that grow weak and numb and give way in spells',
    test: 'mri-whole-spine',
    asks: { history: { ...climbing, symptoms: has('leg-weakness', 'numbness', 'episodic-weakness') } },
    not: { history: { ...climbing, symptoms: has('numbness') } },
  },
  {
    what: 'a baby of a vegan mother who loses what it has learnt',
    test: 'methylmalonic-acid',
    asks: {
      person: { ageYears: 0.8 },
      history: { ...climbing, symptoms: has('loss-of-skills'), exposures: has('vegan-diet') },
      findings: { higherFunction: signs('apathy') },
    },
    not: {
      person: { ageYears: 0.8 },
      history: { ...climbing, symptoms: has('loss-of-skills') },
      findings: { higherFunction: signs('apathy') },
    },
  },
  {
    what: 'slurred speech under metronidazole',
    test: 'mri-brain',
    asks: {
      history: { onset: weeks, symptoms: has('numbness', 'slurred-speech'), medications: has('metronidazole') },
      findings: { cranialNerves: signs('dysarthria') },
    },
    not: { history: { onset: weeks, symptoms: has('numbness'), medications: has('metronidazole') } },
  },
  {
    what: 'nerves that tingle in a body that swells',
    test: 'serum-immunofixation',
    asks: {
      person: { ageYears: 77 },
      history: { onset: months, symptoms: has('paraesthesiae', 'breathlessness') },
      findings: {
        inspection: [...signs('ascites'), ...on('left', 'oedema').map((one) => ({ ...one, site: 'leg-below-knee' }))],
      },
    },
    not: { person: { ageYears: 77 }, history: { onset: months, symptoms: has('breathlessness') } },
  },
];

describe('tests that the story asks for by itself', () => {
  it.each(asked)('$test: $what', ({ test, asks, not }) => {
    expect(testsOf(asks)).toContain(test);
    expect(testsOf(not)).not.toContain(test);
  });

  it('the body is not searched for a tumour before an image has shown a mass, but in a smoker or beside a cancer', () => {
    const frontal = {
      person: { ageYears: 62 },
      history: { onset: { pace: 'subacute', durationDays: 40 }, course: 'progressive', symptoms: has('headache') },
      findings: { power: power('left', '4', 'finger-extension', 'hip-flexion') },
    };
    expect(testsOf(frontal)).not.toContain('ct-chest');
    const cancer = { ...frontal, history: { ...frontal.history, conditions: has('cancer') } };
    expect(testsOf(cancer)).toContain('ct-chest');
  });

  it('several nerves that fail within days are asked for vasculitis without pain too', () => {
    const struck = {
      history: { onset: { pace: 'acute', durationDays: 9 }, course: 'progressive', symptoms: has('weakness') },
      findings: {
        power: [
          ...power('right', '2', 'wrist-extension'),
          ...power('left', '1', 'ankle-dorsiflexion'),
          ...power('left', '2', 'thumb-abduction'),
        ],
      },
    };
    expect(testsOf(struck)).toContain('antineutrophil-cytoplasmic-antibody');
  });
});
