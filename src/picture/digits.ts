import type { Point } from './body-outline.ts';
import { type Profile, straightValueAt, valueAt } from './profile.ts';

/** A bone-like shape with round ends: its axis with a half width at every joint of it. */
type Ray = readonly { readonly v: number; readonly u: number; readonly half: number; readonly along: number }[];

export interface Shape {
  /** Half widths of hand or foot without its digits, in millimetres, towards the first and the last digit: [u, v]. */
  readonly firstEdge: Profile;
  readonly lastEdge: Profile;
  /** Numbers of the first and last digit that stand side by side on the edge; the thumb stands apart. */
  readonly span: readonly [number, number];
  /** `along` by u on the part without digits. */
  readonly along: Profile;
  readonly rays: ReadonlyMap<number, Ray>;
}

const ray = (...points: readonly (readonly [v: number, u: number, half: number, along: number])[]): Ray =>
  points.map(([v, u, half, along]) => ({ v, u, half, along }));

/**
 * An adult hand and foot in millimetres, our own drawing: u from the wrist or heel towards the tips, v towards the thumb
 * or great toe. Breadth and length after common hand and foot surveys (recalled).
 */
export const shapes: Readonly<Record<'hand' | 'foot', Shape>> = {
  hand: {
    firstEdge: [
      [-60, 30],
      [-10, 27],
      [15, 31],
      [45, 38],
      [80, 41],
      [98, 41],
      [106, 38],
    ],
    lastEdge: [
      [-60, -30],
      [-10, -27],
      [15, -33],
      [45, -40],
      [80, -41],
      [92, -40],
      [98, -36],
    ],
    span: [2, 5],
    along: [
      [0, 0],
      [105, 0.5],
    ],
    rays: new Map([
      [1, ray([24, 14, 17, 0.05], [53, 58, 13.5, 0.5], [66, 88, 12, 0.78], [74, 112, 9.5, 1])],
      [2, ray([30, 98, 11.5, 0.46], [37, 138, 10, 0.75], [41, 166, 8, 1])],
      [3, ray([9, 103, 11.5, 0.47], [10.5, 148, 10.5, 0.75], [11, 183, 8.5, 1])],
      [4, ray([-11.5, 99, 11, 0.46], [-15, 139, 10, 0.75], [-18, 171, 8, 1])],
      [5, ray([-31, 88, 10, 0.44], [-39, 119, 8.5, 0.75], [-45, 143, 7, 1])],
    ]),
  },
  foot: {
    firstEdge: [
      [0, 0],
      [3, 13],
      [10, 21],
      [22, 27],
      [45, 28],
      [75, 25],
      [105, 24],
      [140, 32],
      [172, 43],
      [190, 45],
      [206, 41],
    ],
    lastEdge: [
      [0, 0],
      [3, -13],
      [10, -21],
      [22, -27],
      [45, -31],
      [80, -36],
      [120, -42],
      [150, -46],
      [170, -46],
      [186, -42],
      [200, -34],
    ],
    span: [1, 5],
    along: [
      [0, 0],
      [205, 0.8],
    ],
    rays: new Map([
      [1, ray([27, 200, 15, 0.78], [24, 226, 14.5, 0.9], [22, 238, 12, 1])],
      [2, ray([5, 206, 8.5, 0.79], [3, 228, 8.5, 0.9], [2, 240, 8, 1])],
      [3, ray([-9, 202, 8, 0.78], [-11, 222, 8, 0.9], [-13, 231, 7.5, 1])],
      [4, ray([-22, 194, 7.5, 0.77], [-25, 211, 7.5, 0.9], [-27, 219, 7, 1])],
      [5, ray([-34.5, 182, 8, 0.75], [-38, 196, 7.5, 0.9], [-40, 203, 7, 1])],
    ]),
  },
};

export interface DigitSpot {
  readonly around: number;
  readonly along: number;
}

/** Where on the hand or foot a point (v, u) lies, with digits before the rest; undefined off it. */
export function digitSpotAt(
  { firstEdge, lastEdge, span, along, rays }: Shape,
  v: number,
  u: number,
): DigitSpot | undefined {
  for (const [digit, points] of rays) {
    const spot = spotOnRay(points, v, u);
    if (spot !== undefined)
      return { around: digit + Math.max(-0.5, Math.min(0.5, spot.across / 2)), along: spot.along };
  }
  const [start, end] = [firstEdge[0]?.[0] ?? 0, Math.max(firstEdge.at(-1)?.[0] ?? 0, lastEdge.at(-1)?.[0] ?? 0)];
  if (u < start || u > end) return undefined;
  const [first, last] = [valueAt(firstEdge, u), valueAt(lastEdge, u)];
  if (v > first || v < last || u > edgeEnd(firstEdge, lastEdge, v)) return undefined;
  const part = (first - v) / (first - last);
  return { around: span[0] - 0.5 + part * (span[1] - span[0] + 1), along: straightValueAt(along, u) };
}

/** How far the part without digits reaches at v: from the end of one edge to the end of the other. */
function edgeEnd(firstEdge: Profile, lastEdge: Profile, v: number): number {
  const [firstU, firstV] = firstEdge.at(-1) ?? [0, 0];
  const [lastU, lastV] = lastEdge.at(-1) ?? [0, 0];
  return firstU + ((lastU - firstU) * (firstV - v)) / (firstV - lastV);
}

/** Across is -1 on the side of the first digit and 1 on that of the last. */
function spotOnRay(points: Ray, v: number, u: number): { along: number; across: number } | undefined {
  let best: { along: number; across: number; excess: number } | undefined;
  for (const [index, from] of points.entries()) {
    const to = points[index + 1];
    if (to === undefined) break;
    const [dv, du] = [to.v - from.v, to.u - from.u];
    const length = Math.hypot(dv, du);
    const part = Math.max(0, Math.min(1, ((v - from.v) * dv + (u - from.u) * du) / length ** 2));
    const half = from.half + (to.half - from.half) * part;
    const excess = Math.hypot(v - from.v - dv * part, u - from.u - du * part) - half;
    if (excess > 0 || (best !== undefined && best.excess <= excess)) continue;
    const across = (-(v - from.v) * du + (u - from.u) * dv) / length / half;
    best = { along: from.along + (to.along - from.along) * part, across, excess };
  }
  return best;
}

/** The point (v as x, u as y) of a place on the hand or foot; the reverse of `digitSpotAt`. */
export function digitPoint(shape: Shape, around: number, along: number): Point {
  const points = shape.rays.get(Math.round(around));
  const onRay = points !== undefined && (along >= (points[0]?.along ?? 0) || Math.round(around) < shape.span[0]);
  if (onRay && points !== undefined) {
    const next = Math.max(
      1,
      points.findIndex((point) => point.along >= along),
    );
    const [from, to] = [points[next - 1], points[next]];
    if (from !== undefined && to !== undefined) {
      const part = (along - from.along) / (to.along - from.along);
      const half = from.half + (to.half - from.half) * part;
      const [dv, du] = [to.v - from.v, to.u - from.u];
      const across = ((around - Math.round(around)) * 2 * half) / Math.hypot(dv, du);
      return { x: from.v + dv * part - du * across, y: from.u + du * part + dv * across };
    }
  }
  const flipped: Profile = shape.along.map(([u, at]) => [at, u]);
  const u = straightValueAt(flipped, along);
  const [first, last] = [valueAt(shape.firstEdge, u), valueAt(shape.lastEdge, u)];
  const part = (around - shape.span[0] + 0.5) / (shape.span[1] - shape.span[0] + 1);
  return { x: first + (last - first) * part, y: u };
}
