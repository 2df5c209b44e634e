import { ellipse, line, type Outline, type Point, smooth, type ViewKey } from './shape.ts';

const bothSides = (points: readonly Point[]): readonly Point[] => [
  ...points,
  ...points.map(([x, y]): Point => [-x, y]).reverse(),
];
const whole = (...points: Point[]): Outline => smooth(...bothSides(points));

/** What lies around the drawings of a view and is never marked: the edge of a section, the grey matter, the midline. */
export const backgrounds: Readonly<Partial<Record<ViewKey, readonly Outline[]>>> = {
  cortex: [],
  deep: [whole([0, -66], [8, -76], [40, -72], [74, -40], [82, 8], [72, 52], [40, 76], [8, 78], [0, 68])],
  visual: [whole([0, 74], [10, 88], [40, 86], [84, 50], [84, 0], [76, -34])],
  brainstem: [
    whole([0, -140], [6, -156], [22, -162], [42, -150], [42, -120], [36, -92], [16, -84], [0, -88]),
    whole([0, -78], [8, -82], [34, -78], [54, -54], [52, -30], [40, -14], [0, -12]),
    whole([0, -13], [52, -22], [76, 2], [64, 34], [18, 40], [0, 34]),
    whole([0, 48], [8, 44], [22, 44], [42, 60], [46, 84], [32, 104], [0, 108]),
  ],
  'cord-section': [ellipse(0, 0, 54, 44), line([0, -44], [0, -8])],
};
