import { rememberedWith } from '../kernel/remembered.ts';
import { dermatomes } from './dermatomes.ts';
import { type LandmarkKey, landmarks } from './landmarks.ts';
import { type Segment, segmentIndex } from './segments.ts';
import { type DermatomeKey, dermatomeKeys, type SkinPlace } from './skin.ts';
import { type TerritoryKey, territories } from './territories.ts';

/** The three ways to say where sensation was tested; each kind has a name space of its own. */
export type SkinPlaceKind = 'dermatome' | 'landmark' | 'territory';

export const landmarkKeys = Object.keys(landmarks) as readonly LandmarkKey[];
export const territoryKeys = Object.keys(territories) as readonly TerritoryKey[];

const tables: Readonly<Record<SkinPlaceKind, ReadonlyMap<string, SkinPlace>>> = {
  dermatome: new Map(dermatomeKeys.map((key) => [key, dermatomes[key]])),
  landmark: new Map(Object.entries(landmarks)),
  territory: new Map(Object.entries(territories)),
};

/** Every patch of every kind: dermatomes, then landmarks, then territories. */
export const allSkinPlaces: readonly SkinPlace[] = Object.values(tables).flatMap((table) => [...table.values()]);

/** The patch of skin of that kind and key; undefined if there is none. The key may be any text from outside. */
export function skinPlace(kind: SkinPlaceKind, key: string): SkinPlace | undefined {
  return tables[kind].get(key);
}

/** Every key of a kind, in the order of its table (dermatomes from above downwards). */
export function skinPlaceKeys(kind: SkinPlaceKind): readonly string[] {
  return [...tables[kind].keys()];
}

/** Indexes of the segments whose roots bring the feeling of a patch, each as often as a branch does. */
export const segmentsServing: (place: SkinPlace) => readonly number[] = rememberedWith(({ supplies }) =>
  supplies.flatMap(({ roots }) => Object.keys(roots) as Segment[]).map((root) => segmentIndex(root)),
);

/**
 * The dermatomes that lie wholly below a segment, from above downwards; those lost with a sensory level at `segment`.
 * S4 and S5 are one dermatome, so neither has any below it.
 */
export function dermatomesBelow(segment: Segment): readonly DermatomeKey[] {
  return dermatomeKeys.filter((key) => segmentIndex(dermatomes[key].segment) > segmentIndex(segment));
}
