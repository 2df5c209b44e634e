import type { Item } from '../../client/generated/api-types.ts';
import type { CatalogueIndex } from '../catalogue.ts';
import { addressOf, type Cell, type CellAddress, type Draft, historyLists } from './draft.ts';
import { referenceOf } from './typed-references.ts';

export interface BuiltExam {
  /** Body of `POST /exams`, and of `POST /localisation`. */
  readonly exam: Readonly<Record<string, unknown>>;
  /** Cells by the JSON Pointer of the finding that they became, to lead from an answer back to the record. */
  readonly cellsAt: ReadonlyMap<string, readonly CellAddress[]>;
}

interface Row {
  readonly address: CellAddress;
  readonly item: Item;
  readonly cell: Cell;
}

/** The draft as an exam of the service's contract: findings in the order of the catalogue, two equal sides as one. */
export function examOfDraft(draft: Draft, index: CatalogueIndex): BuiltExam {
  const cellsAt = new Map<string, readonly CellAddress[]>();
  const findings: Record<string, unknown[]> = {};
  for (const { section, items } of index.catalogue.sections) {
    const ranks = new Map(items.map((item, rank) => [item.key, rank]));
    const entries: unknown[] = [];
    for (const rows of groups(rowsOf(draft, section, index), ranks)) {
      for (const { entry, addresses } of entriesOf(rows, index)) {
        cellsAt.set(`/findings/${section}/${entries.length}`, addresses);
        entries.push(entry);
      }
    }
    if (section === 'higherFunction' && Object.keys(draft.comaScale).length > 0) {
      entries.push(comaEntry(draft, index));
    }
    if (entries.length > 0) findings[section] = entries;
  }
  const history = historyOf(draft);
  const exam = {
    identifier: draft.identifier,
    status: draft.status,
    ...referencesOf(draft),
    examinedAt: draft.examinedAt,
    ...(Object.keys(draft.person).length > 0 && { person: draft.person }),
    ...(Object.keys(history).length > 0 && { history }),
    ...(Object.keys(findings).length > 0 && { findings }),
    ...(draft.otherwiseNormal.length > 0 && { otherwiseNormal: draft.otherwiseNormal }),
    ...(draft.results.length > 0 && { results: draft.results }),
    ...(draft.requests !== undefined && { requests: draft.requests }),
  };
  return { exam, cellsAt };
}

function rowsOf({ cells }: Draft, section: string, index: CatalogueIndex): readonly Row[] {
  return Object.entries(cells).flatMap(([key, cell]) => {
    const address = addressOf(key);
    const item = index.item(address.section, address.item);
    const hasFinding = cell.value !== undefined || cell.notTested !== undefined;
    return address.section === section && item !== undefined && hasFinding ? [{ address, item, cell }] : [];
  });
}

/** The sides of one item at one place together, in the order of the catalogue and then of recording. */
function groups(rows: readonly Row[], ranks: ReadonlyMap<string, number>): readonly (readonly Row[])[] {
  const byItem = new Map<string, Row[]>();
  for (const row of rows) {
    const { item, place } = row.address;
    const name = `${item}|${place?.kind}:${place?.key}`;
    byItem.set(name, [...(byItem.get(name) ?? []), row]);
  }
  const rankOf = ([row]: readonly Row[]): number => ranks.get(row?.address.item ?? '') ?? 0;
  return [...byItem.values()].sort((one, other) => rankOf(one) - rankOf(other));
}

function entriesOf(
  rows: readonly Row[],
  index: CatalogueIndex,
): readonly { readonly entry: unknown; readonly addresses: readonly CellAddress[] }[] {
  const left = rows.find(({ address }) => address.side === 'left');
  const right = rows.find(({ address }) => address.side === 'right');
  if (left !== undefined && right !== undefined && isSame(left.cell, right.cell)) {
    const others = rows.filter((row) => row !== left && row !== right);
    return [
      { entry: entryOf(left, 'both', index), addresses: [left.address, right.address] },
      ...others.map((row) => ({ entry: entryOf(row, row.address.side, index), addresses: [row.address] })),
    ];
  }
  return rows.map((row) => ({ entry: entryOf(row, row.address.side, index), addresses: [row.address] }));
}

function isSame(one: Cell, other: Cell): boolean {
  return (
    one.value === other.value &&
    one.notTested === other.notTested &&
    one.note === other.note &&
    (one.reinforced ?? false) === (other.reinforced ?? false)
  );
}

function entryOf({ address, item, cell }: Row, side: string, index: CatalogueIndex): Record<string, unknown> {
  const { section, place } = address;
  const itemProperty = index.section(section)?.itemProperty ?? null;
  return {
    ...(itemProperty !== null && { [itemProperty]: address.item }),
    ...(place !== undefined && { [place.kind]: place.key }),
    ...(side !== 'midline' && { side }),
    ...(cell.notTested === undefined
      ? { [item.property]: statedValue(item, cell.value) }
      : { notTested: cell.notTested }),
    ...(cell.reinforced !== undefined && { reinforced: cell.reinforced }),
    ...(cell.note !== undefined && cell.note.trim() !== '' && { note: cell.note }),
  };
}

function statedValue(item: Item, value: Cell['value']): unknown {
  return item.scale === 'presence' ? value === 'present' : value;
}

/** All three parts have to be stated; a part that was passed over was not done. */
function comaEntry({ comaScale, comaNote }: Draft, { catalogue }: CatalogueIndex): Record<string, unknown> {
  const { key, parts } = catalogue.comaScale;
  const stated = parts.map((part) => {
    const state = comaScale[part.key] ?? { notTested: 'not-done' };
    return [part.key, 'score' in state ? state.score : state] as const;
  });
  return { scale: key, ...Object.fromEntries(stated), ...(comaNote !== undefined && { note: comaNote }) };
}

function historyOf({ onset, course, history }: Draft): Record<string, unknown> {
  return {
    ...(Object.keys(onset).length > 0 && { onset }),
    ...(course !== undefined && { course }),
    ...Object.fromEntries(historyLists.filter((list) => history[list].length > 0).map((list) => [list, history[list]])),
  };
}

/** References as typed; what the fields could not hold of a corrected exam is as it was. */
function referencesOf({ subject, encounter, performer, carried }: Draft): Record<string, unknown> {
  const typed = {
    subject: referenceOf('subject', subject),
    encounter: referenceOf('encounter', encounter),
    performer: referenceOf('performer', performer),
  };
  return {
    ...(typed.subject !== undefined && { subject: typed.subject }),
    ...(typed.encounter !== undefined && { encounter: typed.encounter }),
    ...(typed.performer !== undefined && { performer: [typed.performer] }),
    ...carried,
  };
}
