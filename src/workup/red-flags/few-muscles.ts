import type { Finding } from '../../exam/finding.ts';
import type { BedsideFacts } from '../bedside-facts.ts';

/** The limbs that findings are of. */
export const limbsOf = (found: readonly Finding[]): ReadonlySet<string> =>
  new Set(found.map(({ item, side }) => `${item.region} ${side}`));

/** So many movements of the same limb must have been found strong. Judged. */
const strongAtLeast = 5;

/** One or two weak movements of one limb whose others were found strong: a nerve, and no weakness that spreads. */
export function isOneMuscleOrTwo({ query, weakLimbs }: BedsideFacts): boolean {
  const limbs = limbsOf(weakLimbs);
  if (limbs.size !== 1 || weakLimbs.length > 2) return false;
  const strong = query.testedWhere(
    (one) => one.item.probe.kind === 'movement' && !one.abnormal && limbs.has(`${one.item.region} ${one.side}`),
  );
  return strong.length >= strongAtLeast;
}
