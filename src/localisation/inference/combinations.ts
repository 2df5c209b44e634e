import type { SiteKind } from '../../anatomy/site-kind.ts';
import { type Hypothesis, hypothesis } from '../hypothesis.ts';
import { combineDamage } from '../lesion.ts';
import { isDiffuse } from '../localisation.ts';
import { combineProcesses, either, type FacultyChances } from '../process.ts';
import { CombinationPrior, type Companions } from './combination-prior.ts';
import { addRoughly, addTo, type Gains, roughness, type Scored, unexplainedBy, type WeighedDatum } from './score.ts';
import type { SiteGroups } from './site-groups.ts';

/** Several sites at once, with their joint score on the same scale as the single ones. */
export interface Combination {
  /** Indexes of the hypotheses, in the order in which they were found. */
  readonly members: readonly number[];
  readonly score: number;
  /** All members in one hypothesis, made when first asked for. */
  readonly combined: () => Hypothesis;
  /** State of every datum under all members together. */
  readonly states: Uint8Array;
}

/** How many promising combinations of one size are worked out exactly, and how many of those are built upon. */
const workedOut = 10;
const builtUpon = 3;
/** Estimates that differ by less than this, in nats, are equally promising. */
const asPromising = 1e-9;
/** Most sites in one answer. */
const sitesAtMost = 4;
/**
 * What must be left over for a further site to be looked for: weight in nats against health, and share of the weight of
 * everything abnormal. One soft sign in a long examination is no second lesion.
 */
const leftOver = { weight: 1.2, share: 0.08 } as const;

/** Whether enough abnormal findings are left over to look for a further site. */
export function isWorthAnotherSite(data: readonly WeighedDatum[], left: readonly WeighedDatum[]): boolean {
  const abnormal = data.filter((datum) => datum.abnormal);
  return weightOf(left) >= Math.max(leftOver.weight, leftOver.share * weightOf(abnormal));
}

/**
 * Joint explanations by two sites and more, exact for the most promising ones. A partner is promising when it explains
 * what is left over: for each datum the more abnormal of the two predictions is taken as an approximation.
 * @param starters indexes of the hypotheses to start from
 * @param logPicker and `companions`: see `CombinationPrior`
 * @returns best first
 */
export function findCombinations(
  hypotheses: readonly Hypothesis[],
  sites: SiteGroups,
  scored: Scored,
  logPrior: Float64Array,
  starters: readonly number[],
  logPicker: number,
  companions: readonly Companions[],
): readonly Combination[] {
  const prior = new CombinationPrior(hypotheses, sites, logPrior, logPicker, companions);
  const search = new Search(hypotheses, sites, scored, prior);
  let beam = starters.flatMap((index) => search.alone(index));
  const found: Combination[] = [];
  for (let size = 2; size <= sitesAtMost && beam.length > 0; size += 1) {
    const larger = size === 2 ? search.pairs(beam) : search.extend(beam);
    found.push(...larger);
    beam = larger.slice(0, builtUpon).filter((one) => search.leavesOver(one));
  }
  return found.sort(best);
}

const best = (a: Combination, b: Combination): number => b.score - a.score || compare(a.members, b.members);

function compare(a: readonly number[], b: readonly number[]): number {
  const first = a.findIndex((value, place) => value !== b[place]);
  return first === -1 ? a.length - b.length : (a[first] ?? 0) - (b[first] ?? 0);
}

const keyOf = ({ members }: Pick<Combination, 'members'>): string => [...members].sort((a, b) => a - b).join('+');

/** A combination that may be worth working out, with its approximate score. */
interface Prospect {
  readonly from: Combination;
  readonly partner: number;
  readonly estimate: number;
}

class Search {
  private readonly hypotheses: readonly Hypothesis[];
  private readonly sites: SiteGroups;
  private readonly scored: Scored;
  private readonly prior: CombinationPrior;
  /** By place of the datum and state under the combination. */
  private readonly besides: Beside[][] = [];
  private sumBesideHealth: Float64Array | undefined;

  constructor(hypotheses: readonly Hypothesis[], sites: SiteGroups, scored: Scored, prior: CombinationPrior) {
    this.hypotheses = hypotheses;
    this.sites = sites;
    this.scored = scored;
    this.prior = prior;
  }

  alone(index: number): readonly Combination[] {
    const combined = this.hypotheses[index];
    if (combined === undefined) return [];
    const states = Uint8Array.from(this.scored.data, (datum) => datum.states[index] ?? 0);
    return [{ members: [index], score: this.scored.score[index] ?? 0, combined: () => combined, states }];
  }

  leavesOver({ states }: Combination): boolean {
    return isWorthAnotherSite(this.scored.data, this.unexplained(states));
  }

