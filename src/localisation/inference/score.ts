import type { Context } from '../observation/context.ts';
import type { Affected, StateColumns } from './columns.ts';
import type { Datum } from './evidence.ts';
import type { Reading } from './readings.ts';

/** One datum against the hypotheses: their states, and what a state says about it. */
export interface WeighedDatum extends Datum, Gains {
  readonly states: Uint8Array;
  readonly affected: Affected;
  readonly reading: Reading;
  /** State of the item in health. */
  readonly healthy: number;
  /** By state, the natural log of the chance of what was observed. */
  readonly logs: Float64Array;
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
 * Weight of a hypothesis that explains nothing of what was found wrong: it says that health shows the signs and that a lesion
 * nobody was led to is there as well. Judged.
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
    const affected = columns.affectedBy(column);
    const { healthy } = reading;
    const logs = reading.table.logs[valueIndex] ?? noLogs;
    return { finding, column, valueIndex, abnormal, weight, states, affected, reading, healthy, logs };
  });
  const wrong = weighed.filter(({ abnormal }) => abnormal);
  const expected = weighed.filter(({ abnormal }) => !abnormal);
  const ordered = [...wrong, ...expected];
  const rough = Float64Array.from(logPrior);
  addRoughly(rough, wrong);
  // A normal result only ever takes from a score, so what leads before they count shows how high a score stays.
  const leading = Float64Array.from(logPrior);
  const best = largest(addTo(leading, ordered, indexesOfLargest(rough, goneThrough)), leading);
  addRoughly(rough, expected);
  const least = best - outOfPlay;
  const inPlay = indexesFrom(rough, least - roughness);
  const score = new Float64Array(rough.length).fill(best - 2 * outOfPlay);
  for (const index of inPlay) score[index] = logPrior[index] ?? 0;
  addTo(score, ordered, inPlay);
  for (const index of inPlay) if ((score[index] ?? 0) < least) score[index] = best - 2 * outOfPlay;
  doubtTheUnlookedFor(score, weighed, inPlay, noLesionIndex);
  return { data: weighed, score };
}

function largest(indexes: Uint16Array, values: Float64Array): number {
  let most = Number.NEGATIVE_INFINITY;
  for (const index of indexes) most = Math.max(most, values[index] ?? most);
  return most;
}

function indexesFrom(values: Float64Array, least: number): Uint16Array {
  const indexes = new Uint16Array(values.length);
  let count = 0;
  for (let index = 0; index < values.length; index += 1) {
    if ((values[index] ?? 0) < least) continue;
    indexes[count] = index;
    count += 1;
  }
  return indexes.subarray(0, count);
}

/** What is needed to add a datum to scores. */
export interface Gains {
  readonly states: Uint8Array;
  readonly affected: Affected;
  readonly healthy: number;
  readonly logs: Float64Array;
  readonly weight: number;
}

const noLogs = new Float64Array(0);

/** What the order of a sum may change in a score, and more. */
export const roughness = 1e-6;

/**
 * A gather and a sum over every hypothesis: what health gains goes to all at once, and where a hypothesis affects an item
 * the difference. The last digits depend on how it is summed, so this only tells which hypotheses are worth a full sum.
 */
export function addRoughly(score: Float64Array, data: readonly Gains[]): void {
  let inHealth = 0;
  for (const { logs, healthy, weight } of data) inHealth += weight * (logs[healthy] ?? 0);
  for (let index = 0; index < score.length; index += 1) score[index] = (score[index] ?? 0) + inHealth;
  for (const { affected, logs, healthy, weight } of data)
    addDifferences(score, affected, logs, weight, logs[healthy] ?? 0);
}

function addDifferences(
  score: Float64Array,
  { indexes, states }: Affected,
  logs: Float64Array,
  weight: number,
  usual: number,
): void {
  for (let place = 0; place < indexes.length; place += 1) {
    const index = indexes[place] ?? 0;
    score[index] = (score[index] ?? 0) + weight * ((logs[states[place] ?? 0] ?? 0) - usual);
  }
}

/** The sum in full, in the order of the data, for the hypotheses named; answers their indexes. */
export function addTo(score: Float64Array, data: readonly Gains[], indexes: Uint16Array): Uint16Array {
  for (const { states, logs, weight } of data) {
    for (let place = 0; place < indexes.length; place += 1) {
      const index = indexes[place] ?? 0;
      score[index] = (score[index] ?? 0) + weight * (logs[states[index] ?? 0] ?? 0);
    }
  }
  return indexes;
}

/** Indexes of the largest values, largest first; of equal values the first come first. */
function indexesOfLargest(values: Float64Array, most: number): Uint16Array {
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

/** Takes weight from hypotheses that no tested item could have shown, and from those that explain nothing; see `logUnlookedFor`. */
function doubtTheUnlookedFor(
  score: Float64Array,
  data: readonly WeighedDatum[],
  inPlay: Uint16Array,
  noLesionIndex: number,
): void {
  const best = largest(inPlay, score);
  const isSomethingWrong = data.some(({ abnormal }) => abnormal);
  for (const index of inPlay) {
    const value = score[index] ?? 0;
    if (index === noLesionIndex || value < best - outOfPlay) continue;
    const isLookedFor = isShown(data, index);
    const isBeside = isSomethingWrong && !(isLookedFor && explainsAny(data, index));
    score[index] = value + (isLookedFor ? 0 : logUnlookedFor) + (isBeside ? logBesideThePoint : 0);
  }
}

function explainsAny(data: readonly WeighedDatum[], index: number): boolean {
  for (const { abnormal, reading, states } of data)
    if (abnormal && reading.explains[states[index] ?? 0] === 1) return true;
  return false;
}

function isShown(data: readonly WeighedDatum[], index: number): boolean {
  for (const { reading, states } of data) if (reading.shows[states[index] ?? 0] === 1) return true;
  return false;
}

/**
 * Abnormal data that a lesion does not account for.
 * @param stateOf state of a datum, which stands at a place among the data, under the lesion
 */
export function unexplainedBy(
  { data }: Scored,
  stateOf: (datum: WeighedDatum, place: number) => number,
): readonly WeighedDatum[] {
  return data.filter((datum, place) => datum.abnormal && datum.reading.explains[stateOf(datum, place)] !== 1);
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
