import { read, recalled, type Source } from '../../kernel/cite.ts';
import type { BodySide } from '../../kernel/side.ts';
import { type AgeRange, type Hypothesis, hypothesis, type PaceFactors } from '../hypothesis.ts';
import { intact } from '../lesion.ts';
import { type FibreSite, type Process, partOf, processOf, reached } from '../process.ts';
import { reasonsOf } from './process-reasons.ts';
import {
  comesOnSlowly,
  facultiesOf,
  type Lopsidedness,
  lopsided,
  type ProcessSign,
  processSite,
} from './process-signs.ts';

/** Percent of all focal and diffuse findings that are polyneuropathies of the longest axons. Judged; they are the commonest process. */
const percentOfAll = 14;

/**
 * A form of length-dependent axonal loss: which fibre classes it takes, and how much further it must have come up the leg
 * before the motor axons of the same length suffer. The order follows from the axon lengths in the tables of skin and movements.
 */
interface Form {
  readonly key: string;
  readonly label: string;
  readonly variant: string;
  /** Share among polyneuropathies. */
  readonly share: number;
  /** Share that is worse on one side. */
  readonly lopsidedShare: number;
  readonly motorLag: number;
  readonly motor: number;
  readonly large: number;
  readonly small: number;
  /** Stretch reflexes lost wherever they are, by slowing of all fibres. */
  readonly reflexEverywhere?: number;
  /** Spindle afferents, by reach like the other fibres. */
  readonly spindle?: number;
  readonly signs: readonly ProcessSign[];
  readonly ages?: AgeRange;
  readonly paces?: PaceFactors;
  readonly source: Source;
}

const mixed = {
  key: 'length-dependent-polyneuropathy',
  label: 'Length-dependent sensorimotor polyneuropathy',
} as const;
const sensory = { key: 'sensory-polyneuropathy', label: 'Length-dependent sensory polyneuropathy' } as const;

const slightAutonomic: readonly ProcessSign[] = [
  ['blood-pressure', 0.1],
  ['sweating', 0.1],
  ['sexual', 0.15],
];

