import { brainFunctionTable, type WiredFunction } from '../../anatomy/brain/functions.ts';
import type { PlaceKey } from '../../anatomy/places.ts';
import type { Faculty } from '../../anatomy/probe.ts';
import { segmentIndex } from '../../anatomy/segments.ts';
import { type BodySide, bodySides, opposite, type Side, sidesOf } from '../../kernel/side.ts';
import type { Hypothesis } from '../hypothesis.ts';
import { cordIndex, placeIndex } from '../lesion.ts';
import { facultyKey } from '../process.ts';

/**
 * Chance that a sign of a faculty is recorded in people without a lesion of it; what is not listed is rarer. Signs that
 * nobody records by mistake, such as half a field of vision gone, are rarer still. Judged unless a work is named.
 */
const inHealth: Readonly<Partial<Record<Faculty, number>>> = {
  'bladder-urgency': 0.08,
  sexual: 0.06,
  // Positive signs of functional weakness are found in a few of those with a lesion: specificities from 0.9 up (Daum 2014, recalled).
  effort: 0.02,
  bowel: 0.04,
  'visual-acuity': 0.04,
  'optic-atrophy': 0.006,
  hearing: 0.05,
  smell: 0.04,
  // 37 % of healthy people have no gag reflex (Davies 1995, read); fewer are recorded so.
  gag: 0.2,
  gut: 0.05,
  sweating: 0.03,
  'blood-pressure': 0.04,
  'heart-rate': 0.04,
  'frontal-release': 0.06,
  'postural-tremor': 0.04,
  'mood-behaviour': 0.04,
  memory: 0.03,
  executive: 0.02,
  attention: 0.02,
  orientation: 0.015,
  'nystagmus-gaze-evoked': 0.015,
  'nystagmus-vestibular': 0.005,
  pursuit: 0.04,
  'saccade-accuracy': 0.01,
  'balance-to-side': 0.015,
  'axial-bradykinesia': 0.015,
  bradykinesia: 0.01,
  'gait-initiation': 0.008,
  'limb-coordination': 0.02,
  corneal: 0.015,
  palate: 0.006,
  construction: 0.015,
  swallowing: 0.015,
  breathing: 0.02,
  fatigability: 0.02,
  'voice-fatigability': 0.006,
  'eyelid-elevation': 0.01,
  'lower-face': 0.005,
  tongue: 0.0015,
  'trigeminal-sensation': 0.002,
  trochlear: 0.0015,
  'speech-articulation': 0.008,
  'sympathetic-eye': 0.0025,
  'visual-field-half': 0.001,
  'visual-field-upper-quadrant': 0.0015,
  'visual-field-lower-quadrant': 0.0015,
  'visual-field-bitemporal': 0.0007,
  'junctional-field': 0.0001,
  oculomotor: 0.0012,
  'superior-rectus': 0.0012,
  abducens: 0.0015,
  'gaze-horizontal': 0.0008,
  internuclear: 0.0008,
  'paralytic-divergence': 0.0002,
  pretectal: 0.003,
  'tonic-pupil': 0.002,
  consciousness: 0.002,
  'language-expression': 0.0015,
  'language-comprehension': 0.0015,
  'speech-initiation': 0.001,
  'spatial-attention': 0.002,
  ballism: 0.0005,
  chorea: 0.002,
  'upper-face': 0.0015,
  'tongue-denervation': 0.002,
  'pupil-afferent': 0.002,
  'visual-recognition': 0.0015,
  reading: 0.002,
};

const rareInHealth = 0.004;

const sacral = ['S2', 'S3', 'S4'] as const;
const phrenic = ['C3', 'C4', 'C5'] as const;

/** Mean loss over both sides of the fibres of some segments: motor cells and roots, and dorsal roots. */
function segmentalLoss(
  hypothesis: Hypothesis,
  segments: readonly ('C3' | 'C4' | 'C5' | 'S2' | 'S3' | 'S4')[],
): { motor: number; sensory: number } {
  const { ventralRoot, anteriorHorn, dorsalRoot } = hypothesis.pathways.damage;
  let motor = 0;
  let sensory = 0;
  for (const side of bodySides) {
    for (const segment of segments) {
      const cell = cordIndex(side, segmentIndex(segment));
      motor += 1 - (1 - (ventralRoot[cell] ?? 0)) * (1 - (anteriorHorn[cell] ?? 0));
      sensory += dorsalRoot[cell] ?? 0;
    }
  }
  const count = segments.length * bodySides.length;
  return { motor: motor / count, sensory: sensory / count };
}

/** What both halves of the cord have lost together: bladder and bowel keep working on one half. */
function bilateralLossTo(hypothesis: Hypothesis, segment: 'S2' | 'C4'): number {
  const index = segmentIndex(segment);
  return Math.min(...bodySides.map((side) => 1 - hypothesis.pathways.motorTo(side, index)));
}

