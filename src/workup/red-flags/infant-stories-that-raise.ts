import { findingReasons } from '../../causes/reasons.ts';
import { commonPractice } from '../../kernel/cite.ts';
import { trueFever } from './fever.ts';
import { each, none, type RaisingStory } from './story.ts';

/** What the open skull of an infant tells before anything else of its head can be examined. */
export const infantStories: readonly RaisingStory[] = [
  {
    // The neck of an infant stays supple: fever with a bulging fontanelle is meningitis until shown otherwise.
    flag: 'suspected-meningitis',
    check: (facts) =>
      facts.beganWithin(14) !== 'no'
        ? each(trueFever(facts), findingReasons(facts.query.abnormal(['inspection/bulging-fontanelle'])))
        : none,
    source: commonPractice,
  },
  {
    // A fontanelle that bulges, or a head that is too large, with vomiting, a duller child or eyes that cannot look up.
    flag: 'raised-intracranial-pressure',
    check: (facts) => {
      const bulging = findingReasons(facts.query.abnormal(['inspection/bulging-fontanelle']));
      const large = findingReasons(facts.query.abnormal(['inspection/large-head']));
      const also = [
        ...facts.told('vomiting', 'seizure', 'loss-of-skills'),
        ...findingReasons(
          facts.query.abnormal([
            'higher-function/drowsiness',
            'cranial-nerves/upgaze-palsy',
            'cranial-nerves/sixth-nerve-palsy',
            'cranial-nerves/optic-disc-swelling',
            'cranial-nerves/retinal-haemorrhages',
          ]),
        ),
      ];
      const isStanding = facts.exam.course === 'static' || facts.exam.course === 'improving';
      return isStanding ? none : each([...bulging, ...large], also);
    },
    source: commonPractice,
  },
];
