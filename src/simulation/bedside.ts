import type { Item } from '../exam/catalogue/item.ts';
import { sectionOf } from '../exam/catalogue/sections.ts';
import { valueProperty } from '../exam/schema/section-schemas.ts';
import { chanceFrom, pick } from '../kernel/chance.ts';
import { noLesionIndex } from '../localisation/hypotheses/hypotheses.ts';
import { type Column, columnName, type StateColumns } from '../localisation/inference/columns.ts';
import type { Context } from '../localisation/observation/context.ts';
import type { ObservedValue } from '../localisation/observation/observed.ts';
import type { ProbeTarget } from '../localisation/observation/probe-models.ts';
import { partOf } from './body-part.ts';

/**
 * Share of the findings of a section in one part of the body that fall the same way in their distributions: who grades one
 * muscle of a leg too low grades others too low, and a lesion worse than usual is so throughout. Each finding by itself keeps
 * the distribution of the observation model. Judged.
 */
const drawnTogether = 0.5;

/** One item with what was found. */
export interface Found {
  readonly target: ProbeTarget;
  readonly value: ObservedValue;
}

/** The column of each target, by the object: thousands are asked of every person, and their names are slow to make. */
const known = new WeakMap<StateColumns, Map<ProbeTarget, Column | null>>();

/** A lesion beside which an examiner stands: what is found is drawn from the observation model and fixed by the seed. */
export class Bedside {
  private readonly columns: StateColumns;
  private readonly index: number;
  private readonly context: Context;
  private readonly number: number;
  private readonly seed: string;
  private readonly met: Map<ProbeTarget, Column | null>;

  private readonly leastChance: number;

  /**
   * @param index       the lesion, among the hypotheses
   * @param leastChance values that are less likely are never found; 0 leaves the distributions as they are
   */
  constructor(columns: StateColumns, index: number, context: Context, seed: string, leastChance = 0) {
    this.leastChance = leastChance;
    this.columns = columns;
    this.index = index;
    this.context = context;
    this.number = columns.contextNumber(context);
    this.seed = seed;
    this.met = known.get(columns) ?? new Map();
    known.set(columns, this.met);
  }

  private column(target: ProbeTarget): Column | null {
    const met = this.met.get(target);
    if (met !== undefined) return met;
    const column = this.columns.column(target);
    this.met.set(target, column);
    return column;
  }

  /** How much oftener an item is abnormal in this person than in health; 0 where nothing can be drawn from it. */
  trouble(target: ProbeTarget): number {
    const { columns } = this;
    const column = this.column(target);
    if (column === null) return 0;
    const state = columns.stateOf(column, this.index);
    const healthy = columns.stateOf(column, noLesionIndex);
    if (state === healthy) return 0;
    const { abnormal } = columns.reading(column, this.context, this.number).table;
    return (abnormal[state] ?? 0) - (abnormal[healthy] ?? 0);
  }

  /** What the examiner finds; null where the model has nothing to say. `isComplaint`: something is known to be wrong there. */
  find(target: ProbeTarget, isComplaint = false): Found | null {
    const { columns } = this;
    const column = this.column(target);
    if (column === null) return null;
    const { width, chance } = columns.reading(column, this.context, this.number).table;
    const state = columns.stateOf(column, this.index);
    const chances = Array.from({ length: width }, (_, value) => {
      const own = chance[state * width + value] ?? 0;
      return own < this.leastChance || (isComplaint && column.model.normal[value] === true) ? 0 : own;
    });
    const value = column.model.values[pick(chances, this.luckOf(target))];
    return value === undefined ? null : { target, value };
  }

  /** Where in the distribution of an item its value falls: with the others of its section and part of the body, or by itself. */
  private luckOf(target: ProbeTarget): number {
    const own = `${this.seed} ${columnName(target)}`;
    const together = `${this.seed} ${target.item.section} ${partOf(target)}`;
    return chanceFrom(chanceFrom(`${own} together`) < drawnTogether ? together : own);
  }
}

/** A finding as an exam states it. */
export function entryOf({ target: { item, side, place }, value }: Found): Record<string, unknown> {
  return {
    ...whereOf(item, place),
    ...(side === 'midline' ? {} : { side }),
    [valueProperty(item)]: stated(item, value),
  };
}

/** The properties that name the item and its place. */
export function whereOf(item: Item, place: ProbeTarget['place']): Record<string, unknown> {
  const { itemProperty } = sectionOf(item.section);
  return {
    ...(itemProperty === null ? {} : { [itemProperty]: item.key }),
    ...(place === undefined
      ? {}
      : { [place.kind === 'dermatome' || place.kind === 'territory' ? place.kind : 'site']: place.key }),
  };
}

function stated({ scale }: Item, value: ObservedValue): unknown {
  if (scale === 'presence') return value === 'present';
  // The model's "a few beats" is a mean, not a count.
  return typeof value === 'number' ? Math.floor(value) : value;
}
