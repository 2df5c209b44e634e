import type { Source } from '../../kernel/cite.ts';
import type { PlaceKey } from '../places.ts';
import type { StructureKey } from './structures.ts';

/**
 * Structures that lie together, or share an artery, so that one lesion takes them together. The number is the part of
 * each structure, 0 to 1, that a lesion which fills the territory takes. All judged from the works named.
 */
export interface Territory {
  readonly label: string;
  /** Structures on the side of the lesion, and those of the midline. */
  readonly holds: Readonly<Partial<Record<StructureKey, number>>>;
  /** Structures on the other side that such a lesion reaches. */
  readonly across?: Readonly<Partial<Record<StructureKey, number>>>;
  /** Nerves of the head and neck that have a place of their own in `places.ts`: motor and sensory part taken. */
  readonly nerves?: Readonly<Partial<Record<PlaceKey, readonly [motor: number, sensory: number]>>>;
  readonly source: Source;
}
