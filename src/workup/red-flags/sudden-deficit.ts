import type { ExamQuery } from '../../causes/exam-query.ts';
import type { Reason } from '../../causes/ranked-cause.ts';
import { findingReasons } from '../../causes/reasons.ts';
import type { Finding } from '../../exam/finding.ts';
import { type BodySide, bodySides } from '../../kernel/side.ts';
import type { BedsideFacts } from '../bedside-facts.ts';
import { eyeMovementSigns } from './eye-movement-signs.ts';
import { feverReasons } from './fever.ts';
import { notOfLooseStones } from './loose-stones.ts';
import { hasToxicLithium } from './measured-poison.ts';
import { isToldOfOneSide } from './told-sides.ts';

/** Signs that place a sudden deficit in the brain by themselves. */
export const brainSigns = [
  'higher-function/expressive-aphasia',
  'higher-function/receptive-aphasia',
  'higher-function/global-aphasia',
  'higher-function/neglect',
  'cranial-nerves/lower-facial-weakness',
  'cranial-nerves/homonymous-hemianopia',
  'cranial-nerves/upper-quadrantanopia',
  'cranial-nerves/lower-quadrantanopia',
  'cranial-nerves/gaze-palsy',
  'cranial-nerves/forced-gaze-deviation',
  'cranial-nerves/internuclear-ophthalmoplegia',
  'cranial-nerves/skew-deviation',
  'cranial-nerves/direction-changing-nystagmus',
  'cranial-nerves/vertical-nystagmus',
  'cranial-nerves/upbeat-nystagmus',
  'cranial-nerves/pendular-nystagmus',
  'gait/hemiplegic',
];

/** The same for what came at once; in a slow disease these say little of where it lies. */
const suddenBrainSigns = [
  ...brainSigns,
  'cranial-nerves/saccadic-dysmetria',
  'cranial-nerves/vertical-gaze-palsy',
  'cranial-nerves/downgaze-palsy',
  'involuntary-movements/hemiballism',
];

/** Days within which a deficit that came over hours to days, and lies in the brain, is treated as a stroke. */
const stillAcute = 3;

/** Days within which a stroke is still told as one that came over hours to days, where nothing else accounts for it. Judged. */
const aWeek = 7;

/** What is found of these; eyes that beat on a change of position are of the ear, unless the vertigo does not stop. */
function suddenSignsOfBrain(facts: BedsideFacts): readonly Finding[] {
  const found = centralSigns(facts.query, suddenBrainSigns);
  return facts.told('continuous-vertigo').length > 0 ? found : found.filter(notOfLooseStones(facts));
}

/** Weakness of the limbs of one side alone. */
export function oneSidedWeakness(facts: BedsideFacts): readonly Finding[] {
  return onOneSide(facts.weakLimbs);
}

/** Weak movements of arm and leg of one half of the body, when nothing of the other half is weak; else none. */
export function weakHalf(facts: BedsideFacts): readonly Finding[] {
  const half = oneSidedWeakness(facts);
  return new Set(half.map(({ item }) => item.region)).size === 2 ? half : [];
}

/** Signs of the brain among these; a face that is weak below and above is that of its nerve. */
export function centralSigns(query: ExamQuery, items: readonly string[] = brainSigns): readonly Finding[] {
  return query
    .abnormal(items)
    .filter(
      ({ item, side }) =>
        item.key !== 'lower-facial-weakness' ||
        query.abnormal(['cranial-nerves/upper-facial-weakness', 'cranial-nerves/facial-weakness'], side).length === 0,
    );
}

/**
 * Within seconds to hours, in the last week, in the last two where it surely lies in the brain, or in the last four where it
 * still grows; or at most a day ago. A deficit of days counts too when it surely lies in the brain, by its signs or by its
 * place, for a stroke may come in steps and the hour of onset is often not known.
 */
function isSudden(facts: BedsideFacts): boolean {
  const { exam, beganWithin, brainProbability } = facts;
  const { pace, durationDays } = exam.onset;
  // Words are lost in the brain alone, whoever has tested them.
  const words = facts.told('speech-difficulty').length > 0 && facts.told('resolved-deficit').length === 0;
  const inBrain = brainProbability >= 0.8 || suddenSignsOfBrain(facts).length > 0 || words;
  if (isStrokeOfOld(facts)) return false;
  if (pace === 'hyperacute') {
    const days = exam.course === 'progressive' ? 28 : inBrain ? 14 : 7;
    return beganWithin(days) === 'yes';
  }
  if (pace !== undefined && pace !== 'acute') return false;
  if (durationDays === undefined) return pace === 'acute' && inBrain;
  const days = pace === 'acute' && isVascular(facts) ? aWeek : stillAcute;
  return durationDays <= 1 || (inBrain && durationDays <= days);
}

