/**
 * A FHIR search in the form in which a store answers it: what a request asked for, checked and free of URL syntax. All
 * filters of a query must hold; within a filter one of the alternatives is enough.
 */
export interface SearchQuery {
  readonly type: string;
  readonly filters: readonly Filter[];
  readonly sort: Sort;
  /** Matches on a page, from 0; 0 asks for the number alone. */
  readonly count: number;
  /** Whether the number of all matches is wanted: always, never, or where it costs little. */
  readonly total: 'accurate' | 'none' | 'cheap';
  readonly includes: readonly Include[];
  readonly revIncludes: readonly Include[];
}

export type Filter =
  | TokenFilter
  | ReferenceFilter
  | TextFilter
  | RangeFilter
  | PairFilter
  | IdFilter
  | LinkFilter
  | MissingFilter;

/** A coded value is among those named. */
export interface TokenFilter {
  readonly kind: 'token';
  readonly param: string;
  readonly anyOf: readonly TokenPattern[];
  /** `:not`: resources that have none of them, also those that have no value at all. */
  readonly negated: boolean;
  /** Resources of these ids count as having one of them: identifiers and tags that equal the id are not in the index. */
  readonly orIds?: readonly string[];
}

/**
 * A coding by system and code. An absent `system` is any system, an empty one is no system; an absent `code` is any code
 * of the system.
 */
export interface TokenPattern {
  readonly system?: string;
  readonly code?: string;
}

/** A reference names one of these, to the letter as it stands in the resource or as `Type/id` of a resource kept here. */
export interface ReferenceFilter {
  readonly kind: 'reference';
  readonly param: string;
  /** Each with or without its type: `Patient/4711`, `4711`, or an absolute address. */
  readonly anyOf: readonly string[];
  /** Logical references instead: the identifier that the reference carries. */
  readonly byIdentifier?: readonly TokenPattern[];
}

/** A text starts with (strings), or a display or text of a coded value contains or starts with, one of these words. */
export interface TextFilter {
  readonly kind: 'text';
  readonly param: string;
  readonly anyOf: readonly string[];
  readonly match: 'start' | 'contain' | 'exact';
}

export type Prefix = 'eq' | 'ne' | 'gt' | 'lt' | 'ge' | 'le' | 'sa' | 'eb' | 'ap';

/** A date, number or quantity lies so to the range that the given precision stands for. */
export interface RangeFilter {
  readonly kind: 'range';
  readonly param: string;
  readonly anyOf: readonly RangePattern[];
}

export interface RangePattern {
  readonly prefix: Prefix;
  /**
   * Ends of the range meant, both included: ms since 1970 for dates, plain numbers otherwise. That of `ap` is widened
   * already, so any overlap with it is enough.
   */
  readonly low: number;
  readonly high: number;
  /** Unit of a quantity; absent when any unit will do. */
  readonly unit?: TokenPattern;
  /** The code that the value must belong to, in composites such as `code-value-quantity`. */
  readonly of?: TokenPattern;
}

/** Two values that stand together in one part of the resource, such as a code and its value. */
export interface PairFilter {
  readonly kind: 'pair';
  readonly param: string;
  readonly anyOf: readonly { readonly first: TokenPattern; readonly second: TokenPattern }[];
}

/** The resource has one of these ids; an empty list is matched by none. */
export interface IdFilter {
  readonly kind: 'id';
  readonly anyOf: readonly string[];
}

/** The resource refers, by this parameter, to a resource of the same exam; `Type/id` or the id alone. */
export interface LinkFilter {
  readonly kind: 'link';
  readonly param: string;
  readonly anyOf: readonly string[];
}

export interface MissingFilter {
  readonly kind: 'missing';
  readonly param: string;
  readonly isMissing: boolean;
}

export interface Sort {
  /** `date` is the clinical date of the type. */
  readonly by: 'date' | '_lastUpdated' | '_id';
  readonly direction: 'ascending' | 'descending';
}

export interface Include {
  /** Type whose reference is followed. */
  readonly source: string;
  readonly param: string;
  readonly targetType?: string;
  readonly isIterative: boolean;
}
