/**
 * Parts of the surface on which places are told by two coordinates, `around` and `along`.
 * - `axis`: head, neck, trunk and leg of one side, unrolled: `around` in degrees, -90 the front midline (on the leg its
 *   inner edge), 0 the middle of the front, 90 the outer edge, 180 the middle of the back, 270 the back midline; `along`
 *   is the y of the silhouette.
 * - `arm`: `around` likewise, palm forward, so that 90 is the thumb side; `along` is 0 at the shoulder, 1 at the wrist.
 * - `palm`, `hand-back`: `around` counts digits, thumb 1, little finger 5, each half a digit to either side; `along` is 0 at
 *   the wrist, 0.5 at the webs, 1 at the fingertips.
 * - `sole`, `foot-top`: `around` counts toes, great toe 1; `along` is 0 at the heel, 0.8 at the webs, 1 at the tips.
 * - `saddle`: seen from below; `around` is the distance from the midline, `along` from the pubis backwards, in millimetres.
 */
export type Part = 'axis' | 'arm' | 'palm' | 'hand-back' | 'sole' | 'foot-top' | 'saddle';

/** A point of the surface of one side of the body. */
export interface Spot {
  readonly part: Part;
  readonly around: number;
  readonly along: number;
}

/** Corners in (around, along), in order; the last joins the first. */
export type Corners = readonly (readonly [around: number, along: number])[];

export interface Region {
  readonly part: Part;
  readonly corners: Corners;
}

/** Whether a point lies in a polygon, by the parity of the edges that a ray from it crosses. */
export function isInside(corners: readonly (readonly [number, number])[], x: number, y: number): boolean {
  let inside = false;
  let previous = corners.at(-1);
  for (const corner of corners) {
    if (previous !== undefined && corner[1] > y !== previous[1] > y) {
      const crossing = corner[0] + ((previous[0] - corner[0]) * (y - corner[1])) / (previous[1] - corner[1]);
      if (x < crossing) inside = !inside;
    }
    previous = corner;
  }
  return inside;
}
