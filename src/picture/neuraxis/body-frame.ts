import { type Segment, segmentIndex } from '../../anatomy/segments.ts';
import { armAxis } from '../body-outline.ts';
import type { Point } from './shape.ts';

/** Centimetres to a unit of the views of the body, in a person 170 cm tall drawn 1000 units high. */
export const cmPerUnit = 0.17;

/** Axes of the limbs on the person's left: shoulder, elbow, wrist, fingertip; hip, knee, ankle, toes. */
const axes = {
  arm: [armAxis.shoulder, armAxis.elbow, armAxis.wrist, armAxis.fingertip].map(({ x, y }): Point => [x, y]),
  leg: [
    [57, 470],
    [50, 742],
    [48, 950],
    [48, 1015],
  ],
} as const satisfies Readonly<Record<string, readonly Point[]>>;

/**
 * A place on a limb.
 * @param along 0 at the root of the limb, 1 and 2 at its middle joints, 3 at its tip
 * @param outwards units to the outer side of the axis, which is the thumb's and the little toe's
 */
function onLimb(axis: readonly Point[], along: number, outwards: number): Point {
  const joint = Math.max(0, Math.min(2, Math.floor(along)));
  const [ax, ay] = axis[joint] ?? [0, 0];
  const [bx, by] = axis[joint + 1] ?? [ax, ay + 1];
  const length = Math.hypot(bx - ax, by - ay);
  const [dx, dy] = [(bx - ax) / length, (by - ay) / length];
  const part = (along - joint) * length;
  return [ax + dx * part + dy * outwards, ay + dy * part - dx * outwards];
}

export const onArm = (along: number, outwards: number): Point => onLimb(axes.arm, along, outwards);
export const onLeg = (along: number, outwards: number): Point => onLimb(axes.leg, along, outwards);

/** Heights at which roots leave the spine, between those named in equal steps. */
const exits = [
  ['C1', 112],
  ['C5', 154],
  ['T1', 184],
  ['T12', 330],
  ['L5', 425],
  ['S5', 478],
] as const satisfies readonly (readonly [Segment, number])[];

/** Where a root leaves the spine, on the person's left. */
export function rootExit(root: Segment): Point {
  const index = segmentIndex(root);
  const below = exits.findIndex(([segment]) => segmentIndex(segment) >= index);
  const [to, bottom] = exits[below] ?? exits[exits.length - 1] ?? ['S5', 478];
  const [from, top] = exits[below - 1] ?? [to, bottom];
  const span = segmentIndex(to) - segmentIndex(from);
  const part = span === 0 ? 1 : (index - segmentIndex(from)) / span;
  return [9, top + (bottom - top) * part];
}
