import type { Reason } from '../../causes/ranked-cause.ts';
import { findingReasons, missing } from '../../causes/reasons.ts';
import { type Finding, isLost } from '../../exam/finding.ts';
import { isOnLimb } from '../../exam/place-on-limb.ts';
import { powerOf } from '../../exam/power.ts';
import { bodySides } from '../../kernel/side.ts';
import type { BedsideFacts } from '../bedside-facts.ts';
import { feverReasons } from './fever.ts';
import { isOfPairedNerves } from './few-muscles.ts';
import { absent, notAssessable, orTold, present, type Verdict } from './rule.ts';
import { each, none } from './story.ts';

export const spinalPain = [
  'back-pain',
  'thoracic-back-pain',
  'neck-pain',
  'night-spinal-pain',
  'pain-on-straining',
] as const;
export const unknownOnset = missing('time of onset not stated');

/** Days of what is told as a month of weeks. */
export const aMonth = 31;

/** Probability from which one lost function is taken for a lesion of the cord. Judged. */
const mostlyCord = 0.7;

const bladderFailure = [
  'sphincters/urinary-retention',
  'sphincters/palpable-bladder',
  'sphincters/urinary-incontinence',
  'sphincters/loss-of-bladder-sensation',
];

/** A bladder that fails, told or found. */
export function failingBladder(facts: BedsideFacts): readonly Reason[] {
  return [...facts.told('bladder-disturbance'), ...findingReasons(facts.query.abnormal(bladderFailure))];
}

/** Upper motor neuron signs with something that only the cord explains on both sides or below a level. */
export function cordSigns(facts: BedsideFacts): readonly Reason[] {
  const sides = new Set(
    facts.upperMotorSignsInLegs.map((finding) => finding.side).filter((side) => side !== 'midline'),
  );
  const bilateral = sides.size === 2;
  const level = facts.trunkSensoryLoss;
  const failing = facts.sphincterFailure;
  if (facts.upperMotorSignsInLegs.length === 0) return [];
  // Brisk reflexes on both sides alone are met in health; with the finger-flexor signs of both hands they are the neck's.
  const beyondReflexes =
    facts.upperMotorSignsInLegs.some(({ item }) => item.scale !== 'reflex-grade') ||
    isOnBothSides(fingerFlexors(facts));
  const trouble = facts.query.abnormal([
    'gait/spastic',
    'gait/scissoring',
    'gait/sensory-ataxic',
    'gait/romberg',
    'gait/unable-to-walk',
  ]);
  // What has come over years with numb feet is a disease of nerves and tracts, and no compression.
  const young = facts.beganWithin(730) === 'no' ? 0 : facts.legSensoryLoss.length + trouble.length;
  const failure = facts.weakLimbs.length + failing.length + young;
  const told = facts.told('leg-weakness', 'difficulty-walking', 'numbness', 'bladder-disturbance');
  // One extensor plantar is enough where the spine hurts or a band is felt and the legs or the bladder are said to fail.
  const spine = facts.told('thoracic-back-pain', 'back-pain', 'neck-pain', 'tight-band');
  const isTold = beyondReflexes && spine.length > 0 && told.length > 0;
  const walk = facts.told('difficulty-walking', 'leg-weakness', 'unsteadiness', 'falls');
  // A walk that has gone wrong under toes that go up on both sides, with nothing of the head to explain it.
  const isStiffWalk =
    isOnBothSides(extensorPlantars(facts)) &&
    walk.length > 0 &&
    facts.cranialNerveSigns.length === 0 &&
    facts.beganWithin(730) !== 'no';
  // The finger-flexor signs of both hands over brisk legs, with a walk or hands that have changed.
  const hands = [...walk, ...facts.told('clumsiness', 'numbness', 'arm-weakness')];
  const isOfTheNeck = isOnBothSides(fingerFlexors(facts)) && walk.length > 0 && hands.length > 1;
  const isFailing = failure > 0 || (isOfTheNeck && facts.beganWithin(730) !== 'no');
  const enough = level.length > 0 || (bilateral && beyondReflexes && isFailing) || isTold || isStiffWalk;
  if (!enough) return [];
  return [
    ...findingReasons(facts.upperMotorSignsInLegs, 3),
    ...findingReasons(level, 2),
    ...findingReasons(facts.weak('lower-limbs'), 2),
    ...failing.slice(0, 1),
    ...(isTold ? [...spine.slice(0, 1), ...told.slice(0, 2)] : []),
    ...(isStiffWalk ? walk.slice(0, 2) : []),
  ];
}

