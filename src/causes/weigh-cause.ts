import { historyRows } from '../exam/catalogue/history.ts';
import type { SectionKey } from '../exam/catalogue/item.ts';
import { describeResult, lowerFirst, quantityWords } from '../exam/describe.ts';
import type { Exam, HistoryStatement, OnsetPace } from '../exam/exam.ts';
import type { Finding } from '../exam/finding.ts';
import { cameFast } from '../exam/pace.ts';
import { daysPerYear } from '../kernel/days.ts';
import { rememberedWith } from '../kernel/remembered.ts';
import { bodySides } from '../kernel/side.ts';
import { makesTheCause, shareOfDenial } from './denial.ts';
import { depthModifiers } from './depth-of-paralysis.ts';
import { type ExamQuery, historyReason, isFrom, withoutExamples } from './exam-query.ts';
import { inheritanceModifiers } from './inheritance.ts';
import { type Modifier, worthSaying } from './modifier.ts';
import type { Reason } from './ranked-cause.ts';
import { findingReasons, missing } from './reasons.ts';
import {
  type Cause,
  type CauseGroup,
  type HistoryRatio,
  longStandingSigns,
  type QuantityRatio,
  type SideRatio,
  type SignRatio,
  type ValueRatio,
} from './table/cause.ts';
import { unseenMovement } from './unseen-movement.ts';
import { untoldPaceModifiers } from './untold-pace.ts';
import { ratioOf, valueRowsOf } from './value-rows.ts';

/** What the person, the history, the signs and the results say about one cause. */
export interface CauseWeight {
  /** Tempered product of the likelihood ratios; beyond `ratioBounds` little more counts. */
  readonly ratio: number;
  readonly reasons: () => { readonly supporting: readonly Reason[]; readonly against: readonly Reason[] };
  /** Whether the history, a sign or a result speaks for this very cause, and not only tempo, age or sex. */
  readonly isSupported: boolean;
}

/**
 * The ratios are judged one by one and are not independent, so beyond a range their product grows and falls slowly: a normal
 * result lowers a cause and never removes it, and no pile of soft hints becomes proof.
 */
const ratioBounds = { least: 0.002, most: 500 } as const;

/** Exponent of the product: hints that go together, such as fever and a raised C-reactive protein, count for less than both. Judged. */
const temper = 0.75;

/**
 * The same of an illness, an exposure or a medicine: what is complained of goes together, these come each by itself and count
 * whole. Of 0.9 and 1 the one that names the right cause among the first three more often in the development cases.
 */
const temperOfFacts = 1;

/** The same where signs and tempo, which go together with what was told, are left out. Judged. */
const temperOfStories = 0.9;

/** From this ratio on a statement, sign or result speaks for a cause by itself. Judged. */
const speaksFor = 2;

/** From this product on several soft statements of the story, none of which would by itself, speak for a cause together. Judged. */
const speakTogether = 2.5;

const paceWords = {
  hyperacute: 'seconds to hours',
  acute: 'days',
  subacute: 'weeks',
  chronic: 'months to years',
} as const;

/**
 * Weighs one cause against what the examination had no part in: person, history, relatives, results; not the tempo, by
 * which places are weighed for themselves.
 */
export function weighStory(cause: Cause, query: ExamQuery): Pick<CauseWeight, 'ratio' | 'reasons'> {
  const modifiers = [...personModifiers(cause, query), ...toldAndMeasured(cause, query)];
  return { ratio: tempered(modifiers, () => temperOfStories), reasons: () => inWords(modifiers) };
}

/** Weighs one cause against everything but the site: tempo, course, person, history, signs and results. Worked out once for each exam. */
export function weighCause(cause: Cause, query: ExamQuery): CauseWeight {
  const known = weightsOf(query).get(cause);
  if (known !== undefined) return known;
  const weight = weighAll(cause, query);
  weightsOf(query).set(cause, weight);
  return weight;
}

const weightsOf = rememberedWith((_: ExamQuery) => new Map<Cause, CauseWeight>());

