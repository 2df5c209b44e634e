import { type Hypothesis, hypothesis, siteId } from '../hypothesis.ts';
import { combineDamage } from '../lesion.ts';
import type { FacultyChances, Process } from '../process.ts';
import { logChance, type Scored } from './score.ts';

/** Two sites at once, with their joint score on the same scale as the single ones. */
export interface Pair {
  readonly first: number;
  readonly second: number;
  readonly score: number;
  readonly combined: Hypothesis;
}

/** How many single sites start a search, and how many of the promising pairs are worked out exactly. */
const starters = 6;
const workedOut = 14;

/**
 * Prior weight of two independent lesions in one person, on top of the product of their own priors. Judged: about one
 * examination in 25 has two. The same site on both sides is much commoner than chance (both wrists, both elbows).
 */
const twoLesions = 0.08;
const mirrored = 6;

/**
 * Joint explanations by two sites, exact for the most promising ones. A partner is promising when it explains what the
 * starter leaves over: for each datum the more abnormal of the two predictions is taken as an approximation.
 * @param order indexes of the hypotheses to start from, best first
 */
export function findPairs(
  hypotheses: readonly Hypothesis[],
  scored: Scored,
  logPrior: Float64Array,
  order: readonly number[],
): readonly Pair[] {
  const total = logSum(logPrior);
  const promising = new Map<string, Prospect>();
  for (const first of order.slice(0, starters)) {
    for (const one of promisingPartners(hypotheses, scored, logPrior, first)) {
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
      for (const datum of scored.data) score += datum.weight * logChance(datum, datum.column.model.state(combined));
      return [{ first, second, score, combined }];
    })
    .sort((a, b) => b.score - a.score || a.first - b.first || a.second - b.second);
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
): readonly Prospect[] {
  const one = hypotheses[first];
  if (one === undefined) return [];
  const joint = Float64Array.from(logPrior, (prior) => prior + (logPrior[first] ?? 0));
  for (const datum of scored.data) {
    const { states, table, weight, abnormal } = datum;
    const own = logChance(datum, states[first] ?? 0);
    const gain = new Float64Array(table.abnormal.length);
    for (let state = 0; state < gain.length; state += 1) {
      const theirs = logChance(datum, state);
      gain[state] = weight * (abnormal ? Math.max(own, theirs) : Math.min(own, theirs));
    }
    for (let partner = 0; partner < joint.length; partner += 1) {
      joint[partner] = (joint[partner] ?? 0) + (gain[states[partner] ?? 0] ?? 0);
    }
  }
  // One extent of each site is enough to look at: the best.
  const best = new Map<string, number>();
  for (let index = 0; index < joint.length; index += 1) {
    const other = hypotheses[index];
    if (other === undefined || !mayCombine(one, other)) continue;
    const id = siteId(other.site);
    const known = best.get(id);
    if (known === undefined || (joint[index] ?? 0) > (joint[known] ?? 0)) best.set(id, index);
  }
  return [...best.values()]
    .map((second) => ({ first, second, estimate: joint[second] ?? 0 }))
    .sort((a, b) => b.estimate - a.estimate || a.second - b.second)
    .slice(0, workedOut);
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