function extensorPlantars({ upperMotorSignsInLegs }: BedsideFacts): readonly Finding[] {
  return upperMotorSignsInLegs.filter(({ item }) => item.section === 'plantars');
}

/** Legs that are weak below a level of lost feeling on the trunk: the cord, though nobody tried a reflex. */
export function weakBelowALevel(facts: BedsideFacts): readonly Reason[] {
  const legs = facts.weak('lower-limbs');
  if (legs.length === 0 || facts.trunkSensoryLoss.length === 0) return [];
  return [...findingReasons(facts.trunkSensoryLoss, 2), ...findingReasons(legs, 3)];
}

/** Both legs that go on growing weak with a walk that sways, where the cord is the likeliest place and nobody has tried the jerks. */
export function weakAndSwaying(facts: BedsideFacts): readonly Reason[] {
  const { query } = facts;
  const head = query.abnormalWhere(({ item }) => ['cranialNerves', 'higherFunction'].includes(item.section));
  const tried = query.testedWhere(({ item }) => item.scale === 'reflex-grade' && item.region === 'lower-limbs');
  const grows = facts.exam.course === 'progressive' && facts.beganWithin(730) === 'yes';
  if (!grows || !facts.bothLegsWeak || head.length + tried.length > 0 || facts.kindProbability('cord') < 0.5)
    return none;
  return each(
    findingReasons(facts.weak('lower-limbs'), 3),
    findingReasons(query.abnormal(['gait/ataxic', 'gait/sensory-ataxic', 'gait/spastic', 'gait/romberg']), 2),
  );
}

/** Arms and legs that grow weak where the joint of the upper neck is known to slip: Down syndrome, rheumatoid arthritis. */
export function weakUnderASlippingNeck(facts: BedsideFacts): readonly Reason[] {
  if (!facts.bothLegsWeak || !facts.bothArmsWeak || isAreflexicAllOver(facts)) return [];
  return each(facts.told('down-syndrome', 'rheumatoid-arthritis'), findingReasons(facts.weakLimbs, 4));
}

function fingerFlexors({ upperMotorSigns }: BedsideFacts): readonly Finding[] {
  return upperMotorSigns.filter(({ item }) => item.probe.kind === 'upper-motor' && item.region !== 'lower-limbs');
}

export function isOnBothSides(found: readonly Finding[]): boolean {
  return bodySides.every((side) => found.some((one) => one.side === side));
}

/**
 * Pain or tenderness of the spine with numb or weak arms on both sides, or with a leg that hardly moves and cannot carry,
 * or a fever: too much for one root. Where the reflexes are lost all over it is a disease of nerves.
 */
function isSpinalAtBothSides(facts: BedsideFacts): boolean {
  const { query } = facts;
  const tender = query.abnormal(['inspection/spinal-tenderness']);
  const spine = facts.told('thoracic-back-pain', 'neck-pain', 'back-pain', 'night-spinal-pain').length + tender.length;
  if (spine === 0 || isAreflexicAllOver(facts)) return false;
  const numbArms = query.abnormalWhere(
    ({ item, place }) => item.section === 'sensation' && isOnLimb(place, 'upper-limbs'),
  );
  const arms = [...numbArms, ...facts.weak('upper-limbs')];
  const isBoth = (['left', 'right'] as const).every((side) => arms.some((one) => one.side === side));
  const leg = facts.weak('lower-limbs').some((finding) => (powerOf(finding) ?? 5) <= 2);
  const cannotCarry = query.hasAbnormal('gait/unable-to-walk') || query.hasAbnormal('gait/unable-to-stand');
  return (
    (isBoth && (tender.length > 0 || facts.told('thoracic-back-pain').length > 0)) ||
    (leg && (cannotCarry || feverReasons(facts).length > 0)) ||
    (facts.bothLegsWeak && cannotCarry && facts.lowestLimbPower <= 3 && facts.reducedReflexes.length === 0)
  );
}