/** A blow of which nobody says when, that has come to rest in one who is known to have had a stroke, is that stroke. */
export function isStrokeOfOld({ exam, told }: BedsideFacts): boolean {
  const { pace, durationDays } = exam.onset;
  const isAtRest = exam.course === 'static' && durationDays === undefined;
  return pace === 'hyperacute' && isAtRest && told('stroke').length > 0;
}

/**
 * Whether a deficit of days that no longer grows is a stroke's rather than that of inflammation: half a body or the language
 * lost at any age, any sign from the age of fifty, and with a pain of the neck or head that came with it.
 */
function isVascular(facts: BedsideFacts): boolean {
  const { exam, query } = facts;
  if (exam.course === 'progressive' || facts.told('multiple-sclerosis').length > 0 || feverReasons(facts).length > 0)
    return false;
  const halfBody = bodySides.some(
    (side) => facts.weak('upper-limbs', side).length > 0 && facts.weak('lower-limbs', side).length > 0,
  );
  const language = query.abnormal([
    'higher-function/expressive-aphasia',
    'higher-function/receptive-aphasia',
    'higher-function/global-aphasia',
  ]);
  const pain = facts.told('neck-pain', 'new-headache', 'thunderclap-headache');
  return (
    (halfBody && oneSidedWeakness(facts).length > 0) ||
    language.length + pain.length > 0 ||
    (exam.person.ageYears ?? 0) >= 50
  );
}

/**
 * Signs of a focal deficit of the brain that began suddenly. A palsy of one limb alone counts unless upper motor neuron
 * signs are absent and the brain holds less than a tenth of the probability: a wrist drop found on waking is sudden too.
 */
export function suddenFocalSigns(facts: BedsideFacts): readonly Reason[] {
  if (!isSudden(facts) || isOneJointInjured(facts) || isOneLimbHurt(facts) || isWastedLimb(facts)) return [];
  if (isHipOfABirth(facts) || isSwayingChild(facts) || isPoisonedEvenly(facts)) return [];
  const brain = [...suddenSignsOfBrain(facts), ...oneSidedFlap(facts)];
  const halfBody = bodySides.flatMap((side) => {
    const arm = facts.weak('upper-limbs', side);
    const leg = facts.weak('lower-limbs', side);
    return arm.length > 0 && leg.length > 0 ? [...arm.slice(0, 2), ...leg.slice(0, 2)] : [];
  });
  const bothHalves = facts.bothArmsWeak && facts.bothLegsWeak;
  // A sign of a functional disorder does not rule a stroke out: it is asked what else the weakness could be.
  const other = facts.localisation.conclusion === 'not-anatomical' ? 1 - facts.kindProbability('none') : 1;
  const central = facts.brainProbability >= 0.1 * other;
  const inBrain = facts.brainProbability >= 0.5;
  const ataxia = facts.query.abnormalWhere(({ item }) => item.probe.kind === 'cerebellar');
  const found = [
    ...brain,
    ...(bothHalves ? [] : halfBody),
    ...(central
      ? [
          ...facts.weakLimbs.slice(0, 2),
          ...ataxia.filter(notOfAFunctionalGait(facts)).slice(0, 2),
          ...oneSidedTract(facts),
        ]
      : []),
    ...struckEyes(facts),
    ...(inBrain ? facts.abnormalFindings.filter(notOfAFunctionalGait(facts)).slice(0, 3) : []),
    ...facts.query.abnormal(['special-tests/pronator-drift']),
  ];
  const isGone = facts.told('resolved-deficit').length > 0;
  const told = facts.told('continuous-vertigo', ...(isGone ? [] : ['slurred-speech']));
  // Two complaints of the brainstem at once need no sign: few other places give both within seconds to hours.
  const ofTheBrainstem = facts.told('diplopia', 'slurred-speech', 'vertigo', 'continuous-vertigo');
  const isPair = facts.told('diplopia').length > 0 && ofTheBrainstem.length > 1 && !isGone;
  const pair = isPair && facts.exam.onset.pace === 'hyperacute' ? ofTheBrainstem : [];
  const vertigo = pair.length > 0 ? pair : told.length > 0 && (central || brain.length > 0) ? told : [];
  const speech = isGone ? [] : facts.told('speech-difficulty');
  // Before anybody has tested power, a limb said to have failed within seconds counts; pain of the spine or an injury speaks for the cord or a nerve.
  const untested = facts.query.testedWhere(({ item }) => item.section === 'power').length === 0;
  const elsewhere = facts.told(
    'resolved-deficit',
    'back-pain',
    'thoracic-back-pain',
    'neck-pain',
    'trauma',
    'deep-sleep-on-arm',
    'external-pressure',
    'hyperthyroidism',
    'episodic-weakness',
    // What climbs from the legs to the arms is not of an artery of the brain.
    'ascending-weakness',
  );
  const isBlow = facts.exam.onset.pace === 'hyperacute' && untested && elsewhere.length === 0;
  const isLeg = isToldOfOneSide(facts, 'leg-weakness') && facts.told(...notForTheLeg).length === 0;
  const limb = isBlow ? facts.told('arm-weakness', ...(isLeg ? ['leg-weakness'] : [])) : [];
  return [...findingReasons([...new Set(found)], 5), ...speech, ...limb, ...vertigo];
}

