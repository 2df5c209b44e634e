import { findingReasons } from '../../causes/reasons.ts';
import { read } from '../../kernel/cite.ts';
import { isOneMuscleOrTwo } from './few-muscles.ts';
import { none, type RaisingStory } from './story.ts';
import { suddenFocalSigns, weakHalf } from './sudden-deficit.ts';

/** Days of "within hours to days" where the weakness is said to go on growing. Judged. */
const daysOfGrowing = 14;
const firstWeek = 7;

/** Weakness that grows, as guidance words it. */
export const slowRaisingStories: readonly RaisingStory[] = [
  {
    flag: 'rapidly-progressive-weakness',
    check: (facts) => {
      const { pace } = facts.exam.onset;
      // What is called a matter of weeks is one of days only in its first week.
      const within = pace === 'subacute' ? firstWeek : daysOfGrowing;
      if (facts.exam.course !== 'progressive' || facts.beganWithin(within) !== 'yes') return none;
      if (isOneMuscleOrTwo(facts)) return none;
      // Half a body that failed at once is a stroke's, which is more pressing.
      if (weakHalf(facts).length > 0 && suddenFocalSigns(facts).length > 0) return none;
      const found = findingReasons(facts.weakLimbs, 4);
      const told = facts.told('arm-weakness', 'leg-weakness', 'weakness', 'ascending-weakness');
      const pains = facts.told('radicular-leg-pain', 'radicular-arm-pain');
      return found.length > 0 || pains.length > 0 ? found : told;
    },
    source: read('nice-ng127', 'limb weakness that progresses within hours to days'),
  },
];