/** Shares judged, after the hospital cohort of Visser 2015 for the order of forms. */
const forms: readonly Form[] = [
  {
    ...mixed,
    variant: 'sensory-first',
    share: 0.422,
    lopsidedShare: 0.1,
    motorLag: 10,
    motor: 0.95,
    large: 0.95,
    small: 0.9,
    signs: slightAutonomic,
    source: read('visser-2015', 'most new polyneuropathies are chronic, axonal and sensorimotor'),
  },
  {
    ...mixed,
    variant: 'motor-first',
    share: 0.1,
    lopsidedShare: 0.1,
    motorLag: -4,
    motor: 0.95,
    large: 0.7,
    small: 0.5,
    signs: slightAutonomic,
    source: recalled('szigeti-2009', 'axonal forms'),
  },
  {
    // All fibres conduct slowly, so the jerks go everywhere while strength and feeling fail at the far end only.
    ...mixed,
    variant: 'demyelinating',
    share: 0.07,
    lopsidedShare: 0,
    motorLag: -6,
    motor: 0.95,
    large: 0.65,
    small: 0.3,
    reflexEverywhere: 0.85,
    signs: [['postural-tremor', 0.25]],
    paces: comesOnSlowly,
    source: recalled('szigeti-2009', 'demyelinating forms: general loss of jerks, distal wasting'),
  },
  {
    // Of amyloid, long diabetes and porphyria: strength, feeling and the inner organs fail together.
    ...mixed,
    variant: 'with-autonomic-failure',
    share: 0.035,
    lopsidedShare: 0,
    motorLag: 8,
    motor: 0.95,
    large: 0.85,
    small: 0.95,
    signs: [
      ['blood-pressure', 0.75],
      ['heart-rate', 0.3],
      ['sweating', 0.4],
      ['gut', 0.55],
      ['sexual', 0.6],
      ['bladder-retention', 0.35],
      ['bowel', 0.35],
      ['pupil-parasympathetic', 0.1],
    ],
    source: recalled('amato-russell', 'amyloid neuropathy'),
  },
  {
    // Of intensive care, thallium and the like: motor axons near and far within weeks.
    ...mixed,
    variant: 'widespread',
    share: 0.02,
    lopsidedShare: 0,
    motorLag: -30,
    motor: 0.9,
    large: 0.7,
    small: 0.5,
    signs: slightAutonomic,
    paces: { hyperacute: 0.5, acute: 1.2, subacute: 2, chronic: 0.3 },
    source: recalled('adams-victor', 'critical illness polyneuropathy'),
  },
  {
    ...sensory,
    variant: 'all-fibres',
    share: 0.13,
    lopsidedShare: 0.1,
    motorLag: 60,
    motor: 0.3,
    large: 0.95,
    small: 0.85,
    signs: slightAutonomic,
    source: read('visser-2015'),
  },
  {
    ...sensory,
    variant: 'large-fibres',
    share: 0.06,
    lopsidedShare: 0,
    motorLag: 40,
    motor: 0.3,
    large: 0.97,
    small: 0.3,
    spindle: 0.7,
    signs: [['postural-tremor', 0.4]],
    ages: { from: 50, outside: 0.4 },
    paces: comesOnSlowly,
    source: recalled('amato-russell', 'distal demyelinating neuropathy with IgM'),
  },
  {
    key: 'motor-polyneuropathy',
    label: 'Length-dependent motor neuropathy',
    variant: 'legs-first',
    share: 0.04,
    lopsidedShare: 0.1,
    motorLag: 0,
    motor: 0.95,
    large: 0.1,
    small: 0.05,
    signs: [['voice', 0.08]],
    paces: comesOnSlowly,
    source: recalled('amato-russell', 'distal hereditary motor neuropathy'),
  },
  {
    key: 'small-fibre-polyneuropathy',
    label: 'Small-fibre polyneuropathy',
    variant: 'long-axons',
    share: 0.11,
    lopsidedShare: 0.05,
    motorLag: 999,
    motor: 0,
    large: 0.04,
    small: 0.92,
    signs: [
      ['blood-pressure', 0.15],
      ['sweating', 0.3],
      ['gut', 0.12],
      ['sexual', 0.2],
    ],
    source: recalled('aan-dsp-autonomic-2009'),
  },
];

/**
 * Reach of the loss as the length of the shortest axon that is half lost, in cm: toes, foot, ankle to mid-calf, knee and
 * hands, thigh and forearm, and at last the axons to the front of the trunk, which are longer than those to its back. The
 * further the loss has come, the deeper it is at the far end. Shares judged.
 */
const reaches = [
  { key: 'toes', cm: 103, share: 0.22, slight: 0.55 },
  { key: 'foot', cm: 92, share: 0.29, slight: 0.45 },
  { key: 'mid-calf', cm: 80, share: 0.25, slight: 0.35 },
  { key: 'knee-and-hands', cm: 68, share: 0.14, slight: 0.25 },
  { key: 'thigh-and-forearm', cm: 50, share: 0.075, slight: 0.1 },
  { key: 'trunk', cm: 37, share: 0.025, slight: 0 },
] as const;

const depthFactor = { deep: 1, slight: 0.55 } as const;
/** How much further the loss has come on the worse side than on the better, in cm. */
const lopsidedBy = 18;

/**
 * Arm axons hold out as though they were so much shorter, in cm: the hands join in when the loss in the legs has come up
 * to the knee, not when it has come up to where the axons are as long as those to the fingers. Judged.
 */
const armsHoldOutBy = 15;