/** Lost reflexes of the legs below kept ones of the arms are spinal shock, and no disease of nerves. */
function isAreflexicAllOver({ query, reducedReflexes }: BedsideFacts): boolean {
  const arms = query.testedWhere(({ item }) => item.scale === 'reflex-grade' && item.region === 'upper-limbs');
  const isKept = arms.length >= 4 && arms.every((finding) => !reducedReflexes.includes(finding));
  return reducedReflexes.length >= 4 && !isKept;
}

function areArmJerksLost({ reducedReflexes }: BedsideFacts): boolean {
  return isOnBothSides(reducedReflexes.filter(({ item }) => item.region === 'upper-limbs'));
}

/**
 * Both legs that within three days hardly move under arms not known to be weak: a neuropathy seldom goes so far so soon and
 * spares the arms, and shock of the cord takes the jerks too.
 */
function areLegsLostInDays(facts: BedsideFacts): boolean {
  const isLost = bodySides.every((side) => facts.weak('lower-limbs', side).some((one) => (powerOf(one) ?? 5) <= 2));
  const isOther =
    facts.weak('upper-limbs').length + facts.cranialNerveSigns.length > 0 ||
    areArmJerksLost(facts) ||
    isOfPairedNerves(facts) ||
    facts.query.quantity('potassium', 'mmol/L') !== undefined ||
    facts.told('episodic-weakness', 'similar-attacks-before', 'hyperthyroidism', ...pressOnNerves).length > 0 ||
    facts.kindProbability('muscle', 'junction') >= 0.5;
  return isLost && facts.beganWithin(3) === 'yes' && facts.maybeProgressing && !isOther;
}

/** One side weak and the other numb to pin or heat on leg or trunk, below a head without signs: half a cord, whatever the jerks. */
export function crossedLoss(facts: BedsideFacts): readonly Reason[] {
  const head = facts.query.abnormalWhere(({ item }) => ['cranialNerves', 'higherFunction'].includes(item.section));
  if (head.length > 0 || facts.kindProbability('cord') < 0.5) return none;
  const numb = [...facts.legSensoryLoss, ...facts.trunkSensoryLoss].filter(
    ({ modality }) => modality === 'pinprick' || modality === 'temperature',
  );
  for (const side of bodySides) {
    const weak = facts.weak('lower-limbs', side);
    const crossed = numb.filter((one) => one.side !== side);
    const isOneSided = weak.length > 0 && weak.length === facts.weak('lower-limbs').length;
    if (isOneSided && crossed.length > 0 && crossed.length === numb.length)
      return findingReasons([...weak.slice(0, 3), ...crossed.slice(0, 2)]);
  }
  return none;
}

/** Arms on both sides that have withered, or whose jerks are lost: the segments at the level of a lesion of the neck. */
export function failingArms({ query, reducedReflexes }: BedsideFacts): readonly Finding[] {
  const lost = [
    ...query.abnormalWhere(({ item, place }) => item.key === 'wasting' && isOnLimb(place, 'upper-limbs')),
    ...reducedReflexes.filter(({ item }) => item.region === 'upper-limbs'),
  ];
  return isOnBothSides(lost) ? lost : [];
}

/** Vibration or the position of joints lost in both legs: below brisk jerks these are the dorsal columns, for a neuropathy takes the jerks first. */
export function lostPositionOfLegs({ legSensoryLoss }: BedsideFacts): readonly Finding[] {
  const lost = legSensoryLoss.filter(({ modality }) => modality === 'vibration' || modality === 'joint-position');
  return isOnBothSides(lost) ? lost : [];
}

/** Pin and heat lost over both arms and not over the legs, in arms that have withered or lost their jerks: the centre of the cord of the neck. */
export function suspendedLoss(facts: BedsideFacts): readonly Finding[] {
  const numb = facts.query.abnormalWhere(
    ({ modality, place }) => (modality === 'pinprick' || modality === 'temperature') && isOnLimb(place, 'upper-limbs'),
  );
  const isOfTheArms = isOnBothSides(numb) && facts.legSensoryLoss.length === 0 && failingArms(facts).length > 0;
  return isOfTheArms ? numb : [];
}

