import type { DermatomeKey } from '../anatomy/skin.ts';
import type { Part, Spot } from './surface.ts';

const spot = (part: Part, around: number, along: number): Spot => ({ part, around, along });

/**
 * The key sensory points of the international standard (Key Sensory Points guide, ASIA 2008; in words in
 * `anatomy/dermatomes.ts`, with the source) on the surface.
 */
export const keyPoints: Readonly<Record<DermatomeKey, Spot>> = {
  C2: spot('axis', 250, 74),
  C3: spot('axis', 6, 166),
  C4: spot('axis', 84, 178),
  C5: spot('arm', 42, 0.53),
  C6: spot('hand-back', 1, 0.66),
  C7: spot('hand-back', 3, 0.66),
  C8: spot('hand-back', 5, 0.66),
  T1: spot('arm', -58, 0.52),
  T2: spot('axis', 88, 244),
  T3: spot('axis', 0, 246),
  T4: spot('axis', 0, 267),
  T5: spot('axis', 0, 289),
  T6: spot('axis', 0, 310),
  T7: spot('axis', 0, 332),
  T8: spot('axis', 0, 355),
  T9: spot('axis', 0, 377),
  T10: spot('axis', 0, 400),
  T11: spot('axis', 0, 437),
  T12: spot('axis', -4, 474),
  L1: spot('axis', -18, 536),
  L2: spot('axis', -32, 598),
  L3: spot('axis', -74, 714),
  L4: spot('axis', -78, 944),
  L5: spot('foot-top', 3, 0.76),
  S1: spot('axis', 112, 974),
  S2: spot('axis', 182, 735),
  S3: spot('axis', 234, 544),
  'S4-5': spot('axis', 264, 518),
};
