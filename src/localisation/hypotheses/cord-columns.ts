import { type Segment, segmentIndex } from '../../anatomy/segments.ts';
import { bodySides } from '../../kernel/side.ts';
import { type Hypothesis, hypothesis, type Site } from '../hypothesis.ts';
import { LesionBuilder } from '../lesion.ts';
import { type FibreSite, noProcess, type Process, partOf, processOf, reached } from '../process.ts';

/** The longest axons failing along with the tracts, as in lack of vitamin B12 or copper. */
const failingAxons = {
  largeFibre: ({ lengthCm }) => 0.6 * reached(lengthCm, 96),
  smallFibre: ({ lengthCm }) => 0.5 * reached(lengthCm, 98),
  reflex: ({ lengthCm }) => 0.6 * reached(lengthCm, 84),
  because: 'the longest axons fail together with the tracts',
} as const satisfies Partial<Process>;
const longAxons: Process = processOf(failingAxons);

/** The skin of the feet, or of toes and fingers, is numb to touch and pin while the jerks stay brisk. Losses judged. */
function numbEnds(armsCountAsLongerBy: number): Process {
  const lost = ({ segment, lengthCm }: FibreSite): number =>
    0.5 * reached(lengthCm + (partOf(segment) === 'arm' ? armsCountAsLongerBy : 0), 94);
  return processOf({
    largeFibre: lost,
    smallFibre: lost,
    sparesArcs: true,
    because: 'the longest fibres fail from their far end',
  });
}
const numbFeet = numbEnds(0);
/** As far as fingers count where poisons take them with the toes. Judged. */
const numbFingersToo = numbEnds(18);

/** Whether axons fail with the tracts, and whether their reflexes go. Shares judged. */
const axonForms = [
  { key: 'tracts', share: 0.42, processAt: () => noProcess },
  { key: 'tracts-and-nerves', share: 0.5, processAt: () => longAxons },
  // With the power of the arms hardly touched; those forms are two of three. Columns that fail from the top of the neck down leave no fingers that feel.
  {
    key: 'tracts-and-numb-feet',
    share: 0.12,
    processAt: (top: Segment) => (segmentIndex(top) <= segmentIndex('C5') ? numbFingersToo : numbFeet),
  },
] as const;

const posterolateralPlace: Site = {
  key: 'spinal-cord-posterolateral',
  label: 'Dorsal and lateral columns of the spinal cord',
  side: 'both',
  level: null,
  kind: 'cord',
};

/** The dorsal and lateral columns together over a long stretch, as in combined degeneration; no single level. */
function posterolateral(): Hypothesis[] {
  return columnTops.flatMap((top) =>
    columnForms.flatMap(({ depth, arms, share }) =>
      axonForms
        .filter(({ key }) => key !== 'tracts-and-numb-feet' || arms === 0.3)
        .map(({ key, share: shareOfAxons, processAt }) => {
          const lesion = new LesionBuilder();
          for (const side of bodySides) {
            // The columns suffer from the neck down; the pyramidal fibres where they are longest.
            lesion.cord('dorsalColumn', side, segmentIndex(top), depth);
            lesion.cord('corticospinal', side, segmentIndex(top), depth * arms);
            lesion.cord('corticospinal', side, segmentIndex('T8'), depth * 0.55);
          }
          const frequency = (1.5 * share * shareOfAxons) / columnTops.length;
          return hypothesis(posterolateralPlace, `${top}-${depth}-${arms}-${key}`, frequency, lesion.build(), {
            process: processAt(top),
            paces: columnPaces,
          });
        }),
    ),
  );
}

/** Depth of the loss, and the share of it that the lateral columns have at the top already, where the fibres for the arms run. Judged. */
const columnForms = [
  { depth: 0.85, arms: 0.3, share: 0.34 },
  { depth: 0.85, arms: 0.6, share: 0.16 },
  { depth: 0.5, arms: 0.3, share: 0.34 },
  { depth: 0.5, arms: 0.7, share: 0.16 },
] as const;

/** What starves or poisons the columns does so over weeks and months, and hardly ever in hours or a few days. Judged. */
const columnPaces = { hyperacute: 0.05, acute: 0.35, subacute: 1.2, chronic: 1.2 } as const;

/** How much of them all is met while the legs are still strong, in percent, and the control of the jerks that is lost by then. Judged. */
const strongStage = { percent: 0.18, release: 0.5, weakness: 0.05 } as const;

/**
 * The stage in which position and vibration are lost and jerks and toes are those of the tracts, while power is kept: most have
 * reached no further when lack of vitamin B12 is found. Source: Healton 1991 (recalled); fractions judged.
 */