/** Both arms, with the legs or without, that fail after an injury of the neck or with a pain of the neck that struck. */
function isBrokenNeck(facts: BedsideFacts): boolean {
  const struck = facts.exam.onset.pace === 'hyperacute' && facts.told('neck-pain').length > 0;
  return facts.bothArmsWeak && (struck || (facts.bothLegsWeak && facts.told('neck-trauma').length > 0));
}

/** Legs that are dead and numb with a bladder that does not empty, all within days: shock of the cord, though the jerks are lost. */
function areLegsAndBladderLost(facts: BedsideFacts): boolean {
  return (
    facts.bothLegsWeak &&
    facts.lowestLimbPower <= 1 &&
    facts.weak('upper-limbs').length === 0 &&
    facts.beganWithin(3) === 'yes' &&
    isOnBothSides(facts.legSensoryLoss) &&
    facts.sphincterFailure.length > 0
  );
}

/**
 * Both legs lost within seconds to hours under sound arms: a neuropathy takes days, so that lost reflexes are spinal shock.
 * Potassium and a pressed nerve tell of themselves.
 */
function areLegsStruck(facts: BedsideFacts): boolean {
  return (
    facts.exam.onset.pace === 'hyperacute' &&
    facts.bothLegsWeak &&
    facts.weak('upper-limbs').length === 0 &&
    facts.lowestLimbPower <= 3 &&
    facts.told('episodic-weakness', 'similar-attacks-before', ...pressOnNerves).length === 0 &&
    facts.query.quantity('potassium', 'mmol/L') === undefined
  );
}

/** Legs that within weeks can hardly be lifted, under arms that were found strong. */
function isLosingLegs(facts: BedsideFacts): boolean {
  const arms = facts.query.testedWhere(({ item }) => item.probe.kind === 'movement' && item.region === 'upper-limbs');
  const areStrong = arms.length > 0 && facts.weak('upper-limbs').length === 0;
  return areStrong && facts.lowestLimbPower <= 3 && facts.beganWithin(28) === 'yes';
}

/** Weak legs with brisk jerks on both sides under a painful spine, or lost within weeks under strong arms; a new weakness that leaves them brisk is no neuropathy. */
function areWeakAndBrisk(facts: BedsideFacts): boolean {
  return (
    facts.bothLegsWeak &&
    isOnBothSides(facts.upperMotorSignsInLegs) &&
    (facts.told(...spinalPain, 'tight-band', 'numbness').length > 0 || isLosingLegs(facts)) &&
    facts.cranialNerveSigns.length === 0
  );
}

/** Numb over the upper lumbar dermatomes on both sides: no length-dependent nerve begins there. */
function isNumbAboveTheKnees(facts: BedsideFacts): boolean {
  const upper = facts.legSensoryLoss.filter(
    ({ place }) => place?.kind === 'dermatome' && ['L1', 'L2', 'L3'].includes(place.key),
  );
  return facts.bothLegsWeak && facts.cameWithin(14) && isOnBothSides(upper) && !isAreflexicAllOver(facts);
}

/**
 * Weeks in which the legs fail on both sides, or months that end in legs that can no longer be lifted: the walk that is still
 * there can be saved, and the hours count.
 */
function areLegsFailing(facts: BedsideFacts): boolean {
  const { onset, course } = facts.exam;
  if (course !== 'progressive' || !facts.bothLegsWeak || hasStiffRelatives(facts)) return false;
  const isWeeks = onset.pace !== 'chronic' && facts.beganWithin(92) === 'yes';
  const isOfTracts = facts.trunkSensoryLoss.length + facts.upperMotorSignsInLegs.length > 0;
  return (isWeeks && isOfTracts) || isLosingWalk(facts);
}

const hasStiffRelatives = ({ told }: BedsideFacts): boolean =>
  told('family/similar-disorder', 'family/spastic-paraplegia').length > 0;

