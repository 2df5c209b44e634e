/**
 * Where the lesion is: reads an exam, weighs every hypothesis, names the leading sites with their reasons. Pure; the
 * state columns it keeps are only a cache.
 */

import type { SiteKind } from '../anatomy/site-kind.ts';
import { lowerFirst } from '../exam/describe.ts';
import type { Exam } from '../exam/exam.ts';
import { withImpliedFacts } from '../exam/implied-facts.ts';
import { joinWords } from '../kernel/words.ts';
import type { CompiledModel } from './compiled-model.ts';
import { type Confrontation, confront } from './confront.ts';
import { createEngine, type Engine, nextOf, weigh } from './engine.ts';
import { conclude } from './explanation/conclusion.ts';
import { type Explanation, explain, round } from './explanation/explain.ts';
import { everyTarget } from './explanation/next-examination.ts';
import { describePattern } from './explanation/pattern.ts';
import { type Glance, glance } from './glance.ts';
import { hypotheses } from './hypotheses/hypotheses.ts';
import { severalNerves } from './hypotheses/process-signs.ts';
import type { Hypothesis, Site } from './hypothesis.ts';
import type { StateColumns } from './inference/columns.ts';
import type { Inference } from './inference/infer.ts';
import { isKnownAnyway } from './inference/known-illness.ts';
import type { PosteriorWeights } from './inference/ranking.ts';
import { unexplainedBy } from './inference/score.ts';
import { prepareToldParts } from './inference/told-parts.ts';
import { type Answer, joinSides } from './inference/unknown-side.ts';
import { sideOfPlaces } from './lesion.ts';
import type { Evidence, Localisation, RankedLocalisation } from './localisation.ts';
import { manyRoots, siteCoding } from './sites.ts';

export interface Localiser {
  readonly localise: (exam: Exam) => Localisation;
  /**
   * Works out beforehand what exams would otherwise wait for, an item at a time, so that a caller can go on with other
   * things in between. Answers do not depend on it.
   */
  readonly prepare: () => Generator<void>;
  /** What was worked out about items and hypotheses, for whoever turns the model round and draws from a lesion. */
  readonly columns: StateColumns;
  /** The leading site and what to examine next, without the reasons, for who goes on item by item. */
  readonly glance: (exam: Exam) => Glance;
  /** Holds an exam against a lesion that is known; see `confront`. */
  readonly confront: (exam: Exam, lesion: number, rival?: number) => Confrontation;
}

/** Sites less likely than this are not listed, beyond the first three; sites without any chance never are. */
const listedFrom = 0.01;
const listedAtMost = 8;
const listedAtLeast = 3;
/** @param compiled what `compileModel` worked out, if it was kept */
export function createLocaliser(compiled?: CompiledModel | null): Localiser {
  const engine = createEngine(compiled?.hypotheses === hypotheses.length ? compiled : null);
  return {
    localise: (exam) => localise(withImpliedFacts(exam), engine),
    prepare: () => prepare(engine),
    columns: engine.columns,
    glance: (exam) => glance(withImpliedFacts(exam), engine),
    confront: (exam, lesion, rival) => confront(withImpliedFacts(exam), lesion, engine, rival),
  };
}

/** Works out everything that does not depend on an exam. */
export function compileModel(): CompiledModel {
  const engine = createEngine(null);
  for (const _ of prepare(engine));
  const { columns, coverage } = engine;
  return { hypotheses: hypotheses.length, states: columns.completeStates(), complaints: coverage.complaints };
}

function* prepare({ columns }: Engine): Generator<void> {
  for (const target of everyTarget()) {
    const column = columns.column(target);
    if (column !== null) columns.affectedBy(column);
    yield;
  }
  yield* prepareToldParts(columns);
}

function localise(exam: Exam, engine: Engine): Localisation {
  const weighed = weigh(exam, engine);
  const { inference, weights } = weighed;
  const ranked = rank(exam, inference, weights);
  const severalProbability = inference.combinations.reduce((sum, { probability }) => sum + probability, 0);
  return {
    localisations: ranked,
    pattern: describePattern(exam.findings, ranked[0]),
    conclusion: conclude(exam.findings, ranked, {
      severalProbability,
      jointFit: jointFit(inference),
      isUsualInHealth: isUsualInHealth(inference),
    }),
    nextExamination: nextOf(exam, weighed, engine),
  };
}

