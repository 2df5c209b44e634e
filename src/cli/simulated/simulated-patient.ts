import { type SectionKey, sectionKeys } from '../../exam/catalogue/item.ts';
import type { Exam, OnsetPace } from '../../exam/exam.ts';
import type { ExamReader } from '../../exam/read-exam.ts';
import { Chance, pick } from '../../kernel/chance.ts';
import { hypotheses, noLesionIndex } from '../../localisation/hypotheses/hypotheses.ts';
import type { Hypothesis } from '../../localisation/hypothesis.ts';
import { type KnownStates, StateColumns } from '../../localisation/inference/columns.ts';
import { Priors } from '../../localisation/inference/prior.ts';
import { softmax } from '../../localisation/inference/score.ts';
import { contextOf } from '../../localisation/observation/context.ts';
import type { ProbeTarget } from '../../localisation/observation/probe-models.ts';
import { Bedside, entryOf, type Found } from '../../simulation/bedside.ts';

/** The engine's own model, turned round: it draws findings from a lesion instead of a lesion from findings. */
export interface SimulationModel {
  readonly reader: ExamReader;
  readonly columns: StateColumns;
  readonly priors: Priors;
}

/** @param known states of the columns, when they have been worked out before */
export function simulationModel(reader: ExamReader, known?: KnownStates): SimulationModel {
  return { reader, columns: new StateColumns(hypotheses, noLesionIndex, known), priors: new Priors(hypotheses) };
}

/** How complaints begin, and how often the report says so. Judged. */
const paces: Readonly<Record<OnsetPace, number>> = { hyperacute: 0.15, acute: 0.25, subacute: 0.25, chronic: 0.35 };
const paceStated = 0.85;
const youngest = 20;
const oldest = 85;

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
  private readonly index: number;
  private readonly head: Head;
  private readonly isPaceStated: boolean;
  private readonly bedside: Bedside;

  constructor(model: SimulationModel, seed: number, number: number) {
    this.model = model;
    const name = `${seed} ${number}`;
    this.chance = new Chance(name);
    const pace = (Object.keys(paces) as OnsetPace[])[pick(Object.values(paces), this.chance.next())] ?? 'chronic';
    const ageYears = youngest + Math.floor(this.chance.next() * (oldest - youngest + 1));
    this.head = { person: { ageYears, sex: this.chance.isSo(0.5) ? 'female' : 'male' }, pace };
    this.isPaceStated = this.chance.isSo(paceStated);
    const truth = model.reader.read(bodyOf(this.head, true, []), { purpose: 'localise', now });
    this.index = pick(softmax(model.priors.logWeights(truth)), this.chance.next());
    const lesion = hypotheses[this.index];
    if (lesion === undefined) throw new RangeError('there is always a hypothesis');
    this.lesion = lesion;
    this.bedside = new Bedside(model.columns, this.index, contextOf(truth), name);
  }

  get isHealthy(): boolean {
    return this.index === noLesionIndex;
  }

  /** How much oftener an item is abnormal in this person than in health; 0 where nothing can be drawn from it. */
  trouble(target: ProbeTarget): number {
    return this.bedside.trouble(target);
  }

  /** What the examiner finds; null where the model has nothing to say. `isComplaint`: something is known to be wrong there. */
  find(target: ProbeTarget, isComplaint = false): Found | null {
    return this.bedside.find(target, isComplaint);
  }

  /** The exam as it is sent when this has been found. */
  examOf(found: readonly Found[]): Exam {
    return this.model.reader.read(bodyOf(this.head, this.isPaceStated, found), { purpose: 'localise', now });
  }
}

function bodyOf({ person, pace }: Head, isPaceStated: boolean, found: readonly Found[]): Record<string, unknown> {
  const findings: Partial<Record<SectionKey, unknown[]>> = {};
  for (const section of sectionKeys) {
    const own = found.filter(({ target }) => target.item.section === section).map(entryOf);
    if (own.length > 0) findings[section] = own;
  }
  return { examinedAt, person, ...(isPaceStated ? { history: { onset: { pace } } } : {}), findings };
}
