import type { Exam } from '../../exam/exam.ts';
import { anyOf, kinds, sites } from './history/history-weight.ts';
import { shiftBy } from './limb-patterns.ts';
import type { Shift } from './shift.ts';

/**
 * Odds where a joint of the arm has gone without pain: three of four such shoulders and elbows are of a cavity in the cord (Hatzis 1998,
 * from memory); roots and nerves that are cut off from pain do not loosen a joint within the life of their disease. Judged.
 */
const jointOfTheArm = { cavity: 8, restOfTheArm: 0.35 } as const;
const ofTheArm = /^(shoulder|upper-arm|elbow|forearm|wrist|hand|finger|thumb|upper-limb)/;

export function neuropathicJointShifts({ findings }: Exam): readonly Shift[] {
  const joint = findings.find(
    ({ abnormal, item, place }) =>
      abnormal && item.key === 'neuropathic-joint' && place !== undefined && ofTheArm.test(place.key),
  );
  if (joint === undefined) return [];
  const because = 'a joint of the arm that goes without pain is that of a cavity in the cord in most';
  return [
    shiftBy(joint, { applies: sites('spinal-cord-central'), factor: jointOfTheArm.cavity, because }),
    shiftBy(joint, {
      applies: anyOf(kinds('root', 'plexus', 'nerve'), sites('spinal-cord-anterior')),
      factor: jointOfTheArm.restOfTheArm,
      because,
    }),
  ];
}
