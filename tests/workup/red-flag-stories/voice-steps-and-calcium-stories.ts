import { site } from '../../support/bedside.ts';
import { days, has, on, power, type Story, signs, weeks } from './story.ts';

const stepsOfWeeks = { pace: 'subacute', durationDays: 21 };
const fits = { pace: 'acute' };

/** A hoarse voice of one nerve, strokes that come in steps, infection without fever, tetany, and what a child loses for years. */
export const voiceStepsAndCalciumStories: readonly Story[] = [
  {
    flag: 'acute-bulbar-weakness',
    by: 'Judged: a cord of one side by itself leaves swallow and breath sound',
    raised: {
      history: { onset: days, symptoms: has('voice-change', 'dysphagia') },
      findings: { cranialNerves: on('left', 'vocal-cord-paralysis') },
    },
    not: {
      history: { onset: days, symptoms: has('voice-change') },
      findings: { cranialNerves: on('left', 'vocal-cord-paralysis') },
    },
  },
  {
    flag: 'suspected-stroke',
    by: 'Adams and Victor: stroke in evolution; a rhythm that throws clots',
    raised: {
      history: { onset: stepsOfWeeks, course: 'fluctuating', conditions: has('atrial-fibrillation') },
      findings: { higherFunction: signs('expressive-aphasia') },
    },
    not: {
      history: { onset: stepsOfWeeks, course: 'static', conditions: has('atrial-fibrillation') },
      findings: { higherFunction: signs('expressive-aphasia') },
    },
  },
  {
    flag: 'suspected-encephalitis',
    by: 'Adams and Victor: half of brain abscesses have no fever',
    raised: {
      history: { onset: fits, course: 'progressive', symptoms: has('headache', 'seizure') },
      findings: { higherFunction: signs('expressive-aphasia') },
    },
    not: {
      history: { onset: fits, course: 'improving', symptoms: has('headache', 'seizure') },
      findings: { higherFunction: signs('expressive-aphasia') },
    },
  },
  {
    flag: 'dangerous-sodium-or-calcium',
    by: 'Turner 2016: carpopedal spasm and perioral tingling of low calcium (recalled)',
    raised: {
      history: { symptoms: has('perioral-numbness') },
      findings: { involuntaryMovements: signs('carpopedal-spasm') },
    },
    not: { history: { symptoms: has('perioral-numbness') } },
  },
  {
    flag: 'child-with-progressive-deficit',
    by: 'NICE NG127: progressive deficits of children; relatives with the same make it known',
    raised: {
      person: { ageYears: 12 },
      history: {
        onset: { pace: 'chronic', durationDays: 1800 },
        course: 'progressive',
        symptoms: has('painless-injury'),
      },
      findings: { sensation: [{ modality: 'pinprick', site: 'whole-arm', side: 'right', result: 'reduced' }] },
    },
    not: {
      person: { ageYears: 12 },
      history: { onset: { pace: 'chronic', durationDays: 1800 }, course: 'static', symptoms: has('painless-injury') },
      findings: { sensation: [{ modality: 'pinprick', site: 'whole-arm', side: 'right', result: 'reduced' }] },
    },
  },
  {
    flag: 'suspected-space-occupying-lesion',
    by: 'NICE NG127; a nerve that an operation has cut is not growing worse',
    at: site('spinal-accessory-nerve', 'cranial-nerve'),
    raised: {
      history: { onset: weeks, conditions: has('cancer') },
      findings: { cranialNerves: on('left', 'trapezius-weakness') },
    },
    not: {
      history: { onset: weeks, conditions: has('cancer'), exposures: has('neck-or-chest-surgery') },
      findings: { cranialNerves: on('left', 'trapezius-weakness') },
    },
  },
  {
    flag: 'suspected-wernicke-encephalopathy',
    by: 'Caine 1997; the vomiting of a full skull has starved nobody',
    raised: {
      history: { onset: weeks, symptoms: has('vomiting') },
      findings: { gait: signs('ataxic') },
    },
    not: {
      history: { onset: weeks, symptoms: has('vomiting', 'headache') },
      findings: { gait: signs('ataxic') },
    },
  },
  {
    flag: 'suspected-cord-compression',
    by: 'Adams and Victor: half a cord',
    at: site('spinal-cord-hemisection', 'cord', 0.65, 'C5'),
    raised: {
      history: { onset: { pace: 'subacute', durationDays: 14 } },
      findings: {
        power: power('right', '4', 'hip-flexion'),
        sensation: [{ modality: 'pinprick', site: 'whole-leg', side: 'left', result: 'reduced' }],
      },
    },
    not: {
      history: { onset: { pace: 'subacute', durationDays: 14 }, course: 'improving' },
      findings: {
        power: power('right', '4', 'hip-flexion'),
        sensation: [{ modality: 'pinprick', site: 'whole-leg', side: 'left', result: 'reduced' }],
      },
    },
  },
];
