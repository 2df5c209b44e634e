import { reads } from './cause.ts';

/** Key of the result that the ratios below are about. */
export const conduction = 'nerve-conduction-pattern';

/** The two demyelinating patterns with their ratios. */
export const demyelinating = (ratio: number, uniform = ratio) =>
  [
    ['demyelinating-non-uniform', ratio],
    ['demyelinating-uniform', uniform],
  ] as const;

/** Ratio of an axonal pattern; demyelination and a normal study speak against an axonal disease. */
export const axonal = (ratio: number) => reads(conduction, [['axonal', ratio], ...demyelinating(0.2), ['normal', 0.5]]);
