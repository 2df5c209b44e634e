import { itemsOf } from './catalogue.ts';
import { type HistoryList, historyListKeys, historyLists } from './history.ts';
import { investigations } from './investigations.ts';
import { type SectionKey, sectionKeys } from './item.ts';
import { otherNamesOfHistory } from './other-names-of-history.ts';
import { type OtherNames, otherNamesOfSigns } from './other-names-of-signs.ts';
import { otherNamesOfInvestigations, otherNamesOfResults } from './other-names-of-tests.ts';
import { resultRows } from './results.ts';

/** A list of keys in the catalogue: a section of findings, a list of the history, the results or the investigations. */
export type NamedList = SectionKey | HistoryList | 'results' | 'investigations';

const names: Readonly<Partial<Record<NamedList, OtherNames>>> = {
  ...otherNamesOfSigns,
  ...otherNamesOfHistory,
  results: otherNamesOfResults,
  investigations: otherNamesOfInvestigations,
};

/** Every list, sections first. */
export const namedLists: readonly NamedList[] = [...sectionKeys, ...historyListKeys, 'results', 'investigations'];

/**
 * What clinicians also call a key: they lead to it in searches and in faults and are never taken for it, since one thing has one key.
 * @returns names in words, none for a key that has none
 */
export function otherNamesOf(list: NamedList, key: string): readonly string[] {
  return names[list]?.[key] ?? [];
}

/** The keys that have other names; each is one of `rowsOf`, as a test holds. */
export function keysWithOtherNames(list: NamedList): readonly string[] {
  return Object.keys(names[list] ?? {});
}

/** Everything that a list has. */
export function rowsOf(list: NamedList): readonly { readonly key: string; readonly label: string }[] {
  if (list === 'results') return resultRows;
  if (list === 'investigations') return investigations;
  const ofHistory = historyListKeys.find((one) => one === list);
  return ofHistory === undefined ? itemsOf(list as SectionKey) : historyLists[ofHistory];
}
