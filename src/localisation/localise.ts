/**
 * Where the lesion is: reads an exam, weighs every hypothesis, names the leading sites with their reasons. Pure; the
 * state columns it keeps are only a cache.
 */
import type { Exam } from '../exam/exam.ts';
import type { Finding } from '../exam/finding.ts';
import { conclude } from './explanation/conclusion.ts';
import { type Explanation, explain, type Mixture, round } from './explanation/explain.ts';
import { type Contender, proposeNext } from './explanation/next-examination.ts';
import { describePattern } from './explanation/pattern.ts';
import { hypotheses, noLesionIndex } from './hypotheses/hypotheses.ts';
import type { Hypothesis, Site } from './hypothesis.ts';
import { columnName, StateColumns } from './inference/columns.ts';
import { type Datum, gatherEvidence } from './inference/evidence.ts';
import { type Inference, infer } from './inference/infer.ts';
import { logPriors } from './inference/prior.ts';
import { isExplained, scoreHypotheses } from './inference/score.ts';
import { groupSites, levelOf, type SiteGroup } from './inference/site-groups.ts';
import type { Localisation, RankedLocalisation } from './localisation.ts';
import { contextOf } from './observation/context.ts';
import { severalNerves, siteCoding } from './sites.ts';

export interface Localiser {
  readonly localise: (exam: Exam) => Localisation;
}

/** Sites less likely than this are not listed, beyond the first three. */
const listedFrom = 0.01;
const listedAtMost = 8;
const listedAtLeast = 3;
/** How many sites the next examination tells apart. */
const contendersAtMost = 8;

export function createLocaliser(): Localiser {
  const columns = new StateColumns(hypotheses);
  const groups = groupSites(hypotheses);
  return { localise: (exam) => localise(exam, columns, groups) };
}

function localise(exam: Exam, columns: StateColumns, groups: readonly SiteGroup[]): Localisation {
  const context = contextOf(exam);
  const data = gatherEvidence(exam.findings, columns);
  const logPrior = logPriors(hypotheses, exam);
  const scored = scoreHypotheses(data, columns, context, logPrior);
  const inference = infer(hypotheses, groups, scored, logPrior);
  const ranked = rank(exam, inference);
  const pairProbability = inference.pairs.reduce((sum, { probability }) => sum + probability, 0);
  const conclusion = conclude(exam.findings, ranked, pairProbability, jointFit(inference));
  return {
    localisations: ranked,
    pattern: describePattern(exam.findings, ranked[0]),
    conclusion,
    nextExamination: proposeNext(contenders(inference), columns, closed(data, exam.findings), context),
  };
}

/** Share of the abnormal data that the best pair accounts for. */
function jointFit({ pairs, scored }: Inference): number {
  const best = pairs[0]?.pair.combined;
  const wrong = scored.data.filter((datum) => datum.abnormal);
  if (best === undefined || wrong.length === 0) return 0;
  const explained = wrong.filter((datum) =>
    isExplained(datum, datum.table.abnormal[datum.column.model.state(best)] ?? 0, datum.states[noLesionIndex] ?? 0),
  );
  return explained.length / wrong.length;
}

function normalised(members: readonly number[], weightOf: (index: number) => number): Mixture {
  const total = members.reduce((sum, index) => sum + weightOf(index), 0);
  return {
    members: members
      .map((index) => ({ index, weight: total === 0 ? 1 / members.length : weightOf(index) / total }))
      .filter(({ weight }) => weight > 1e-4),
  };
}

function rank(exam: Exam, inference: Inference): readonly RankedLocalisation[] {
  const weightOf = weights(inference);
  const everyIndex = hypotheses.map((_, index) => index);
  const listed = inference.groups.filter(
    ({ probability }, place) => place < listedAtLeast || (place < listedAtMost && probability >= listedFrom),
  );
  const single = listed.map(({ group, probability }): RankedLocalisation => {
    const site = normalised(group.members, weightOf);
    const inside = new Set(group.members);
    const rivals = normalised(
      everyIndex.filter((index) => !inside.has(index)),
      weightOf,
    );
    const lead =
      hypotheses[
        site.members.reduce(
          (best, member) => (member.weight > best.weight ? member : best),
          site.members[0] ?? { index: 0, weight: 0 },
        ).index
      ] ?? hypotheses[0];
    if (lead === undefined) throw new RangeError('there is always a hypothesis');
    return toRanked(
      lead,
      group,
      probability,
      weightOf,
      explain(exam, inference.scored, site, rivals, noLesionIndex, lead),
    );
  });
  return withSeveralNerves(inference, single);
}

