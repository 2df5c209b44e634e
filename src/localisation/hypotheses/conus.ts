import { type Segment, segmentIndex, segments } from '../../anatomy/segments.ts';
import { bodySides } from '../../kernel/side.ts';
import { type Hypothesis, hypothesis, type Site } from '../hypothesis.ts';
import { LesionBuilder } from '../lesion.ts';

/** How often the conus is taken from each segment down. Judged. */
const conusTops = [
  ['L2', 0.03],
  ['L4', 0.11],
  ['L5', 0.08],
  ['S1', 0.11],
  ['S2', 0.13],
  ['S3', 0.15],
  ['S4', 0.05],
] as const;

/**
 * How the sensory loss comes about: with the entering fibres, so that all modalities go; or in the grey matter, where pain
 * and temperature cross, so that touch is spared. Share of entering fibres lost, and how often it is so. Judged.
 */
const conusForms = [
  { key: 'all-modalities', entering: 0.9, share: 0.65 },
  { key: 'dissociated', entering: 0.35, share: 0.35 },
] as const;

/** The lower end of the cord: the sacral segments of both sides at once, sometimes with the lowest lumbar ones. */
function conus(): Hypothesis[] {
  const place: Site = { key: 'conus-medullaris', label: 'Conus medullaris', side: 'both', level: null, kind: 'cord' };
  return conusTops.flatMap(([top, frequency]) =>
    conusForms.flatMap(({ key, entering, share }) =>
      [0.9, 0.55].map((depth) => {
        const lesion = new LesionBuilder();
        for (const side of bodySides) {
          for (let segment = segmentIndex(top); segment < segments.length; segment += 1) {
            const own = segment < segmentIndex('L4') ? depth * 0.5 : depth;
            lesion.cord('anteriorHorn', side, segment, own).cord('dorsalRoot', side, segment, own * entering);
            lesion.cord('crossing', side, segment, own);
          }
          lesion.cord('corticospinal', side, segmentIndex(top), depth);
          // A lesion that reaches up to the lumbar enlargement brushes the fibres that pass it.
          if (reachesEnlargement.has(top)) lesion.cord('corticospinal', side, segmentIndex('L2'), depth * 0.35);
        }
        return hypothesis(place, `${top}-${key}-${depth}`, frequency * share, lesion.build());
      }),
    ),
  );
}

const reachesEnlargement: ReadonlySet<Segment> = new Set(['L4', 'L5', 'S1']);

/** The whole lumbar enlargement from a segment down, as when its artery fails or a fistula congests it. */
function lumbarEnlargement(): Hypothesis[] {
  return (['L1', 'L2', 'L3'] as const).flatMap((top) =>
    [0.9, 0.55].map((depth) => {
      const level = segmentIndex(top);
      const lesion = new LesionBuilder();
      for (const side of bodySides) {
        for (const tract of ['corticospinal', 'dorsalColumn', 'spinothalamic'] as const)
          lesion.cord(tract, side, level, depth);
        for (let segment = level; segment < segments.length; segment += 1) {
          lesion.cord('anteriorHorn', side, segment, depth * 0.75).cord('dorsalRoot', side, segment, depth * 0.2);
        }
      }
      const place: Site = {
        key: 'spinal-cord-transverse',
        label: `Spinal cord at ${top}, whole cross-section`,
        side: 'both',
        level: top,
        kind: 'cord',
      };
      return hypothesis(place, `enlargement-${depth}`, 0.075, lesion.build());
    }),
  );
}

/** The lowest segments of the cord, and the enlargement above them. */
export function conusHypotheses(): Hypothesis[] {
  return [...lumbarEnlargement(), ...conus()];
}
