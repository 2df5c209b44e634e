import type { Finding } from '../../exam/finding.ts';
import { isOnLimb } from '../../exam/place-on-limb.ts';
import type { BedsideFacts } from '../bedside-facts.ts';

/** What presses or hurts a nerve of a limb, as it is told. */
const hurtsANerve = [
  ...['elbow-leaning', 'external-pressure', 'leg-crossing', 'prolonged-squatting', 'deep-sleep-on-arm'],
  ...['limb-fracture-or-dislocation', 'surgical-positioning', 'needle-near-nerve', 'previous-pressure-palsy'],
] as const;

/** Signs over a nerve where it is pressed. */
const overTheNerve: ReadonlySet<string> = new Set([
  ...['tinel-elbow', 'elbow-flexion-test', 'tinel-wrist', 'phalen', 'carpal-compression', 'tinel-ulnar-wrist'],
  ...['tinel-spiral-groove', 'tinel-fibular-neck', 'tinel-tarsal-tunnel', 'tinel-inguinal'],
]);
const limbs = ['upper-limbs', 'lower-limbs'] as const;
const farMovement = /^(wrist|finger|thumb|index|middle|little|metacarpo|ankle|great-toe|toe)-/;
const drops: ReadonlySet<string> = new Set(['foot-drop', 'wrist-drop', 'finger-drop', 'ulnar-claw', 'claw-hand']);

/**
 * A nerve that was pressed or hurt where it lies bare: all that is found lies in one limb, what is weak lies far down it, no
 * tract and nothing of the head is ill, and either the mishap is told or the nerve answers to the finger.
 */
export function isPressedNerve(facts: BedsideFacts): boolean {
  const wrong = facts.query.abnormalWhere(() => true);
  const [first] = wrong;
  if (first === undefined || facts.upperMotorSigns.length > 0) return false;
  if (facts.told(...complaintsOfMore).length > 0) return false;
  const limbOf = ({ item, place }: Finding) => limbs.find((limb) => item.region === limb || isOnLimb(place, limb));
  const limb = limbOf(first);
  const isOfIt = (one: Finding): boolean => limb !== undefined && limbOf(one) === limb && one.side === first.side;
  const isFar = ({ item, modality }: Finding): boolean =>
    modality !== undefined || item.probe.kind !== 'movement' || farMovement.test(item.key) || drops.has(item.key);
  if (first.side === 'midline' || !wrong.every((one) => isOfIt(one) && isFar(one))) return false;
  return facts.told(...hurtsANerve).length > 0 || wrong.some(({ item }) => overTheNerve.has(item.key));
}

const complaintsOfMore = [
  ...['headache', 'new-headache', 'morning-headache', 'vomiting', 'unsteadiness', 'bladder-disturbance'],
  ...['bowel-disturbance', 'neck-pain', 'back-pain', 'fever', 'ascending-weakness', 'diplopia', 'slurred-speech'],
] as const;
