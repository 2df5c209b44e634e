import type { BedsideFacts } from '../bedside-facts.ts';

const ofTheLowestRoots: ReadonlySet<string> = new Set(['C8', 'T1', 'T2']);

/** A torn artery of the neck is told of within four weeks; what has grown for longer is not. Judged. */
const fresh = 28;

/**
 * What grows over the apex of the lung takes the lower trunk: a hand that is weak, thin or numb along its inner side, on the arm
 * that hurts, over more than four weeks. With loss of weight or tobacco the pain of the arm is enough.
 */
export function isOfTheLungApex(facts: BedsideFacts): boolean {
  const { query, told, exam } = facts;
  const isOld =
    exam.onset.durationDays === undefined ? exam.onset.pace === 'chronic' : facts.beganWithin(fresh) === 'no';
  if (!isOld) return false;
  const arm = told('arm-pain', 'shoulder-pain', 'radicular-arm-pain', 'thoracic-back-pain');
  const hand = query.abnormalWhere(
    ({ item, place }) =>
      (item.section === 'power' && /^(finger|thumb|index-finger|little-finger)-/.test(item.key)) ||
      (item.key === 'wasting' && place?.kind === 'region' && place.key === 'hand') ||
      (item.section === 'sensation' && place?.kind === 'dermatome' && ofTheLowestRoots.has(place.key)),
  );
  const ill = told('weight-loss', 'recent-weight-loss', 'tobacco', 'cancer');
  return hand.length > 0 ? arm.length + ill.length > 0 : arm.length > 0 && ill.length > 0;
}
