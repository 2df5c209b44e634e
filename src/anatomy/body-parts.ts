import type { Ontology } from './ontology.ts';

/** Parts of the body that a finding may be placed at, each inside its parent; limb parts run from near to far. */
export interface BodyPart {
  readonly label: string;
  readonly parent: string | null;
  /** Whether there is one on each side. */
  readonly paired: boolean;
  /** Rank from the root of the limb outwards: losing a part means losing every part of the limb with a higher rank. */
  readonly rank?: number;
  readonly uberon?: Ontology;
}

export const regions = ['head', 'neck', 'upper-limbs', 'trunk', 'lower-limbs', 'perineum'] as const;
/** The large regions that a section may be declared normal for. */
export type Region = (typeof regions)[number];