  /**
   * Pairs from the starters, and from what was found beside the leading one: two sites that share the findings between them
   * may each alone be far behind one that explains most of them. What is widespread leads by itself where it is there.
   */
  pairs(starters: readonly Combination[]): Combination[] {
    const found = this.extend(starters);
    const known = new Set(starters.flatMap(({ members }) => members));
    // What is as good as the last one counts too, or the mirror image of an exam would have another answer.
    const least = (found[builtUpon - 1]?.score ?? Number.NEGATIVE_INFINITY) - asPromising;
    const leading = found.filter(({ score }) => score >= least);
    const seconds = [...new Set(leading.flatMap(({ members }) => members))].filter(
      (member) => !known.has(member) && !this.isWide(member),
    );
    const fromSeconds = this.extend(seconds.flatMap((second) => this.alone(second)));
    const keys = new Set(found.map(keyOf));
    const others = fromSeconds.filter(
      (one) => !keys.has(keyOf(one)) && !one.members.some((member) => this.isWide(member)),
    );
    return [...found, ...others].sort(best);
  }

  /** Every promising combination with one site more, worked out exactly, best first. */
  extend(beam: readonly Combination[]): Combination[] {
    const prospects = new Map<string, Prospect>();
    for (const from of beam) {
      for (const prospect of this.partners(from)) {
        const key = keyOf({ members: [...from.members, prospect.partner] });
        const known = prospects.get(key);
        if (known === undefined || prospect.estimate > known.estimate) prospects.set(key, prospect);
      }
    }
    const ranked = [...prospects.values()].sort((a, b) => b.estimate - a.estimate || a.partner - b.partner);
    const least = ranked[workedOut - 1]?.estimate ?? Number.NEGATIVE_INFINITY;
    // What is as promising as the last one is worked out too, or the mirror image of an exam would have another answer.
    return ranked
      .filter(({ estimate }) => estimate >= least - asPromising)
      .flatMap((prospect) => this.workOut(prospect))
      .sort(best);
  }

  private workOut({ from, partner }: Prospect): readonly Combination[] {
    const other = this.hypotheses[partner];
    if (other === undefined) return [];
    let both: Hypothesis | undefined;
    const combined = (): Hypothesis => {
      both ??= combine(from.combined(), other);
      return both;
    };
    const states = Uint8Array.from(this.scored.data, (datum, place) =>
      jointState(datum, from.states[place] ?? 0, datum.states[partner] ?? 0, combined),
    );
    const members = [...from.members, partner];
    let score = this.prior.besides(from.members)(partner);
    this.scored.data.forEach(({ logs, weight }, place) => {
      score += weight * (logs[states[place] ?? 0] ?? 0);
    });
    return [{ members, score, combined, states }];
  }

  private unexplained(states: Uint8Array): readonly WeighedDatum[] {
    return unexplainedBy(this.scored, (_, place) => states[place] ?? 0);
  }

  /**
   * The best extent of each site that may stand beside a combination and explains something that it leaves over. For each
   * datum the more abnormal of the two predictions is taken. Those that cannot be among the most promising are left out.
   */
  private partners(from: Combination): readonly Prospect[] {
    const candidates = this.candidates(from);
    const logPrior = this.prior.besides(from.members);
    const data = this.beside(from);
    const estimates = Float64Array.from(this.besideHealth());
    for (const index of candidates) estimates[index] = (estimates[index] ?? 0) + logPrior(index);
    addRoughly(
      estimates,
      data.flatMap(({ fromHealth }) => fromHealth ?? []),
    );
    const ranked = this.bestOfSites(estimates, candidates).map((index) => estimates[index] ?? 0);
    const bar = ranked.sort((a, b) => b - a)[workedOut - 1] ?? Number.NEGATIVE_INFINITY;
    const promising = candidates.filter((index) => (estimates[index] ?? 0) >= bar - roughness);
    for (const index of promising) estimates[index] = logPrior(index);
    addTo(estimates, data, promising);
    return this.bestOfSites(estimates, promising).map((partner) => ({
      from,
      partner,
      estimate: estimates[partner] ?? 0,
    }));
  }

  /** The best hypothesis of each site. */
  private bestOfSites(estimates: Float64Array, indexes: Uint16Array): readonly number[] {
    const best = new Map<number, number>();
    for (const index of indexes) {
      const site = this.sites.siteOf[index] ?? 0;
      const known = best.get(site);
      if (known === undefined || (estimates[index] ?? 0) > (estimates[known] ?? 0)) best.set(site, index);
    }
    return [...best.values()];
  }

