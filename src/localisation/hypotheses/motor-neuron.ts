import type { MuscleGroup } from '../../anatomy/movement.ts';
import { segmentIndex } from '../../anatomy/segments.ts';
import { type BodySide, bodySides, opposite } from '../../kernel/side.ts';
import { type Hypothesis, hypothesis } from '../hypothesis.ts';
import { LesionBuilder } from '../lesion.ts';
import { type Process, partOf, processOf, reached } from '../process.ts';
import {
  type CellLoss,
  type CellPattern,
  cellRegions,
  segmentalPatterns,
  spreadingPatterns,
} from './motor-neuron-patterns.ts';
import { reasonsOf } from './process-reasons.ts';
import { comesOnSlowly, facultiesOf, type ProcessSign, processSite } from './process-signs.ts';

/** Percent of all focal and diffuse findings that each process stands for. Judged. */
const percent = {
  motorNeuron: 1.2,
  lowerSpreading: 0.3,
  lowerSegmental: 0.6,
  lowerProximal: 0.15,
  bulbospinal: 0.1,
  ofInfants: 0.3,
  upperMotorNeuron: 0.35,
} as const;

const system = processSite('motor-neuron-system', 'Disease of upper and lower motor neurons', 'motor-neuron-system');
const lower = processSite('lower-motor-neuron-system', 'Anterior horn cell disease', 'anterior-horn');
const upper = processSite('upper-motor-neuron-system', 'Disease of upper motor neurons', 'motor-neuron-system');

/** Cells lost everywhere in a disease that spreads, before any weakness shows: twitching is seen beyond the weak regions. Judged. */
const lostEverywhere = 0.1;

function cellsLost({ losses }: CellPattern, everywhere = 0): LesionBuilder {
  const lesion = new LesionBuilder();
  if (everywhere > 0)
    for (const side of bodySides)
      for (let segment = 0; segment <= segmentIndex('S2'); segment += 1)
        lesion.cord('anteriorHorn', side, segment, everywhere);
  for (const [side, region, fraction] of losses) {
    const [from, to] = cellRegions[region];
    for (let segment = segmentIndex(from); segment <= segmentIndex(to); segment += 1)
      lesion.cord('anteriorHorn', side, segment, fraction);
  }
  return lesion;
}

/** How much worse the thenar side of the hand is than the rest: the split hand. Judged. */
const splitHand = 0.4;

/** Thumb side of the hand lost on top of what the segments have lost. */
function thenarLoss({ losses }: CellPattern): Process['motor'] {
  const bySide = new Map<BodySide, number>();
  for (const [side, region, fraction] of losses) if (region === 'forearm-and-hand') bySide.set(side, fraction);
  return ({ side, group }) => (group === 'hand-thenar' ? splitHand * (bySide.get(side) ?? 0) : 0);
}

/** Spreading loss of motor cells is a disease of the second half of life. Judged. */
const middleAgeOn = { from: 40, outside: 0.25 } as const;

/** Of upper and lower motor cells together hardly ever in the first two decades; a child's anterior horn cells are lost alone. Judged. */
const adultsOnly = [middleAgeOn, { from: 25, outside: 0.15 }, { from: 20, outside: 0.6 }] as const;

/** Signs of lost bulbar cells. */
const bulbarSigns = (chance: number, breathing: number): readonly ProcessSign[] => [
  ['tongue', chance * 0.3],
  ['tongue-denervation', chance * 0.9],
  ['speech-articulation', chance],
  ['swallowing', chance * 0.9],
  ['palate', chance * 0.5],
  ['voice', chance * 0.5],
  ['lower-face', chance * 0.45],
  ['upper-face', chance * 0.2],
  ['jaw-power', chance * 0.2],
  ['accessory', chance * 0.25],
  ['breathing', breathing],
];

const usualBreathing = 0.1;

/**
 * Descending control lost by cortex and tract together, in slight and in marked cases: of reflexes and tone, and of
 * strength, which follows late. Judged.
 */
const upperLosses = [
  { key: 'slight', released: 0.5, strength: 0.12, share: 0.35 },
  { key: 'marked', released: 0.75, strength: 0.35, share: 0.5 },
  // Brisk jerks and rising toes all over, while only the limb in which motor cells die is weak.
  { key: 'reflexes-alone', released: 0.7, strength: 0.02, share: 0.15, jaw: 0.4 },
] as const satisfies readonly UpperLoss[];

