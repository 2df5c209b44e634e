import type { Context } from '../observation/context.ts';
import type { ProbeModel } from '../observation/probe-model.ts';

/** Chances of a family of items in one context, state by state. */
export interface ChanceTable {
  /** Number of values; the chance of value v in state s is at s * width + v. */
  readonly width: number;
  readonly chance: Float64Array;
  /** By value, the natural log of its chance in each state. */
  readonly logs: readonly Float64Array[];
  /** Chance of any abnormal value, by state. */
  readonly abnormal: Float64Array;
}

/** What each state of an item means beside the state in which health leaves it. */
export interface Reading {
  readonly table: ChanceTable;
  /** State of the item in health. */
  readonly healthy: number;
  /** By state, 1 when a lesion that leaves the item so accounts for an abnormal result. */
  readonly explains: Uint8Array;
  /** By state, 1 when a test of the item would have shown such a lesion. */
  readonly shows: Uint8Array;
}

export function chanceTable(model: ProbeModel, context: Context): ChanceTable {
  const width = model.values.length;
  const chance = new Float64Array(model.states * width);
  const abnormal = new Float64Array(model.states);
  for (let state = 0; state < model.states; state += 1) {
    model.distribution(state, context).forEach((value, index) => {
      chance[state * width + index] = value;
      if (model.normal[index] !== true) abnormal[state] = (abnormal[state] ?? 0) + value;
    });
  }
  const logs = model.values.map((_, value) =>
    Float64Array.from(abnormal, (_chance, state) => Math.log(chance[state * width + value] ?? 0)),
  );
  return { width, chance, logs, abnormal };
}

/** An item counts as explained when its site predicts an abnormal result at least this often, or much more often than health does. */
const explainedChance = 0.3;
const explainedRatio = 4;
const leastChance = 0.1;

/** Whether a chance of an abnormal result accounts for one, beside the chance in health. */
export function accountsFor(chance: number, inHealth: number): boolean {
  return chance >= explainedChance || (chance >= leastChance && chance >= explainedRatio * inHealth);
}

/** From this chance of an abnormal result on, and when it is twice that of health, a tested item would have shown the lesion. */
const wouldShow = 0.3;

export function reading(table: ChanceTable, healthy: number): Reading {
  const inHealth = table.abnormal[healthy] ?? 0;
  const shownFrom = Math.max(wouldShow, 2 * inHealth);
  return {
    table,
    healthy,
    explains: Uint8Array.from(table.abnormal, (chance) => Number(accountsFor(chance, inHealth))),
    shows: Uint8Array.from(table.abnormal, (chance) => Number(chance >= shownFrom)),
  };
}