/**
 * Eyes that ceased to move together at once, where the brainstem is a likely place: part of a nerve, or more than one. Pain,
 * fatigue, an injury and the sugar of small vessels speak for the nerve, the junction or the orbit.
 */
function struckEyes(facts: BedsideFacts): readonly Finding[] {
  if (facts.exam.onset.pace !== 'hyperacute' || facts.brainProbability < 0.15) return [];
  const other = facts.told(
    ...['eye-pain', 'headache', 'new-headache', 'trauma', 'head-injury', 'fatigable-weakness', 'myasthenia-gravis'],
    ...['diabetes-mellitus', 'similar-attacks-before'],
  );
  return other.length > 0 ? [] : facts.query.abnormal(eyeMovementSigns).slice(0, 3);
}

/** Weakness about one joint alone, after what harms the nerves there, is that of a nerve; the hand is left to the brain. */
function isOneJointInjured(facts: BedsideFacts): boolean {
  const weak = facts.weakLimbs;
  const joints = new Set(weak.map(({ item, side }) => `${item.key.split('-')[0]} ${side}`));
  const [joint = ''] = joints;
  const isProximal = joints.size === 1 && /^(shoulder|hip|knee|ankle) /.test(joint);
  const higher = facts.query.abnormalWhere(({ item }) => item.section === 'higherFunction');
  return (
    isProximal &&
    facts.cranialNerveSigns.length + higher.length + facts.upperMotorSigns.length === 0 &&
    facts.told('recent-surgery', 'neck-or-chest-surgery', 'hip-replacement', 'trauma', 'external-pressure').length > 0
  );
}

/**
 * One limb alone that is weak after it was pulled, struck or lain upon, below a sound head, where its nerves are much the
 * likeliest place: a palsy found on waking is sudden too.
 */
function isOneLimbHurt(facts: BedsideFacts): boolean {
  const weak = onOneSide(facts.weakLimbs);
  const regions = new Set(weak.map(({ item }) => item.region));
  const higher = facts.query.abnormalWhere(({ item }) => item.section === 'higherFunction');
  const elsewhere = [...facts.cranialNerveSigns, ...higher, ...facts.upperMotorSigns, ...facts.trunkSensoryLoss];
  const hurt = facts.told(
    ...['trauma', 'limb-fracture-or-dislocation', 'recent-surgery', 'external-pressure', 'deep-sleep-on-arm'],
    ...['elbow-leaning', 'leg-crossing', 'prolonged-squatting', 'needle-near-nerve'],
    ...(regions.has('lower-limbs') ? ['lumbar-puncture-or-epidural'] : []),
  );
  const inNerves = facts.kindProbability('nerve', 'multiple-nerves', 'plexus', 'root', 'cauda-equina');
  const isInjuredAbove = facts.told('head-injury', 'neck-trauma', 'speech-difficulty', 'slurred-speech').length > 0;
  return (
    weak.length > 0 &&
    regions.size === 1 &&
    elsewhere.length === 0 &&
    hurt.length > 0 &&
    !isInjuredAbove &&
    inNerves >= 0.6
  );
}

/**
 * A leg that is weak at hip or knee alone, about a birth, below a sound head and with nothing of the tracts: the nerves of the
 * pelvis were pressed. A leg that the brain does not move fails at the foot first.
 */
export function isHipOfABirth(facts: BedsideFacts): boolean {
  const weak = onOneSide(facts.weakLimbs);
  const higher = facts.query.abnormalWhere(({ item }) => item.section === 'higherFunction');
  const elsewhere = [...facts.cranialNerveSigns, ...higher, ...facts.upperMotorSigns, ...facts.trunkSensoryLoss];
  const isProximal = weak.every(({ item }) => /^(hip|knee)-/.test(item.key));
  const ofTheHead = facts.told('headache', 'new-headache', 'thunderclap-headache', 'seizure', 'speech-difficulty');
  return (
    weak.length > 0 &&
    isProximal &&
    elsewhere.length + ofTheHead.length === 0 &&
    facts.told('pregnancy').length > 0 &&
    facts.told('arm-weakness', 'slurred-speech', 'visual-loss', 'face-numbness', 'face-droop').length === 0
  );
}

