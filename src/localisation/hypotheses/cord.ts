import { type Segment, segmentIndex, segments } from '../../anatomy/segments.ts';
import { type BodySide, bodySides, opposite } from '../../kernel/side.ts';
import { type Hypothesis, hypothesis, type Site } from '../hypothesis.ts';
import { LesionBuilder } from '../lesion.ts';
import { type FacultyChances, facultyKey, noProcess, type Process, processOf, reached } from '../process.ts';

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
  transverse: { percent: 5.5, depths: [0.98, 0.6, 0.35] },
  hemisection: { percent: 3.6, depths: [0.98, 0.6, 0.35] },
  central: { percent: 1.3, depths: [0.85, 0.55] },
  anterior: { percent: 0.8, depths: [0.98, 0.6, 0.35] },
  posterior: { percent: 0.6, depths: [0.85, 0.55] },
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

const tracts = ['corticospinal', 'dorsalColumn', 'spinothalamic'] as const;
type Tract = (typeof tracts)[number];

/** Tracts of one side with their own segment; all of them unless some are named. */
function halfCord(
  lesion: LesionBuilder,
  side: BodySide,
  level: number,
  depth: number,
  hit: readonly Tract[] = tracts,
): LesionBuilder {
  for (const tract of hit) lesion.cord(tract, side, level, depth);
  ownSegment(lesion, side, level, depth);
  return lesion;
}

