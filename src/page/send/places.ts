/** From what the service says to where it is mended on this page. */
import type { CatalogueIndex } from '../catalogue.ts';
import type { CellAddress } from '../draft/draft.ts';
import type { BuiltExam } from '../draft/exam-of-draft.ts';
import { leadOf } from '../reasoning/lead-to-record.ts';
import { cellName } from '../recording/cell-state.ts';
import { partsOf, partWith } from '../recording/parts.ts';
import { hrefOf } from '../view.ts';

export type FieldName = 'subject' | 'encounter' | 'performer' | 'status' | 'examinedAt' | 'requests';

/** A field of this view, cells of the record, or another view. */
export type Place =
  | { readonly kind: 'field'; readonly field: FieldName; readonly label: string }
  | { readonly kind: 'cells'; readonly addresses: readonly CellAddress[]; readonly label: string }
  | { readonly kind: 'view'; readonly href: string; readonly label: string };

export const fieldLabels: Readonly<Record<FieldName, string>> = {
  subject: 'Person examined',
  encounter: 'Stay or visit',
  performer: 'Examiner',
  status: 'Status',
  examinedAt: 'Examined at',
  requests: 'Tests to propose',
};

/** @param pointer JSON Pointer into the exam that was sent; undefined or empty for the exam as a whole */
export function placeAt(pointer: string | undefined, built: BuiltExam, index: CatalogueIndex): Place | undefined {
  const [, top = '', second = ''] = (pointer ?? '').split('/');
  if (top in fieldLabels) {
    const field = top as FieldName;
    return { kind: 'field', field, label: fieldLabels[field] };
  }
  const lead = leadOf(pointer ?? '', built);
  if (lead.kind === 'cell') {
    const [first] = lead.addresses;
    const item = first && index.item(first.section, first.item);
    return item && { kind: 'cells', addresses: lead.addresses, label: cellName(item, lead.addresses, index) };
  }
  if (lead.view === 'story') return storyPlace(lead.detail);
  if (top === 'findings') return sectionPlace(second, index);
  if (top === 'otherwiseNormal') {
    const statements = (built.exam.otherwiseNormal ?? []) as readonly { readonly section: string }[];
    return sectionPlace(statements[Number(second)]?.section ?? '', index);
  }
  return undefined;
}

/** What a REQUIRED fault of the whole exam is about stands in its words only. */
export function fieldIn(message: string): FieldName | undefined {
  const name = /^`(\w+)`/.exec(message)?.[1];
  return name !== undefined && name in fieldLabels ? (name as FieldName) : undefined;
}

function storyPlace(detail?: string): Place {
  return { kind: 'view', href: hrefOf('story', detail), label: 'History, results' };
}

function sectionPlace(section: string, index: CatalogueIndex): Place | undefined {
  const item = index.section(section)?.items[0];
  const part = item && partWith(partsOf(index), section, item.key);
  return part && { kind: 'view', href: hrefOf('examine', part.key), label: part.label };
}

/** Words that say nothing about where. */
const idleWords = new Set([
  'the',
  'and',
  'for',
  'with',
  'was',
  'were',
  'not',
  'function',
  'examined',
  'tested',
  'asked',
]);

/**
 * Where something that was not examined would be recorded, going by its words ("plantar responses were not tested"): the
 * item, result or section whose name shares most of them.
 */
export function placeOfWords(text: string, index: CatalogueIndex): Place | undefined {
  const [what = text] = text.split(/ (?:was|were|has|have|is|are) /);
  const wanted = stems(what);
  if (wanted.length === 0) return undefined;
  const { sections, results, history } = index.catalogue;
  const candidates: readonly (readonly [name: string, place: (isWhole: boolean) => Place | undefined])[] = [
    ...sections.flatMap(({ section, label, items }) =>
      items.flatMap((item) => {
        const place = (isWhole: boolean): Place | undefined => {
          // An item that needs a place has no cell of its own, and a name that says more than was meant is not the one.
          if (!isWhole || section === 'sensation' || item.siteRequired === true) return sectionPlace(section, index);
          const side = item.sides === 'midline' ? 'midline' : 'right';
          return { kind: 'cells', addresses: [{ section, item: item.key, side }], label: item.label };
        };
        const names = items.length === 1 ? [item.label, label] : [item.label];
        return names.map((name) => [name, place] as const);
      }),
    ),
    ...sections.map(({ section, label }) => [label, () => sectionPlace(section, index)] as const),
    ...[...results, ...history.symptoms].map(({ label }) => [label, () => storyPlace()] as const),
    ...personWords.map((words) => [words, () => storyPlace('person')] as const),
  ];
  let best: { readonly score: number; readonly place: Place | undefined } | undefined;
  for (const [name, place] of candidates) {
    const have = stems(name);
    const shared = wanted.filter((stem) => have.includes(stem)).length;
    // Among names that share as much, the one with fewest other words is meant.
    const score = shared - have.length / 100;
    if (shared > 0 && (best === undefined || score > best.score))
      best = { score, place: place(have.length === shared) };
  }
  return best?.place;
}

/** What the history asks of the person and of time, in the words of those who miss it. */
const personWords = ['time of onset', 'pace of onset', 'onset', 'course', 'age', 'sex'];

function stems(words: string): readonly string[] {
  return words
    .toLowerCase()
    .split(/[^a-z]+/)
    .filter((word) => word.length > 2 && !idleWords.has(word))
    .map((word) => word.replace(/(es|s)$/, ''));
}
