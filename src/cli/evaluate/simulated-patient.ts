import { type Item, type SectionKey, sectionKeys } from '../../exam/catalogue/item.ts';
import { sectionOf } from '../../exam/catalogue/sections.ts';
import type { Exam, OnsetPace } from '../../exam/exam.ts';
import type { ExamReader } from '../../exam/read-exam.ts';
import { valueProperty } from '../../exam/schema/section-schemas.ts';
import { hypotheses, noLesionIndex } from '../../localisation/hypotheses/hypotheses.ts';
import type { Hypothesis } from '../../localisation/hypothesis.ts';
import { columnName, StateColumns } from '../../localisation/inference/columns.ts';
import { Priors } from '../../localisation/inference/prior.ts';
import { softmax } from '../../localisation/inference/score.ts';
import { type Context, contextOf } from '../../localisation/observation/context.ts';
import type { ObservedValue } from '../../localisation/observation/observed.ts';
import type { ProbeTarget } from '../../localisation/observation/probe-models.ts';
import { Chance, chanceFrom, pick } from './random.ts';
import { partOf } from './routine.ts';

/** The engine's own model, turned round: it draws findings from a lesion instead of a lesion from findings. */
export interface SimulationModel {
  readonly reader: ExamReader;
  readonly columns: StateColumns;
  readonly priors: Priors;
}

export function simulationModel(reader: ExamReader): SimulationModel {
  return { reader, columns: new StateColumns(hypotheses, noLesionIndex), priors: new Priors(hypotheses) };
}

/** How complaints begin, and how often the report says so. Judged. */
const paces: Readonly<Record<OnsetPace, number>> = { hyperacute: 0.15, acute: 0.25, subacute: 0.25, chronic: 0.35 };
const paceStated = 0.85;
const youngest = 20;
const oldest = 85;

/**
 * Share of the findings of a section in one part of the body that fall the same way in their distributions: who grades one
 * muscle of a leg too low grades others too low, and a lesion worse than usual is so throughout. Each finding by itself keeps
 * the distribution of the observation model. Judged.
 */
const drawnTogether = 0.5;

/** Any date will do: nothing depends on it. */
const examinedAt = '2026-01-15T10:00:00+01:00';
const now = new Date('2026-01-16T00:00:00Z');

/** What is known of a person before anything is examined. */
interface Head {
  readonly person: { readonly ageYears: number; readonly sex: string };
  readonly pace: OnsetPace;
}

/**
 * An invented person with one lesion, drawn by how often it is met at that pace of onset. What an examiner finds is drawn
 * from the observation model, which holds the examiner's errors, and stays the same however often and in whatever order it
 * is asked.
 */
export class SimulatedPatient {
  readonly lesion: Hypothesis;
  /** For every choice about this person that is not a finding. */
  readonly chance: Chance;
  private readonly model: SimulationModel;
  private readonly seed: string;
  private readonly index: number;
  private readonly head: Head;
  private readonly isPaceStated: boolean;
  private readonly context: Context;

  constructor(model: SimulationModel, seed: number, number: number) {
    this.model = model;
    this.seed = `${seed} ${number}`;
    this.chance = new Chance(this.seed);
    const pace = (Object.keys(paces) as OnsetPace[])[pick(Object.values(paces), this.chance.next())] ?? 'chronic';
    const ageYears = youngest + Math.floor(this.chance.next() * (oldest - youngest + 1));
    this.head = { person: { ageYears, sex: this.chance.isSo(0.5) ? 'female' : 'male' }, pace };
    this.isPaceStated = this.chance.isSo(paceStated);
    const truth = model.reader.read(bodyOf(this.head, true, []), { purpose: 'localise', now });
    this.context = contextOf(truth);
    this.index = pick(softmax(model.priors.logWeights(truth)), this.chance.next());
    const lesion = hypotheses[this.index];
    if (lesion === undefined) throw new RangeError('there is always a hypothesis');
    this.lesion = lesion;
  }

  get isHealthy(): boolean {
    return this.index === noLesionIndex;
  }

  /** How much oftener an item is abnormal in this person than in health; 0 where nothing can be drawn from it. */
  trouble(target: ProbeTarget): number {
    const { columns } = this.model;
    const column = columns.column(target);
    if (column === null) return 0;
    const { abnormal } = columns.reading(column, this.context, columns.contextNumber(this.context)).table;
    const at = (index: number): number => abnormal[columns.stateOf(column, index)] ?? 0;
    return at(this.index) - at(noLesionIndex);
  }

  /** What the examiner finds; null where the model has nothing to say. `isComplaint`: something is known to be wrong there. */
  find(target: ProbeTarget, isComplaint = false): Found | null {
    const { columns } = this.model;
    const column = columns.column(target);
    if (column === null) return null;
    const { width, chance } = columns.reading(column, this.context, columns.contextNumber(this.context)).table;
    const state = columns.stateOf(column, this.index);
    const chances = Array.from({ length: width }, (_, value) =>
      isComplaint && column.model.normal[value] === true ? 0 : (chance[state * width + value] ?? 0),
    );
    const value = column.model.values[pick(chances, this.luckOf(target))];
    return value === undefined ? null : { target, value };
  }

  /** Where in the distribution of an item its value falls: with the others of its section and part of the body, or by itself. */
  private luckOf(target: ProbeTarget): number {
    const own = `${this.seed} ${columnName(target)}`;
    const together = `${this.seed} ${target.item.section} ${partOf(target)}`;
    return chanceFrom(chanceFrom(`${own} together`) < drawnTogether ? together : own);
  }

  /** The exam as it is sent when this has been found. */
  examOf(found: readonly Found[]): Exam {
    return this.model.reader.read(bodyOf(this.head, this.isPaceStated, found), { purpose: 'localise', now });
  }
}

/** One item with what was found. */
export interface Found {
  readonly target: ProbeTarget;
  readonly value: ObservedValue;
}

function bodyOf({ person, pace }: Head, isPaceStated: boolean, found: readonly Found[]): Record<string, unknown> {
  const findings: Partial<Record<SectionKey, unknown[]>> = {};
  for (const section of sectionKeys) {
    const own = found.filter(({ target }) => target.item.section === section).map(entryOf);
    if (own.length > 0) findings[section] = own;
  }
  return { examinedAt, person, ...(isPaceStated ? { history: { onset: { pace } } } : {}), findings };
}

function entryOf({ target: { item, side, place }, value }: Found): Record<string, unknown> {
  const { itemProperty } = sectionOf(item.section);
  return {
    ...(itemProperty === null ? {} : { [itemProperty]: item.key }),
    ...(place === undefined
      ? {}
      : { [place.kind === 'dermatome' || place.kind === 'territory' ? place.kind : 'site']: place.key }),
    ...(side === 'midline' ? {} : { side }),
    [valueProperty(item)]: stated(item, value),
  };
}

function stated({ scale }: Item, value: ObservedValue): unknown {
  if (scale === 'presence') return value === 'present';
  // The model's "a few beats" is a mean, not a count.
  return typeof value === 'number' ? Math.floor(value) : value;
}