function weighAll(cause: Cause, query: ExamQuery): CauseWeight {
  const story = toldAndMeasured(cause, query);
  const specific = [
    ...story,
    ...(cause.signs ?? []).flatMap((sign) => signModifier(sign, query, saidAlready(cause, sign, query))),
    ...(cause.sides ?? []).flatMap((row) => sideModifier(row, query)),
    ...depthModifiers(cause, query),
  ];
  const modifiers = [
    ...tempoModifiers(cause, query),
    ...untoldPaceModifiers(cause, query),
    ...personModifiers(cause, query),
    ...specific,
  ];
  return {
    ratio: tempered(modifiers) * againstTheDate(cause, query),
    isSupported:
      specific.some(({ ratio, saysOnlyWhere }) => ratio >= speaksFor && saysOnlyWhere !== true) ||
      story.reduce((product, { ratio, saysOnlyWhere }) => product * (saysOnlyWhere === true ? 1 : ratio), 1) >=
        speakTogether,
    reasons: () => inWords(modifiers),
  };
}

function toldAndMeasured(cause: Cause, query: ExamQuery): readonly Modifier[] {
  return [
    ...historyModifiers(cause, query),
    ...inheritanceModifiers(cause, query.exam),
    ...resultModifiers(cause, query),
  ];
}

const usualTemper = ({ standsAlone }: Modifier): number => (standsAlone === true ? temperOfFacts : temper);

function tempered(modifiers: readonly Modifier[], power = usualTemper): number {
  return withinBounds(modifiers.reduce((product, modifier) => product * modifier.ratio ** power(modifier), 1));
}

/** How much of what goes beyond the range still counts, as an exponent: of two that are both far beyond it the better one leads. Judged. */
const beyondBounds = 0.3;

function withinBounds(product: number): number {
  const { least, most } = ratioBounds;
  const nearest = Math.min(most, Math.max(least, product));
  return nearest * (product / nearest) ** beyondBounds;
}

function resultModifiers(cause: Cause, query: ExamQuery): readonly Modifier[] {
  if (query.exam.results.length === 0) return [];
  return [
    ...(cause.quantities ?? []).flatMap((quantity) => quantityModifier(quantity, query)),
    ...valueRowsOf(cause, query).flatMap((value) => valueModifier(value, query)),
  ];
}

/** The strongest first, for and against; what speaks by several rows of the table is said once, for all of them together. */
function inWords(modifiers: readonly Modifier[]): ReturnType<CauseWeight['reasons']> {
  const said = new Map<string, { ratio: number; readonly reason: Reason }>();
  for (const modifier of modifiers) {
    const reason = modifier.reason();
    const key = `${reason.pointer} ${reason.text}`;
    const known = said.get(key);
    if (known === undefined) said.set(key, { ratio: modifier.ratio, reason });
    else known.ratio *= modifier.ratio;
  }
  const strongestFirst = [...said.values()].sort((a, b) => Math.abs(Math.log(b.ratio)) - Math.abs(Math.log(a.ratio)));
  return {
    supporting: strongestFirst.filter(({ ratio }) => ratio >= worthSaying).map(({ reason }) => reason),
    against: strongestFirst.filter(({ ratio }) => ratio <= 1 / worthSaying).map(({ reason }) => reason),
  };
}

function tempoModifiers(cause: Cause, query: ExamQuery): readonly Modifier[] {
  const { exam } = query;
  const modifiers: Modifier[] = [];
  const { pace, durationDays } = exam.onset;
  if (pace !== undefined) {
    // Against a cause that would begin at any of the four paces equally often.
    const ratio = shareOfPace(cause, pace, query) / 0.25;
    const fit = ratio >= 1 ? 'fits' : 'is unusual';
    const text = `onset over ${paceWords[pace]} ${fit}`;
    modifiers.push({ ratio, reason: () => ({ pointer: '/history/onset/pace', text }) });
  }
  const limits = cause.durationDays;
  if (durationDays !== undefined && limits !== undefined) {
    const { from = 0, to = Number.POSITIVE_INFINITY, outside } = limits;
    // An upper limit is about how long it goes on getting worse; what has stopped may have begun at any time before.
    const tooLong = durationDays > to && (exam.course === undefined || exam.course === 'progressive');
    const tooShort = durationDays < from && !isFoundAtBirth(cause, exam.person);
    if (tooShort || tooLong) {
      const limit = durationDays < from ? `at least ${from} days are usual` : `it seldom progresses beyond ${to} days`;
      const text = `${durationDays} days since onset, where ${limit}`;
      const ratio = tooLong && exam.course === undefined ? outside ** shareOfUntoldCourse : outside;
      modifiers.push({ ratio, reason: () => ({ pointer: '/history/onset/durationDays', text }) });
    }
  }
  const course = exam.course === undefined ? undefined : courseRatio(cause, exam, exam.course);
  if (course !== undefined) {
    const text = `${exam.course} course ${course >= 1 ? 'fits' : 'is unusual'}`;
    modifiers.push({ ratio: course, reason: () => ({ pointer: '/history/course', text }) });
  }
  return modifiers;
}

