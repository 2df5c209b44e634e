/** The findings as a table of one page: what is abnormal, what is normal beside it and tells, and the rest in a line. */
import type { Item, LocalisationAnswer } from '../../client/generated/api-types.ts';
import { type CatalogueIndex, isNormalValue, shortValue } from '../catalogue.ts';
import { addressOf, type Cell, type CellAddress, type CellSide, cellKey, type Draft } from '../draft/draft.ts';
import type { BuiltExam } from '../draft/exam-of-draft.ts';
import { cellName, reasonWords } from '../recording/cell-state.ts';

export interface SheetCell {
  readonly text: string;
  readonly isAbnormal: boolean;
}

export interface SheetRow {
  readonly name: string;
  readonly right: SheetCell | undefined;
  readonly left: SheetCell | undefined;
  /** Of the midline, or where no side was stated. */
  readonly midline: SheetCell | undefined;
  readonly note: string;
}

export interface SheetSection {
  readonly label: string;
  readonly rows: readonly SheetRow[];
  /** What else was tested and had nothing abnormal, by the word for that: normal, absent, negative. */
  readonly others: readonly { readonly word: string; readonly names: readonly string[] }[];
}

interface Group {
  readonly item: Item;
  readonly name: string;
  readonly cells: ReadonlyMap<CellSide, Cell>;
  readonly addresses: readonly CellAddress[];
}

/** How many of the leading sites say which normal findings tell. */
const tellingSites = 2;

export function sheetSections(
  { cells, otherwiseNormal }: Draft,
  answer: LocalisationAnswer | undefined,
  built: BuiltExam,
  index: CatalogueIndex,
): readonly SheetSection[] {
  const telling = tellingCells(answer, built);
  return index.catalogue.sections.flatMap(({ section, label, items }) => {
    const groups = items.flatMap((item) => groupsOf(cells, section, item, index));
    const isShown = ({ item, cells: sides, addresses }: Group): boolean =>
      [...sides.values()].some((cell) => isAbnormal(item, cell)) ||
      (isTested(sides) && addresses.some((address) => telling.has(cellKey(address))));
    const rows = groups.filter(isShown).map(rowOf);
    const others = new Map<string, string[]>();
    const add = (word: string, name: string): void => {
      others.set(word, [...(others.get(word) ?? []), name]);
    };
    for (const group of groups) {
      if (!isShown(group) && isTested(group.cells)) add(normalWord(group.item), nameWithSide(group));
    }
    for (const { section: about, region, side } of otherwiseNormal) {
      const words = ['the rest', region?.replaceAll('-', ' '), side === 'both' ? undefined : side];
      if (about === section) add('normal', words.filter(Boolean).join(', '));
    }
    return rows.length === 0 && others.size === 0
      ? []
      : [{ label, rows, others: [...others].map(([word, names]) => ({ word, names })) }];
  });
}

/** A sign that was looked for and is not there is absent, and a test of provocation is negative. */
function normalWord({ normal }: Item): string {
  return normal.find((key) => key === 'absent' || key === 'negative') ?? 'normal';
}

function nameWithSide({ name, cells }: Group): string {
  const [only, ...others] = [...cells].filter(([, cell]) => cell.value !== undefined).map(([side]) => side);
  return others.length === 0 && only !== undefined && only !== 'midline' ? `${name} (${only})` : name;
}

export interface UntestedLine {
  readonly reason: string;
  readonly names: readonly string[];
}

