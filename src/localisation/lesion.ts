import { type PlaceKey, placeKeys } from '../anatomy/places.ts';
import { type Segment, segmentIndex, segments } from '../anatomy/segments.ts';
import { type BodySide, bodySides, opposite } from '../kernel/side.ts';

/**
 * What is damaged, structure by structure, each as the fraction of fibres or cells lost, 0 to 1. A focal lesion fills a
 * few cells; a healthy nervous system is all zeros. Sides of cord tracts and horns are sides of the cord; sides of the
 * cerebrum are sides of the brain, so its left half serves the right half of the body.
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
  /** Above the foramen magnum, by brain side and limb: motor, joint-position-and-vibration, pain-and-temperature. */
  readonly cerebralMotor: Float64Array;
  readonly cerebralPosition: Float64Array;
  readonly cerebralPain: Float64Array;
  /** Cerebellar outflow: left half, right half (both serve their own side), midline. */
  readonly cerebellar: Float64Array;
}

export const limbs = ['face', 'arm', 'leg'] as const;
export type Limb = (typeof limbs)[number];

const placeIndexes = new Map<string, number>(placeKeys.map((key, index) => [key, index]));
const sideOffset = (side: BodySide, size: number): number => (side === 'left' ? 0 : size);

export function placeIndex(side: BodySide, place: PlaceKey): number {
  return sideOffset(side, placeKeys.length) + (placeIndexes.get(place) ?? 0);
}

export function cordIndex(side: BodySide, segment: number): number {
  return sideOffset(side, segments.length) + segment;
}

function cerebralIndex(brainSide: BodySide, limb: Limb): number {
  return sideOffset(brainSide, limbs.length) + limbs.indexOf(limb);
}

/** The limb whose cerebral fibres serve a segment; trunk segments go with the leg below T6 and with the arm above. */
function limbOf(segment: number): Limb {
  return segment <= segmentIndex('T5') ? 'arm' : 'leg';
}

const emptyPlaces = new Float64Array(placeKeys.length * 2);
const emptyCord = new Float64Array(segments.length * 2);
const emptyCerebral = new Float64Array(limbs.length * 2);
const emptyCerebellar = new Float64Array(3);

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
  cerebralMotor: emptyCerebral,
  cerebralPosition: emptyCerebral,
  cerebralPain: emptyCerebral,
  cerebellar: emptyCerebellar,
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

  cerebral(brainSide: BodySide, limb: Limb, motor: number, position: number, pain: number): this {
    const index = cerebralIndex(brainSide, limb);
    this.hit('cerebralMotor', index, motor);
    this.hit('cerebralPosition', index, position);
    return this.hit('cerebralPain', index, pain);
  }

  cerebellum(part: BodySide | 'midline', fraction: number): this {
    return this.hit('cerebellar', part === 'left' ? 0 : part === 'right' ? 1 : 2, fraction);
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
    return 1 - (this.damage.cerebralMotor[cerebralIndex(opposite(side), 'face')] ?? 0);
  }

  faceSensation(side: BodySide): number {
    return 1 - (this.damage.cerebralPain[cerebralIndex(opposite(side), 'face')] ?? 0);
  }

  private follow(side: BodySide): void {
    const { corticospinal, dorsalColumn, spinothalamic, crossing } = this.damage;
    const brain = opposite(side);
    let descending = 1;
    let column = 1;
    let tract = 1;
    for (let segment = 0; segment < segments.length; segment += 1) {
      const own = cordIndex(side, segment);
      const limb = cerebralIndex(brain, limbOf(segment));
      // A lesion stops the fibres bound for the segments below it; its own segment is the anterior horn's affair.
      this.motor[own] = descending * (1 - (this.damage.cerebralMotor[limb] ?? 0));
      descending *= 1 - (corticospinal[own] ?? 0);
      // Fibres that enter at the level of a lesion are caught in part; those from below are all cut.
      this.position[own] =
        column * (1 - ownLevel * (dorsalColumn[own] ?? 0)) * (1 - (this.damage.cerebralPosition[limb] ?? 0));
      column *= 1 - (dorsalColumn[own] ?? 0);
      // Pain fibres climb through the segment above their own on the same side before they have all crossed, and are in
      // the other side's tract two segments up; so a half lesion shows its level that much below on the other side.
      if (segment >= 2) tract *= 1 - (spinothalamic[cordIndex(brain, segment - 2)] ?? 0);
      const climb = segment === 0 ? 1 : 1 - (crossing[own - 1] ?? 0);
      const across = climb * (1 - ownLevel * (crossing[own] ?? 0));
      this.pain[own] = tract * across * (1 - (this.damage.cerebralPain[limb] ?? 0));
    }
  }
}
