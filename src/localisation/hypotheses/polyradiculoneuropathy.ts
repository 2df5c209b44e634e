import { read, recalled, type Source } from '../../kernel/cite.ts';
import type { BodySide } from '../../kernel/side.ts';
import { type Hypothesis, hypothesis } from '../hypothesis.ts';
import { intact } from '../lesion.ts';
import { type BodyPart, type FibreSite, type Process, partOf, processOf, reached } from '../process.ts';
import { reasonsOf } from './process-reasons.ts';
import {
  comesOnFast,
  comesOnSlowly,
  facultiesOf,
  type Lopsidedness,
  lopsided,
  type ProcessSign,
  processSite,
  weakMedialRectus,
} from './process-signs.ts';

/** Percent of all focal and diffuse findings, by tempo of the disease. Judged. */
const percent = { acute: 3, chronic: 1.5 } as const;

/** Chronic forms are as common as acute ones once the trouble is weeks old. */
const paces = { acute: comesOnFast, chronic: { ...comesOnSlowly, subacute: 1, chronic: 1.8 } } as const;

type ByPart = Readonly<Record<Exclude<BodyPart, 'head'>, number>>;

/** Losses along roots and nerves, near and far alike, by the part of the body that the roots serve. */
interface Form {
  readonly variant: string;
  readonly tempo: keyof typeof percent;
  /** Share among those of its tempo. Judged; variants after the reviews named. */
  readonly share: number;
  /** Share that is worse on one side; the better side has this much of the loss. */
  readonly lopsidedShare?: number;
  readonly betterSide?: number;
  readonly motor: ByPart;
  /** Weakness on top of `motor` at the far end of the longest axons. */
  readonly farMotor?: number;
  /** Share of the weakness that also breaks the reflex arcs; 1 unless conduction fails at the very ends of the axons. */
  readonly arcs?: number;
  /** Loss of large fibres at the far end, and how much of it there is near the trunk. */
  readonly large: number;
  readonly nearLarge: number;
  readonly small: number;
  readonly spindle: number;
  /** Loss of stretch reflexes in arm and leg. */
  readonly reflex: { readonly arm: number; readonly leg: number };
  readonly signs: readonly ProcessSign[];
  readonly source: Source;
}

const limbs = (leg: number, arm: number, trunk: number, neck: number): ByPart => ({ leg, arm, trunk, neck });

/** Cranial and autonomic signs of the usual acute form, by how much of the body it has taken. */
function acuteSigns(face: number, breathing: number): readonly ProcessSign[] {
  return [
    ['lower-face', face],
    ['upper-face', face],
    ['swallowing', face * 0.6],
    ['palate', face * 0.4],
    ['voice', face * 0.35],
    ['speech-articulation', face * 0.3],
    ['abducens', 0.08],
    ['breathing', breathing],
    ['blood-pressure', 0.25],
    ['heart-rate', 0.3],
    ['bladder-retention', 0.08],
  ];
}

/** The discs swell in a few in whom the protein of the spinal fluid is high, and in more where a plasma cell is behind it. Judged. */
const swollenDiscs = ['optic-disc', 0.05] as const;

const guideline = recalled('ean-pns-gbs-2023', 'clinical variants');
const chronicGuideline = recalled('ean-pns-cidp-2021', 'typical and variant forms');

/** What the throat, neck and arm form takes besides strength and reflexes, however far it has gone. */
const throatNeckAndArms = {
  tempo: 'acute',
  large: 0.1,
  nearLarge: 0.3,
  small: 0.05,
  spindle: 0.1,
  signs: [
    ['swallowing', 0.85],
    ['palate', 0.7],
    ['voice', 0.5],
    ['speech-articulation', 0.5],
    ['lower-face', 0.5],
    ['upper-face', 0.45],
    ['eyelid-elevation', 0.35],
    ['abducens', 0.25],
    ['breathing', 0.35],
  ],
  source: guideline,
} as const;

