import { brainStructures, type StructureKey } from '../../anatomy/brain/structures.ts';
import { type Drawing, ellipse, line, type Outline, type Point, polygon } from './shape.ts';

/** Half the breadth and half the length of a hemisphere seen from above. */
const breadth = 92;
const length = 112;
/** How far the strips run forwards on their way outwards, as the central sulcus does. */
const slant = 0.05;

/** A place on the unrolled hemisphere: `u` from the midline outwards, `v` from the frontal to the occipital pole, 0 to 1. */
function onHemisphere(u: number, v: number): Point {
  const along = 2 * (v - slant * u * 4 * v * (1 - v)) - 1;
  const half = breadth * (1 - Math.abs(along) ** 2.4) ** (1 / 2.4);
  return [3 + u * half, along * length];
}

/** Where each part of the cortex lies: [u from, u to, v from, v to]. The medial surface is next to the midline, the underside outermost. */
const cells = {
  'medial-frontal-cortex': [0, 0.22, 0.1, 0.37],
  'orbitofrontal-cortex': [0, 1, 0.01, 0.1],
  'dorsolateral-frontal-cortex': [0.22, 0.62, 0.1, 0.29],
  'frontal-eye-field': [0.22, 0.62, 0.29, 0.37],
  'inferior-frontal-gyrus': [0.62, 1, 0.1, 0.37],
  'motor-cortex-foot': [0, 0.17, 0.37, 0.45],
  'motor-cortex-leg': [0.17, 0.34, 0.37, 0.45],
  'motor-cortex-arm': [0.34, 0.54, 0.37, 0.45],
  'motor-cortex-hand': [0.54, 0.77, 0.37, 0.45],
  'motor-cortex-face': [0.77, 1, 0.37, 0.45],
  'sensory-cortex-foot': [0, 0.17, 0.45, 0.53],
  'sensory-cortex-leg': [0.17, 0.34, 0.45, 0.53],
  'sensory-cortex-arm': [0.34, 0.54, 0.45, 0.53],
  'sensory-cortex-hand': [0.54, 0.77, 0.45, 0.53],
  'sensory-cortex-face': [0.77, 1, 0.45, 0.53],
  'superior-parietal-lobule': [0, 0.44, 0.53, 0.69],
  'inferior-parietal-lobule': [0.44, 0.72, 0.53, 0.69],
  'superior-temporal-gyrus': [0.72, 1, 0.53, 0.69],
  'medial-temporal-lobe': [0.44, 1, 0.69, 0.79],
  'occipital-cortex-above-calcarine': [0, 0.44, 0.69, 0.79],
  'occipital-cortex-below-calcarine': [0, 0.44, 0.79, 0.9],
  'ventral-occipitotemporal-cortex': [0.44, 1, 0.79, 0.9],
  'occipital-pole': [0, 1, 0.9, 0.99],
} as const satisfies Readonly<Partial<Record<StructureKey, readonly [number, number, number, number]>>>;

const steps = [0, 1 / 3, 2 / 3, 1];

function cell([u0, u1, v0, v1]: readonly [number, number, number, number]): Outline {
  const along = (from: number, to: number) => steps.map((step) => from + (to - from) * step);
  return polygon(
    ...along(u0, u1).map((u) => onHemisphere(u, v0)),
    ...along(v0, v1)
      .slice(1, -1)
      .map((v) => onHemisphere(u1, v)),
    ...along(u1, u0).map((u) => onHemisphere(u, v1)),
  );
}

const around = [...Array(17).keys()].map((step): Point => {
  const angle = (Math.PI * step) / 16;
  return [(breadth + 9) * Math.sin(angle), -(length + 8) * Math.cos(angle)];
});

/** The cortex of both hemispheres unrolled, and what wraps it. */
export function cortexDrawings(): readonly (Drawing & { readonly holds: readonly StructureKey[] })[] {
  const rows = Object.entries(cells) as [keyof typeof cells, (typeof cells)[keyof typeof cells]][];
  return [
    ...rows.map(([key, place]) => ({
      name: key,
      label: brainStructures[key].label,
      paired: true,
      outlines: [cell(place)],
      holds: [key],
    })),
    {
      name: 'meninges',
      label: 'meninges',
      paired: false,
      outlines: [line(...around, ...around.map(([x, y]): Point => [-x, y]).reverse())],
      holds: ['meninges'],
    },
    {
      name: 'olfactory-nerve',
      label: brainStructures['olfactory-nerve'].label,
      paired: true,
      outlines: [ellipse(9, -length - 22, 4, 9)],
      holds: ['olfactory-nerve'],
    },
  ];
}
