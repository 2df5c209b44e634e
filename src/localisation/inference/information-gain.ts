import type { Site } from '../hypothesis.ts';
import type { Context } from '../observation/context.ts';
import type { Column, StateColumns } from './columns.ts';
import type { Mixture } from './ranking.ts';

/** A leading site with its probability and the hypotheses that stand for it, weights summing to 1. */
export interface Contender {
  readonly probability: number;
  /** As it is named. */
  readonly site: Site;
  readonly members: Mixture;
}

/** The widest scale has this many values at most. */
const valuesAtMost = 64;

/** How much the result of an item is expected to tell some leading sites apart, for many items in a row. */
export class InformationGain {
  private readonly contenders: readonly Contender[];
  private readonly shares: Float64Array;
  /** Hypotheses of all contenders, one contender after the other, and where each contender's end. */
  private readonly indexes: Uint16Array;
  private readonly weights: Float64Array;
  private readonly ends: Uint16Array;
  private readonly columns: StateColumns;
  private readonly context: Context;
  private readonly contextNumber: number;
  private readonly states: Uint8Array;
  private readonly rows: Float64Array;
  private readonly marginal = new Float64Array(valuesAtMost);

  constructor(contenders: readonly Contender[], columns: StateColumns, context: Context) {
    const total = contenders.reduce((sum, { probability }) => sum + probability, 0);
    const members = contenders.flatMap((contender) => contender.members);
    let end = 0;
    this.contenders = contenders;
    this.shares = Float64Array.from(contenders, ({ probability }) => probability / total);
    this.indexes = Uint16Array.from(members, ({ index }) => index);
    this.weights = Float64Array.from(members, ({ weight }) => weight);
    this.ends = Uint16Array.from(contenders, (contender) => {
      end += contender.members.length;
      return end;
    });
    this.columns = columns;
    this.context = context;
    this.contextNumber = columns.contextNumber(context);
    this.states = new Uint8Array(members.length);
    this.rows = new Float64Array(contenders.length * valuesAtMost);
  }

  /**
   * Expected information about which contender is right, in bits; 0 when they all predict the same.
   * @param atLeast what is surely below this is not worked out to the end: 0 is answered
   */
  bits(column: Column, atLeast = 0): number {
    if (!this.gather(column)) return 0;
    const width = this.predict(column);
    return this.most(width) < atLeast ? 0 : this.exact(width);
  }

  /** Chance of each value under each contender. */
  chances(column: Column): readonly (readonly number[])[] {
    this.gather(column);
    const width = this.predict(column);
    return this.contenders.map((_, row) => Array.from(this.rows.subarray(row * width, (row + 1) * width)));
  }

  /** Notes the state of the column under every hypothesis in play; answers whether they differ. */
  private gather(column: Column): boolean {
    const { states, indexes } = this;
    let differ = false;
    for (let place = 0; place < indexes.length; place += 1) {
      const state = this.columns.stateOf(column, indexes[place] ?? 0);
      states[place] = state;
      if (state !== states[0]) differ = true;
    }
    return differ;
  }

  /** Fills rows and marginal from the states noted; answers the number of values. */
  private predict(column: Column): number {
    const { rows, shares, ends, states, weights, marginal } = this;
    const { width, chance } = this.columns.reading(column, this.context, this.contextNumber).table;
    marginal.fill(0, 0, width);
    let member = 0;
    for (let row = 0; row < ends.length; row += 1) {
      rows.fill(0, row * width, (row + 1) * width);
      for (; member < (ends[row] ?? 0); member += 1) {
        const from = (states[member] ?? 0) * width;
        const weight = weights[member] ?? 0;
        for (let value = 0; value < width; value += 1) {
          const cell = row * width + value;
          rows[cell] = (rows[cell] ?? 0) + weight * (chance[from + value] ?? 0);
        }
      }
      const share = shares[row] ?? 0;
      for (let value = 0; value < width; value += 1)
        marginal[value] = (marginal[value] ?? 0) + share * (rows[row * width + value] ?? 0);
    }
    return width;
  }

  /** An upper bound that needs no logarithm: the log of a ratio is at most the ratio less 1 (chi-squared divergence). */
  private most(width: number): number {
    const { rows, shares, marginal } = this;
    let sum = 0;
    for (let row = 0; row < shares.length; row += 1) {
      let divergence = 0;
      for (let value = 0; value < width; value += 1) {
        const chance = rows[row * width + value] ?? 0;
        if (chance > 0) divergence += (chance * chance) / (marginal[value] ?? 1) - chance;
      }
      sum += (shares[row] ?? 0) * divergence;
    }
    return sum * Math.LOG2E + 1e-9;
  }

  private exact(width: number): number {
    const { rows, shares, marginal } = this;
    let bits = 0;
    for (let value = 0; value < width; value += 1) {
      for (let row = 0; row < shares.length; row += 1) {
        const chance = rows[row * width + value] ?? 0;
        if (chance > 0) bits += (shares[row] ?? 0) * chance * Math.log2(chance / (marginal[value] ?? 1));
      }
    }
    return bits;
  }
}
