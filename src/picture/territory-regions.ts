import type { TerritoryKey } from '../anatomy/territories.ts';
import { recalled, type Source } from '../kernel/cite.ts';
import type { Corners, Part, Region } from './surface.ts';

export interface TerritoryRegion extends Region {
  readonly source: Source;
}

const rows =
  (part: Part, source: Source) =>
  (...corners: Corners): TerritoryRegion => ({ part, corners, source });

const trigeminal = recalled('blumenfeld', 'trigeminal nerve, divisions');
const cervical = recalled('grays-anatomy', 'cervical plexus and dorsal rami, cutaneous branches');
const trunk = recalled('grays-anatomy', 'thoracic nerves and lumbar plexus, cutaneous branches');
const upperLimb = recalled('mrc-aids', 'upper limb, cutaneous nerve areas');
const lowerLimb = recalled('mrc-aids', 'lower limb, cutaneous nerve areas');
const perineal = recalled('grays-anatomy', 'sacral plexus, pudendal and perineal branches');

const onFace = rows('axis', trigeminal);
const onNeck = rows('axis', cervical);
const onShoulder = rows('arm', cervical);
const onTrunk = rows('axis', trunk);
const onArm = rows('arm', upperLimb);
const onPalm = rows('palm', upperLimb);
const onHandBack = rows('hand-back', upperLimb);
const onLeg = rows('axis', lowerLimb);
const onFootTop = rows('foot-top', lowerLimb);
const onSole = rows('sole', lowerLimb);
const onSaddle = rows('saddle', perineal);
const nearSaddle = rows('axis', perineal);

/** Areas of single branches; a parent nerve below takes those of its branches. Borders between nerves are judged. */
const upper = {
  axillary: [onArm([12, 0.05], [150, 0.05], [152, 0.27], [90, 0.31], [24, 0.29])],
  posteriorArm: [onArm([132, 0.3], [152, 0.12], [186, 0.12], [202, 0.3], [196, 0.54], [146, 0.54])],
  inferiorLateralArm: [onArm([24, 0.29], [90, 0.31], [132, 0.29], [134, 0.54], [90, 0.57], [40, 0.52])],
  posteriorForearm: [onArm([128, 0.52], [198, 0.52], [208, 0.72], [206, 1.02], [152, 1.02], [140, 0.75])],
  superficialRadial: [
    onHandBack([-1, -0.2], [3.6, -0.2], [3.8, 0.3], [4, 0.5], [4, 0.73], [1.5, 0.73], [1.5, 0.88], [-1, 0.88]),
    onArm([88, 0.92], [150, 0.9], [174, 0.99], [172, 1.2], [88, 1.2]),
  ],
  lateralForearm: [
    onArm([-6, 0.52], [40, 0.52], [90, 0.57], [128, 0.54], [140, 0.75], [148, 0.92], [90, 1.02], [4, 1.02]),
  ],
  medialArm: [
    onArm([-91, 0.26], [-34, 0.26], [-14, 0.5], [-91, 0.54]),
    onArm([271, 0.28], [220, 0.3], [204, 0.5], [271, 0.54]),
  ],
  medialForearm: [
    onArm([-91, 0.5], [-6, 0.5], [-6, 0.94], [-20, 1.01], [-91, 1.01]),
    onArm([271, 0.5], [200, 0.53], [208, 0.72], [206, 0.97], [271, 0.97]),
  ],
  intercostobrachial: [
    onArm([-91, -1], [-30, -1], [-26, 0.16], [-40, 0.3], [-91, 0.36]),
    onArm([271, -1], [164, -1], [184, 0.16], [226, 0.3], [271, 0.36]),
    onTrunk([56, 216], [91, 208], [114, 212], [110, 244], [91, 250], [70, 243]),
  ],
  medianPalm: [onPalm([-1, -0.05], [3.5, -0.05], [3.9, 0.42], [1.7, 0.44], [1.5, 0.5], [-1, 0.5])],
  medianDigits: [
    onPalm([-1, 0.48], [1.5, 0.48], [1.7, 0.42], [3.9, 0.42], [4, 0.5], [4, 1.2], [-1, 1.2]),
    onHandBack([1.5, 0.73], [4, 0.73], [4, 1.2], [-1, 1.2], [-1, 0.88], [1.5, 0.88]),
  ],
  ulnarPalm: [onPalm([3.5, -0.05], [3.9, 0.42], [7, 0.42], [7, -0.05])],
  ulnarDigits: [
    onPalm([3.9, 0.42], [7, 0.42], [7, 1.2], [4, 1.2], [4, 0.5]),
    onHandBack([4, 0.73], [7, 0.73], [7, 1.2], [4, 1.2]),
  ],
  ulnarBack: [onHandBack([3.6, -0.05], [3.8, 0.3], [4, 0.5], [4, 0.73], [7, 0.73], [7, -0.05])],
} as const;

