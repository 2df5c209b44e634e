import type { MuscleGroup } from '../anatomy/movement.ts';
import type { Faculty } from '../anatomy/probe.ts';
import { segmentIndex } from '../anatomy/segments.ts';
import type { BodySide } from '../kernel/side.ts';

/** One fibre or muscle as a diffuse process sees it. */
export interface FibreSite {
  readonly side: BodySide;
  /** Index of the segment that it belongs to; null for fibres of cranial nerves. */
  readonly segment: number | null;
  /** Length of the axon from the cord or brainstem, in cm. */
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
  /**
   * Muscle-spindle afferents lost beyond `largeFibre`: without them movement is ataxic and stretch reflexes are gone,
   * though the skin may feel and the joint be felt.
   */
  readonly spindle: (fibre: FibreSite) => number;
  /**
   * Reflexes and tone let go of by descending control beyond what the strength has lost of it: slow disease of cortical
   * motor cells makes limbs stiff and jerks brisk long before it weakens.
   */
  readonly release: (fibre: Omit<FibreSite, 'lengthCm'>) => number;
  /** Whether `release` is of the stretch reflexes alone, because the tracts are whole: toes go down and limbs are not stiff. */
  readonly sparesTracts?: boolean;
  /**
   * How far a fresh lesion has silenced the cord below it: jerks are flat and limbs slack, though descending control is gone
   * and the arcs are whole (spinal shock).
   */
  readonly shock: (fibre: Omit<FibreSite, 'lengthCm'>) => number;
  /** What the stretch reflexes lose beyond what weakness and sensory loss account for (desynchronised volleys). */
  readonly reflex: (fibre: FibreSite) => number;
  /** Whether the arcs are whole whatever is not moved or not felt, because no structure is damaged. */
  readonly sparesArcs?: boolean;
  /**
   * How much muscle bulk goes with the weakness: all of it when motor units die, less when muscle is diseased, hardly any
   * when nerve or junction is only blocked.
   */
  readonly wasting: 'denervation' | 'muscle' | 'block';
  /** Share of the weakness whose motor units twitch as though their cells were dying, though these are sound; none when absent. */
  readonly twitching?: number;
  /** What the process does, as a clause that completes "because ...". */
  readonly because: string;
  /** The same for one aspect of an examination, where it can be said more closely. */
  readonly reasons?: Reasons;
}

/** What signs are about, as far as a process gives different reasons for them; `spared` is said of what is normal. */
export type Aspect =
  | 'strength'
  | 'bulk'
  | 'twitching'
  | 'feeling'
  | 'reflex'
  | 'release'
  | 'coordination'
  | 'head'
  | 'autonomic'
  | 'spared';

export type Reasons = Readonly<Partial<Record<Aspect, string>>>;

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
  spindle: none,
  reflex: none,
  release: none,
  shock: none,
  wasting: 'denervation',
  because: '',
};

/** A process from what it takes; what is not named it spares. */
export function processOf(parts: Partial<Process> & Pick<Process, 'because'>): Process {
  return { ...noProcess, ...parts };
}

const byWasting = ['block', 'muscle', 'denervation'] as const;

/** Chance that at least one of two independent things is so; or what is lost of a fibre that both take from. */
export const either = (a: number, b: number): number => 1 - (1 - a) * (1 - b);

/** Two processes at once: each fibre keeps what both leave over. */
export function combineProcesses(one: Process, other: Process): Process {
  const active = [one, other].filter(({ because }) => because !== '');
  return {
    motor: (unit) => either(one.motor(unit), other.motor(unit)),
    largeFibre: (fibre) => either(one.largeFibre(fibre), other.largeFibre(fibre)),
    smallFibre: (fibre) => either(one.smallFibre(fibre), other.smallFibre(fibre)),
    spindle: (fibre) => either(one.spindle(fibre), other.spindle(fibre)),
    reflex: (fibre) => either(one.reflex(fibre), other.reflex(fibre)),
    release: (fibre) => either(one.release(fibre), other.release(fibre)),
    sparesTracts: active.every(({ sparesTracts }) => sparesTracts === true),
    shock: (fibre) => either(one.shock(fibre), other.shock(fibre)),
    twitching: Math.max(one.twitching ?? 0, other.twitching ?? 0),
    wasting: byWasting.findLast((kind) => one.wasting === kind || other.wasting === kind) ?? 'denervation',
    because: active.map(({ because }) => because).join('; '),
  };
}

/** The smooth step that turns a length beyond a reach into a fraction lost: 0.5 at the reach, 0.9 about 13 cm beyond. */
export function reached(lengthCm: number, reachCm: number): number {
  return 1 / (1 + Math.exp((reachCm - lengthCm) / 6));
}

/** Parts of the body as a process over roots sees them. */
export type BodyPart = 'head' | 'neck' | 'arm' | 'trunk' | 'leg';

/** The part that a segment serves; null, a cranial nerve, serves the head. */
export function partOf(segment: number | null): BodyPart {
  if (segment === null) return 'head';
  if (segment < segmentIndex('C4')) return 'neck';
  if (segment <= segmentIndex('T1')) return 'arm';
  return segment < segmentIndex('T12') ? 'trunk' : 'leg';
}
