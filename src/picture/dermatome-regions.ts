import type { DermatomeKey } from '../anatomy/skin.ts';
import { read, recalled, type Source } from '../kernel/cite.ts';
import type { Corners, Part, Region } from './surface.ts';

export interface DermatomeRegion extends Region {
  /** Null: skin of the face, which no spinal root supplies. */
  readonly key: DermatomeKey | null;
  readonly source: Source;
}

const keyPoints = read('isncsci-key-sensory-points');
const axialLines = recalled('grays-anatomy', 'dermatomes, axial lines and the order along pre- and post-axial borders');
const handsAndFeet = recalled('mrc-aids', 'dermatomes of the limbs');
const face = recalled('blumenfeld', 'trigeminal nerve, divisions');

const rows =
  (part: Part, source: Source) =>
  (key: DermatomeKey | null, ...corners: Corners): DermatomeRegion => ({ key, part, corners, source });

const onAxis = rows('axis', axialLines);
const onTrunk = rows('axis', keyPoints);
const onArm = rows('arm', axialLines);
const onSaddle = rows('saddle', recalled('dejong', 'sacral dermatomes'));

/** Everything below an edge that runs once round the unrolled half body, from its front midline to its back midline. */
const below =
  (row: ReturnType<typeof rows>) =>
  (key: DermatomeKey, ...edge: Corners): DermatomeRegion =>
    row(key, [-91, edge[0]?.[1] ?? 0], ...edge, [271, edge.at(-1)?.[1] ?? 0], [271, 1100], [-91, 1100]);

const belowOnAxis = below(onAxis);
const belowOnTrunk = below(onTrunk);

/** On hand and foot: the digits from `first` on, between the webs, with where that edge starts further in. */
function digits(part: Part, key: DermatomeKey, ...corners: Corners): DermatomeRegion {
  return { key, part, corners: [...corners, [7, 1.2], [7, -0.2]], source: handsAndFeet };
}

const everywhere: Corners = [
  [-1, -0.5],
  [300, -0.5],
  [300, 300],
  [-1, 300],
];

/**
 * The dermatomes on the surface; the first row that holds a place says whose it is, so that they tile. Each segment lies
 * below the last one on an edge that winds from the spine round the flank to the front and down the inner side of the limb;
 * on arm and back of the leg segments meet that are no neighbours, along the axial lines. Edges are set midway between the
 * key points of the international standard; between these they are judged.
 */
