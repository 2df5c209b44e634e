import type { BedsideFacts } from '../bedside-facts.ts';

/** One nerve, or a plexus of one side, below a painless back: blood lies beside it and not in the canal. */
export function isOutsideTheCanal({
  kindProbability,
  weakLimbs,
  told,
  sphincterFailure,
  upperMotorSigns,
}: BedsideFacts): boolean {
  const sides = new Set(weakLimbs.map(({ side }) => side));
  return (
    kindProbability('nerve', 'plexus') >= 0.9 &&
    sides.size === 1 &&
    sphincterFailure.length + upperMotorSigns.length + told('back-pain', 'saddle-numbness').length === 0
  );
}
