import type { Faculty } from '../../anatomy/probe.ts';
import { segmentIndex } from '../../anatomy/segments.ts';
import { bodySides, type Side } from '../../kernel/side.ts';
import type { Hypothesis } from '../hypothesis.ts';
import { cordIndex } from '../lesion.ts';
import { facultyKey } from '../process.ts';

/** Chance that a sign of a faculty is recorded in people without a lesion of it; others are rarer. Judged. */
const inHealth: Readonly<Partial<Record<Faculty, number>>> = {
  'bladder-urgency': 0.08,
  sexual: 0.06,
  bowel: 0.04,
  'visual-acuity': 0.05,
  hearing: 0.08,
  smell: 0.04,
  gut: 0.05,
  sweating: 0.03,
  'blood-pressure': 0.04,
  'heart-rate': 0.04,
  'frontal-release': 0.08,
  'postural-tremor': 0.05,
  'mood-behaviour': 0.04,
  memory: 0.04,
  attention: 0.03,
  nystagmus: 0.02,
  corneal: 0.02,
  palate: 0.03,
  breathing: 0.03,
  fatigability: 0.03,
  'eyelid-elevation': 0.015,
};

const rareInHealth = 0.008;

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

/** The share of a faculty's failure that the wiring of cord and roots decides; brain and cranial-nerve faculties have none. */
function wired(hypothesis: Hypothesis, faculty: Faculty): number {
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
    default:
      return 0;
  }
}

function bilateralPainLoss(hypothesis: Hypothesis): number {
  const index = segmentIndex('S4');
  return Math.min(...bodySides.map((side) => 1 - hypothesis.pathways.painFrom(side, index)));
}

/**
 * Chance that a sign of a faculty is present on a side under a hypothesis, 0 to 1. Signs given without a side are present
 * when either side is.
 */
export function facultyChance(hypothesis: Hypothesis, faculty: Faculty, side: Side): number {
  const named =
    side === 'midline'
      ? [facultyKey(faculty, 'midline'), facultyKey(faculty, 'left'), facultyKey(faculty, 'right')]
      : [facultyKey(faculty, side), facultyKey(faculty, 'midline')];
  const specified = Math.max(0, ...named.map((key) => hypothesis.faculties.get(key) ?? 0));
  const spared = (1 - (inHealth[faculty] ?? rareInHealth)) * (1 - specified) * (1 - wired(hypothesis, faculty));
  return 1 - spared;
}
