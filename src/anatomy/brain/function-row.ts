import type { Source } from '../../kernel/cite.ts';
import type { Path } from './path.ts';

/** A function that bedside signs report on, with the structures that carry it. */
export interface FunctionRow {
  /** What is carried, as it reads in "the left facial nerve serves ...". */
  readonly carries: string;
  /**
   * The structures that it needs, as seen from the side on which the sign shows. Where the two sides differ, because one
   * half of the brain leads, each side has a path of its own.
   */
  readonly path: Path | { readonly left: Path; readonly right: Path };
  readonly source: Source;
}
