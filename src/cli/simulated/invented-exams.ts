import type { OnsetPace } from '../../exam/exam.ts';
import { Chance, pick } from '../../kernel/chance.ts';
import { hypotheses, noLesionIndex } from '../../localisation/hypotheses/hypotheses.ts';
import type { Hypothesis } from '../../localisation/hypothesis.ts';
import { softmax } from '../../localisation/inference/score.ts';
import { contextOf } from '../../localisation/observation/context.ts';
import { Bedside } from '../../simulation/bedside.ts';
import { drawCourse, drawDuration, drawPace, drawStory } from '../../simulation/invented-story.ts';
import { unexamined } from '../../simulation/unexamined.ts';
import { type Entry, examine } from './examine.ts';
import type { SimulationModel } from './simulated-patient.ts';

const dayMs = 24 * 60 * 60_000;
/** The exams lie within so many days before `until`. */
const spanDays = 730;
const youngest = 18;
const oldest = 92;
/** How many examinations a person has: one, two, three or four. Judged. */
const visitShares = [0.6, 0.22, 0.12, 0.06];
/** Least and greatest days between two visits. */
const betweenVisits = [7, 240] as const;
/** Share of exams that are corrected later, and of these, the share that is taken back as entered in error. Judged. */
const correctedShare = 0.05;
const takenBackShare = 0.2;

export interface InventedOptions {
  readonly count: number;
  readonly seed: number;
  /** The present of the invented clinic; every exam lies before it. */
  readonly until: Date;
}

export interface InventedExam {
  /** Body of `POST /exams`. */
  readonly exam: Entry;
  /** Body of the `PUT` that corrects it; most have none. */
  readonly correction?: Entry;
  /** What the findings were drawn from. */
  readonly lesion: Hypothesis;
  readonly isHealthy: boolean;
}

/**
 * Invented exams of invented people, in the order of the people and of each one's visits. The lesion is drawn by how often
 * the engine's priors expect it at that pace and age, the findings from the engine's forward and observation models, so
 * they are as consistent as the wiring that these follow. The same seed and `until` give the same exams on every machine,
 * and fewer of them are the first of more.
 */
export function* inventExams(model: SimulationModel, options: InventedOptions): Generator<InventedExam> {
  let made = 0;
  for (let person = 1; made < options.count; person += 1) {
    for (const exam of visitsOf(model, options, person)) {
      if (made === options.count) return;
      made += 1;
      yield exam;
    }
  }
}

function* visitsOf(model: SimulationModel, { seed, until }: InventedOptions, person: number): Generator<InventedExam> {
  const name = `${seed} invented ${person}`;
  const chance = new Chance(name);
  const pace = drawPace(chance);
  const ageYears = youngest + Math.floor(chance.next() * (oldest - youngest + 1));
  const sex = chance.isSo(0.5) ? 'female' : 'male';
  const index = drawLesion(model, pace, ageYears, chance);
  const { lesion, isHealthy } = lesionAt(index);
  const course = drawCourse(pace, lesion.site, chance);
  const story = drawStory(lesion.site, chance);
  const visits = 1 + pick(visitShares, chance.next());
  let day = Math.floor(chance.next() * spanDays);
  let durationDays = drawDuration(pace, chance);
  for (let visit = 1; visit <= visits && day < spanDays; visit += 1) {
    const visitChance = new Chance(`${name} visit ${visit}`);
    const context = contextOf({ onset: { pace, durationDays }, person: { ageYears } });
    const { findings, otherwiseNormal } = examine(new Bedside(model.columns, index, context, name), visitChance);
    const exam: Entry = {
      identifier: { system: 'https://clinic.example/exams', value: `INVENTED-${seed}-${person}-${visit}` },
      status: 'final',
      subject: { reference: `Patient/invented-${seed}-${person}` },
      encounter: { reference: `Encounter/invented-${seed}-${person}-${visit}` },
      performer: [{ reference: `Practitioner/invented-${1 + Math.floor(visitChance.next() * 12)}` }],
      examinedAt: momentOf(until, day, visitChance),
      person: { ageYears, sex },
      history: isHealthy ? story : { onset: { pace, durationDays }, course, ...story },
      findings: withNote(findings, 'Invented: nobody in this exam exists.'),
      ...(otherwiseNormal.length === 0 ? {} : { otherwiseNormal }),
    };
    const correction = visitChance.isSo(correctedShare) ? corrected(exam, visitChance) : undefined;
    yield { exam, lesion, isHealthy, ...(correction === undefined ? {} : { correction }) };
    const [least, most] = betweenVisits;
    const gap = least + Math.floor(chance.next() * (most - least + 1));
    day += gap;
    durationDays += gap;
  }
}

function drawLesion({ priors }: SimulationModel, pace: OnsetPace, ageYears: number, chance: Chance): number {
  return pick(softmax(priors.logWeights(unexamined({ ageYears, pace }))), chance.next());
}

/** A moment of the working day, in UTC so that it is the same everywhere. */
function momentOf(until: Date, day: number, chance: Chance): string {
  const midnight = Math.floor(until.getTime() / dayMs) * dayMs - (spanDays - day) * dayMs;
  const minutes = 8 * 60 + Math.floor(chance.next() * 10 * 60);
  return new Date(midnight + minutes * 60_000).toISOString().replace('.000Z', 'Z');
}

type Findings = Readonly<Record<string, readonly Entry[]>>;

/** The note on the first finding of an exam. */
function withNote(findings: Findings, note: string): Findings {
  const [section, entries] = Object.entries(findings)[0] ?? [];
  if (section === undefined || entries === undefined) return findings;
  return { ...findings, [section]: entries.map((entry, place) => (place === 0 ? { ...entry, note } : entry)) };
}

function corrected(exam: Entry, chance: Chance): Entry {
  if (chance.isSo(takenBackShare)) return { ...exam, status: 'entered-in-error' };
  const findings = withNote(exam.findings as Findings, 'Invented, as is the whole exam. Note amended after review.');
  return { ...exam, status: 'amended', findings };
}

function lesionAt(index: number): { readonly lesion: Hypothesis; readonly isHealthy: boolean } {
  const lesion = hypotheses[index];
  if (lesion === undefined) throw new RangeError('there is always a hypothesis');
  return { lesion, isHealthy: index === noLesionIndex };
}
