import type { Ontology } from '../../anatomy/ontology.ts';
import { commonPractice, type Source } from '../../kernel/cite.ts';
import type { HistoryStatement } from '../exam.ts';

/** Something the history may state as present or as a relevant negative. */
export interface HistoryRow {
  readonly key: string;
  readonly label: string;
  readonly kind: HistoryStatement['kind'];
  /** HPO term that says the same. */
  readonly hpo?: Ontology;
  /** MONDO term that says the same. */
  readonly mondo?: Ontology;
  /** Where it is told to matter; the weights are in the tables of causes. */
  readonly source: Source;
}

/** A row as it is written: a label, or a label with codes. */
export type HistoryEntry = string | (Omit<HistoryRow, 'key' | 'kind' | 'source'> & { readonly source?: Source });

/** Rows of one kind, keyed by history key, in the order in which they are written. */
export function historyTable(
  kind: HistoryRow['kind'],
  entries: Readonly<Record<string, HistoryEntry>>,
): readonly HistoryRow[] {
  return Object.entries(entries).map(([key, entry]) =>
    Object.freeze({
      key,
      kind,
      source: commonPractice,
      ...(typeof entry === 'string' ? { label: entry } : entry),
    }),
  );
}

export const hpo = (code: string, display: string): { readonly hpo: Ontology } => ({ hpo: { code, display } });
export const mondo = (code: string, display: string): { readonly mondo: Ontology } => ({ mondo: { code, display } });
