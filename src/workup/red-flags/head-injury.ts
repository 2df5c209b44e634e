import type { Reason } from '../../causes/ranked-cause.ts';
import { findingReasons } from '../../causes/reasons.ts';
import type { Finding } from '../../exam/finding.ts';
import type { BedsideFacts } from '../bedside-facts.ts';
import { isOfOneLimb } from './beside-likely-causes.ts';
import { clouded } from './consciousness.ts';
import { notOfLooseStones } from './loose-stones.ts';
import { present, type Verdict } from './rule.ts';
import { each, none } from './story.ts';
import { brainSigns, oneSidedWeakness, weakHalf } from './sudden-deficit.ts';

/** Signs that place a deficit in the brain, or that a hemisphere presses on the third nerve. */
export const focalBrainSigns = [
  ...brainSigns,
  'cranial-nerves/dilated-pupil',
  'cranial-nerves/unreactive-pupil',
  'cranial-nerves/sluggish-pupil',
  'special-tests/pronator-drift',
];

/** What happened before the knock, or after it, is not remembered. */
const lostMemory = ['higher-function/amnesia', 'higher-function/memory-impairment'];

/** A knock on the head within eight weeks, or within three months where something grows, with anything that bleeding brings. */
export function checkHeadInjury(facts: BedsideFacts): Verdict | null {
  const injury = facts.told('head-injury');
  if (facts.beganWithin(92) !== 'yes') return null;
  if (injury.length === 0) {
    const dazed = dazedByInjury(facts);
    return dazed.length > 0 ? present(dazed) : checkSilentSubdural(facts);
  }
  if (facts.beganWithin(56) !== 'yes' && facts.exam.course !== 'progressive') return null;
  const signs = [
    ...findingReasons(facts.query.abnormal([...clouded, ...lostMemory, ...focalBrainSigns]), 4),
    // A cranial nerve that fails after a blow is a focal deficit, and may be a broken base of the skull.
    ...findingReasons(facts.cranialNerveSigns.filter(notOfLooseStones(facts)), 3),
    ...facts.told('seizure', 'vomiting', 'anticoagulant', 'bleeding-disorder', 'loss-of-consciousness'),
    // A broken base of the skull leaks.
    ...findingReasons(facts.query.abnormal(['inspection/ear-or-nose-leak', 'involuntary-movements/seizure-seen'])),
    ...(isPlainlyOfALimb(facts) ? [] : findingReasons(oneSidedWeakness(facts), 3)),
    ...findingReasons(facts.upperMotorSigns, 2),
    ...(facts.bothLegsWeak ? findingReasons(facts.weak('lower-limbs'), 2) : []),
    ...(facts.isProgressive && facts.exam.onset.pace !== 'hyperacute' ? growingAfterInjury(facts) : []),
  ];
  return signs.length > 0 ? present([...injury, ...signs]) : null;
}

/** All that was found is in one limb, and its nerves are the likeliest place: what struck the head struck the shoulder too. */
const isPlainlyOfALimb = (facts: BedsideFacts): boolean => isOfOneLimb(facts) && facts.brainProbability < 0.15;

/** An injury of which nobody has said where, and a mind that went out, clouds or forgets within days: the head was struck. */
function dazedByInjury(facts: BedsideFacts): readonly Reason[] {
  return facts.cameWithin(14) && facts.told('fever').length === 0
    ? each(facts.told('trauma'), [
        ...findingReasons(facts.query.abnormal([...clouded, ...lostMemory]), 3),
        ...facts.told('loss-of-consciousness', 'seizure'),
      ])
    : none;
}

/** A walk, a mind or a speech that fails little by little after a knock is a subdural haematoma: half have no headache. */
function growingAfterInjury(facts: BedsideFacts): readonly Reason[] {
  // The ache of the first days is that of the knock, unless it is said to grow.
  const isGrowingPain = facts.exam.course === 'progressive' || facts.beganWithin(3) !== 'yes';
  return [
    ...findingReasons(
      facts.query.abnormalWhere(({ item }) => ['gait', 'higherFunction', 'coordination'].includes(item.section)),
      3,
    ),
    ...(isGrowingPain ? facts.told('headache', 'morning-headache') : []),
    ...facts.told('cognitive-change', 'behaviour-change', 'slurred-speech'),
    ...facts.told('speech-difficulty', 'difficulty-walking', 'unsteadiness', 'falls'),
  ];
}

/** One half of the body that has failed over days to weeks, and not at once. */
function slowHemiparesis(facts: BedsideFacts): readonly Finding[] {
  const isSlow = facts.exam.onset.pace !== 'hyperacute' && facts.beganWithin(3) !== 'yes';
  return isSlow && facts.maybeProgressing ? weakHalf(facts).slice(0, 2) : [];
}

/** Old people, drinkers and those whose blood does not clot bleed under the dura without an injury that anybody remembers. */
function checkSilentSubdural(facts: BedsideFacts): Verdict | null {
  const thin = facts.told('anticoagulant', 'bleeding-disorder');
  const fall = facts.told('falls');
  const pain = facts.told('headache', 'new-headache', 'morning-headache');
  const isOld = (facts.exam.person.ageYears ?? 0) >= 60;
  const mind = findingReasons([...facts.query.abnormal(clouded), ...slowHemiparesis(facts)], 2);
  // A mind that is said to fail over weeks of falls, or an ache with vomiting after them.
  const grows = facts.exam.course === 'progressive' && facts.exam.onset.pace !== 'chronic';
  const also = [
    ...mind,
    ...(grows ? facts.told('cognitive-change') : []),
    ...(fall.length > 0 && pain.length > 0 ? facts.told('vomiting') : []),
  ];
  const risk = [...thin, ...(isOld ? [...fall, ...facts.told('alcohol-excess')] : [])];
  return risk.length > 0 && also.length > 0 && pain.length + fall.length > 0
    ? present([...new Set([...risk, ...pain, ...fall, ...also])])
    : null;
}
