import { type SectionKey, sectionKeys } from '../exam/catalogue/item.ts';
import type { Course, Exam, OnsetPace } from '../exam/exam.ts';
import { Chance } from '../kernel/chance.ts';
import { hypotheses } from '../localisation/hypotheses/hypotheses.ts';
import type { Site } from '../localisation/hypothesis.ts';
import { columnName } from '../localisation/inference/columns.ts';
import { contextOf } from '../localisation/observation/context.ts';
import type { ProbeTarget } from '../localisation/observation/probe-models.ts';
import { Bedside, entryOf, type Found } from '../simulation/bedside.ts';
import { drawCourse, drawDuration, drawPace, drawStory, type StoryLists } from '../simulation/invented-story.ts';
import { complaintSymptoms } from './complaint-symptoms.ts';
import { complaintWords } from './complaint-words.ts';
import { difficulties } from './difficulty.ts';
import { drawLesion, drawPart, type LesionWish } from './draw-lesion.ts';
import { knownTargets } from './known-targets.ts';
import type { PracticeModel } from './practice-model.ts';

/** Everything that decides who a practice patient is. The same wish and seed make the same patient. */
export interface PatientSeed extends LesionWish {
  readonly seed: string;
}

export interface PatientHistory extends StoryLists {
  readonly onset: { readonly pace: OnsetPace; readonly durationDays: number };
  readonly course: Course;
}

/** An invented person with one lesion, or none, beside whom a learner stands. */
export interface PracticePatient {
  /** Index of the lesion among the hypotheses. */
  readonly lesion: number;
  readonly site: Site;
  readonly person: { readonly ageYears: number; readonly sex: 'female' | 'male' };
  /** As an exam has it. */
  readonly history: PatientHistory;
  /** What is complained of, in plain words. */
  readonly complaints: readonly string[];
  /** Items at which the complaints would show; an examiner begins with them. */
  readonly complainedOf: readonly ProbeTarget[];
  /** What is found, the same whenever it is asked; null where the model has nothing to say. */
  readonly find: (target: ProbeTarget) => Found | null;
  /** The exam in which this has been found. */
  readonly examOf: (found: readonly Found[]) => Exam;
}

const youngest = 18;
const oldest = 88;
/** An item is likely to be abnormal from this much above health on, and one may complain of it. Judged. */
const striking = 0.4;
const complainedFrom = 0.5;
/** Complaints at most, and from how many of the most troubled items they are taken. */
const complaintsAtMost = 2;
const mostTroubled = 16;
/** Lesions that are drawn at most until one has signs enough. */
const drawsAtMost = 24;

/** Any date will do: nothing depends on it. */
const examinedAt = '2026-01-15T10:00:00Z';
const now = new Date('2026-01-16T00:00:00Z');

/** What somebody may complain of, with the words, once each; a patch of skin at the landmark that people would name. */
const complainable = [...knownTargets.values()].flatMap((target) => {
  const words = complaintWords(target);
  return words === null ? [] : [{ target, words }];
});
/** What counts as a sign: dermatomes and territories say again what landmarks say. */
const signs = [...knownTargets.values()].filter(({ place }) => place === undefined || place.kind === 'landmark');

