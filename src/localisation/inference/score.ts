import type { Context } from '../observation/context.ts';
import type { StateColumns } from './columns.ts';
import type { Datum } from './evidence.ts';
import type { Reading } from './readings.ts';

/** One datum against the hypotheses: their states, and what a state says about it. */
export interface WeighedDatum extends Datum {
  readonly states: Uint8Array;
  readonly reading: Reading;
  /** By state, the natural log of the chance of what was observed, times the weight of the datum. */
  readonly gains: Float64Array;
}

/** The evidence of one exam against every hypothesis. */
export interface Scored {
  readonly data: readonly WeighedDatum[];
  /** Natural log of prior times tempered likelihood, per hypothesis; not normalised. */
  readonly score: Float64Array;
}

/**
 * Weight of a hypothesis that none of the tested items could have shown. An examination follows the complaint, so a lesion
 * is seldom where nobody looked. Judged.
 */
const logUnlookedFor = Math.log(0.15);
/**
 * Weight of a hypothesis that explains nothing of what was found wrong, on top of that. It says that health shows the
 * signs and that a lesion nobody was led to is there as well. Judged.
 */
const logBesideThePoint = Math.log(0.1);

/** Hypotheses further than this below the best, in nats, matter to no answer. */
const outOfPlay = 20;

/** How many of the leading hypotheses are gone through to the end to learn how high a score stays. */
const goneThrough = 24;

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
  const number = columns.contextNumber(context);
  const weighed = data.map((datum): WeighedDatum => {
    const { finding, column, valueIndex, abnormal, weight } = datum;
    const states = columns.statesOf(column);
    const reading = columns.reading(column, context, number);
    return { finding, column, valueIndex, abnormal, weight, states, reading, gains: gainsOf(datum, reading) };
  });
  const score = Float64Array.from(logPrior);
  const count = score.length;
  addEvidence(
    score,
    weighed.filter(({ abnormal }) => abnormal),
    columns.everyone,
    count,
  );
  const expected = weighed.filter(({ abnormal }) => !abnormal);
  const best = bestOnceNormalsCount(score, expected);
  const least = best - outOfPlay;
  // A normal result only ever takes from a score, so what is out of play by then stays so and need not be gone on with.
  const inPlay = new Uint16Array(count);
  let playing = 0;
  for (let index = 0; index < count; index += 1) {
    if ((score[index] ?? 0) < least) continue;
    inPlay[playing] = index;
    playing += 1;
  }
  addEvidence(score, expected, inPlay, playing);
  const out = best - 2 * outOfPlay;
  for (let index = 0; index < count; index += 1) if ((score[index] ?? 0) < least) score[index] = out;
  doubtTheUnlookedFor(score, weighed, noLesionIndex);
  return { data: weighed, score };
}

/** What each state of a datum adds to the score. */
function gainsOf({ valueIndex, weight }: Datum, { table: { log, width, abnormal } }: Reading): Float64Array {
  const gains = new Float64Array(abnormal.length);
  for (let state = 0; state < gains.length; state += 1) gains[state] = weight * (log[state * width + valueIndex] ?? 0);
  return gains;
}

/**
 * A gather and a sum for the first `count` of the hypotheses named. Four data at a time, so that a score is read and
 * written once for four; the order of the sum is that of the data.
 */
export function addEvidence(
  score: Float64Array,
  data: readonly Pick<WeighedDatum, 'states' | 'gains'>[],
  indexes: Uint16Array,
  count: number,
): void {
  let at = 0;
  for (; at + 4 <= data.length; at += 4) {
    const [a, b, c, d] = [data[at], data[at + 1], data[at + 2], data[at + 3]];
    if (a !== undefined && b !== undefined && c !== undefined && d !== undefined)
      addFour(score, a.states, a.gains, b.states, b.gains, c.states, c.gains, d.states, d.gains, indexes, count);
  }
  for (; at < data.length; at += 1) {
    const one = data[at];
    if (one !== undefined) addOne(score, one.states, one.gains, indexes, count);
  }
}

function addOne(
  score: Float64Array,
  states: Uint8Array,
  gains: Float64Array,
  indexes: Uint16Array,
  count: number,
): void {
  for (let place = 0; place < count; place += 1) {
    const index = indexes[place] ?? 0;
    score[index] = (score[index] ?? 0) + (gains[states[index] ?? 0] ?? 0);
  }
}

