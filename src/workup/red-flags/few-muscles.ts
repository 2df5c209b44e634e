import { farMovement, overNervesOfTheHand } from '../../exam/far-along-the-limb.ts';
import type { Finding } from '../../exam/finding.ts';
import { isOnLimb } from '../../exam/place-on-limb.ts';
import type { BedsideFacts } from '../bedside-facts.ts';

/** The limbs that findings are of. */
export const limbsOf = (found: readonly Finding[]): ReadonlySet<string> =>
  new Set(found.map(({ item, side }) => `${item.region} ${side}`));

/** Weakness of one nerve, one root or one painful arm, which does not spread however fast it came. */
export const isOfOneNerveOrRoot = (facts: BedsideFacts): boolean =>
  isOneMuscleOrTwo(facts) || isOnePainfulArm(facts) || isOneRootBelowThePain(facts);

/** So many movements of the same limb must have been found strong. Judged. */
const strongAtLeast = 5;

/** One or two weak movements of one limb whose others were found strong: a nerve, and no weakness that spreads. */
function isOneMuscleOrTwo({ query, weakLimbs }: BedsideFacts): boolean {
  const limbs = limbsOf(weakLimbs);
  if (limbs.size !== 1 || weakLimbs.length > 2) return false;
  const strong = query.testedWhere(
    (one) => one.item.probe.kind === 'movement' && !one.abnormal && limbs.has(`${one.item.region} ${one.side}`),
  );
  return strong.length >= strongAtLeast;
}

/** Grade from which a movement still holds against resistance. Source: Medical Research Council scale. */
const holdsFrom = 4;

/** Pain that runs down a leg, and one movement of it that gives a little where that root ends: sciatica, with flags of its own for what is worse. */
function isOneRootBelowThePain(facts: BedsideFacts): boolean {
  const { weakLimbs, lowestLimbPower, kindProbability, upperMotorSigns, sphincterFailure, saddleLoss } = facts;
  return (
    facts.told('radicular-leg-pain', 'radicular-arm-pain').length > 0 &&
    weakLimbs.length === 1 &&
    lowestLimbPower >= holdsFrom &&
    kindProbability('root') >= 0.5 &&
    upperMotorSigns.length + sphincterFailure.length + saddleLoss.length === 0
  );
}

/** One or two movements, of one side or both, in somebody whose nerves were pressed upon or give way to pressure, and which do not grow weaker. */
export function isOfPressedNerves(facts: BedsideFacts): boolean {
  const { weakLimbs, exam } = facts;
  const pressed = facts.told(
    ...['external-pressure', 'elbow-leaning', 'deep-sleep-on-arm', 'leg-crossing', 'prolonged-squatting'],
    ...['surgical-positioning', 'previous-pressure-palsy', 'family/pressure-palsies'],
  );
  const movements = new Set(weakLimbs.map(({ item }) => item.key));
  const regions = new Set(weakLimbs.map(({ item }) => item.region));
  // Where nerves are known to give way to pressure, two of them may do so in the same week.
  const givesWay = facts.told('previous-pressure-palsy', 'family/pressure-palsies').length > 0;
  return (
    pressed.length > 0 &&
    movements.size <= 2 &&
    (regions.size === 1 || givesWay) &&
    exam.course !== 'progressive' &&
    facts.upperMotorSigns.length + facts.trunkSensoryLoss.length + facts.sphincterFailure.length === 0
  );
}

/**
 * One to three movements of arms or of legs that fail alike on both sides after an operation, a posture or a pressure, beside others of the same
 * limbs that were found strong, where nerves or plexus are the likeliest place: what lay on one side lay on the other. After an operation
 * on the spine only the far end of the limb is taken for such, unless the image of that spine was sound.
 */
export function isOfPairedNerves(facts: BedsideFacts): boolean {
  const { weakLimbs, exam, query, kindProbability } = facts;
  const hurt = facts.told(
    ...['surgical-positioning', 'recent-surgery', 'external-pressure', 'prolonged-immobility', 'deep-sleep-on-arm'],
    ...['leg-crossing', 'prolonged-squatting', 'difficult-delivery', 'elbow-leaning'],
  );
  const movements = new Set(weakLimbs.map(({ item }) => item.key));
  const regions = new Set(weakLimbs.map(({ item }) => item.region));
  const isPaired = limbsOf(weakLimbs).size === 2 && regions.size === 1;
  if (hurt.length === 0 || !isPaired || movements.size > 3 || exam.course === 'progressive') return false;
  const strong = query.testedWhere(
    ({ item, abnormal }) => item.probe.kind === 'movement' && !abnormal && regions.has(item.region),
  );
  const isSpineSound = ['mri-cervical-spine', 'mri-whole-spine'].some((key) => query.result(key)?.value === 'normal');
  const isProven = new Set(strong.map(({ item }) => item.key)).size >= 2;
  const isFar = weakLimbs.every(({ item }) => farMovement.test(item.key));
  const isOfTheSpine = facts.told('spinal-surgery').length > 0 && !isFar;
  const elsewhere = [...facts.upperMotorSigns, ...facts.trunkSensoryLoss, ...facts.cranialNerveSigns];
  return (
    (regions.has('upper-limbs') && isSpineSound ? true : isProven && !isOfTheSpine) &&
    elsewhere.length + facts.sphincterFailure.length + facts.saddleLoss.length === 0 &&
    kindProbability('nerve', 'multiple-nerves', 'plexus') >= 0.6 &&
    facts.told(...beyondPairedNerves).length === 0
  );
}