interface UpperLoss {
  readonly key: string;
  readonly released: number;
  readonly strength: number;
  readonly share: number;
  /** Least loss of control over the jaw, where it does not go with the bulbar signs. */
  readonly jaw?: number;
}

/** The side with fewer motor cells lost has this much of the upper motor neuron loss. Judged. */
const upperOnBetterSide = 0.6;

/** From this chance of bulbar signs on, the disease began there, with spastic and flaccid signs mixed. */
const bulbarOnset = 0.8;

function worstLoss({ losses }: CellPattern, side: BodySide): number {
  return losses.reduce((most, [one, , fraction]) => (one === side ? Math.max(most, fraction) : most), 0);
}

function spreadingHypotheses(pattern: CellPattern, share: number): Hypothesis[] {
  const { key, bulbar, breathing = usualBreathing } = pattern;
  const motor = thenarLoss(pattern);
  const onSide = (side: BodySide): number =>
    worstLoss(pattern, side) >= worstLoss(pattern, opposite(side)) ? 1 : upperOnBetterSide;
  const combined = upperLosses.map((loss: UpperLoss) => {
    const lesion = cellsLost(pattern, lostEverywhere);
    for (const side of bodySides) {
      const strength = loss.strength * onSide(side);
      lesion.cord('corticospinal', side, 0, strength);
    }
    // The jaw jerk goes with the bulbar region.
    const face = bulbar >= bulbarOnset ? 0.7 : Math.max(loss.jaw ?? 0, loss.released * (0.2 + 0.7 * bulbar));
    const release: Process['release'] = ({ side, segment }) =>
      segment === null ? face : loss.released * onSide(side) - loss.strength * onSide(side);
    return hypothesis(system, `${key}-${loss.key}`, percent.motorNeuron * share * loss.share, lesion.build(), {
      process: processOf({
        motor,
        release,
        because: 'motor cells are lost in cortex, brainstem and cord',
        reasons: reasonsOf.motorCells,
      }),
      faculties: facultiesOf([
        ...bulbarSigns(bulbar, breathing),
        ['pseudobulbar', (0.35 + 0.4 * loss.released) * bulbar],
      ]),
      ages: adultsOnly,
      // A fifth live longer than five years with it (from-memory).
      lasting: { years: 5, beyond: 0.4 },
    });
  });
  const cordAlone = hypothesis(lower, key, percent.lowerSpreading * share, cellsLost(pattern, lostEverywhere).build(), {
    process: processOf({ motor, because: 'anterior horn cells are lost', reasons: reasonsOf.lowerMotorCells }),
    faculties: facultiesOf(bulbarSigns(bulbar * 0.6, breathing)),
    paces: comesOnSlowly,
    ages: middleAgeOn,
    // It spreads: who has one weak limb after so many years has something else (half live some five years, from-memory).
    lasting: { years: 6, beyond: 0.3 },
  });
  return [...combined, cordAlone];
}

/** Cells die within hours to days of an infection, or over years in one limb. Judged. */
const staysWhereItBegan = { hyperacute: 1.5, acute: 2, subacute: 0.5, chronic: 0.85 } as const;

/**
 * Viruses of motor cells inflame the meninges as well: the neck is stiff in some at first. Nor do they keep to the front of the
 * grey matter: for days the bladder and the bowel stand still in a quarter, as in poliomyelitis. Chances judged.
 */
const besideTheMotorCells: readonly ProcessSign[] = [
  ['meningeal', 0.18],
  ['bladder-retention', 0.2],
  ['bowel', 0.2],
  ['gut', 0.15],
];

function segmentalHypothesis(pattern: CellPattern, share: number): Hypothesis {
  return hypothesis(lower, `segmental-${pattern.key}`, percent.lowerSegmental * share, cellsLost(pattern).build(), {
    process: processOf({
      because: 'anterior horn cells of some segments are lost',
      reasons: reasonsOf.lowerMotorCells,
    }),
    faculties: facultiesOf([...bulbarSigns(pattern.bulbar, 0.06), ...(pattern.ages ? [] : besideTheMotorCells)]),
    paces: pattern.paces ?? staysWhereItBegan,
    ...(pattern.ages && { ages: pattern.ages }),
  });
}