/** Legs that can no longer be lifted, or carry nobody, below a spine that hurts or a level: in months as in days, whatever the jerks. */
function isLosingWalk(facts: BedsideFacts): boolean {
  const { course } = facts.exam;
  const spine = facts.told(...spinalPain).length + facts.trunkSensoryLoss.length;
  const isDead = facts.weak('lower-limbs').some((one) => (powerOf(one) ?? 5) <= 2);
  return (
    course === 'progressive' &&
    facts.bothLegsWeak &&
    facts.beganWithin(730) === 'yes' &&
    spine > 0 &&
    (isDead || facts.query.hasAbnormal('gait/unable-to-walk')) &&
    !hasStiffRelatives(facts)
  );
}

/** Below it a disease of muscle, of motor cells or of nerves does not account for legs that are lost. Judged. */
const likelierElsewhere = 0.5;

function isElsewhere(facts: BedsideFacts): boolean {
  const others = facts.kindProbability('muscle', 'junction', 'polyneuropathy', 'anterior-horn', 'motor-neuron-system');
  return others >= likelierElsewhere || isAreflexicAllOver(facts);
}

const jointsOfALeg = ['hip', 'knee', 'ankle'] as const;

/** Hip, knee and ankle of both sides weak, with a walk that has changed: more than the roots of one disc carry, however much power is left. */
function areLegsFailingAllOver(facts: BedsideFacts): boolean {
  const grows = facts.exam.course === 'progressive' && facts.beganWithin(aMonth) === 'yes';
  const walk = [
    ...facts.told('difficulty-walking', 'falls', 'unsteadiness'),
    ...findingReasons(facts.query.abnormal(['gait/unable-to-walk', 'gait/unable-to-stand'])),
  ];
  const isAllOver = bodySides.every((side) =>
    jointsOfALeg.every((joint) => facts.weak('lower-limbs', side).some(({ item }) => item.key.startsWith(joint))),
  );
  return grows && walk.length > 0 && isAllOver && facts.reducedReflexes.length === 0;
}

/**
 * Both legs that fail at three fifths of their strength or less, or at every joint, under a spine that hurts, within weeks, below strong arms and a sound head:
 * flexor plantars and low jerks do not clear the cord or the cauda equina, and the scan does.
 */
function weakUnderAPainfulSpine(facts: BedsideFacts): readonly Reason[] {
  const { course, onset } = facts.exam;
  const grows = course === 'progressive' && onset.pace !== 'chronic';
  const isFresh = facts.isUndated || facts.beganWithin(grows ? 92 : 28) === 'yes';
  const lost = facts.reducedReflexes.filter(({ value }) => isLost(value));
  // Within days that is the picture of inflamed nerves; over weeks, with the jerks of the arms kept, it is that of the roots below the cord too.
  const isAreflexic = lost.length >= 4 && (facts.beganWithin(28) !== 'no' || areArmJerksLost(facts));
  const isOfMuscle = (facts.query.quantity('creatine-kinase', 'U/L')?.value ?? 0) >= 1000;
  const isOther =
    facts.weak('upper-limbs').length + facts.cranialNerveSigns.length + facts.told('arm-weakness').length > 0 ||
    isAreflexic ||
    isOfMuscle ||
    facts.told('episodic-weakness', 'similar-attacks-before').length > 0;
  const isDeep = facts.lowestLimbPower <= 3 || areLegsFailingAllOver(facts);
  if (!isFresh || !facts.maybeProgressing || !facts.bothLegsWeak || !isDeep || isOther) return none;
  return each(
    facts.told('back-pain', 'thoracic-back-pain', 'night-spinal-pain', 'pain-on-straining', 'tight-band'),
    findingReasons(facts.weak('lower-limbs'), 4),
  );
}

/**
 * Both legs weak with a bladder that stays full or a bowel that leaks, found so, where the cord is a likely place: of what nobody has
 * dated it is taken for new.
 */