/** The share of a faculty's failure that cord, roots and the branches of the trigeminal nerve decide. */
function wiredOutside(hypothesis: Hypothesis, faculty: Faculty, side: BodySide): number {
  switch (faculty) {
    case 'bladder-retention': {
      const lower = segmentalLoss(hypothesis, sacral);
      return Math.max(0.8 * Math.max(lower.motor, lower.sensory), 0.55 * bilateralLossTo(hypothesis, 'S2'));
    }
    case 'bladder-urgency':
      // An irritable bladder comes early, before the legs are far gone.
      return 0.7 * bilateralLossTo(hypothesis, 'S2') ** 0.7;
    case 'bowel':
      return Math.max(0.6 * segmentalLoss(hypothesis, sacral).motor, 0.35 * bilateralLossTo(hypothesis, 'S2'));
    case 'anal-tone':
      return Math.max(0.85 * segmentalLoss(hypothesis, sacral).motor, 0.3 * bilateralLossTo(hypothesis, 'S2'));
    case 'sexual':
      return Math.max(0.6 * segmentalLoss(hypothesis, sacral).motor, 0.4 * bilateralLossTo(hypothesis, 'S2'));
    case 'saddle-sensation':
      return Math.max(0.92 * segmentalLoss(hypothesis, sacral).sensory, 0.6 * bilateralPainLoss(hypothesis));
    case 'breathing':
      return Math.max(0.7 * segmentalLoss(hypothesis, phrenic).motor, 0.5 * bilateralLossTo(hypothesis, 'C4'));
    case 'sympathetic-eye':
      // Two small pupils and two low lids are alike, and seldom noticed.
      return sympatheticLoss(hypothesis, side) * (1 - sympatheticLoss(hypothesis, opposite(side)));
    case 'trigeminal-sensation':
      return mean(divisions.map((division) => placeLoss(hypothesis, side, division)));
    case 'corneal':
      return placeLoss(hypothesis, side, 'ophthalmic-nerve');
    case 'cortical-sensation':
      // Shapes are not felt by a hand without joint position sense either.
      return 0.6 * (1 - hypothesis.pathways.positionFrom(side, segmentIndex('C7')));
    default:
      return 0;
  }
}

function bilateralPainLoss(hypothesis: Hypothesis): number {
  const index = segmentIndex('S4');
  return Math.min(...bodySides.map((side) => 1 - hypothesis.pathways.painFrom(side, index)));
}

const divisions = ['ophthalmic-nerve', 'maxillary-nerve', 'mandibular-nerve'] as const;

function placeLoss(hypothesis: Hypothesis, side: BodySide, place: PlaceKey): number {
  return hypothesis.pathways.damage.sensoryPlace[placeIndex(side, place)] ?? 0;
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

/** Segments through which the sympathetic fibres for the eye run down the cord, uncrossed, before they leave at T1. */
const sympatheticOutflow = segmentIndex('T1');
/** Chance that damage of their stretch shows at the pupil: in the lateral column, at the T1 root, at the lower trunk. Judged. */
const sympatheticShare = { cord: 0.4, T1: 0.4, C8: 0.1, lowerTrunk: 0.3 } as const;

function sympatheticLoss({ pathways: { damage } }: Hypothesis, side: BodySide): number {
  let kept = 1;
  for (let segment = 0; segment <= sympatheticOutflow; segment += 1) {
    // The fibres lie beside the corticospinal tract and suffer when one half of the cord is hurt more than the other.
    const cell = cordIndex(side, segment);
    const lost = Math.min(damage.corticospinal[cell] ?? 0, damage.spinothalamic[cell] ?? 0);
    kept *= 1 - sympatheticShare.cord * lost;
  }
  kept *= 1 - sympatheticShare.T1 * (damage.ventralRoot[cordIndex(side, segmentIndex('T1'))] ?? 0);
  kept *= 1 - sympatheticShare.C8 * (damage.ventralRoot[cordIndex(side, segmentIndex('C8'))] ?? 0);
  kept *= 1 - sympatheticShare.lowerTrunk * (damage.motorPlace[placeIndex(side, 'lower-trunk')] ?? 0);
  return 1 - kept;
}

/** Fraction of a faculty that the wiring of head, cord and roots leaves undone on a side. */
function wiredLoss(hypothesis: Hypothesis, faculty: Faculty, side: BodySide): number {
  const above = isWired(faculty) ? hypothesis.pathways.functionLost(faculty, side) : 0;
  return 1 - (1 - above) * (1 - wiredOutside(hypothesis, faculty, side));
}

function isWired(faculty: Faculty): faculty is WiredFunction {
  return brainFunctionTable.has(faculty);
}

/**
 * What a process of the whole brain shows on both sides: how often it shows on one side alone, as a share. A flap of one
 * hand comes from a place, that of both hands from a failing liver, kidney or lung. Judged.
 */
export const ofBothSides: Readonly<Partial<Record<Faculty, number>>> = { asterixis: 0.08 };

/**
 * Chance that a sign of a faculty is present on a side under a hypothesis, 0 to 1. Signs given without a side are present
 * when either side is.
 */
export function facultyChance(hypothesis: Hypothesis, faculty: Faculty, side: Side): number {
  const named =
    side === 'midline'
      ? [facultyKey(faculty, 'midline'), facultyKey(faculty, 'left'), facultyKey(faculty, 'right')]
      : [facultyKey(faculty, side), facultyKey(faculty, 'midline')];
  const share = side === 'midline' ? 1 : (ofBothSides[faculty] ?? 1);
  const specified = share * Math.max(0, ...named.map((key) => hypothesis.faculties.get(key) ?? 0));
  const sides = sidesOf(side);
  const wired = Math.max(...sides.map((one) => wiredLoss(hypothesis, faculty, one)));
  const spared = (1 - (inHealth[faculty] ?? rareInHealth)) * (1 - specified) * (1 - wired);
  return 1 - spared;
}
