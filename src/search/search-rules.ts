import { createHash } from 'node:crypto';
import { dateParameterOf, indexedUnder, linkedTypes, parametersOf, searchedTypes } from './parameters.ts';

/** Raised by hand when the extraction changes in a way that its tables do not show. */
const extractionVersion = 2;

/** What a store has to know to keep an index. */
export interface SearchRules {
  /** Names of the search parameters of a type under which something is indexed. */
  readonly namesOf: (type: string) => readonly string[];
  /**
   * The parameter that asks for the clinical date of a type whose dates are exact to the second or better: those of an
   * examination are, while a Measure may bear a year alone.
   */
  readonly exactDateOf: (type: string) => string | undefined;
  /** Changes whenever the same resource would be indexed differently. */
  readonly fingerprint: string;
  /** The parameters under which the values of one are indexed. */
  readonly indexedUnder: (type: string, name: string) => readonly string[];
}

export const searchRules: SearchRules = {
  namesOf: (type) => [...parametersOf(type).keys()].filter((name) => indexedUnder(type, name).includes(name)),
  indexedUnder,
  exactDateOf: (type) => (linkedTypes.has(type) ? (dateParameterOf(type) ?? undefined) : undefined),
  fingerprint: createHash('sha256')
    .update(JSON.stringify([extractionVersion, searchedTypes.map((type) => [type, [...parametersOf(type).values()]])]))
    .digest('hex'),
};
