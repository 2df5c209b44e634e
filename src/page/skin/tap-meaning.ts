import type { Catalogue } from '../../client/generated/api-types.ts';
import type { PlaceKind } from '../catalogue.ts';
import type { CellAddress } from '../draft/draft.ts';
import type { BodyPatch, BodyPicture, BodyView } from './body-pictures.ts';

export type Place = NonNullable<CellAddress['place']>;

/** What a tap on the body speaks of. */
export const tapMeanings = {
  dermatome: 'Dermatome',
  territory: 'Nerve territory',
  levelBelow: 'Everything below a level',
  extent: 'Stocking, glove, region',
  spot: 'Place',
} as const;
export type TapMeaning = keyof typeof tapMeanings;

/** What is said of a meaning where its name does not say enough. */
export const meaningHints: Readonly<Partial<Record<TapMeaning, string>>> = {
  levelBelow: 'Tap the lowest dermatome that is still normal: everything below it is recorded.',
  extent: 'Tap how far up it reaches; what else reaches there is offered below the picture.',
  territory: 'Where territories overlap the smaller one is taken, and the others are offered below the picture.',
};

/** The place that a patch records under a meaning; undefined if it is none under that meaning. */
export function placeOf({ kind, key, path }: BodyPatch, meaning: TapMeaning, picture: BodyPicture): Place | undefined {
  switch (meaning) {
    case 'dermatome':
      return kind === 'dermatome' ? { kind: 'dermatome', key } : undefined;
    case 'levelBelow':
      return kind === 'dermatome' && picture.firstBelow[key] !== undefined ? { kind: 'levelBelow', key } : undefined;
    case 'territory':
      return kind === 'territory' ? { kind: 'territory', key } : undefined;
    case 'extent':
      return kind === 'landmark' && path !== undefined ? { kind: 'site', key } : undefined;
    case 'spot':
      return kind === 'landmark' && path === undefined ? { kind: 'site', key } : undefined;
  }
}

/** The meaning under which a place is drawn. */
export function meaningOf({ kind, key }: Place, { views }: BodyPicture): TapMeaning {
  if (kind !== 'site') return kind;
  return views.some(({ patches }) => patches.some((patch) => patch.key === key && isExtent(patch))) ? 'extent' : 'spot';
}

const isExtent = ({ kind, path }: BodyPatch): boolean => kind === 'landmark' && path !== undefined;

const patchKinds: Readonly<Record<PlaceKind, BodyPatch['kind']>> = {
  dermatome: 'dermatome',
  levelBelow: 'dermatome',
  territory: 'territory',
  site: 'landmark',
};

/** The patches of a view that a place takes up. */
export function patchesOf({ kind, key }: Place, view: BodyView, picture: BodyPicture, catalogue: Catalogue) {
  const keys = kind === 'levelBelow' ? dermatomesBelow(key, picture, catalogue) : [key];
  return view.patches.filter((patch) => patch.kind === patchKinds[kind] && keys.includes(patch.key));
}

/** Every dermatome below a segment, from above downwards. */
export function dermatomesBelow(
  segment: string,
  { firstBelow }: BodyPicture,
  { places }: Catalogue,
): readonly string[] {
  const order = places.dermatomes.map(({ key }) => key);
  const first = firstBelow[segment];
  return first === undefined ? [] : order.slice(order.indexOf(first));
}

/** Those of a view's patches that can be tapped, in the order of the catalogue, each place once. */
export function tappable(
  view: BodyView,
  meaning: TapMeaning,
  picture: BodyPicture,
  catalogue: Catalogue,
): readonly BodyPatch[] {
  const { dermatomes, territories, landmarks } = catalogue.places;
  const order = new Map([...dermatomes, ...territories, ...landmarks].map(({ key }, rank) => [key, rank]));
  const rankOf = ({ key }: BodyPatch) => order.get(key) ?? order.size;
  return view.patches
    .filter((patch) => placeOf(patch, meaning, picture) !== undefined)
    .sort((one, other) => rankOf(one) - rankOf(other));
}

/** Area of the first ring of a path, for putting the smaller patch on top. */
export function areaOf({ path }: BodyPatch): number {
  if (path === undefined) return 0;
  return path
    .split('M')
    .filter((ring) => ring !== '')
    .reduce((sum, ring) => sum + Math.abs(ringArea(ring)), 0);
}

/** By the shoelace formula, over relative lines. */
function ringArea(ring: string): number {
  const numbers = (ring.match(/-?\d+/g) ?? []).map(Number);
  let [x, y, twice] = [0, 0, 0];
  for (let at = 2; at < numbers.length; at += 2) {
    const [dx, dy] = [numbers[at] ?? 0, numbers[at + 1] ?? 0];
    twice += x * (y + dy) - (x + dx) * y;
    [x, y] = [x + dx, y + dy];
  }
  return twice / 2;
}
