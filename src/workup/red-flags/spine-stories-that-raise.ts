import type { Reason } from '../../causes/ranked-cause.ts';
import { findingReasons } from '../../causes/reasons.ts';
import { powerOf } from '../../exam/power.ts';
import { read, recalled } from '../../kernel/cite.ts';
import type { BedsideFacts } from '../bedside-facts.ts';
import { isOnBothSides, spinalPain } from './cord.ts';
import { isOfPairedNerves } from './few-muscles.ts';
import { each, none, type RaisingStory } from './story.ts';
import { isToldOfOneSide } from './told-sides.ts';

/** Days after an operation or a puncture in which blood or pus gathers. */
const afterwards = 28;

/** Cord, roots and lumbar plexus in danger, as short accounts tell of it. */
export const spineStories: readonly RaisingStory[] = [
  {
    // What fails after an operation on the spine, or a needle in it, is blood until the MRI has been seen.
    flag: 'suspected-spinal-haematoma',
    check: (facts) => {
      if (!isAfterwards(facts) || isOfPairedNerves(facts)) return none;
      return [...each(operated(facts), newlyLost(facts)), ...each(needle(facts), lostBeyondOneNerve(facts))];
    },
    source: recalled('adams-victor', 'spinal haematoma'),
  },
  {
    flag: 'suspected-cord-compression',
    check: (facts) =>
      isAfterwards(facts) &&
      !isOfPairedNerves(facts) &&
      (facts.bothArmsWeak || facts.bothLegsWeak || facts.trunkSensoryLoss.length > 0)
        ? each(
            [...operated(facts), ...needle(facts), ...facts.told('anticoagulant')].slice(0, 2),
            findingReasons([...facts.trunkSensoryLoss, ...facts.weakLimbs], 4),
            [...operated(facts), ...needle(facts), ...facts.told(...spinalPain, 'numbness')],
          )
        : none,
    source: recalled('nice-ng234', 'recognition and imaging'),
  },
  {
    // An arm and a leg that fail after a blow, on one side or both, under a face, speech and mind that are well: the neck is broken until it has been seen.
    flag: 'suspected-cord-compression',
    check: (facts) => {
      const head = [
        ...facts.query.abnormalWhere(({ item }) => item.section === 'higherFunction'),
        ...facts.cranialNerveSigns,
      ];
      return facts.cameWithin(7) && head.length === 0
        ? each(
            facts.told('trauma', 'neck-trauma', 'falls'),
            findingReasons(facts.weak('upper-limbs'), 2),
            findingReasons(facts.weak('lower-limbs'), 2),
          )
        : none;
    },
    source: recalled('nice-ng41', 'assessment for spinal injury'),
  },
  {
    // Arms said or found to have failed on both sides within days of a blow, in limbs that are not broken: the centre of the cord of the neck.
    flag: 'suspected-cord-compression',
    check: (facts) => {
      const head = facts.query.abnormalWhere(({ item }) => item.section === 'higherFunction');
      // What a blow has done stands still from the first minute; what mends is looked at in its own time.
      const isDays = facts.cameWithin(14) && facts.exam.course !== 'improving';
      const isOneLimb = facts.told('limb-fracture-or-dislocation', 'shoulder-pain', 'external-pressure').length > 0;
      if (!isDays || isOneLimb || head.length + facts.cranialNerveSigns.length > 0) return none;
      const tried = facts.query.testedWhere(({ item }) => item.section === 'power' && item.region === 'upper-limbs');
      const isUnseen = tried.length === 0 && !isToldOfOneSide(facts, 'arm-weakness');
      const arms = facts.bothArmsWeak ? findingReasons(facts.weak('upper-limbs'), 3) : none;
      return each(facts.told('trauma', 'neck-trauma', 'falls'), [
        ...arms,
        ...(isUnseen ? facts.told('arm-weakness') : none),
      ]);
    },
    source: recalled('nice-ng41', 'assessment for spinal injury'),
  },
  {
    // Blood or pus in the iliacus or psoas: the groin hurts so that nobody walks, and the femoral nerve fails.
    flag: 'suspected-spinal-haematoma',
    check: (facts) => {
      const isFresh = facts.exam.onset.pace !== 'chronic' && facts.beganWithin(afterwards) !== 'no';
      const femoral = [
        ...findingReasons(facts.query.abnormal(['power/hip-flexion', 'power/knee-extension']), 3),
        ...findingReasons(facts.reducedReflexes.filter(({ item }) => item.key === 'knee')),
        ...findingReasons(
          facts.legSensoryLoss.filter(({ place }) => place !== undefined && thigh.has(place.key)),
          2,
        ),
      ];
      const cannot = findingReasons(facts.query.abnormal(['gait/unable-to-walk', 'gait/unable-to-stand']), 1);
      const isOfTheCord = facts.upperMotorSigns.length + facts.trunkSensoryLoss.length > 0;
      return isFresh && !isOfTheCord && facts.maybeProgressing ? each(facts.told('flank-pain'), femoral, cannot) : none;
    },
    source: recalled('adams-victor', 'lumbar plexus and femoral nerve: retroperitoneal haematoma'),
  },
  {
    // One root of either leg at once from a painful back: what lies between them is pressed in the middle.
    flag: 'threatened-cauda-equina',
    check: (facts) => {
      const grows = facts.exam.course === 'progressive' && facts.exam.onset.pace !== 'chronic';
      const inTime = facts.isUndated || facts.beganWithin(grows ? 92 : afterwards) === 'yes';
      if (!inTime || !facts.maybeProgressing) return none;
      const arms = facts.query.abnormalWhere(
        ({ item }) => item.region === 'upper-limbs' && ['power', 'reflexes'].includes(item.section),
      );
      const isElsewhere = arms.length + facts.upperMotorSigns.length + facts.trunkSensoryLoss.length > 0;
      const legs = [...facts.weak('lower-limbs'), ...facts.legSensoryLoss];
      const beyondRoots = facts.kindProbability('polyneuropathy', 'polyradiculoneuropathy', 'ganglion', 'muscle');
      return !isElsewhere && isOnBothSides(legs) && beyondRoots < 0.5
        ? each(facts.told('back-pain', 'radicular-leg-pain', 'bilateral-leg-pain'), findingReasons(legs, 4))
        : none;
    },
    source: read('girft-ces-2023'),
  },
];