function transverse(level: number, depth: number): LesionBuilder {
  const lesion = new LesionBuilder();
  for (const side of bodySides) halfCord(lesion, side, level, depth);
  return lesion;
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

/** A cavity over many segments: pain and temperature in a cape, wasted hands, the tracts late. */
function longCavity(): Hypothesis[] {
  const tops = segments.slice(segmentIndex('C2'), segmentIndex('T4') + 1);
  return tops.flatMap((top) =>
    [0.9, 0.6].map((depth) => {
      const level = segmentIndex(top);
      const lesion = new LesionBuilder();
      for (const side of bodySides) {
        for (let segment = level; segment <= level + 6; segment += 1) {
          lesion.cord('crossing', side, segment, depth).cord('anteriorHorn', side, segment, depth * 0.55);
        }
        lesion.cord('corticospinal', side, level, depth * 0.3);
      }
      return hypothesis(
        // Named, as the shorter ones are, by the first segment whose skin has lost pain.
        site('spinal-cord-central', 'central part', level + 1, 'both'),
        `cavity-${depth}`,
        (0.5 * levelFrequency(level)) / (tops.length * 4),
        lesion.build(),
        { faculties: signsAtLevel(bodySides, level, depth, hornerSeen.both) },
      );
    }),
  );
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

/**
 * Signs above and beside the limbs that a lesion at a level brings: numbness of the face from the spinal tract of the
 * trigeminal nerve, which comes down to C2; Horner's syndrome from the descending sympathetic fibres, which leave at T1;
 * falls of blood pressure where the outflow below T6 is cut off on both sides. Chances judged.
 */
function signsAtLevel(sides: readonly BodySide[], level: number, depth: number, horner: number): FacultyChances {
  const chances = new Map<string, number>();
  for (const side of sides) {
    if (level <= segmentIndex('C2')) chances.set(facultyKey('trigeminal-sensation', side), 0.25 * depth);
    if (level <= segmentIndex('T1')) chances.set(facultyKey('sympathetic-eye', side), horner * depth);
  }
  if (sides.length === 2 && level <= segmentIndex('T6')) {
    chances.set(facultyKey('blood-pressure', 'midline'), 0.3 * depth);
    if (level <= segmentIndex('C8')) chances.set(facultyKey('heart-rate', 'midline'), 0.15 * depth);
  }
  return chances;
}

/** Horner's syndrome of one side is seen; of both sides seldom noticed. Judged. */
const hornerSeen = { one: 0.4, both: 0.06 } as const;

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
  return columnTops.flatMap((top) =>
    [0.85, 0.5].flatMap((depth) =>
      [noProcess, longAxons].map((process) => {
        const lesion = new LesionBuilder();
        for (const side of bodySides) {
          // The columns suffer from the neck down; the pyramidal fibres where they are longest.
          lesion.cord('dorsalColumn', side, segmentIndex(top), depth);
          lesion.cord('corticospinal', side, segmentIndex(top), depth * 0.3);
          lesion.cord('corticospinal', side, segmentIndex('T8'), depth * 0.55);
        }
        const variant = `${top}-${depth}-${process === noProcess ? 'tracts' : 'tracts-and-nerves'}`;
        return hypothesis(place, variant, 1.2 / (columnTops.length * 4), lesion.build(), { process });
      }),
    ),
  );
}

/** Where the columns begin to fail; no place is the usual one, so that a sharp level speaks for another lesion. */
const columnTops = ['C3', 'C5', 'C7', 'T1', 'T3', 'T5', 'T7'] as const satisfies readonly Segment[];

/** How often the conus is taken from each segment down. Judged. */
const conusTops = [
  ['L2', 0.05],
  ['L4', 0.14],
  ['L5', 0.1],
  ['S1', 0.14],
  ['S2', 0.12],
  ['S3', 0.1],
  ['S4', 0.03],
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
        for (const tract of tracts) lesion.cord(tract, side, level, depth);
        for (let segment = level; segment < segments.length; segment += 1) {
          lesion.cord('anteriorHorn', side, segment, depth * 0.75).cord('dorsalRoot', side, segment, depth * 0.2);
        }
      }
      const place = site('spinal-cord-transverse', 'whole cross-section', level, 'both');
      return hypothesis(place, `enlargement-${depth}`, 0.05, lesion.build());
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

/**
 * Ways to damage one half. A pure half is the textbook case; at the bedside the other half is usually touched as well, but
 * less, or one quarter of the half escapes. How often, judged.
 */
const halfForms = [
  { key: 'pure', hit: tracts, spills: false, share: 0.38 },
  { key: 'spilling', hit: tracts, spills: true, share: 0.38 },
  { key: 'anterolateral', hit: ['corticospinal', 'spinothalamic'], spills: false, share: 0.2 },
  { key: 'posterolateral', hit: ['corticospinal', 'dorsalColumn'], spills: false, share: 0.04 },
] as const;

function halves(): Hypothesis[] {
  const { percent, depths } = crossSections.hemisection;
  return cordLevels.flatMap((level) =>
    bodySides.flatMap((side) =>
      halfForms.flatMap(({ key, hit, spills, share }) =>
        depths.map((depth) => {
          const lesion = halfCord(new LesionBuilder(), side, level, depth, hit);
          if (spills) {
            lesion
              .cord('corticospinal', opposite(side), level, spillShare * depth)
              .cord('dorsalColumn', opposite(side), level, spillShare * depth);
          }
          return hypothesis(
            site('spinal-cord-hemisection', 'one half', level, side),
            `${depth}-${key}`,
            (percent * levelFrequency(level) * share) / (totalFrequency * depths.length * 2),
            lesion.build(),
            { faculties: signsAtLevel([side], level, depth, hornerSeen.one) },
          );
        }),
      ),
    ),
  );
}

function crossSectionHypotheses(): Hypothesis[] {
  return crossSectionLesions.flatMap(({ key, part, of, build }) => {
    const { percent, depths } = crossSections[of];
    return cordLevels.flatMap((level) =>
      depths.map((depth) =>
        hypothesis(
          site(key, part, level, 'both'),
          String(depth),
          (percent * levelFrequency(level)) / (totalFrequency * depths.length),
          build(level, depth).build(),
          { faculties: of === 'posterior' ? new Map() : signsAtLevel(bodySides, level, depth, hornerSeen.both) },
        ),
      ),
    );
  });
}

/**
 * Both lateral columns alone, as in hereditary spastic paraplegia: the longest corticospinal fibres fail and with them, in
 * some, the longest fibres of the dorsal columns, so that only the ankles feel less vibration. No level. Judged.
 */
function lateral(): Hypothesis[] {
  const place: Site = {
    key: 'spinal-cord-lateral',
    label: 'Lateral columns of the spinal cord, both sides',
    side: 'both',
    level: null,
    kind: 'cord',
  };
  return [0.85, 0.6, 0.35].flatMap((depth) =>
    [0, 0.3].flatMap((arms) =>
      [noProcess, longColumns].map((process) => {
        const lesion = new LesionBuilder();
        for (const side of bodySides) {
          lesion.cord('corticospinal', side, segmentIndex('C3'), arms * depth);
          lesion.cord('corticospinal', side, segmentIndex('T4'), depth);
        }
        const variant = `${depth}-${arms}-${process === noProcess ? 'tracts' : 'with-vibration'}`;
        return hypothesis(place, variant, 0.07, lesion.build(), { process });
      }),
    ),
  );
}

/** The far end of the longest dorsal-column fibres: the reflex arcs stay whole. */
const longColumns: Process = {
  ...noProcess,
  largeFibre: ({ lengthCm }) => 0.55 * reached(lengthCm, 96),
  because: 'the longest fibres of the dorsal columns fail together with the lateral ones',
};

/** Every lesion of the cord, at every segment, whole and in part, on each side. */
export function cordHypotheses(): Hypothesis[] {
  return [
    ...crossSectionHypotheses(),
    ...halves(),
    ...longCavity(),
    ...centralInjury(),
    ...longCompression(),
    ...lumbarEnlargement(),
    ...posterolateral(),
    ...lateral(),
    ...conus(),
  ];
}