const forms: readonly Form[] = [
  {
    variant: 'legs-mild',
    tempo: 'acute',
    share: 0.16,
    motor: limbs(0.45, 0.1, 0.05, 0.05),
    large: 0.35,
    nearLarge: 0.3,
    small: 0.2,
    spindle: 0.3,
    reflex: { arm: 0.5, leg: 0.85 },
    signs: acuteSigns(0.15, 0.1),
    source: guideline,
  },
  {
    variant: 'legs-beginning',
    tempo: 'acute',
    share: 0.06,
    motor: limbs(0.22, 0.04, 0.02, 0.02),
    large: 0.15,
    nearLarge: 0.3,
    small: 0.08,
    spindle: 0.15,
    reflex: { arm: 0.2, leg: 0.85 },
    signs: acuteSigns(0.05, 0.03),
    source: guideline,
  },
  {
    variant: 'legs-first',
    tempo: 'acute',
    share: 0.2,
    motor: limbs(0.7, 0.4, 0.15, 0.15),
    large: 0.45,
    nearLarge: 0.3,
    small: 0.25,
    spindle: 0.4,
    reflex: { arm: 0.85, leg: 0.95 },
    signs: acuteSigns(0.35, 0.2),
    source: guideline,
  },
  {
    variant: 'all-limbs',
    tempo: 'acute',
    share: 0.12,
    motor: limbs(0.8, 0.75, 0.35, 0.35),
    large: 0.5,
    nearLarge: 0.35,
    small: 0.3,
    spindle: 0.5,
    reflex: { arm: 0.95, leg: 0.97 },
    signs: acuteSigns(0.5, 0.35),
    source: guideline,
  },
  {
    variant: 'severe',
    tempo: 'acute',
    share: 0.08,
    motor: limbs(0.95, 0.92, 0.6, 0.6),
    large: 0.6,
    nearLarge: 0.35,
    small: 0.35,
    spindle: 0.5,
    reflex: { arm: 0.97, leg: 0.98 },
    signs: acuteSigns(0.6, 0.55),
    source: guideline,
  },
  {
    variant: 'pure-motor',
    tempo: 'acute',
    share: 0.07,
    motor: limbs(0.75, 0.6, 0.25, 0.3),
    farMotor: 0.3,
    large: 0.03,
    nearLarge: 0.3,
    small: 0.02,
    spindle: 0,
    reflex: { arm: 0.8, leg: 0.9 },
    signs: acuteSigns(0.2, 0.25),
    source: guideline,
  },
  {
    variant: 'pure-motor-severe',
    tempo: 'acute',
    share: 0.04,
    motor: limbs(0.92, 0.9, 0.4, 0.4),
    farMotor: 0.1,
    large: 0.03,
    nearLarge: 0.3,
    small: 0.02,
    spindle: 0,
    reflex: { arm: 0.9, leg: 0.95 },
    signs: acuteSigns(0.35, 0.4),
    source: guideline,
  },
  {
    // In the first days jerks are often faint still, not gone; in the axonal form they may stay so.
    variant: 'all-limbs-with-faint-jerks',
    tempo: 'acute',
    share: 0.05,
    motor: limbs(0.6, 0.55, 0.2, 0.2),
    arcs: 0.3,
    large: 0.2,
    nearLarge: 0.3,
    small: 0.12,
    spindle: 0.1,
    reflex: { arm: 0.4, leg: 0.5 },
    signs: acuteSigns(0.3, 0.2),
    source: recalled('ean-pns-gbs-2023', 'reflexes reduced at first'),
  },
  {
    // Jerks may be kept when conduction is blocked far out or fails without slowing: about one in ten.
    variant: 'pure-motor-with-jerks',
    tempo: 'acute',
    share: 0.02,
    motor: limbs(0.6, 0.5, 0.2, 0.2),
    farMotor: 0.35,
    arcs: 0.15,
    large: 0.03,
    nearLarge: 0.3,
    small: 0.02,
    spindle: 0,
    reflex: { arm: 0.05, leg: 0.1 },
    signs: acuteSigns(0.2, 0.2),
    source: recalled('ean-pns-gbs-2023', 'normal or brisk reflexes'),
  },
  {
    variant: 'legs-only',
    tempo: 'acute',
    share: 0.06,
    motor: limbs(0.65, 0.02, 0.05, 0.02),
    large: 0.3,
    nearLarge: 0.3,
    small: 0.2,
    spindle: 0.3,
    reflex: { arm: 0.15, leg: 0.95 },
    signs: acuteSigns(0.05, 0.08),
    source: guideline,
  },
  {
    // Both arms and shoulders before the legs, throat and face spared; porphyria begins so as often as in the legs.
    variant: 'arms-first',
    tempo: 'acute',
    share: 0.03,
    motor: limbs(0.3, 0.75, 0.15, 0.2),
    large: 0.08,
    nearLarge: 0.3,
    small: 0.05,
    spindle: 0.05,
    reflex: { arm: 0.9, leg: 0.4 },
    signs: acuteSigns(0.15, 0.2),
    source: recalled('amato-russell', 'regional variants; porphyric neuropathy'),
  },
  {
    ...throatNeckAndArms,
    variant: 'throat-neck-and-arms',
    share: 0.03,
    motor: limbs(0.06, 0.65, 0.15, 0.65),
    reflex: { arm: 0.92, leg: 0.25 },
  },
  {
    ...throatNeckAndArms,
    variant: 'throat-neck-and-arms-slight',
    share: 0.02,
    motor: limbs(0.03, 0.35, 0.08, 0.35),
    reflex: { arm: 0.6, leg: 0.1 },
  },
  {
    // Often the legs follow, weak but less so than the arms; the tongue fails with the throat.
    ...throatNeckAndArms,
    variant: 'throat-neck-and-arms-then-legs',
    share: 0.03,
    motor: limbs(0.3, 0.6, 0.25, 0.6),
    arcs: 0.4,
    signs: [...throatNeckAndArms.signs, ['tongue', 0.35]],
    reflex: { arm: 0.75, leg: 0.1 },
    source: read('throat-neck-and-arms-2007', 'limbs failed as in the usual form in 48 of 100'),
  },
  {
    // Of 43 with both halves of the face weak 5 had the syndrome: Keane, Neurology 1994;44:1198 (recalled). Few had the face alone.
    variant: 'both-halves-of-the-face',
    tempo: 'acute',
    share: 0.012,
    motor: limbs(0.05, 0.04, 0.02, 0.03),
    large: 0.35,
    nearLarge: 0.15,
    small: 0.25,
    spindle: 0.2,
    reflex: { arm: 0.6, leg: 0.75 },
    signs: [
      ['lower-face', 0.95],
      ['upper-face', 0.95],
      ['swallowing', 0.12],
      ['speech-articulation', 0.4],
    ],
    source: guideline,
  },
  {
    // Throat, face and eyes on both sides while the limbs are spared: Wakerley and Yuki 2015, polyneuritis cranialis (recalled).
    ...throatNeckAndArms,
    variant: 'cranial-nerves-alone',
    share: 0.006,
    motor: limbs(0.02, 0.04, 0.02, 0.08),
    signs: [
      ...throatNeckAndArms.signs,
      ['lower-face', 0.75],
      ['upper-face', 0.7],
      ['oculomotor', 0.3],
      ['tongue', 0.25],
    ],
    reflex: { arm: 0.2, leg: 0.25 },
  },
  {
    // Spindle afferents and eye-muscle nerves; strength and feeling are kept.
    variant: 'eyes-and-ataxia',
    tempo: 'acute',
    share: 0.08,
    motor: limbs(0.03, 0.03, 0.02, 0.03),
    large: 0.15,
    nearLarge: 0.2,
    small: 0.08,
    spindle: 0.95,
    reflex: { arm: 0.9, leg: 0.95 },
    signs: [
      ['oculomotor', 0.75],
      ['abducens', 0.85],
      ['trochlear', 0.2],
      ['internuclear', weakMedialRectus],
      ['eyelid-elevation', 0.5],
      ['pupil-parasympathetic', 0.3],
      ['lower-face', 0.3],
      ['upper-face', 0.3],
      ['swallowing', 0.2],
      ['speech-articulation', 0.08],
    ],
    source: guideline,
  },
  {
    variant: 'ataxia-alone',
    tempo: 'acute',
    share: 0.02,
    motor: limbs(0.03, 0.03, 0.02, 0.02),
    large: 0.25,
    nearLarge: 0.25,
    small: 0.1,
    spindle: 0.95,
    reflex: { arm: 0.9, leg: 0.95 },
    signs: [['lower-face', 0.08]],
    source: guideline,
  },
  {
    variant: 'eyes-and-limbs',
    tempo: 'acute',
    share: 0.05,
    motor: limbs(0.5, 0.5, 0.2, 0.4),
    large: 0.35,
    nearLarge: 0.3,
    small: 0.2,
    spindle: 0.8,
    reflex: { arm: 0.92, leg: 0.95 },
    signs: [
      ['oculomotor', 0.7],
      ['abducens', 0.8],
      ['trochlear', 0.2],
      ['eyelid-elevation', 0.5],
      ['pupil-parasympathetic', 0.25],
      ['lower-face', 0.55],
      ['upper-face', 0.55],
      ['swallowing', 0.5],
      ['speech-articulation', 0.4],
      ['palate', 0.3],
      ['voice', 0.2],
      ['breathing', 0.3],
    ],
    source: guideline,
  },
  {
    variant: 'sensory',
    tempo: 'acute',
    share: 0.05,
    motor: limbs(0.06, 0.05, 0.03, 0.02),
    large: 0.85,
    nearLarge: 0.55,
    small: 0.4,
    spindle: 0.7,
    reflex: { arm: 0.9, leg: 0.95 },
    signs: [
      ['blood-pressure', 0.2],
      ['heart-rate', 0.2],
    ],
    source: guideline,
  },
  {
    variant: 'near-and-far',
    tempo: 'chronic',
    share: 0.28,
    lopsidedShare: 0.1,
    betterSide: 0.6,
    motor: limbs(0.5, 0.42, 0.1, 0.15),
    farMotor: 0.3,
    large: 0.7,
    nearLarge: 0.3,
    small: 0.25,
    spindle: 0.4,
    reflex: { arm: 0.9, leg: 0.95 },
    signs: [
      ['lower-face', 0.06],
      ['upper-face', 0.05],
      ['postural-tremor', 0.2],
    ],
    source: chronicGuideline,
  },
  {
    variant: 'near-and-far-slight',
    tempo: 'chronic',
    share: 0.18,
    motor: limbs(0.28, 0.22, 0.05, 0.08),
    farMotor: 0.25,
    large: 0.5,
    nearLarge: 0.25,
    small: 0.2,
    spindle: 0.3,
    reflex: { arm: 0.8, leg: 0.92 },
    signs: [['postural-tremor', 0.15]],
    source: chronicGuideline,
  },
  {
    variant: 'far',
    tempo: 'chronic',
    share: 0.12,
    motor: limbs(0.08, 0.05, 0.02, 0.02),
    farMotor: 0.45,
    large: 0.85,
    nearLarge: 0.1,
    small: 0.35,
    spindle: 0.6,
    reflex: { arm: 0.55, leg: 0.9 },
    signs: [['postural-tremor', 0.4]],
    source: chronicGuideline,
  },
  {
    variant: 'motor',
    tempo: 'chronic',
    share: 0.1,
    motor: limbs(0.55, 0.5, 0.1, 0.15),
    farMotor: 0.25,
    large: 0.03,
    nearLarge: 0.3,
    small: 0.02,
    spindle: 0,
    reflex: { arm: 0.88, leg: 0.92 },
    signs: [['postural-tremor', 0.2]],
    source: chronicGuideline,
  },
  {
    variant: 'sensory-chronic',
    tempo: 'chronic',
    share: 0.14,
    motor: limbs(0.04, 0.03, 0.01, 0.01),
    large: 0.85,
    nearLarge: 0.4,
    small: 0.25,
    spindle: 0.75,
    reflex: { arm: 0.9, leg: 0.95 },
    signs: [['postural-tremor', 0.3]],
    source: chronicGuideline,
  },
  {
    variant: 'arm-first',
    tempo: 'chronic',
    share: 0.1,
    lopsidedShare: 1,
    betterSide: 0.25,
    motor: limbs(0.2, 0.6, 0.03, 0.05),
    farMotor: 0.25,
    large: 0.6,
    nearLarge: 0.3,
    small: 0.3,
    spindle: 0.2,
    reflex: { arm: 0.75, leg: 0.35 },
    signs: [['oculomotor', 0.05]],
    source: chronicGuideline,
  },
  {
    variant: 'hands-sensory',
    tempo: 'chronic',
    share: 0.06,
    lopsidedShare: 0.7,
    betterSide: 0.5,
    motor: limbs(0.01, 0.1, 0.01, 0.01),
    large: 0.7,
    nearLarge: 0.15,
    small: 0.4,
    spindle: 0.2,
    reflex: { arm: 0.6, leg: 0.2 },
    signs: [],
    source: chronicGuideline,
  },
  {
    variant: 'leg-first',
    tempo: 'chronic',
    share: 0.08,
    lopsidedShare: 1,
    betterSide: 0.3,
    motor: limbs(0.6, 0.2, 0.03, 0.05),
    farMotor: 0.25,
    large: 0.6,
    nearLarge: 0.3,
    small: 0.3,
    spindle: 0.2,
    reflex: { arm: 0.35, leg: 0.8 },
    signs: [],
    source: chronicGuideline,
  },
];

