import { describeFinding } from '../../exam/describe.ts';
import type { Exam } from '../../exam/exam.ts';
import type { Hypothesis } from '../hypothesis.ts';
import { allShifts } from '../inference/all-shifts.ts';
import type { Datum } from '../inference/evidence.ts';
import type { Mixture } from '../inference/ranking.ts';
import { accountsFor } from '../inference/readings.ts';
import type { Scored, WeighedDatum } from '../inference/score.ts';
import type { Evidence } from '../localisation.ts';
import { because } from './because.ts';

/** What speaks for and against one site, and how much of what is wrong it accounts for. */
export interface Explanation {
  readonly supporting: readonly Evidence[];
  readonly against: readonly Evidence[];
  readonly unexplained: readonly Evidence[];
  readonly fit: number;
}

/** How much is said for and against a site. What is unexplained is always listed in full. */
export interface ExplanationLimits {
  readonly supportingAtMost: number;
  readonly againstAtMost: number;
  /** Weight, in nats, from which a piece of evidence is worth saying. */
  readonly worthSaying: number;
}

/** The strongest reasons are listed; a reader takes in no more. */
const strongestOnly: ExplanationLimits = { supportingAtMost: 16, againstAtMost: 10, worthSaying: 0.15 };

/** A reason for every finding. */
export const everyReason: ExplanationLimits = {
  supportingAtMost: Number.POSITIVE_INFINITY,
  againstAtMost: Number.POSITIVE_INFINITY,
  worthSaying: 0,
};

/** What one datum says about the site. */
interface Statement {
  readonly datum: WeighedDatum;
  readonly weight: number;
  readonly explained: boolean;
  readonly importance: number;
}

/** A mixture as two arrays, for sums over many data. */
interface Weights {
  readonly indexes: Uint16Array;
  readonly weights: Float64Array;
}

/**
 * Evidence for one site. An abnormal finding is weighed against health (does the site account for it?) and, when it does
 * not, stands as unexplained; a normal one is weighed against the other sites in play (does it tell them apart?).
 * @param site        the hypotheses of the site, weighted within it
 * @param rivals      every other hypothesis, weighted by its probability
 * @param lead        the likeliest hypothesis of the site; gives the path in words
 * @param limits      how much of it is said
 */
export function explain(
  exam: Exam,
  scored: Scored,
  site: Mixture,
  rivals: Mixture,
  lead: Hypothesis,
  limits = strongestOnly,
): Explanation {
  const own = weightsOf(site);
  const others = weightsOf(rivals);
  const byFinding = new Map<string, Statement[]>();
  for (const datum of scored.data) {
    const { reading, weight, finding, logs } = datum;
    const { abnormal } = reading.table;
    const here = Math.log(mixedChance(datum, own));
    const healthy = logs[reading.healthy] ?? 0;
    const gain = here - (datum.abnormal ? healthy : Math.log(mixedChance(datum, others)));
    const explained = datum.abnormal && accountsFor(mixedAbnormal(datum, own), abnormal[reading.healthy] ?? 0);
    let list = byFinding.get(finding.id);
    if (list === undefined) {
      list = [];
      byFinding.set(finding.id, list);
    }
    list.push({ datum, weight: weight * gain, explained, importance: weight * Math.max(0.5, -healthy) });
  }
  return assemble(exam, [...byFinding.values()], lead, limits);
}

function weightsOf(mixture: Mixture): Weights {
  return {
    indexes: Uint16Array.from(mixture, ({ index }) => index),
    weights: Float64Array.from(mixture, ({ weight }) => weight),
  };
}

/** Chance of what was observed under a mixture of hypotheses. */
function mixedChance({ states, valueIndex, reading: { table } }: WeighedDatum, { indexes, weights }: Weights): number {
  const { chance, width } = table;
  let sum = 0;
  for (let place = 0; place < indexes.length; place += 1) {
    const state = states[indexes[place] ?? 0] ?? 0;
    sum += (weights[place] ?? 0) * (chance[state * width + valueIndex] ?? 0);
  }
  return sum;
}

