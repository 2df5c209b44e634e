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
  readonly tells?: Readonly<Record<string, readonly string[]>>;
  readonly denies?: readonly string[];
}

const proximal = ['proximal-myopathy', 'muscle'] as const;
const postsynaptic = ['postsynaptic-junction', 'junction'] as const;
const presynaptic = ['presynaptic-junction', 'junction'] as const;
const anteriorHorn = ['lower-motor-neuron-system', 'anterior-horn'] as const;
const eyesAndThroat = ['oculopharyngeal-myopathy', 'muscle'] as const;

// Whole pictures as they are described in Amato and Russell, Neuromuscular Disorders, unless another work is named.
const stories: readonly Story[] = [
  {
    cause: 'amyotrophic-lateral-sclerosis',
    at: ['motor-neuron-system', 'motor-neuron-system'],
    person: [63, 'male'],
    onset: ['chronic', 300],
    tells: { symptoms: ['cramps', 'twitching', 'weight-loss'] },
  },
  {
    cause: 'spinal-muscular-atrophy',
    at: anteriorHorn,
    person: [3, 'female'],
    onset: ['chronic', 500],
  },
  {
    cause: 'spinal-and-bulbar-muscular-atrophy',
    at: anteriorHorn,
    person: [48, 'male'],
    onset: ['chronic', 2500],
    tells: { conditions: ['gynaecomastia'], symptoms: ['tremor', 'cramps'] },
  },
  {
    cause: 'progressive-bulbar-palsy',
    at: ['bulbar-motor-nuclei', 'brainstem'],
    person: [68, 'female'],
    onset: ['chronic', 240],
    tells: { symptoms: ['slurred-speech', 'dysphagia', 'weight-loss'] },
  },
  // Scherer et al. 2005: fatigue and diplopia in the history.
  {
    cause: 'myasthenia-gravis',
    at: postsynaptic,
    person: [34, 'female'],
    onset: ['chronic', 200],
    course: 'fluctuating',
    tells: { symptoms: ['diplopia', 'drooping-eyelids', 'fatigable-weakness'] },
  },
  // Titulaer et al. 2011: proximal legs, dry mouth, smoker.
  {
    cause: 'lambert-eaton-myasthenic-syndrome',
    at: presynaptic,
    person: [61, 'male'],
    onset: ['subacute', 90],
    tells: { symptoms: ['dry-mouth', 'difficulty-with-stairs'], exposures: ['tobacco'] },
  },
  // Rao et al. 2021: home-canned food, descending weakness, no fever.
  {
    cause: 'botulism',
    at: presynaptic,
    person: [45, 'female'],
    onset: ['acute', 2],
    tells: { symptoms: ['diplopia', 'dysphagia', 'descending-weakness'], exposures: ['home-preserved-food'] },
    denies: ['fever'],
  },
  {
    cause: 'organophosphate-poisoning',
    at: postsynaptic,
    person: [30, 'male'],
    onset: ['hyperacute', 1],
    tells: { symptoms: ['vomiting', 'abdominal-pain'], exposures: ['organophosphate'] },
  },
  {
    cause: 'duchenne-or-becker-dystrophy',
    at: proximal,
    person: [6, 'male'],
    onset: ['chronic', 900],
  },
  // Lundberg et al. 2017: rash with proximal weakness over weeks.
  {
    cause: 'dermatomyositis',
    at: proximal,
    person: [50, 'female'],
    onset: ['subacute', 60],
    tells: { symptoms: ['rash', 'difficulty-with-stairs'] },
  },
  {
    cause: 'thyrotoxic-periodic-paralysis',
    at: proximal,
    person: [28, 'male'],
    onset: ['hyperacute', 1],
    course: 'relapsing-remitting',
    tells: { symptoms: ['episodic-weakness', 'weight-loss'], conditions: ['hyperthyroidism'] },
  },
  {
    cause: 'rhabdomyolysis',
    at: proximal,
    person: [24, 'male'],
    onset: ['acute', 2],
    tells: { symptoms: ['dark-urine', 'muscle-pain'], exposures: ['heavy-exertion'] },
  },
  // Lloyd et al. 2014: finger flexors and quadriceps after 45 years.
  {
    cause: 'inclusion-body-myositis',
    at: ['finger-flexor-quadriceps-myopathy', 'muscle'],
    person: [67, 'male'],
    onset: ['chronic', 1500],
    tells: { symptoms: ['dysphagia', 'falls'] },
  },
  {
    cause: 'oculopharyngeal-muscular-dystrophy',
    at: eyesAndThroat,
    person: [62, 'female'],
    onset: ['chronic', 2000],
    tells: { symptoms: ['dysphagia', 'drooping-eyelids'] },
  },
  {
    cause: 'chronic-progressive-external-ophthalmoplegia',
    at: eyesAndThroat,
    person: [30, 'male'],
    onset: ['chronic', 3000],
    tells: { symptoms: ['hearing-loss'] },
    denies: ['fluctuating-symptoms'],
  },
  {
    cause: 'myotonia-congenita',
    at: ['myotonic-myopathy', 'muscle'],
    person: [18, 'male'],
    onset: ['chronic', 4000],
    tells: { symptoms: ['stiffness'] },
  },
];

const stated = (keys: readonly string[], present: boolean) => keys.map((key) => ({ key, present }));

describe('causes in the motor neuron, the junction and the muscle', () => {
  it.each(stories)('finds $cause among the first three', ({ cause, at, person, onset, course, tells = {}, denies }) => {
    const { symptoms = [], conditions = [], exposures = [] } = tells;
    const exam = bedsideExam({
      person: { ageYears: person[0], sex: person[1] },
      history: {
        onset: { pace: onset[0], durationDays: onset[1] },
        course: course ?? 'progressive',
        symptoms: [...stated(symptoms, true), ...stated(denies ?? [], false)],
        conditions: stated(conditions, true),
        exposures: stated(exposures, true),
      },
    });
    const ranked = rankCauses(exam, localised(site(at[0], at[1]))).map(({ key }) => key);
    expect(ranked.slice(0, 3)).toContain(cause);
  });
});
