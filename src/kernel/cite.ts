import type { WorkKey } from './works.ts';

/**
 * Where a fact in a table comes from. `read`: somebody opened the work, or an abstract or table of it, and saw the fact
 * there. `recalled`: the fact is general textbook knowledge and the work named is where to check it.
 */
export interface Source {
  readonly work: WorkKey;
  /** Page, table, chapter or heading; absent when the whole work is about the fact. */
  readonly where?: string;
  readonly checked: 'read' | 'recalled';
}

export function read(work: WorkKey, where?: string): Source {
  return where === undefined ? { work, checked: 'read' } : { work, where, checked: 'read' };
}

export function recalled(work: WorkKey, where?: string): Source {
  return where === undefined ? { work, checked: 'recalled' } : { work, where, checked: 'recalled' };
}

/** What every practitioner knows and no paper is needed for. */
export const commonPractice: Source = { work: 'common-practice', checked: 'recalled' };

/** A judged or remembered value that was not looked up anywhere. */
export const fromMemory: Source = { work: 'from-memory', checked: 'recalled' };