/** Chance of any abnormal result under a mixture of hypotheses. */
function mixedAbnormal({ states, reading: { table } }: WeighedDatum, { indexes, weights }: Weights): number {
  let sum = 0;
  for (let place = 0; place < indexes.length; place += 1)
    sum += (weights[place] ?? 0) * (table.abnormal[states[indexes[place] ?? 0] ?? 0] ?? 0);
  return sum;
}

/** A statement about one site before it is put into words. */
interface Draft {
  readonly datum: Datum;
  readonly weight: number;
  readonly isPredicted: boolean;
}

function assemble(
  exam: Exam,
  statements: readonly (readonly Statement[])[],
  lead: Hypothesis,
  { supportingAtMost, againstAtMost, worthSaying }: ExplanationLimits,
): Explanation {
  const supporting: Draft[] = [];
  const against: Draft[] = [];
  const unexplained: Draft[] = [];
  let abnormal = 0;
  let accounted = 0;
  for (const parts of statements) {
    const weight = parts.reduce((sum, part) => sum + part.weight, 0);
    // A level or a region is one statement about many places: it is explained as far as its places are.
    const wrong = parts.filter(({ datum }) => datum.abnormal);
    const importance = wrong.reduce((sum, part) => sum + part.importance, 0);
    const explainedPart = wrong.reduce((sum, part) => sum + (part.explained ? part.importance : 0), 0);
    const isAbnormal = wrong.length > 0;
    const isAccounted = isAbnormal && explainedPart >= importance / 2;
    abnormal += importance;
    accounted += explainedPart;
    const speaker = strongest(isAbnormal ? wrong : parts);
    if (speaker === undefined) continue;
    const draft: Draft = { datum: speaker.datum, weight, isPredicted: isAbnormal ? isAccounted : weight > 0 };
    if (isAbnormal && !isAccounted) unexplained.push(draft);
    if (weight >= worthSaying && (!isAbnormal || isAccounted)) supporting.push(draft);
    else if (weight <= -worthSaying) against.push(draft);
  }
  const others = otherReasons(exam, lead);
  const inWords = (drafts: readonly Draft[], most: number): Evidence[] =>
    drafts
      .toSorted(heaviestDraft)
      .slice(0, most)
      .map(({ datum, weight, isPredicted }) => toEvidence(datum, weight, because(lead, datum, isPredicted)));
  return {
    supporting: [...inWords(supporting, supportingAtMost), ...others.filter(({ weight }) => weight > 0)].sort(heaviest),
    against: [...inWords(against, againstAtMost), ...others.filter(({ weight }) => weight < 0)].sort(heaviest),
    unexplained: inWords(unexplained, unexplained.length),
    fit: abnormal === 0 ? 1 : round(accounted / abnormal),
  };
}

const heaviestDraft = (a: Draft, b: Draft): number =>
  Math.abs(round(b.weight)) - Math.abs(round(a.weight)) || (a.datum.finding.id < b.datum.finding.id ? -1 : 1);

const heaviest = (a: Evidence, b: Evidence): number =>
  Math.abs(b.weight) - Math.abs(a.weight) || (a.findingId < b.findingId ? -1 : 1);

/** What was told, and the results that are back, as evidence about a site. */
function otherReasons(exam: Exam, { site }: Hypothesis): readonly Evidence[] {
  return allShifts(exam)
    .filter(({ applies, factor }) => Math.abs(Math.log(factor)) >= strongestOnly.worthSaying && applies(site))
    .map(({ pointer, text, factor, because: reason, abnormal, id }) => ({
      finding: pointer,
      side: 'midline',
      text,
      weight: round(Math.log(factor)),
      because: reason,
      abnormal,
      findingId: id,
    }));
}

function strongest(parts: readonly Statement[]): Statement | undefined {
  return parts.reduce<Statement | undefined>(
    (best, part) => (best === undefined || Math.abs(part.weight) > Math.abs(best.weight) ? part : best),
    undefined,
  );
}

function toEvidence(datum: Datum, weight: number, reason: string): Evidence {
  const { finding } = datum;
  return {
    finding: finding.pointer,
    side: finding.side,
    text: describeFinding(finding),
    weight: round(weight),
    because: reason,
    abnormal: finding.abnormal,
    findingId: finding.id,
  };
}

/** Four decimals: enough to rank, few enough that the order of a sum cannot show. */
export function round(value: number): number {
  return Math.round(value * 1e4) / 1e4 + 0;
}
