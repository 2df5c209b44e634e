import { type Segment, segmentIndex, segments } from '../../anatomy/segments.ts';
import { type BodySide, bodySides, opposite } from '../../kernel/side.ts';
import { type Hypothesis, hypothesis, type Site } from '../hypothesis.ts';
import { LesionBuilder } from '../lesion.ts';
import { facultyKey, noProcess, type Process, processOf, reached } from '../process.ts';

/** How often the cord is damaged at a segment, relative to a mid-thoracic one. Judged from where discs, tumours and inflammation sit. */
function levelFrequency(segment: number): number {
  if (segment < segmentIndex('C3')) return 0.6;
  if (segment < segmentIndex('C8')) return 4;
  if (segment <= segmentIndex('T3')) return 1.2;
  if (segment <= segmentIndex('T12')) return 1.6;
  return 0.7;
}

/** Share of all focal findings, in percent, and depth of damage, of each way of damaging the cord. Judged. */
const crossSections = {
  transverse: { percent: 6, depths: [0.98, 0.6, 0.35] },
  hemisection: { percent: 3, depths: [0.98, 0.6, 0.35] },
  central: { percent: 1.6, depths: [0.85] },
  anterior: { percent: 0.8, depths: [0.98, 0.6, 0.35] },
  posterior: { percent: 0.6, depths: [0.85] },
} as const;

const highest = segmentIndex('C1');
const lowest = segmentIndex('S1');
const cordLevels = segments.map((_, index) => index).filter((index) => index >= highest && index <= lowest);
const totalFrequency = cordLevels.reduce((sum, level) => sum + levelFrequency(level), 0);

function site(key: string, part: string, level: number, side: Site['side']): Site {
  const segment = segments[level] ?? 'C1';
  return { key, label: `Spinal cord at ${segment}, ${part}`, side, level: segment, kind: 'cord' };
}

/** Grey matter and entering root of one side at the lesion and, by a share, one segment below it. */
function ownSegment(lesion: LesionBuilder, side: BodySide, level: number, depth: number): void {
  lesion.cord('anteriorHorn', side, level, depth).cord('anteriorHorn', side, level + 1, depth * 0.25);
  lesion.cord('dorsalRoot', side, level, depth * 0.2);
  lesion.cord('crossing', side, level, depth);
}

/** All tracts of one side with their own segment. */
function halfCord(lesion: LesionBuilder, side: BodySide, level: number, depth: number): LesionBuilder {
  lesion
    .cord('corticospinal', side, level, depth)
    .cord('dorsalColumn', side, level, depth)
    .cord('spinothalamic', side, level, depth);
  ownSegment(lesion, side, level, depth);
  return lesion;
}

function transverse(level: number, depth: number): LesionBuilder {
  const lesion = new LesionBuilder();
  for (const side of bodySides) halfCord(lesion, side, level, depth);
  return lesion;
}

function hemisection(side: BodySide, level: number, depth: number): LesionBuilder {
  return halfCord(new LesionBuilder(), side, level, depth);
}

/** Crossing fibres over several segments, then the grey matter; the tracts at the rim suffer last, arm fibres before leg fibres. */
function central(level: number, depth: number): LesionBuilder {
  const lesion = new LesionBuilder();
  for (const side of bodySides) {
    for (const offset of [-1, 0, 1, 2]) lesion.cord('crossing', side, level + offset, depth);
    for (const offset of [0, 1, 2]) lesion.cord('anteriorHorn', side, level + offset, depth * 0.55);
    lesion.cord('corticospinal', side, level, depth * 0.3);
  }
  return lesion;
}

/** Bruising of the middle of the neck's cord: grey matter of the whole arm, tracts less, as after a fall on a narrow canal. */
function centralInjury(): Hypothesis[] {
  return (['C5', 'C6'] as const).flatMap((top) =>
    [0.85, 0.6].map((depth) => {
      const level = segmentIndex(top);
      const lesion = new LesionBuilder();
      for (const side of bodySides) {
        for (let segment = level; segment <= segmentIndex('T1'); segment += 1) {
          lesion.cord('anteriorHorn', side, segment, depth).cord('crossing', side, segment, depth);
          lesion.cord('dorsalRoot', side, segment, depth * 0.4);
        }
        lesion.cord('corticospinal', side, level, depth * 0.4).cord('dorsalColumn', side, level, depth * 0.25);
      }
      return hypothesis(
        site('spinal-cord-central', 'central part', level, 'both'),
        `arms-${depth}`,
        0.12,
        lesion.build(),
      );
    }),
  );
}

/** The territory of the anterior spinal artery: everything but the dorsal columns. */
function anterior(level: number, depth: number): LesionBuilder {
  const lesion = new LesionBuilder();
  for (const side of bodySides) {
    lesion
      .cord('corticospinal', side, level, depth)
      .cord('spinothalamic', side, level, depth)
      .cord('crossing', side, level, depth);
    lesion.cord('anteriorHorn', side, level, depth).cord('anteriorHorn', side, level + 1, depth * 0.6);
  }
  return lesion;
}

function posterior(level: number, depth: number): LesionBuilder {
  const lesion = new LesionBuilder();
  for (const side of bodySides) lesion.cord('dorsalColumn', side, level, depth);
  return lesion;
}

/** Horner's syndrome from the descending sympathetic fibres: only lesions above T2 that take one side. */
function hornerChances(side: BodySide, level: number, depth: number): Map<string, number> {
  const chances = new Map<string, number>();
  if (level <= segmentIndex('T1')) chances.set(facultyKey('sympathetic-eye', side), 0.4 * depth);
  return chances;
}

