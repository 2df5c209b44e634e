import type { MuscleGroup } from './movement.ts';

/** Muscles of neck, trunk, girdles and the near halves of the limbs, which diseases of muscle and junction mostly take first. */
export const nearTheTrunk: ReadonlySet<MuscleGroup> = new Set<MuscleGroup>([
  'neck-flexors',
  'neck-extensors',
  'trunk',
  'scapular',
  'shoulder',
  'upper-arm',
  'hip',
  'knee-extensors',
  'knee-flexors',
]);
