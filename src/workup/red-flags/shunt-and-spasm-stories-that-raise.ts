import { findingReasons } from '../../causes/reasons.ts';
import { recalled } from '../../kernel/cite.ts';
import { clouded } from './consciousness.ts';
import { trueFever } from './fever.ts';
import { each, none, type RaisingStory } from './story.ts';

/** A shunt that is blocked, and the spasms of tetanus: stories that one thing known or seen makes urgent. */
export const shuntAndSpasmStories: readonly RaisingStory[] = [
  {
    // Half of all shunts fail within two years; a new headache, vomiting or a duller mind is a blocked one until shown otherwise.
    flag: 'raised-intracranial-pressure',
    check: (facts) =>
      facts.beganWithin(28) !== 'no' && facts.exam.onset.pace !== 'chronic' && facts.maybeProgressing
        ? each(facts.told('ventricular-shunt'), [
            ...facts.told('headache', 'new-headache', 'morning-headache', 'vomiting', 'diplopia', 'seizure'),
            ...facts.told('cognitive-change', 'behaviour-change', 'visual-loss', 'difficulty-walking'),
            ...findingReasons(
              facts.query.abnormal([
                ...clouded,
                'cranial-nerves/upgaze-palsy',
                'cranial-nerves/sixth-nerve-palsy',
                'cranial-nerves/optic-disc-swelling',
              ]),
              2,
            ),
          ])
        : none,
    source: recalled('adams-victor', 'hydrocephalus and its shunts'),
  },
  {
    // A head that aches and a stomach that empties itself say the same however long ago it began, unless all has come to rest.
    flag: 'raised-intracranial-pressure',
    check: (facts) =>
      facts.maybeProgressing && (facts.exam.course !== undefined || facts.beganWithin(183) !== 'no')
        ? each(
            facts.told('ventricular-shunt'),
            facts.told('headache', 'new-headache', 'morning-headache'),
            facts.told('vomiting'),
          )
        : none,
    source: recalled('adams-victor', 'hydrocephalus and its shunts'),
  },
  {
    // A child whose head aches more and more and who vomits, with no fever and no migraine. Source: HeadSmart 2017, recalled.
    flag: 'raised-intracranial-pressure',
    check: (facts) => {
      const { person, course, onset } = facts.exam;
      const isGrowing = course === 'progressive' || (course === undefined && onset.pace === 'subacute');
      const other = [...facts.told('migraine', 'similar-attacks-before'), ...trueFever(facts)];
      const isChild = person.ageYears !== undefined && person.ageYears < 16;
      return isChild && isGrowing && other.length === 0 && facts.beganWithin(183) === 'yes'
        ? each(facts.told('headache', 'new-headache', 'morning-headache'), facts.told('vomiting'))
        : none;
    },
    source: recalled('nice-ng127', 'headaches of children'),
  },
  {
    // Painful spasms of the whole body or an arched back, with a jaw, a throat or a wound that tells of tetanus.
    flag: 'suspected-tetanus',
    check: (facts) =>
      facts.beganWithin(28) !== 'no' && facts.exam.onset.pace !== 'chronic' && trueFever(facts).length === 0
        ? each(
            findingReasons(
              facts.query.abnormal(['involuntary-movements/generalised-spasms', 'involuntary-movements/opisthotonus']),
              2,
            ),
            facts.told('lockjaw', 'dysphagia', 'trauma', 'animal-bite', 'injecting-drug-use', 'recent-surgery'),
          )
        : none,
    source: recalled('adams-victor', 'tetanus'),
  },
];
