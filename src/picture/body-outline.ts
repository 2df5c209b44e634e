import type { Profile } from './profile.ts';

/**
 * The silhouette of a standing adult with the palms forward, our own drawing: tables of half widths. One unit is a
 * thousandth of the stature; x counts from the midline outwards, y from the top of the head downwards. Proportions after
 * common anthropometric ratios (Drillis and Contini, as in Winter, Biomechanics and Motor Control of Human Movement,
 * recalled); the feet point down a little so that their tops show.
 */
export const bodyFrame = { width: 470, height: 1030, crotch: 530, ankle: 950, neck: 140 } as const;

/** Outer edge of head, neck, trunk and leg, arm left out: [y, x]. */
export const lateralEdge: Profile = [
  [2, 0],
  [5, 15],
  [12, 26],
  [24, 36],
  [40, 42],
  [62, 44],
  [85, 41],
  [103, 35],
  [118, 27],
  [128, 25],
  [142, 26],
  [152, 38],
  [160, 60],
  [168, 84],
  [177, 100],
  [190, 102],
  [248, 82],
  [275, 81],
  [310, 77],
  [345, 72],
  [375, 70],
  [405, 73],
  [440, 83],
  [480, 91],
  [515, 94],
  [545, 93],
  [610, 87],
  [680, 78],
  [715, 73],
  [740, 73],
  [765, 73],
  [805, 77],
  [850, 72],
  [900, 63],
  [935, 58],
  [952, 61],
  [968, 57],
];

/** Inner edge of the leg below the crotch; above it the midline. */
export const medialEdge: Profile = [
  [524, 0],
  [530, 3],
  [545, 7],
  [610, 15],
  [680, 25],
  [715, 28],
  [740, 28],
  [765, 30],
  [800, 26],
  [850, 29],
  [900, 36],
  [930, 39],
  [948, 35],
  [968, 39],
];

/** Axis of the arm from the shoulder joint over the elbow to the wrist, and of the hand to the tip of the middle finger. */
export const armAxis = {
  shoulder: { x: 98, y: 197 },
  elbow: { x: 136, y: 367 },
  wrist: { x: 168, y: 506 },
  fingertip: { x: 190, y: 608 },
} as const;

/** Half width of the arm by axial position, 0 at the shoulder joint and 1 at the wrist; the elbow is at `elbowAt`. */
export const armHalfWidth: Profile = [
  [0, 25],
  [0.12, 26.5],
  [0.28, 24],
  [0.45, 20.5],
  [0.55, 19.5],
  [0.64, 21.5],
  [0.75, 19.5],
  [0.9, 14.5],
  [1, 13],
];

const between = (from: Point, to: Point) => Math.hypot(to.x - from.x, to.y - from.y);

export interface Point {
  readonly x: number;
  readonly y: number;
}

const upperArm = between(armAxis.shoulder, armAxis.elbow);
const forearm = between(armAxis.elbow, armAxis.wrist);
/** Axial position of the elbow on the arm. */
export const elbowAt = upperArm / (upperArm + forearm);

/** A point of the arm, `outwards` units to the outer side of the axis; `along` is 0 at the shoulder and 1 at the wrist. */
export function onArm(along: number, outwards: number): Point {
  return along <= elbowAt
    ? beside(armAxis.shoulder, armAxis.elbow, along / elbowAt, outwards)
    : beside(armAxis.elbow, armAxis.wrist, (along - elbowAt) / (1 - elbowAt), outwards);
}

function beside(from: Point, to: Point, part: number, outwards: number): Point {
  const length = between(from, to);
  const [dx, dy] = [(to.x - from.x) / length, (to.y - from.y) / length];
  return { x: from.x + dx * length * part + dy * outwards, y: from.y + dy * length * part - dx * outwards };
}
