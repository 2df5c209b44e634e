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
 * Weight of a hypothesis that explains nothing of what was found wrong, on top of that. It says that health shows the
 * signs and that a lesion nobody was led to is there as well. Judged.
 */
const besideThePoint = 0.1;

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
  const weighed = data.map(
    ({ finding, column, valueIndex, abnormal, weight }): WeighedDatum => ({
      finding,
      column,
      valueIndex,
      abnormal,
      weight,
      states: columns.statesOf(column),
      table: columns.table(column.model, context),
    }),
  );
  const score = Float64Array.from(logPrior);
  const everyone = Uint16Array.from(score, (_, index) => index);
  addEvidence(
    score,
    weighed.filter(({ abnormal }) => abnormal),
    everyone,
  );
  const expected = weighed.filter(({ abnormal }) => !abnormal);
  const best = bestOnceNormalsCount(score, expected);
  // A normal result only ever takes from a score, so what is out of play by then stays so and need not be gone on with.
  const inPlay = everyone.filter((index) => (score[index] ?? 0) >= best - outOfPlay);
  addEvidence(score, expected, inPlay);
  for (const index of everyone) if ((score[index] ?? 0) < best - outOfPlay) score[index] = best - 2 * outOfPlay;
  doubtTheUnlookedFor(score, weighed, noLesionIndex);
  return { data: weighed, score };
}

/** What each state of a datum adds to the score. */
function gainsOf({ table: { log, width, abnormal }, valueIndex, weight }: WeighedDatum): Float64Array {
  const gains = new Float64Array(abnormal.length);
  for (let state = 0; state < gains.length; state += 1) gains[state] = weight * (log[state * width + valueIndex] ?? 0);
  return gains;
}

/** A gather and a sum, for the hypotheses named. */
function addEvidence(score: Float64Array, data: readonly WeighedDatum[], indexes: Uint16Array): void {
  for (const datum of data) {
    const { states } = datum;
    const gains = gainsOf(datum);
    for (let place = 0; place < indexes.length; place += 1) {
      const index = indexes[place] ?? 0;
      score[index] = (score[index] ?? 0) + (gains[states[index] ?? 0] ?? 0);
    }
  }
}

/** How many of the leading hypotheses are gone through to the end to learn how high a score stays. */
const goneThrough = 24;

function bestOnceNormalsCount(score: Float64Array, expected: readonly WeighedDatum[]): number {
  const leading = Uint16Array.from(score, (_, index) => index)
    .sort((a, b) => (score[b] ?? 0) - (score[a] ?? 0) || a - b)
    .slice(0, goneThrough);
  const complete = Float64Array.from(score);
  addEvidence(complete, expected, leading);
  return leading.reduce((best, index) => Math.max(best, complete[index] ?? best), Number.NEGATIVE_INFINITY);
}

/** Hypotheses further than this below the best, in nats, matter to no answer. */
const outOfPlay = 20;

/** Takes weight from hypotheses that no tested item could have shown; see `unlookedFor`. */
function doubtTheUnlookedFor(score: Float64Array, data: readonly WeighedDatum[], noLesionIndex: number): void {
  const best = score.reduce((top, value) => Math.max(top, value), Number.NEGATIVE_INFINITY);
  const thresholds = data.map(({ table, states }) =>
    Math.max(wouldShow, 2 * (table.abnormal[states[noLesionIndex] ?? 0] ?? 0)),
  );
  for (let index = 0; index < score.length; index += 1) {
    const value = score[index] ?? 0;
    if (index === noLesionIndex || value < best - outOfPlay) continue;
    const shown = data.some(
      ({ table, states }, datum) => (table.abnormal[states[index] ?? 0] ?? 0) >= (thresholds[datum] ?? 1),
    );
    if (shown) continue;
    score[index] = value + Math.log(data.some(({ abnormal }) => abnormal) ? unlookedFor * besideThePoint : unlookedFor);
  }
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

/** Whether the state in which a lesion leaves an item explains an abnormal datum about it. */
export function explains(state: number, datum: WeighedDatum, health: number): boolean {
  return isExplained(datum, datum.table.abnormal[state] ?? 0, datum.states[health] ?? 0);
}

/**
 * Abnormal data that a lesion does not account for.
 * @param stateOf state of a datum, which stands at a place among the data, under the lesion
 * @param health  index of the hypothesis that nothing is wrong
 */
export function unexplainedBy(
  { data }: Scored,
  stateOf: (datum: WeighedDatum, place: number) => number,
  health: number,
): readonly WeighedDatum[] {
  return data.filter((datum, place) => datum.abnormal && !explains(stateOf(datum, place), datum, health));
}

/**
 * Probabilities from unnormalised logs; sum 1. Empty in, empty out.
 * The largest is subtracted first, because exp() of a raw sum underflows after many findings.
 */
export function softmax(scores: ArrayLike<number>): Float64Array {
  let top = Number.NEGATIVE_INFINITY;
  for (let index = 0; index < scores.length; index += 1) top = Math.max(top, scores[index] ?? top);
  const weights = new Float64Array(scores.length);
  let total = 0;
  for (let index = 0; index < scores.length; index += 1) {
    const weight = Math.exp((scores[index] ?? 0) - top);
    weights[index] = weight;
    total += weight;
  }
  for (let index = 0; index < weights.length; index += 1) weights[index] = (weights[index] ?? 0) / total;
  return weights;
}
