import { atLeast, reads } from './cause.ts';

export const anyCordImage = ['mri-cervical-spine', 'mri-thoracic-spine', 'mri-whole-spine'] as const;

/** A degeneration of tracts: the cord looks normal or thin, and nothing presses on it. */
export const cordLooksSpared = anyCordImage.map((result) =>
  reads(result, [
    ['normal', 1.5],
    ['cord-compression', 0.1],
    ['cord-lesion-long', 0.2],
    ['cord-lesion-short', 0.3],
    ['syrinx', 0.2],
    ['metastasis', 0.1],
  ]),
);

/** What presses from outside is seen to press: a lesion that is seen within the cord is another. Judged. */
const lesionWithin = [
  ['cord-lesion-long', 0.15],
  ['cord-lesion-short', 0.3],
] as const;
export const lesionIsOutside = anyCordImage.map((result) => reads(result, lesionWithin));

/** The same where no result of its own says what presses: a cord that is pressed may be pressed by it. Judged. */
export const pressesFromOutside = anyCordImage.map((result) =>
  reads(result, [...lesionWithin, ['cord-compression', 4]]),
);

/** What presses from outside does not inflame the fluid. */
export const fluidWithoutCells = atLeast('csf-white-cells', 10, '10*6/L', 0.3, 1.1);
