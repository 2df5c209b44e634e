import type { Exam } from '../exam/exam.ts';
import { closedColumns, contenderOf, type Engine, openTo, weigh } from './engine.ts';
import { type Explanation, everyReason, explain, round } from './explanation/explain.ts';
import { proposeNext } from './explanation/next-examination.ts';
import { hypotheses } from './hypotheses/hypotheses.ts';
import type { SiteGroup, SiteGroups } from './inference/site-groups.ts';
import type { NextExamination } from './localisation.ts';

/** What an exam says of a lesion that is known. */
export interface Confrontation {
  /** Probability that the engine gives to the site of the lesion, 0 to 1. */
  readonly probability: number;
  /** Every finding with its reason, seen from the lesion. */
  readonly explanation: Explanation;
  /** Untested items by how much they are expected to tell the lesion from its rival. */
  readonly tellingApart: readonly NextExamination[];
}

/** Leading sites that stand for all rivals where none is named. */
const rivalsAtMost = 4;

/**
 * Holds an exam against a lesion that is known.
 * @param lesion index among the hypotheses
 * @param rival  index of a hypothesis of the site that was taken for it; the leading other sites when left out
 * @throws RangeError for an index that no hypothesis has
 */
export function confront(exam: Exam, lesion: number, engine: Engine, rival?: number): Confrontation {
  const truth = hypotheses[lesion];
  if (truth === undefined) throw new RangeError(`there is no hypothesis ${lesion}`);
  const { columns, sites, open } = engine;
  const { context, data, inference, weights } = weigh(exam, engine);
  const group = groupOf(sites, lesion);
  const alone = [{ index: lesion, weight: 1 }];
  const { scored } = inference;
  const rivals =
    rival === undefined || sites.siteOf[rival] === sites.siteOf[lesion]
      ? inference.groups.filter((one) => one.group !== group).slice(0, rivalsAtMost)
      : [{ group: sameSite(sites, rival), probability: 1 }];
  const total = rivals.reduce((sum, { probability }) => sum + probability, 0);
  return {
    probability: round(inference.groups.find((one) => one.group === group)?.probability ?? 0),
    explanation: explain(exam, scored, alone, weights.outside(group), truth, everyReason),
    tellingApart: proposeNext(
      [
        { probability: total, site: truth.site, members: alone },
        ...rivals.flatMap(({ group: other, probability }) => contenderOf(other, probability, weights)),
      ],
      columns,
      openTo(exam, open()),
      closedColumns(data, exam.findings, columns),
      context,
    ),
  };
}

function groupOf({ groups, groupOf: places }: SiteGroups, index: number): SiteGroup {
  const group = groups[places[index] ?? 0];
  if (group === undefined) throw new RangeError(`there is no hypothesis ${index}`);
  return group;
}

/** The hypotheses of one site at one level. */
function sameSite(sites: SiteGroups, index: number): SiteGroup {
  const { id, members } = groupOf(sites, index);
  return { id, members: members.filter((one) => sites.siteOf[one] === sites.siteOf[index]) };
}
