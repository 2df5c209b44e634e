import { isFrom } from '../../causes/exam-query.ts';
import type { Reason } from '../../causes/ranked-cause.ts';
import { findingReasons, missing } from '../../causes/reasons.ts';
import { type BedsideFacts, isHalfAFaceAlone } from '../bedside-facts.ts';
import { feverReasons } from './fever.ts';
import { isOfPairedNerves } from './few-muscles.ts';
import { absent, notAssessable, present, type Verdict } from './rule.ts';
import { isAtLeast, isUnder, written } from './thresholds.ts';

export const breathingSigns = [
  'autonomic/paradoxical-breathing',
  'autonomic/accessory-muscle-breathing',
  'autonomic/weak-cough',
  'autonomic/breathlessness-at-rest',
  'autonomic/breathlessness-lying-flat',
  'special-tests/single-breath-count',
];
const bulbarSigns = [
  'cranial-nerves/dysphagia',
  'cranial-nerves/drooling',
  'cranial-nerves/dysphonia',
  'cranial-nerves/flaccid-dysarthria',
  'cranial-nerves/nasal-speech',
  'cranial-nerves/palatal-weakness',
  'cranial-nerves/absent-gag-reflex',
  'autonomic/stridor',
];

const weakFaceAndEyes = [
  'cranial-nerves/ptosis',
  'cranial-nerves/ophthalmoplegia',
  'cranial-nerves/facial-weakness',
  'power/neck-flexion',
];

/** From this probability on the cord alone accounts for weak limbs. Judged. */
const plainlyOfTheCord = 0.8;

/**
 * Symmetrical limb weakness that began at most four weeks ago without upper motor neuron signs. Empty when the exam is
 * not of that sort; the four weeks are those of the guideline on Guillain-Barré syndrome.
 */
export function acuteSymmetricalWeakness(facts: BedsideFacts): readonly Reason[] {
  if (!facts.bothLegsWeak && !facts.bothArmsWeak) return [];
  if (facts.beganWithin(28) !== 'yes' || !facts.maybeProgressing || isOfTracts(facts)) return [];
  if (isOfSoreMuscle(facts)) return [];
  // A level on the trunk is the cord's, which loses its jerks while it is in shock, and has flags of its own.
  if (facts.trunkSensoryLoss.length > 0 && facts.kindProbability('cord') >= plainlyOfTheCord) return [];
  // The same nerve pressed or pulled on both sides does not climb.
  if (isOfPairedNerves(facts)) return [];
  if (facts.kindProbability('nerve') >= 0.6 && !facts.isProgressive) return [];
  const weak = facts.bothLegsWeak ? facts.weak('lower-limbs') : facts.weak('upper-limbs');
  const reflexes = facts.reducedReflexes;
  // Weak legs with a numb saddle and strong arms are the cauda equina's picture, which has a flag of its own.
  if (!facts.bothArmsWeak && facts.saddleLoss.length > 0) return [];
  // Weakness on both sides alone is common; lost reflexes or spread to arms and legs make it this picture.
  if (reflexes.length === 0 && !(facts.bothLegsWeak && facts.bothArmsWeak)) return [];
  return [...findingReasons(weak, 4), ...findingReasons(reflexes, 3)];
}

/** Hips or shoulders that are weak and sore, in arms or legs alone, where muscle is much the likeliest place and no jerk is lost: that does not climb. */
function isOfSoreMuscle(facts: BedsideFacts): boolean {
  const sore =
    facts.told('muscle-pain').length + facts.query.abnormalWhere(({ item }) => item.key === 'muscle-tenderness').length;
  const isLost = facts.reducedReflexes.some(({ value }) => value === '0');
  const isClimbing = facts.told('ascending-weakness', 'paraesthesiae', 'numbness', 'breathlessness').length > 0;
  const isSpread = facts.bothArmsWeak && facts.bothLegsWeak;
  return sore > 0 && !isLost && !isClimbing && !isSpread && facts.kindProbability('muscle') >= 0.8;
}

/** Signs of upper motor neurons; one brisk jerk among many lost ones is met in neuropathies too, where these are the likeliest place. */
function isOfTracts({ upperMotorSigns, reducedReflexes, kindProbability }: BedsideFacts): boolean {
  const areMostLost = reducedReflexes.length >= 2 * upperMotorSigns.length && reducedReflexes.length >= 4;
  const isJerkAlone = upperMotorSigns.every(({ item }) => item.scale === 'reflex-grade');
  return (
    upperMotorSigns.length > 0 && !(areMostLost && isJerkAlone && kindProbability('polyradiculoneuropathy') >= 0.5)
  );
}