/** Girdle muscles, which some slow diseases of anterior horn cells pick out. */
const girdle: ReadonlySet<MuscleGroup | undefined> = new Set<MuscleGroup>([
  'hip',
  'knee-extensors',
  'shoulder',
  'scapular',
  'upper-arm',
  'neck-flexors',
  'trunk',
]);

/**
 * Motor cells that die in the first months of life: limp legs and then arms, near before far, no jerks, a tongue that flickers and
 * a chest that sinks while the diaphragm works; face and eyes stay bright. Source: Amato and Russell (recalled); fractions judged.
 */
function infantHypotheses(): Hypothesis[] {
  return [
    { key: 'limp', share: 0.65, cells: 0.5, near: 0.55, arms: 0.85, throat: 0.5, breathing: 0.6 },
    { key: 'legs-first', share: 0.35, cells: 0.2, near: 0.5, arms: 0.5, throat: 0.12, breathing: 0.15 },
  ].map(({ key, share, cells, near, arms, throat, breathing }) => {
    const losses: readonly CellLoss[] = bodySides.flatMap((side): readonly CellLoss[] => [
      [side, 'neck', cells * 0.6],
      [side, 'trunk', cells],
      [side, 'upper-arm', cells],
      [side, 'forearm-and-hand', cells * 0.6],
      [side, 'thigh', cells],
      [side, 'leg-and-foot', cells],
    ]);
    const lesion = cellsLost({ key, share, bulbar: throat, losses });
    return hypothesis(lower, `of-infants-${key}`, percent.ofInfants * share, lesion.build(), {
      process: processOf({
        motor: ({ group }) =>
          group === 'hip' || group === 'knee-extensors' ? near : girdle.has(group) ? near * arms : 0,
        reflex: ({ segment }) => (segment === null ? 0 : 0.8),
        because: 'anterior horn cells are lost while they grow',
        reasons: reasonsOf.lowerMotorCells,
      }),
      faculties: facultiesOf([
        ['tongue-denervation', 0.5 * Math.min(1, 0.4 + throat)],
        ['swallowing', throat],
        ['palate', throat * 0.4],
        ['voice', throat],
        ['breathing', breathing],
        ['gut', 0.1],
      ]),
      paces: { hyperacute: 0.05, acute: 0.15, subacute: 0.8, chronic: 1.3 },
      ages: { to: 2, outside: 0.0005 },
    });
  });
}

/** Cells lost all over, most of them those of the girdles: the sum is what each muscle loses. */
function girdleHypotheses(): Hypothesis[] {
  return [
    { key: 'slight', cells: 0.15, near: 0.3 },
    { key: 'marked', cells: 0.3, near: 0.55 },
  ].flatMap(({ key, cells, near }) => {
    const everywhere: CellPattern = {
      key,
      share: 1,
      bulbar: 0,
      losses: bodySides.flatMap((side) =>
        (['upper-arm', 'forearm-and-hand', 'thigh', 'leg-and-foot'] as const).map(
          (region) => [side, region, cells] as const,
        ),
      ),
    };
    const motor: Process['motor'] = ({ group }) => (girdle.has(group) ? near : 0);
    // The knee jerk goes first, with the quadriceps.
    const reflex: Process['reflex'] = ({ segment }) =>
      segment !== null && segment >= segmentIndex('L2') && segment <= segmentIndex('L4') ? 0.7 : 0.45;
    const nearest = hypothesis(lower, `girdles-${key}`, percent.lowerProximal / 2, cellsLost(everywhere).build(), {
      process: processOf({
        motor,
        reflex,
        because: 'anterior horn cells of the limb girdles are lost',
        reasons: reasonsOf.lowerMotorCells,
      }),
      faculties: facultiesOf([...bulbarSigns(0.12, 0.1), ['postural-tremor', 0.4]]),
      paces: comesOnSlowly,
    });
    const bulbospinal = hypothesis(
      lower,
      `bulbospinal-${key}`,
      percent.bulbospinal / 2,
      cellsLost(everywhere).build(),
      {
        process: processOf({
          motor,
          reflex: () => 0.8,
          // Sensory cells are lost with the motor ones, with few symptoms.
          largeFibre: ({ lengthCm }) => 0.55 * reached(lengthCm, 75),
          smallFibre: ({ lengthCm }) => 0.3 * reached(lengthCm, 75),
          because: 'motor cells of brainstem and cord are lost, and with them some sensory cells',
        }),
        faculties: facultiesOf([...bulbarSigns(0.75, 0.08), ['lower-face', 0.55], ['postural-tremor', 0.6]]),
        paces: comesOnSlowly,
      },
    );
    return [nearest, bulbospinal];
  });
}