const thigh: ReadonlySet<string> = new Set(['front-of-thigh', 'inner-thigh', 'L2', 'L3', 'femoral-nerve-pelvis']);

function isAfterwards(facts: BedsideFacts): boolean {
  return facts.cameWithin(afterwards) && facts.maybeProgressing;
}

/** An operation on the spine of the last weeks. */
function operated(facts: BedsideFacts): readonly Reason[] {
  const recent = facts.told('recent-surgery');
  return recent.length > 0 ? each(facts.told('spinal-surgery'), recent) : none;
}

const needle = (facts: BedsideFacts): readonly Reason[] => facts.told('lumbar-puncture-or-epidural');

function newlyLost(facts: BedsideFacts): readonly Reason[] {
  return [
    ...findingReasons(facts.weakLimbs, 4),
    ...facts.saddleLoss.slice(0, 1),
    ...facts.sphincterFailure.slice(0, 1),
    ...facts.told('leg-weakness', 'arm-weakness'),
  ];
}

/** Beyond what a stretched or pressed nerve of one leg does at a birth or on a table: both legs, hip and foot, saddle or bladder. */
function lostBeyondOneNerve(facts: BedsideFacts): readonly Reason[] {
  const weak = facts.weak('lower-limbs');
  const joints = new Set(weak.filter((one) => (powerOf(one) ?? 5) <= 3).map(({ item }) => item.key.split('-')[0]));
  const isSpread = facts.bothLegsWeak || joints.size >= 3 || isOnBothSides(facts.legSensoryLoss);
  const below = [...facts.saddleLoss, ...facts.sphincterFailure];
  if (!isSpread && below.length + facts.trunkSensoryLoss.length === 0) return none;
  return [...findingReasons([...weak, ...facts.legSensoryLoss, ...facts.trunkSensoryLoss], 4), ...below.slice(0, 2)];
}
