import type { Finding } from '../../exam/finding.ts';
import type { BedsideFacts } from '../bedside-facts.ts';

/** The limbs that findings are of. */
export const limbsOf = (found: readonly Finding[]): ReadonlySet<string> =>
  new Set(found.map(({ item, side }) => `${item.region} ${side}`));

/** So many movements of the same limb must have been found strong. Judged. */
const strongAtLeast = 5;

/** One or two weak movements of one limb whose others were found strong: a nerve, and no weakness that spreads. */
export function isOneMuscleOrTwo({ query, weakLimbs }: BedsideFacts): boolean {
  const limbs = limbsOf(weakLimbs);
  if (limbs.size !== 1 || weakLimbs.length > 2) return false;
  const strong = query.testedWhere(
    (one) => one.item.probe.kind === 'movement' && !one.abnormal && limbs.has(`${one.item.region} ${one.side}`),
  );
  return strong.length >= strongAtLeast;
}

/** One or two movements, of one side or both, in somebody whose nerves were pressed upon or give way to pressure, and which do not grow weaker. */
export function isOfPressedNerves(facts: BedsideFacts): boolean {
  const { weakLimbs, exam } = facts;
  const pressed = facts.told(
    ...['external-pressure', 'elbow-leaning', 'deep-sleep-on-arm', 'leg-crossing', 'prolonged-squatting'],
    ...['previous-pressure-palsy', 'family/pressure-palsies'],
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

/** Complaints and signs with which a weak arm is more than that of its own nerves. */
const beyondTheArm = [
  ...['leg-weakness', 'weakness', 'ascending-weakness', 'descending-weakness', 'difficulty-walking', 'unsteadiness'],
  ...['bladder-disturbance', 'bowel-disturbance', 'breathlessness', 'orthopnoea', 'dysphagia', 'slurred-speech'],
  ...['diplopia', 'fever', 'cancer', 'electric-shock-on-neck-flexion', 'anticoagulant', 'numbness'],
] as const;

/** An arm that hurts in shoulder or arm and then fails, with nothing beyond it: its plexus or a root, and no weakness that spreads. */
export function isOnePainfulArm(facts: BedsideFacts): boolean {
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
