import { segmentIndex, segments } from '../../anatomy/segments.ts';
import { type OnsetPace, onsetPaces } from '../../exam/exam.ts';
import { type BodySide, bodySides, opposite } from '../../kernel/side.ts';
import { type Hypothesis, hypothesis, type Lasting, type PaceFactors } from '../hypothesis.ts';
import { intact, LesionBuilder } from '../lesion.ts';
import { type FibreSite, type Process, processOf } from '../process.ts';
import { conusHypotheses } from './conus.ts';
import { columnHypotheses } from './cord-columns.ts';
import { cordLevels, cordSite, levelFrequency, ownSegment, signsAtLevel, totalFrequency } from './cord-levels.ts';
import { unevenHypotheses } from './cord-uneven.ts';

/** Share of all focal findings, in percent, and depth of damage, of each way of damaging the cord. Judged. */
const crossSections = {
  transverse: { percent: 5.1, depths: [0.98, 0.6, 0.35] },
  hemisection: { percent: 3.2 },
  central: { percent: 1.3, depths: [0.85, 0.55] },
  anterior: { percent: 0.8, depths: [0.98, 0.55] },
  posterior: { percent: 0.6, depths: [0.85, 0.55] },
} as const;

const tracts = ['corticospinal', 'dorsalColumn', 'spinothalamic'] as const;

/** Tracts of one side with their own segment. */
function halfCord(lesion: LesionBuilder, side: BodySide, level: number, depth: number): LesionBuilder {
  for (const tract of tracts) lesion.cord(tract, side, level, depth);
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
    lesion.cord('corticospinal', side, level, depth * centralTract);
  }
  return lesion;
}

/** Share of the damage of the central cord that reaches the corticospinal tract. Judged. */
const centralTract = 0.3;

/**
 * How far a cavity has grown: the crossing fibres beside the canal go first, then the grey matter, the tracts late. In the
 * early form power and reflexes are still kept.
 */
const cavityStages = [
  { key: '0.9', crossing: 0.9, horn: 0.5, tract: 0.27 },
  { key: '0.6', crossing: 0.6, horn: 0.33, tract: 0.18 },
  { key: 'early', crossing: 0.9, horn: 0.12, tract: 0.04 },
] as const;

/** A cavity often lies to one side, and one arm is thin and burnt for years; how often, and what the other has then, judged. */
const cavitySides = [
  { side: null, share: 0.76 },
  { side: 'left', share: 0.12 },
  { side: 'right', share: 0.12 },
] as const;
const cavityBetterSide = 0.12;

/** A cavity over many segments: pain and temperature in a cape, wasted hands, the tracts late. */
function longCavity(): Hypothesis[] {
  const tops = segments.slice(segmentIndex('C2'), segmentIndex('T4') + 1);
  return tops.flatMap((top) =>
    cavityStages.flatMap(({ key, crossing, horn, tract }) =>
      cavitySides.map(({ side: worse, share }) => {
        const level = segmentIndex(top);
        const lesion = new LesionBuilder();
        for (const side of bodySides) {
          const part = worse === null || side === worse ? 1 : cavityBetterSide;
          for (let segment = level; segment <= level + 6; segment += 1) {
            lesion.cord('crossing', side, segment, crossing * part).cord('anteriorHorn', side, segment, horn * part);
          }
          lesion.cord('corticospinal', side, level, tract * part);
        }
        return hypothesis(
          // Named, as the shorter ones are, by the first segment whose skin has lost pain.
          cordSite('spinal-cord-central', 'central part', level + 1, 'both'),
          `cavity-${key}${worse === null ? '' : `-${worse}`}`,
          (0.5 * share * levelFrequency(level)) / (tops.length * 4),
          lesion.build(),
          { faculties: signsAtLevel(bodySides, level, crossing), paces: cavityPaces },
        );
      }),
    ),
  );
}

/** A cavity grows over years (Mariani 1991, recalled). Judged. */
const cavityPaces = { hyperacute: 0.1, acute: 0.3, subacute: 0.7, chronic: 1.8 } as const;

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
        cordSite('spinal-cord-central', 'central part', level, 'both'),
        `arms-${depth}`,
        0.12,
        lesion.build(),
      );
    }),
  );
}

/**
 * The grey matter of neck and chest when its artery fails: both arms hang while the legs walk, with pain lost in a cape that
 * may reach down to the ribs (from-memory). Frequency judged.
 */