/** Draws a patient; pure, so that nothing has to be kept of one but the seed. */
export function drawPatient(model: PracticeModel, { seed, ...wish }: PatientSeed): PracticePatient {
  const { columns } = model.localiser;
  const chance = new Chance(`practice ${seed}`);
  const pace = drawPace(chance);
  const person = {
    ageYears: youngest + Math.floor(chance.next() * (oldest - youngest + 1)),
    sex: chance.isSo(0.5) ? ('female' as const) : ('male' as const),
  };
  const durationDays = drawDuration(pace, chance);
  const context = contextOf({ onset: { pace, durationDays }, person });
  const { strikingAtLeast, tellsHistory, leastChance } = difficulties[wish.difficulty];
  const beside = (index: number): Bedside => new Bedside(columns, index, context, seed, leastChance);
  const drawn = (some: LesionWish): number => {
    const part = drawPart(some, chance);
    return drawLesion(model, part, some.difficulty, { ageYears: person.ageYears, pace }, chance);
  };
  let lesion = drawn(wish);
  let bedside = beside(lesion);
  for (let draws = 1; draws < drawsAtMost && !isFit(siteOf(lesion), bedside, strikingAtLeast); draws += 1) {
    lesion = drawn(wish);
    bedside = beside(lesion);
  }
  const site = siteOf(lesion);
  const own = drawComplaints(bedside, chance);
  // Who has no lesion complains as others do, and nothing is found there.
  const isUnfounded = site.kind === 'none' && own.length === 0;
  const complaints = isUnfounded ? drawComplaints(beside(drawnElsewhere(drawn, chance)), chance) : own;
  const known = new Set(isUnfounded ? [] : complaints.map(({ target }) => columnName(target)));
  const history: PatientHistory = {
    onset: { pace, durationDays },
    course: drawCourse(pace, site, chance),
    ...historyWith(
      complaints.flatMap(({ target }) => complaintSymptoms(target)),
      tellsHistory ? drawStory(site, chance) : {},
    ),
  };
  return {
    lesion,
    site,
    person,
    history,
    complaints: complaints.map(({ words }) => words),
    complainedOf: complaints.map(({ target }) => target),
    find: (target) => bedside.find(target, known.has(columnName(target))),
    examOf: (found) =>
      model.reader.read({ examinedAt, person, history, findings: sectionsOf(found) }, { purpose: 'localise', now }),
  };
}

function siteOf(index: number): Site {
  const lesion = hypotheses[index];
  if (lesion === undefined) throw new RangeError(`there is no hypothesis ${index}`);
  return lesion.site;
}

/** A lesion to borrow a complaint from; a few draws meet one. */
function drawnElsewhere(drawn: (wish: LesionWish) => number, chance: Chance): number {
  return drawn({ difficulty: 'easy', part: drawPart({ difficulty: 'easy' }, chance) });
}

function isFit({ kind }: Site, bedside: Bedside, strikingAtLeast: number): boolean {
  if (kind === 'none') return true;
  let count = 0;
  for (const target of signs) {
    if (bedside.trouble(target) >= striking) count += 1;
    if (count >= strikingAtLeast) return true;
  }
  return false;
}

/** What is told, with what is complained of in the place of whatever the story would say of it. */
function historyWith(complained: readonly string[], story: StoryLists): StoryLists {
  const others = (story.symptoms ?? []).filter(({ key }) => !complained.includes(key));
  const own = [...new Set(complained)].map((key) => ({ key, present: true }));
  return own.length + others.length === 0 ? story : { ...story, symptoms: [...own, ...others] };
}

interface Complaint {
  readonly target: ProbeTarget;
  readonly words: string;
}

/** A few of the signs that the lesion makes worst, as the person would say them. */
function drawComplaints(bedside: Bedside, chance: Chance): readonly Complaint[] {
  const worst = complainable
    .map((one) => ({ ...one, trouble: bedside.trouble(one.target) }))
    .filter(({ trouble }) => trouble >= complainedFrom)
    .sort((a, b) => b.trouble - a.trouble)
    .slice(0, mostTroubled);
  const chosen: Complaint[] = [];
  while (chosen.length < complaintsAtMost && worst.length > 0) {
    const [next] = worst.splice(Math.floor(chance.next() * worst.length), 1);
    if (next !== undefined && !chosen.some(({ words }) => words === next.words)) chosen.push(next);
  }
  return chosen;
}

/** Findings as an exam has them. */
export function sectionsOf(found: readonly Found[]): Partial<Record<SectionKey, readonly Record<string, unknown>[]>> {
  const findings: Partial<Record<SectionKey, readonly Record<string, unknown>[]>> = {};
  for (const section of sectionKeys) {
    const own = found.filter(({ target }) => target.item.section === section).map(entryOf);
    if (own.length > 0) findings[section] = own;
  }
  return findings;
}
