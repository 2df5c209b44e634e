import { type Segment, segmentIndex, segments } from '../../anatomy/segments.ts';
import { type Hypothesis, type Site, siteId } from '../hypothesis.ts';

/** The hypotheses that are one answer to the outside: one site in every extent and, for the cord, at every level. */
export interface SiteGroup {
  readonly id: string;
  readonly members: readonly number[];
}

/** Cord sites are one answer with a level that is then named; roots are an answer each, because each has its own name. */
function groupId(site: Site): string {
  return site.kind === 'cord' ? siteId({ ...site, level: null }) : siteId(site);
}

/** Which hypotheses belong together, each by the index of the hypothesis. */
export interface SiteGroups {
  readonly groups: readonly SiteGroup[];
  /** Place of its group among the groups. */
  readonly groupOf: Uint16Array;
  /** Number of its site: the same for every extent at one level on one side. */
  readonly siteOf: Uint16Array;
  /** Number of its site whatever the side. */
  readonly placeOf: Uint16Array;
}

export function groupSites(hypotheses: readonly Hypothesis[]): SiteGroups {
  const groups = new Map<string, number[]>();
  hypotheses.forEach(({ site }, index) => {
    const id = groupId(site);
    const members = groups.get(id);
    if (members === undefined) groups.set(id, [index]);
    else members.push(index);
  });
  return {
    groups: [...groups].map(([id, members]) => ({ id, members })),
    groupOf: numbered(hypotheses, groupId),
    siteOf: numbered(hypotheses, siteId),
    placeOf: numbered(hypotheses, (site) => siteId({ ...site, side: null })),
  };
}

/** Numbers for names, by order of their first appearance. */
function numbered(hypotheses: readonly Hypothesis[], name: (site: Site) => string): Uint16Array {
  const numbers = new Map<string, number>();
  return Uint16Array.from(hypotheses, ({ site }) => {
    const id = name(site);
    const number = numbers.get(id) ?? numbers.size;
    numbers.set(id, number);
    return number;
  });
}

/** Share of a site's probability that the named range of levels holds. */
const rangeShare = 0.8;

/**
 * The level of a site that lies in the middle of its probability, which misses the true one by the fewest segments when many
 * are as likely, and the shortest run of levels around it that holds most of that probability.
 */
export function levelOf(
  members: readonly number[],
  hypotheses: readonly Hypothesis[],
  posterior: Float64Array,
): { readonly level: Segment; readonly range: readonly [Segment, Segment] } | null {
  const byLevel = new Float64Array(segments.length);
  let total = 0;
  for (const index of members) {
    const level = hypotheses[index]?.site.level ?? null;
    if (level === null) continue;
    const probability = posterior[index] ?? 0;
    byLevel[segmentIndex(level)] = (byLevel[segmentIndex(level)] ?? 0) + probability;
    total += probability;
  }
  if (total === 0) return null;
  const middle = medianOf(byLevel, total);
  let top = middle;
  let bottom = middle;
  let held = byLevel[middle] ?? 0;
  while (held < rangeShare * total) {
    const above = top > 0 ? (byLevel[top - 1] ?? 0) : -1;
    const below = bottom < segments.length - 1 ? (byLevel[bottom + 1] ?? 0) : -1;
    if (above > below) {
      top -= 1;
      held += above;
    } else {
      bottom += 1;
      held += below;
    }
  }
  return { level: segments[middle] ?? 'C1', range: [segments[top] ?? 'C1', segments[bottom] ?? 'S5'] };
}

/** The first level up to which half of the probability lies. */
function medianOf(byLevel: Float64Array, total: number): number {
  let held = 0;
  return byLevel.findIndex((probability) => {
    held += probability;
    return held >= total / 2;
  });
}
