import type { MuscleGroup } from './movement.ts';
import { movementTable } from './movements.ts';
import type { Probe } from './probe.ts';

/** Muscles of the girdles and of the near halves of the limbs. */
export const nearOnLimbs: ReadonlySet<MuscleGroup> = new Set<MuscleGroup>([
  'scapular',
  'shoulder',
  'upper-arm',
  'hip',
  'knee-extensors',
  'knee-flexors',
]);

/** The same with neck and trunk: what diseases of muscle and junction mostly take first. */
const nearTheTrunk: ReadonlySet<MuscleGroup> = new Set<MuscleGroup>([
  'neck-flexors',
  'neck-extensors',
  'trunk',
  ...nearOnLimbs,
]);

/** Whether a sign is the power of muscles of the trunk, the girdles or the near halves of the limbs. */
export function isNearTheTrunk(probe: Probe): boolean {
  const group = probe.kind === 'movement' ? movementTable.get(probe.movement)?.group : undefined;
  return group !== undefined && nearTheTrunk.has(group);
}
