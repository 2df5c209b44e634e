import type { Exam } from '../../exam/exam.ts';
import type { Finding } from '../../exam/finding.ts';
import { type BodySide, isBodySide, opposite } from '../../kernel/side.ts';
import { kinds } from './history/history-weight.ts';
import { shiftBy } from './limb-patterns.ts';
import type { Applies, Shift } from './shift.ts';

/** Odds of the hemisphere that makes the other half of the body jerk, and of the one that does not. Judged. */
const jerking = { itsSide: 3, otherSide: 0.3 } as const;

/**
 * Odds of the hemisphere that drives the eyes away while it discharges, of the one whose loss would let them go that way, and of a
 * gaze that fails in the brainstem. Judged.
 */
const driving = { itsSide: 5, otherSide: 0.15, brainstem: 0.25 } as const;

const hemisphereOn = {
  left: ({ kind, side }) => kind === 'hemisphere' && side === 'left',
  right: ({ kind, side }) => kind === 'hemisphere' && side === 'right',
} as const satisfies Record<BodySide, Applies>;
const ofBrainstem = kinds('brainstem');

/** A sign that was found on one side alone, and that side. */
function onOneSide(
  findings: readonly Finding[],
  key: string,
): { readonly sign: Finding; readonly side: BodySide } | undefined {
  const [sign, other] = findings.filter(({ item, abnormal }) => abnormal && item.key === key);
  if (sign === undefined || other !== undefined) return undefined;
  const { side } = sign;
  return isBodySide(side) ? { sign, side } : undefined;
}

/**
 * A seizure that is seen: the cortex that discharges makes the other half of the body jerk and drives the eyes to that half, where
 * a lesion would have let both go the other way. Source: Adams and Victor, epilepsy (recalled).
 */
export function convulsionShifts({ findings, history }: Exam): readonly Shift[] {
  const seen = findings.filter(({ item, abnormal }) => abnormal && item.key === 'seizure-seen');
  const isGoingOn = seen.length > 0 || history.some(({ key, present }) => present && key === 'ongoing-seizure');
  if (!isGoingOn) return [];
  const jerks = onOneSide(findings, 'seizure-seen');
  const driven = onOneSide(findings, 'forced-gaze-deviation');
  return [
    ...(jerks === undefined ? [] : ofJerks(jerks.sign, opposite(jerks.side))),
    ...(driven === undefined ? [] : ofEyes(driven.sign, driven.side)),
  ];
}

/** @param side of the cortex */
function ofJerks(jerks: Finding, side: BodySide): readonly Shift[] {
  const because = `the ${side} cortex makes the other half of the body jerk`;
  return [
    shiftBy(jerks, { applies: hemisphereOn[side], factor: jerking.itsSide, because }),
    shiftBy(jerks, { applies: hemisphereOn[opposite(side)], factor: jerking.otherSide, because }),
  ];
}

function ofEyes(driven: Finding, side: BodySide): readonly Shift[] {
  const because = `the ${side} cortex drives the eyes away while it discharges`;
  return [
    shiftBy(driven, { applies: hemisphereOn[side], factor: driving.itsSide, because }),
    shiftBy(driven, { applies: hemisphereOn[opposite(side)], factor: driving.otherSide, because }),
    shiftBy(driven, { applies: ofBrainstem, factor: driving.brainstem, because }),
  ];
}
