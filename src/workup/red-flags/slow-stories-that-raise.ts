import { findingReasons } from '../../causes/reasons.ts';
import { read, recalled } from '../../kernel/cite.ts';
import { each, none, type RaisingStory } from './story.ts';
import { brainSigns } from './sudden-deficit.ts';

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

const corticalSigns = [
  'higher-function/anomia',
  'higher-function/alexia',
  'higher-function/agraphia',
  'higher-function/apraxia',
  'higher-function/astereognosis',
  'higher-function/sensory-extinction',
  'special-tests/pronator-drift',
];
