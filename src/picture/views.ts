import type { BodySide } from '../kernel/side.ts';
import { bodyFrame, type Point } from './body-outline.ts';
import { digitPoint, digitSpotAt, shapes } from './digits.ts';
import { type Aspect, pointOnBody, spotOnBody } from './places-on-body.ts';
import type { Profile } from './profile.ts';
import { valueAt } from './profile.ts';
import type { Spot } from './surface.ts';

export type ViewKey = 'front' | 'back' | 'face' | 'palms' | 'hand-backs' | 'soles' | 'foot-tops' | 'saddle';

/** One picture: its right half is drawn, the left half is the mirror of it. */
export interface View {
  readonly key: ViewKey;
  readonly label: string;
  readonly width: number;
  readonly height: number;
  /** The side of the patient that lies on the right of the viewer, where the half is drawn. */
  readonly drawnSide: BodySide;
  /** Whether both halves meet in the middle, or lie apart as two hands do. */
  readonly isJoined: boolean;
  /** What one sees at a point, x counted from the middle of the picture; undefined beside the body. */
  spotAt(x: number, y: number): Spot | undefined;
  /** Where in the picture, x counted from its middle, a place lies; undefined if it is not to be seen. */
  pointOf(spot: Spot): Point | undefined;
}

function bodyView(key: Aspect, label: string, drawnSide: BodySide): View {
  return {
    key,
    label,
    width: bodyFrame.width,
    height: bodyFrame.height,
    drawnSide,
    isJoined: true,
    spotAt: (x, y) => spotOnBody(key, x, y),
    pointOf: (spot) => pointOnBody(key, spot),
  };
}

const faceScale = 2.4;
const face: View = {
  key: 'face',
  label: 'Face and neck',
  width: 260,
  height: 380,
  drawnSide: 'left',
  isJoined: true,
  spotAt: (x, y) => spotOnBody('front', x / faceScale, y / faceScale),
  pointOf: (spot) => {
    const point = pointOnBody('front', spot);
    if (spot.part !== 'axis' || point === undefined) return undefined;
    const [x, y] = [point.x * faceScale, point.y * faceScale];
    return x <= 130 && y <= 380 ? { x, y } : undefined;
  },
};

/** Drawn at one unit to the millimetre, fingers up, with a little of the wrist. */
function handView(key: 'palms' | 'hand-backs', label: string): View {
  const part = key === 'palms' ? 'palm' : 'hand-back';
  // Of two hands held up, the palms have the thumbs towards the middle, the backs have them outside.
  const outwards = key === 'palms' ? -1 : 1;
  const centre = key === 'palms' ? 92 : 58;
  const bottom = 196;
  return {
    key,
    label,
    width: 300,
    height: bottom + 34,
    drawnSide: 'left',
    isJoined: false,
    spotAt(x, y) {
      const [v, u] = [(x - centre) * outwards, bottom - y];
      const spot = digitSpotAt(shapes.hand, v, u);
      if (spot === undefined || u < -30) return undefined;
      if (u >= 0) return { part, ...spot };
      const turn = (3.5 - spot.around) * 45;
      return { part: 'arm', around: part === 'palm' ? turn : 180 - turn, along: 1 + u * wristPerMm };
    },
    pointOf(spot) {
      const { around, along } = spot;
      if (spot.part === 'arm') {
        const turn = part === 'palm' ? around : 180 - around;
        const u = (along - 1) / wristPerMm;
        if (Math.abs(turn) > 90 || u < -30) return undefined;
        return { x: centre + outwards * (turn / 90) * 28, y: bottom - u };
      }
      if (spot.part !== part) return undefined;
      const { x: v, y: u } = digitPoint(shapes.hand, around, along);
      return { x: centre + outwards * v, y: bottom - u };
    },
  };
}

/** Share of the arm from shoulder to wrist in a millimetre. */
const wristPerMm = 0.0018;

/** Feet seen from the side of the sole, toes up, or from above, toes down; great toes towards the middle in both. */
const soles: View = {
  key: 'soles',
  label: 'Soles',
  width: 210,
  height: 270,
  drawnSide: 'left',
  isJoined: false,
  spotAt: (x, y) => {
    const spot = digitSpotAt(shapes.foot, footCentre - x, 260 - y);
    return spot && { part: 'sole', ...spot };
  },
  pointOf: ({ part, around, along }) => {
    if (part !== 'sole') return undefined;
    const { x: v, y: u } = digitPoint(shapes.foot, around, along);
    return { x: footCentre - v, y: 260 - u };
  },
};

const footCentre = 54;
/** Where the leg stands on the foot, in millimetres from the heel, and how much of it is drawn. */
const ankle = { u: 55, inner: 26, outer: 32, height: 55, perUnit: 1 } as const;
const ankleHalf = (ankle.inner + ankle.outer) / 2;
const ankleCentre = footCentre + (ankle.outer - ankle.inner) / 2;

const footTops: View = {
  key: 'foot-tops',
  label: 'Tops of the feet',
  width: 210,
  height: 265,
  drawnSide: 'left',
  isJoined: false,
  spotAt(x, y) {
    const [v, u] = [footCentre - x, ankle.u + y - ankle.height - 5];
    if (u >= ankle.u) {
      const spot = digitSpotAt(shapes.foot, v, u);
      return spot && { part: 'foot-top', ...spot };
    }
    const part = (x - ankleCentre) / ankleHalf;
    if (Math.abs(part) > 1 || u < ankle.u - ankle.height) return undefined;
    return { part: 'axis', around: part * 90, along: bodyFrame.ankle + (u - ankle.u) * ankle.perUnit };
  },
  pointOf({ part, around, along }) {
    if (part === 'axis') {
      const y = ankle.height + 5 + (along - bodyFrame.ankle) / ankle.perUnit;
      return Math.abs(around) <= 90 && y >= 5 && along <= bodyFrame.ankle
        ? { x: ankleCentre + (around / 90) * ankleHalf, y }
        : undefined;
    }
    if (part !== 'foot-top' || along < 0.25) return undefined;
    const { x: v, y: u } = digitPoint(shapes.foot, around, along);
    return { x: footCentre - v, y: u - ankle.u + ankle.height + 5 };
  },
};

/** The seat seen from below with the patient on the back, pubis above: half widths by distance from the pubis. */
const seat: Profile = [
  [0, 62],
  [12, 84],
  [40, 104],
  [80, 116],
  [120, 116],
  [155, 100],
  [180, 76],
  [197, 40],
  [204, 6],
];

const saddle: View = {
  key: 'saddle',
  label: 'Saddle, from below',
  width: 250,
  height: 216,
  drawnSide: 'left',
  isJoined: true,
  spotAt: (x, y) => {
    const along = y - 5;
    if (x < 0 || along < 0 || along > 204 || x > valueAt(seat, along)) return undefined;
    return { part: 'saddle', around: x, along };
  },
  pointOf: ({ part, around, along }) => (part === 'saddle' ? { x: around, y: along + 5 } : undefined),
};

export const views: readonly View[] = [
  bodyView('front', 'Front', 'left'),
  bodyView('back', 'Back', 'right'),
  face,
  handView('palms', 'Palms'),
  handView('hand-backs', 'Backs of the hands'),
  footTops,
  soles,
  saddle,
];
