import type { SiteKind } from '../../anatomy/site-kind.ts';
import { noLesionIndex } from '../hypotheses/hypotheses.ts';
import type { Hypothesis } from '../hypothesis.ts';
import type { Companions } from './combination-prior.ts';
import { type Combination, findCombinations, isWorthAnotherSite } from './combinations.ts';
import { scatteredKinds } from './scattering.ts';
import { type Scored, softmax, unexplainedBy } from './score.ts';
import type { SiteGroup, SiteGroups } from './site-groups.ts';

/** What the evidence says about every single site, and about several at once where a single one does not suffice. */
export interface Inference {
  readonly scored: Scored;
  /** Probability of each hypothesis as the only lesion; with `combinations` it sums to 1. */
  readonly single: Float64Array;
  readonly combinations: readonly { readonly combination: Combination; readonly probability: number }[];
  /** Probability that a group's site is damaged, alone or with others; likeliest first, those without any chance left out. */
  readonly groups: readonly { readonly group: SiteGroup; readonly probability: number }[];
}

/** A probability below this is 0 to four decimals. */
const anyChance = 4e-5;

/**
 * Probabilities over single sites and, when the best single ones leave abnormal findings over, over pairs of sites.
 * Method: tempered naive Bayes; see `evidence.ts` for the weights.
 * @param logPicker natural log of how much likelier a disease that picks out single nerves is for this person
 * @param companions reasons for which two sites are found together in this person; asked for when several are looked for
 * @param torn kinds of place of which an injury has struck several, which are looked for though one place would explain everything
 */
export function infer(
  hypotheses: readonly Hypothesis[],
  sites: SiteGroups,
  scored: Scored,
  logPrior: Float64Array,
  logPicker: number,
  companions: () => readonly Companions[] = () => [],
  torn: ReadonlySet<SiteKind> = new Set(),
): Inference {
  const alone = softmax(scored.score);
  const order = bestOfLeadingGroups(sites.groups, alone);
  const isPickedApart = logPicker >= logPickerLikely;
  const isWanting = leadingOf(hypotheses, order, sites, alone).some((index) => leavesOver(scored, index));
  const starters = [
    ...new Set([
      ...(isWanting ? startersOf(order, alone) : []),
      ...(isPickedApart ? leadingOfKinds(pickedOut, hypotheses, sites.groups, alone) : []),
      ...leadingOfKinds(torn, hypotheses, sites.groups, alone),
    ]),
  ];
  const found =
    starters.length === 0
      ? []
      : findCombinations(hypotheses, sites, scored, logPrior, starters, logPicker, companions());
  const joint = found.length === 0 ? alone : softmax(withCombinations(scored.score, found));
  const combinations = found.map((combination, index) => ({
    combination,
    probability: joint[hypotheses.length + index] ?? 0,
  }));
  return {
    scored,
    single: joint.subarray(0, hypotheses.length),
    combinations,
    groups: marginal(sites, joint, combinations),
  };
}

function withCombinations(score: Float64Array, found: readonly Combination[]): Float64Array {
  const all = new Float64Array(score.length + found.length);
  all.set(score);
  found.forEach((combination, index) => {
    all[score.length + index] = combination.score;
  });
  return all;
}

function marginal(
  { groups, groupOf }: SiteGroups,
  single: Float64Array,
  combinations: Inference['combinations'],
): Inference['groups'] {
  const shared = new Float64Array(groups.length);
  for (const { combination, probability } of combinations) {
    for (const place of new Set(combination.members.map((member) => groupOf[member] ?? 0)))
      shared[place] = (shared[place] ?? 0) + probability;
  }
  const own = Float64Array.from(groups, ({ members }) => {
    let sum = 0;
    for (const member of members) sum += single[member] ?? 0;
    return sum;
  });
  return groups
    .flatMap((group, place) => {
      const probability = (own[place] ?? 0) + (shared[place] ?? 0);
      return probability >= anyChance ? [{ group, probability }] : [];
    })
    .sort((a, b) => b.probability - a.probability || (a.group.id < b.group.id ? -1 : 1));
}

/**
 * Odds from which a disease that picks out single nerves is so likely in this person that several nerves are looked for
 * though one place would explain everything. Judged.
 */
const logPickerLikely = Math.log(4);

const pickedOut: ReadonlySet<SiteKind> = new Set(['nerve']);

/** The likeliest single places of these kinds. */
function leadingOfKinds(
  kinds: ReadonlySet<SiteKind>,
  hypotheses: readonly Hypothesis[],
  groups: readonly SiteGroup[],
  alone: Float64Array,
): readonly number[] {
  if (kinds.size === 0) return [];
  const own = groups.filter(({ members }) => kinds.has(hypotheses[members[0] ?? 0]?.site.kind ?? 'none'));
  return bestOfLeadingGroups(own, alone).slice(0, startersAtLeast);
}

/** Single sites from which a search for a second one starts: the leading ones, and at least these many. */
const startersAtLeast = 2;
const startersAtMost = 4;
const starterFrom = 0.01;

/** The best hypothesis of each of the leading groups, one more of them than starters are needed; best first. */
function bestOfLeadingGroups(groups: readonly SiteGroup[], posterior: Float64Array): readonly number[] {
  const at = (index: number): number => posterior[index] ?? 0;
  const leading: number[] = [];
  for (const { members } of groups) {
    let best = members[0] ?? 0;
    for (const member of members) if (at(member) > at(best)) best = member;
    const isBehind = (other: number | undefined): boolean =>
      other !== undefined && (at(other) < at(best) || (at(other) === at(best) && other > best));
    if (leading.length > startersAtMost && !isBehind(leading.at(-1))) continue;
    const place = leading.findIndex(isBehind);
    leading.splice(place === -1 ? leading.length : place, 0, best);
    leading.length = Math.min(leading.length, startersAtMost + 1);
  }
  return leading;
}

/**
 * How likely a site must be for what it leaves over to ask for a second one: in its best extent, and in all of them for places of
 * brain and cord, whose extents and levels are so many that none of them is likely by itself.
 */
const askedFrom = 0.1;

function leadingOf(
  hypotheses: readonly Hypothesis[],
  order: readonly number[],
  { groups, groupOf }: SiteGroups,
  alone: Float64Array,
): readonly number[] {
  const at = (index: number): number => alone[index] ?? 0;
  return order.slice(0, 3).filter((index) => {
    if (at(index) > askedFrom) return true;
    const kind = hypotheses[index]?.site.kind;
    if (kind === undefined || !scatteredKinds.has(kind)) return false;
    const members = groups[groupOf[index] ?? 0]?.members ?? [];
    return members.reduce((sum, member) => sum + at(member), 0) > askedFrom;
  });
}

function startersOf(order: readonly number[], alone: Float64Array): readonly number[] {
  return order
    .filter((index) => index !== noLesionIndex)
    .slice(0, startersAtMost)
    .filter((index, place) => place < startersAtLeast || (alone[index] ?? 0) >= starterFrom);
}

/** Whether a hypothesis leaves enough abnormal findings over to look for a second one. */
function leavesOver(scored: Scored, hypothesis: number): boolean {
  return isWorthAnotherSite(
    scored.data,
    unexplainedBy(scored, ({ states }) => states[hypothesis] ?? 0),
  );
}
