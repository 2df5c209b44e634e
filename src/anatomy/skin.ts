import type { Source } from '../kernel/cite.ts';
import type { Region } from './body-parts.ts';
import type { Ontology } from './ontology.ts';
import type { Segment } from './segments.ts';
import type { Supply } from './supply.ts';

/** The 28 dermatomes of one side that the international standard scores; S4 and S5 are scored as one. */
export const dermatomeKeys = [
  'C2',
  'C3',
  'C4',
  'C5',
  'C6',
  'C7',
  'C8',
  'T1',
  'T2',
  'T3',
  'T4',
  'T5',
  'T6',
  'T7',
  'T8',
  'T9',
  'T10',
  'T11',
  'T12',
  'L1',
  'L2',
  'L3',
  'L4',
  'L5',
  'S1',
  'S2',
  'S3',
  'S4-5',
] as const;

export type DermatomeKey = (typeof dermatomeKeys)[number];

/** A patch of skin, or a bony point, where sensation is tested. */
export interface SkinPlace {
  readonly label: string;
  readonly region: Region;
  readonly bodyPart: string;
  /** Cutaneous nerves (or the nerve of the underlying bone and joint) with the roots they carry from here. */
  readonly supplies: readonly Supply[];
  /** Length of the sensory axon from the cord, in cm, in an adult of average height. Own estimate. */
  readonly lengthCm: number;
  readonly uberon?: Ontology;
  readonly source: Source;
}

/** Writes the patches of one region whose supply is told by one work. */
export const skinPlaceIn =
  (region: Region, source: Source) =>
  (label: string, bodyPart: string, lengthCm: number, supplies: readonly Supply[], uberon?: Ontology): SkinPlace => ({
    label,
    region,
    bodyPart,
    supplies,
    lengthCm,
    ...(uberon && { uberon }),
    source,
  });

export interface Dermatome extends SkinPlace {
  readonly segment: Segment;
  /** The key sensory point of the standard, in our words. */
  readonly keyPoint: string;
}
