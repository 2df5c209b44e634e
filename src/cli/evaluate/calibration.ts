/** How far probabilities that were stated can be believed. */

/** A probability that was stated for something, and whether it was so. */
export interface Forecast {
  readonly stated: number;
  readonly isRight: boolean;
}

/** Forecasts whose stated probability lies in one stretch. */
export interface ReliabilityBin {
  readonly from: number;
  readonly to: number;
  readonly count: number;
  readonly meanStated: number;
  readonly shareRight: number;
}

/**
 * Squared error of one set of stated probabilities, 0 (sure and right) to 2 (sure and wrong). What was left unstated counts
 * as one more class, so that a list cut short is scored as it stands.
 * @param chances probability of each class that is named; the rest up to 1 is the unnamed class
 * @param right   the class that was so, null for the unnamed one; several classes that count as right come as one
 * Source: Brier, Verification of forecasts expressed in terms of probability, Monthly Weather Review 78 (1950) 1-3 (recalled).
 */
export function brierScore(chances: readonly number[], right: number | null): number {
  const unnamed = Math.max(0, 1 - chances.reduce((sum, chance) => sum + chance, 0));
  const named = chances.reduce((sum, chance, index) => sum + (chance - (index === right ? 1 : 0)) ** 2, 0);
  return named + (unnamed - (right === null ? 1 : 0)) ** 2;
}

const bins = 10;

/** The forecasts by tenths of the stated probability; empty tenths are left out. */
export function reliability(forecasts: readonly Forecast[]): readonly ReliabilityBin[] {
  return Array.from({ length: bins }, (_, bin) => bin).flatMap((bin) => {
    const own = forecasts.filter(({ stated }) => binOf(stated) === bin);
    if (own.length === 0) return [];
    return [
      {
        from: bin / bins,
        to: (bin + 1) / bins,
        count: own.length,
        meanStated: own.reduce((sum, { stated }) => sum + stated, 0) / own.length,
        shareRight: own.filter(({ isRight }) => isRight).length / own.length,
      },
    ];
  });
}

/** A bound belongs to the tenth above it, and certainty to the last; the small addition undoes the rounding of the product. */
function binOf(stated: number): number {
  return Math.min(bins - 1, Math.floor(stated * bins + 1e-9));
}

/** Mean distance between what was stated and what was so, each tenth weighing as much as it has forecasts; NaN of none. */
export function calibrationError(table: readonly ReliabilityBin[]): number {
  const total = table.reduce((sum, { count }) => sum + count, 0);
  return (
    table.reduce((sum, { count, meanStated, shareRight }) => sum + count * Math.abs(meanStated - shareRight), 0) / total
  );
}
