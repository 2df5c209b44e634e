import type { BodySide } from '../../kernel/side.ts';
import { type Hypothesis, hypothesis } from '../hypothesis.ts';
import { intact } from '../lesion.ts';
import { type FibreSite, type Process, partOf, processOf, reached } from '../process.ts';
import { type RootForm, rootForms } from './polyradiculoneuropathy-forms.ts';
import { reasonsOf } from './process-reasons.ts';
import { comesOnFast, comesOnSlowly, facultiesOf, type Lopsidedness, lopsided, processSite } from './process-signs.ts';

/** Percent of all focal and diffuse findings, by tempo of the disease. Judged. */
const percent = { acute: 3, chronic: 1.5 } as const satisfies Record<RootForm['tempo'], number>;

/** Chronic forms are as common as acute ones once the trouble is weeks old. */
const paces = {
  // What is complete within hours is hardly ever it: most take days to weeks (Asbury 1990, recalled).
  acute: { ...comesOnFast, hyperacute: 0.3 },
  chronic: { ...comesOnSlowly, subacute: 1, chronic: 1.8 },
} as const;

/** It is seldom met before the second year, acute or chronic. McGrogan 2009 (from memory); odds judged. */
const seldomInInfants = { from: 1.5, outside: 0.3 } as const;

/** The chronic form is several times rarer in childhood, where other slow weakness without jerks is of motor cells. McLeod 1999 (from memory); odds judged. */
const chronicInChildren = { from: 16, outside: 0.4 } as const;

/** The discs swell in a few in whom the protein of the spinal fluid is high, and in more where a plasma cell is behind it. Judged. */
const swollenDiscs = ['optic-disc', 0.05] as const;

/** Length from which an axon is half of the way to its far end, in cm: fingers and the middle of the leg. */
const farFromCm = 72;

function rootProcess(form: RootForm, worse: BodySide | null): Process {
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
      const near = form.motor[part] * (1 - (form.farSpared ?? 0) * far(lengthCm));
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
    release: ({ segment }) => (partOf(segment) === 'head' ? 0 : (form.release ?? 0)),
    sparesTracts: true,
    wasting: form.tempo === 'chronic' ? 'muscle' : 'block',
    because: 'roots and nerves are affected along their whole length, near and far alike',
    reasons: reasonsOf.rootsAndNerves,
  });
}

function formHypothesis(form: RootForm, side: Lopsidedness): Hypothesis {
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
      ages: form.tempo === 'chronic' ? [seldomInInfants, chronicInChildren] : seldomInInfants,
    },
  );
}

/** Every inflammatory disease of roots and nerves, acute and chronic. */
export function polyradiculoneuropathyHypotheses(): Hypothesis[] {
  return rootForms.flatMap((form) => lopsided(form.lopsidedShare ?? 0).map((side) => formHypothesis(form, side)));
}
