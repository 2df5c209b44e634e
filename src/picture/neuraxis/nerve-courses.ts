import type { PlaceKey } from '../../anatomy/places.ts';
import type { Segment } from '../../anatomy/segments.ts';
import { onArm as arm, onLeg as leg } from './body-frame.ts';
import type { Point } from './shape.ts';

/** How a stretch of nerve runs on, from the end of what is proximal to it, or from roots or a point where it begins. */
export interface Course {
  readonly roots?: readonly Segment[];
  readonly start?: Point;
  readonly points: readonly Point[];
}

const on = (...points: Point[]): Course => ({ points });
const fromRoots = (roots: readonly Segment[], ...points: Point[]): Course => ({ roots, points });
const gasserian: Point = [14, 66];

/** The course of every stretch of nerve at which a lesion can lie, seen from the front through the body. */
export const nerveCourses: Readonly<Partial<Record<PlaceKey, Course>>> = {
  // Head, neck and trunk
  'ophthalmic-nerve': {
    start: gasserian,
    points: [
      [18, 48],
      [19, 26],
    ],
  },
  'maxillary-nerve': {
    start: gasserian,
    points: [
      [26, 68],
      [33, 78],
    ],
  },
  'mandibular-nerve': {
    start: gasserian,
    points: [
      [20, 84],
      [22, 103],
    ],
  },
  'cervical-plexus': fromRoots(['C2', 'C3', 'C4'], [16, 142], [24, 146]),
  'spinal-accessory-nerve-upper-neck': {
    start: [10, 108],
    points: [
      [22, 118],
      [28, 130],
    ],
  },
  'spinal-accessory-nerve': on([32, 144], [48, 164]),
  'phrenic-nerve': on([22, 200], [28, 260], [42, 296]),
  'greater-occipital-nerve': {
    start: [9, 116],
    points: [
      [22, 92],
      [26, 46],
    ],
  },
  'great-auricular-nerve': on([33, 126], [38, 96]),
  'transverse-cervical-nerve': on([20, 152], [10, 150]),
  'supraclavicular-nerves': on([44, 160], [74, 178]),
  'intercostal-nerves': { points: [] },

  // Brachial plexus and its branches
  'upper-trunk': fromRoots(['C5', 'C6'], [30, 169], [46, 176]),
  'middle-trunk': fromRoots(['C7'], [30, 177], [46, 182]),
  'lower-trunk': fromRoots(['C8', 'T1'], [30, 185], [46, 188]),
  'lateral-cord': on([60, 184], [78, 196]),
  'posterior-cord': on([62, 190], [82, 203]),
  'medial-cord': on([60, 196], [76, 209]),
  'dorsal-scapular-nerve': fromRoots(['C5'], [40, 158], [54, 184], [52, 226]),
  'long-thoracic-nerve': fromRoots(['C5', 'C6', 'C7'], [42, 196], [66, 226], [72, 282]),
  'suprascapular-nerve': on([60, 170], [72, 176]),
  'suprascapular-nerve-spinoglenoid': on([86, 182], [80, 196]),
  'lateral-pectoral-nerve': on([68, 208], [54, 214]),
  'medial-pectoral-nerve': on([64, 222], [48, 230]),
  'subscapular-nerves': on([78, 212], [70, 226]),
  'thoracodorsal-nerve': on([80, 236], [76, 276]),
  'axillary-nerve': on(arm(0.1, -4), arm(0.17, 17)),
  'medial-cutaneous-nerve-of-arm': on(arm(0.25, -21), arm(0.7, -18)),
  'medial-cutaneous-nerve-of-forearm': on(arm(0.5, -22), arm(1, -13), arm(1.7, -14)),
  'intercostobrachial-nerve': fromRoots(['T2'], [60, 214], arm(0.2, -23), arm(0.45, -22)),
  'musculocutaneous-nerve': on(arm(0.2, 4), arm(0.65, 7)),
  'lateral-cutaneous-nerve-of-forearm': on(arm(1, 11), arm(1.8, 11)),

  // Radial
  'radial-nerve-axilla': on(arm(0.12, -2), arm(0.24, 2)),
  'posterior-cutaneous-nerve-of-arm': on(arm(0.4, -10), arm(0.75, -11)),
  'radial-nerve-spiral-groove': on(arm(0.4, 14), arm(0.62, 18)),
  'radial-nerve-elbow': on(arm(0.9, 17), arm(1.04, 15)),
  'posterior-interosseous-nerve': on(arm(1.2, 8), arm(1.65, 7)),
  'superficial-radial-nerve': on(arm(1.35, 17), arm(1.85, 13), arm(2.25, 16)),

  // Median
  'median-nerve-upper-arm': on(arm(0.3, -7), arm(0.65, -8)),
  'median-nerve-elbow': on(arm(1, -4), arm(1.1, -3)),
  'anterior-interosseous-nerve': on(arm(1.3, 3), arm(1.78, 3)),
  'median-nerve-forearm': on(arm(1.4, -3), arm(1.78, -1)),
  'palmar-branch-of-median-nerve': on(arm(1.95, 5), arm(2.15, 8)),
  'median-nerve-wrist': on(arm(2, -1), arm(2.3, 3)),

  // Ulnar
  'ulnar-nerve-upper-arm': on(arm(0.3, -14), arm(0.7, -15)),
  'ulnar-nerve-elbow': on(arm(1, -19), arm(1.1, -17)),
  'ulnar-nerve-forearm': on(arm(1.4, -11), arm(1.75, -8)),
  'dorsal-branch-of-ulnar-nerve': on(arm(1.95, -13), arm(2.25, -17)),
  'palmar-branch-of-ulnar-nerve': on(arm(1.95, -5), arm(2.15, -5)),
  'ulnar-nerve-wrist': on(arm(1.95, -9), arm(2.1, -10)),
  'superficial-branch-of-ulnar-nerve': on(arm(2.3, -15), arm(2.65, -17)),
  'deep-branch-of-ulnar-nerve': on(arm(2.25, -9), arm(2.34, 6)),

  // Lumbar plexus
  'lumbar-plexus': fromRoots(['L1', 'L2', 'L3', 'L4'], [22, 408], [30, 420]),
  'iliohypogastric-nerve': on([52, 414], [68, 430]),
  'ilioinguinal-nerve': on([54, 446], [32, 486]),
  'genitofemoral-nerve': on([34, 452], [38, 484]),
  'lateral-femoral-cutaneous-nerve': on([60, 438], [78, 462], leg(0.15, 32), leg(0.55, 32)),
  'obturator-nerve': on([26, 454], [30, 490], leg(0.35, -20)),
  'femoral-nerve-pelvis': on([44, 440], [52, 466]),
  'femoral-nerve-groin': on(leg(0.06, -2), leg(0.24, 2)),
  'saphenous-nerve': on(leg(0.6, -16), leg(1, -20), leg(1.5, -15), leg(2.05, -9)),

  // Sacral plexus
  'lumbosacral-trunk': fromRoots(['L4', 'L5'], [20, 440], [24, 448]),
  'sacral-plexus': fromRoots(['S1', 'S2', 'S3'], [28, 462], [36, 468]),
  'superior-gluteal-nerve': on([54, 456], [74, 460]),
  'inferior-gluteal-nerve': on([54, 478], [66, 500]),
  'posterior-femoral-cutaneous-nerve': on([40, 500], leg(0.3, -9), leg(0.75, -7)),
  'pudendal-nerve': on([24, 488], [10, 514]),
  'sciatic-nerve': on([52, 490], leg(0.18, 8)),
  'sciatic-nerve-fibular-division': on(leg(0.5, 11), leg(0.88, 15)),
  'common-fibular-nerve': on(leg(1.02, 20), leg(1.12, 22)),
  'lateral-sural-cutaneous-nerve': on(leg(1.05, 12), leg(1.45, 14)),
  'deep-fibular-nerve': on(leg(1.25, 13), leg(1.65, 5)),
  'deep-fibular-nerve-ankle': on(leg(1.95, 2), leg(2.4, -3)),
  'superficial-fibular-nerve': on(leg(1.3, 20), leg(1.65, 14)),
  'superficial-fibular-nerve-ankle': on(leg(1.95, 8), leg(2.4, 7)),
  'sciatic-nerve-tibial-division': on(leg(0.5, 2), leg(0.88, 1)),
  'tibial-nerve-popliteal-fossa': on(leg(1, 0), leg(1.1, -1)),
  'sural-nerve': on(leg(1.45, 7), leg(1.9, 9), leg(2.2, 11)),
  'tibial-nerve-calf': on(leg(1.45, -4), leg(1.75, -6)),
  'medial-calcaneal-nerve': on(leg(2, -5), leg(2.15, 0)),
  'tibial-nerve-tarsal-tunnel': on(leg(1.95, -9), leg(2.1, -10)),
  'medial-plantar-nerve': on(leg(2.4, -10), leg(2.8, -10)),
  'lateral-plantar-nerve': on(leg(2.4, 0), leg(2.8, 3)),
};
