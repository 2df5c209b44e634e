import { recalled } from '../../kernel/cite.ts';
import { type QuantityRatio, reads, under } from './cause.ts';

/** Key of the result that the ratios below are about. */
export const conduction = 'nerve-conduction-pattern';

/** The two demyelinating patterns with their ratios. */
export const demyelinating = (ratio: number, uniform = ratio) =>
  [
    ['demyelinating-non-uniform', ratio],
    ['demyelinating-uniform', uniform],
  ] as const;

/** Ratio of an axonal pattern; demyelination and a normal study speak against an axonal disease. */
export const axonal = (ratio: number) =>
  reads(conduction, [['axonal', ratio], ...demyelinating(0.2, 0.1), ['motor-conduction-block', 0.2], ['normal', 0.5]]);

/** Key of the motor velocity of the arm in m/s. */
export const armVelocity = 'motor-conduction-velocity-arm';

const slowArmSource = recalled('saporta-2011', 'motor velocity of the arm under 38 m/s: demyelinating');

/** Ratio of a motor velocity of the arm under 38 m/s, and of one of 38 m/s or more. */
export const slowArm = (ratio: number, otherwise: number): QuantityRatio =>
  under(armVelocity, 38, 'm/s', ratio, otherwise, slowArmSource);

/** Slowing under 38 m/s is hardly ever due to loss of axons. */
export const axonalVelocity = slowArm(0.15, 1.1);
