import {
  armAxis,
  armHalfWidth,
  bodyFrame,
  elbowAt,
  lateralEdge,
  medialEdge,
  onArm,
  type Point,
} from './body-outline.ts';
import { digitPoint, digitSpotAt, shapes } from './digits.ts';
import { curve } from './profile.ts';
import type { Spot } from './surface.ts';

/** Whether one looks at the body from the front or from the back. */
export type Aspect = 'front' | 'back';

const ear = { x: 45, y: 72, acrossHalf: 6, alongHalf: 15 } as const;
/** Below the shoulder and above this y, what lies inside the outer edge is trunk or thigh and the arm lies outside it. */
const armpitY = 250;

/**
 * The place of the surface that one sees at a point of the half body, x from the midline outwards; undefined beside it.
 */
export function spotOnBody(aspect: Aspect, x: number, y: number): Spot | undefined {
  return axisSpot(aspect, x, y) ?? footSpot(aspect, x, y) ?? armSpot(aspect, x, y) ?? handSpot(aspect, x, y);
}

const legEnd: Readonly<Record<Aspect, number>> = { front: bodyFrame.ankle, back: 990 };

function axisSpot(aspect: Aspect, x: number, y: number): Spot | undefined {
  if (y < 2 || y > legEnd[aspect]) return undefined;
  const [from, to] = [innerX(y), outerX(y)];
  const inEar = ((x - ear.x) / ear.acrossHalf) ** 2 + ((y - ear.y) / ear.alongHalf) ** 2 <= 1;
  if (x < from || (x > to && !inEar)) return undefined;
  const part = Math.min(1, (x - from) / (to - from));
  return { part: 'axis', around: aspect === 'front' ? -90 + part * 180 : 270 - part * 180, along: y };
}

/** The heel is rounded where the back view ends. */
const heel = (y: number) => (y <= 965 ? 0 : 1 - Math.sqrt(Math.max(0, 1 - ((y - 965) / 25) ** 2)));
const [inner, outer] = [curve(medialEdge, 0.5), curve(lateralEdge, 0.5)];
const innerX = (y: number) => (y < 524 ? 0 : inner(y)) + 9 * heel(y);
const outerX = (y: number) => outer(y) - 9 * heel(y);
const armHalf = curve(armHalfWidth, 0.01);

function armSpot(aspect: Aspect, x: number, y: number): Spot | undefined {
  const { shoulder, elbow, wrist } = armAxis;
  const upper = project(shoulder, elbow, x, y);
  const lower = project(elbow, wrist, x, y);
  const isUpper = upper.part < 1 && (lower.part < 0 || Math.abs(upper.outwards) < Math.abs(lower.outwards));
  const along = isUpper ? upper.part * elbowAt : elbowAt + Math.max(0, lower.part) * (1 - elbowAt);
  if (along > 1) return undefined;
  const half = armHalf(along);
  const outwards = isUpper ? upper.outwards : lower.outwards;
  const beyond = along < 0 ? Math.hypot(x - shoulder.x, y - shoulder.y) : Math.abs(outwards);
  if (beyond > half || (y < armpitY && x < outerX(y))) return undefined;
  const turn = (outwards / half) * 90;
  return { part: 'arm', around: aspect === 'front' ? turn : 180 - turn, along };
}

function project(from: Point, to: Point, x: number, y: number): { part: number; outwards: number } {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const square = dx * dx + dy * dy;
  const [ax, ay] = [x - from.x, y - from.y];
  return { part: (ax * dx + ay * dy) / square, outwards: (ax * dy - ay * dx) / Math.sqrt(square) };
}

/** Millimetres of the drawn hand in one unit of the body. */
const handScale = 1.76;

function handSpot(aspect: Aspect, x: number, y: number): Spot | undefined {
  const { wrist, fingertip } = armAxis;
  const length = Math.hypot(fingertip.x - wrist.x, fingertip.y - wrist.y);
  const { part, outwards } = project(wrist, fingertip, x, y);
  if (Math.abs(outwards) > 55 || part < 0 || part > 1.1) return undefined;
  const spot = digitSpotAt(shapes.hand, outwards * handScale, part * length * handScale);
  return spot && spot.along >= 0 ? { part: aspect === 'front' ? 'palm' : 'hand-back', ...spot } : undefined;
}

/** The foot points down and a little outwards in the front view; millimetres of it in one unit, along and across. */
const foot = { from: { x: 49, y: 950 }, ankleMm: 55, turn: 0.12, alongScale: 2.55, acrossScale: 2.3 } as const;

function footSpot(aspect: Aspect, x: number, y: number): Spot | undefined {
  if (aspect === 'back' || y < foot.from.y - 1) return undefined;
  const down = y - foot.from.y;
  const v = (foot.from.x + foot.turn * down - x) * foot.acrossScale;
  if (Math.abs(v) > 55) return undefined;
  const spot = digitSpotAt(shapes.foot, v, foot.ankleMm + down * foot.alongScale);
  return spot && { part: 'foot-top', ...spot };
}

/** Where a place of the surface is seen from that aspect, x from the midline outwards; undefined if it is turned away. */
export function pointOnBody(aspect: Aspect, { part, around, along }: Spot): Point | undefined {
  const isFront = aspect === 'front';
  if (part === 'axis' || part === 'arm') {
    if (isFront ? around < -90 || around > 90 : around < 90 || around > 270) return undefined;
    const turn = isFront ? around : 180 - around;
    if (part === 'arm') return onArm(along, (turn / 90) * armHalf(along));
    if (along > legEnd[aspect]) return undefined;
    return { x: innerX(along) + ((turn + 90) / 180) * (outerX(along) - innerX(along)), y: along };
  }
  if (part === (isFront ? 'palm' : 'hand-back')) {
    const { x: v, y: u } = digitPoint(shapes.hand, around, along);
    return onHand(v / handScale, u / handScale);
  }
  if (part === 'foot-top' && isFront) {
    const { x: v, y: u } = digitPoint(shapes.foot, around, along);
    const down = (u - foot.ankleMm) / foot.alongScale;
    return down < 0 ? undefined : { x: foot.from.x + foot.turn * down - v / foot.acrossScale, y: foot.from.y + down };
  }
  return undefined;
}

function onHand(outwards: number, along: number): Point {
  const { wrist, fingertip } = armAxis;
  const length = Math.hypot(fingertip.x - wrist.x, fingertip.y - wrist.y);
  const [dx, dy] = [(fingertip.x - wrist.x) / length, (fingertip.y - wrist.y) / length];
  return { x: wrist.x + dx * along + dy * outwards, y: wrist.y + dy * along - dx * outwards };
}
