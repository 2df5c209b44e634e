import type { AdviceJudgement } from './judge-advice.ts';
import { alternativesOf } from './read-advice.ts';

/** One red flag over a set of cases that fix theirs. */
export interface FlagFigures {
  readonly key: string;
  readonly expected: number;
  readonly raised: number;
  readonly missed: number;
  /** Cases that expect no flag in which it was raised and is not allowed. */
  readonly falseAlarms: number;
  /** Cases that expect other flags in which it was raised beside them and is not allowed. */
  readonly besideOthers: number;
}

/**
 * The red flags by key, in the order of the alphabet; what is neither expected nor raised beyond that is left out.
 * Where a case is content with either of two (`a|b`) it is counted under `a`, so that the sums are those of the red flags
 * expected.
 */
export function flagFiguresOf(judgements: readonly AdviceJudgement[]): readonly FlagFigures[] {
  const flagged = judgements.flatMap(({ flags }) => flags ?? []);
  const raised = countByKey(flagged.flatMap((flags) => flags.raised.map(firstOf)));
  const missed = countByKey(flagged.flatMap((flags) => flags.missed.map(firstOf)));
  const alarms = countByKey(flagged.filter(({ expected }) => expected === 0).flatMap(({ extra }) => extra));
  const beside = countByKey(flagged.filter(({ expected }) => expected > 0).flatMap(({ extra }) => extra));
  const keys = new Set([raised, missed, alarms, beside].flatMap((counts) => [...counts.keys()]));
  return [...keys].toSorted().map((key) => ({
    key,
    expected: (raised.get(key) ?? 0) + (missed.get(key) ?? 0),
    raised: raised.get(key) ?? 0,
    missed: missed.get(key) ?? 0,
    falseAlarms: alarms.get(key) ?? 0,
    besideOthers: beside.get(key) ?? 0,
  }));
}

function firstOf(key: string): string {
  return alternativesOf(key)[0] ?? key;
}

function countByKey(keys: readonly string[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const key of keys) counts.set(key, (counts.get(key) ?? 0) + 1);
  return counts;
}
