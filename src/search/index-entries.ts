/**
 * What the search index holds of one resource. `param` is the name of the search parameter; a resource has any number of
 * entries for one. The kinds say how a store keeps them, not what type of parameter they come from.
 */
export interface IndexEntries {
  /**
   * Date by which the type is searched and sorted, in ms since 1970; null for a type without one. The range that a filter
   * compares is the whole second unless the ms say otherwise.
   */
  readonly at: number | null;
  readonly tokens: readonly TokenEntry[];
  readonly pairs: readonly PairEntry[];
  readonly ranges: readonly RangeEntry[];
  /** References to resources of the same exam, each to a `Type/id`; they are kept apart, being many and unique. */
  readonly links: readonly LinkEntry[];
}

/** A coded value, identifier, code, reference to outside, text or address. */
export interface TokenEntry {
  readonly param: string;
  readonly token: Token;
}

export interface Token {
  readonly kind: 'coding' | 'reference' | 'reference-identifier' | 'string' | 'uri';
  /** System of a coding or identifier, type of a reference; empty for none. */
  readonly system: string;
  /**
   * Code, value, id or text; texts are folded (lower case, no accents). A string has a second token of system `exact`
   * with the text to the letter, which `:exact` asks for as a TokenFilter.
   */
  readonly code: string;
  /** Display of a coding, or its concept's text, folded; for `:text`. */
  readonly text?: string;
}

export interface PairEntry {
  readonly param: string;
  readonly first: Token;
  readonly second: Token;
}

export interface RangeEntry {
  readonly param: string;
  readonly low: number;
  readonly high: number;
  readonly unit?: Token;
  /** Code that the value belongs to, in composites such as `code-value-quantity`. */
  readonly of?: Token;
}

export interface LinkEntry {
  readonly param: string;
  /** `Type/id`. */
  readonly target: string;
}
