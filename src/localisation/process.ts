import type { MuscleGroup } from '../anatomy/movement.ts';
import type { Faculty } from '../anatomy/probe.ts';
import type { BodySide } from '../kernel/side.ts';

/** One fibre or muscle as a diffuse process sees it. */
export interface FibreSite {
  readonly side: BodySide;
  /** Index of the segment that it belongs to. */
  readonly segment: number;
  /** Length of the axon from the cord, in cm. */
  readonly lengthCm: number;
}

export interface MotorUnitSite extends FibreSite {
  /** Absent for the efferent limb of a reflex, which is judged by segment and length alone. */
  readonly group?: MuscleGroup;
}

/**
 * A diffuse disease as a rule over attributes of fibres and muscles instead of a list of structures. Every function
 * answers the fraction lost, 0 to 1.
 */
export interface Process {
  readonly motor: (unit: MotorUnitSite) => number;
  /** Vibration, joint position, light touch and the afferent limb of stretch reflexes. */
  readonly largeFibre: (fibre: FibreSite) => number;
  /** Pain, temperature, and autonomic fibres. */
  readonly smallFibre: (fibre: FibreSite) => number;
  /** What the stretch reflexes lose beyond what weakness and sensory loss account for (desynchronised volleys). */
  readonly reflex: (fibre: FibreSite) => number;
  /** How the weakness comes about, for wasting and fasciculation. */
  readonly denervating: boolean;
  /** What the process does, as a clause that completes "because ...". */
  readonly because: string;
}

/** Chance that a faculty is abnormal on a side, or in the midline, under a hypothesis; absent = as in health. */
export type FacultyChances = ReadonlyMap<string, number>;

export function facultyKey(faculty: Faculty, side: BodySide | 'midline'): string {
  return `${faculty}|${side}`;
}

const none = (): number => 0;

export const noProcess: Process = {
  motor: none,
  largeFibre: none,
  smallFibre: none,
  reflex: none,
  denervating: true,
  because: '',
};

/** The smooth step that turns a length beyond a reach into a fraction lost: 0.5 at the reach, 0.9 about 13 cm beyond. */
export function reached(lengthCm: number, reachCm: number): number {
  return 1 / (1 + Math.exp((reachCm - lengthCm) / 6));
}
