import { noLesionIndex } from '../hypotheses/hypotheses.ts';
import type { Hypothesis } from '../hypothesis.ts';
import { type Combination, findCombinations, isWorthAnotherSite } from './combinations.ts';
import { type Scored, softmax, unexplainedBy } from './score.ts';
import type { SiteGroup } from './site-groups.ts';

/** What the evidence says about every single site, and about several at once where a single one does not suffice. */
export interface Inference {
  readonly scored: Scored;
  /** Probability of each hypothesis as the only lesion; with `combinations` it sums to 1. */
  readonly single: Float64Array;
  readonly combinations: readonly { readonly combination: Combination; readonly probability: number }[];
  /** Probability that a group's site is damaged, alone or with others. */
  readonly groups: readonly { readonly group: SiteGroup; readonly probability: number; readonly alone: number }[];
}

/**
 * Probabilities over single sites and, when the best single ones leave abnormal findings over, over pairs of sites.
 * Method: tempered naive Bayes; see `evidence.ts` for the weights.
 */
export function infer(
  hypotheses: readonly Hypothesis[],
  groups: readonly SiteGroup[],
  scored: Scored,
  logPrior: Float64Array,
): Inference {
  const alone = softmax(scored.score);
  const order = bestOfEachGroup(groups, alone);
  const isWanting = order.slice(0, 3).some((index) => (alone[index] ?? 0) > 0.1 && leavesOver(scored, index));
  const starters = isWanting ? startersOf(order, alone) : [];
  const found = starters.length === 0 ? [] : findCombinations(hypotheses, scored, logPrior, starters, noLesionIndex);
  const joint = softmax([...scored.score, ...found.map(({ score }) => score)]);
  const single = joint.slice(0, hypotheses.length);
  const combinations = found.map((combination, index) => ({
    combination,
    probability: joint[hypotheses.length + index] ?? 0,
  }));
  const marginal = groups.map((group) => {
    const inside = new Set(group.members);
    const own = group.members.reduce((sum, member) => sum + (single[member] ?? 0), 0);
    const shared = combinations.reduce(
      (sum, { combination, probability }) =>
        sum + (combination.members.some((member) => inside.has(member)) ? probability : 0),
      0,
    );
    return { group, probability: own + shared, alone: own };
  });
  return {
    scored,
    single,
    combinations,
    groups: marginal.sort((a, b) => b.probability - a.probability || (a.group.id < b.group.id ? -1 : 1)),
  };
}

function bestOfEachGroup(groups: readonly SiteGroup[], posterior: Float64Array): readonly number[] {
  const at = (index: number): number => posterior[index] ?? 0;
  return groups
    .map(({ members }) => members.reduce((best, member) => (at(member) > at(best) ? member : best), members[0] ?? 0))
    .sort((a, b) => at(b) - at(a) || a - b);
}

/** Single sites from which a search for a second one starts: the leading ones, and at least these many. */
const startersAtLeast = 2;
const startersAtMost = 4;
const starterFrom = 0.01;

function startersOf(order: readonly number[], alone: Float64Array): readonly number[] {
  return order
    .filter((index) => index !== noLesionIndex)
    .slice(0, startersAtMost)
    .filter((index, place) => place < startersAtLeast || (alone[index] ?? 0) >= starterFrom);
}

/** Whether a hypothesis leaves enough abnormal findings over to look for a second one. */
function leavesOver(scored: Scored, hypothesis: number): boolean {
  const left = unexplainedBy(scored, ({ states }) => states[hypothesis] ?? 0, noLesionIndex);
  return isWorthAnotherSite(scored.data, left, noLesionIndex);
}
