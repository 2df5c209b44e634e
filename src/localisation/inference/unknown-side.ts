import { opposite } from '../../kernel/side.ts';
import { type Hypothesis, type Site, siteId } from '../hypothesis.ts';
import type { Inference } from './infer.ts';

type Groups = Inference['groups'];

/** A place, or the same place on either side, with the probability of both. */
export interface Answer {
  readonly group: Groups[number]['group'];
  readonly probability: number;
  /** Whether nothing tells on which side it lies. */
  readonly isEitherSide: boolean;
}

/** How much two sides of one place may differ by and still be as likely. */
const asLikely = 1e-6;

/**
 * Where only complaints speak, of which nobody told the side, a place on the left and the same place on the right are one answer,
 * as likely as both: which side it is, nobody can tell. What was found in the midline is left out, because it often stands for
 * both sides. Likeliest first.
 */
export function joinSides(
  groups: Groups,
  { data }: Inference['scored'],
  hypotheses: readonly Hypothesis[],
): readonly Answer[] {
  const asTheyAre = groups.map((one): Answer => ({ ...one, isEitherSide: false }));
  if (data.some(({ abnormal }) => abnormal)) return asTheyAre;
  const siteOf = ({ group }: Groups[number]): Site | undefined => hypotheses[group.members[0] ?? 0]?.site;
  const bySite = new Map(
    groups.flatMap((one) => {
      const site = siteOf(one);
      return site === undefined ? [] : [[siteId(site), one] as const];
    }),
  );
  const joined = asTheyAre
    .flatMap((one): readonly Answer[] => {
      const site = siteOf(one);
      if (site?.side !== 'left' && site?.side !== 'right') return [one];
      const twin = bySite.get(siteId({ ...site, side: opposite(site.side) }));
      if (twin === undefined || Math.abs(twin.probability - one.probability) > asLikely) return [one];
      if (site.side === 'right') return [];
      const members = [...one.group.members, ...twin.group.members];
      return [
        {
          group: { id: one.group.id, members },
          probability: Math.min(1, one.probability + twin.probability),
          isEitherSide: true,
        },
      ];
    })
    .sort((a, b) => b.probability - a.probability || (a.group.id < b.group.id ? -1 : 1));
  // That nothing is wrong stays before a place that leads it only when both its sides are taken together.
  const [leading] = asTheyAre;
  if (leading === undefined || siteOf(leading)?.kind !== 'none') return joined;
  return [leading, ...joined.filter((one) => one !== leading)];
}
