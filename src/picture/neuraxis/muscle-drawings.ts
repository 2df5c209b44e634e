import type { MuscleGroup } from '../../anatomy/movement.ts';
import type { Faculty } from '../../anatomy/probe.ts';
import { onArm, onLeg } from './body-frame.ts';
import { type Drawing, ellipse, type Outline, type Point, polygon, smooth } from './shape.ts';

/** Muscles that cranial nerves serve, and what shows that they fail. */
export const headMuscles = {
  eyes: ['eyelid-elevation', 'oculomotor', 'abducens', 'eye-movement-fatigue'],
  face: ['upper-face', 'lower-face', 'jaw-power'],
  throat: ['palate', 'swallowing', 'voice', 'speech-articulation', 'tongue'],
} as const satisfies Readonly<Record<string, readonly Faculty[]>>;

export type MuscleRegion = MuscleGroup | keyof typeof headMuscles;

/** A piece of a limb between two places along it, from an inner to an outer edge. */
function piece(
  on: (along: number, outwards: number) => Point,
  [from, to]: readonly [number, number],
  [inner, outer]: readonly [number, number],
): Outline {
  const middle = (from + to) / 2;
  return smooth(
    on(from, inner),
    on(middle, inner - 2),
    on(to, inner),
    on(to, outer),
    on(middle, outer + 2),
    on(from, outer),
  );
}

/** Where each group of muscles is shown, and what it is called. In front and behind stand side by side. */
const regions: Readonly<Record<MuscleRegion, readonly [label: string, Outline]>> = {
  eyes: ['eyelid and eye muscles', ellipse(15, 60, 8, 5)],
  face: ['facial and jaw muscles', smooth([10, 74], [32, 70], [33, 92], [16, 108], [8, 96])],
  throat: ['muscles of the throat and tongue', smooth([1, 112], [9, 112], [8, 126], [1, 126])],
  'neck-flexors': ['neck flexors', smooth([1, 128], [10, 128], [10, 158], [1, 158])],
  'neck-extensors': ['neck extensors', smooth([13, 120], [24, 124], [32, 158], [14, 158])],
  scapular: ['muscles of the shoulder blade', smooth([40, 164], [74, 180], [70, 224], [46, 230])],
  shoulder: ['shoulder muscles', piece(onArm, [-0.05, 0.32], [-12, 24])],
  'upper-arm': ['upper arm', piece(onArm, [0.36, 0.94], [-20, 20])],
  'forearm-extensors': ['wrist and finger extensors', piece(onArm, [1.06, 1.66], [2, 19])],
  'forearm-flexors': ['wrist flexors', piece(onArm, [1.06, 1.5], [-18, -1])],
  'finger-flexors': ['finger flexors', piece(onArm, [1.54, 1.95], [-13, 0])],
  'hand-thenar': ['thenar and first dorsal interosseous muscles', piece(onArm, [2.05, 2.45], [3, 19])],
  hand: ['other small hand muscles', piece(onArm, [2.05, 2.6], [-17, 0])],
  respiratory: ['breathing muscles', smooth([1, 296], [40, 298], [64, 316], [62, 324], [36, 310], [1, 308])],
  trunk: ['trunk muscles', smooth([1, 316], [40, 320], [60, 340], [62, 420], [20, 444], [1, 446])],
  hip: ['hip muscles', smooth([34, 450], [72, 444], onLeg(0.12, 34), onLeg(0.24, 30), onLeg(0.24, -28), [28, 500])],
  'knee-extensors': ['knee extensors', piece(onLeg, [0.28, 0.9], [1, 32])],
  'knee-flexors': ['knee flexors', piece(onLeg, [0.3, 0.9], [-28, -3])],
  'leg-anterior': ['ankle and toe extensors', piece(onLeg, [1.08, 1.8], [2, 19])],
  'leg-posterior': ['calf muscles', piece(onLeg, [1.08, 1.75], [-20, -2])],
  foot: ['small foot muscles', polygon(onLeg(2.05, -9), onLeg(2.8, -11), onLeg(2.9, 6), onLeg(2.05, 7))],
};

export const muscleName = (region: MuscleRegion): string => `muscle-${region}`;
export const endPlateName = (region: MuscleRegion): string => `end-plates-${region}`;

function middle({ form, points }: Outline): Point {
  if (form === 'ellipse') return points[0] ?? [0, 0];
  const sum = points.reduce<Point>(([ax, ay], [x, y]) => [ax + x, ay + y], [0, 0]);
  return [sum[0] / points.length, sum[1] / points.length];
}

/** Every region of muscle, and the end plates in it, where nerve and muscle meet. */
export function muscleDrawings(): readonly Drawing[] {
  const rows = Object.entries(regions) as [MuscleRegion, readonly [string, Outline]][];
  return [
    ...rows.map(
      ([region, [label, outline]]): Drawing => ({ name: muscleName(region), label, paired: true, outlines: [outline] }),
    ),
    ...rows.map(([region, [label, outline]]): Drawing => {
      const [x, y] = middle(outline);
      return {
        name: endPlateName(region),
        label: `neuromuscular junctions of the ${label}`,
        paired: true,
        outlines: [ellipse(x, y, 4, 4)],
      };
    }),
  ];
}