/** How much of an upper limit counts, as an exponent, where nobody says whether it still grows worse or has stood since. Judged. */
const shareOfUntoldCourse = 0.5;

/** Within so many days of a beginning over hours or days it is new; what has grown for longer than the second is old. Judged. */
const newAndOld = { newWithin: 14, oldFrom: 365 } as const;

/** Whether it came within hours or days, and not long ago as far as anybody says. */
function isNew({ onset }: Exam): boolean {
  return cameFast(onset) && (onset.durationDays ?? 0) <= newAndOld.newWithin;
}

/** From so many days on what has not grown does not grow. Judged. */
const longStanding = 180;

/** Where the table says nothing of it, what stands still is as much against a disease as growing worse is for it; twice after months. */
function whatStands({ courses }: Cause, { onset: { durationDays = 0 } }: Exam): number | undefined {
  const growing = courses?.progressive;
  return growing === undefined || growing <= 1 ? undefined : growing ** (durationDays >= longStanding ? -2 : -1);
}

/** Getting worse within days is not the slow growth that speaks for a disease of months and years. */
function courseRatio(cause: Cause, exam: Exam, course: NonNullable<Exam['course']>): number | undefined {
  const ratio = cause.courses?.[course] ?? (course === 'static' ? whatStands(cause, exam) : undefined);
  const isSlowGrowth = course === 'progressive' && cause.tempo.chronic >= mostlyChronic;
  return ratio !== undefined && isSlowGrowth && isNew(exam) ? Math.min(1, ratio) : ratio;
}

/** From this share of a beginning within days on a disease is one that comes so, and does not grow for years. Judged. */
const mostlyWithinDays = 0.7;

/** What grows, wastes or is born with one; what is pressed or starved of blood may fail in a day after years of silence. */
const slowGroups: ReadonlySet<CauseGroup> = new Set(['neoplastic', 'degenerative', 'hereditary']);

/** However plainly pace and date speak against it, a disease may have been overlooked, or come upon another. Judged. */
const leastAgainstTheDate = 0.05;

/**
 * Where it came within days, or has grown for years, a disease of the other kind is contradicted, and twice where pace and date
 * both say so. That is no hint among others: it stands outside of the range by which those are bounded, so that no pile of
 * what fits the place makes a tumour of a deafness of three days. Deformities that take long to grow say that the date is wrong.
 */
function againstTheDate(cause: Cause, query: ExamQuery): number {
  const { exam, abnormal } = query;
  const { pace, durationDays } = exam.onset;
  const { tempo, group } = cause;
  const isSlow = slowGroups.has(group) && tempo.chronic >= mostlyChronic && !isFoundAtBirth(cause, exam.person);
  const isQuick = tempo.hyperacute + tempo.acute >= mostlyWithinDays;
  const isOld = pace === 'chronic' && (durationDays ?? 0) >= newAndOld.oldFrom && exam.course === 'progressive';
  const isContradicted = (isNew(exam) && isSlow) || (isOld && isQuick);
  if (pace === undefined || !isContradicted || abnormal(longStandingSigns).length > 0) return 1;
  const ratio = (shareOfPace(cause, pace, query) / 0.25) ** (durationDays === undefined ? 1 : 2);
  return Math.min(1, Math.max(leastAgainstTheDate, ratio));
}

/** The least share of a beginning over weeks or months where nothing has grown worse since, and where nobody says so. Judged. */
const leastOfWhatStands = 0.1;
const leastOfUntoldCourse = 0.03;

