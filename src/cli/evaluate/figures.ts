import { calibrationError, type ReliabilityBin, reliability } from './calibration.ts';
import type { Judgement } from './judge.ts';

/** So many of so many. */
export interface Share {
  readonly right: number;
  readonly of: number;
}

/** What a set of judged cases comes to. Means are null when there is nothing to take them of. */
export interface Figures {
  readonly cases: number;
  /** A right site first, or among the first three, of the cases that expect a site. */
  readonly first: Share;
  readonly firstThree: Share;
  /** Of the cases with a right site first and the side, or level, fixed. */
  readonly side: Share;
  readonly level: Share;
  readonly exactLevel: Share;
  readonly conclusion: Share;
  /** Mean of one over the rank of the first right site; 0 where none is listed. */
  readonly reciprocalRank: number | null;
  readonly brier: number | null;
  readonly reliability: readonly ReliabilityBin[];
  readonly calibrationError: number | null;
  readonly sureAndWrong: Share;
}

export function figuresOf(judgements: readonly Judgement[]): Figures {
  const placed = judgements.filter(({ hasSite }) => hasSite);
  const table = reliability(placed);
  return {
    cases: judgements.length,
    first: share(placed.map(({ rank }) => rank === 1)),
    firstThree: share(placed.map(({ rank }) => rank !== null && rank <= 3)),
    side: share(judgements.map(({ side }) => side)),
    level: share(judgements.map(({ level }) => level)),
    exactLevel: share(judgements.map(({ exactLevel }) => exactLevel)),
    conclusion: share(judgements.map(({ conclusion }) => conclusion)),
    reciprocalRank: mean(placed.map(({ rank }) => (rank === null ? 0 : 1 / rank))),
    brier: mean(placed.map(({ brier }) => brier)),
    reliability: table,
    calibrationError: table.length === 0 ? null : calibrationError(table),
    sureAndWrong: share(judgements.map(({ isSureAndWrong }) => isSureAndWrong)),
  };
}

/** The judgements that count, those that are not null. */
export function share(judged: readonly (boolean | null)[]): Share {
  const counted = judged.filter((one) => one !== null);
  return { right: counted.filter(Boolean).length, of: counted.length };
}

export function mean(values: readonly number[]): number | null {
  return values.length === 0 ? null : values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** A share as a number from 0 to 1; 1 of none, so that a bound on nothing holds. */
export function ratio({ right, of }: Share): number {
  return of === 0 ? 1 : right / of;
}

/** The judgements under each name that they go by, in the order of first appearance. */
export function groupBy<T>(
  judgements: readonly T[],
  name: (judgement: T) => string | undefined,
): ReadonlyMap<string, readonly T[]> {
  const groups = new Map<string, T[]>();
  for (const judgement of judgements) {
    const key = name(judgement);
    if (key !== undefined) groups.set(key, [...(groups.get(key) ?? []), judgement]);
  }
  return groups;
}
