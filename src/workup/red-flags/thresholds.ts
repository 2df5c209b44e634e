import { isFrom, type Measurement } from '../../causes/exam-query.ts';

/**
 * Comparisons of a result with a limit that hold for certain: a result that came as a bound ("< 10") and leaves the limit open
 * is neither at it nor under it, and raises nothing.
 */
export function isAtLeast(measured: Measurement, limit: number): boolean {
  return isFrom(measured, limit) === true;
}

export function isUnder(measured: Measurement, limit: number): boolean {
  return isFrom(measured, limit) === false;
}

export function isOver({ value, comparator }: Measurement, limit: number): boolean {
  if (comparator === undefined) return value > limit;
  return comparator === '>' ? value >= limit : comparator === '>=' && value > limit;
}

/** The number with the sign of its bound: "<120". */
export function written({ value, comparator }: Measurement): string {
  return `${comparator ?? ''}${value}`;
}
