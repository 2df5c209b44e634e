import { bodyPartTable } from '../anatomy/body-parts.ts';
import { skinPlace } from '../anatomy/skin-places.ts';
import type { FindingPlace } from './finding.ts';

export type Limb = 'upper-limbs' | 'lower-limbs';

/** Whether a place of the skin, or a part of the body, lies on the arms or legs. */
export function isOnLimb(place: FindingPlace | undefined, limb: Limb): boolean {
  if (place === undefined) return false;
  if (place.kind === 'region') return place.key === limb;
  if (place.kind === 'level-below') return false;
  if (place.kind === 'body-part') return bodyPartTable.get(place.key)?.region === limb;
  return skinPlace(place.kind, place.key)?.region === limb;
}
