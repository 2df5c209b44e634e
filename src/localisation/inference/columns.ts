import type { Item } from '../../exam/catalogue/item.ts';
import type { Hypothesis } from '../hypothesis.ts';
import type { Context } from '../observation/context.ts';
import type { ProbeModel } from '../observation/probe-model.ts';
import { type ProbeTarget, probeModel } from '../observation/probe-models.ts';
import { type ChanceTable, chanceTable, type Reading, reading } from './readings.ts';

/** Name of an item where and on which side it is examined. */
export function columnName({ item, side, place }: ProbeTarget): string {
  return `${item.section}/${item.key}${place === undefined ? '' : `@${place.kind}:${place.key}`}|${side}`;
}

/** An item at a place on a side, ready to be weighed; there is one object for each, however often it is asked for. */
export interface Column {
  readonly name: string;
  readonly target: ProbeTarget;
  readonly model: ProbeModel;
}

/** States of every column that were worked out elsewhere, by the column's name; one byte per hypothesis. */
export type KnownStates = ReadonlyMap<string, Uint8Array>;

/** The hypotheses that leave an item otherwise than health does, and how; most lesions leave most items alone. */
export interface Affected {
  readonly indexes: Uint16Array;
  readonly states: Uint8Array;
}

const unknown = 255;

/** A column with what has been worked out about it so far. */
interface Filled extends Column {
  readonly states: Uint8Array;
  isComplete: boolean;
  affected: Affected | undefined;
  /** By number of the context. */
  readonly readings: (Reading | undefined)[];
}

/**
 * What has been worked out about items and hypotheses, kept for the next exam: one byte per hypothesis for every item
 * that was ever met, a list of the hypotheses that affect it, and small tables per family and context. An exam is then a
 * gather and a sum. Bounded by the catalogue: some 2,000 items of about two bytes per hypothesis.
 */
export class StateColumns {
  readonly hypotheses: readonly Hypothesis[];
  private readonly health: number;
  private readonly known: KnownStates;
  private readonly byItem = new Map<Item, Map<string, Filled | null>>();
  private readonly contexts = new Map<string, number>();
  private readonly tables = new Map<string, ChanceTable>();
  private readonly readings = new Map<string, Reading>();

  /** @param health index of the hypothesis that nothing is wrong */
  constructor(hypotheses: readonly Hypothesis[], health: number, known?: KnownStates) {
    this.hypotheses = hypotheses;
    this.health = health;
    this.known = known ?? new Map();
  }

  /** The item's column; null when nothing can be drawn from it. */
  column(target: ProbeTarget): Column | null {
    let places = this.byItem.get(target.item);
    if (places === undefined) {
      places = new Map();
      this.byItem.set(target.item, places);
    }
    const { place, side } = target;
    const where = place === undefined ? side : `${place.kind}:${place.key}|${side}`;
    const existing = places.get(where);
    if (existing !== undefined) return existing;
    const model = probeModel(target);
    const column = model === null ? null : this.started(target, model);
    places.set(where, column);
    return column;
  }

  /** States under every hypothesis. */
  statesOf(column: Column): Uint8Array {
    const filled = column as Filled;
    const { states } = filled;
    if (filled.isComplete) return states;
    filled.isComplete = true;
    for (let index = 0; index < states.length; index += 1)
      if (states[index] === unknown) this.fill(column, states, index);
    return states;
  }

  /** The hypotheses under which the item is in another state than in health. */
  affectedBy(column: Column): Affected {
    const filled = column as Filled;
    filled.affected ??= affected(this.statesOf(column), this.stateOf(column, this.health));
    return filled.affected;
  }

  /** State under one hypothesis, without working out the others. */
  stateOf(column: Column, index: number): number {
    const { states } = column as Filled;
    if (states[index] === unknown) this.fill(column, states, index);
    return states[index] ?? 0;
  }

  /** Number of a context, by which `reading` is asked: there are twenty-five. */
  contextNumber({ chronicity, from60 }: Context): number {
    const key = `${chronicity}|${from60}`;
    const number = this.contexts.get(key) ?? this.contexts.size;
    this.contexts.set(key, number);
    return number;
  }

  /** What the column's states mean in a context; `number` is that of the context. */
  reading(column: Column, context: Context, number: number): Reading {
    const { readings } = column as Filled;
    return readings[number] ?? this.firstReading(column as Filled, context, number);
  }

  /** States of every column that has been worked out in full, by name. */
  completeStates(): KnownStates {
    const complete = new Map<string, Uint8Array>();
    for (const places of this.byItem.values()) {
      for (const column of places.values()) if (column?.isComplete === true) complete.set(column.name, column.states);
    }
    return complete;
  }

  /** Bytes that the states and the lists of the affected take. */
  stateBytes(): number {
    let bytes = 0;
    for (const places of this.byItem.values()) {
      for (const column of places.values())
        bytes += (column?.states.byteLength ?? 0) + 3 * (column?.affected?.indexes.length ?? 0);
    }
    return bytes;
  }

  private firstReading(column: Filled, context: Context, number: number): Reading {
    const family = `${column.model.family}|${number}`;
    const table = this.tables.get(family) ?? chanceTable(column.model, context);
    this.tables.set(family, table);
    const healthy = this.stateOf(column, this.health);
    const key = `${family}|${healthy}`;
    const made = this.readings.get(key) ?? reading(table, healthy);
    this.readings.set(key, made);
    column.readings[number] = made;
    return made;
  }

  private started(target: ProbeTarget, model: ProbeModel): Filled {
    const name = columnName(target);
    const known = this.known.get(name);
    const states = known ?? new Uint8Array(this.hypotheses.length).fill(unknown);
    return { name, target, model, states, isComplete: known !== undefined, affected: undefined, readings: [] };
  }

  private fill(column: Column, states: Uint8Array, index: number): void {
    const hypothesis = this.hypotheses[index];
    if (hypothesis !== undefined) states[index] = column.model.state(hypothesis);
  }
}

function affected(states: Uint8Array, healthy: number): Affected {
  let count = 0;
  for (let index = 0; index < states.length; index += 1) if (states[index] !== healthy) count += 1;
  const found: Affected = { indexes: new Uint16Array(count), states: new Uint8Array(count) };
  let place = 0;
  for (let index = 0; index < states.length; index += 1) {
    if (states[index] === healthy) continue;
    found.indexes[place] = index;
    found.states[place] = states[index] ?? healthy;
    place += 1;
  }
  return found;
}
