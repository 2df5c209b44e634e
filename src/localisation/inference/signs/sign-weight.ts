import type { Source } from '../../../kernel/cite.ts';
import { type BodySide, opposite } from '../../../kernel/side.ts';
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
  /** The sites on each side, where the sign speaks for its own side alone. */
  readonly onSide?: Readonly<Record<BodySide, Applies>>;
}

export const sign = (
  keys: string | readonly string[],
  applies: Applies,
  present: number,
  because: string,
  source: Source,
): readonly SignWeight[] => [keys].flat().map((key) => ({ key, applies, present, because, source }));

/** A rule for either side: sites of that side, of both, and those that have none. */
export const onEachSide = (applies: Applies): Readonly<Record<BodySide, Applies>> => {
  const on =
    (side: BodySide): Applies =>
    (site) =>
      site.side !== opposite(side) && applies(site);
  return { left: on('left'), right: on('right') };
};

/** A sign on the skin of one half of the body, which speaks for sites of that half; of sites without a side, for all. */
export const signOnSide = (...[keys, applies, ...rest]: Parameters<typeof sign>): readonly SignWeight[] => {
  const onSide = onEachSide(applies);
  return sign(keys, applies, ...rest).map((row) => ({ ...row, onSide }));
};