const lower = {
  anteriorThigh: [
    onLeg([30, 520], [-12, 545], [-46, 562], [-54, 620], [-66, 690], [-58, 722], [0, 736], [34, 704], [22, 600]),
  ],
  saphenous: [
    onLeg([-91, 706], [-66, 700], [-56, 724], [-10, 738], [4, 770], [4, 860], [-12, 951], [-91, 951]),
    onLeg([271, 706], [242, 726], [236, 850], [244, 966], [271, 966]),
    onFootTop([-1, -0.2], [2.4, 0.2], [1.6, 0.34], [0.9, 0.52], [-1, 0.62]),
  ],
  lateralSural: [onLeg([8, 746], [60, 734], [140, 738], [150, 800], [134, 880], [90, 884], [46, 866], [20, 806])],
  superficialFibular: [
    onLeg([4, 780], [20, 806], [46, 866], [80, 884], [70, 951], [-12, 951], [4, 860]),
    onFootTop(
      [2.5, -0.2],
      [2.4, 0.2],
      [1.6, 0.34],
      [0.9, 0.52],
      [-1, 0.62],
      [-1, 1.2],
      [4.5, 1.2],
      [4.5, 0.8],
      [4.3, 0.5],
      [4.05, 0.2],
      [4.05, -0.2],
    ),
  ],
  deepFibular: [onFootTop([1.55, 0.66], [1.95, 0.77], [2, 0.98], [1.2, 0.98], [1.1, 0.8])],
  sural: [
    onLeg(
      [90, 884],
      [134, 880],
      [150, 800],
      [182, 818],
      [224, 798],
      [236, 850],
      [240, 930],
      [196, 962],
      [176, 1000],
      [79, 1000],
      [70, 951],
      [80, 884],
    ),
    onFootTop([4.05, -0.2], [4.05, 0.2], [4.3, 0.5], [4.5, 0.8], [4.5, 1.2], [7, 1.2], [7, -0.2]),
    onSole([5.15, 0.14], [5.2, 0.7], [7, 0.7], [7, 0.14]),
  ],
  calcaneal: [
    onSole([-1, -0.2], [7, -0.2], [5.2, 0.2], [3.7, 0.27], [-1, 0.31]),
    onLeg([176, 1000], [196, 962], [240, 934], [271, 960], [271, 1000]),
  ],
  medialPlantar: [onSole([-1, 0.31], [3.7, 0.27], [3.4, 0.6], [4, 0.8], [4, 1.2], [-1, 1.2])],
  lateralPlantar: [onSole([3.7, 0.27], [3.4, 0.6], [4, 0.8], [4, 1.2], [7, 1.2], [7, 0.16], [5.2, 0.2])],
} as const;

const fibular = [...lower.lateralSural, ...lower.superficialFibular, ...lower.deepFibular];
const tibial = [...lower.calcaneal, ...lower.medialPlantar, ...lower.lateralPlantar];

