import { type Hypothesis, hypothesis, siteId } from '../hypothesis.ts';
import { combineDamage } from '../lesion.ts';
import type { FacultyChances, Process } from '../process.ts';
import { isExplained, logChance, type Scored, unexplainedBy, type WeighedDatum } from './score.ts';

/** Two sites at once, with their joint score on the same scale as the single ones. */
export interface Pair {
  readonly first: number;
  readonly second: number;
  readonly score: number;
  readonly combined: Hypothesis;
}

/** How many of the promising pairs are worked out exactly. */
const workedOut = 8;

/**
 * Prior weight of two independent lesions in one person, on top of the product of their own priors. Judged: about one
 * examination in 25 has two. The same site on both sides is much commoner than chance (both wrists, both elbows).
 */
const twoLesions = 0.08;
const mirrored = 6;

/**
 * Joint explanations by two sites, exact for the most promising ones. A partner is promising when it explains what the
 * starter leaves over: for each datum the more abnormal of the two predictions is taken as an approximation.
 * @param starters indexes of the hypotheses to start from
 * @param health index of the hypothesis that nothing is wrong
 */
export function findPairs(
  hypotheses: readonly Hypothesis[],
  scored: Scored,
  logPrior: Float64Array,
  starters: readonly number[],
  health: number,
): readonly Pair[] {
  const total = logSum(logPrior);
  const promising = new Map<string, Prospect>();
  for (const first of starters) {
    for (const one of promisingPartners(hypotheses, scored, logPrior, first, health)) {
      promising.set(one.first < one.second ? `${one.first}+${one.second}` : `${one.second}+${one.first}`, one);
    }
  }
  return [...promising.values()]
    .sort((a, b) => b.estimate - a.estimate || a.first - b.first || a.second - b.second)
    .slice(0, workedOut)
    .flatMap(({ first, second }) => {
      const one = hypotheses[first];
      const other = hypotheses[second];
      if (one === undefined || other === undefined) return [];
      const combined = combine(one, other);
      let score =
        (logPrior[first] ?? 0) +
        (logPrior[second] ?? 0) -
        total +
        Math.log(twoLesions * (areMirrored(one, other) ? mirrored : 1));
      for (const datum of scored.data) {
        score += datum.weight * logChance(datum, jointState(datum, first, second, combined, health));
      }
      return [{ first, second, score, combined }];
    })
    .sort((a, b) => b.score - a.score || a.first - b.first || a.second - b.second);
}

/** State of an item under both: where one of the two leaves it as in health, that of the other. */
function jointState(
  { states, column }: WeighedDatum,
  first: number,
  second: number,
  combined: Hypothesis,
  health: number,
): number {
  const one = states[first] ?? 0;
  const other = states[second] ?? 0;
  const healthy = states[health] ?? 0;
  if (one === healthy) return other;
  return other === healthy ? one : column.model.state(combined);
}

/** A pair that may be worth working out, with its approximate score. */
interface Prospect {
  readonly first: number;
  readonly second: number;
  readonly estimate: number;
}

function logSum(values: Float64Array): number {
  const top = values.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  return top + Math.log(values.reduce((sum, value) => sum + Math.exp(value - top), 0));
}

/** Two focal sites may stand together; a focal site inside a diffuse process may too, but not two of one kind at one site. */
function mayCombine(one: Hypothesis, other: Hypothesis): boolean {
  if (one.site.kind === 'none' || other.site.kind === 'none') return false;
  return one.site.key !== other.site.key || one.site.side !== other.site.side || one.site.kind === 'root';
}

function areMirrored(one: Hypothesis, other: Hypothesis): boolean {
  return one.site.key === other.site.key && one.site.level === other.site.level && one.site.side !== other.site.side;
}

function promisingPartners(
  hypotheses: readonly Hypothesis[],
  scored: Scored,
  logPrior: Float64Array,
  first: number,
  health: number,
): readonly Prospect[] {
  const candidates = partnersFor(hypotheses, scored, first, health);
  const joint = Float64Array.from(candidates, (partner) => (logPrior[partner] ?? 0) + (logPrior[first] ?? 0));
  for (const datum of scored.data) {
    const { states, table, weight, abnormal, valueIndex } = datum;
    const { log, width } = table;
    const own = logChance(datum, states[first] ?? 0);
    for (let place = 0; place < joint.length; place += 1) {
      const theirs = log[(states[candidates[place] ?? 0] ?? 0) * width + valueIndex] ?? 0;
      joint[place] = (joint[place] ?? 0) + weight * (abnormal ? Math.max(own, theirs) : Math.min(own, theirs));
    }
  }
  // One extent of each site is enough to look at: the best.
  const best = new Map<string, Prospect>();
  candidates.forEach((second, place) => {
    const other = hypotheses[second];
    if (other === undefined) return;
    const id = siteId(other.site);
    const estimate = joint[place] ?? 0;
    const known = best.get(id);
    if (known === undefined || estimate > known.estimate) best.set(id, { first, second, estimate });
  });
  return [...best.values()].sort((a, b) => b.estimate - a.estimate || a.second - b.second).slice(0, workedOut);
}

/** Hypotheses that may stand beside a first one and explain something that it leaves over. */
function partnersFor(
  hypotheses: readonly Hypothesis[],
  scored: Scored,
  first: number,
  health: number,
): readonly number[] {
  const one = hypotheses[first];
  const left = unexplainedBy(scored, first, health);
  if (one === undefined || left.length === 0) return [];
  return hypotheses.flatMap((other, index) => {
    const explains = left.some((datum) =>
      isExplained(datum, datum.table.abnormal[datum.states[index] ?? 0] ?? 0, datum.states[health] ?? 0),
    );
    return explains && mayCombine(one, other) ? [index] : [];
  });
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
    'pair',
    one.frequency * other.frequency,
    combineDamage(one.pathways.damage, other.pathways.damage),
    { process, faculties },
  );
}
