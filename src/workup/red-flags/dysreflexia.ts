import type { Reason } from '../../causes/ranked-cause.ts';
import { findingReasons } from '../../causes/reasons.ts';
import type { BedsideFacts } from '../bedside-facts.ts';
import { cordSigns, isOnBothSides } from './cord.ts';
import { orTold, present, type Verdict } from './rule.ts';
import { each, none } from './story.ts';
import { isAtLeast, written } from './thresholds.ts';

/** A sudden rise of pressure in somebody whose cord was cut off from the brain. */
export function checkDysreflexia(facts: BedsideFacts): Verdict | null {
  const rise = facts.query.abnormal(['autonomic/paroxysmal-hypertension', 'autonomic/flushing-above-level']);
  const signs = [...cordSigns(facts), ...injuredCord(facts)];
  // Flushing above a level says that there is one.
  const isNamed = facts.query.hasAbnormal('autonomic/flushing-above-level');
  if (rise.length > 0 && (signs.length > 0 || isNamed)) return present([...findingReasons(rise), ...signs.slice(0, 2)]);
  return orTold(null, each(highOrLabile(facts), drivenBySympathetic(facts), signs));
}

/** Legs dead or nearly so for weeks, with a broken spine told or a cord that is much the likeliest place. */
function injuredCord(facts: BedsideFacts): readonly Reason[] {
  const broken = facts.told('spinal-fracture');
  // Legs that have grown stiff below a broken spine say the same, though nobody has noted how weak they are.
  if (broken.length > 0 && isOnBothSides(facts.upperMotorSignsInLegs))
    return [...broken, ...findingReasons(facts.upperMotorSignsInLegs, 2)];
  const inCord = broken.length > 0 || facts.kindProbability('cord') >= 0.5;
  return inCord && facts.bothLegsWeak && facts.lowestLimbPower <= 2
    ? [...broken, ...findingReasons(facts.weak('lower-limbs'), 2)]
    : none;
}

/** A pressure that swings, or 150 mmHg and more: people with a high cord lesion have 90 to 110. Source: Consortium 2001, recalled. */
function highOrLabile(facts: BedsideFacts): readonly Reason[] {
  const systolic = facts.query.quantity('systolic-pressure-supine', 'mm[Hg]');
  return [
    ...findingReasons(facts.query.abnormal(['autonomic/blood-pressure-lability'])),
    ...(systolic !== undefined && isAtLeast(systolic, 150)
      ? [{ pointer: systolic.pointer, text: `systolic pressure ${written(systolic)} mmHg` }]
      : []),
  ];
}

/** What the storm below the lesion brings above it. */
function drivenBySympathetic(facts: BedsideFacts): readonly Reason[] {
  return [
    ...facts.told('headache', 'new-headache', 'thunderclap-headache', 'altered-sweating'),
    ...findingReasons(facts.query.abnormal(['autonomic/bradycardia', 'autonomic/hyperhidrosis']), 2),
  ];
}