function lossProcess(form: Form, reachCm: number, factor: number, worse: BodySide | null): Process {
  /** Share of a fibre's axons that have failed when the motor or sensory loss lags so many cm behind the reach. */
  const failed = ({ side, segment, lengthCm }: FibreSite, lagCm: number): number => {
    const onSide = worse === null ? 0 : side === worse ? -lopsidedBy / 2 : lopsidedBy / 2;
    return reached(lengthCm - (partOf(segment) === 'arm' ? armsHoldOutBy : 0), reachCm + onSide + lagCm);
  };
  return processOf({
    motor: (unit) => factor * form.motor * failed(unit, form.motorLag),
    largeFibre: (fibre) => factor * form.large * failed(fibre, 0),
    smallFibre: (fibre) => factor * form.small * failed(fibre, -4),
    spindle: (fibre) => factor * (form.spindle ?? 0) * failed(fibre, -10),
    reflex: (fibre) => Math.max(form.reflexEverywhere ?? 0, factor * 0.55 * form.large * failed(fibre, -14)),
    because: 'the longest axons fail first',
    reasons: form.reflexEverywhere === undefined ? reasonsOf.longAxons : reasonsOf.slowAxons,
  });
}

/** Every neuropathy in which the length of the axon decides what fails. */
export function lengthDependentHypotheses(): Hypothesis[] {
  return forms.flatMap((form) =>
    reaches.flatMap((reach) =>
      (reach.slight === 0 ? (['deep'] as const) : (['deep', 'slight'] as const)).flatMap((depth) =>
        lopsided(depth === 'deep' ? form.lopsidedShare : 0).map((side) => formHypothesis(form, reach, depth, side)),
      ),
    ),
  );
}

function formHypothesis(
  form: Form,
  reach: (typeof reaches)[number],
  depth: 'deep' | 'slight',
  side: Lopsidedness,
): Hypothesis {
  return hypothesis(
    processSite(form.key, form.label, 'polyneuropathy'),
    `${form.variant}-${reach.key}-${depth}${side.key}`,
    percentOfAll * form.share * reach.share * (depth === 'slight' ? reach.slight : 1 - reach.slight) * side.share,
    intact,
    {
      process: lossProcess(form, reach.cm, depthFactor[depth], side.worse),
      faculties: facultiesOf(form.signs),
      ...(form.ages && { ages: form.ages }),
      ...(form.paces && { paces: form.paces }),
    },
  );
}

/**
 * Motor neuropathies of the arms: hands before feet although their axons are shorter, or extensors of wrist and fingers
 * picked out, as by lead. Source: Amato and Russell, distal hereditary motor and toxic neuropathies (recalled).
 */
export function armFirstMotorHypotheses(): Hypothesis[] {
  const inArm = (segment: number | null): boolean => partOf(segment) === 'arm';
  const motorBy: readonly (readonly [string, Process['motor']])[] = [
    [
      'hands-first',
      ({ segment, lengthCm }) => 0.85 * reached(lengthCm + (inArm(segment) ? armsCountAsLongerBy : 0), 96),
    ],
    [
      'extensors-first',
      ({ lengthCm, group }) =>
        group === 'forearm-extensors' ? 0.65 : group === 'leg-anterior' ? 0.3 : 0.35 * reached(lengthCm, 72),
    ],
  ];
  return motorBy.map(([variant, motor]) =>
    hypothesis(
      processSite('motor-polyneuropathy', 'Length-dependent motor neuropathy', 'polyneuropathy'),
      variant,
      percentOfAll * 0.01,
      intact,
      {
        process: processOf({
          motor,
          reflex: ({ lengthCm }) => 0.35 * reached(lengthCm, 35),
          because: 'motor axons to forearm and hand fail first',
        }),
        faculties: facultiesOf([]),
      },
    ),
  );
}

/** What is added to the length of arm axons when the disease is worse in the arms, in cm. Judged. */
const armsCountAsLongerBy = 30;

/** How far fingers and feet fail together, as the length from which an axon is lost, in cm. Judged. */
const handsAndFeetFrom = [
  { variant: 'fingers-and-toes', cm: 96 },
  { variant: 'hands-and-feet', cm: 86 },
] as const;

/** What is added to the length of sensory axons of the arm where fingers fail with the toes, in cm. Judged. */
const fingersCountAsLongerBy = 18;

/**
 * Medicines against tumours, other poisons and want of vitamins numb fingers and toes together, long before the loss has come
 * up to the knee. Source: Amato and Russell, toxic neuropathies (recalled).
 */
