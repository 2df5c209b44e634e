import type { Source } from '../kernel/cite.ts';
import type { Region } from './body-parts.ts';
import type { Ontology, OntologyLink } from './ontology.ts';
import type { Segment } from './segments.ts';
import type { Supply } from './supply.ts';

/** Groups by which muscle disease, junction disease and anterior-horn disease choose what they weaken. */
export type MuscleGroup =
  | 'neck-flexors'
  | 'neck-extensors'
  | 'scapular'
  | 'shoulder'
  | 'upper-arm'
  | 'forearm-extensors'
  | 'forearm-flexors'
  | 'finger-flexors'
  /** Short muscles of the thumb and the first dorsal interosseous, which motor neuron disease wastes first. */
  | 'hand-thenar'
  | 'hand'
  | 'respiratory'
  | 'trunk'
  | 'hip'
  | 'knee-extensors'
  | 'knee-flexors'
  | 'leg-anterior'
  | 'leg-posterior'
  | 'foot';

export interface MuscleSupply extends Supply {
  readonly muscle: string;
}

/** A movement whose power is graded at the bedside. */
export interface Movement {
  readonly label: string;
  readonly region: Region;
  /** The body part that must be there for the movement to be tested at all. */
  readonly bodyPart: string;
  /** The body part where the bulk of the main muscle is seen, for wasting and fasciculation. */
  readonly bulkAt: string;
  /** False for movements of the neck and trunk that both sides make together. */
  readonly paired: boolean;
  readonly group: MuscleGroup;
  /** Muscles in order of importance; weights sum to 1. */
  readonly supplies: readonly MuscleSupply[];
  /** The root that textbooks name first. */
  readonly dominantRoot: Segment;
  /** Length of the longest motor axon from the cord, in cm, in an adult of average height. Own estimate. */
  readonly lengthCm: number;
  /**
   * How much of an upper-motor-neuron deficit this movement shows, 0 to 1: arm extensors and abductors and leg flexors
   * are weakened more than their antagonists, distal more than proximal, trunk and neck hardly.
   */
  readonly pyramidalWeight: number;
  /** Segment of which this is a key muscle in the international standard for spinal cord injury. */
  readonly keyMuscleOf?: Segment;
  /** UBERON class of the main muscle, or of the whole muscle where the movement is made by one head or belly of it. */
  readonly uberon?: Ontology;
  /** HPO term for weakness of this movement. */
  readonly hpo?: OntologyLink;
  /** How it is tested, in one phrase. */
  readonly test: string;
  readonly source: Source;
}