/**
 * A child who sways over days, both halves alike, and shows nothing else: an infection of the weeks before or something swallowed,
 * which have a flag of their own; a stroke of childhood shows on one half or strikes within minutes (Ryan and Engle 2003, from memory).
 */
function isSwayingChild(facts: BedsideFacts): boolean {
  const { exam, abnormalFindings, told } = facts;
  if ((exam.person.ageYears ?? 16) >= 16 || exam.onset.pace === 'hyperacute') return false;
  const swaying = abnormalFindings.filter(
    ({ item, value }) =>
      item.key === 'ataxic' || (item.probe.kind === 'cerebellar' && value !== 'impaired-by-weakness'),
  );
  const isAll =
    swaying.length > 0 && abnormalFindings.every((one) => swaying.includes(one) || ofACerebellum.has(one.item.key));
  const isOneSided = onOneSide(swaying.filter(({ side }) => side !== 'midline')).length > 0;
  const also = told(
    'headache',
    'thunderclap-headache',
    'neck-pain',
    'head-injury',
    'neck-trauma',
    'congenital-heart-disease',
  );
  return isAll && !isOneSided && also.length === 0;
}

const ofACerebellum: ReadonlySet<string> = new Set([
  'mutism',
  'cerebellar-dysarthria',
  'dysarthria',
  'intention-tremor',
]);

/** Both halves that sway, shake and beat alike under a level that poisons the cerebellum: a stroke takes one half, or strikes at once. */
export function isPoisonedEvenly(facts: BedsideFacts): boolean {
  if (!hasToxicLithium(facts) || facts.exam.onset.pace === 'hyperacute') return false;
  const signsOf = (own: BodySide): ReadonlySet<Finding['item']> =>
    new Set(facts.abnormalFindings.filter(({ side }) => side === own).map(({ item }) => item));
  const [left, right] = [signsOf('left'), signsOf('right')];
  return [...left].every((sign) => right.has(sign)) && left.size === right.size && oneSidedTract(facts).length === 0;
}

/** One limb alone that is weak and has grown thin, below a sound head: muscle takes weeks to waste, whatever brought it to notice. */
function isWastedLimb(facts: BedsideFacts): boolean {
  const thin = facts.query.abnormalWhere(({ item }) => item.key === 'wasting');
  const higher = facts.query.abnormalWhere(({ item }) => item.section === 'higherFunction');
  const regions = new Set(facts.weakLimbs.map(({ item, side }) => `${item.region} ${side}`));
  const isSound = facts.cranialNerveSigns.length + higher.length + facts.upperMotorSigns.length === 0;
  return (
    thin.length > 0 && regions.size <= 1 && isSound && facts.told('slurred-speech', 'speech-difficulty').length === 0
  );
}

/** A gait that fits no lesion, and what goes with it, is no sign of a place by itself; beside a complaint of the head it is. */
function notOfAFunctionalGait({ query, told }: BedsideFacts): (finding: Finding) => boolean {
  const isFunctional = query.hasAbnormal('gait/functional');
  const head = told(
    ...['vertigo', 'continuous-vertigo', 'headache', 'new-headache', 'thunderclap-headache', 'vomiting', 'diplopia'],
    ...['slurred-speech', 'speech-difficulty', 'dysphagia', 'face-numbness', 'neck-pain'],
  );
  return ({ item }) => !isFunctional || head.length > 0 || item.section !== 'gait';
}

/** A flap of one side alone is a lesion of the other half of the brain; that of a failing metabolism is on both. */
function oneSidedFlap({ query }: BedsideFacts): readonly Finding[] {
  return onOneSide(query.abnormal(['involuntary-movements/asterixis']));
}

/** Extensor plantar, clonus or spastic tone of one side alone. Brisk reflexes alone are met in health. */
function oneSidedTract({ upperMotorSigns }: BedsideFacts): readonly Finding[] {
  return onOneSide(upperMotorSigns.filter(({ item }) => item.scale !== 'reflex-grade')).slice(0, 2);
}

/** What spreads over minutes, and has come and gone like this before, is the aura of migraine. */
export const isKnownAura = ({ told }: BedsideFacts): boolean =>
  told('spreading-over-minutes').length > 0 && told('similar-attacks-before').length > 0;

/** These where all of them lie on one side of the body. */
export function onOneSide(found: readonly Finding[]): readonly Finding[] {
  const sides = new Set(found.map(({ side }) => side));
  return sides.size === 1 && (sides.has('left') || sides.has('right')) ? found : [];
}

/** What makes a leg fail at once without a lesion of the brain. */
const notForTheLeg = [
  'leg-pain',
  'radicular-leg-pain',
  'bladder-disturbance',
  'saddle-numbness',
  'leg-crossing',
  'prolonged-squatting',
  'recent-surgery',
] as const;
