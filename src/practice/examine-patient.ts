import { itemId, type SectionKey } from '../exam/catalogue/item.ts';
import { describeFinding, describePlace, lowerFirst } from '../exam/describe.ts';
import type { Exam } from '../exam/exam.ts';
import type { FindingPlace } from '../exam/finding.ts';
import { columnName } from '../localisation/inference/columns.ts';
import type { ProbeTarget } from '../localisation/observation/probe-models.ts';
import { entryOf, type Found } from '../simulation/bedside.ts';
import type { AskedItem, AskedTarget, placeProperties } from './asked-items.ts';
import { type PracticePatient, sectionsOf } from './patient.ts';

/** What was found of one item on one side. */
export interface ShownFinding {
  /** JSON Pointer of the item that asked for it. */
  readonly pointer: string;
  readonly item: string;
  readonly section: SectionKey;
  /** In words: "left ankle dorsiflexion 3/5". */
  readonly text: string;
  /** As an exam has it. */
  readonly finding: Readonly<Record<string, unknown>>;
}

/** An item of which the model cannot say what would be found. */
export interface Unanswered {
  readonly pointer: string;
  readonly item: string;
  readonly text: string;
  readonly because: string;
}

export interface Examined {
  readonly shown: readonly ShownFinding[];
  readonly unanswered: readonly Unanswered[];
  /** All that was shown, as the findings of an exam. */
  readonly findings: Partial<Record<SectionKey, readonly Record<string, unknown>[]>>;
}

const notModelled =
  'The model draws nothing from this item, so nothing can be said of it here: it is neither normal nor abnormal.';

export function examinePatient(patient: PracticePatient, asked: readonly AskedTarget[]): Examined {
  const found: { readonly pointer: string; readonly one: Found }[] = [];
  const unanswered: Unanswered[] = [];
  for (const { pointer, target } of asked) {
    const one = patient.find(target);
    if (one === null) unanswered.push({ pointer, ...named(target), because: notModelled });
    else found.push({ pointer, one });
  }
  const all = found.map(({ one }) => one);
  const words = wordsOf(patient.examOf(all));
  return {
    shown: found.map(({ pointer, one }) => ({
      pointer,
      item: itemId(one.target.item),
      section: one.target.item.section,
      text: words.get(columnName(one.target)) ?? '',
      finding: entryOf(one),
    })),
    unanswered,
    findings: sectionsOf(all),
  };
}

/** Every finding of an exam in words, by the name of its item, place and side. */
export function wordsOf(exam: Exam): ReadonlyMap<string, string> {
  return new Map(exam.findings.map((finding) => [columnName(finding), describeFinding(finding)]));
}

function named(target: ProbeTarget): { readonly item: string; readonly text: string } {
  const { item, side, place } = target;
  const where =
    place === undefined
      ? side === 'midline'
        ? ''
        : ` on the ${side}`
      : ` ${describePlace(place as FindingPlace, side)}`;
  return { item: itemId(item), text: `${lowerFirst(item.label)}${where}` };
}

/** An item as it is asked for. */
export function askedFor({ item, side, place }: ProbeTarget): AskedItem {
  return {
    item: itemId(item),
    ...(side === 'midline' ? {} : { side }),
    ...(place === undefined ? {} : { [propertyOf(place.kind)]: place.key }),
  };
}

function propertyOf(kind: string): (typeof placeProperties)[number] {
  return kind === 'dermatome' || kind === 'territory' ? kind : 'site';
}