const crossSectionLesions = [
  { key: 'spinal-cord-transverse', part: 'whole cross-section', of: 'transverse', build: transverse },
  { key: 'spinal-cord-central', part: 'central part', of: 'central', build: central },
  { key: 'spinal-cord-anterior', part: 'anterior part', of: 'anterior', build: anterior },
  { key: 'spinal-cord-posterior', part: 'dorsal columns', of: 'posterior', build: posterior },
] as const;

/** The longest axons failing along with the tracts, as in lack of vitamin B12 or copper. */
const longAxons: Process = processOf({
  largeFibre: ({ lengthCm }) => 0.6 * reached(lengthCm, 96),
  smallFibre: ({ lengthCm }) => 0.5 * reached(lengthCm, 98),
  reflex: ({ lengthCm }) => 0.6 * reached(lengthCm, 84),
  because: 'the longest axons fail together with the tracts',
});

/** The dorsal and lateral columns together over a long stretch, as in combined degeneration; no single level. */
function posterolateral(): Hypothesis[] {
  const place: Site = {
    key: 'spinal-cord-posterolateral',
    label: 'Dorsal and lateral columns of the spinal cord',
    side: 'both',
    level: null,
    kind: 'cord',
  };
  return (['C6', 'T4'] as const).flatMap((top: Segment) =>
    [0.85, 0.5].flatMap((depth) =>
      [noProcess, longAxons].map((process) => {
        const lesion = new LesionBuilder();
        for (const side of bodySides) {
          // The columns suffer from the neck down; the pyramidal fibres where they are longest.
          lesion.cord('dorsalColumn', side, segmentIndex(top), depth);
          lesion.cord('corticospinal', side, segmentIndex('T4'), depth * 0.65);
        }
        const variant = `${top}-${depth}-${process === noProcess ? 'tracts' : 'tracts-and-nerves'}`;
        return hypothesis(place, variant, 0.14, lesion.build(), { process });
      }),
    ),
  );
}

/** How often the conus is taken from each segment down. Judged; a lesion of the tip alone is rare. */
const conusTops = [
  ['L4', 0.14],
  ['S1', 0.14],
  ['S2', 0.06],
  ['S3', 0.05],
] as const;

/** The lower end of the cord: the sacral segments of both sides at once, sometimes with the lowest lumbar ones. */
function conus(): Hypothesis[] {
  const place: Site = { key: 'conus-medullaris', label: 'Conus medullaris', side: 'both', level: null, kind: 'cord' };
  return conusTops.flatMap(([top, frequency]) =>
    [0.9, 0.55].map((depth) => {
      const lesion = new LesionBuilder();
      for (const side of bodySides) {
        for (let segment = segmentIndex(top); segment < segments.length; segment += 1) {
          lesion.cord('anteriorHorn', side, segment, depth).cord('dorsalRoot', side, segment, depth * 0.9);
        }
        lesion.cord('corticospinal', side, segmentIndex(top), depth);
        // A lesion that reaches up to the lumbar enlargement brushes the fibres that pass it.
        if (top === 'L4' || top === 'S1') lesion.cord('corticospinal', side, segmentIndex('L4'), depth * 0.35);
      }
      return hypothesis(place, `${top}-${depth}`, frequency, lesion.build());
    }),
  );
}

/** Narrowing over several discs: tracts at the top, grey matter and roots for some segments below it, as in the worn neck. */
function longCompression(): Hypothesis[] {
  return (['C3', 'C4', 'C5', 'C6'] as const).flatMap((top) =>
    [0.6, 0.35].map((depth) => {
      const level = segmentIndex(top);
      const lesion = new LesionBuilder();
      for (const side of bodySides) {
        lesion.cord('corticospinal', side, level, depth).cord('dorsalColumn', side, level, depth * 0.8);
        lesion.cord('spinothalamic', side, level, depth * 0.5);
        for (let segment = level; segment <= segmentIndex('T1'); segment += 1) {
          lesion.cord('anteriorHorn', side, segment, 0.45).cord('dorsalRoot', side, segment, 0.12);
        }
      }
      return hypothesis(
        site('spinal-cord-transverse', 'whole cross-section', level, 'both'),
        `long-${depth}`,
        0.06,
        lesion.build(),
      );
    }),
  );
}

/** Share of the damage of one half of the cord that reaches the tracts of the other, where it does. Judged. */
const spillShare = 0.33;

/** Every lesion of the cord, at every segment, whole and in part, on each side. */
export function cordHypotheses(): Hypothesis[] {
  const symmetrical = crossSectionLesions.flatMap(({ key, part, of, build }) => {
    const { percent, depths } = crossSections[of];
    return cordLevels.flatMap((level) =>
      depths.map((depth) =>
        hypothesis(
          site(key, part, level, 'both'),
          String(depth),
          (percent * levelFrequency(level)) / (totalFrequency * depths.length),
          build(level, depth).build(),
        ),
      ),
    );
  });
  const { percent, depths } = crossSections.hemisection;
  const halves = cordLevels.flatMap((level) =>
    bodySides.flatMap((side) =>
      depths.flatMap((depth) =>
        // A pure half is the textbook case; at the bedside the other half is usually touched as well, but less.
        [0, spillShare * depth].map((spill) => {
          const lesion = hemisection(side, level, depth);
          if (spill > 0)
            lesion
              .cord('corticospinal', opposite(side), level, spill)
              .cord('dorsalColumn', opposite(side), level, spill);
          return hypothesis(
            site('spinal-cord-hemisection', 'one half', level, side),
            `${depth}-${spill === 0 ? 'pure' : 'spilling'}`,
            (percent * levelFrequency(level)) / (totalFrequency * depths.length * 4),
            lesion.build(),
            { faculties: hornerChances(side, level, depth) },
          );
        }),
      ),
    ),
  );
  return [...symmetrical, ...halves, ...centralInjury(), ...longCompression(), ...posterolateral(), ...conus()];
}