/** From so many days on the length of a trouble is told as its pace. Judged. */
const lengthIsPace = 14;

/** Bones that grew crooked were pulled so for years, whatever the day on which it was noticed. */
const deformities = [...longStandingSigns, 'inspection/scoliosis', 'inspection/achilles-contracture'];

/** Share of every pace for what one was born with: found in the first days of life, or by a crooked spine, it seems to have come within days. Judged. */
const pacesCount = 0.2;

/** A disease of the genes in the first year of life: how fast it seems to come, and for how long, is the age of the child. */
const isFoundAtBirth = ({ group, tempo }: Cause, { ageYears }: Exam['person']): boolean =>
  ageYears !== undefined && ageYears < 1 && group === 'hereditary' && tempo.chronic >= mostlyChronic;

/** From this share on a cause is told as one of months to years. */
const mostlyChronic = 0.5;

/**
 * What began today is called acute and came within hours: it counts half as the one and half as the other. What has stood
 * still or mended for weeks or months is called so for its length, however it began; so may be what nobody says to grow.
 */
function shareOfPace(cause: Cause, pace: OnsetPace, { exam, abnormal }: ExamQuery): number {
  const { onset, course, person } = exam;
  const { durationDays } = onset;
  const { tempo, group } = cause;
  const isInborn = group === 'hereditary' && tempo.chronic >= mostlyChronic;
  if (isFoundAtBirth(cause, person) || (isInborn && abnormal(deformities).length > 0))
    return Math.max(pacesCount, tempo[pace]);
  const isToday = pace === 'acute' && durationDays !== undefined && durationDays < 1;
  if (isToday) return (tempo.hyperacute + tempo.acute) / 2;
  const isLong = pace === 'chronic' || (pace === 'subacute' && (durationDays ?? 0) >= lengthIsPace);
  if (!isLong) return tempo[pace];
  if (course === 'static' || course === 'improving') return Math.max(leastOfWhatStands, tempo[pace]);
  return course === undefined && durationDays !== undefined ? Math.max(leastOfUntoldCourse, tempo[pace]) : tempo[pace];
}

/** Beyond so many times the oldest usual age a disease of the young is far outside. Judged. */
const farBeyond = 1.5;

function personModifiers(cause: Cause, query: ExamQuery): readonly Modifier[] {
  const modifiers: Modifier[] = [];
  const { sex } = query.exam.person;
  const onset = ageAtOnset(query);
  if (
    onset !== undefined &&
    cause.age !== undefined &&
    (onset.latest < cause.age.from || onset.earliest > cause.age.to)
  ) {
    const { from, to, outside } = cause.age;
    const text = () => `${onset.words} is ${onset.latest < from ? `below the usual ${from}` : `above the usual ${to}`}`;
    // What begins in grown people is hardly ever met in a child, nor what begins in children in the old: far outside the objection counts twice.
    const isFar = onset.latest < from / 2 || onset.earliest > to * farBeyond;
    const ratio = isFar ? outside ** 2 : outside;
    modifiers.push({ ratio, reason: () => ({ pointer: '/person/ageYears', text: text() }) });
  }
  if ((sex === 'male' || sex === 'female') && cause.sex !== undefined) {
    const ratio = cause.sex[sex];
    const text = () => `${ratio >= 1 ? 'commoner' : 'less common'} in ${sex === 'male' ? 'men' : 'women'}`;
    modifiers.push({ ratio, reason: () => ({ pointer: '/person/sex', text: text() }) });
  }
  return modifiers;
}

interface AgeAtOnset {
  readonly earliest: number;
  readonly latest: number;
  readonly words: string;
}

/** What has been there for more years than these is told with their number, or as there since childhood. Judged. */
const longestUntold = 10;

/**
 * Between which ages in whole years it began. An age in whole years is on average half a year more, so that what began last
 * week began at that age. Without a duration what is chronic may have begun many years before, and deformities that take years
 * to grow mean that it began long before it was noticed.
 */
