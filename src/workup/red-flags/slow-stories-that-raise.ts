import type { Reason } from '../../causes/ranked-cause.ts';
import { findingReasons } from '../../causes/reasons.ts';
import { read, recalled } from '../../kernel/cite.ts';
import type { BedsideFacts } from '../bedside-facts.ts';
import { brainSigns, suddenFocalSigns } from './brain-flags.ts';
import { each, none, type RaisingStory } from './story.ts';

/** Days of "within hours to days" where the weakness is said to go on growing. Judged. */
const daysOfGrowing = 14;

const twoYears = 730;

/** Deficits that grow: of brain, cord, limbs, muscle and spine, as guidance words them. */
export const slowRaisingStories: readonly RaisingStory[] = [
  {
    // Loss of function of the brain that grows over days to two years, with headache or without.
    flag: 'suspected-space-occupying-lesion',
    check: (facts) => {
      const { exam, query } = facts;
      if (exam.course !== 'progressive' || facts.beganWithin(3) !== 'no' || facts.beganWithin(twoYears) === 'no')
        return none;
      if (query.result('mri-brain') !== undefined || exam.onset.pace === 'hyperacute') return none;
      const inBrain = facts.kindProbability('hemisphere', 'brainstem', 'cerebellum', 'visual-pathway') >= 0.5;
      const signs = query.abnormal([...brainSigns, ...corticalSigns]);
      const also = facts.told(
        'headache',
        'new-headache',
        'morning-headache',
        'vomiting',
        'seizure',
        'behaviour-change',
        'cancer',
        'lymphoma',
        'immunosuppression',
        'hiv-infection',
      );
      if (inBrain && exam.onset.pace !== 'chronic')
        return findingReasons(
          query.abnormalWhere(() => true),
          4,
        );
      return each(findingReasons(signs, 4), also);
    },
    source: recalled('nice-ng127'),
  },
  {
    // A deficit of days, in somebody whose arteries are at risk, where the brain is the likeliest place.
    flag: 'suspected-stroke',
    check: (facts) => {
      const { pace, durationDays } = facts.exam.onset;
      const inTime =
        pace === 'hyperacute' ? facts.beganWithin(14) === 'yes' : pace === 'acute' && (durationDays ?? 0) <= 7;
      if (!inTime || facts.exam.course === 'progressive' || !facts.maybeProgressing) return none;
      const inBrain = facts.kindProbability('hemisphere', 'brainstem', 'cerebellum') >= 0.5;
      const signs = findingReasons(facts.query.abnormal(brainSigns), 4);
      return inBrain && suddenFocalSigns(facts).length === 0 ? each(signs, atRisk(facts)) : none;
    },
    source: recalled('nice-ng128', 'sudden onset of focal symptoms'),
  },
  {
    // Several things that fail at once are told before anybody has examined; and a plain sign of the brain of the last days.
    flag: 'suspected-stroke',
    check: (facts) => {
      const { pace, durationDays } = facts.exam.onset;
      if (!facts.maybeProgressing || facts.told(...notTheBrain).length > 0) return none;
      const told = facts.told(
        'slurred-speech',
        'speech-difficulty',
        'arm-weakness',
        'leg-weakness',
        'weakness',
        'numbness',
        'diplopia',
        'visual-loss',
        'dysphagia',
      );
      const inBrain = facts.kindProbability('hemisphere', 'brainstem', 'cerebellum') >= 0.5;
      if (pace === 'hyperacute' && facts.beganWithin(7) === 'yes' && told.length >= 2 && inBrain) return told;
      const isDays = pace === 'acute' && durationDays !== undefined && durationDays <= 3;
      return isDays && inBrain ? findingReasons(facts.query.abnormal(brainSigns), 4) : none;
    },
    source: recalled('nice-ng128', 'sudden onset of focal symptoms'),
  },
  {
    flag: 'rapidly-progressive-weakness',
    check: (facts) => {
      if (facts.exam.course !== 'progressive' || facts.beganWithin(daysOfGrowing) !== 'yes') return none;
      const found = findingReasons(facts.weakLimbs, 4);
      const told = facts.told('arm-weakness', 'leg-weakness', 'weakness', 'ascending-weakness');
      const pains = facts.told('radicular-leg-pain', 'radicular-arm-pain');
      return found.length > 0 || pains.length > 0 ? found : told;
    },
    source: read('nice-ng127', 'limb weakness that progresses within hours to days'),
  },
];

const notTheBrain = [
  'resolved-deficit',
  'migraine',
  'back-pain',
  'thoracic-back-pain',
  'neck-pain',
  'bladder-disturbance',
  'trauma',
  'myasthenia-gravis',
  'descending-weakness',
] as const;

const corticalSigns = [
  'higher-function/anomia',
  'higher-function/alexia',
  'higher-function/agraphia',
  'higher-function/apraxia',
  'higher-function/astereognosis',
  'higher-function/sensory-extinction',
  'special-tests/pronator-drift',
];

const atRisk = (facts: BedsideFacts): readonly Reason[] => {
  const age = facts.exam.person.ageYears;
  return [
    ...facts.told(
      'hypertension',
      'diabetes-mellitus',
      'atrial-fibrillation',
      'stroke',
      'transient-ischaemic-attack',
      'ischaemic-heart-disease',
      'hyperlipidaemia',
      'tobacco',
    ),
    ...(age !== undefined && age >= 60 ? [{ pointer: '/person/ageYears', text: `age ${age}` }] : []),
  ];
};
