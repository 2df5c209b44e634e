/**
 * What is worked out once and used for every exam, and how an exam is weighed with it. Pure; the state columns it keeps are
 * only a cache.
 */

import { items } from '../exam/catalogue/catalogue.ts';
import { canBeAskedFor, isGradeOfConsciousness } from '../exam/catalogue/cooperation.ts';
import type { Exam } from '../exam/exam.ts';
import type { Finding } from '../exam/finding.ts';
import { bodySides } from '../kernel/side.ts';
import type { CompiledModel } from './compiled-model.ts';
import { type OpenColumn, openColumns, proposeNext } from './explanation/next-examination.ts';
import { hypotheses, noLesionIndex } from './hypotheses/hypotheses.ts';
import { severalNerves } from './hypotheses/process-signs.ts';
import { type Column, StateColumns } from './inference/columns.ts';
import type { Companions } from './inference/combination-prior.ts';
import { Coverage } from './inference/coverage.ts';
import { type Datum, gatherEvidence, hasPassed } from './inference/evidence.ts';
import { type Inference, infer } from './inference/infer.ts';
import type { Contender } from './inference/information-gain.ts';
import { KnownIllness } from './inference/known-illness.ts';
import { logShiftOf, Priors } from './inference/prior.ts';
import { PosteriorWeights } from './inference/ranking.ts';
import { Scattering } from './inference/scattering.ts';
import { scoreHypotheses } from './inference/score.ts';
import { SharedInjury, tornKinds } from './inference/shared-injury.ts';
import { groupSites, type SiteGroup, type SiteGroups } from './inference/site-groups.ts';
import type { NextExamination } from './localisation.ts';
import { type Context, contextOf } from './observation/context.ts';

/** What is worked out once and used for every exam. */
export interface Engine {
  readonly columns: StateColumns;
  readonly open: () => readonly OpenColumn[];
  readonly sites: SiteGroups;
  readonly priors: Priors;
  readonly coverage: Coverage;
}

export function createEngine(compiled: CompiledModel | null): Engine {
  const columns = new StateColumns(hypotheses, noLesionIndex, compiled?.states);
  let open: readonly OpenColumn[] | undefined;
  return {
    columns,
    open: () => {
      open ??= openColumns(columns);
      return open;
    },
    sites: groupSites(hypotheses),
    priors: new Priors(hypotheses),
    coverage: new Coverage(hypotheses, compiled?.complaints),
  };
}

/** One exam against every hypothesis. */
export interface Weighed {
  readonly context: Context;
  readonly data: readonly Datum[];
  readonly inference: Inference;
  readonly weights: PosteriorWeights;
}

export function weigh(exam: Exam, { columns, sites, priors, coverage }: Engine): Weighed {
  const context = contextOf(exam);
  const data = gatherEvidence(exam.findings, columns, hasPassed(exam));
  const logPrior = priors.logWeights(exam);
  coverage.discount(logPrior, exam);
  const scored = scoreHypotheses(data, columns, context, logPrior, noLesionIndex);
  const companions = (): readonly Companions[] => [
    new Scattering(exam, hypotheses, logPrior),
    new KnownIllness(exam, hypotheses, logPrior),
    new SharedInjury(exam, hypotheses),
  ];
  const picker = logShiftOf(severalNerves, exam);
  const inference = infer(hypotheses, sites, scored, logPrior, picker, companions, tornKinds(exam));
  return { context, data, inference, weights: new PosteriorWeights(inference, hypotheses) };
}

/** Leading sites that the next examination tells apart, and how likely one must be to count. */
const contendersAtMost = 8;
const contenderFrom = 0.004;
/** Hypotheses that stand for each of them. */
const membersAtMost = 6;

function contenders({ inference, weights }: Weighed): readonly Contender[] {
  return inference.groups
    .slice(0, contendersAtMost)
    .filter(({ probability }) => probability > contenderFrom)
    .flatMap(({ group, probability }) => contenderOf(group, probability, weights));
}

/** A site as one of those to be told apart; none where nothing stands for it. */
export function contenderOf(group: SiteGroup, probability: number, weights: PosteriorWeights): readonly Contender[] {
  const site = weights.spokesman(group)?.site;
  return site === undefined ? [] : [{ probability, site, members: weights.heaviest(group, membersAtMost) }];
}

/** What is worth examining next. */
export function nextOf(exam: Exam, weighed: Weighed, { columns, open }: Engine): readonly NextExamination[] {
  const { data, context } = weighed;
  return proposeNext(
    contenders(weighed),
    columns,
    openTo(exam, open()),
    closedColumns(data, exam.findings, columns),
    context,
  );
}

/** What this patient can be examined for. */
export function openTo(exam: Exam, open: readonly OpenColumn[]): readonly OpenColumn[] {
  const canBeAsked = canBeAskedFor(exam);
  return open.filter(({ candidate }) => canBeAsked(candidate.target.item));
}

/** What is not worth proposing: what has been tested, and what could not be. */
export function closedColumns(
  data: readonly Datum[],
  findings: readonly Finding[],
  columns: StateColumns,
): ReadonlySet<Column> {
  const columnsClosed = new Set(data.map(({ column }) => column));
  for (const finding of findings) {
    const { item, side, value, notTested } = finding;
    if (notTested === 'not-done') continue;
    // What was said without a side, of what could have one, was looked at on both.
    const isUnsided = item.sides === 'optional' && side === 'midline';
    const onBoth = isUnsided ? bodySides.map((one) => ({ ...finding, side: one })) : [];
    for (const target of value === null ? [finding, ...onBoth] : onBoth) {
      const column = columns.column(target);
      if (column !== null) columnsClosed.add(column);
    }
  }
  // Who was found comatose is not looked at for drowsiness, nor for coma who was found awake.
  if (findings.some(({ item, value }) => value !== null && isGradeOfConsciousness(item))) {
    for (const item of items.filter(isGradeOfConsciousness)) {
      const column = columns.column({ item, side: 'midline' });
      if (column !== null) columnsClosed.add(column);
    }
  }
  return columnsClosed;
}
