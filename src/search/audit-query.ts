import type { EntryKind } from '../audit/audit-record.ts';
import type { Interaction } from '../audit/interactions.ts';
import type { RangePattern } from './query.ts';

/** One condition of a search of the audit trail; alternatives inside, all conditions together. */
export type AuditFilter =
  | { readonly by: 'number'; readonly anyOf: readonly number[] }
  | { readonly by: 'time'; readonly anyOf: readonly RangePattern[] }
  | { readonly by: 'interaction'; readonly anyOf: readonly Interaction[] }
  | { readonly by: 'action' | 'outcome'; readonly anyOf: readonly string[] }
  | { readonly by: EntryKind; readonly anyOf: readonly string[]; readonly match: 'whole' | 'start' };

export interface AuditQuery {
  readonly filters: readonly AuditFilter[];
  readonly direction: 'ascending' | 'descending';
  /** 0 for the number of matches alone. */
  readonly count: number;
  /** Whether the number of matches is wanted. */
  readonly isCounted: boolean;
}