  /** What all data add to a candidate beside health; other combinations differ from that in what they affect. */
  private besideHealth(): Float64Array {
    if (this.sumBesideHealth === undefined) {
      this.sumBesideHealth = new Float64Array(this.hypotheses.length);
      addRoughly(
        this.sumBesideHealth,
        this.scored.data.map((datum) => besideState(datum, datum.healthy)),
      );
    }
    return this.sumBesideHealth;
  }

  /** What each datum adds to a candidate beside a combination. */
  private beside({ states }: Combination): readonly Beside[] {
    return this.scored.data.map((datum, place) => {
      const own = states[place] ?? 0;
      const kept = this.besides[place] ?? [];
      this.besides[place] = kept;
      kept[own] ??= besideState(datum, own);
      return kept[own];
    });
  }

  /** Hypotheses that may stand beside a combination and explain something that it leaves over. */
  private candidates(from: Combination): Uint16Array {
    const left = this.unexplained(from.states);
    const isBarred = this.barredBy(from.members);
    const found = new Uint16Array(this.hypotheses.length);
    let count = 0;
    for (let index = 0; index < found.length; index += 1) {
      if (!explainsAny(left, index) || isBarred(index)) continue;
      found[count] = index;
      count += 1;
    }
    return found.subarray(0, count);
  }

  private isWide(index: number): boolean {
    const site = this.hypotheses[index]?.site;
    return site !== undefined && isDiffuse(site);
  }

  /** Focal sites may stand together, also within one diffuse process; two diffuse processes would explain anything. */
  private barredBy(members: readonly number[]): (index: number) => boolean {
    const kindOf = (index: number): SiteKind => this.hypotheses[index]?.site.kind ?? 'none';
    const { siteOf } = this.sites;
    const isHealthAmong = members.some((member) => kindOf(member) === 'none');
    const isProcessAmong = members.some((member) => this.isWide(member));
    return (index) => {
      const kind = kindOf(index);
      if (isHealthAmong || kind === 'none' || (isProcessAmong && this.isWide(index))) return true;
      for (const member of members) if (siteOf[member] === siteOf[index]) return true;
      return false;
    };
  }
}

function explainsAny(data: readonly WeighedDatum[], index: number): boolean {
  for (const { reading, states } of data) if (reading.explains[states[index] ?? 0] === 1) return true;
  return false;
}

/** What a datum adds to the estimate of a candidate, by the state in which the candidate alone would leave the item. */
interface Beside extends Gains {
  /** How that differs from what it adds beside health; absent where the combination leaves the item as health does. */
  readonly fromHealth?: Gains;
}

function besideState(datum: WeighedDatum, state: number): Beside {
  const { states, affected, healthy, weight } = datum;
  const logs = moreAbnormal(datum, state);
  const beside = { states, affected, healthy, weight, logs };
  if (state === healthy) return beside;
  const health = moreAbnormal(datum, healthy);
  return { ...beside, fromHealth: { ...beside, logs: logs.map((log, other) => log - (health[other] ?? 0)) } };
}

/** By state of the candidate, the log of the chance that the more abnormal of its prediction and another gives. */
function moreAbnormal({ logs, abnormal }: WeighedDatum, state: number): Float64Array {
  const own = logs[state] ?? 0;
  const both = new Float64Array(logs.length);
  for (let other = 0; other < both.length; other += 1) {
    const theirs = logs[other] ?? 0;
    both[other] = abnormal ? Math.max(own, theirs) : Math.min(own, theirs);
  }
  return both;
}

/** Weight of data, in nats against health. */
function weightOf(data: readonly WeighedDatum[]): number {
  return data.reduce((sum, { logs, weight, healthy }) => sum - weight * (logs[healthy] ?? 0), 0);
}

/** State of an item under both: where one of the two leaves it as in health, that of the other. */
function jointState({ healthy, column }: WeighedDatum, one: number, other: number, combined: () => Hypothesis): number {
  if (one === healthy) return other;
  return other === healthy ? one : column.model.state(combined());
}

/** Both at once: structures and faculties keep what both leave over. */
function combine(one: Hypothesis, other: Hypothesis): Hypothesis {
  const process = combineProcesses(one.process, other.process);
  const keys = new Set([...one.faculties.keys(), ...other.faculties.keys()]);
  const faculties: FacultyChances = new Map(
    [...keys].map((key) => [key, either(one.faculties.get(key) ?? 0, other.faculties.get(key) ?? 0)]),
  );
  return hypothesis(
    {
      key: 'combined',
      label: `${one.site.label} and ${other.site.label}`,
      side: null,
      level: null,
      kind: 'multiple-sites',
    },
    'combination',
    one.frequency * other.frequency,
    combineDamage(one.pathways.damage, other.pathways.damage),
    { process, faculties },
  );
}
