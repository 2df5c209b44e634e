import { isNearTheTrunk } from '../../anatomy/near-the-trunk.ts';
import type { BedsideFacts } from '../bedside-facts.ts';
import { spinalPain } from './cord.ts';

/** What roots, nerves and cord make people tell of, and muscles do not. */
const notOfMuscle = [
  ...spinalPain,
  'radicular-leg-pain',
  'bilateral-leg-pain',
  'radicular-arm-pain',
  'tight-band',
  'numbness',
  'paraesthesiae',
  'saddle-numbness',
  'unsteadiness',
  'bladder-disturbance',
] as const;

/** Grade of power below which it is no matter of weeks whether the cord is looked at. Judged. */
const stillMoving = 3;

/**
 * Whether both girdles alone have failed over more than a month, shoulders and hips of both sides alike, and nothing is brisk, numb,
 * painful or wet: what presses on the cord takes hands and feet first and hurts, and this is muscle or junction until shown
 * otherwise, in those with a cancer too.
 */
export function isOfTheGirdles(facts: BedsideFacts): boolean {
  const { bothArmsWeak, bothLegsWeak, weakLimbs, lowestLimbPower } = facts;
  if (!bothArmsWeak || !bothLegsWeak || lowestLimbPower < stillMoving || facts.beganWithin(31) === 'yes') return false;
  return (
    weakLimbs.every(({ item }) => isNearTheTrunk(item.probe)) &&
    facts.told(...notOfMuscle).length === 0 &&
    facts.sphincterFailure.length === 0 &&
    !facts.abnormalFindings.some(({ item, modality }) => modality !== undefined || item.section === 'plantars') &&
    facts.upperMotorSigns.length === 0
  );
}