function rank(exam: Exam, inference: Inference, weights: PosteriorWeights): readonly RankedLocalisation[] {
  // What is as likely as the last one listed is listed too, so that the mirror image of an exam has a mirror-image list.
  const answers = joinSides(inference.groups, inference.scored, hypotheses);
  const chance = (place: number): number => round(answers[place]?.probability ?? 0);
  const least = Math.max(listedFrom, chance(listedAtMost - 1));
  const third = chance(listedAtLeast - 1);
  const listed = answers.filter((_, place) => {
    const own = chance(place);
    return place === 0 || own >= least || (own > 0 && own >= third);
  });
  const single = consequencesLast(listed, inference, exam).map(
    ({ group, probability, isEitherSide }): RankedLocalisation => {
      const members = weights.within(group);
      const level = weights.level(group);
      const lead = weights.spokesman(group) ?? hypotheses[0];
      if (lead === undefined) throw new RangeError('there is always a hypothesis');
      const explanation = explain(exam, inference.scored, members, weights.outside(group), lead);
      const ranked = toRanked(lead, probability, level, explanation);
      return isEitherSide
        ? { ...ranked, side: null, isEitherSide, code: siteCoding({ ...lead.site, side: null }) }
        : ranked;
    },
  );
  return withProcessOfSeveral(inference, single);
}

/**
 * Raised pressure and irritated meninges come from something, and what is known anyway is not asked for: where a place is as sure as
 * they are, it is named before them.
 */
const consequences: ReadonlySet<SiteKind> = new Set(['intracranial-pressure', 'meninges']);
const asSure = 0.5;

function consequencesLast(listed: readonly Answer[], { combinations }: Inference, exam: Exam): readonly Answer[] {
  const isLast = ({ group }: Answer): boolean => {
    const site = hypotheses[group.members[0] ?? 0]?.site;
    return site === undefined || consequences.has(site.kind) || isKnownAnyway(site, exam);
  };
  const sure = listed.filter(({ probability }) => probability >= asSure);
  const isCause = (one: Answer): boolean => sure.includes(one) && !isLast(one);
  if (combinations.length === 0 || !sure.some(isCause)) return listed;
  return [...listed.filter(isCause), ...listed.filter((one) => !isCause(one))];
}

function toRanked(
  lead: Hypothesis,
  probability: number,
  level: ReturnType<PosteriorWeights['level']>,
  { fit, supporting, against, unexplained }: Explanation,
): RankedLocalisation {
  const site: Site = lead.site;
  return {
    site: site.key,
    label: site.label,
    side: site.key === severalNerves.key ? (sideShown(supporting) ?? sideOfPlaces(lead.damage)) : site.side,
    level: site.level,
    levelRange: site.span ?? (level === null ? null : level.range),
    kind: site.kind,
    ...(site.isDiffuse === true && { isDiffuse: true }),
    code: siteCoding(site),
    probability: round(probability),
    fit,
    supporting,
    against,
    unexplained,
  };
}

/** Share of the abnormal data that the best combination accounts for. */
function jointFit({ combinations, scored }: Inference): number {
  const best = combinations[0]?.combination;
  if (best === undefined) return 0;
  const wrong = scored.data.filter(({ abnormal }) => abnormal).length;
  const left = unexplainedBy(scored, (_, place) => best.states[place] ?? 0).length;
  return wrong === 0 ? 0 : (wrong - left) / wrong;
}

/** A deviation found in at least this share of healthy people of the person's age does not speak of disease. Judged. */
const usualFrom = 0.1;

/** Whether everything abnormal is what healthy people of this age often show. */
function isUsualInHealth({ scored }: Inference): boolean {
  return scored.data.every(
    ({ abnormal, reading: { table, healthy } }) => !abnormal || (table.abnormal[healthy] ?? 0) >= usualFrom,
  );
}

