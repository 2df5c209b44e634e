import { site } from '../../support/bedside.ts';
import { days, has, hours, months, on, power, type Story, signs, weeks } from './story.ts';

const ulnarHand = power('right', '4', 'finger-abduction', 'finger-adduction');
const girdles = [...power('both', '3', 'hip-flexion'), ...power('both', '4', 'shoulder-abduction')];

/** A danger that an older illness seems to account for, and what is harmless and looks like one; each beside its nearest neighbour. */
export const secondDangerStories: readonly Story[] = [
  {
    flag: 'raised-intracranial-pressure',
    by: 'HeadSmart 2017, from memory: a head that aches more and more in a child who vomits; with a fever it is another illness',
    raised: {
      person: { ageYears: 9 },
      history: { onset: days, course: 'progressive', symptoms: has('headache', 'vomiting') },
    },
    not: {
      person: { ageYears: 9 },
      history: { onset: days, course: 'progressive', symptoms: has('headache', 'vomiting', 'fever') },
    },
  },
  {
    flag: 'first-seizure',
    by: 'Judged: epilepsy accounts for fits like those before, and not for one in somebody who has a cancer as well',
    raised: { history: { onset: hours, symptoms: has('seizure'), conditions: has('epilepsy', 'cancer') } },
    not: {
      history: {
        onset: hours,
        symptoms: has('seizure', 'similar-attacks-before'),
        conditions: has('epilepsy', 'cancer'),
      },
    },
  },
  {
    flag: 'suspected-space-occupying-lesion',
    by: 'the same fit, for which the brain is imaged',
    raised: { history: { onset: days, symptoms: has('seizure'), conditions: has('epilepsy', 'cancer') } },
    not: { history: { onset: days, symptoms: has('seizure'), conditions: has('epilepsy') } },
  },
  {
    flag: 'raised-intracranial-pressure',
    by: 'Adams and Victor: a shunt that has blocked little by little; a headache that has long come to rest is another',
    raised: {
      history: {
        onset: months,
        course: 'progressive',
        symptoms: has('headache', 'vomiting'),
        conditions: has('ventricular-shunt'),
      },
    },
    not: {
      history: {
        onset: months,
        course: 'static',
        symptoms: has('headache', 'vomiting'),
        conditions: has('ventricular-shunt'),
      },
    },
  },
  {
    flag: 'unexplained-fall-in-consciousness',
    by: 'Adams and Victor: delirium of withdrawal; the restlessness of a known disorder of the mind is not new',
    raised: {
      history: { onset: days },
      findings: { higherFunction: signs('agitation', 'hallucinations'), autonomic: signs('hyperhidrosis') },
    },
    not: {
      history: { onset: days, conditions: has('psychiatric-disorder') },
      findings: { higherFunction: signs('agitation', 'hallucinations'), autonomic: signs('hyperhidrosis') },
    },
  },
  {
    flag: 'child-with-progressive-deficit',
    by: 'Judged: a hand whose nerve was pressed at the elbow; one with a painful neck may be of the cord',
    raised: {
      person: { ageYears: 11 },
      history: { onset: weeks, symptoms: has('neck-pain') },
      findings: { power: ulnarHand },
    },
    not: { person: { ageYears: 11 }, history: { onset: weeks }, findings: { power: ulnarHand } },
    at: site('ulnar-nerve-elbow', 'nerve'),
  },
  {
    flag: 'suspected-stroke',
    by: 'Adams and Victor: eyes that beat upwards at rest; those that do so on one change of position are of the ear',
    raised: {
      history: { onset: hours, symptoms: has('vertigo') },
      findings: { cranialNerves: signs('upbeat-nystagmus') },
    },
    not: {
      history: { onset: hours, symptoms: has('positional-vertigo') },
      findings: {
        cranialNerves: signs('upbeat-nystagmus', 'torsional-nystagmus'),
        specialTests: [{ test: 'dix-hallpike', side: 'right', result: 'positive' }],
      },
    },
    at: site('vestibular-labyrinth', 'cranial-nerve'),
  },
  {
    flag: 'suspected-stroke',
    by: 'Adams and Victor: a lower face that is weak beside a whole half of it is that of its nerve',
    raised: { history: { onset: hours }, findings: { cranialNerves: on('right', 'lower-facial-weakness') } },
    not: {
      history: { onset: hours },
      findings: { cranialNerves: on('right', 'lower-facial-weakness', 'facial-weakness') },
    },
    at: site('facial-nerve', 'cranial-nerve'),
  },
  {
    flag: 'severe-inflammatory-myopathy',
    by: 'Allenbach 2020, from memory: girdles and throat that fail within weeks, before anybody has measured the muscle enzyme; over years they are another disease',
    raised: {
      history: { onset: weeks, symptoms: has('dysphagia') },
      findings: { power: girdles },
    },
    not: { history: { onset: months, symptoms: has('dysphagia') }, findings: { power: girdles } },
    at: site('proximal-myopathy', 'muscle'),
  },
  {
    flag: 'central-vestibular-syndrome',
    by: 'GRACE-3: the head impulse tells of the ear where the eyes beat; without nystagmus a sick artery and an ataxic walk decide',
    raised: {
      person: { ageYears: 66 },
      history: { onset: days, symptoms: has('continuous-vertigo'), conditions: has('hypertension') },
      findings: { cranialNerves: on('left', 'abnormal-head-impulse'), gait: signs('ataxic') },
    },
    not: {
      person: { ageYears: 66 },
      history: { onset: days, symptoms: has('continuous-vertigo'), conditions: has('hypertension') },
      findings: {
        cranialNerves: [
          ...on('left', 'abnormal-head-impulse'),
          ...on('right', 'nystagmus'),
          { sign: 'skew-deviation', present: false },
        ],
        gait: signs('ataxic'),
      },
    },
  },
  {
    flag: 'neuromuscular-respiratory-failure',
    by: 'a breath seen to fail in a weakness of days that nobody has tried; with fever or a failing heart it is of the lung',
    raised: {
      history: { onset: days, course: 'progressive', symptoms: has('weakness', 'breathlessness') },
      findings: { autonomic: signs('breathlessness-at-rest') },
    },
    not: {
      history: {
        onset: days,
        course: 'progressive',
        symptoms: has('weakness', 'breathlessness'),
        conditions: has('heart-failure'),
      },
      findings: { autonomic: signs('breathlessness-at-rest') },
    },
  },
];
