import { type Place, type PlaceKey, pathTo, placeTable } from '../../anatomy/places.ts';
import { type Segment, segmentIndex } from '../../anatomy/segments.ts';
import type { Supply } from '../../anatomy/supply.ts';
import { type BodySide, bodySides, type Side } from '../../kernel/side.ts';
import type { Hypothesis } from '../hypothesis.ts';
import { cordIndex, placeIndex } from '../lesion.ts';

/** The fibres of one supply that come from one root on one side: the unit that a lesion cuts or spares. */
export interface Strand {
  /** Share of the whole item; the strands of an item sum to 1. */
  readonly share: number;
  readonly side: BodySide;
  /** Index of the segment; null for cranial nerves. */
  readonly segment: number | null;
  /** Indexes into the place arrays of `Damage`, nearest the cord first. */
  readonly places: readonly number[];
  readonly supply: Supply;
  readonly root: Segment | null;
  /** False where the fibres leave the cord apart from the root of their segment. */
  readonly throughRoot: boolean;
}

const known = new WeakMap<readonly Supply[], Map<Side, readonly Strand[]>>();

/** All strands of an item on one side, or, for midline items, half from each side. Worked out once for each list of supplies. */
export function strandsOf(supplies: readonly Supply[], side: Side): readonly Strand[] {
  const bySide = known.get(supplies) ?? new Map<Side, readonly Strand[]>();
  known.set(supplies, bySide);
  const strands = bySide.get(side) ?? followed(supplies, side);
  bySide.set(side, strands);
  return strands;
}

function followed(supplies: readonly Supply[], side: Side): readonly Strand[] {
  if (side === 'midline') {
    return bodySides.flatMap((one) =>
      strandsOf(supplies, one).map((strand) => ({ ...strand, share: strand.share / 2 })),
    );
  }
  return supplies.flatMap((supply): Strand[] => {
    const roots = Object.entries(supply.roots) as [Segment, number][];
    if (roots.length === 0) {
      const places = supply.via === null ? [] : [placeIndex(side, supply.via)];
      return [{ share: supply.weight, side, segment: null, places, supply, root: null, throughRoot: false }];
    }
    return roots.map(([root, share]) => {
      const path = pathTo(supply.via, root);
      return {
        share: supply.weight * share,
        side,
        segment: segmentIndex(root),
        places: path.map((place: PlaceKey) => placeIndex(side, place)),
        supply,
        root,
        throughRoot: !path.some((place) => hasOwnRootlets(placeTable[place])),
      };
    });
  });
}

function hasOwnRootlets({ ownRootlets }: Place): boolean {
  return ownRootlets === true;
}

function throughPlaces(cells: Float64Array, places: readonly number[]): number {
  let through = 1;
  for (const place of places) through *= 1 - (cells[place] ?? 0);
  return through;
}

/** Motor fibres of a strand that still conduct from the anterior horn to the muscle, 0 to 1; processes not counted. */
export function motorThrough(hypothesis: Hypothesis, strand: Strand): number {
  const { damage } = hypothesis.pathways;
  const peripheral = throughPlaces(damage.motorPlace, strand.places);
  if (strand.segment === null) return peripheral;
  const cell = cordIndex(strand.side, strand.segment);
  const root = strand.throughRoot ? 1 - (damage.ventralRoot[cell] ?? 0) : 1;
  return peripheral * root * (1 - (damage.anteriorHorn[cell] ?? 0));
}

/** Sensory fibres of a strand that still conduct from the skin to the cord, 0 to 1; processes not counted. */
export function sensoryThrough(hypothesis: Hypothesis, strand: Strand): number {
  const { damage } = hypothesis.pathways;
  const peripheral = throughPlaces(damage.sensoryPlace, strand.places);
  if (strand.segment === null) return peripheral;
  return peripheral * (1 - (damage.dorsalRoot[cordIndex(strand.side, strand.segment)] ?? 0));
}