function addFour(
  score: Float64Array,
  states1: Uint8Array,
  gains1: Float64Array,
  states2: Uint8Array,
  gains2: Float64Array,
  states3: Uint8Array,
  gains3: Float64Array,
  states4: Uint8Array,
  gains4: Float64Array,
  indexes: Uint16Array,
  count: number,
): void {
  for (let place = 0; place < count; place += 1) {
    const index = indexes[place] ?? 0;
    score[index] =
      (score[index] ?? 0) +
      (gains1[states1[index] ?? 0] ?? 0) +
      (gains2[states2[index] ?? 0] ?? 0) +
      (gains3[states3[index] ?? 0] ?? 0) +
      (gains4[states4[index] ?? 0] ?? 0);
  }
}

function bestOnceNormalsCount(score: Float64Array, expected: readonly WeighedDatum[]): number {
  const leading = indexesOfLargest(score, goneThrough);
  const complete = Float64Array.from(score);
  addEvidence(complete, expected, leading, leading.length);
  let best = Number.NEGATIVE_INFINITY;
  for (const index of leading) best = Math.max(best, complete[index] ?? best);
  return best;
}

/** Indexes of the largest values, largest first; of equal values the first come first. */
export function indexesOfLargest(values: Float64Array, most: number): Uint16Array {
  const indexes = new Uint16Array(Math.min(most, values.length));
  let held = 0;
  let least = Number.NEGATIVE_INFINITY;
  for (let index = 0; index < values.length; index += 1) {
    const value = values[index] ?? 0;
    if (held === indexes.length && value <= least) continue;
    let place = held < indexes.length ? held : held - 1;
    while (place > 0 && value > (values[indexes[place - 1] ?? 0] ?? 0)) {
      indexes[place] = indexes[place - 1] ?? 0;
      place -= 1;
    }
    indexes[place] = index;
    if (held < indexes.length) held += 1;
    least = values[indexes[held - 1] ?? 0] ?? 0;
  }
  return indexes;
}

/** Takes weight from hypotheses that no tested item could have shown; see `logUnlookedFor`. */
function doubtTheUnlookedFor(score: Float64Array, data: readonly WeighedDatum[], noLesionIndex: number): void {
  let best = Number.NEGATIVE_INFINITY;
  for (let index = 0; index < score.length; index += 1) best = Math.max(best, score[index] ?? best);
  const isSomethingWrong = data.some(({ abnormal }) => abnormal);
  for (let index = 0; index < score.length; index += 1) {
    const value = score[index] ?? 0;
    if (index === noLesionIndex || value < best - outOfPlay) continue;
    if (!isShown(data, index)) score[index] = value + logUnlookedFor + (isSomethingWrong ? logBesideThePoint : 0);
  }
}

function isShown(data: readonly WeighedDatum[], index: number): boolean {
  for (const { reading, states } of data) if (reading.shows[states[index] ?? 0] === 1) return true;
  return false;
}

/** Natural log of the chance of what was observed in a state. */
export function logChance({ reading: { table }, valueIndex }: WeighedDatum, state: number): number {
  return table.log[state * table.width + valueIndex] ?? 0;
}

/** Whether the state in which a lesion leaves an item explains an abnormal datum about it. */
export function explains(state: number, { reading }: WeighedDatum): boolean {
  return reading.explains[state] === 1;
}

/**
 * Abnormal data that a lesion does not account for.
 * @param stateOf state of a datum, which stands at a place among the data, under the lesion
 */
export function unexplainedBy(
  { data }: Scored,
  stateOf: (datum: WeighedDatum, place: number) => number,
): readonly WeighedDatum[] {
  return data.filter((datum, place) => datum.abnormal && !explains(stateOf(datum, place), datum));
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
  // Most scores are equal, those that are out of play; their exponential is worked out once.
  let last = Number.NaN;
  let weight = 0;
  for (let index = 0; index < scores.length; index += 1) {
    const score = scores[index] ?? 0;
    if (score !== last) weight = Math.exp(score - top);
    last = score;
    weights[index] = weight;
    total += weight;
  }
  for (let index = 0; index < weights.length; index += 1) weights[index] = (weights[index] ?? 0) / total;
  return weights;
}
