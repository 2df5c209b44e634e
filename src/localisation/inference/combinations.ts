import { type Hypothesis, hypothesis, siteId } from '../hypothesis.ts';
import { combineDamage } from '../lesion.ts';
import { isDiffuse, type SiteKind } from '../localisation.ts';
import type { FacultyChances, Process } from '../process.ts';
import { explains, logChance, type Scored, unexplainedBy, type WeighedDatum } from './score.ts';

/** Several sites at once, with their joint score on the same scale as the single ones. */
export interface Combination {
  /** Indexes of the hypotheses, in the order in which they were found. */
  readonly members: readonly number[];
  readonly score: number;
  readonly combined: Hypothesis;
  /** State of every datum under all members together. */
  readonly states: Uint8Array;
}

/** How many promising combinations of one size are worked out exactly, and how many of those are built upon. */
const workedOut = 10;
const builtUpon = 3;
/** Most sites in one answer. */
const sitesAtMost = 4;
/**
 * What must be left over for a further site to be looked for: weight in nats against health, and share of the weight of
 * everything abnormal. One soft sign in a long examination is no second lesion.
 */
const leftOver = { weight: 1.2, share: 0.08 } as const;

/** Whether enough abnormal findings are left over to look for a further site. */
export function isWorthAnotherSite(
  data: readonly WeighedDatum[],
  left: readonly WeighedDatum[],
  health: number,
): boolean {
  const abnormal = data.filter((datum) => datum.abnormal);
  return weightOf(left, health) >= Math.max(leftOver.weight, leftOver.share * weightOf(abnormal, health));
}

/**
 * Prior weight of a further independent lesion in one person, on top of the product of the lesions' own priors. Judged:
 * about one examination in 25 has two. Commoner than chance are the same site on both sides (both wrists, both elbows)
 * and several single nerves; and a process that has picked out two peripheral sites goes on to a third.
 */
const anotherLesion = { unrelated: 0.08, sameSiteOtherSide: 0.5, twoNerves: 0.4, onePeripheralMore: 0.6 } as const;

/**
 * A disease that picks out single nerves (vasculitis, neuralgic amyotrophy, conduction block): how often it is met, and
 * the chance that it has hit a given nerve to a given extent. Judged.
 */
const nervePicker = 0.012;
const pickedNerve = 0.035;

/**
 * Joint explanations by two sites and more, exact for the most promising ones. A partner is promising when it explains
 * what is left over: for each datum the more abnormal of the two predictions is taken as an approximation.
 * @param starters indexes of the hypotheses to start from
 * @param health   index of the hypothesis that nothing is wrong
 * @returns best first
 */
