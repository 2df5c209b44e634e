import type { Item } from '../../exam/catalogue/item.ts';
import { clonusAbnormalFromBeats, scales } from '../../exam/scales.ts';
import type { Hypothesis } from '../hypothesis.ts';
import type { Context } from './context.ts';
import type { ObservedValue } from './observed.ts';
import { gradedModel, type ProbeModel } from './probe-model.ts';

/** Among abnormal results, how often each value is used; the rest of the chance goes to the scale's normal value. Judged. */
const abnormalShares: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  presence: { present: 1 },
  performance: { impaired: 0.6, unable: 0.4 },
  'test-result': { positive: 0.88, equivocal: 0.12 },
  coordination: { impaired: 0.75, 'impaired-by-weakness': 0.25 },
};

/**
 * How often a value between normal and abnormal is used of what is normal: an examiner who is not sure has seen little. Judged; bedside
 * manoeuvres on healthy people are seldom all clear.
 */
const doubtfulShares: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  'test-result': { equivocal: 0.04 },
};

/** Bounds of every chance of a yes-or-no sign: nothing is ever excluded or proven by one sign. */
const floor = 0.0005;
const ceiling = 0.985;

export interface SignModel {
  readonly item: Pick<Item, 'scale'>;
  /** Name of what the chance is worked out from; with the scale it names the family. */
  readonly family: string;
  readonly steps: readonly number[];
  readonly fractions: (hypothesis: Hypothesis) => readonly number[];
  /** Chance of any abnormal value. */
  readonly chance: (fractions: readonly number[], context: Context) => number;
}

/** A sign that is there or not: its chance of being abnormal follows from quantised fractions. */
export function signModel({ item, family, steps, fractions, chance }: SignModel): ProbeModel {
  const bounded = (parts: readonly number[], context: Context): number =>
    Math.min(ceiling, Math.max(floor, chance(parts, context)));
  const { scale } = item;
  if (scale === 'beats') return beatsModel(family, steps, fractions, bounded);
  const values: readonly string[] = scales[scale].grades.map((grade) => grade.key);
  const normal: readonly string[] = scales[scale].normal;
  const shares = abnormalShares[scale] ?? {};
  const doubtful = doubtfulShares[scale] ?? {};
  const clear = 1 - Object.values(doubtful).reduce((sum, share) => sum + share, 0);
  return gradedModel({
    family: `${family}|${scale}`,
    values,
    normal,
    steps,
    fractions,
    distribution: (parts, context) => {
      const abnormal = bounded(parts, context);
      return values.map((value) =>
        normal.includes(value)
          ? ((1 - abnormal) * clear) / normal.length
          : abnormal * (shares[value] ?? 0.02) + (1 - abnormal) * (doubtful[value] ?? 0),
      );
    },
  });
}

/** Clonus: none, a few beats that may be normal, or more. */
function beatsModel(
  family: string,
  steps: readonly number[],
  fractions: SignModel['fractions'],
  chance: SignModel['chance'],
): ProbeModel {
  const few = (clonusAbnormalFromBeats - 1) / 2;
  const values: readonly ObservedValue[] = [0, few, clonusAbnormalFromBeats];
  const model = gradedModel({
    family: `${family}|beats`,
    values,
    normal: [0, few],
    steps,
    fractions,
    distribution: (parts, context) => {
      const abnormal = chance(parts, context);
      return [(1 - abnormal) * 0.95, (1 - abnormal) * 0.05 + abnormal * 0.15, abnormal * 0.85];
    },
  });
  return {
    ...model,
    indexOf: (value) => (typeof value !== 'number' ? -1 : value === 0 ? 0 : value < clonusAbnormalFromBeats ? 1 : 2),
  };
}
