import { findingReasons } from '../../causes/reasons.ts';
import { recalled } from '../../kernel/cite.ts';
import { isOnBothSides, levelOrLostLegs, spinalPain } from './cord.ts';
import { hasPower } from './limb-complaints-that-raise.ts';
import { each, none, type RaisingStory } from './story.ts';
import { isToldOfOneSide } from './told-sides.ts';

/** A cord that fails little by little, as short accounts tell of it; what is found and graded is weighed in `spinal-flags.ts`. */
export const slowCordStories: readonly RaisingStory[] = [
  {
    // Clumsy or numb hands and a failing walk in a neck known to be narrow, or with shocks down the back.
    flag: 'progressive-cord-signs',
    check: (facts) => {
      const { durationDays, pace } = facts.exam.onset;
      // What is called a matter of weeks or months, or is said to go on, in nobody who is known for another reason of it.
      const isSlow = pace === 'subacute' || pace === 'chronic';
      const known = facts.told('multiple-sclerosis', 'stroke', 'known-neuropathy', 'parkinson-disease', 'headache');
      const isOpen = facts.exam.course === undefined && isSlow && known.length === 0;
      const grows = (facts.exam.course === 'progressive' || isOpen) && (durationDays ?? 0) <= 730;
      if (!grows || hasPower(facts)) return none;
      const walk = facts.told('difficulty-walking', 'unsteadiness', 'leg-weakness', 'falls');
      return [
        ...each(
          facts.told('clumsiness', 'arm-weakness', 'numbness'),
          walk,
          facts.told('spinal-stenosis', 'electric-shock-on-neck-flexion', 'bladder-disturbance', 'neck-pain'),
        ),
        // Shocks down the back on bending the neck come from the cord; hands that grow clumsy with them say that it goes on.
        ...each(facts.told('electric-shock-on-neck-flexion'), facts.told('clumsiness', 'arm-weakness')),
        // A canal known to be narrow, a walk and a bladder that fail: whichever level it is, it is being closed.
        ...each(
          walk,
          facts.told('bladder-disturbance'),
          facts.told('spinal-stenosis', 'disc-herniation', ...spinalPain),
        ),
      ];
    },
    source: recalled('nice-ng127', 'limb weakness and gait unsteadiness'),
  },
  {
    // Legs that are said to fail more and more, with the walk, under a back that hurts, of which nobody says since when; of one root it would be one leg.
    flag: 'progressive-cord-signs',
    check: (facts) => {
      const isUndated = facts.isUndated && facts.exam.course === 'progressive' && !hasPower(facts);
      const known = facts.told(
        ...['parkinson-disease', 'multiple-sclerosis', 'stroke', 'known-neuropathy', 'neurogenic-claudication'],
        ...['radicular-leg-pain', 'fatigable-weakness', 'ascending-weakness', 'difficulty-with-stairs'],
      );
      const isOfOneLeg = isToldOfOneSide(facts, 'leg-weakness') || facts.reducedReflexes.length >= 4;
      return isUndated && known.length === 0 && !isOfOneLeg && facts.cranialNerveSigns.length === 0
        ? each(
            facts.told('leg-weakness'),
            facts.told('difficulty-walking', 'falls', 'unsteadiness'),
            facts.told(...spinalPain),
          )
        : none;
    },
    source: recalled('nice-ng127', 'limb weakness and gait unsteadiness'),
  },
  {
    // Arms and legs that grow weak together below a sound head, all their jerks brisk: the neck is imaged before any other name.
    flag: 'progressive-cord-signs',
    check: (facts) => {
      const arms = facts.upperMotorSigns.filter(({ item }) => item.region === 'upper-limbs');
      const head = facts.query.abnormalWhere(({ item }) => ['cranialNerves', 'higherFunction'].includes(item.section));
      const denervated = facts.query.abnormalWhere(({ item }) => item.key === 'fasciculation');
      const isFour = facts.bothArmsWeak && facts.bothLegsWeak;
      const isBrisk = isOnBothSides(arms) && isOnBothSides(facts.upperMotorSignsInLegs);
      const grows =
        facts.exam.course === 'progressive' && facts.beganWithin(28) !== 'yes' && facts.beganWithin(730) === 'yes';
      return isFour && isBrisk && grows && head.length + denervated.length === 0
        ? findingReasons([...facts.weakLimbs.slice(0, 2), ...facts.upperMotorSigns.slice(0, 3)])
        : none;
    },
    source: recalled('nice-ng127', 'limb weakness and gait unsteadiness'),
  },
  {
    // Legs that go on failing on both sides under a back that hurts or was operated on, with numbness, and no disease of nerves.
    flag: 'progressive-cord-signs',
    check: (facts) => {
      const { onset, course } = facts.exam;
      const ofNerves = facts.kindProbability('polyneuropathy', 'muscle', 'junction');
      const isGrowing = course === 'progressive' && onset.pace !== 'chronic' && facts.beganWithin(92) !== 'no';
      return isGrowing && facts.bothLegsWeak && facts.reducedReflexes.length < 4 && ofNerves < 0.5
        ? each(
            facts.told('back-pain', 'thoracic-back-pain', 'night-spinal-pain', 'spinal-surgery'),
            facts.told('numbness', 'difficulty-walking', 'bladder-disturbance'),
            findingReasons(facts.weak('lower-limbs'), 3),
          )
        : none;
    },
    source: recalled('nice-ng127', 'limb weakness and gait unsteadiness'),
  },
  {
    flag: 'progressive-cord-signs',
    check: levelOrLostLegs,
    source: recalled('nice-ng127', 'limb weakness and gait unsteadiness'),
  },
];