function legsAndOutlets(facts: BedsideFacts): readonly Reason[] {
  const found = facts.query.abnormal([
    'sphincters/urinary-retention',
    'sphincters/palpable-bladder',
    'sphincters/faecal-incontinence',
    'sphincters/reduced-anal-tone',
    'sphincters/loss-of-bladder-sensation',
  ]);
  const isNew = facts.beganWithin(28) !== 'no' && facts.maybeProgressing && facts.exam.onset.pace !== 'chronic';
  if (!isNew || !facts.bothLegsWeak || facts.kindProbability('cord') < 0.3 || isElsewhere(facts)) return none;
  return each(findingReasons(found, 2), findingReasons(facts.weak('lower-limbs'), 3));
}

/** Arms that are thin or do not feel. */
export function wastedOrNumbHands({ query }: BedsideFacts): readonly Finding[] {
  return query.abnormalWhere(
    ({ item, place }) => (item.key === 'wasting' || item.section === 'sensation') && isOnLimb(place, 'upper-limbs'),
  );
}

const ofTheColumns: ReadonlySet<string> = new Set(['vibration', 'joint-position']);

/** Vibration or the position of joints lost in both hands and both feet. */
export function lostPositionOfAllLimbs(facts: BedsideFacts): readonly Finding[] {
  const arms = facts.query.abnormalWhere(
    ({ modality, place }) => ofTheColumns.has(modality ?? '') && isOnLimb(place, 'upper-limbs'),
  );
  const legs = lostPositionOfLegs(facts);
  return isOnBothSides(arms) && legs.length > 0 ? [...legs, ...arms] : [];
}

/**
 * Position lost in hands and feet within months, with a neck that hurts or was hurt: the dorsal columns of the neck are pressed until that
 * has been seen, though a vitamin or a gas starves them as well. Lost jerks are those of nerves or their ganglia.
 */
function columnsOfTheNeck(facts: BedsideFacts): readonly Reason[] {
  const inTime = facts.exam.onset.pace !== 'chronic' && facts.beganWithin(92) !== 'no' && facts.maybeProgressing;
  const isOfNerves = facts.reducedReflexes.length >= 4 || facts.kindProbability('cord') < 0.4;
  if (!inTime || isOfNerves || facts.cranialNerveSigns.length > 0) return none;
  return each(
    facts.told('neck-pain', 'neck-trauma', 'trauma', 'thoracic-back-pain', 'electric-shock-on-neck-flexion'),
    findingReasons(lostPositionOfAllLimbs(facts), 4),
  );
}

/** What presses on nerves of both legs at once. */
const pressOnNerves = ['prolonged-squatting', 'leg-crossing', 'external-pressure'] as const;

/** Feet that hang on both sides after squatting: fibular nerves, whatever else has not been examined. */
export function areFeetPressed(facts: BedsideFacts): boolean {
  return (
    facts.told('prolonged-squatting', 'leg-crossing').length > 0 &&
    facts.weakLimbs.every(({ item }) => distalToTheKnee.has(item.key)) &&
    facts.upperMotorSigns.length + facts.trunkSensoryLoss.length + facts.sphincterFailure.length === 0
  );
}

const distalToTheKnee: ReadonlySet<string> = new Set([
  'ankle-dorsiflexion',
  'ankle-eversion',
  'great-toe-extension',
  'toe-extension',
]);

/** Whether the cord fails, and since when; by what was found or by what was told. */
export function checkCord(facts: BedsideFacts): Verdict | null {
  return orTold(checkCordSigns(facts), [
    ...abscessReasons(facts),
    ...failingTogether(facts),
    ...newInTheCord(facts),
    ...(facts.beganWithin(28) === 'yes' && facts.maybeProgressing ? crossedLoss(facts) : none),
    ...fullAndNumb(facts),
    ...weakUnderAPainfulSpine(facts),
    ...legsAndOutlets(facts),
    ...columnsOfTheNeck(facts),
  ]);
}

/** Both legs weak with pain of the spine and a fever is an abscess until the MRI has been seen, brisk jerks or not. */
function abscessReasons(facts: BedsideFacts): readonly Reason[] {
  if (!facts.bothLegsWeak || facts.beganWithin(28) !== 'yes' || facts.reducedReflexes.length >= 4) return none;
  const tender = findingReasons(facts.query.abnormal(['inspection/spinal-tenderness']));
  return each(
    facts.told(...spinalPain),
    [...feverReasons(facts), ...tender],
    findingReasons(facts.weak('lower-limbs'), 3),
  );
}

