import { site } from '../../support/bedside.ts';
import { has, months, on, type Story, signs, weeks, years } from './story.ts';

const confused = { higherFunction: signs('confusion') };
const growing = { onset: weeks, course: 'progressive' };
const failingBoy = {
  onset: { pace: 'chronic', durationDays: 1095 },
  course: 'progressive',
  family: [{ key: 'ataxia', relation: 'parent', present: true }],
};
const unsteady = { gait: signs('ataxic'), cranialNerves: signs('dysarthria') };

/** Minds that are clouded for weeks or at no date, children who lose what they had, and what only looks like it. */
export const cloudedMindStories: readonly Story[] = [
  {
    flag: 'unexplained-fall-in-consciousness',
    by: 'a mind found clouded for weeks that grows worse; in a known dementia it is no news (common practice)',
    raised: { history: growing, findings: confused },
    not: { history: { ...growing, conditions: has('dementia') }, findings: confused },
  },
  {
    flag: 'unexplained-fall-in-consciousness',
    by: 'the same at a time that nobody has told; what has been so for years is not new',
    raised: { findings: confused },
    not: { history: { onset: years }, findings: confused },
  },
  {
    flag: 'suspected-encephalitis',
    by: 'Graus 2016: a mind that fails within weeks in a body that jerks; where the kidneys have failed they do both',
    raised: {
      history: growing,
      findings: { ...confused, involuntaryMovements: on('right', 'dystonia') },
    },
    not: {
      history: { ...growing, conditions: has('chronic-kidney-disease') },
      findings: { ...confused, involuntaryMovements: on('right', 'dystonia') },
    },
  },
  {
    flag: 'suspected-encephalitis',
    by: 'Graus 2016: sleepy after a fit and unsteady beside, at no date; in known epilepsy the fit accounts for it',
    raised: {
      person: { ageYears: 3 },
      history: { symptoms: has('seizure') },
      findings: { higherFunction: signs('drowsiness'), gait: signs('ataxic') },
    },
    not: {
      person: { ageYears: 3 },
      history: { symptoms: has('seizure'), conditions: has('epilepsy') },
      findings: { higherFunction: signs('drowsiness'), gait: signs('ataxic') },
    },
  },
  {
    flag: 'child-with-progressive-deficit',
    by: 'an ataxia of the family that grows for years is known for what it is; thought that fails with it is not (NICE NG127)',
    raised: {
      person: { ageYears: 10 },
      history: { ...failingBoy, symptoms: has('cognitive-change') },
      findings: unsteady,
    },
    not: { person: { ageYears: 10 }, history: failingBoy, findings: unsteady },
  },
  {
    flag: 'child-with-progressive-deficit',
    by: 'eyes that dance in a child, at no date and in bouts (Adams and Victor, opsoclonus); eyes that have jerked so for years are of birth',
    raised: {
      person: { ageYears: 7 },
      history: { symptoms: has('similar-attacks-before') },
      findings: { cranialNerves: signs('opsoclonus') },
    },
    not: {
      person: { ageYears: 7 },
      history: { symptoms: has('similar-attacks-before') },
      findings: { cranialNerves: signs('nystagmus') },
    },
  },
  {
    flag: 'suspected-space-occupying-lesion',
    by: 'slow thought with an unsteady gait (NICE NG127), which where the columns of the cord have failed says nothing of a mass',
    at: site('cortex-frontal', 'hemisphere'),
    raised: {
      history: {
        onset: { pace: 'subacute', durationDays: 90 },
        course: 'progressive',
        symptoms: has('cognitive-change'),
      },
      findings: { gait: signs('ataxic') },
    },
    not: {
      history: { onset: months, symptoms: has('cognitive-change') },
      findings: { gait: signs('ataxic') },
    },
  },
];
