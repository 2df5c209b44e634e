import type { Context } from '../observation/context.ts';
import type { ChanceTable, StateColumns } from './columns.ts';
import type { Datum } from './evidence.ts';

/** One datum against the hypotheses: their states, and the table that turns a state into chances. */
export interface WeighedDatum extends Datum {
  readonly states: Uint8Array;
  readonly table: ChanceTable;
}

/** The evidence of one exam against every hypothesis. */
export interface Scored {
  readonly data: readonly WeighedDatum[];
  /** Natural log of prior times tempered likelihood, per hypothesis; not normalised. */
  readonly score: Float64Array;
}

/** From this chance of an abnormal result on, and when it is twice that of health, a tested item would have shown the lesion. */
const wouldShow = 0.3;
/**
 * Weight of a hypothesis that none of the tested items could have shown. An examination follows the complaint, so a lesion
 * is seldom where nobody looked. Judged.
 */
const unlookedFor = 0.15;

/**
 * @param logPrior      [H] natural log, not normalised
 * @param noLesionIndex the hypothesis that nothing is wrong, which no item can show
 */
export function scoreHypotheses(
  data: readonly Datum[],
  columns: StateColumns,
  context: Context,
  logPrior: Float64Array,
  noLesionIndex: number,
): Scored {
  const score = Float64Array.from(logPrior);
  const shown = new Uint8Array(logPrior.length);
  shown[noLesionIndex] = 1;
  const weighed = data.map(
    (datum): WeighedDatum => ({
      ...datum,
      states: columns.statesOf(datum.column),
      table: columns.table(datum.column.model, context),
    }),
  );
  for (const { states, table, valueIndex, weight } of weighed) {
    // One row of the table per state, so the inner loop is a gather and a sum.
    const gain = new Float64Array(table.abnormal.length);
    const shows = new Uint8Array(table.abnormal.length);
    const inHealth = table.abnormal[states[noLesionIndex] ?? 0] ?? 0;
    for (let state = 0; state < gain.length; state += 1) {
      gain[state] = weight * (table.log[state * table.width + valueIndex] ?? 0);
      shows[state] = (table.abnormal[state] ?? 0) >= Math.max(wouldShow, 2 * inHealth) ? 1 : 0;
    }
    for (let index = 0; index < score.length; index += 1) {
      const state = states[index] ?? 0;
      score[index] = (score[index] ?? 0) + (gain[state] ?? 0);
      shown[index] = (shown[index] ?? 0) | (shows[state] ?? 0);
    }
  }
  for (let index = 0; index < score.length; index += 1) {
    if (shown[index] === 0) score[index] = (score[index] ?? 0) + Math.log(unlookedFor);
  }
  return { data: weighed, score };
}

/** Natural log of the chance of what was observed in a state. */
export function logChance({ table, valueIndex }: WeighedDatum, state: number): number {
  return table.log[state * table.width + valueIndex] ?? 0;
}

export function chanceOf({ table, valueIndex }: WeighedDatum, state: number): number {
  return table.chance[state * table.width + valueIndex] ?? 0;
}

/** A datum counts as explained when its site predicts an abnormal result at least this often, or much more often than health does. */
const explainedChance = 0.3;
const explainedRatio = 4;
const leastChance = 0.1;

export function isExplained({ table }: WeighedDatum, chance: number, healthyState: number): boolean {
  return (
    chance >= explainedChance ||
    (chance >= leastChance && chance >= explainedRatio * (table.abnormal[healthyState] ?? 0))
  );
}

/**
 * Probabilities from unnormalised logs; sum 1. Empty in, empty out.
 * The largest is subtracted first, because exp() of a raw sum underflows after many findings.
 */
export function softmax(scores: ArrayLike<number>): Float64Array {
  let top = Number.NEGATIVE_INFINITY;
  for (let index = 0; index < scores.length; index += 1) top = Math.max(top, scores[index] ?? top);
  const weights = Float64Array.from({ length: scores.length }, (_, index) => Math.exp((scores[index] ?? 0) - top));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => weight / total);
}
