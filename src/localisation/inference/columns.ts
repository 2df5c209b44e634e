import type { Hypothesis } from '../hypothesis.ts';
import type { Context } from '../observation/context.ts';
import type { ProbeModel } from '../observation/probe-model.ts';
import { type ProbeTarget, probeModel } from '../observation/probe-models.ts';

/** Name of an item where and on which side it is examined. */
export function columnName({ item, side, place }: ProbeTarget): string {
  return `${item.section}/${item.key}${place === undefined ? '' : `@${place.kind}:${place.key}`}|${side}`;
}

/** Chances of a family of items in one context, state by state. */
export interface ChanceTable {
  /** Number of values; the chance of value v in state s is at s * width + v. */
  readonly width: number;
  readonly chance: Float64Array;
  /** Natural log of `chance`. */
  readonly log: Float64Array;
  /** Chance of any abnormal value, by state. */
  readonly abnormal: Float64Array;
}

/** An item at a place on a side, ready to be weighed. */
export interface Column {
  readonly name: string;
  readonly target: ProbeTarget;
  readonly model: ProbeModel;
}

const unknown = 255;

/**
 * What has been worked out about items and hypotheses, kept for the next exam: one byte per hypothesis for every item
 * that was ever met, and one small table per family and context. An exam is then a gather and a sum. Bounded by the
 * catalogue: some 2,000 items of 1,300 bytes.
 */
export class StateColumns {
  readonly hypotheses: readonly Hypothesis[];
  private readonly columns = new Map<string, Column | null>();
  private readonly states = new Map<string, Uint8Array>();
  private readonly complete = new Set<string>();
  private readonly tables = new Map<string, ChanceTable>();

  constructor(hypotheses: readonly Hypothesis[]) {
    this.hypotheses = hypotheses;
  }

  /** The item's column; null when nothing can be drawn from it. */
  column(target: ProbeTarget): Column | null {
    const name = columnName(target);
    const known = this.columns.get(name);
    if (known !== undefined) return known;
    const model = probeModel(target);
    const column = model === null ? null : { name, target, model };
    this.columns.set(name, column);
    return column;
  }

  /** States under every hypothesis. */
  statesOf(column: Column): Uint8Array {
    const states = this.partial(column);
    if (this.complete.has(column.name)) return states;
    this.complete.add(column.name);
    for (let index = 0; index < states.length; index += 1)
      if (states[index] === unknown) this.fill(column, states, index);
    return states;
  }

  /** State under one hypothesis, without working out the others. */
  stateOf(column: Column, index: number): number {
    const states = this.partial(column);
    if (states[index] === unknown) this.fill(column, states, index);
    return states[index] ?? 0;
  }

  table(model: ProbeModel, context: Context): ChanceTable {
    const key = `${model.family}|${context.chronicity}|${context.from60}`;
    const known = this.tables.get(key);
    if (known !== undefined) return known;
    const table = chanceTable(model, context);
    this.tables.set(key, table);
    return table;
  }

  private partial(column: Column): Uint8Array {
    const known = this.states.get(column.name);
    if (known !== undefined) return known;
    const states = new Uint8Array(this.hypotheses.length).fill(unknown);
    this.states.set(column.name, states);
    return states;
  }

  private fill(column: Column, states: Uint8Array, index: number): void {
    const hypothesis = this.hypotheses[index];
    if (hypothesis !== undefined) states[index] = column.model.state(hypothesis);
  }
}

function chanceTable(model: ProbeModel, context: Context): ChanceTable {
  const width = model.values.length;
  const chance = new Float64Array(model.states * width);
  const abnormal = new Float64Array(model.states);
  for (let state = 0; state < model.states; state += 1) {
    model.distribution(state, context).forEach((value, index) => {
      chance[state * width + index] = value;
      if (model.normal[index] !== true) abnormal[state] = (abnormal[state] ?? 0) + value;
    });
  }
  return { width, chance, log: chance.map(Math.log), abnormal };
}