/** Posterior weight of each hypothesis, alone or as one of two. */
function weights(inference: Inference): (index: number) => number {
  const joint = Float64Array.from(inference.single);
  for (const { pair, probability } of inference.pairs) {
    joint[pair.first] = (joint[pair.first] ?? 0) + probability;
    joint[pair.second] = (joint[pair.second] ?? 0) + probability;
  }
  return (index) => joint[index] ?? 0;
}

function toRanked(
  lead: Hypothesis,
  group: SiteGroup,
  probability: number,
  weightOf: (index: number) => number,
  explanation: Explanation,
): RankedLocalisation {
  const joint = Float64Array.from(hypotheses, (_, index) => weightOf(index));
  const levels = levelOf(group.members, hypotheses, joint);
  const named: Site =
    levels === null
      ? lead.site
      : {
          ...lead.site,
          level: levels.level,
          label:
            lead.site.kind === 'cord' ? lead.site.label.replace(/ at \w+,/, ` at ${levels.level},`) : lead.site.label,
        };
  return {
    site: named.key,
    label: named.label,
    side: named.side,
    level: named.level,
    levelRange: levels === null ? null : levels.range,
    kind: named.kind,
    code: siteCoding(named),
    probability: round(probability),
    fit: explanation.fit,
    supporting: explanation.supporting,
    against: explanation.against,
    unexplained: explanation.unexplained,
  };
}

/** When two different nerves are the answer, the process that picks out single nerves is named before them. */
function withSeveralNerves(inference: Inference, single: readonly RankedLocalisation[]): readonly RankedLocalisation[] {
  const nervePairs = inference.pairs.filter(({ pair }) =>
    [pair.first, pair.second].every((index) => hypotheses[index]?.site.kind === 'nerve'),
  );
  const probability = nervePairs.reduce((sum, pair) => sum + pair.probability, 0);
  const [first, second] = single;
  if (
    probability <= 0.5 ||
    first === undefined ||
    second === undefined ||
    first.kind !== 'nerve' ||
    second.kind !== 'nerve'
  )
    return single;
  const named = (one: RankedLocalisation): string =>
    `${one.side ?? ''} ${one.label.charAt(0).toLowerCase()}${one.label.slice(1)}`.trim();
  const seen = new Set<string>();
  const supporting = [...first.supporting, ...second.supporting].filter(
    ({ findingId, weight }) => weight > 0 && !seen.has(findingId) && seen.add(findingId),
  );
  const left = first.unexplained.filter(({ findingId }) =>
    second.unexplained.some((other) => other.findingId === findingId),
  );
  const several: RankedLocalisation = {
    site: severalNerves.key,
    label: `${severalNerves.label}: ${named(first)} and ${named(second)}`,
    side: first.side === second.side ? first.side : 'both',
    level: null,
    levelRange: null,
    kind: severalNerves.kind,
    code: siteCoding(severalNerves),
    probability: round(probability),
    fit: round(Math.min(1, first.fit + second.fit)),
    supporting,
    against: [],
    unexplained: left,
  };
  return [several, ...single];
}

function contenders(inference: Inference): readonly Contender[] {
  const weightOf = weights(inference);
  return inference.groups
    .slice(0, contendersAtMost)
    .filter(({ probability }) => probability > 0.004)
    .map(({ group, probability }) => ({
      probability,
      members: normalised(group.members, weightOf)
        .members.toSorted((a, b) => b.weight - a.weight)
        .slice(0, 4),
    }));
}

/** What is not worth proposing: what has been tested, and what could not be. */
function closed(data: readonly Datum[], findings: readonly Finding[]): ReadonlySet<string> {
  const untestable = findings
    .filter((finding) => finding.value === null && finding.notTested !== 'not-done')
    .map(({ item, side, place }) => columnName(place === undefined ? { item, side } : { item, side, place }));
  return new Set([...data.map(({ column }) => column.name), ...untestable]);
}