export function bulbarReasons(facts: BedsideFacts): readonly Reason[] {
  const { query } = facts;
  const told = facts.told('dysphagia', 'voice-change', 'nasal-regurgitation');
  const signs = query.abnormal(bulbarSigns);
  // A mouth that does not close lets saliva out: from one weak half of a face drooling says nothing of the throat.
  const face = query.abnormal(['cranial-nerves/facial-weakness', 'cranial-nerves/lower-facial-weakness']);
  const isDrooling = face.length > 0 && told.length === 0 && signs.every(({ item }) => item.key === 'drooling');
  if (isHalfAFaceAlone(facts)) return [];
  return [...(isDrooling ? [] : findingReasons(signs)), ...told];
}

interface Limit {
  readonly result: string;
  readonly unit: string;
  readonly under: number;
  readonly words: string;
}

const limits: readonly Limit[] = [
  { result: 'vital-capacity-per-kg', unit: 'mL/kg', under: 20, words: 'vital capacity' },
  { result: 'max-inspiratory-pressure', unit: 'cm[H2O]', under: 30, words: 'inspiratory pressure' },
  { result: 'max-expiratory-pressure', unit: 'cm[H2O]', under: 40, words: 'expiratory pressure' },
  { result: 'single-breath-count', unit: '{count}', under: 20, words: 'single-breath count' },
];

interface Measured {
  readonly low: boolean;
  readonly reason: Reason;
}

/** Breathing measurements against the 20/30/40 rule; a volume in litres is divided by the body weight where both are given. */
function measurements(facts: BedsideFacts): readonly Measured[] {
  const { query } = facts;
  const direct = limits.flatMap(({ result, unit, under, words }) => {
    const measured = query.quantity(result, unit);
    // A bound that leaves the limit open ("> 15") has measured nothing.
    if (measured === undefined || isFrom(measured, under) === null) return [];
    const { pointer } = measured;
    const shown = unit === '{count}' ? '' : ` ${unit === 'cm[H2O]' ? 'cmH2O' : unit}`;
    return [{ low: isUnder(measured, under), reason: { pointer, text: `${words} ${written(measured)}${shown}` } }];
  });
  const volume = query.quantity('forced-vital-capacity', 'L');
  const weight = query.quantity('body-weight', 'kg');
  if (volume === undefined || weight === undefined) return direct;
  const perKg = (volume.value * 1000) / weight.value;
  const text = `vital capacity ${perKg.toFixed(1)} mL/kg, ${volume.value} L at ${weight.value} kg`;
  return [...direct, { low: isUnder({ ...volume, value: perKg }, 20), reason: { pointer: volume.pointer, text } }];
}

/** What blocks the junction between nerve and muscle, with anything weak: the diaphragm is next. Source: WHO guideline on snakebite 2016, recalled. */
function stoppedByPoison(
  facts: BedsideFacts,
  bulbar: readonly Reason[],
  cranial: readonly Reason[],
): readonly Reason[] {
  const poison = facts.told(
    'organophosphate',
    'venomous-bite',
    'home-preserved-food',
    'botulinum-toxin-injection',
    'magnesium',
  );
  const weak = [
    ...findingReasons([...facts.weakLimbs, ...facts.reducedReflexes], 3),
    ...bulbar,
    ...cranial,
    ...facts.told('weakness', 'leg-weakness', 'arm-weakness', 'drooping-eyelids'),
  ];
  // Breath that is seen to fail is the failure itself: bellows, glands and centre fail together.
  const isFailing = facts.query.abnormal(breathingSigns).length > 0;
  return poison.length > 0 && (weak.length > 0 || isFailing) ? [...poison, ...weak.slice(0, 4)] : [];
}

/** Oxygen saturation under 92 % or thirty breaths a minute and more. Judged. */
function failingExchange({ query }: BedsideFacts): readonly Reason[] {
  const saturation = query.quantity('oxygen-saturation', '%');
  const rate = query.quantity('respiratory-rate', '/min');
  return [
    ...(saturation !== undefined && isUnder(saturation, 92)
      ? [{ pointer: saturation.pointer, text: `oxygen saturation ${written(saturation)} %` }]
      : []),
    ...(rate !== undefined && isAtLeast(rate, 30)
      ? [{ pointer: rate.pointer, text: `${written(rate)} breaths a minute` }]
      : []),
  ];
}

