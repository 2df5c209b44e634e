import { findingReasons } from '../../causes/reasons.ts';
import { read, recalled } from '../../kernel/cite.ts';
import { isOfOneNerveOrRoot } from './few-muscles.ts';
import { each, none, type RaisingStory } from './story.ts';
import { suddenFocalSigns, weakHalf } from './sudden-deficit.ts';
import { isToldOfOneSide } from './told-sides.ts';

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
      if (isOfOneNerveOrRoot(facts)) return none;
      // Half a body that failed at once is a stroke's, which is more pressing.
      if (weakHalf(facts).length > 0 && suddenFocalSigns(facts).length > 0) return none;
      const found = findingReasons(facts.weakLimbs, 4);
      const told = facts.told('arm-weakness', 'leg-weakness', 'weakness', 'ascending-weakness');
      const legs = facts.told('leg-weakness', 'weakness', 'ascending-weakness');
      // One arm that fails after a shoulder that hurt so is a root or an inflamed plexus, and does not spread.
      const pains = facts.told(
        'radicular-leg-pain',
        'radicular-arm-pain',
        ...(legs.length > 0 ? [] : ['shoulder-pain']),
      );
      return found.length > 0 || pains.length > 0 ? found : told;
    },
    source: read('nice-ng127', 'limb weakness that progresses within hours to days'),
  },
  {
    // An attack of limbs that fail on both sides, like others before, and that has not passed: potassium is measured at once.
    flag: 'rapidly-progressive-weakness',
    check: (facts) => {
      const isOther = facts.told(...attacksOfOtherKinds).length > 0;
      if (!facts.cameWithin(aDayOrTwo) || !facts.maybeProgressing || isOther) return none;
      const before = facts.told('episodic-weakness', 'similar-attacks-before', 'family/periodic-paralysis');
      const isTried = facts.query.testedWhere(({ item }) => item.section === 'power').length > 0;
      const told = isTried ? none : facts.told('weakness', 'leg-weakness');
      // A weak leg of which the side was told is no attack of all limbs.
      const isBoth = facts.bothLegsWeak || (told.length > 0 && !isToldOfOneSide(facts, 'leg-weakness'));
      return isBoth ? each(before, [...findingReasons(facts.weakLimbs, 3), ...told]) : none;
    },
    source: recalled('amato-russell', 'periodic paralyses'),
  },
];

const aDayOrTwo = 2;

/** What else comes in attacks, or makes limbs weaker on some days than on others. */
const attacksOfOtherKinds = [
  ...['resolved-deficit', 'migraine', 'headache', 'epilepsy', 'seizure', 'multiple-sclerosis', 'cataplexy'],
  // Nerves that give way to pressure do so again and again.
  ...['previous-pressure-palsy', 'family/pressure-palsies'],
  ...['myasthenia-gravis', 'fatigable-weakness', 'functional-disorder', 'transient-ischaemic-attack', 'vertigo'],
] as const;