export function findCombinations(
  hypotheses: readonly Hypothesis[],
  scored: Scored,
  logPrior: Float64Array,
  starters: readonly number[],
  health: number,
): readonly Combination[] {
  const search = new Search(hypotheses, scored, logPrior, health);
  let beam = starters.flatMap((index) => search.alone(index));
  const found: Combination[] = [];
  for (let size = 2; size <= sitesAtMost && beam.length > 0; size += 1) {
    const larger = search.extend(beam);
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

/** Natural logs of the prior of a combination: of unrelated lesions, and the greater of that and one disease of nerves. */
interface LogPrior {
  readonly independent: number;
  readonly log: number;
}

/** A combination that may be worth working out, with its approximate score. */
interface Prospect {
  readonly from: Combination;
  readonly partner: number;
  readonly estimate: number;
}

class Search {
  private readonly hypotheses: readonly Hypothesis[];
  private readonly scored: Scored;
  private readonly logPrior: Float64Array;
  private readonly health: number;
  private readonly logTotal: number;

  constructor(hypotheses: readonly Hypothesis[], scored: Scored, logPrior: Float64Array, health: number) {
    this.hypotheses = hypotheses;
    this.scored = scored;
    this.logPrior = logPrior;
    this.health = health;
    this.logTotal = logSum(logPrior);
  }

  alone(index: number): readonly Combination[] {
    const combined = this.hypotheses[index];
    if (combined === undefined) return [];
    const states = Uint8Array.from(this.scored.data, (datum) => datum.states[index] ?? 0);
    return [{ members: [index], score: this.scored.score[index] ?? 0, combined, states }];
  }

  leavesOver({ states }: Combination): boolean {
    return isWorthAnotherSite(this.scored.data, this.unexplained(states), this.health);
  }

  /** Every promising combination with one site more, worked out exactly, best first. */
  extend(beam: readonly Combination[]): Combination[] {
    const prospects = new Map<string, Prospect>();
    for (const from of beam) {
      for (const prospect of this.partners(from)) {
        const key = [...from.members, prospect.partner].sort((a, b) => a - b).join('+');
        const known = prospects.get(key);
        if (known === undefined || prospect.estimate > known.estimate) prospects.set(key, prospect);
      }
    }
    const ranked = [...prospects.values()].sort((a, b) => b.estimate - a.estimate || a.partner - b.partner);
    const least = ranked[workedOut - 1]?.estimate ?? Number.NEGATIVE_INFINITY;
    // What is as promising as the last one is worked out too, or the mirror image of an exam would have another answer.
    return ranked
      .filter(({ estimate }) => estimate >= least - 1e-9)
      .flatMap((prospect) => this.workOut(prospect))
      .sort(best);
  }

  private workOut({ from, partner }: Prospect): readonly Combination[] {
    const other = this.hypotheses[partner];
    if (other === undefined) return [];
    const combined = combine(from.combined, other);
    const states = Uint8Array.from(this.scored.data, (datum, place) =>
      jointState(datum, from.states[place] ?? 0, datum.states[partner] ?? 0, combined, this.health),
    );
    const members = [...from.members, partner];
    const present = from.members.flatMap((index) => this.hypotheses[index] ?? []);
    let score = this.withPartner(this.independentPriorOf(from.members), present, partner).log;
    this.scored.data.forEach((datum, place) => {
      score += datum.weight * logChance(datum, states[place] ?? 0);
    });
    return [{ members, score, combined, states }];
  }

  /** Prior of a combination with one site more, from that of the smaller one. */
  private withPartner(
    prior: { readonly independent: number },
    present: readonly Hypothesis[],
    index: number,
  ): LogPrior {
    const added = this.hypotheses[index];
    if (added === undefined) return { independent: Number.NEGATIVE_INFINITY, log: Number.NEGATIVE_INFINITY };
    const independent =
      prior.independent + (this.logPrior[index] ?? 0) - this.logTotal + Math.log(additionFactor(present, added));
    const areNerves = added.site.kind === 'nerve' && present.every(({ site }) => site.kind === 'nerve');
    if (!areNerves) return { independent, log: independent };
    const picked = this.logTotal + Math.log(nervePicker) + (present.length + 1) * Math.log(pickedNerve);
    return { independent, log: Math.max(independent, picked) };
  }

  private independentPriorOf(members: readonly number[]): { readonly independent: number } {
    const sites = members.flatMap((index) => this.hypotheses[index] ?? []);
    return members
      .slice(1)
      .reduce<{ readonly independent: number }>(
        (prior, index, place) => this.withPartner(prior, sites.slice(0, place + 1), index),
        { independent: this.logPrior[members[0] ?? 0] ?? 0 },
      );
  }

  private unexplained(states: Uint8Array): readonly WeighedDatum[] {
    return unexplainedBy(this.scored, (_, place) => states[place] ?? 0, this.health);
  }

  /** The best extent of each site that may stand beside a combination and explains something that it leaves over. */
  private partners(from: Combination): readonly Prospect[] {
    const left = this.unexplained(from.states);
    const candidates = this.candidates(from, left);
    const present = from.members.flatMap((index) => this.hypotheses[index] ?? []);
    const prior = this.independentPriorOf(from.members);
    const estimates = Float64Array.from(candidates, (index) => this.withPartner(prior, present, index).log);
    this.scored.data.forEach(({ states, table: { log, width }, weight, abnormal, valueIndex }, place) => {
      const own = log[(from.states[place] ?? 0) * width + valueIndex] ?? 0;
      for (let one = 0; one < estimates.length; one += 1) {
        const theirs = log[(states[candidates[one] ?? 0] ?? 0) * width + valueIndex] ?? 0;
        estimates[one] = (estimates[one] ?? 0) + weight * (abnormal ? Math.max(own, theirs) : Math.min(own, theirs));
      }
    });
    const bySite = new Map<string, Prospect>();
    candidates.forEach((partner, one) => {
      const site = this.hypotheses[partner]?.site;
      if (site === undefined) return;
      const estimate = estimates[one] ?? 0;
      const known = bySite.get(siteId(site));
      if (known === undefined || estimate > known.estimate) bySite.set(siteId(site), { from, partner, estimate });
    });
    return [...bySite.values()];
  }

  private candidates(from: Combination, left: readonly WeighedDatum[]): readonly number[] {
    if (left.length === 0) return [];
    const members = from.members.flatMap((index) => this.hypotheses[index] ?? []);
    return this.hypotheses.flatMap((other, index) => {
      const isPartner = left.some((datum) => explains(datum.states[index] ?? 0, datum, this.health));
      return isPartner && members.every((one) => mayStandTogether(one, other)) ? [index] : [];
    });
  }
}

/** Weight of data, in nats against health. */
function weightOf(data: readonly WeighedDatum[], health: number): number {
  return data.reduce((sum, datum) => sum - datum.weight * logChance(datum, datum.states[health] ?? 0), 0);
}

function logSum(values: Float64Array): number {
  const top = values.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  return top + Math.log(values.reduce((sum, value) => sum + Math.exp(value - top), 0));
}

const peripheral: ReadonlySet<SiteKind> = new Set(['nerve', 'plexus', 'root']);

/** Focal sites may stand together, also within one diffuse process; two diffuse processes would explain anything. */
function mayStandTogether(one: Hypothesis, other: Hypothesis): boolean {
  if (one.site.kind === 'none' || other.site.kind === 'none') return false;
  if (isDiffuse(one.site) && isDiffuse(other.site)) return false;
  return siteId(one.site) !== siteId(other.site);
}

function additionFactor(present: readonly Hypothesis[], added: Hypothesis): number {
  const { site } = added;
  if (present.length > 1 && [...present, added].every((one) => peripheral.has(one.site.kind))) {
    return anotherLesion.onePeripheralMore;
  }
  const isMirrored = present.some(
    ({ site: { key, level, side } }) => key === site.key && level === site.level && side !== site.side,
  );
  if (isMirrored) return anotherLesion.sameSiteOtherSide;
  return site.kind === 'nerve' && present.some((one) => one.site.kind === 'nerve')
    ? anotherLesion.twoNerves
    : anotherLesion.unrelated;
}

/** State of an item under both: where one of the two leaves it as in health, that of the other. */
function jointState(
  { states, column }: WeighedDatum,
  one: number,
  other: number,
  combined: Hypothesis,
  health: number,
): number {
  const healthy = states[health] ?? 0;
  if (one === healthy) return other;
  return other === healthy ? one : column.model.state(combined);
}

/** Both at once: structures and faculties keep what both leave over. */
function combine(one: Hypothesis, other: Hypothesis): Hypothesis {
  const either = (a: number, b: number): number => 1 - (1 - a) * (1 - b);
  const process: Process = {
    motor: (unit) => either(one.process.motor(unit), other.process.motor(unit)),
    largeFibre: (fibre) => either(one.process.largeFibre(fibre), other.process.largeFibre(fibre)),
    smallFibre: (fibre) => either(one.process.smallFibre(fibre), other.process.smallFibre(fibre)),
    reflex: (fibre) => either(one.process.reflex(fibre), other.process.reflex(fibre)),
    denervating: one.process.denervating || other.process.denervating,
    because: [one.process.because, other.process.because].filter((text) => text !== '').join('; '),
  };
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