function posterolateralWhileStrong(): Hypothesis[] {
  const { percent, release: lost, weakness } = strongStage;
  const tops = ['C5', 'T5'] as const satisfies readonly Segment[];
  const release: Process['release'] = ({ segment }) =>
    segment === null ? 0 : segment > segmentIndex('T4') ? lost : segment > segmentIndex('C3') ? lost * 0.3 : 0;
  const forms = [
    { key: 'tracts', share: 0.6, process: processOf({ release, because: 'the tracts fail before strength does' }) },
    { key: 'tracts-and-nerves', share: 0.4, process: processOf({ ...failingAxons, release }) },
  ] as const;
  return tops.flatMap((top) =>
    [0.6, 0.85].flatMap((depth) =>
      forms.map(({ key, share, process }) => {
        const lesion = new LesionBuilder();
        for (const side of bodySides) {
          lesion.cord('dorsalColumn', side, segmentIndex(top), depth);
          lesion.cord('corticospinal', side, segmentIndex('T8'), weakness);
        }
        const frequency = (percent * share) / (2 * tops.length);
        return hypothesis(posterolateralPlace, `${top}-${depth}-${key}-while-strong`, frequency, lesion.build(), {
          process,
          paces: columnPaces,
        });
      }),
    ),
  );
}

/** Where the columns begin to fail; no place is the usual one, so that a sharp level speaks for another lesion. */
const columnTops = ['C3', 'C5', 'C7', 'T1', 'T3', 'T5', 'T7'] as const satisfies readonly Segment[];

/**
 * How far the lateral columns have failed, and the share of the lost control that shows as weakness; stiffness and brisk
 * jerks show all of it. In the end, after years, the legs hardly move. Judged.
 */
const lateralStages = [
  { depth: 0.97, strength: 0.97, share: 0.12 },
  { depth: 0.9, strength: 0.7, share: 0.28 },
  { depth: 0.65, strength: 0.7, share: 0.3 },
  { depth: 0.4, strength: 0.7, share: 0.3 },
] as const;

const lateralPaces = { hyperacute: 0.04, acute: 0.06, subacute: 0.7, chronic: 1.4 } as const;

/**
 * Both lateral columns alone, as in hereditary spastic paraplegia: the longest corticospinal fibres fail, the legs grow
 * stiff before they grow weak, and in some the longest fibres of the dorsal columns fail too, so that the feet feel less
 * vibration. No level. Fractions judged.
 */
function lateral(): Hypothesis[] {
  const place: Site = {
    key: 'spinal-cord-lateral',
    label: 'Lateral columns of the spinal cord, both sides',
    side: 'both',
    level: null,
    kind: 'cord',
  };
  return lateralStages.flatMap(({ depth, strength, share }) =>
    [0, 0.3].flatMap((arms) =>
      [0, 0.55].map((vibration) => {
        const lesion = new LesionBuilder();
        for (const side of bodySides) {
          lesion.cord('corticospinal', side, segmentIndex('C3'), arms * depth * strength);
          lesion.cord('corticospinal', side, segmentIndex('T4'), depth * strength);
        }
        const process = processOf({
          release: ({ segment }) => lossBelow(segment, depth, arms) * 0.5,
          // Only the feet, so that the arcs of the reflexes hardly suffer.
          largeFibre: ({ segment, lengthCm }) => (segment === null ? 0 : vibration * reached(lengthCm, 96)),
          because: 'the longest fibres of the cord fail from their far end',
        });
        const variant = `${depth}-${arms}-${vibration === 0 ? 'tracts' : 'with-vibration'}`;
        const frequency = (0.7 * share * (vibration === 0 ? 0.7 : 0.3)) / 2;
        return hypothesis(place, variant, frequency, lesion.build(), {
          process,
          paces: lateralPaces,
          lasting: { years: 3, beyond: 1.5 },
        });
      }),
    ),
  );
}

/**
 * A plaque of the neck that tingles and lets go of the jerks, and at the bedside takes neither feeling nor strength: sensory
 * complaints open a third of multiple sclerosis (from-memory). Frequency judged.
 */
function tinglingPlaque(): Hypothesis[] {
  return (['C3', 'C5'] as const).map((top) => {
    const lesion = new LesionBuilder();
    for (const side of bodySides) lesion.cord('dorsalColumn', side, segmentIndex(top), 0.15);
    const below: Process['release'] = ({ segment }) => (segment !== null && segment >= segmentIndex(top) ? 0.45 : 0);
    return hypothesis(posterolateralPlace, `plaque-${top}`, 0.15, lesion.build(), {
      process: processOf({ release: below, because: 'inflamed columns tingle before they fail' }),
      paces: { hyperacute: 0.3, acute: 1.5, subacute: 1.2, chronic: 0.3 },
      ages: { from: 12, to: 60, outside: 0.3 },
    });
  });
}

/** Loss of control of the segments of the legs and of the arms. */
function lossBelow(segment: number | null, legs: number, arms: number): number {
  if (segment === null) return 0;
  return segment > segmentIndex('T4') ? legs : segment > segmentIndex('C3') ? legs * arms : 0;
}

/** Columns that fail over a long stretch, without a level. */
export function columnHypotheses(): Hypothesis[] {
  return [...posterolateral(), ...posterolateralWhileStrong(), ...lateral(), ...tinglingPlaque()];
}
