import { scales } from '../../exam/scales.ts';
import type { Context } from './context.ts';

/** A value as the exam states it. */
export type ObservedValue = string | number;

/** No reading is certain: this much of every distribution is spread evenly over all values. Judged from the kappas of Hansen 1994 and Thaller 2014. */
const lapse = 0.02;

function spread(shares: readonly number[]): number[] {
  const total = shares.reduce((sum, share) => sum + share, 0);
  return shares.map((share) => ((1 - lapse) * share) / total + lapse / shares.length);
}

function bell(count: number, position: (index: number) => number, mean: number, sd: number): number[] {
  return Array.from({ length: count }, (_, index) => Math.exp(-0.5 * ((position(index) - mean) / sd) ** 2));
}

/** Where a loss of motor units puts the eight grades 0 to 5: [fraction lost, index of the expected grade]. Judged. */
const gradeAtLoss: readonly (readonly [number, number])[] = [
  [0, 7],
  [0.1, 6.75],
  [0.2, 6.1],
  [0.32, 5.3],
  [0.45, 4.4],
  [0.6, 3.4],
  [0.75, 2.6],
  [0.87, 1.8],
  [0.95, 0.8],
  [1, -0.5],
];

function interpolate(table: readonly (readonly [number, number])[], at: number): number {
  const upper = table.findIndex(([x]) => x >= at);
  const high = table[upper === -1 ? table.length - 1 : upper];
  const low = table[Math.max(0, upper - 1)];
  if (high === undefined || low === undefined) return 0;
  const [x0, y0] = low;
  const [x1, y1] = high;
  return x1 === x0 ? y1 : y0 + ((y1 - y0) * (at - x0)) / (x1 - x0);
}

const powerGrades: readonly string[] = scales['mrc-power'].grades.map((grade) => grade.key);

/** Chance of each power grade, given the fraction of a movement's strength that is lost. Order of `scales['mrc-power']`. */
export function powerDistribution(loss: number): readonly number[] {
  const mean = interpolate(gradeAtLoss, loss);
  return spread(bell(powerGrades.length, (index) => index, mean, 0.45 + 0.75 * Math.min(1, loss * 4)));
}

const reflexGrades: readonly string[] = scales['reflex-grade'].grades.map((grade) => grade.key);
const reflexPositions: readonly number[] = scales['reflex-grade'].grades.map((grade) => grade.ordinal);

/** What a reflex is in health, beyond how often it cannot be found: small asymmetries and lively reflexes are common. Lim 2009 (read), shares judged. */
const healthyReflex: Readonly<Record<string, number>> = { trace: 0.02, '1': 0.08, '2': 0.8, '3': 0.08, '4': 0.004 };

/** How a reflex that is hard to find in health is graded: not all examiners call it absent. Judged. */
const hardToFind: Readonly<Record<string, number>> = { '0': 0.6, trace: 0.22, '1': 0.18 };

/** Share of reflexes that in the first days are neither brisk nor flat yet, though descending control is gone. Judged. */
const notYetChanged = 0.2;

/** Chance of each reflex grade from what is left of the arc, the loss of descending control, and the stage. */
export function reflexDistribution(
  arc: number,
  released: number,
  absentInHealth: number,
  context: Context,
): readonly number[] {
  const broken = interpolate(
    [
      [0, 0],
      [0.25, 0.15],
      [0.45, 0.6],
      [0.65, 1.25],
      [0.85, 1.85],
      [1, 2],
    ],
    arc,
  );
  const healthy = reflexGrades.map(
    (grade) => absentInHealth * (hardToFind[grade] ?? 0) + (1 - absentInHealth) * (healthyReflex[grade] ?? 0),
  );
  // One examiner's absent is another's reduced: their agreement was never better than fair, Manschot 1998 (from memory).
  const lowered = bell(reflexGrades.length, (index) => reflexPositions[index] ?? 0, broken, 0.7);
  // Brisk once the tone has set in; in the first days as often flat as brisk, if the break is near complete: shock goes with
  // its depth (Ditunno 2004, from memory).
  const settled = bell(
    reflexGrades.length,
    (index) => reflexPositions[index] ?? 0,
    Math.min(4, broken + 1.5 * released * arc),
    0.6,
  );
  const shocked = bell(
    reflexGrades.length,
    (index) => reflexPositions[index] ?? 0,
    broken * (1 - 0.75 * released),
    0.7,
  );
  const release = Math.min(1, released * 1.4);
  const acute = (1 - context.chronicity) * 0.5 * Math.min(1, released * 1.2);
  const unchanged = (1 - context.chronicity) * notYetChanged;
  const intactArc = Math.max(0, (arc - 0.55) / 0.45);
  const parts = [
    [spread(healthy), intactArc * (1 - release)],
    [spread(lowered), (1 - intactArc) * (1 - release)],
    [spread(settled), release * (1 - acute - unchanged)],
    [spread(shocked), release * acute],
    [spread(intactArc > 0.5 ? healthy : lowered), release * unchanged],
  ] as const;
  return spread(
    reflexGrades.map((_, index) =>
      parts.reduce((sum, [distribution, weight]) => sum + (distribution[index] ?? 0) * weight, 0),
    ),
  );
}

