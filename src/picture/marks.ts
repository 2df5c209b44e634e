import type { Ring } from './trace.ts';
import type { ViewKey } from './views.ts';

/**
 * A few lines that help to find one's way, as drawn on the half on the right of the viewer; no more than that.
 * x counts from the middle of the picture.
 */
export const marks: Readonly<Partial<Record<ViewKey, readonly Ring[]>>> = {
  front: [
    // Eye, mouth, nipple, navel, kneecap
    [
      [12, 61],
      [16, 59],
      [21, 59],
      [25, 61],
    ],
    [
      [0, 98],
      [6, 98],
      [11, 96],
    ],
    [
      [41, 267],
      [43, 265],
      [45, 267],
      [43, 269],
      [41, 267],
    ],
    [
      [0, 397],
      [2, 399],
      [2, 402],
      [0, 404],
    ],
    [
      [38, 716],
      [46, 710],
      [56, 710],
      [63, 716],
    ],
    [
      [40, 733],
      [47, 739],
      [55, 739],
      [61, 733],
    ],
  ],
  back: [
    [
      [8, 545],
      [22, 551],
      [40, 549],
      [58, 540],
    ],
    [
      [38, 735],
      [50, 738],
      [62, 735],
    ],
  ],
  face: [
    [
      [28, 148],
      [36, 142],
      [50, 142],
      [60, 148],
      [50, 152],
      [36, 152],
      [28, 148],
    ],
    [
      [26, 132],
      [40, 126],
      [62, 130],
    ],
    [
      [0, 204],
      [8, 204],
      [14, 198],
      [10, 188],
    ],
    [
      [0, 234],
      [12, 234],
      [28, 228],
    ],
    [
      [0, 242],
      [14, 240],
      [28, 228],
    ],
  ],
  saddle: [
    [
      [0, 132],
      [3, 133],
      [4, 136],
      [3, 139],
      [0, 140],
    ],
  ],
};
