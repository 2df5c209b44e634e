import { brainFunctions, type WiredFunction } from '../anatomy/brain/functions.ts';
import { areaOf, type BodyArea, bodyAreas, longTracts } from '../anatomy/brain/long-tracts.ts';
import type { StructureKey } from '../anatomy/brain/structures.ts';
import { type PlaceKey, placeKeys } from '../anatomy/places.ts';
import { type Segment, segmentIndex, segments } from '../anatomy/segments.ts';
import { type BodySide, bodySides, opposite } from '../kernel/side.ts';
import { brainCells, brainIndex, lostOf, pathOf } from './brain-path.ts';

/**
 * What is damaged, structure by structure, each as the fraction of fibres or cells lost, 0 to 1. A focal lesion fills a
 * few cells; a healthy nervous system is all zeros. Sides of cord tracts and horns are sides of the cord; sides of
 * structures of the brain are sides of the brain, so the left motor cortex serves the right half of the body.
 */
export interface Damage {
  readonly motorPlace: Float64Array;
  readonly sensoryPlace: Float64Array;
  readonly ventralRoot: Float64Array;
  readonly dorsalRoot: Float64Array;
  readonly anteriorHorn: Float64Array;
  /** Pain and temperature fibres on their way across the cord, by the body side that they come from. */
  readonly crossing: Float64Array;
  readonly corticospinal: Float64Array;
  readonly dorsalColumn: Float64Array;
  readonly spinothalamic: Float64Array;
  /** Everything above the foramen magnum and the cranial nerves; see `brainIndex`. */
  readonly brain: Float64Array;
}

const placeIndexes = new Map<string, number>(placeKeys.map((key, index) => [key, index]));
const sideOffset = (side: BodySide, size: number): number => (side === 'left' ? 0 : size);

export function placeIndex(side: BodySide, place: PlaceKey): number {
  return sideOffset(side, placeKeys.length) + (placeIndexes.get(place) ?? 0);
}

/** The one side on which nerves are damaged at a place; null when it is both or none. */
export function sideOfPlaces({ motorPlace, sensoryPlace }: Damage): BodySide | null {
  const isHit = (from: number, to: number): boolean =>
    [motorPlace, sensoryPlace].some((cells) => cells.subarray(from, to).some((fraction) => fraction > 0));
  const middle = placeKeys.length;
  const left = isHit(0, middle);
  if (left === isHit(middle, 2 * middle)) return null;
  return left ? 'left' : 'right';
}

export function cordIndex(side: BodySide, segment: number): number {
  return sideOffset(side, segments.length) + segment;
}

const emptyPlaces = new Float64Array(placeKeys.length * 2);
const emptyCord = new Float64Array(segments.length * 2);
const emptyBrain = new Float64Array(brainCells);

/** A nervous system without a lesion; its arrays are shared and must not be written. */
export const intact: Damage = {
  motorPlace: emptyPlaces,
  sensoryPlace: emptyPlaces,
  ventralRoot: emptyCord,
  dorsalRoot: emptyCord,
  anteriorHorn: emptyCord,
  crossing: emptyCord,
  corticospinal: emptyCord,
  dorsalColumn: emptyCord,
  spinothalamic: emptyCord,
  brain: emptyBrain,
};

type CordPart =
  | 'ventralRoot'
  | 'dorsalRoot'
  | 'anteriorHorn'
  | 'crossing'
  | 'corticospinal'
  | 'dorsalColumn'
  | 'spinothalamic';

/** Builds the damage of one hypothesis; parts hit twice keep what both leave over. */
export class LesionBuilder {
  private readonly parts = new Map<keyof Damage, Float64Array>();

  place(side: BodySide, place: PlaceKey, motor: number, sensory: number): this {
    this.hit('motorPlace', placeIndex(side, place), motor);
    return this.hit('sensoryPlace', placeIndex(side, place), sensory);
  }

  root(side: BodySide, root: Segment, motor: number, sensory: number): this {
    const index = cordIndex(side, segmentIndex(root));
    this.hit('ventralRoot', index, motor);
    return this.hit('dorsalRoot', index, sensory);
  }

  cord(part: CordPart, side: BodySide, segment: number, fraction: number): this {
    return segment < 0 || segment >= segments.length ? this : this.hit(part, cordIndex(side, segment), fraction);
  }

  /** A structure of the brain or a cranial nerve. */
  brain(side: BodySide, structure: StructureKey, fraction: number): this {
    return this.hit('brain', brainIndex(side, structure), fraction);
  }

  build(): Damage {
    return { ...intact, ...Object.fromEntries(this.parts) };
  }