const ageAtOnset = rememberedWith(({ exam, abnormal }: ExamQuery): AgeAtOnset | undefined => {
  const { ageYears } = exam.person;
  const { pace, durationDays } = exam.onset;
  if (ageYears === undefined) return undefined;
  const now = Number.isInteger(ageYears) ? ageYears + 0.5 : ageYears;
  const noticed = durationDays === undefined ? now : Math.max(0, now - durationDays / daysPerYear);
  // Of age 0 it is not told how many weeks or months these are.
  const isOlder = abnormal(longStandingSigns).length > 0 || ageYears === 0;
  const isUntold = durationDays === undefined && pace === 'chronic';
  const latest = noticed < 1 ? noticed : Math.floor(noticed);
  const words =
    Math.floor(latest) === Math.floor(ageYears) ? `age ${ageYears}` : `onset at about ${Math.floor(latest)}`;
  const earliest = isUntold ? Math.max(0, latest - longestUntold) : latest;
  return { earliest: isOlder ? 0 : earliest, latest, words };
});

const factsBefore: ReadonlySet<HistoryStatement['kind']> = new Set(['condition', 'exposure', 'medication']);

/** What many have who come with something else, so that it is told of every illness: it counts no more than a complaint. */
const commonInEverybody: ReadonlySet<string> = new Set([
  ...['hypertension', 'diabetes-mellitus', 'hyperlipidaemia', 'obesity', 'tobacco', 'alcohol-excess'],
  ...['ischaemic-heart-disease', 'atrial-fibrillation', 'hypothyroidism', 'migraine', 'osteoporosis', 'cancer'],
  ...['trauma', 'head-injury', 'limb-fracture-or-dislocation', 'recent-surgery', 'spinal-surgery', 'immunosuppression'],
  ...[
    'metformin',
    'insulin-or-sulfonylurea',
    'beta-blocker',
    'antiplatelet',
    'corticosteroid',
    'proton-pump-inhibitor',
  ],
]);

const standsAlone = ({ present, kind, key }: HistoryStatement): boolean =>
  present && factsBefore.has(kind) && !commonInEverybody.has(key);

/** Relatives with the like have whatever it is: that speaks for all that runs in families, and by itself for none of it. */
const namesNoDisease = ({ kind, key }: HistoryStatement): boolean => kind === 'family' && key === 'similar-disorder';

function historyModifiers(cause: Cause, query: ExamQuery): readonly Modifier[] {
  const modifiers: Modifier[] = [];
  for (const row of cause.history ?? []) {
    const statement = statementOf(row, query);
    const lesser = statement === undefined ? lesserOf(row, query) : undefined;
    if (lesser !== undefined)
      modifiers.push({ ratio: row.present ** shareOfLesser, reason: () => historyReason(lesser) });
    else if (statement === undefined) modifiers.push(...silenceModifier(row, query));
    else {
      const ratio = statement.present ? row.present : row.absent;
      const saysOnlyWhere = statement.present && namesNoDisease(statement);
      modifiers.push({
        ratio,
        saysOnlyWhere,
        standsAlone: standsAlone(statement),
        reason: () => historyReason(statement),
      });
    }
  }
  return modifiers;
}

/** A lesser degree of a complaint, which says the same with less force where nobody speaks of the complaint itself. */
const lesserDegrees: Readonly<Record<string, string>> = { vomiting: 'nausea' };

/** How much of the greater one it is, as an exponent. Judged. */
const shareOfLesser = 0.5;

function lesserOf({ keys }: HistoryRatio, query: ExamQuery): HistoryStatement | undefined {
  const degrees = keys.flatMap((key) => lesserDegrees[key] ?? []);
  return degrees.map((key) => query.history(key)).find((statement) => statement?.present === true);
}

/** What is told of any of the keys: that one is there, before that another is not. */
function statementOf({ keys }: HistoryRatio, query: ExamQuery): HistoryStatement | undefined {
  let denied: HistoryStatement | undefined;
  for (const key of keys) {
    const statement = query.history(key);
    if (statement?.present === true) return statement;
    denied ??= statement;
  }
  return denied;
}

/** What people often do not know that they have, or do not say. */
const oftenUnsaid: ReadonlySet<string> = new Set(['hiv-infection', 'obesity']);

const labels = new Map(historyRows.map(({ key, label }) => [key, label]));

