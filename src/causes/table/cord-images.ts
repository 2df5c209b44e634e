import { atLeast, reads } from './cause.ts';

/** A degeneration of tracts: the cord looks normal or thin, and nothing presses on it. */
export const cordLooksSpared = (['mri-cervical-spine', 'mri-thoracic-spine', 'mri-whole-spine'] as const).map(
  (result) =>
    reads(result, [
      ['normal', 1.5],
      ['cord-compression', 0.1],
      ['cord-lesion-long', 0.2],
      ['cord-lesion-short', 0.3],
      ['syrinx', 0.2],
      ['metastasis', 0.1],
    ]),
);

/** What presses from outside does not inflame the fluid. */
export const fluidWithoutCells = atLeast('csf-white-cells', 10, '10*6/L', 0.3, 1.1);
