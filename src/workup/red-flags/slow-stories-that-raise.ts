import { powerOf } from '../../causes/exam-query.ts';
import type { Reason } from '../../causes/ranked-cause.ts';
import { findingReasons } from '../../causes/reasons.ts';
import { read, recalled } from '../../kernel/cite.ts';
import type { BedsideFacts } from '../bedside-facts.ts';
import { brainSigns, suddenFocalSigns } from './brain-flags.ts';
import { dangerOf } from './danger-words.ts';
import { slowlyProgressive } from './rule.ts';
import { each, none, type RaisingStory } from './story.ts';
import { isAtLeast } from './thresholds.ts';

const { spinalPain } = dangerOf;

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
  {
    flag: 'severe-inflammatory-myopathy',
    check: checkMyositis,
    source: recalled('eular-acr-myositis-2017', 'skin and oesophagus'),
  },
  {
    flag: 'suspected-spinal-metastases',
    check: (facts) => {
      const isCord = facts.bothLegsWeak || facts.upperMotorSignsInLegs.length > 0 || facts.trunkSensoryLoss.length > 0;
      if (isCord || !facts.maybeProgressing || facts.beganWithin(365) === 'no') return none;
      const spine = [...spinalPain(facts), ...findingReasons(facts.query.abnormal(['inspection/spinal-tenderness']))];
      return each(facts.told('cancer', 'lymphoma'), spine);
    },
    source: read('nice-ng234'),
  },
  {
    flag: 'progressive-cord-signs',
    check: (facts) => {
      const { pace, durationDays } = facts.exam.onset;
      const isGradual = facts.beganWithin(28) === 'no' || pace === 'subacute' || pace === 'chronic';
      const isOld = (durationDays ?? 0) > slowlyProgressive;
      const inCord = facts.kindProbability('cord') >= 0.3;
      const family = facts.told('family/similar-disorder', 'family/spastic-paraplegia', 'family/ataxia');
      if (!isGradual || isOld || !inCord || facts.exam.course !== 'progressive' || family.length > 0) return none;
      // Brisk reflexes alone are met in health.
      const signs = [
        ...facts.upperMotorSigns.filter(
          ({ item }) => item.scale !== 'reflex-grade' && item.section !== 'involuntaryMovements',
        ),
        ...facts.trunkSensoryLoss,
      ];
      const trouble = [
        ...findingReasons([...facts.weakLimbs, ...facts.legSensoryLoss], 3),
        ...facts.told(
          'leg-weakness',
          'difficulty-walking',
          'clumsiness',
          'unsteadiness',
          'numbness',
          'bladder-disturbance',
          'falls',
        ),
      ];
      return each(findingReasons(signs, 3), trouble);
    },
    source: recalled('nice-ng127', 'limb weakness and gait unsteadiness'),
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

/** Muscle known to be inflamed by skin, enzyme, antibody, needle or biopsy, with a swallow or a breath that fails or limbs that hardly lift. */
function checkMyositis(facts: BedsideFacts): readonly Reason[] {
  const { query } = facts;
  if (!facts.maybeProgressing || facts.beganWithin(365) === 'no') return none;
  const kinase = query.quantity('creatine-kinase', 'U/L');
  const isMuscle = facts.kindProbability('muscle') >= 0.3;
  const inflamed = [
    ...findingReasons(query.abnormal(['inspection/heliotrope-rash', 'inspection/gottron-papules'])),
    ...(kinase !== undefined && isAtLeast(kinase, 1000) && isMuscle
      ? [{ pointer: kinase.pointer, text: `creatine kinase ${kinase.value} U/L` }]
      : none),
    ...(
      [
        ['muscle-biopsy', ['inflammatory', 'necrotising']],
        ['myositis-antibody', ['positive']],
        ['hmgcr-antibody', ['positive']],
      ] as const
    ).flatMap(([key, values]) => {
      const result = query.result(key);
      return result !== undefined && (values as readonly string[]).includes(String(result.value))
        ? [{ pointer: result.pointer, text: `${result.label}: ${result.value}` }]
        : [];
    }),
  ];
  const danger = [
    ...facts.told('dysphagia', 'breathlessness', 'orthopnoea', 'interstitial-lung-disease'),
    ...findingReasons(query.abnormal(['cranial-nerves/dysphagia', 'autonomic/breathlessness-at-rest'])),
  ];
  const hardlyLift = facts.beganWithin(183) === 'yes' ? facts.weakLimbs.filter((one) => (powerOf(one) ?? 5) <= 3) : [];
  const weak = [
    ...findingReasons(facts.weakLimbs, 2),
    ...facts.told('weakness', 'leg-weakness', 'arm-weakness', 'difficulty-with-stairs'),
  ];
  return each(inflamed, weak, [...danger, ...findingReasons(hardlyLift, 2)]);
}