/** The areas of skin of the named cutaneous nerves; neighbours overlap, and a parent nerve overlaps its branches. */
export const territoryRegions: Readonly<Record<TerritoryKey, readonly TerritoryRegion[]>> = {
  // Head and neck
  'ophthalmic-nerve': [onFace([-91, -1], [90, -1], [90, 42], [76, 52], [40, 60], [-64, 66], [-76, 82], [-91, 87])],
  'maxillary-nerve': [
    onFace([-91, 87], [-76, 82], [-64, 66], [40, 60], [72, 53], [66, 64], [40, 80], [0, 90], [-40, 98], [-91, 96]),
  ],
  'mandibular-nerve': [
    onFace(
      [-91, 96],
      [-40, 98],
      [0, 90],
      [40, 80],
      [66, 64],
      [76, 46],
      [90, 44],
      [80, 62],
      [66, 92],
      [34, 117],
      [0, 126],
      [-91, 131],
    ),
  ],
  'mental-nerve': [onFace([-91, 104], [-44, 104], [-18, 111], [-26, 124], [-91, 131])],
  'greater-occipital-nerve': [onNeck([271, -1], [91, -1], [91, 20], [126, 40], [146, 88], [200, 112], [271, 114])],
  'lesser-occipital-nerve': [onNeck([78, 50], [126, 42], [146, 88], [150, 116], [110, 120], [104, 86], [78, 66])],
  'great-auricular-nerve': [onNeck([78, 66], [104, 84], [112, 116], [90, 124], [44, 126], [34, 117], [66, 92])],
  'transverse-cervical-nerve': [onNeck([-91, 131], [0, 126], [34, 117], [62, 125], [72, 140], [44, 160], [-91, 176])],
  'supraclavicular-nerves': [
    onNeck(
      [-91, 176],
      [44, 160],
      [74, 140],
      [110, 142],
      [160, 162],
      [152, 194],
      [110, 203],
      [90, 205],
      [60, 208],
      [0, 213],
      [-91, 215],
    ),
    onShoulder([-91, -1], [204, -1], [204, 0.03], [90, 0.05], [-91, 0.03]),
  ],

  // Upper limb
  'axillary-nerve': upper.axillary,
  'radial-nerve': [
    ...upper.posteriorArm,
    ...upper.inferiorLateralArm,
    ...upper.posteriorForearm,
    ...upper.superficialRadial,
  ],
  'posterior-cutaneous-nerve-of-arm': upper.posteriorArm,
  'inferior-lateral-cutaneous-nerve-of-arm': upper.inferiorLateralArm,
  'posterior-cutaneous-nerve-of-forearm': upper.posteriorForearm,
  'superficial-radial-nerve': upper.superficialRadial,
  'lateral-cutaneous-nerve-of-forearm': upper.lateralForearm,
  'medial-cutaneous-nerve-of-arm': upper.medialArm,
  'medial-cutaneous-nerve-of-forearm': upper.medialForearm,
  'intercostobrachial-nerve': upper.intercostobrachial,
  'median-nerve': [...upper.medianPalm, ...upper.medianDigits],
  'palmar-branch-of-median-nerve': upper.medianPalm,
  'ulnar-nerve': [...upper.ulnarPalm, ...upper.ulnarDigits, ...upper.ulnarBack],
  'dorsal-branch-of-ulnar-nerve': upper.ulnarBack,
  'palmar-branch-of-ulnar-nerve': upper.ulnarPalm,
  'superficial-branch-of-ulnar-nerve': upper.ulnarDigits,

  // Trunk and groin
  'intercostal-nerves': [
    onTrunk(
      [-91, 215],
      [0, 213],
      [60, 208],
      [90, 205],
      [120, 206],
      [196, 226],
      [204, 250],
      [204, 400],
      [180, 428],
      [90, 446],
      [68, 456],
      [40, 467],
      [-4, 481],
      [-45, 491],
      [-91, 498],
    ),
  ],
  'dorsal-rami': [
    onTrunk(
      [271, 114],
      [240, 116],
      [222, 160],
      [204, 240],
      [204, 400],
      [176, 440],
      [158, 478],
      [186, 504],
      [240, 494],
      [271, 486],
    ),
  ],
  'iliohypogastric-nerve': [
    onTrunk(
      [-91, 468],
      [-20, 474],
      [40, 456],
      [90, 442],
      [132, 438],
      [142, 470],
      [90, 482],
      [66, 470],
      [0, 484],
      [-45, 493],
      [-91, 500],
    ),
  ],
  'ilioinguinal-nerve': [
    onTrunk([-91, 499], [-46, 492], [-40, 520], [-62, 550], [-91, 562]),
    rows('saddle', trunk)([-9, -9], [60, -9], [36, 18], [16, 24], [13, 48], [-9, 48]),
  ],
  'genitofemoral-nerve': [onTrunk([-46, 492], [10, 484], [8, 520], [-28, 548], [-52, 540], [-40, 520])],

  // Thigh
  'lateral-femoral-cutaneous-nerve': [
    onLeg([66, 482], [90, 478], [118, 500], [134, 560], [130, 640], [118, 700], [34, 704], [22, 600], [32, 520]),
  ],
  'anterior-femoral-cutaneous-nerve': lower.anteriorThigh,
  'femoral-nerve': [...lower.anteriorThigh, ...lower.saphenous],
  'obturator-nerve': [
    onLeg([-91, 566], [-60, 560], [-48, 600], [-58, 670], [-66, 700], [-91, 706]),
    onLeg([271, 566], [256, 584], [250, 690], [271, 706]),
  ],
  'posterior-femoral-cutaneous-nerve': [
    onLeg(
      [130, 520],
      [166, 512],
      [222, 528],
      [240, 556],
      [258, 570],
      [252, 610],
      [248, 700],
      [226, 796],
      [182, 816],
      [144, 784],
      [128, 700],
      [134, 600],
    ),
    onSaddle([40, 20], [60, 45], [130, 66], [130, 204], [36, 204], [66, 160], [70, 125], [50, 78], [34, 44]),
  ],

  // Leg and foot
  'saphenous-nerve': lower.saphenous,
  'sciatic-nerve': [...fibular, ...lower.sural, ...tibial],
  'common-fibular-nerve': fibular,
  'lateral-sural-cutaneous-nerve': lower.lateralSural,
  'superficial-fibular-nerve': lower.superficialFibular,
  'deep-fibular-nerve': lower.deepFibular,
  'sural-nerve': lower.sural,
  'tibial-nerve': tibial,
  'medial-calcaneal-nerve': lower.calcaneal,
  'medial-plantar-nerve': lower.medialPlantar,
  'lateral-plantar-nerve': lower.lateralPlantar,

  // Saddle
  'pudendal-nerve': [
    onSaddle([-9, 24], [16, 24], [30, 45], [44, 80], [58, 105], [64, 130], [56, 156], [30, 168], [-9, 172]),
    nearSaddle([271, 496], [248, 502], [236, 520], [238, 540], [250, 552], [271, 548]),
    nearSaddle([-91, 505], [-77, 509], [-77, 522], [-84, 532], [-91, 532]),
  ],
};
