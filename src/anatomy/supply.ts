import type { PlaceKey } from './places.ts';
import type { RootShares } from './segments.ts';

/**
 * One stream of fibres that serves an item: the roots it comes from and the last place on its way.
 * A muscle with two nerves, or a patch of skin where two territories overlap, has two supplies.
 */
export interface Supply {
  /** Where the branch leaves the nerve, i.e. the most distal place whose damage cuts it; null = straight from the roots. */
  readonly via: PlaceKey | null;
  readonly roots: RootShares;
  /** Share of the item that this supply carries; the shares of one item sum to 1. */
  readonly weight: number;
}
