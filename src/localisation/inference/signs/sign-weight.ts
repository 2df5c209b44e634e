import type { Source } from '../../../kernel/cite.ts';
import type { Applies } from '../shift.ts';

/** How a sign that no pathway decides shifts the odds of sites when it is there. That it is absent says too little. */
export interface SignWeight {
  /** Key of the catalogue. */
  readonly key: string;
  readonly applies: Applies;
  /** Odds factor. */
  readonly present: number;
  /** A clause that completes "... because ...". */
  readonly because: string;
  readonly source: Source;
}

export const sign = (
  keys: string | readonly string[],
  applies: Applies,
  present: number,
  because: string,
  source: Source,
): readonly SignWeight[] => [keys].flat().map((key) => ({ key, applies, present, because, source }));