export function handsAndFeetHypotheses(): Hypothesis[] {
  return handsAndFeetFrom.map(({ variant, cm }) => {
    const lost = ({ segment, lengthCm }: FibreSite): number =>
      reached(lengthCm + (partOf(segment) === 'arm' ? fingersCountAsLongerBy : 0), cm);
    return hypothesis(
      processSite(sensory.key, sensory.label, 'polyneuropathy'),
      variant,
      percentOfAll * 0.012,
      intact,
      {
        process: processOf({
          largeFibre: (fibre) => 0.85 * lost(fibre),
          smallFibre: (fibre) => 0.85 * lost(fibre),
          reflex: ({ lengthCm }) => 0.5 * reached(lengthCm, cm - 14),
          because: 'poisons and want of vitamins take fingers and toes together',
        }),
        faculties: facultiesOf(slightAutonomic),
      },
    );
  });
}

/** Small fibres lost in patches whatever their length: face, trunk and arms may burn first. */
export function patchySmallFibreHypothesis(): Hypothesis {
  return hypothesis(
    processSite('small-fibre-polyneuropathy', 'Small-fibre polyneuropathy', 'polyneuropathy'),
    'patchy',
    percentOfAll * 0.015,
    intact,
    {
      process: processOf({
        smallFibre: () => 0.55,
        because: 'small fibres and their cells are lost whatever their length',
      }),
      faculties: facultiesOf([
        ['blood-pressure', 0.2],
        ['sweating', 0.4],
        ['gut', 0.25],
        ['trigeminal-sensation', 0.3],
      ]),
    },
  );
}

interface AutonomicForm {
  readonly variant: string;
  readonly share: number;
  readonly small: number;
  readonly signs: readonly ProcessSign[];
}

/** Percent of all findings. Judged. */
const autonomicPercent = 0.5;

/** Which autonomic outflow fails; a length-dependent loss of pain fibres may go with it. Chances judged. */
const autonomicForms: readonly AutonomicForm[] = [
  {
    variant: 'both-outflows',
    share: 0.4,
    small: 0,
    signs: [
      ['blood-pressure', 0.9],
      ['heart-rate', 0.6],
      ['sweating', 0.65],
      ['gut', 0.7],
      ['sexual', 0.6],
      ['bladder-retention', 0.45],
      ['bladder-urgency', 0.1],
      ['bowel', 0.5],
      ['pupil-parasympathetic', 0.4],
    ],
  },
  {
    variant: 'with-pain-fibres',
    share: 0.4,
    small: 0.85,
    signs: [
      ['blood-pressure', 0.85],
      ['heart-rate', 0.45],
      ['sweating', 0.5],
      ['gut', 0.6],
      ['sexual', 0.65],
      ['bladder-retention', 0.25],
      ['bladder-urgency', 0.1],
      ['bowel', 0.4],
      ['pupil-parasympathetic', 0.12],
    ],
  },
  {
    variant: 'cholinergic',
    share: 0.2,
    small: 0,
    signs: [
      ['gut', 0.9],
      ['sweating', 0.8],
      ['heart-rate', 0.5],
      ['bladder-retention', 0.6],
      ['bladder-urgency', 0.1],
      ['bowel', 0.6],
      ['sexual', 0.4],
      ['pupil-parasympathetic', 0.6],
      ['blood-pressure', 0.15],
    ],
  },
];

/** Neuropathies in which autonomic failure leads and limbs are hardly touched. */
export function autonomicHypotheses(): Hypothesis[] {
  return autonomicForms.map(({ variant, share, small, signs }) =>
    hypothesis(
      processSite('autonomic-neuropathy', 'Autonomic neuropathy', 'polyneuropathy'),
      variant,
      autonomicPercent * share,
      intact,
      {
        process: processOf({
          smallFibre: ({ lengthCm }) => small * reached(lengthCm, 92),
          because: 'autonomic fibres, which are the thinnest, fail',
        }),
        faculties: facultiesOf(signs),
        paces: autonomicPaces,
      },
    ),
  );
}

/** Unlike other neuropathies it often begins within days or weeks, when antibodies turn on the ganglia. Judged. */
const autonomicPaces = { hyperacute: 1, acute: 4, subacute: 1.5, chronic: 0.8 } as const;