/**
 * Feeling or power lost over hours to days, or power over weeks, where the cord is much the likeliest place, though no tract
 * sign or level was found yet. Lost jerks of the legs are weighed in that place; those of the arms speak for nerves.
 */
function newInTheCord(facts: BedsideFacts): readonly Reason[] {
  const { pace } = facts.exam.onset;
  const isWeeks = pace === 'subacute' && facts.beganWithin(aMonth) === 'yes' && facts.maybeProgressing;
  const isNew = facts.cameWithin(28) || (isWeeks && facts.weakLimbs.length > 0);
  const inCord = facts.kindProbability('cord') >= mostlyCord;
  if (!isNew || !inCord || areArmJerksLost(facts) || areFeetPressed(facts)) return none;
  return findingReasons(
    facts.query.abnormalWhere(({ item }) => item.section === 'power' || item.section === 'sensation'),
    4,
  );
}

/** A bladder that stays full within days, with numbness or tingling, in nobody whose medicine holds it back. */
function fullAndNumb(facts: BedsideFacts): readonly Reason[] {
  const spared = facts.told('anticholinergic', 'opioid', 'recent-surgery').length > 0;
  const place = facts.kindProbability('cord', 'cauda-equina', 'root');
  if (!facts.cameWithin(28) || spared || place < 0.5 || isAreflexicAllOver(facts)) return none;
  return each(findingReasons(facts.query.abnormal(['sphincters/urinary-retention', 'sphincters/palpable-bladder'])), [
    ...facts.told('numbness', 'paraesthesiae', 'leg-weakness', 'difficulty-walking'),
    ...findingReasons(facts.upperMotorSignsInLegs, 2),
  ]);
}

/** Legs, feeling and bladder said to fail together within days, or to go on failing within months; nobody has examined yet. */
function failingTogether(facts: BedsideFacts): readonly Reason[] {
  const isGrowing = facts.exam.course === 'progressive' && facts.exam.onset.pace !== 'chronic';
  const inTime = facts.beganWithin(isGrowing ? 92 : 14) === 'yes';
  if (!inTime || !facts.maybeProgressing || facts.reducedReflexes.length > 0) return none;
  return each(facts.told('leg-weakness', 'difficulty-walking', 'unsteadiness'), facts.told('numbness', 'tight-band'), [
    ...facts.told('bladder-disturbance', 'tight-band'),
    ...findingReasons(facts.query.abnormal(['sphincters/urinary-retention'])),
  ]);
}