function capeInfarct(): Hypothesis[] {
  return (['C4', 'C5'] as const).flatMap((top) =>
    [0.8, 0.6].map((depth) => {
      const level = segmentIndex(top);
      const lesion = new LesionBuilder();
      for (const side of bodySides) {
        for (let segment = level; segment <= segmentIndex('T8'); segment += 1)
          lesion.cord('crossing', side, segment, depth);
        for (let segment = level; segment <= segmentIndex('T1'); segment += 1) {
          lesion.cord('anteriorHorn', side, segment, depth).cord('dorsalRoot', side, segment, depth * 0.3);
        }
        lesion.cord('corticospinal', side, level, depth * 0.15);
      }
      return hypothesis(
        cordSite('spinal-cord-central', 'central part', level, 'both'),
        `cape-${depth}`,
        0.008,
        lesion.build(),
        { paces: endOfArteryPaces },
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

/**
 * An artery closes at once: three of four infarcts of the cord are complete within twelve hours (Zalewski 2019, recalled).
 * A mass in front of the cord brings the same over weeks. Judged.
 */
const arteryPaces = { hyperacute: 3, acute: 1, subacute: 0.4, chronic: 0.3 } as const;

/** A mass in front of the cord does not pick out the horns and leave the tracts. */
const endOfArteryPaces = { ...arteryPaces, subacute: 0.2, chronic: 0.2 } as const;

/** The end of the anterior spinal artery's reach in the neck: the anterior horns of both arms, the tracts hardly. Frequency judged. */
function anteriorHornsOfArms(): Hypothesis[] {
  return [0.95, 0.7].flatMap((depth) =>
    [
      ['C5', 'T1'],
      ['C4', 'C6'],
      ['C7', 'T1'],
    ].map(([top = 'C5', bottom = 'T1']) => {
      const level = segments.indexOf(top as (typeof segments)[number]);
      const last = segments.indexOf(bottom as (typeof segments)[number]);
      const lesion = new LesionBuilder();
      for (const side of bodySides) {
        for (let segment = level; segment <= last; segment += 1)
          lesion.cord('anteriorHorn', side, segment, depth).cord('crossing', side, segment, depth * 0.15);
        lesion.cord('corticospinal', side, level, depth * 0.1);
      }
      return hypothesis(
        cordSite('spinal-cord-anterior', 'anterior part', level, 'both'),
        `arms-${top}-${depth}`,
        0.01,
        lesion.build(),
        { paces: endOfArteryPaces },
      );
    }),
  );
}

function posterior(level: number, depth: number): LesionBuilder {
  const lesion = new LesionBuilder();
  for (const side of bodySides) lesion.cord('dorsalColumn', side, level, depth);
  return lesion;
}

const crossSectionLesions = [
  { key: 'spinal-cord-transverse', part: 'whole cross-section', of: 'transverse', build: transverse },
  { key: 'spinal-cord-central', part: 'central part', of: 'central', build: central },
  { key: 'spinal-cord-anterior', part: 'anterior part', of: 'anterior', build: anterior },
  { key: 'spinal-cord-posterior', part: 'dorsal columns', of: 'posterior', build: posterior },
] as const;

/**
 * Narrowing over several discs: tracts at the top, grey matter and roots for some segments below it, as in the worn neck,
 * the commonest disease of the cord from middle age on.
 */
function longCompression(): Hypothesis[] {
  return (['C3', 'C4', 'C5', 'C6'] as const).flatMap((top) =>
    [0.6, 0.35, 0.2].map((depth) => {
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
        cordSite('spinal-cord-transverse', 'whole cross-section', level, 'both'),
        `long-${depth}`,
        0.08,
        lesion.build(),
      );
    }),
  );
}

/** How deep a slow narrowing has bitten while strength is still kept, and how common that stage is, in percent. Judged. */
const stiffStage = { percent: 0.5, release: 0.5, weakness: 0.06, columns: 0.5 };

/** What presses slowly makes legs stiff, unsteady and numb before it makes them weak; in hours there is no such stage. Judged. */
const stiffPaces = { hyperacute: 0.05, acute: 0.3, subacute: 1.2, chronic: 1 } as const;

/** Worn discs, masses and the canal's narrowing belong to adults; legs that stiffen slowly in a child are mostly inherited. Judged. */
const stiffAges = { from: 16, outside: 0.4 } as const;

/** The early stage of pressure on the whole cord: jerks and plantar responses of the tracts, sensation, and power that is kept. */
function stiffBeforeWeak(): Hypothesis[] {
  const { percent, release, weakness, columns } = stiffStage;
  return cordLevels.map((level) => {
    const lesion = new LesionBuilder();
    for (const side of bodySides) {
      lesion.cord('corticospinal', side, level, weakness).cord('dorsalColumn', side, level, columns);
      lesion.cord('spinothalamic', side, level, columns * 0.6);
    }
    return hypothesis(
      cordSite('spinal-cord-transverse', 'whole cross-section', level, 'both'),
      'stiff-before-weak',
      (percent * levelFrequency(level)) / totalFrequency,
      lesion.build(),
      {
        faculties: signsAtLevel(bodySides, level, columns),
        paces: stiffPaces,
        ages: stiffAges,
        process: processOf({
          release: ({ segment }) => (segment !== null && segment > level ? release : 0),
          because: 'descending fibres that hold the reflexes back fail before strength does',
        }),
      },
    );
  });
}

/** The jerks alone, before the columns: how common in the necks of the middle-aged, in percent, and how far they are let go. Judged. */
const livelyStage = { percent: 0.16, release: 0.5, columns: 0.08 } as const;
const livelyAges = { from: 40, outside: 0.3 } as const;

/**
 * The first stage of a neck that narrows: jerks and fingers that answer a flick, tingling and unsteadiness, while strength and
 * feeling stand the examiner's test. Source: Houten 2008, Hoffmann sign and cord pressure (from memory).
 */
function livelyBeforeNumb(): Hypothesis[] {
  return (['C3', 'C4', 'C5', 'C6'] as const).map((top) => {
    const level = segmentIndex(top);
    const lesion = new LesionBuilder();
    for (const side of bodySides) lesion.cord('dorsalColumn', side, level, livelyStage.columns);
    return hypothesis(
      cordSite('spinal-cord-transverse', 'whole cross-section', level, 'both'),
      'lively-before-numb',
      livelyStage.percent / 4,
      lesion.build(),
      {
        paces: stiffPaces,
        ages: livelyAges,
        process: processOf({
          release: ({ segment }) => (segment !== null && segment >= level ? livelyStage.release : 0),
          because: 'descending fibres that hold the reflexes back fail before strength does',
        }),
      },
    );
  });
}

const fromFarBelow = 'pressure from outside reaches the fibres from far below first';
const feelingBeforeStrength = 'the fibres of feeling fail before those of strength';

/**
 * Pressure from outside on the whole cord: the corticospinal fibres suffer before the sensory ones, and of these the
 * outermost, which come from far below, before those that entered near the lesion, so that the level of the skin may lie
 * some segments below the lesion (from-memory). Share of the loss that the sensory tracts have, where the skin begins to
 * show it, as a multiple of the loss of strength, and percent of all findings. Judged.
 */
const pressureForms = [
  { key: 'strength-first', depth: 0.85, feeling: 0.12, below: 4, percent: 0.14, because: fromFarBelow },
  { key: 'strength-first', depth: 0.5, feeling: 0.1, below: 4, percent: 0.14, because: fromFarBelow },
  { key: 'low-level', depth: 0.7, feeling: 0.6, below: 4, percent: 0.06, because: fromFarBelow },
  // What lies in the cord or drowns its veins may take feeling first, and strength late.
  { key: 'feeling-first', depth: 0.1, feeling: 6, below: 1, percent: 0.16, because: feelingBeforeStrength },
] as const;

/** What strikes at once spares no tract, and over years pressure leaves none alone. Judged. */
const pressurePaces = { hyperacute: 0.03, acute: 1.6, subacute: 1.2, chronic: 0.4 } as const;

function pressedFromOutside(): Hypothesis[] {
  const levels = cordLevels.filter((level) => level >= segmentIndex('C3') && level <= segmentIndex('T12'));
  const total = levels.reduce((sum, level) => sum + levelFrequency(level), 0);
  return levels.flatMap((level) =>
    pressureForms.map(({ key, depth, feeling, below, percent, because }) => {
      const lesion = new LesionBuilder();
      for (const side of bodySides) lesion.cord('corticospinal', side, level, depth);
      const lost = ({ segment }: FibreSite): number =>
        segment === null || segment < level + below ? 0 : depth * feeling;
      return hypothesis(
        cordSite('spinal-cord-transverse', 'whole cross-section', level, 'both'),
        `${key}-${depth}`,
        (percent * levelFrequency(level)) / total,
        lesion.build(),
        {
          process: processOf({
            largeFibre: lost,
            smallFibre: lost,
            sparesArcs: true,
            because,
          }),
          faculties: signsAtLevel(bodySides, level, depth),
          paces: pressurePaces,
        },
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
  { key: 'pure', hit: tracts, grey: true, spills: false, share: 0.33, depths: [0.98, 0.6, 0.35] },
  { key: 'spilling', hit: tracts, grey: true, spills: true, share: 0.33, depths: [0.98, 0.6, 0.35] },
  {
    key: 'anterolateral',
    hit: ['corticospinal', 'spinothalamic'],
    grey: true,
    spills: false,
    share: 0.19,
    depths: [0.85, 0.45],
  },
  {
    key: 'posterolateral',
    hit: ['corticospinal', 'dorsalColumn'],
    grey: true,
    spills: false,
    share: 0.04,
    depths: [0.5],
  },
  // Weakness alone, as in some haematomas behind the neck's cord that are taken for a stroke.
  { key: 'lateral', hit: ['corticospinal'], grey: true, spills: false, share: 0.09, depths: [0.95, 0.6] },
  // One dorsal column, as when a plaque makes one hand useless though it is strong (Oppenheim, from memory).
  { key: 'posterior', hit: ['dorsalColumn'], grey: false, spills: false, share: 0.04, depths: [0.75] },
] as const;

function halves(): Hypothesis[] {
  const { percent } = crossSections.hemisection;
  return cordLevels.flatMap((level) =>
    bodySides.flatMap((side) =>
      halfForms.flatMap(({ key, hit, grey, spills, share, depths }) =>
        depths.map((depth) => {
          const lesion = new LesionBuilder();
          for (const tract of hit) lesion.cord(tract, side, level, depth);
          if (grey) ownSegment(lesion, side, level, depth);
          if (spills) {
            lesion
              .cord('corticospinal', opposite(side), level, spillShare * depth)
              .cord('dorsalColumn', opposite(side), level, spillShare * depth);
          }
          return hypothesis(
            cordSite('spinal-cord-hemisection', 'one half', level, side),
            `${depth}-${key}`,
            (percent * levelFrequency(level) * share) / (totalFrequency * depths.length * 2),
            lesion.build(),
            { faculties: signsAtLevel([side], level, depth) },
          );
        }),
      ),
    ),
  );
}

/** Where a disc or a mass presses on the front of one half, a segment apart, and how common it is that this takes pain alone, in percent. Judged. */
const crossedTract = {
  levels: ['C3', 'C5', 'C7', 'T2', 'T4', 'T6', 'T8'],
  depths: [0.9, 0.55],
  percent: 0.16,
} as const;

/** What presses does so over weeks; a plaque or a small infarct takes days or hours. Judged. */
const crossedTractPaces: PaceFactors = { hyperacute: 0.4, acute: 0.7, subacute: 1.2, chronic: 1.2 };

/**
 * The crossed tract of one half alone, which lies in its front: pain and warmth are lost on the other side up to some segments
 * below, strength, position and jerks are kept, as where a disc presses from in front and beside (from-memory).
 */
function painAlone(): Hypothesis[] {
  const { levels, depths, percent } = crossedTract;
  return levels.flatMap((top) =>
    bodySides.flatMap((side) =>
      depths.map((depth) => {
        const level = segmentIndex(top);
        const total = levels.reduce((sum, one) => sum + levelFrequency(segmentIndex(one)), 0);
        return hypothesis(
          cordSite('spinal-cord-hemisection', 'one half', level, side),
          `${depth}-pain-alone`,
          (percent * levelFrequency(level)) / (total * bodySides.length * depths.length),
          new LesionBuilder().cord('spinothalamic', side, level, depth).build(),
          { paces: crossedTractPaces },
        );
      }),
    ),
  );
}

/** The segments of the arm, and where the chest ends at the latest that the fibres beside them come from. */
const arm = { top: segmentIndex('C5'), bottom: segmentIndex('T1') } as const;

/** How much of the fibres of arm and chest a lesion of the wedge takes, and how far down. Judged. */
const wedgeForms = [
  { key: 'arm', bottom: arm.bottom },
  { key: 'arm-and-chest', bottom: segmentIndex('T8') },
] as const;

/**
 * The outer half of one dorsal column in the neck, the cuneate bundle, where the fibres of arm and chest lie beside those of
 * the leg, which are spared: the useless hand of Oppenheim, mostly of a plaque. Source: Brazis, cord (recalled); frequency judged.
 */
function wedges(): Hypothesis[] {
  return (['C2', 'C4'] as const).flatMap((top) =>
    bodySides.flatMap((side) =>
      wedgeForms.flatMap(({ key, bottom }) =>
        [0.85, 0.5].map((depth) => {
          const level = segmentIndex(top);
          return hypothesis(
            cordSite('spinal-cord-hemisection', 'one half', level, side),
            `wedge-${key}-${depth}`,
            0.1 / 16,
            intact,
            {
              process: processOf({
                largeFibre: (fibre) =>
                  fibre.side === side && fibre.segment !== null && fibre.segment > level && fibre.segment <= bottom
                    ? depth
                    : 0,
                sparesArcs: true,
                because: 'the fibres of arm and chest lie outermost in the dorsal column',
              }),
            },
          );
        }),
      ),
    ),
  );
}

/** A lesion of one part of the cross-section, as its table has it, or in a stage of its own. */
function crossSection(
  { key, part, of, build }: (typeof crossSectionLesions)[number],
  level: number,
  depth: number,
  stage?: Stage,
): Hypothesis {
  const { percent, depths } = crossSections[of];
  const paces = [...(of === 'anterior' ? [arteryPaces] : []), ...(stage === undefined ? [] : [stage.paces])];
  return hypothesis(
    cordSite(key, part, level, 'both'),
    stage === undefined ? String(depth) : `${depth}-${stage.key}`,
    ((stage?.share ?? 1) * percent * levelFrequency(level)) / (totalFrequency * depths.length),
    build(level, depth).build(),
    {
      faculties: of === 'posterior' ? new Map() : signsAtLevel(bodySides, level, depth),
      ...(paces.length > 0 && { paces: allOf(paces) }),
      ...(stage && { lasting: stage.lasting, process: stage.process(level) }),
    },
  );
}

/** A time in the life of a lesion in which it looks otherwise. */
interface Stage {
  readonly key: string;
  /** Share of the lesions of that depth, of all paces together. */
  readonly share: number;
  readonly paces: PaceFactors;
  readonly lasting: Lasting;
  readonly process: (level: number) => Process;
}

function allOf(factors: readonly PaceFactors[]): PaceFactors {
  const of = (pace: OnsetPace): number => factors.reduce((product, paces) => product * (paces[pace] ?? 1), 1);
  return Object.fromEntries(onsetPaces.map((pace) => [pace, of(pace)]));
}

function crossSectionHypotheses(): Hypothesis[] {
  return crossSectionLesions.flatMap((lesion) =>
    cordLevels.flatMap((level) => crossSections[lesion.of].depths.map((depth) => crossSection(lesion, level, depth))),
  );
}

/**
 * The first days after a sudden lesion that takes most of the cord: limbs below it are slack and their jerks flat, as one
 * event and not reflex by reflex. It passes within days to weeks (Ditunno 2004, from memory). How often it is there among
 * lesions of that depth, and at which pace, judged.
 */
const shock: Stage = {
  key: 'in-shock',
  share: 0.06,
  paces: { hyperacute: 10, acute: 6, subacute: 0.3, chronic: 0.01 },
  lasting: { years: 0.12, beyond: 0.01 },
  process: (level) =>
    processOf({
      shock: ({ segment }) => (segment !== null && segment > level ? 0.9 : 0),
      because: 'a fresh lesion silences the cord below it',
    }),
};

/** Lesions deep enough for shock: those of strength and of most of what passes. */
const shockDepths: Readonly<Partial<Record<keyof typeof crossSections, readonly number[]>>> = {
  transverse: [0.98, 0.6],
  anterior: [0.98],
};

function inShock(): Hypothesis[] {
  return crossSectionLesions.flatMap((lesion) =>
    cordLevels.flatMap((level) =>
      (shockDepths[lesion.of] ?? []).map((depth) => crossSection(lesion, level, depth, shock)),
    ),
  );
}

/** Every lesion of the cord, at every segment, whole and in part, on each side. */
export function cordHypotheses(): Hypothesis[] {
  return [
    ...crossSectionHypotheses(),
    ...inShock(),
    ...anteriorHornsOfArms(),
    ...halves(),
    ...painAlone(),
    ...wedges(),
    ...longCavity(),
    ...centralInjury(),
    ...capeInfarct(),
    ...longCompression(),
    ...stiffBeforeWeak(),
    ...livelyBeforeNumb(),
    ...pressedFromOutside(),
    ...unevenHypotheses(),
    ...columnHypotheses(),
    ...conusHypotheses(),
  ];
}
