import { type PlaceKey, placeTable } from '../../anatomy/places.ts';
import { opposite } from '../../kernel/side.ts';
import { hypotheses } from '../../localisation/hypotheses/hypotheses.ts';
import type { Hypothesis } from '../../localisation/hypothesis.ts';
import { addDamage, type Shares } from './damage-shares.ts';
import { shownAt } from './nerve-drawings.ts';
import { addProcess } from './process-shares.ts';

/**
 * Drawings that a site takes, by name: those on its own side and those on the other. A site of both sides, or of neither,
 * takes what is named on both. `segment-@` and `root-@` stand for the segments that an answer names.
 */
export interface SiteShapes {
  readonly own: readonly string[];
  readonly other: readonly string[];
}

/** A drawing is part of a site when its damage there, on average, is at least this share of the most damaged one's. Judged. */
const partOfSite = 0.35;
const perLevel = /^(?:segment|root)-[cltsx]\d+$/;

/** Share of the lesions of a site, by frequency, that must have a structure in what is marked. Judged. */
const covered = 0.9;

/**
 * A site that is a place on a nerve or plexus is marked there, whichever fascicles a lesion takes: the places beyond, which
 * stand for fascicles in the model, are whole themselves.
 */
function atItsPlace({ site: { key } }: Hypothesis, names: ReadonlyMap<string, number>): ReadonlyMap<string, number> {
  return isPlace(key) && shownAt(key) === key ? new Map([[key, Math.max(0, ...names.values())]]) : names;
}

function isPlace(key: string): key is PlaceKey {
  return key in placeTable;
}

/** What a hypothesis takes on the side of its site, and on the other; of a site of both sides, the worse of them. */
interface Taken {
  readonly frequency: number;
  readonly own: ReadonlyMap<string, number>;
  readonly other: ReadonlyMap<string, number>;
}

function takenBy(hypothesis: Hypothesis): Taken {
  const shares: Shares = new Map();
  addDamage(shares, hypothesis);
  addProcess(shares, hypothesis);
  const { level, side } = hypothesis.site;
  const rows = [...shares].filter(([name]) => level === null || !perLevel.test(name));
  const isSided = side === 'left' || side === 'right';
  return {
    frequency: hypothesis.frequency,
    own: atItsPlace(
      hypothesis,
      new Map(rows.map(([name, lost]) => [name, isSided ? lost[side] : Math.max(lost.left, lost.right)])),
    ),
    other: new Map(isSided ? rows.map(([name, lost]) => [name, lost[opposite(side)]]) : []),
  };
}

/** Loss of every drawing on one side, summed over the lesions as often as they are met; the most damaged first. */
function losses(taken: readonly Taken[], side: 'own' | 'other'): readonly (readonly [name: string, lost: number])[] {
  const sums = new Map<string, number>();
  for (const one of taken)
    for (const [name, lost] of one[side]) sums.set(name, (sums.get(name) ?? 0) + one.frequency * lost);
  return [...sums].filter(([, lost]) => lost > 0).sort((a, b) => b[1] - a[1]);
}

const frequencyOf = (taken: readonly Taken[]): number => taken.reduce((sum, { frequency }) => sum + frequency, 0);

/** Drawings without which too many of the lesions would have nothing marked: the most damaged of those, one by one. */
function cover(taken: readonly Taken[], marked: readonly string[]): readonly string[] {
  const uncovered = taken.filter(({ own }) => !marked.some((name) => (own.get(name) ?? 0) > 0));
  const next = losses(uncovered, 'own')[0]?.[0];
  if (next === undefined || frequencyOf(uncovered) <= (1 - covered) * frequencyOf(taken)) return marked;
  return cover(taken, [...marked, next]);
}

function shapesOfSite(members: readonly Hypothesis[]): SiteShapes {
  const taken = members.map(takenBy);
  const own = losses(taken, 'own');
  const other = losses(taken, 'other');
  const site = members[0]?.site;
  // Which nerves are picked out differs from person to person, so that all that may be are shown.
  const share = site?.kind === 'multiple-nerves' ? 0 : partOfSite;
  const least = share * Math.max(own[0]?.[1] ?? 0, other[0]?.[1] ?? 0);
  const partOf = (rows: typeof own): string[] => rows.filter(([, lost]) => lost >= least).map(([name]) => name);
  const level = site === undefined || site.level === null ? [] : [site.kind === 'root' ? 'root-@' : 'segment-@'];
  return { own: [...level, ...cover(taken, partOf(own))], other: partOf(other) };
}

/** What every site takes of the picture, by its key, worked out one site at a time; empty for no lesion. */
export function* siteShapes(): Generator<void, Readonly<Record<string, SiteShapes>>> {
  const bySite = new Map<string, Hypothesis[]>();
  for (const one of hypotheses) {
    const members = bySite.get(one.site.key);
    if (members === undefined) bySite.set(one.site.key, [one]);
    else members.push(one);
  }
  const sites: Record<string, SiteShapes> = {};
  for (const [key, members] of bySite) {
    sites[key] = shapesOfSite(members);
    yield;
  }
  return sites;
}