const beyondPairedNerves = [
  ...['back-pain', 'thoracic-back-pain', 'neck-pain', 'night-spinal-pain', 'radicular-leg-pain', 'bilateral-leg-pain'],
  ...[
    'fever',
    'ascending-weakness',
    'descending-weakness',
    'paraesthesiae',
    'breathlessness',
    'orthopnoea',
    'dysphagia',
  ],
  ...['lumbar-puncture-or-epidural', 'anticoagulant', 'bleeding-disorder', 'aortic-disease', 'neck-trauma', 'trauma'],
] as const;

/** What drops or curls at the end of a limb. */
const drops: ReadonlySet<string> = new Set(['foot-drop', 'wrist-drop', 'finger-drop', 'ulnar-claw', 'claw-hand']);

/** Weak below the elbow or the knee of one limb alone, with nothing found or told beyond it, where a nerve is much the likeliest place. */
export function isOneDistalNerve(facts: BedsideFacts): boolean {
  const { weakLimbs, abnormalFindings, upperMotorSigns, kindProbability } = facts;
  const ofALimb = abnormalFindings.filter(({ item }) => item.region !== undefined);
  const sides = new Set(ofALimb.map(({ side }) => side));
  const isInLimb = abnormalFindings.every(({ item }) => !['cranialNerves', 'higherFunction'].includes(item.section));
  return (
    weakLimbs.length > 0 &&
    limbsOf(weakLimbs).size === 1 &&
    weakLimbs.every(({ item }) => farMovement.test(item.key)) &&
    sides.size === 1 &&
    isInLimb &&
    upperMotorSigns.length + facts.sphincterFailure.length === 0 &&
    kindProbability('nerve') >= 0.7 &&
    facts.told(...beyondANerve).length === 0
  );
}

/** Complaints that no nerve of a limb makes. */
const beyondALimb = [
  ...['fever', 'headache', 'new-headache', 'morning-headache', 'vomiting', 'neck-pain', 'back-pain'],
  ...['thoracic-back-pain', 'night-spinal-pain', 'unsteadiness', 'bladder-disturbance', 'bowel-disturbance'],
  ...['weight-loss', 'cancer', 'seizure', 'slurred-speech', 'diplopia', 'ascending-weakness', 'cognitive-change'],
  'loss-of-skills',
] as const;
/** And those that one nerve below the knee makes, but others more often. */
const beyondANerve = [
  ...beyondALimb,
  ...['weakness', 'leg-weakness', 'falls', 'leg-pain', 'difficulty-walking'],
] as const;

/** What presses or hurts a nerve of a limb, as it is told. */
const hurtsANerve = [
  ...['elbow-leaning', 'external-pressure', 'leg-crossing', 'prolonged-squatting', 'deep-sleep-on-arm'],
  ...['limb-fracture-or-dislocation', 'surgical-positioning', 'needle-near-nerve', 'previous-pressure-palsy'],
] as const;

/** Signs over a nerve where it is pressed. */
const overTheNerve: ReadonlySet<string> = new Set([
  ...overNervesOfTheHand,
  ...['tinel-spiral-groove', 'tinel-fibular-neck', 'tinel-tarsal-tunnel', 'tinel-inguinal'],
]);
const limbRegions = ['upper-limbs', 'lower-limbs'] as const;

/**
 * A nerve that was pressed or hurt where it lies bare: all that is found lies in one limb, what is weak lies far down it, no
 * tract and nothing of the head is ill, and either the mishap is told or the nerve answers to the finger.
 */
export function isPressedNerve(facts: BedsideFacts): boolean {
  const wrong = facts.query.abnormalWhere(() => true);
  const [first] = wrong;
  if (first === undefined || first.side === 'midline' || facts.upperMotorSigns.length > 0) return false;
  if (facts.told(...beyondALimb).length > 0) return false;
  const limbOf = ({ item, place }: Finding) =>
    limbRegions.find((limb) => item.region === limb || isOnLimb(place, limb));
  const limb = limbOf(first);
  const isOfIt = (one: Finding): boolean => limb !== undefined && limbOf(one) === limb && one.side === first.side;
  const isFar = ({ item, modality }: Finding): boolean =>
    modality !== undefined || item.probe.kind !== 'movement' || farMovement.test(item.key) || drops.has(item.key);
  if (!wrong.every((one) => isOfIt(one) && isFar(one))) return false;
  return facts.told(...hurtsANerve).length > 0 || wrong.some(({ item }) => overTheNerve.has(item.key));
}

/** Complaints and signs with which a weak arm is more than that of its own nerves. */
const beyondTheArm = [
  ...['leg-weakness', 'weakness', 'ascending-weakness', 'descending-weakness', 'difficulty-walking', 'unsteadiness'],
  ...['bladder-disturbance', 'bowel-disturbance', 'breathlessness', 'orthopnoea', 'dysphagia', 'slurred-speech'],
  ...['diplopia', 'fever', 'cancer', 'electric-shock-on-neck-flexion', 'anticoagulant', 'numbness'],
] as const;

/** An arm that hurts in shoulder or arm and then fails, with nothing beyond it: its plexus or a root, and no weakness that spreads. */
function isOnePainfulArm(facts: BedsideFacts): boolean {
  const { weakLimbs, cranialNerveSigns, upperMotorSigns, trunkSensoryLoss, sphincterFailure } = facts;
  const limbs = limbsOf(weakLimbs);
  const isArm = weakLimbs.every(({ item }) => item.region === 'upper-limbs') && limbs.size <= 1;
  const elsewhere = cranialNerveSigns.length + upperMotorSigns.length + trunkSensoryLoss.length;
  return (
    isArm &&
    elsewhere + sphincterFailure.length + facts.legSensoryLoss.length === 0 &&
    (weakLimbs.length > 0 || facts.told('arm-weakness').length > 0) &&
    facts.told('shoulder-pain', 'arm-pain', 'radicular-arm-pain').length > 0 &&
    facts.told(...beyondTheArm).length === 0
  );
}
