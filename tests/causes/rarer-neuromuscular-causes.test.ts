import { describe, expect, it } from 'vitest';
import type { SiteKind } from '../../src/anatomy/site-kind.ts';
import { rankCauses } from '../../src/differential/rank-causes.ts';
import { bedsideExam, localised, site } from '../support/bedside.ts';

interface Story {
  readonly cause: string;
  readonly at: readonly [site: string, kind: SiteKind];
  readonly person: readonly [ageYears: number, sex: 'male' | 'female'];
  readonly onset: readonly [pace: string, durationDays: number];
  readonly course?: string;
  readonly told?: Readonly<Record<string, readonly string[]>>;
  readonly found?: Readonly<Record<string, readonly unknown[]>>;
  readonly results?: readonly unknown[];
}

const number = (key: string, measured: number, unit: string) => ({
  key,
  valueQuantity: { value: measured, unit, system: 'http://unitsofmeasure.org', code: unit },
});

const stories: readonly Story[] = [
  {
    cause: 'riboflavin-transporter-deficiency',
    at: ['lower-motor-neuron-system', 'anterior-horn'],
    person: [4, 'female'],
    onset: ['subacute', 120],
    told: { symptoms: ['hearing-loss', 'breathlessness'] },
    found: { cranialNerves: [{ sign: 'tongue-fasciculation', present: true }] },
  },
  {
    cause: 'chronic-ataxic-neuropathy-with-disialosyl-antibodies',
    at: ['sensory-ganglionopathy', 'ganglion'],
    person: [62, 'male'],
    onset: ['chronic', 900],
    told: { symptoms: ['diplopia', 'unsteadiness'], conditions: ['monoclonal-gammopathy'] },
    found: { cranialNerves: [{ sign: 'ophthalmoplegia', present: true }] },
  },
  {
    cause: 'primary-erythromelalgia',
    at: ['small-fibre-polyneuropathy', 'polyneuropathy'],
    person: [19, 'female'],
    onset: ['chronic', 2000],
    told: { symptoms: ['burning-feet'] },
    found: { inspection: [{ sign: 'colour-or-temperature-change', site: 'foot', side: 'both', present: true }] },
  },
  {
    cause: 'postural-tachycardia-syndrome',
    at: ['autonomic-neuropathy', 'polyneuropathy'],
    person: [21, 'female'],
    onset: ['chronic', 300],
    told: { symptoms: ['light-headed-on-standing', 'fatigue'] },
    found: { autonomic: [{ sign: 'orthostatic-tachycardia', present: true }] },
  },
  {
    cause: 'afferent-baroreflex-failure',
    at: ['autonomic-neuropathy', 'polyneuropathy'],
    person: [60, 'male'],
    onset: ['chronic', 200],
    told: { exposures: ['radiotherapy'], symptoms: ['headache'] },
    found: { autonomic: [{ sign: 'blood-pressure-lability', present: true }] },
  },
  {
    cause: 'transient-neonatal-myasthenia',
    at: ['postsynaptic-junction', 'junction'],
    person: [0, 'male'],
    onset: ['acute', 2],
    told: { family: ['autoimmune-disease'] },
    found: { cranialNerves: [{ sign: 'weak-suck-or-cry', present: true }] },
  },
  {
    cause: 'sporadic-late-onset-nemaline-myopathy',
    at: ['axial-myopathy', 'muscle'],
    person: [58, 'female'],
    onset: ['subacute', 150],
    told: { conditions: ['monoclonal-gammopathy'], symptoms: ['dysphagia'] },
    found: { inspection: [{ sign: 'dropped-head', present: true }] },
  },
  {
    cause: 'collagen-six-myopathy',
    at: ['proximal-myopathy', 'muscle'],
    person: [30, 'female'],
    onset: ['chronic', 8000],
    found: { inspection: [{ sign: 'joint-contracture', site: 'hand', side: 'both', present: true }] },
    results: [{ key: 'ecg', value: 'normal' }, number('creatine-kinase', 350, 'U/L')],
  },
  {
    cause: 'rippling-muscle-disease',
    at: ['myotonic-myopathy', 'muscle'],
    person: [28, 'male'],
    onset: ['chronic', 2500],
    told: { symptoms: ['stiffness', 'exercise-cramps'] },
    found: { involuntaryMovements: [{ sign: 'muscle-rippling', site: 'thigh', side: 'both', present: true }] },
  },
  {
    cause: 'polymyalgia-rheumatica',
    at: ['proximal-myopathy', 'muscle'],
    person: [74, 'female'],
    onset: ['subacute', 30],
    told: { symptoms: ['shoulder-pain', 'stiffness', 'muscle-pain'] },
    results: [number('esr', 80, 'mm/h'), number('crp', 60, 'mg/L'), number('creatine-kinase', 60, 'U/L')],
  },
  {
    cause: 'diabetic-muscle-infarction',
    at: ['proximal-myopathy', 'muscle'],
    person: [44, 'female'],
    onset: ['acute', 10],
    told: { symptoms: ['thigh-pain', 'limb-lump'], conditions: ['diabetes-mellitus', 'retinal-disease'] },
    found: { inspection: [{ sign: 'muscle-tenderness', site: 'thigh', side: 'left', present: true }] },
  },
  {
    cause: 'toxic-alcohol-neuropathy',
    at: ['demyelinating-polyradiculoneuropathy', 'polyradiculoneuropathy'],
    person: [40, 'male'],
    onset: ['acute', 9],
    told: { exposures: ['toxic-alcohol'], symptoms: ['vomiting'] },
  },
];

function first(story: Story): readonly string[] {
  const { person, onset, course = 'progressive', told = {}, found = {}, results = [] } = story;
  const history = Object.fromEntries(
    Object.entries(told).map(([kind, keys]) => [kind, keys.map((key) => ({ key, present: true }))]),
  );
  const exam = bedsideExam({
    person: { ageYears: person[0], sex: person[1] },
    history: { onset: { pace: onset[0], durationDays: onset[1] }, course, ...history },
    findings: found,
    ...(results.length > 0 && { results }),
  });
  const [key, kind] = story.at;
  return rankCauses(exam, localised(site(key, kind, 0.9))).map((cause) => cause.key);
}

describe('rarer causes of disease of nerve, junction and muscle', () => {
  it.each(stories)('names $cause among the first three', (story) => {
    expect(first(story).slice(0, 3)).toContain(story.cause);
  });

  it('does not hold the pace against what an infant was born with', () => {
    const infant: Story = {
      cause: 'congenital-myopathy',
      at: ['proximal-myopathy', 'muscle'],
      person: [0, 'female'],
      onset: ['acute', 3],
      course: 'static',
      found: { cranialNerves: [{ sign: 'facial-weakness', side: 'both', present: true }] },
    };
    expect(first(infant).slice(0, 3)).toContain('congenital-myopathy');
  });
});
