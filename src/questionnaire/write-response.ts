import type { QuestionnaireResponse, QuestionnaireResponseItem, QuestionnaireResponseItemAnswer } from 'fhir/r4.js';
import type { Exam, ReferenceValue } from '../exam/exam.ts';
import { narrative, paragraph } from '../fhir/narrative.ts';
import { type ExamEntry, examEntries } from './exam-entries.ts';
import { examForm } from './exam-form.ts';
import { questionnaireUrl } from './form-index.ts';
import type { FormItem } from './form-item.ts';
import type { Json } from './json-object.ts';
import { answerElement } from './read-answer.ts';
import { statusOf } from './read-response.ts';

/**
 * The exam as the answers of its form. Read again it is the same exam: the same findings, history, statements and
 * results, though not in the same words where an exam may be written in several ways.
 * @param version that of the published Questionnaire; left open when undefined
 * @throws Error if the form cannot say something of the exam, which is a fault of the form
 */
export function questionnaireResponse(exam: Exam, version?: string): QuestionnaireResponse {
  const { identifier, subject, encounter, examinedAt } = exam;
  const [author, others] = authorOf(exam.performer);
  const entries = [...examEntries(exam), ...others.map((entry) => ({ list: ['performer'], entry: { ...entry } }))];
  const { person, onset, course } = exam;
  const head = { person, history: { onset, ...(course && { course }) } };
  const item = itemsOf(examForm, entries, head);
  return {
    resourceType: 'QuestionnaireResponse',
    text: narrative(paragraph(`Neurological examination of ${examinedAt}, ${exam.status}, as answers to its form.`)),
    ...(identifier && { identifier: { ...identifier } }),
    questionnaire: version === undefined ? questionnaireUrl : `${questionnaireUrl}|${version}`,
    status: responseStatus(exam),
    ...(subject && { subject: copy(subject) }),
    ...(encounter && { encounter: copy(encounter) }),
    authored: examinedAt,
    ...(author && { author: copy(author) }),
    ...(item.length > 0 && { item }),
  };
}

/** The first performer, where a response may have it as its author, and the rest. */
function authorOf(performer: Exam['performer']): readonly [ReferenceValue | undefined, readonly ReferenceValue[]] {
  const [first, ...rest] = performer;
  const type = first?.type ?? /(\w+)\/[^/]+$/.exec(first?.reference ?? '')?.[1];
  // R4 lets no care team be the author, and of a bare identifier nobody knows the type.
  return type === undefined || type === 'CareTeam' ? [undefined, performer] : [first, rest];
}

function copy({ identifier, ...rest }: ReferenceValue) {
  return { ...rest, ...(identifier && { identifier: { ...identifier } }) };
}

function responseStatus({ status }: Exam): QuestionnaireResponse['status'] {
  const [found] = [...statusOf].find(([, meant]) => meant === status) ?? ['completed'];
  return found as QuestionnaireResponse['status'];
}

function itemsOf(form: readonly FormItem[], entries: readonly ExamEntry[], head: Json): QuestionnaireResponseItem[] {
  const open = new Set(entries);
  // By list, and by list and each property, so that an item of the form need not look at every entry.
  const buckets = new Map<string, ExamEntry[]>();
  for (const one of entries) {
    const names = [bucketName(one.list), ...Object.entries(one.entry).map((pair) => bucketName(one.list, ...pair))];
    for (const name of names) {
      const bucket = buckets.get(name);
      if (bucket === undefined) buckets.set(name, [one]);
      else bucket.push(one);
    }
  }
  const items = level(form);
  if (open.size > 0) throw new Error(`the form has no place for ${open.size} statements of the exam`);
  return items;

  function level(form: readonly FormItem[]): QuestionnaireResponseItem[] {
    return form.flatMap((known) => {
      if (known.entry !== undefined) return together(known, entryItems(known));
      if (known.type === 'group') {
        const item = level(known.items ?? []);
        return item.length === 0 ? [] : [{ linkId: known.linkId, item }];
      }
      const object = (known.target ?? []).reduce<unknown>((at, step) => (at as Json | undefined)?.[step], head);
      const filled = filledQuestion(known, (object ?? {}) as Json, new Set());
      return filled === null ? [] : [filled];
    });
  }

  function entryItems(known: FormItem): QuestionnaireResponseItem[] {
    const { list, fixed } = known.entry ?? { list: [], fixed: {} };
    const [name] = Object.keys(fixed);
    return (buckets.get(bucketName(list, name, name && fixed[name])) ?? []).flatMap((one) => {
      if (!open.has(one)) return [];
      const filled = filledEntry(known, one);
      if (filled === null) return [];
      open.delete(one);
      return [filled];
    });
  }
}

function bucketName(list: readonly string[], property = '', value: unknown = ''): string {
  return [...list, property, String(value)].join('|');
}

/** A question that repeats is one item with several answers. */
function together(known: FormItem, items: QuestionnaireResponseItem[]): QuestionnaireResponseItem[] {
  if (known.type === 'group' || items.length < 2) return items;
  return [{ linkId: known.linkId, answer: items.flatMap(({ answer }) => answer ?? []) }];
}

/** An entry as this item, if the item can say all of it. */
function filledEntry(known: FormItem, { list, entry }: ExamEntry): QuestionnaireResponseItem | null {
  const wanted = known.entry;
  if (wanted === undefined || wanted.list.join('/') !== list.join('/')) return null;
  const fixed = Object.entries(wanted.fixed);
  if (!fixed.every(([name, value]) => entry[name] === value)) return null;
  if (known.type === 'reference') return { linkId: known.linkId, answer: [{ valueReference: entry }] };
  const said = new Set(fixed.map(([name]) => name));
  const filled = known.type === 'group' ? filledGroup(known, entry, said) : filledQuestion(known, entry, said);
  return filled !== null && said.size === Object.keys(entry).length ? filled : null;
}

function filledGroup({ linkId, items = [] }: FormItem, entry: Json, said: Set<string>): QuestionnaireResponseItem {
  return { linkId, item: items.map((one) => filledQuestion(one, entry, said)).filter((one) => one !== null) };
}

function filledQuestion(known: FormItem, object: Json, said: Set<string>): QuestionnaireResponseItem | null {
  const answer = answerOf(known, object, said);
  if (answer === null) return null;
  const item = (known.items ?? []).map((one) => filledQuestion(one, object, said)).filter((one) => one !== null);
  return { linkId: known.linkId, answer: [{ ...answer, ...(item.length > 0 && { item }) }] };
}

function answerOf(known: FormItem, object: Json, said: Set<string>): QuestionnaireResponseItemAnswer | null {
  if (known.type === 'group') return null;
  const option = known.options?.options.find(({ sets }) =>
    Object.entries(sets).every(([name, value]) => JSON.stringify(object[name]) === JSON.stringify(value)),
  );
  if (option !== undefined) {
    for (const name of Object.keys(option.sets)) said.add(name);
    const { system, code, display } = option;
    return { valueCoding: { system, code, display } };
  }
  const { property } = known;
  const value = property === undefined ? undefined : object[property];
  const isPart = typeof value === 'object' && known.type !== 'quantity';
  if (property === undefined || value === undefined || isPart) return null;
  said.add(property);
  return { [answerElement(known.type)]: value };
}