/**
 * Descending control alone, by limb: the fibres bound for one side of the body, lost above the foramen magnum and in the
 * tracts. Source: Amato and Russell, primary lateral sclerosis (recalled); fractions and shares judged.
 */
const upperPatterns: readonly {
  readonly key: string;
  readonly share: number;
  readonly worse?: BodySide;
  readonly leg: number;
  readonly arm: number;
  readonly face: number;
  readonly bulbar: number;
}[] = [
  { key: 'legs-slight', share: 0.12, leg: 0.45, arm: 0.15, face: 0.08, bulbar: 0.06 },
  { key: 'legs-marked', share: 0.15, leg: 0.75, arm: 0.3, face: 0.15, bulbar: 0.12 },
  { key: 'limbs', share: 0.2, leg: 0.65, arm: 0.55, face: 0.3, bulbar: 0.3 },
  { key: 'limbs-and-bulbar', share: 0.25, leg: 0.65, arm: 0.55, face: 0.7, bulbar: 0.85 },
  { key: 'bulbar-first', share: 0.07, leg: 0.15, arm: 0.15, face: 0.75, bulbar: 0.92 },
  ...bodySides.flatMap((worse) => [
    { key: `one-side-${worse}`, share: 0.05, worse, leg: 0.7, arm: 0.65, face: 0.3, bulbar: 0.15 },
    { key: `one-side-and-bulbar-${worse}`, share: 0.03, worse, leg: 0.65, arm: 0.65, face: 0.7, bulbar: 0.85 },
  ]),
];

/** What the better side of the body has of the loss. Judged. */
const upperBetterSide = 0.25;

/** Share of the lost control that shows as weakness; stiffness and brisk jerks show all of it. Judged. */
const upperStrength = 0.5;

function upperHypotheses(): Hypothesis[] {
  return upperPatterns.map(({ key, share, worse, leg: legLoss, arm: armLoss, face, bulbar }) => {
    const lossOf = (side: BodySide, segment: number | null): number => {
      const part = partOf(segment);
      const loss = part === 'head' ? face : part === 'arm' || part === 'neck' ? armLoss : legLoss;
      return loss * (worse === undefined || side === worse ? 1 : upperBetterSide);
    };
    const lesion = new LesionBuilder();
    for (const side of bodySides) {
      const arm = upperStrength * lossOf(side, segmentIndex('C7'));
      const leg = upperStrength * lossOf(side, segmentIndex('L3'));
      // The fibres for the arms are lost above the neck, with as many of those for the legs; the rest of those below it.
      lesion.cord('corticospinal', side, 0, arm);
      lesion.cord('corticospinal', side, segmentIndex('T2'), 1 - (1 - leg) / (1 - arm));
    }
    return hypothesis(upper, key, percent.upperMotorNeuron * share, lesion.build(), {
      process: processOf({
        release: ({ side, segment }) => lossOf(side, segment) * (segment === null ? 1 : 0.8),
        because: 'the motor cells of the cortex and their tracts fail on both sides',
        reasons: reasonsOf.upperMotorCells,
      }),
      faculties: facultiesOf([
        ['pseudobulbar', bulbar],
        ['speech-articulation', bulbar * 0.9],
        ['swallowing', bulbar * 0.6],
        ['lower-face', bulbar * 0.35],
        ['bladder-urgency', 0.25],
      ]),
      ages: { from: 35, outside: 0.3 },
    });
  });
}

/** Every disease of motor cells, of the cord alone, of the cortex alone, or of both together. */
export function motorNeuronHypotheses(): Hypothesis[] {
  const sum = (patterns: readonly CellPattern[]): number => patterns.reduce((total, { share }) => total + share, 0);
  const spreading = sum(spreadingPatterns);
  const segmental = sum(segmentalPatterns);
  return [
    ...spreadingPatterns.flatMap((pattern) => spreadingHypotheses(pattern, pattern.share / spreading)),
    ...segmentalPatterns.map((pattern) => segmentalHypothesis(pattern, pattern.share / segmental)),
    ...girdleHypotheses(),
    ...infantHypotheses(),
    ...upperHypotheses(),
  ];
}
