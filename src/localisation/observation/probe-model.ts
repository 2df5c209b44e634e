import type { Hypothesis } from '../hypothesis.ts';
import type { Context } from './context.ts';
import type { ObservedValue } from './observed.ts';

/**
 * How one item on one side looks under any hypothesis. A hypothesis puts the item into one of a few states (how much is
 * lost, quantised); the state and the context give the chance of each value. So an item is one byte per hypothesis.
 */
export interface ProbeModel {
  /** Models of one family share their states, values and chances, so one table serves them all. */
  readonly family: string;
  /** Number of states, at most 256. */
  readonly states: number;
  readonly values: readonly ObservedValue[];
  /** Which of `values` are no deficit. */
  readonly normal: readonly boolean[];
  /** State of the item under a hypothesis, 0 to states - 1. */
  readonly state: (hypothesis: Hypothesis) => number;
  /** Chance of each of `values` in a state; sums to 1. */
  readonly distribution: (state: number, context: Context) => readonly number[];
  /** Index into `values` of what the exam states; -1 when the value is none of them. */
  readonly indexOf: (value: ObservedValue) => number;
}

/** Number of steps into which a fraction is quantised. */
export const fine = 41;
export const coarse = 11;

function quantise(fraction: number, steps: number): number {
  return Math.min(steps - 1, Math.max(0, Math.round(fraction * (steps - 1))));
}

function fractionOf(state: number, steps: number): number {
  return state / (steps - 1);
}

export interface GradedModel {
  readonly family: string;
  readonly values: readonly ObservedValue[];
  readonly normal: readonly ObservedValue[];
  /** Steps of each quantised fraction; their product is the number of states, at most `mostStates`. */
  readonly steps: readonly number[];
  readonly fractions: (hypothesis: Hypothesis) => readonly number[];
  readonly distribution: (fractions: readonly number[], context: Context) => readonly number[];
}

/** A state of every hypothesis is kept in a byte. */
const mostStates = 256;

/**
 * A model over listed values whose state is one or more quantised fractions.
 * @throws RangeError when there are more states than a byte can tell apart
 */
export function gradedModel({ family, values, normal, steps, fractions, distribution }: GradedModel): ProbeModel {
  const states = steps.reduce((product, count) => product * count, 1);
  if (states > mostStates) throw new RangeError(`'${family}' has ${states} states; a byte tells ${mostStates} apart`);
  return {
    family,
    states,
    values,
    normal: values.map((value) => normal.includes(value)),
    state: (hypothesis) => {
      const parts = fractions(hypothesis);
      return steps.reduce((code, count, index) => code * count + quantise(parts[index] ?? 0, count), 0);
    },
    distribution: (state, context) => {
      const parts: number[] = [];
      let rest = state;
      for (const count of [...steps].reverse()) {
        parts.unshift(fractionOf(rest % count, count));
        rest = Math.floor(rest / count);
      }
      return distribution(parts, context);
    },
    indexOf: (value) => values.indexOf(value),
  };
}
