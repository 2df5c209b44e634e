/** Changes to a list of the history. Each is a new list; the others of the draft stand. */
import type { Draft, HistoryEntry, HistoryList } from '../draft/draft.ts';

/** How a list is called, and what its statements say. */
export const listLabels: Readonly<Record<HistoryList, string>> = {
  symptoms: 'Symptoms',
  conditions: 'Conditions',
  exposures: 'Exposures',
  family: 'Family',
  medications: 'Medications',
};

type Relation = 'parent' | 'sibling' | 'child' | 'grandparent' | 'aunt-or-uncle' | 'cousin' | 'other';

export const relationLabels: Readonly<Record<Relation, string>> = {
  parent: 'Parent',
  sibling: 'Brother or sister',
  child: 'Child',
  grandparent: 'Grandparent',
  'aunt-or-uncle': 'Aunt or uncle',
  cousin: 'Cousin',
  other: 'Other relative',
};

export function presenceWords(isPresent: boolean): string {
  return isPresent ? 'present' : 'asked, absent';
}

/** States something as present or absent: anew, or of the first statement about it on that side. */
export function stateHistory(
  entries: readonly HistoryEntry[],
  key: string,
  present: boolean,
  side?: HistoryEntry['side'],
): readonly HistoryEntry[] {
  const at = entries.findIndex((entry) => entry.key === key && (side === undefined || (entry.side ?? side) === side));
  const statement = { key, present, ...(side && { side }) };
  return at < 0 ? [...entries, statement] : amend(entries, at, statement);
}

/** Undefined takes a side or a relative out. */
export interface Amendment {
  readonly present?: boolean;
  readonly side?: HistoryEntry['side'] | undefined;
  readonly relation?: string | undefined;
}

/** Changes one statement; one of what is absent names no relative. */
export function amend(entries: readonly HistoryEntry[], at: number, changes: Amendment): readonly HistoryEntry[] {
  return entries.map((entry, place) => {
    if (place !== at) return entry;
    const { relation, side, ...after } = { ...entry, ...changes };
    return { ...after, ...(relation && after.present && { relation }), ...(side && { side }) };
  });
}

/** Says the same once more below: of the other side, or of a relative still to be named. */
export function withAnother(entries: readonly HistoryEntry[], at: number): readonly HistoryEntry[] {
  const entry = entries[at];
  if (entry === undefined) return entries;
  const { key, present, side } = entry;
  const other = side === 'left' ? 'right' : side === 'right' ? 'left' : undefined;
  return entries.toSpliced(at + 1, 0, { key, present, ...(other && { side: other }) });
}

export function withList(draft: Draft, list: HistoryList, entries: readonly HistoryEntry[]): Draft {
  return { ...draft, history: { ...draft.history, [list]: entries } };
}
