import type { LandmarkKey } from '../anatomy/landmarks.ts';
import type { skinExtents } from '../anatomy/skin-extents.ts';
import { commonPractice, read, recalled, type Source } from '../kernel/cite.ts';
import type { Part, Spot } from './surface.ts';

export type ExtentKey = keyof typeof skinExtents;
export type SpotLandmarkKey = Exclude<LandmarkKey, ExtentKey>;

export interface LandmarkRow {
  /** Where it may be tapped: one place for each picture that shows it. */
  readonly spots: readonly Spot[];
  readonly source: Source;
}

const surface = recalled('grays-anatomy', 'surface anatomy');
const keyPoint = read('isncsci-key-sensory-points');

const rowOn =
  (part: Part, source = surface) =>
  (around: number, along: number, ...more: readonly Spot[]): LandmarkRow => ({
    spots: [{ part, around, along }, ...more],
    source,
  });
const and = (part: Part, around: number, along: number): Spot => ({ part, around, along });

const onAxis = rowOn('axis');
const onTrunk = rowOn('axis', keyPoint);
const onArm = rowOn('arm');
const onPalm = rowOn('palm');
const onHandBack = rowOn('hand-back');
const onFootTop = rowOn('foot-top');
const onSole = rowOn('sole', commonPractice);
const onSaddle = rowOn('saddle', commonPractice);

/** Where the places named at the bedside lie on the surface. */
export const landmarkSpots: Readonly<Record<SpotLandmarkKey, LandmarkRow>> = {
  // Face and scalp
  forehead: onAxis(-30, 36),
  cheek: onAxis(-4, 78),
  chin: onAxis(-70, 117),
  'angle-of-jaw': onAxis(66, 100),
  'ear-lobe': onAxis(90, 84),
  vertex: onAxis(210, 16),
  occiput: onAxis(222, 76),

  // Neck and shoulder cape
  'neck-front': onAxis(-24, 146),
  'supraclavicular-fossa': onTrunk(6, 166),
  clavicle: onAxis(-10, 181),
  'shoulder-tip': onAxis(84, 178, and('axis', 98, 180)),

  // Arm and forearm
  'outer-upper-arm': onArm(60, 0.2, and('arm', 118, 0.2)),
  'inner-upper-arm': onArm(-62, 0.34),
  axilla: onTrunk(88, 240),
  'back-of-arm': onArm(168, 0.36),
  elbow: onArm(176, 0.56),
  'outer-forearm': onArm(48, 0.74),
  'inner-forearm': onArm(-48, 0.74),
  'back-of-forearm': onArm(178, 0.76),
  wrist: onArm(0, 0.985, and('arm', 180, 0.985)),

  // Hand
  'thenar-eminence': onPalm(1, 0.3),
  'hypothenar-eminence': onPalm(5, 0.2),
  palm: onPalm(3.2, 0.3),
  thumb: onPalm(1, 0.72, and('hand-back', 1, 0.72)),
  'index-finger': onPalm(2, 0.7, and('hand-back', 2, 0.7)),
  'middle-finger': onPalm(3, 0.7, and('hand-back', 3, 0.7)),
  'ring-finger': onPalm(4, 0.72, and('hand-back', 4, 0.72)),
  'ring-finger-radial-half': onPalm(3.72, 0.56),
  'ring-finger-ulnar-half': onPalm(4.28, 0.56),
  'little-finger': onPalm(5, 0.7, and('hand-back', 5, 0.7)),
  fingertips: onPalm(3, 0.96, and('palm', 2, 0.96), and('palm', 4, 0.96)),
  'dorsum-of-hand': onHandBack(3, 0.3),
  'dorsum-of-hand-ulnar-side': onHandBack(5, 0.28),
  'first-dorsal-web-space-of-hand': onHandBack(1.9, 0.34),

  // Trunk
  sternum: onAxis(-68, 224),
  chest: onAxis(-14, 236),
  nipple: onTrunk(4, 267),
  xiphisternum: onTrunk(-66, 308),
  'costal-margin': onAxis(10, 342),
  epigastrium: onAxis(-64, 340),
  umbilicus: onTrunk(-66, 400),
  'lower-abdomen': onAxis(-50, 446),
  'anterior-superior-iliac-spine': onAxis(64, 456),
  groin: onAxis(-40, 500),
  back: onAxis(230, 300),
  'lower-back': onAxis(235, 425),

  // Thigh and knee
  buttock: onAxis(190, 490),
  'outer-thigh': onAxis(68, 600),
  'front-of-thigh': onAxis(0, 600),
  'inner-thigh': onAxis(-70, 600),
  'back-of-thigh': onAxis(180, 620),
  'popliteal-fossa': onAxis(182, 735),
  knee: onAxis(66, 726),
  patella: onAxis(-14, 722),

  // Leg and ankle
  'tibial-tuberosity': onAxis(-8, 768),
  shin: onAxis(-12, 850),
  'inner-shin': onAxis(-66, 820),
  'outer-shin': onAxis(60, 820),
  calf: onAxis(188, 815),
  ankle: onAxis(-4, 932),
  'medial-malleolus': onAxis(-76, 944),
  'lateral-malleolus': onAxis(78, 946, and('axis', 104, 950)),

  // Foot
  'dorsum-of-foot': onFootTop(2.8, 0.5),
  'first-web-space-of-foot': onFootTop(1.6, 0.76),
  'great-toe': onFootTop(1, 0.9, and('sole', 1, 0.92)),
  toes: onFootTop(3, 0.9, and('sole', 3, 0.92)),
  'little-toe': onFootTop(5, 0.9, and('sole', 5, 0.9)),
  heel: onSole(3, 0.1, and('axis', 180, 974)),
  sole: onSole(3, 0.42),
  'sole-medial': onSole(1.6, 0.66),
  'sole-lateral': onSole(4.6, 0.56),
  'outer-border-of-foot': onFootTop(5, 0.5),

  // Saddle
  genitals: onSaddle(10, 42),
  saddle: onSaddle(48, 110),
  'perianal-skin': onSaddle(14, 130),
};
