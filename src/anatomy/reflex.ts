import type { Source } from '../kernel/cite.ts';
import type { Region } from './body-parts.ts';
import type { Segment } from './segments.ts';
import type { Supply } from './supply.ts';

/** A reflex: afferent and efferent limb of the arc, and what lesions above it do. */
export interface Reflex {
  readonly label: string;
  readonly region: Region;
  readonly bodyPart: string;
  /** Stretch reflexes grow brisk under an upper-motor-neuron lesion; superficial ones are lost. */
  readonly kind: 'stretch' | 'superficial';
  /** Whether it is elicited on each side, or once in the midline. */
  readonly paired: boolean;
  readonly afferent: readonly Supply[];
  readonly efferent: readonly Supply[];
  readonly dominantRoot: Segment | null;
  /** Length of the longer limb of the arc from the cord, in cm. Own estimate. */
  readonly lengthCm: number;
  /** Share of healthy adults in whom it cannot be elicited: under 60, and 60 or over. */
  readonly absentInHealth: { readonly under60: number; readonly from60: number; readonly source: Source };
  /** Set where only one sex has the reflex. */
  readonly onlyIn?: 'male';
  readonly source: Source;
}