/** Signs by which the examiner has seen what nobody spoke of. */
const seenAs: Readonly<Record<string, readonly string[]>> = {
  fever: ['autonomic/fever'],
  'hearing-loss': ['cranial-nerves/hearing-loss'],
  'loss-of-smell': ['cranial-nerves/anosmia'],
  'face-numbness': ['cranial-nerves/facial-numbness'],
  diplopia: [
    'cranial-nerves/diplopia',
    'cranial-nerves/ophthalmoplegia',
    'cranial-nerves/third-nerve-palsy',
    'cranial-nerves/sixth-nerve-palsy',
  ],
  'drooping-eyelids': ['cranial-nerves/ptosis', 'cranial-nerves/fatigable-ptosis'],
  'face-droop': [
    'cranial-nerves/facial-weakness',
    'cranial-nerves/lower-facial-weakness',
    'cranial-nerves/upper-facial-weakness',
  ],
  'visual-loss': [
    'cranial-nerves/reduced-visual-acuity',
    'cranial-nerves/homonymous-hemianopia',
    'cranial-nerves/altitudinal-field-defect',
    'cranial-nerves/constricted-visual-field',
    'cranial-nerves/central-scotoma',
  ],
  'cognitive-change': [
    'higher-function/confusion',
    'higher-function/disorientation',
    'higher-function/memory-impairment',
    'higher-function/executive-dysfunction',
  ],
  'behaviour-change': [
    'higher-function/apathy',
    'higher-function/disinhibition',
    'higher-function/hallucinations',
    'higher-function/agitation',
  ],
  'speech-difficulty': [
    'higher-function/expressive-aphasia',
    'higher-function/receptive-aphasia',
    'higher-function/global-aphasia',
    'higher-function/anomia',
  ],
  seizure: ['involuntary-movements/seizure-seen'],
  'loss-of-consciousness': ['higher-function/coma', 'higher-function/stupor', 'higher-function/drowsiness'],
  dysphagia: ['cranial-nerves/dysphagia'],
  'voice-change': ['cranial-nerves/dysphonia', 'cranial-nerves/vocal-cord-paralysis'],
  unsteadiness: ['gait/ataxic', 'gait/unable-to-stand'],
  stiffness: ['tone/trunk', 'tone/neck', 'tone/upper-limb', 'tone/lower-limb'],
  tremor: ['involuntary-movements/resting-tremor', 'involuntary-movements/action-tremor'],
  'herpes-zoster': ['inspection/vesicular-rash'],
  'scalp-tenderness': ['inspection/temporal-artery-tenderness'],
  'face-or-neck-lump': ['inspection/enlarged-lymph-nodes'],
};

/**
 * A story was told, and not a word in it of what makes this cause: no injury, no radiotherapy, no vertigo. That is not a
 * denial, but it is not nothing either. Of relatives and of infections that nobody has looked for silence says nothing, nor of what was seen.
 */
function silenceModifier({ keys, absent }: HistoryRatio, query: ExamQuery): readonly Modifier[] {
  if (absent > makesTheCause || query.exam.history.length === 0) return [];
  if (query.abnormal(keys.flatMap((key) => seenAs[key] ?? [])).length > 0) return [];
  const isUnknowable = keys.every((key) => key.startsWith('family/') || oftenUnsaid.has(key));
  if (isUnknowable) return [];
  const [first = ''] = keys;
  const reason = () => missing(`nothing was told of ${lowerFirst(withoutExamples(labels.get(first) ?? first))}`);
  const share = isAskedFor(keys, query.exam) ? shareOfDenial : shareOfDenial * whereNoneIsTold;
  return [{ ratio: absent ** share, reason }];
}

const symptomKeys = new Set(historyRows.filter(({ kind }) => kind === 'symptom').map(({ key }) => key));

/** How much of the silence about a complaint is left, as an exponent, where not one is written down: it may be that of the writer. Judged. */
const whereNoneIsTold = 0.5;

function isAskedFor(keys: readonly string[], { history }: Exam): boolean {
  return keys.some((key) => !symptomKeys.has(key)) || history.some(({ kind }) => kind === 'symptom');
}

/** How much of a sign, as an exponent, is left where the story has told and weighed the same: a fever that was measured too. Judged. */
const shareOfSeenToo = 0.65;

