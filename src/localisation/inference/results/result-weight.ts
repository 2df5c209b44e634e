import type { InvestigationResult } from '../../../exam/exam.ts';
import { fromMemory, type Source } from '../../../kernel/cite.ts';
import type { Applies } from '../shift.ts';

/** How a result that is back shifts the odds of sites. */
export interface ResultWeight {
  /** Key of the catalogue. */
  readonly result: string;
  /** Whether the result is of this kind: one of these values, or a number on this side of a threshold. */
  readonly isMet: (result: InvestigationResult) => boolean;
  /** Values of a coded result, for the check of the tables. */
  readonly values?: readonly string[];
  readonly unit?: string;
  readonly applies: Applies;
  readonly factor: number;
  readonly because: string;
  readonly source: Source;
}

/**
 * Coded results. The factors are judged: large where the result shows the lesion itself, small where it misses many.
 */
export const found = (
  results: string | readonly string[],
  values: string | readonly string[],
  applies: Applies,
  factor: number,
  because: string,
  source: Source = fromMemory,
): readonly ResultWeight[] => {
  const wanted: readonly string[] = [values].flat();
  return [results].flat().map((result) => ({
    result,
    isMet: ({ value }) => value !== undefined && wanted.includes(value),
    values: wanted,
    applies,
    factor,
    because,
    source,
  }));
};

/** A number at a threshold or above it, or below it, in the catalogue's unit; a bound that leaves it open says nothing. */
export const measured = (
  result: string,
  side: 'from' | 'below',
  threshold: number,
  unit: string,
  applies: Applies,
  factor: number,
  because: string,
  source: Source,
): ResultWeight => ({
  result,
  isMet: ({ quantity, comparator }) => {
    if (quantity?.unit !== unit) return false;
    if (side === 'from') return quantity.value >= threshold && comparator?.startsWith('<') !== true;
    const isBelow = quantity.value < threshold || (comparator === '<' && quantity.value === threshold);
    return isBelow && comparator?.startsWith('>') !== true;
  },
  unit,
  applies,
  factor,
  because,
  source,
});
