import { commonPractice, recalled, type Source } from '../kernel/cite.ts';
import { dermatomeRegions } from './dermatome-regions.ts';
import type { ExtentKey } from './landmark-spots.ts';
import type { Part, Region } from './surface.ts';

export interface ExtentRow {
  readonly regions: readonly Region[];
  readonly source: Source;
}

/** All of a part from a place of it outwards. */
const from = (part: Part, along: number): Region => ({
  part,
  corners: [
    [-100, along],
    [300, along],
    [300, 1100],
    [-100, 1100],
  ],
});

const hand = [from('palm', -0.2), from('hand-back', -0.2)];
const foot = [from('foot-top', -0.2), from('sole', -0.2)];
const stocking = (edge: number): ExtentRow => ({ regions: [from('axis', edge), ...foot], source: commonPractice });
const glove = (edge: number): ExtentRow => ({ regions: [from('arm', edge), ...hand], source: commonPractice });

const rest = dermatomeRegions.filter(({ part }) => part === 'axis');
const faceSkin = rest.filter(({ key }) => key === null);
/** Below the fold of the groin in front and the crest of the hip behind, as L1 begins. */
const belowGroin = rest.filter(({ key }) => key === 'L1');
const groin = belowGroin[0]?.corners.filter(([, along]) => along < 1000) ?? [];

/** The large patches of `anatomy/skin-extents.ts`: everything beyond an edge, or a whole region. */
export const extentRegions: Readonly<Record<ExtentKey, ExtentRow>> = {
  'stocking-to-ankle': stocking(940),
  'stocking-to-mid-calf': stocking(840),
  'stocking-to-knee': stocking(738),
  'stocking-to-thigh': stocking(620),
  'glove-to-wrist': glove(0.985),
  'glove-to-elbow': glove(0.56),
  'whole-foot': stocking(946),
  'whole-leg': { regions: [...belowGroin, ...foot], source: commonPractice },
  'whole-hand': glove(0.99),
  'whole-arm': { regions: [from('arm', -1), ...hand], source: commonPractice },
  'half-face': { regions: faceSkin, source: recalled('blumenfeld', 'trigeminal nerve, divisions') },
  hemitrunk: {
    regions: [
      {
        part: 'axis',
        corners: [[-91, 182], [0, 178], [60, 168], [91, 168], [180, 160], [271, 156], ...[...groin].reverse()],
      },
    ],
    source: commonPractice,
  },
};