  private hit(part: keyof Damage, index: number, fraction: number): this {
    const cells = this.parts.get(part) ?? new Float64Array(intact[part].length);
    cells[index] = 1 - (1 - (cells[index] ?? 0)) * (1 - fraction);
    this.parts.set(part, cells);
    return this;
  }
}

/** Two lesions at once: each structure keeps what both leave over. */
export function combineDamage(one: Damage, other: Damage): Damage {
  const merged = Object.entries(one).map(([part, cells]: [string, Float64Array]) => {
    const second = other[part as keyof Damage];
    return [part, cells.map((value, index) => 1 - (1 - value) * (1 - (second[index] ?? 0)))];
  });
  return Object.fromEntries(merged) as Damage;
}

/** Share of the fibres entering at a damaged segment that the damage catches. Judged. */
const ownLevel = 0.2;

/**
 * How much of each long pathway still gets through, for every body side and segment: running products along the tracts,
 * worked out once for a lesion because every item asks for them.
 */
export class Pathways {
  readonly damage: Damage;
  private readonly motor = new Float64Array(segments.length * 2);
  private readonly position = new Float64Array(segments.length * 2);
  private readonly pain = new Float64Array(segments.length * 2);

  constructor(damage: Damage) {
    this.damage = damage;
    for (const side of bodySides) this.follow(side);
  }

  /** Corticospinal fibres reaching the anterior horn of a segment on a body side, 0 to 1. They cross in the lower medulla. */
  motorTo(side: BodySide, segment: number): number {
    return this.motor[cordIndex(side, segment)] ?? 1;
  }

  /** Vibration and joint position from a segment: up the same side of the cord, across in the medulla. */
  positionFrom(side: BodySide, segment: number): number {
    return this.position[cordIndex(side, segment)] ?? 1;
  }

  /** Pain and temperature from a segment: across the cord within about two segments, up the other side. */
  painFrom(side: BodySide, segment: number): number {
    return this.pain[cordIndex(side, segment)] ?? 1;
  }

  faceMotor(side: BodySide): number {
    return 1 - this.above('motor', 'face', side);
  }

  /** Sensation of the face beyond the divisions of the trigeminal nerve: pain, or touch and position. */
  faceSensation(side: BodySide, tract: 'position' | 'pain'): number {
    return 1 - this.above(tract, 'face', side);
  }

  /** Fraction lost of a function of the head on a side of the body. */
  functionLost(name: WiredFunction, side: BodySide): number {
    const { brain } = this.damage;
    return brain === intact.brain ? 0 : lostOf(pathOf(brainFunctions[name], side), brain, side);
  }

  private above(tract: 'motor' | 'position' | 'pain', area: BodyArea, side: BodySide): number {
    const { brain } = this.damage;
    return brain === intact.brain ? 0 : lostOf(longTracts[tract][area], brain, side);
  }

  private follow(side: BodySide): void {
    const { corticospinal, dorsalColumn, spinothalamic, crossing } = this.damage;
    const otherSide = opposite(side);
    const lost = (tract: 'motor' | 'position' | 'pain'): Readonly<Record<string, number>> =>
      Object.fromEntries(bodyAreas.map((area) => [area, this.above(tract, area, side)]));
    const [motor, position, pain] = [lost('motor'), lost('position'), lost('pain')];
    let descending = 1;
    let column = 1;
    let tract = 1;
    for (let segment = 0; segment < segments.length; segment += 1) {
      const own = cordIndex(side, segment);
      const area = areaOf(segment);
      // A lesion stops the fibres bound for the segments below it; its own segment is the anterior horn's affair.
      this.motor[own] = descending * (1 - (motor[area] ?? 0));
      descending *= 1 - (corticospinal[own] ?? 0);
      // Fibres that enter at the level of a lesion are caught in part; those from below are all cut.
      this.position[own] = column * (1 - ownLevel * (dorsalColumn[own] ?? 0)) * (1 - (position[area] ?? 0));
      column *= 1 - (dorsalColumn[own] ?? 0);
      // Pain fibres climb through the segment above their own on the same side before they have all crossed, and are in
      // the other side's tract two segments up; so a half lesion shows its level that much below on the other side.
      if (segment >= 2) tract *= 1 - (spinothalamic[cordIndex(otherSide, segment - 2)] ?? 0);
      const climb = segment === 0 ? 1 : 1 - (crossing[own - 1] ?? 0);
      const across = climb * (1 - ownLevel * (crossing[own] ?? 0));
      this.pain[own] = tract * across * (1 - (pain[area] ?? 0));
    }
  }
}