function checkCordSigns(facts: BedsideFacts): Verdict | null {
  const { onset, course } = facts.exam;
  // A bladder that fails while the legs grow weaker over weeks is as urgent as what is days old.
  const bladder = failingBladder(facts);
  // Three months that were counted outrank what the pace was called, where a level or the toes name the cord.
  const isOfTheCord = facts.trunkSensoryLoss.length > 0 || extensorPlantars(facts).length > 0;
  const isMonths =
    onset.pace === 'subacute' || (onset.durationDays !== undefined && onset.durationDays <= 92 && isOfTheCord);
  const isFailing = (isMonths && course === 'progressive' && bladder.length > 0) || areLegsFailing(facts);
  const recent = isFailing ? 'yes' : facts.beganWithin(28);
  if (recent === 'no') return checkUnseenTracts(facts);
  const signs = cordSigns(facts);
  // In spinal shock the reflexes are lost: a weak leg below a level of altered sensation is enough, and so are weak arms
  // and legs with a failing bladder, or with a numb saddle or a slack anus.
  const below = [...bladder, ...facts.saddleLoss, ...facts.sphincterFailure];
  const fourLimbs = facts.bothLegsWeak && facts.weak('upper-limbs').length > 0 && below.length > 0;
  const shock =
    fourLimbs ||
    (facts.weak('lower-limbs').length > 0 && facts.trunkSensoryLoss.length > 0) ||
    isSpinalAtBothSides(facts) ||
    isBrokenNeck(facts) ||
    areLegsStruck(facts) ||
    areLegsLostInDays(facts) ||
    areLegsAndBladderLost(facts) ||
    areWeakAndBrisk(facts) ||
    isNumbAboveTheKnees(facts) ||
    (isLosingWalk(facts) && !isElsewhere(facts));
  const level = findingReasons(
    [...facts.trunkSensoryLoss, ...facts.weak('lower-limbs'), ...facts.upperMotorSignsInLegs],
    5,
  );
  const spine = facts.told(...spinalPain).slice(0, 1);
  const arms = isBrokenNeck(facts) ? findingReasons(facts.weak('upper-limbs'), 2) : [];
  const because = signs.length > 0 ? signs : shock ? [...spine, ...arms, ...level, ...below.slice(0, 1)] : [];
  // An injury dates what nobody has dated.
  const injury = recent === 'unknown' ? facts.told('trauma', 'neck-trauma', 'falls') : [];
  if (because.length > 0 && injury.length > 0 && facts.weakLimbs.length > 0) return present([...injury, ...because]);
  // Weak legs with a bladder that fails are taken for new until somebody has said since when.
  const isTakenForNew = facts.isUndated && facts.maybeProgressing && facts.bothLegsWeak && bladder.length > 0;
  if (because.length > 0)
    return recent === 'yes' || isTakenForNew ? present(because) : notAssessable([...because, unknownOnset]);
  if (!facts.bothLegsWeak || isPlainlyAbove(facts)) return null;
  const gaps = unseenOfTheTracts(facts);
  if (gaps.length > 0) return notAssessable(gaps);
  return absent([...findingReasons(plantarsOf(facts), 2), ...findingReasons(facts.trunkSensationTests, 3)]);
}

const plantarsOf = (facts: BedsideFacts): readonly Finding[] =>
  facts.query.testedWhere(({ item }) => item.section === 'plantars');

function unseenOfTheTracts(facts: BedsideFacts): readonly Reason[] {
  return [
    ...(plantarsOf(facts).length === 0 ? [missing('plantar responses were not tested')] : []),
    ...(facts.trunkSensationTests.length === 0 ? [missing('sensation on the trunk was not tested for a level')] : []),
  ];
}

/** Legs that go on growing weak for weeks to three months: what would tell the cord must have been looked at. */
function checkUnseenTracts(facts: BedsideFacts): Verdict | null {
  const { course, onset } = facts.exam;
  const isWeeks = course === 'progressive' && onset.pace !== 'chronic' && facts.beganWithin(92) === 'yes';
  if (!isWeeks || !facts.bothLegsWeak || isPlainlyAbove(facts)) return null;
  const gaps = unseenOfTheTracts(facts);
  return gaps.length > 0 ? notAssessable(gaps) : null;
}

const ofTheThigh: ReadonlySet<string> = new Set(['hip-flexion', 'knee-extension']);

/** A level on both sides of the trunk, or legs that cannot be lifted where the cord is much the likeliest place, of months that go on. */
export function levelOrLostLegs(facts: BedsideFacts): readonly Reason[] {
  const isSlow = facts.beganWithin(28) === 'no' && facts.beganWithin(1095) === 'yes';
  if (facts.exam.course !== 'progressive' || !isSlow || hasStiffRelatives(facts)) return none;
  const level = facts.trunkSensoryLoss.filter(({ place }) => place?.kind === 'level-below');
  const lost = facts.weak('lower-limbs').filter((one) => ofTheThigh.has(one.item.key) && (powerOf(one) ?? 5) <= 2);
  const isDead = isOnBothSides(lost) && facts.kindProbability('cord') >= mostlyCord;
  return [...(isOnBothSides(level) ? findingReasons(level, 2) : []), ...(isDead ? findingReasons(lost, 3) : [])];
}

/**
 * Brain, or junction, as good as certain, with signs of cranial nerves to show it: nothing of the cord or the cauda equina need then be asked
 * for because both legs are weak. It holds back questions alone, never a flag for which something was found.
 */
export function isPlainlyAbove({ brainProbability, kindProbability, cranialNerveSigns }: BedsideFacts): boolean {
  return brainProbability + kindProbability('junction') >= 0.8 && cranialNerveSigns.length > 0;
}
