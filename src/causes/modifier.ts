import type { Reason } from './ranked-cause.ts';

/** One likelihood ratio of a cause with what it rests on; put into words only for the causes that are named. */
export interface Modifier {
  readonly ratio: number;
  readonly reason: () => Reason;
  /**
   * True of a deficit that tells where the lesion lies, which the site has counted already, and of relatives with the like:
   * by itself it speaks for no cause.
   */
  readonly saysOnlyWhere?: boolean;
  /** An illness, an exposure or a medicine that was there before, which other hints do not bring with them. */
  readonly standsAlone?: boolean;
}

/** A ratio nearer to 1 than this is used but not worth a line. */
export const worthSaying = 1.3;
