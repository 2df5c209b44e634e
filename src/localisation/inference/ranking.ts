import type { Hypothesis } from '../hypothesis.ts';
import type { Inference } from './infer.ts';
import { levelOf, type SiteGroup } from './site-groups.ts';

/** Some hypotheses with weights that sum to 1. */
export type Mixture = readonly { readonly index: number; readonly weight: number }[];

/** Below this share of all probability a hypothesis changes no answer. */
const negligible = 1e-4;
/** Hypotheses that stand for a site which is itself negligible. */
const spokesmen = 4;

/** The posterior as weights of hypotheses, alone or with others, with the few that matter picked out once. */
export class PosteriorWeights {
  private readonly weight: Float64Array;
  private readonly hypotheses: readonly Hypothesis[];
  private readonly mattering: readonly number[];
  private readonly mixtures = new Map<SiteGroup, Mixture>();

  constructor(inference: Inference, hypotheses: readonly Hypothesis[]) {
    const weight = Float64Array.from(inference.single);
    for (const { combination, probability } of inference.combinations) {
      for (const member of combination.members) weight[member] = (weight[member] ?? 0) + probability;
    }
    this.weight = weight;
    this.hypotheses = hypotheses;
    const mattering: number[] = [];
    for (let index = 0; index < weight.length; index += 1) if (this.matters(index)) mattering.push(index);
    this.mattering = mattering;
  }

  /** Hypotheses of one site, heaviest first. */
  within(group: SiteGroup): Mixture {
    const known = this.mixtures.get(group) ?? this.mixtureWithin(group);
    this.mixtures.set(group, known);
    return known;
  }

  /** So many of the heaviest of them, among themselves. */
  heaviest(group: SiteGroup, count: number): Mixture {
    return this.normalised(
      this.within(group)
        .slice(0, count)
        .map(({ index }) => index),
    );
  }

  /** Every other hypothesis that matters. */
  outside({ members }: SiteGroup): Mixture {
    const inside = new Set(members);
    const others = this.mattering.filter((index) => !inside.has(index));
    return this.normalised(others.length === 0 ? [0] : others);
  }

  level(group: SiteGroup): ReturnType<typeof levelOf> {
    return levelOf(group.members, this.hypotheses, this.weight);
  }

  /** The heaviest hypothesis of a site at the level that is named for it, else the heaviest. */
  spokesman(group: SiteGroup): Hypothesis | undefined {
    const level = this.level(group)?.level;
    const members = this.within(group).flatMap(({ index }) => this.hypotheses[index] ?? []);
    return members.find(({ site }) => level === undefined || site.level === level) ?? members[0];
  }

  private mixtureWithin({ members }: SiteGroup): Mixture {
    const heavier = (a: number, b: number): number => (this.weight[b] ?? 0) - (this.weight[a] ?? 0) || a - b;
    const significant = members.filter((index) => this.matters(index));
    return this.normalised(
      significant.length === 0 ? members.toSorted(heavier).slice(0, spokesmen) : significant.sort(heavier),
    );
  }

  private matters(index: number): boolean {
    return (this.weight[index] ?? 0) > negligible;
  }

  private normalised(indexes: readonly number[]): Mixture {
    const total = indexes.reduce((sum, index) => sum + (this.weight[index] ?? 0), 0);
    return indexes.map((index) => ({
      index,
      weight: total === 0 ? 1 / indexes.length : (this.weight[index] ?? 0) / total,
    }));
  }
}
