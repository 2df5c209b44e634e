import type { CatalogueIndex, PlaceKind } from '../catalogue.ts';
import {
  type Cell,
  type CellKey,
  type CellSide,
  type ComaScore,
  cellKey,
  type Draft,
  emptyDraft,
  type HistoryEntry,
  historyLists,
  type NormalStatement,
  type ResultEntry,
} from './draft.ts';
import { type ReferenceField, type ReferenceValue, typedFor } from './typed-references.ts';

type Json = Readonly<Record<string, unknown>>;
const placeKinds: readonly PlaceKind[] = ['site', 'dermatome', 'territory', 'levelBelow'];

/**
 * An exam as the service keeps it, as a draft that can be changed and sent again. References that the page has no field for
 * are carried along as they are.
 */
export function draftOfExam(exam: Json, index: CatalogueIndex): Draft {
  const empty = emptyDraft(new Date(0), () => '');
  const history = (exam.history ?? {}) as Json;
  const cells: Record<string, Cell> = {};
  let comaEntry: Json | undefined;
  for (const [section, entries] of Object.entries((exam.findings ?? {}) as Record<string, readonly Json[]>)) {
    for (const entry of entries) {
      // Of a scale that is stated twice the first one counts, as for the service.
      if ('scale' in entry) comaEntry ??= entry;
      // What is stated twice is the same, but only one of them may have a note.
      else for (const [key, cell] of cellsOf(section, entry, index)) cells[key] = { ...cell, ...cells[key] };
    }
  }
  return {
    ...empty,
    identifier: exam.identifier as Draft['identifier'],
    status: (exam.status ?? 'final') as Draft['status'],
    ...referencesOf(exam),
    examinedAt: String(exam.examinedAt),
    person: (exam.person ?? {}) as Draft['person'],
    onset: (history.onset ?? {}) as Draft['onset'],
    ...(history.course !== undefined && { course: history.course as NonNullable<Draft['course']> }),
    history: Object.fromEntries(
      historyLists.map((list) => [list, (history[list] ?? []) as readonly HistoryEntry[]]),
    ) as unknown as Draft['history'],
    cells,
    comaScale: comaEntry === undefined ? {} : comaScoresOf(comaEntry, index),
    ...(comaEntry?.note !== undefined && { comaNote: String(comaEntry.note) }),
    otherwiseNormal: (exam.otherwiseNormal ?? []) as readonly NormalStatement[],
    results: (exam.results ?? []) as readonly ResultEntry[],
    ...(exam.requests !== undefined && { requests: exam.requests as readonly string[] }),
  };
}

/** The cells that one entry of an exam fills, with their keys. */
export function cellsOf(section: string, entry: Json, index: CatalogueIndex): readonly (readonly [CellKey, Cell])[] {
  const known = index.section(section);
  if (known === undefined) return [];
  const key = known.itemProperty === null ? known.items[0]?.key : String(entry[known.itemProperty]);
  const item = key === undefined ? undefined : index.item(section, key);
  if (key === undefined || item === undefined) return [];
  // In sections whose items are named by `site`, that property is no place.
  const kind = placeKinds.find((one) => one !== known.itemProperty && entry[one] !== undefined);
  const stated = entry[item.property];
  const cell: Cell = {
    ...(entry.notTested !== undefined && { notTested: entry.notTested as NonNullable<Cell['notTested']> }),
    ...(stated !== undefined && {
      value: typeof stated === 'boolean' ? presence(stated) : (stated as string | number),
    }),
    ...(entry.note !== undefined && { note: String(entry.note) }),
    ...(entry.reinforced !== undefined && { reinforced: entry.reinforced === true }),
  };
  const sides: readonly CellSide[] =
    entry.side === 'both' ? ['right', 'left'] : [(entry.side as CellSide | undefined) ?? 'midline'];
  const place = kind === undefined ? {} : { place: { kind, key: String(entry[kind]) } };
  return sides.map((side) => [cellKey({ section, item: key, side, ...place }), cell] as const);
}

function presence(isPresent: boolean): string {
  return isPresent ? 'present' : 'absent';
}

function comaScoresOf(entry: Json, { catalogue }: CatalogueIndex): Record<string, ComaScore> {
  return Object.fromEntries(
    catalogue.comaScale.parts.map(({ key }) => {
      const stated = entry[key] ?? { notTested: entry.notTested ?? 'not-done' };
      return [key, typeof stated === 'number' ? { score: stated } : (stated as ComaScore)];
    }),
  );
}

/** A plain reference or number goes into its field; anything richer is carried as it is, and its field stays empty. */
function referencesOf(exam: Json): Pick<Draft, 'subject' | 'encounter' | 'performer' | 'carried'> {
  const carried: Record<string, unknown> = {};
  const typed = (field: ReferenceField, values: readonly ReferenceValue[]): string => {
    const [first, ...others] = values;
    if (first === undefined) return '';
    const text = others.length === 0 ? typedFor(field, first) : undefined;
    if (text === undefined) carried[field] = exam[field];
    return text ?? '';
  };
  const one = (value: unknown) => (value === undefined ? [] : [value as ReferenceValue]);
  const fields = {
    subject: typed('subject', one(exam.subject)),
    encounter: typed('encounter', one(exam.encounter)),
    performer: typed('performer', (exam.performer ?? []) as readonly ReferenceValue[]),
  };
  return { ...fields, ...(Object.keys(carried).length > 0 && { carried }) };
}