/** What was not tested, by why. */
export function untestedLines({ cells, comaScale }: Draft, index: CatalogueIndex): readonly UntestedLine[] {
  const byReason = new Map<keyof typeof reasonWords, string[]>();
  const add = (reason: keyof typeof reasonWords, name: string): void => {
    byReason.set(reason, [...(byReason.get(reason) ?? []), name]);
  };
  for (const { section, items } of index.catalogue.sections) {
    for (const item of items) {
      for (const { name, cells: sides } of groupsOf(cells, section, item, index)) {
        const missing = [...sides].filter(([, cell]) => cell.notTested !== undefined);
        const reasons = new Set(missing.map(([, { notTested }]) => notTested));
        if (missing.length > 1 && reasons.size === 1) add(missing[0]?.[1].notTested ?? 'other', name);
        else {
          for (const [side, { notTested = 'other' }] of missing) {
            add(notTested, side === 'midline' ? name : `${name} (${side})`);
          }
        }
      }
    }
  }
  const { label, parts } = index.catalogue.comaScale;
  for (const part of parts) {
    const state = comaScale[part.key];
    if (state !== undefined && 'notTested' in state) add(state.notTested, `${label}, ${part.label.toLowerCase()}`);
  }
  return [...byReason].map(([reason, names]) => ({ reason: reasonWords[reason], names }));
}

/** "Glasgow coma scale: eye 4, verbal 5, motor 6, total 15"; undefined when it was not scored. */
export function comaLine({ comaScale, comaNote }: Draft, { catalogue }: CatalogueIndex): string | undefined {
  const scores = catalogue.comaScale.parts.flatMap(({ key }) => {
    const state = comaScale[key];
    return state !== undefined && 'score' in state ? [{ key, score: state.score }] : [];
  });
  if (scores.length === 0) return undefined;
  const isWhole = scores.length === catalogue.comaScale.parts.length;
  const total = isWhole ? `, total ${scores.reduce((sum, { score }) => sum + score, 0)}` : '';
  const note = comaNote === undefined ? '' : ` (${comaNote})`;
  return `${catalogue.comaScale.label}: ${scores.map(({ key, score }) => `${key} ${score}`).join(', ')}${total}${note}`;
}

function groupsOf(cells: Draft['cells'], section: string, item: Item, index: CatalogueIndex): readonly Group[] {
  const byPlace = new Map<string, { readonly address: CellAddress; readonly cell: Cell }[]>();
  for (const [key, cell] of Object.entries(cells)) {
    const address = addressOf(key);
    if (address.section !== section || address.item !== item.key) continue;
    if (cell.value === undefined && cell.notTested === undefined) continue;
    const place = `${address.place?.kind}:${address.place?.key}`;
    byPlace.set(place, [...(byPlace.get(place) ?? []), { address, cell }]);
  }
  return [...byPlace.values()].map((entries) => {
    const [first] = entries;
    return {
      item,
      name: cellName(item, first === undefined ? [] : [{ ...first.address, side: 'midline' }], index),
      cells: new Map(entries.map(({ address, cell }) => [address.side, cell])),
      addresses: entries.map(({ address }) => address),
    };
  });
}

function rowOf({ item, name, cells }: Group): SheetRow {
  const cellOn = (side: CellSide): SheetCell | undefined => {
    const cell = cells.get(side);
    if (cell === undefined) return undefined;
    if (cell.notTested !== undefined) return { text: `not tested (${reasonWords[cell.notTested]})`, isAbnormal: false };
    const text = cell.value === undefined ? '' : shortValue(item, cell.value).toLowerCase();
    return { text: cell.reinforced === true ? `${text} ʀ` : text, isAbnormal: isAbnormal(item, cell) };
  };
  const notes = new Set([...cells.values()].flatMap(({ note }) => (note === undefined ? [] : [note.trim()])));
  return {
    name,
    right: cellOn('right'),
    left: cellOn('left'),
    midline: cellOn('midline'),
    note: [...notes].join('; '),
  };
}

function isAbnormal(item: Item, { value }: Cell): boolean {
  return value !== undefined && !isNormalValue(item, value);
}

function isTested(cells: ReadonlyMap<CellSide, Cell>): boolean {
  return [...cells.values()].some(({ value }) => value !== undefined);
}

function tellingCells(answer: LocalisationAnswer | undefined, built: BuiltExam): ReadonlySet<string> {
  const evidence = (answer?.localisations ?? [])
    .slice(0, tellingSites)
    .flatMap(({ supporting, against }) => [...supporting, ...against]);
  return new Set(evidence.flatMap(({ finding }) => (built.cellsAt.get(finding) ?? []).map(cellKey)));
}
