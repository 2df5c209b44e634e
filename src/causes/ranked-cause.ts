import type { Coding } from '../kernel/coding.ts';

/** A reason by pointer into the request; `pointer` is null for a fact that is missing from it. */
export interface Reason {
  readonly pointer: string | null;
  readonly text: string;
  /** `Finding.id` when the reason is a finding. */
  readonly findingId?: string;
}

export interface RankedCause {
  readonly key: string;
  readonly label: string;
  /** MONDO where a term says the same; else our own code. */
  readonly code: Coding;
  /** Among the causes considered, 0 to 1. */
  readonly probability: number;
  readonly supporting: readonly Reason[];
  readonly against: readonly Reason[];
  readonly source: string;
}
