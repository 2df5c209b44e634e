import { brainStructures, type StructureKey } from '../../anatomy/brain/structures.ts';
import { type Drawing, ellipse, line, type Outline, polygon } from './shape.ts';

export interface BrainDrawing extends Drawing {
  /** What of the brain lies in it. */
  readonly holds: readonly StructureKey[];
}

/** A drawing of one structure of the head, under its own name. */
export function structure(key: StructureKey, ...outlines: Outline[]): BrainDrawing {
  const { label, paired } = brainStructures[key];
  return { name: key, label, paired, outlines, holds: [key] };
}

/** An axial section at the height of the internal capsule, front upwards. */
export function deepDrawings(): readonly BrainDrawing[] {
  return [
    structure(
      'corona-radiata',
      polygon([52, -60], [60, -62], [70, -30], [72, 4], [66, 34], [60, 34], [65, 4], [62, -28]),
    ),
    structure('frontopontine-fibres', polygon([18, -34], [24, -37], [33, -22], [26, -17])),
    structure('internal-capsule-genu', polygon([21, -15], [25, -16], [31, -20], [32, -13], [25, -8], [20, -10])),
    structure('internal-capsule-posterior-limb', polygon([22, -8], [25, -6], [32, -11], [48, 24], [43, 32], [38, 29])),
    structure(
      'striatum',
      polygon([9, -42], [16, -44], [17, -30], [24, -15], [18, -13], [10, -24]),
      polygon([36, -34], [45, -32], [54, -8], [53, 14], [48, 16], [44, -8]),
    ),
    structure('globus-pallidus', polygon([33, -20], [38, -22], [43, -7], [46, 14], [43, 10])),
    structure('medial-thalamus', polygon([4, -5], [11, -8], [14, 12], [13, 30], [4, 24])),
    structure('ventrolateral-nucleus', polygon([12, -8], [20, -7], [28, 10], [15, 11])),
    structure('ventral-posteromedial-nucleus', polygon([15, 13], [24, 13], [25, 27], [15, 27])),
    structure('ventral-posterolateral-nucleus', polygon([26, 13], [30, 13], [37, 30], [30, 34], [26, 27])),
    structure('hypothalamus', polygon([2, -20], [8, -21], [10, -11], [2, -10])),
    structure('subthalamic-nucleus', ellipse(21, 36, 6, 4)),
    structure('thalamocortical-radiation', polygon([38, 36], [46, 34], [58, 48], [52, 64], [44, 60])),
    {
      name: 'ventricles',
      label: 'intracranial pressure (ventricles)',
      paired: false,
      outlines: [
        polygon([-1.5, -9], [1.5, -9], [1.5, 26], [-1.5, 26]),
        polygon([3, -46], [8, -44], [8, -26], [3, -22], [-3, -22], [-8, -26], [-8, -44], [-3, -46]),
      ],
      holds: ['intracranial-pressure'],
    },
  ];
}

/** The visual pathway from the eyes to the visual cortex, seen from below the brain turned to the same side. */
export function visualDrawings(): readonly BrainDrawing[] {
  return [
    {
      ...structure(
        'retina',
        polygon([22, -78], [34, -92], [50, -92], [62, -78], [58, -74], [48, -84], [36, -84], [26, -74]),
      ),
      holds: ['retina', 'inner-retina'],
    },
    structure('optic-nerve-head', ellipse(40, -66, 5, 4)),
    structure('optic-nerve', line([39, -61], [30, -44], [8, -30])),
    structure('optic-chiasm', polygon([-9, -30], [9, -30], [9, -16], [-9, -16])),
    structure('optic-tract', line([8, -17], [22, -8], [34, 4])),
    structure('lateral-geniculate-body', ellipse(38, 8, 6, 5)),
    structure('lower-optic-radiation', line([42, 11], [70, -14], [74, 20], [50, 62], [26, 78])),
    structure('upper-optic-radiation', line([40, 14], [46, 34], [34, 58], [22, 72])),
  ];
}
