import { type Segment, segmentIndex, segments } from '../../anatomy/segments.ts';
import { type Drawing, ellipse, line, type Point, polygon } from './shape.ts';

/** Height of a cord segment, and half the breadth of the cord where it carries no limb. */
const step = 9;
const slim = 7;
/** The two enlargements, by the segment where the cord is broadest, how far they reach and how much they add. */
const enlargements = [
  { at: segmentIndex('C7'), reach: 4, adds: 5 },
  { at: segmentIndex('L4'), reach: 4, adds: 4 },
] as const;

/** Half the breadth of the cord at the upper edge of a segment, which may be a broken number. */
function half(segment: number): number {
  const wide = enlargements.reduce((sum, { at, reach, adds }) => {
    const off = Math.min(1, Math.abs(segment - at) / reach);
    return sum + (adds * (1 + Math.cos(Math.PI * off))) / 2;
  }, slim);
  return wide * Math.min(1, (segments.length + 0.6 - segment) / 5);
}

/** How far below its segment a root leaves the canal, in heights of a segment: the cord is shorter than the spine. Judged. */
function drop(segment: number): number {
  return segment < segmentIndex('C8') ? 0.3 : 0.3 + (segment - segmentIndex('C8')) * 0.26;
}

export const segmentName = (segment: Segment): string => `segment-${segment.toLowerCase()}`;
export const rootName = (segment: Segment): string => `root-${segment.toLowerCase()}`;
export const ganglionName = (segment: Segment): string => `ganglion-${segment.toLowerCase()}`;

/** The cord from C1 to S5, each segment in two halves, with its roots and their ganglia. */
export function cordDrawings(): readonly Drawing[] {
  return segments.flatMap((segment, index) => {
    const top = index * step;
    const bottom = top + step - 1;
    const out = 30 + drop(index) * 1.2;
    const leaves = top + step / 2 + drop(index) * step;
    const root: Point[] = [
      [half(index + 0.5) + 0.5, top + step / 2],
      [half(index + 0.5) + 7, (top + step / 2 + leaves) / 2],
      [out, leaves],
    ];
    return [
      {
        name: segmentName(segment),
        label: `half of the cord at ${segment}`,
        paired: true,
        outlines: [polygon([0.4, top], [half(index), top], [half(index + 1), bottom], [0.4, bottom])],
      },
      { name: rootName(segment), label: `${segment} nerve root`, paired: true, outlines: [line(...root)] },
      {
        name: ganglionName(segment),
        label: `${segment} dorsal root ganglion`,
        paired: true,
        outlines: [ellipse(out + 3, leaves, 3, 2)],
      },
    ];
  });
}

/** The parts of the cord in a cross-section, its front upwards, each by the cells of a lesion that it shows. */
export const cordParts = {
  corticospinal: 'lateral-column',
  dorsalColumn: 'dorsal-column',
  spinothalamic: 'anterolateral-column',
  anteriorHorn: 'anterior-horn',
  crossing: 'commissure',
} as const;

export function cordSectionDrawings(): readonly Drawing[] {
  return [
    {
      name: cordParts.anteriorHorn,
      label: 'anterior horn',
      paired: true,
      outlines: [polygon([5, -6], [8, -22], [16, -27], [24, -22], [24, -10], [15, -2])],
    },
    {
      name: cordParts.spinothalamic,
      label: 'anterolateral column (spinothalamic tract)',
      paired: true,
      outlines: [polygon([10, -36], [24, -34], [38, -24], [46, -6], [30, -4], [28, -22], [20, -29], [11, -29])],
    },
    {
      name: cordParts.corticospinal,
      label: 'lateral column (corticospinal tract)',
      paired: true,
      outlines: [polygon([20, 0], [46, -3], [46, 8], [38, 22], [28, 28], [16, 8])],
    },
    {
      name: cordParts.dorsalColumn,
      label: 'dorsal column',
      paired: true,
      outlines: [polygon([1, 6], [8, 5], [22, 29], [14, 34], [1, 37])],
    },
    {
      name: cordParts.crossing,
      label: 'central grey matter and commissure',
      paired: false,
      outlines: [polygon([-9, -5], [9, -5], [9, 3], [-9, 3])],
    },
  ];
}