/** From how many roots on a process of many roots is named, and not each root by itself. */
const manyRootsFrom = 3;

/**
 * The process that picks out single nerves, or roots, when several of them are the answer. One nerve on both sides is not
 * several: both wrists are narrow in many people.
 */
function processOf(sites: readonly Site[]): Site | null {
  if (sites.every(({ kind }) => kind === 'nerve' || kind === severalNerves.kind)) {
    return new Set(sites.map(({ key }) => key)).size === 1 ? null : severalNerves;
  }
  if (!sites.every(({ kind }) => kind === 'root')) return null;
  const roots = sites.reduce((count, { span }) => count + (span === undefined ? 1 : 2), 0);
  return roots >= manyRootsFrom ? { ...manyRoots, side: commonSide(sites) } : null;
}

/** Several nerves have the side that they share and none where they lie on both; their code has no side. */
function sideOf(process: Site, sites: readonly Site[]): Site['side'] {
  if (process.key !== severalNerves.key) return process.side;
  const side = commonSide(sites);
  return side === 'both' ? severalNerves.side : side;
}

/** The side on which all that several nerves explain was found; null when it lies on both. */
function sideShown(supporting: readonly Evidence[]): Site['side'] {
  const sides = new Set(supporting.flatMap(({ abnormal, side }) => (abnormal && side !== 'midline' ? [side] : [])));
  return sides.size === 1 ? ([...sides][0] ?? null) : null;
}

function commonSide(sites: readonly Site[]): Site['side'] {
  const sides = new Set(sites.map(({ side }) => side));
  return sides.size === 1 ? (sites[0]?.side ?? null) : 'both';
}

/** How likely several nerves or roots must be in all, and those pieced together, to be named as one. Judged. */
const leastOfSeveral = 0.2;
const leastOfPieces = 0.1;

/** When several nerves or roots may be the answer, the process that picks them out is named among them. */
function withProcessOfSeveral(
  inference: Inference,
  single: readonly RankedLocalisation[],
): readonly RankedLocalisation[] {
  const sitesOf = (members: readonly number[]): readonly Site[] =>
    members.flatMap((index) => hypotheses[index]?.site ?? []);
  const processes = inference.combinations.map(({ combination, probability }) => {
    const sites = sitesOf(combination.members);
    return { sites, process: processOf(sites), probability };
  });
  const leading = processes.find(({ process }) => process !== null);
  const process = leading?.process ?? null;
  if (leading === undefined || process === null) return single;
  const probability = processes.reduce(
    (sum, one) => (one.process?.key === process.key ? sum + one.probability : sum),
    0,
  );
  const own = single.find(({ site }) => site === process.key)?.probability ?? 0;
  const together = Math.min(1, probability + own);
  if (together < leastOfSeveral || probability <= Math.max(own, leastOfPieces)) return single;
  const { sites } = leading;
  const parts = single.filter((one) => sites.some(({ key, side }) => key === one.site && side === one.side));
  const supporting = new Map(parts.flatMap((one) => one.supporting).map((evidence) => [evidence.findingId, evidence]));
  const unexplained = parts[0]?.unexplained.filter(({ findingId }) =>
    parts.every((one) => one.unexplained.some((other) => other.findingId === findingId)),
  );
  const several: RankedLocalisation = {
    site: process.key,
    label: `${process.label}: ${joinWords(sites.map(named))}`,
    side: sideOf(process, sites),
    level: null,
    levelRange: null,
    kind: process.kind,
    code: siteCoding(process),
    probability: round(together),
    fit: round(jointFit(inference)),
    supporting: [...supporting.values()],
    against: [],
    unexplained: unexplained ?? [],
  };
  const others = single.filter(({ site }) => site !== process.key);
  // As likely as not, it goes before its parts, which are as likely as it is.
  if (together > 0.5) return [several, ...others];
  const place = others.findIndex((one) => one.probability <= several.probability);
  return place === -1 ? [...others, several] : others.toSpliced(place, 0, several);
}

function named({ side, label }: Site): string {
  return `${side ?? ''} ${lowerFirst(label)}`.trim();
}