/** Whether what the sign shows was told, and counts for the cause already. */
function saidAlready({ history = [] }: Cause, { items }: SignRatio, query: ExamQuery): boolean {
  return history.some(({ keys }) =>
    keys.some(
      (key) => (seenAs[key] ?? []).some((item) => items.includes(item)) && query.history(key)?.present === true,
    ),
  );
}

function signModifier(row: SignRatio, query: ExamQuery, isSaid: boolean): readonly Modifier[] {
  const abnormal = query.abnormal(row.items).filter((finding) => isAt(row, finding));
  const findings = abnormal.length > 0 ? abnormal : query.tested(row.items);
  if (findings.length === 0) return unseenMovement(row, query);
  const ratio = (abnormal.length > 0 ? row.present : row.absent) ** (isSaid ? shareOfSeenToo : 1);
  const saysOnlyWhere = findings.every(({ item }) => sectionsOfDeficits.has(item.section));
  return [{ ratio, saysOnlyWhere, reason: () => findingReasons(findings)[0] ?? missing('a sign') }];
}

/** Which side it is on says nothing of what it is by itself, so it never names a cause of which the story does not speak. */
function sideModifier({ items, one, both }: SideRatio, query: ExamQuery): readonly Modifier[] {
  const [first, other] = bodySides.flatMap((side) => query.abnormal(items, side).slice(0, 1));
  if (first === undefined) return toldSideModifier({ one, both }, toldOf(items, query));
  const isOnBoth = other !== undefined;
  const text = `${lowerFirst(first.item.label)} on ${isOnBoth ? 'both sides' : 'one side'}`;
  const reason = () => ({ pointer: first.pointer, text });
  return [{ ratio: isOnBoth ? both : one, saysOnlyWhere: true, reason }];
}

/** Before anybody has looked, the side is that of the complaint. */
function toldSideModifier(
  { one, both }: Pick<SideRatio, 'one' | 'both'>,
  statement: HistoryStatement | undefined,
): readonly Modifier[] {
  if (statement?.side === undefined) return [];
  const ratio = statement.side === 'both' ? both : one;
  return [{ ratio, saysOnlyWhere: true, reason: () => historyReason(statement) }];
}

/** What is told, with its side, of which one of the signs would be seen, where none of them was looked for. */
function toldOf(items: readonly string[], { exam, tested }: ExamQuery): HistoryStatement | undefined {
  if (tested(items).length > 0) return undefined;
  return exam.history.find(
    ({ key, present, side }) =>
      present && side !== undefined && (seenAs[key] ?? []).some((item) => items.includes(item)),
  );
}

function isAt({ at }: SignRatio, { place }: Finding): boolean {
  return at === undefined || (place !== undefined && at.includes(place.key));
}

/** What is lost there is lost by any lesion of the same path. */
const sectionsOfDeficits: ReadonlySet<SectionKey> = new Set([
  'tone',
  'clonus',
  'power',
  'reflexes',
  'plantars',
  'sensation',
  'coordination',
]);

function quantityModifier(row: QuantityRatio, query: ExamQuery): readonly Modifier[] {
  const measured = query.quantity(row.result, row.unit);
  if (measured === undefined) return [];
  const { value, label, pointer, comparator = '' } = measured;
  const atOrAbove = isFrom(measured, row.threshold);
  if (atOrAbove === null) return [];
  const met = row.met === 'from' ? atOrAbove : !atOrAbove;
  const limit = quantityWords(row.threshold, row.unit);
  const where = atOrAbove ? 'at or above' : 'below';
  const text = `${lowerFirst(label)} ${comparator}${quantityWords(value, row.unit)}, ${where} ${limit}`;
  return [{ ratio: met ? row.whenMet : row.whenNot, reason: () => ({ pointer, text }) }];
}

function valueModifier(row: ValueRatio, query: ExamQuery): readonly Modifier[] {
  const result = query.result(row.result);
  const ratio = ratioOf(row, result?.value);
  if (result === undefined || ratio === undefined) return [];
  return [{ ratio, reason: () => ({ pointer: result.pointer, text: describeResult(result) }) }];
}
