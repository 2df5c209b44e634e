import { segmentIndex } from '../../anatomy/segments.ts';
import { type Hypothesis, hypothesis } from '../hypothesis.ts';
import { intact } from '../lesion.ts';
import { type Process, reached } from '../process.ts';
import { facultiesOf, processSite } from './process-signs.ts';

/** Percent of all focal and diffuse findings that each process stands for. Judged; polyneuropathy is the commonest. */
const percent = { lengthDependent: 14, polyradiculoneuropathy: 4, ganglionopathy: 0.5 } as const;

const none = (): number => 0;

/**
 * Length-dependent axonal loss: which fibre classes it takes, and how much further it must have come up the leg before
 * the motor axons of the same length suffer. Hands join in when the loss has come up to about the knee, because the axons
 * are then of one length. Source of the order: cutaneous and motor axon lengths in the tables of skin and movements.
 */
const lengthDependent = [
  {
    key: 'length-dependent-polyneuropathy',
    label: 'Length-dependent sensorimotor polyneuropathy',
    share: 0.55,
    motorLag: 10,
    motor: 0.95,
    large: 0.95,
    small: 0.9,
  },
  {
    key: 'length-dependent-polyneuropathy',
    label: 'Length-dependent sensorimotor polyneuropathy',
    share: 0.1,
    motorLag: -4,
    motor: 0.95,
    large: 0.7,
    small: 0.5,
  },
  {
    key: 'sensory-polyneuropathy',
    label: 'Length-dependent sensory polyneuropathy',
    share: 0.18,
    motorLag: 60,
    motor: 0.3,
    large: 0.95,
    small: 0.85,
  },
  {
    key: 'motor-polyneuropathy',
    label: 'Length-dependent motor neuropathy',
    share: 0.04,
    motorLag: 0,
    motor: 0.95,
    large: 0.1,
    small: 0.05,
  },
  {
    key: 'small-fibre-polyneuropathy',
    label: 'Small-fibre polyneuropathy',
    share: 0.13,
    motorLag: 999,
    motor: 0,
    large: 0.04,
    small: 0.92,
  },
] as const;

/** Reach of the loss as the length of the shortest axon that is half lost, in cm: toes, foot, ankle to mid-calf, knee and hands, thigh and forearm. */
const reaches = [
  { key: 'toes', cm: 103, share: 0.22 },
  { key: 'foot', cm: 92, share: 0.3 },
  { key: 'mid-calf', cm: 80, share: 0.25 },
  { key: 'knee-and-hands', cm: 68, share: 0.15 },
  { key: 'thigh-and-forearm', cm: 50, share: 0.08 },
] as const;

function lengthDependentHypotheses(): Hypothesis[] {
  return lengthDependent.flatMap((form) =>
    reaches.map((reach) => {
      const process: Process = {
        motor: (unit) => form.motor * reached(unit.lengthCm, reach.cm + form.motorLag),
        largeFibre: (fibre) => form.large * reached(fibre.lengthCm, reach.cm),
        smallFibre: (fibre) => form.small * reached(fibre.lengthCm, reach.cm - 4),
        reflex: (fibre) => 0.55 * form.large * reached(fibre.lengthCm, reach.cm - 14),
        denervating: true,
        because: 'the longest axons fail first',
      };
      return hypothesis(
        processSite(form.key, form.label, 'polyneuropathy'),
        `${form.motorLag}-${reach.key}`,
        percent.lengthDependent * form.share * reach.share,
        intact,
        {
          process,
          faculties: facultiesOf([
            ['blood-pressure', 0.1],
            ['sweating', 0.1],
            ['sexual', 0.15],
          ]),
        },
      );
    }),
  );
}

/** Inflammatory loss along roots and nerves alike: proximal and distal weakness, reflexes gone early, little skin loss. */
const polyradiculoneuropathies = [
  { key: 'legs-mild', leg: 0.45, arm: 0.12, trunk: 0.05, reflex: 0.85, armReflex: 0.5, large: 0.35, share: 0.25 },
  { key: 'legs-first', leg: 0.7, arm: 0.4, trunk: 0.15, reflex: 0.95, armReflex: 0.85, large: 0.45, share: 0.3 },
  { key: 'all-limbs', leg: 0.8, arm: 0.75, trunk: 0.35, reflex: 0.97, armReflex: 0.95, large: 0.5, share: 0.2 },
  { key: 'severe', leg: 0.95, arm: 0.92, trunk: 0.6, reflex: 0.98, armReflex: 0.97, large: 0.6, share: 0.1 },
  { key: 'pure-motor', leg: 0.75, arm: 0.6, trunk: 0.25, reflex: 0.9, armReflex: 0.8, large: 0.03, share: 0.1 },
  { key: 'arms-and-throat', leg: 0.08, arm: 0.7, trunk: 0.2, reflex: 0.3, armReflex: 0.9, large: 0.15, share: 0.05 },
] as const;

const legTop = segmentIndex('T12');
const armBottom = segmentIndex('T1');

function polyradiculoneuropathyHypotheses(): Hypothesis[] {
  return polyradiculoneuropathies.map((form) => {
    const part = (segment: number): number =>
      segment >= legTop ? form.leg : segment <= armBottom ? form.arm : form.trunk;
    const process: Process = {
      motor: (unit) => part(unit.segment),
      largeFibre: (fibre) =>
        form.large * (part(fibre.segment) / Math.max(form.leg, form.arm)) * (0.45 + 0.55 * reached(fibre.lengthCm, 72)),
      smallFibre: (fibre) => 0.65 * form.large * reached(fibre.lengthCm, 76),
      reflex: (fibre) => (fibre.segment >= legTop ? form.reflex : form.armReflex),
      denervating: false,
      because: 'roots and nerves are affected along their whole length, near and far alike',
    };
    const bulbar = 0.35 * form.arm + 0.1;
    return hypothesis(
      processSite(
        'demyelinating-polyradiculoneuropathy',
        'Inflammatory polyradiculoneuropathy',
        'polyradiculoneuropathy',
      ),
      form.key,
      percent.polyradiculoneuropathy * form.share,
      intact,
      {
        process,
        faculties: facultiesOf([
          ['lower-face', bulbar],
          ['upper-face', bulbar],
          ['swallowing', bulbar * 0.7],
          ['voice', bulbar * 0.4],
          ['abducens', 0.08],
          ['breathing', 0.15 + 0.3 * form.trunk],
          ['blood-pressure', 0.25],
          ['heart-rate', 0.25],
          ['bladder-retention', 0.08],
        ]),
      },
    );
  });
}

function ganglionopathyHypotheses(): Hypothesis[] {
  return [0.9, 0.6].map((loss) => {
    const process: Process = {
      motor: none,
      largeFibre: () => loss,
      smallFibre: () => loss * 0.6,
      reflex: () => 0.5,
      denervating: true,
      because: 'sensory cell bodies are lost whatever the length of their axons',
    };
    return hypothesis(
      processSite('sensory-ganglionopathy', 'Sensory ganglionopathy', 'ganglion'),
      String(loss),
      percent.ganglionopathy / 2,
      intact,
      {
        process,
        faculties: facultiesOf([
          ['trigeminal-sensation', 0.3],
          ['blood-pressure', 0.15],
        ]),
      },
    );
  });
}

/** Every disease of many nerves at once. */
export function polyneuropathyHypotheses(): Hypothesis[] {
  return [...lengthDependentHypotheses(), ...polyradiculoneuropathyHypotheses(), ...ganglionopathyHypotheses()];
}