export function checkBreathing(facts: BedsideFacts): Verdict | null {
  const weakness = acuteSymmetricalWeakness(facts);
  const bulbar = bulbarReasons(facts);
  const neuromuscular =
    facts.kindProbability('junction', 'polyradiculoneuropathy', 'motor-neuron-system', 'anterior-horn', 'muscle') >=
    0.3;
  const acute = facts.beganWithin(28) !== 'no';
  const measured = measurements(facts);
  const low = measured.filter((measurement) => measurement.low).map(({ reason }) => reason);
  const signs = findingReasons(facts.query.abnormal(breathingSigns));
  const atRisk = weakness.length > 0 || (neuromuscular && facts.weakLimbs.length + bulbar.length > 0);
  const told = facts.told('weakness', 'leg-weakness', 'arm-weakness', 'fatigable-weakness');
  const cranial = findingReasons(facts.query.abnormal(weakFaceAndEyes), 3);
  if (
    low.length > 0 &&
    (atRisk || neuromuscular || facts.weakLimbs.length + bulbar.length + told.length + cranial.length > 0)
  )
    return present([...low, ...signs]);
  if (atRisk && signs.length > 0) return present(signs);
  // Blood short of oxygen, or a breath of thirty a minute, in a weakness of the muscles that breathe.
  const failing = failingExchange(facts);
  const orthopnoea = [...signs, ...facts.told('breathlessness', 'orthopnoea')];
  if (atRisk && failing.length > 0 && orthopnoea.length > 0) return present([...failing, ...orthopnoea]);
  // Breath that grows short in a weakness of days is the diaphragm's; weak lids and eyes alone are enough of a weakness.
  const breathless = facts.told('breathlessness', 'orthopnoea');
  const lids = facts.told('drooping-eyelids', 'diplopia', 'fatigable-weakness');
  // Weakness that climbs or comes down is of days, though nobody says of how many.
  const isClimbing = facts.isUndated && facts.told('ascending-weakness', 'descending-weakness').length > 0;
  const isAcute = (facts.beganWithin(28) === 'yes' || isClimbing) && facts.maybeProgressing;
  if (isAcute && breathless.length > 0 && neuromuscular && (atRisk || cranial.length + lids.length > 0))
    return present([...breathless, ...weakness.slice(0, 2), ...cranial, ...lids]);
  // A throat that fails in two ways with a breath that grows short, within days and without fever.
  if (isAcute && facts.isProgressive && breathless.length > 0 && bulbar.length >= 2 && feverReasons(facts).length === 0)
    return present([...breathless, ...bulbar.slice(0, 3)]);
  // Lids or limbs that tire, or a known myasthenia, name the muscles that breathe before anybody has examined.
  const tires = facts.told('fatigable-weakness', 'myasthenia-gravis');
  const isOfLungOrHeart = facts.told('asthma', 'heart-failure').length > 0;
  if (isAcute && breathless.length + signs.length > 0 && tires.length > 0 && !isOfLungOrHeart)
    return present([...breathless, ...signs, ...tires]);
  // Of a poison nobody says when: it is of hours or days.
  if ((isAcute || facts.isUntimed) && signs.length + breathless.length > 0) {
    const because = stoppedByPoison(facts, bulbar, cranial);
    if (because.length > 0) return present([...breathless, ...signs, ...because]);
  }
  // A diaphragm that is drawn up on breathing in has failed, whatever the limbs do.
  const drawnUp = findingReasons(facts.query.abnormal(['autonomic/paradoxical-breathing']));
  if (drawnUp.length > 0 && facts.beganWithin(92) === 'yes' && facts.upperMotorSigns.length === 0 && !isOfLungOrHeart)
    return present([...signs, ...breathless]);
  // Limbs weak on both sides and a breath seen to fail within days need no further name.
  if (isAcute && signs.length > 0 && facts.upperMotorSigns.length === 0 && (facts.bothLegsWeak || facts.bothArmsWeak))
    return present([...signs, ...findingReasons(facts.weakLimbs, 3)]);
  // Weakness and a short breath of days, told before anybody has tried the limbs: a breath that is seen to fail decides it.
  const isTried = facts.exam.findings.some(({ item, value }) => item.section === 'power' && value !== null);
  const isUntried = told.length > 0 && !isTried && !isOfLungOrHeart && feverReasons(facts).length === 0;
  if (isAcute && facts.isProgressive && signs.length > 0 && isUntried) return present([...signs, ...told]);
  if (isAcute && breathless.length > 0 && told.length > 0 && !isTried && !isOfLungOrHeart)
    return notAssessable([missing('vital capacity was not measured, and it matters'), ...breathless, ...told]);
  const weakSwallow = bulbar.length > 0 && facts.kindProbability('junction') >= 0.3;
  if (atRisk && (acute || weakSwallow)) {
    if (measured.length === 0)
      return notAssessable([missing('vital capacity was not measured, and it matters'), ...weakness.slice(0, 2)]);
    return absent(measured.map(({ reason }) => reason));
  }
  return null;
}