/** Length from which an axon is half of the way to its far end, in cm: fingers and the middle of the leg. */
const farFromCm = 72;

function rootProcess(form: Form, worse: BodySide | null): Process {
  const onSide = (side: BodySide): number => (worse === null || side === worse ? 1 : (form.betterSide ?? 1));
  const far = (lengthCm: number): number => reached(lengthCm, farFromCm);
  const graded = (loss: number, { side, lengthCm }: FibreSite): number =>
    onSide(side) * loss * (form.nearLarge + (1 - form.nearLarge) * far(lengthCm));
  /** Sensory loss follows the weakness of the part, where there is any; the face is spared. */
  const share = (segment: number | null): number => {
    const part = partOf(segment);
    if (part === 'head') return 0;
    const most = Math.max(form.motor.leg, form.motor.arm);
    return most < 0.1 ? 1 : 0.5 + 0.5 * (form.motor[part] / most);
  };
  return processOf({
    motor: ({ side, segment, lengthCm, group }) => {
      const part = partOf(segment);
      if (part === 'head') return 0;
      const near = form.motor[part];
      const lost = onSide(side) * (1 - (1 - near) * (1 - (form.farMotor ?? 0) * far(lengthCm)));
      return group === undefined ? lost * (form.arcs ?? 1) : lost;
    },
    largeFibre: (fibre) => share(fibre.segment) * graded(form.large, fibre),
    smallFibre: (fibre) => share(fibre.segment) * graded(form.small, fibre),
    spindle: ({ side, segment }) => (partOf(segment) === 'head' ? 0 : onSide(side) * form.spindle * 0.9),
    reflex: ({ side, segment }) => {
      const part = partOf(segment);
      if (part === 'head') return 0;
      return onSide(side) * (part === 'leg' ? form.reflex.leg : form.reflex.arm);
    },
    wasting: form.tempo === 'chronic' ? 'muscle' : 'block',
    because: 'roots and nerves are affected along their whole length, near and far alike',
    reasons: reasonsOf.rootsAndNerves,
  });
}

function formHypothesis(form: Form, side: Lopsidedness): Hypothesis {
  return hypothesis(
    processSite(
      'demyelinating-polyradiculoneuropathy',
      'Inflammatory polyradiculoneuropathy',
      'polyradiculoneuropathy',
    ),
    `${form.variant}${side.key}`,
    percent[form.tempo] * form.share * side.share,
    intact,
    {
      process: rootProcess(form, side.worse),
      faculties: facultiesOf([...form.signs, swollenDiscs]),
      paces: paces[form.tempo],
    },
  );
}

/** Every inflammatory disease of roots and nerves, acute and chronic. */
export function polyradiculoneuropathyHypotheses(): Hypothesis[] {
  return forms.flatMap((form) => lopsided(form.lopsidedShare ?? 0).map((side) => formHypothesis(form, side)));
}