export const dermatomeRegions: readonly DermatomeRegion[] = [
  // Saddle, in the back view and between the legs
  onTrunk('S4-5', [271, 505], [258, 508], [253, 517], [258, 527], [271, 531]),
  onTrunk('S3', [271, 484], [244, 490], [228, 506], [222, 528], [223, 549], [240, 556], [271, 548]),
  onTrunk('S3', [-91, 503], [-76, 507], [-76, 523], [-84, 533], [-91, 533]),

  // Behind the axial line on the inner side of the leg: what comes round from the front
  onAxis('L2', [271, 548], [263, 555], [253, 590], [247, 665], [271, 668]),
  onAxis('L3', [271, 667], [247, 664], [241, 720], [238, 768], [271, 768]),
  onAxis('L4', [271, 767], [238, 767], [236, 850], [238, 920], [245, 966], [271, 966]),

  // Leg, from the back to the front
  onAxis(
    'S2',
    [271, 495],
    [200, 503],
    [176, 524],
    [164, 570],
    [158, 650],
    [158, 740],
    [164, 800],
    [182, 850],
    [212, 872],
    [245, 872],
    [271, 872],
  ),
  belowOnAxis(
    'S1',
    [60, 1100],
    [79, 965],
    [96, 905],
    [110, 830],
    [117, 740],
    [124, 650],
    [131, 580],
    [141, 532],
    [157, 508],
    [180, 497],
    [271, 484],
  ),
  belowOnAxis(
    'L5',
    [-30, 1100],
    [-12, 950],
    [2, 860],
    [14, 790],
    [30, 735],
    [56, 660],
    [82, 590],
    [99, 534],
    [116, 506],
    [180, 485],
    [271, 474],
  ),
  belowOnAxis(
    'L4',
    [-90, 768],
    [-60, 752],
    [-20, 718],
    [15, 672],
    [50, 610],
    [78, 550],
    [93, 515],
    [112, 490],
    [180, 473],
    [271, 463],
  ),
  belowOnAxis(
    'L3',
    [-90, 667],
    [-60, 657],
    [-30, 641],
    [10, 602],
    [50, 542],
    [75, 507],
    [90, 490],
    [110, 475],
    [180, 461],
    [271, 451],
  ),
  belowOnAxis(
    'L2',
    [-90, 576],
    [-60, 564],
    [-18, 550],
    [40, 502],
    [70, 478],
    [90, 469],
    [120, 459],
    [180, 449],
    [271, 438],
  ),

  // Trunk, from below upwards
  belowOnTrunk(
    'L1',
    [-90, 499],
    [-45, 492],
    [-4, 482],
    [40, 468],
    [68, 457],
    [90, 450],
    [125, 443],
    [180, 436],
    [271, 424],
  ),
  belowOnTrunk('T12', [-90, 460], [0, 455], [60, 440], [90, 432], [180, 413], [271, 402]),
  belowOnTrunk('T11', [-90, 418], [0, 418], [90, 410], [180, 392], [271, 381]),
  belowOnTrunk('T10', [-90, 389], [0, 389], [90, 386], [180, 371], [271, 360]),
  belowOnTrunk('T9', [-90, 366], [0, 366], [90, 365], [180, 351], [271, 340]),
  belowOnTrunk('T8', [-90, 344], [0, 344], [90, 345], [180, 331], [271, 320]),
  belowOnTrunk('T7', [-90, 322], [0, 322], [90, 324], [180, 310], [271, 300]),
  belowOnTrunk('T6', [-90, 300], [0, 300], [90, 304], [180, 289], [271, 279]),
  belowOnTrunk('T5', [-90, 278], [0, 278], [90, 284], [180, 268], [271, 257]),
  belowOnTrunk('T4', [-90, 256], [0, 257], [60, 262], [90, 265], [180, 246], [271, 234]),
  belowOnTrunk('T3', [-90, 234], [30, 236], [70, 245], [90, 252], [108, 246], [180, 223], [271, 211]),
  // Segments C5 to T1 went out with the arm, so that C4 meets T2.
  belowOnTrunk('T2', [-90, 214], [0, 212], [60, 208], [90, 205], [110, 203], [180, 193], [271, 188]),
  belowOnTrunk('C4', [-90, 178], [0, 174], [30, 169], [62, 157], [90, 152], [180, 156], [271, 152]),
  { ...onAxis(null, [-91, -1], [90, -1], [90, 50], [78, 62], [66, 92], [34, 117], [0, 126], [-91, 131]), source: face },
  belowOnTrunk('C3', [-90, 137], [0, 131], [90, 124], [180, 119], [271, 116]),
  belowOnTrunk('C2', [-90, 0], [271, 0]),

  // Arm: the axial line of its front lies between C5, C6 on the outer and T2, T1, C8 on the inner side
  onArm('C4', [-91, -1], [271, -1], [271, 0.03], [90, 0.045], [-91, 0.03]),
  onArm('C7', [-8, 0.84], [12, 1.2], [-28, 1.2]),
  onArm('T2', [-91, -1], [-26, -1], [-22, 0.2], [-36, 0.34], [-91, 0.44]),
  onArm('T2', [271, -1], [158, -1], [170, 0.16], [200, 0.28], [236, 0.38], [271, 0.44]),
  onArm('C8', [-91, 0.78], [-50, 0.86], [-8, 0.92], [-28, 1.2], [-91, 1.2]),
  onArm('T1', [-91, -1], [-26, -1], [-8, 0.56], [-8, 0.93], [-91, 0.93]),
  onArm('T1', [271, 0.1], [169, 0.15], [172, 0.28], [190, 0.45], [206, 0.58], [236, 0.7], [271, 0.78]),
  onArm('C8', [271, 0.1], [169, 0.15], [168, 0.3], [196, 0.56], [217, 1.2], [271, 1.2]),
  onArm('C7', [168, 0.15], [150, 0.16], [146, 0.3], [148, 0.56], [146, 1.2], [220, 1.2], [220, 0.56], [180, 0.3]),
  onArm('C6', [150, 0.1], [134, 0.3], [100, 0.45], [62, 0.57], [22, 0.71], [-9, 0.84], [-9, 1.2], [150, 1.2]),
  onArm('C5', [-91, -1], [271, -1], [271, 2], [-91, 2]),

  // Hand: thumb and half the index finger, half the index and the middle finger, ring and little finger
  digits('palm', 'C8', [4.12, -0.2], [4.12, 0], [3.5, 0.5], [3.5, 1.2]),
  digits('palm', 'C7', [3.23, -0.2], [3.23, 0], [2, 0.5], [2, 1.2]),
  digits('palm', 'C6', [-1, -0.2], [-1, 1.2]),
  digits('hand-back', 'C8', [4.32, -0.2], [4.32, 0], [3.5, 0.5], [3.5, 1.2]),
  digits('hand-back', 'C7', [2.74, -0.2], [2.74, 0], [2, 0.5], [2, 1.2]),
  digits('hand-back', 'C6', [-1, -0.2], [-1, 1.2]),

  // Foot: its inner edge, its top with the great toe, its outer edge; the sole behind and outside
  digits('foot-top', 'S1', [4.1, -0.2], [4.1, 0.2], [4.4, 0.5], [4.5, 0.8], [4.5, 1.2]),
  digits('foot-top', 'L5', [2.6, -0.2], [2.5, 0.22], [1.7, 0.35], [0.9, 0.55], [0.4, 0.66], [-1, 0.66], [-1, 1.2]),
  digits('foot-top', 'L4', [-1, -0.2], [-1, 1.2]),
  {
    ...digits('sole', 'L4'),
    corners: [
      [0, 0.2],
      [0.95, 0.26],
      [1.25, 0.38],
      [1, 0.52],
      [0, 0.62],
    ],
  },
  digits('sole', 'S1', [-1, -0.2], [-1, 0.2], [0.95, 0.26], [1.5, 0.42], [2.4, 0.6], [3.5, 0.8], [3.5, 1.2]),
  digits('sole', 'L5', [-1, -0.2], [-1, 1.2]),

  // Seat from below: rings about the anus
  onSaddle('S4-5', [0, 104], [12, 107], [23, 118], [26, 132], [22, 146], [11, 156], [0, 158], [-9, 158], [-9, 104]),
  onSaddle(
    'S3',
    [-9, 18],
    [16, 22],
    [30, 45],
    [44, 80],
    [58, 105],
    [64, 130],
    [58, 158],
    [38, 178],
    [0, 186],
    [-9, 186],
  ),
  onSaddle('L1', [-9, -9], [90, -9], [70, 10], [40, 18], [16, 22], [-9, 18]),
  onSaddle('L2', [90, -9], [70, 10], [72, 34], [92, 58], [130, 66], [130, -9]),
  onSaddle('S2', ...everywhere),
];