const superficialGrades: readonly string[] = scales['superficial-reflex'].grades.map((grade) => grade.key);

/** Superficial reflexes are lost by a break of their arc and by loss of descending control alike. */
export function superficialDistribution(arc: number, released: number, absentInHealth: number): readonly number[] {
  const kept = (1 - absentInHealth) * arc ** 1.5 * (1 - 0.75 * released);
  return spread(
    superficialGrades.map((grade) => (grade === '2' ? kept : grade === '1' ? 0.2 * (1 - kept) : 0.8 * (1 - kept))),
  );
}

const plantarResponses: readonly string[] = scales['plantar-response'].grades.map((grade) => grade.key);

/**
 * Plantar response from the loss of corticospinal fibres to the foot and what is left of the toe muscles.
 * Sensitivity 0.51 and specificity 0.99: Isaza 2014 (read); higher in complete lesions (judged).
 */
export function plantarDistribution(released: number, toeMuscles: number): readonly number[] {
  const extensor = (0.01 + 0.72 * Math.min(1, released * 1.3)) * (0.15 + 0.85 * toeMuscles);
  const mute = 0.03 + 0.1 * released + 0.45 * (1 - toeMuscles);
  // Toes that hardly move answer doubtfully.
  const equivocal = 0.03 + 0.06 * released + 0.07 * (1 - toeMuscles);
  const shares: Readonly<Record<string, number>> = {
    extensor,
    mute,
    equivocal,
    flexor: Math.max(0.05, 1 - extensor - mute - equivocal),
  };
  return spread(plantarResponses.map((response) => shares[response] ?? 0));
}

const sensoryResults: readonly string[] = scales.sensation.grades.map((grade) => grade.key);

/** Share of what is lost with age that is called absent: at the toes of the old a tuning fork is often not felt at all. Judged. */
const absentWithAge = 0.35;

/** Chance of each sensory result from the fraction lost. False losses 1.5 %, judged; sensitivity in root lesions near 0.6: Tawa 2017 (read). */
export function sensoryDistribution(loss: number, lostInHealth: number): readonly number[] {
  const detected = (loss * loss) / (loss * loss + 0.07);
  const fromLesion = 0.015 + 0.955 * detected;
  const abnormal = 1 - (1 - fromLesion) * (1 - lostInHealth);
  // Many write `reduced` of whatever is lost, so that the word tells little of how much.
  // A share of what is abnormal, so that age counts for what the lesion leaves over.
  const absent = ((0.05 + 0.38 * loss * loss) * fromLesion + absentWithAge * (abnormal - fromLesion)) / abnormal;
  const shares: Readonly<Record<string, number>> = {
    normal: 1 - abnormal,
    absent: abnormal * absent,
    altered: abnormal * 0.12,
    increased: abnormal * 0.06,
    reduced: abnormal * (1 - absent - 0.18),
  };
  return spread(sensoryResults.map((result) => shares[result] ?? 0));
}

const toneGrades: readonly string[] = scales.tone.grades.map((grade) => grade.key);

/** What decides the tone of a limb: fractions lost, and the chance that frontal release signs are there; 0 to 1. */
export interface ToneState {
  readonly released: number;
  readonly lowerLoss: number;
  readonly unrestrained: number;
  readonly frontal: number;
}

/** Tone from the loss of descending control, of motor units in the limb, and of what the basal ganglia hold back. */
export function toneDistribution(
  { released, lowerLoss, unrestrained, frontal }: ToneState,
  context: Context,
): readonly number[] {
  const settled = 0.3 + 0.7 * context.chronicity;
  const spastic = 0.015 + 0.75 * Math.min(1, released * 1.3) * settled * (1 - 0.7 * lowerLoss);
  const reduced = 0.03 + 0.55 * lowerLoss + 0.6 * released * (1 - settled);
  const rigid = 0.012 + 0.8 * unrestrained;
  const paratonic = 0.01 + 0.4 * frontal;
  const shares: Readonly<Record<string, number>> = {
    spastic,
    reduced,
    rigid,
    paratonic,
    normal: Math.max(0.05, 1 - spastic - reduced - rigid - paratonic),
  };
  return spread(toneGrades.map((grade) => shares[grade] ?? 0));
}

export { plantarResponses, powerGrades, reflexGrades, sensoryResults, superficialGrades, toneGrades };
