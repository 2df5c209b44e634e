import { mayBeEchoed } from '../exam/faults/echo.ts';
import { nearestKey } from '../exam/faults/nearest-key.ts';
import { pointerInto, pointerTo } from '../exam/faults/pointer.ts';
import type { Fault } from '../kernel/errors.ts';
import { byLinkId, linkIds, parentOf } from './form-index.ts';
import type { EntryOf, FormItem } from './form-item.ts';
import { isObject, type Json, unknownElements } from './json-object.ts';
import { readAnswer } from './read-answer.ts';

type Draft = Record<string, unknown>;

/** Where answers go: an object of the exam's JSON, and where in the response each of its properties came from. */
interface Place {
  readonly draft: Draft;
  readonly origins: Map<string, string>;
  /** Whether this is an entry of a list; otherwise it is the exam. */
  readonly isEntry: boolean;
}

export interface ItemsRead {
  readonly body: Draft;
  /** JSON Pointer into the exam to JSON Pointer into the response. */
  readonly origins: ReadonlyMap<string, string>;
  readonly faults: readonly Fault[];
}

/** Names are searched for so many unknown linkIds; each search goes over the whole form. */
const mostSuggestions = 20;

/**
 * The answers of a response as an exam's JSON. An entry with a fault is left out, so that what is missing of it is not
 * told as well.
 * @param into   what the elements of the response beside the items say, which is added to
 * @param origin the pointer of `items`
 */
export function readItems(form: readonly FormItem[], items: unknown, origin: string, into: Draft): ItemsRead {
  const faults: Fault[] = [];
  const exam: Place = { draft: into, origins: new Map(), isEntry: false };
  let suggestions = 0;
  readLevel(form, items, origin, exam);
  return { body: exam.draft, origins: exam.origins, faults };

  function readLevel(level: readonly FormItem[], sent: unknown, at: string, place: Place): number {
    if (sent === undefined) return 0;
    if (!Array.isArray(sent)) {
      faults.push({ pointer: at, code: 'WRONG_TYPE', message: 'Expected a list of items.' });
      return 0;
    }
    const seen = new Set<string>();
    let answered = 0;
    for (const [index, item] of sent.entries()) {
      const pointer = pointerInto(at, index);
      if (!isObject(item)) {
        faults.push({ pointer, code: 'WRONG_TYPE', message: 'Expected an item: an object with a `linkId`.' });
        continue;
      }
      const known = typeof item.linkId === 'string' ? byLinkId(level).get(item.linkId) : undefined;
      if (known === undefined) {
        faults.push(unknownLinkId(item.linkId, pointer));
        continue;
      }
      if (seen.has(known.linkId) && !(known.type === 'group' && known.repeats === true)) {
        const message = `'${known.linkId}' is there before: each question and group stands once.`;
        faults.push({ pointer, code: 'ONLY_ONE', message });
        continue;
      }
      seen.add(known.linkId);
      const taken = ['linkId', 'definition', 'text', 'id', 'extension', known.type === 'group' ? 'item' : 'answer'];
      faults.push(...unknownElements(item, taken, pointer));
      answered +=
        known.type === 'group' ? readGroup(known, item, pointer, place) : readQuestion(known, item, pointer, place);
    }
    return answered;
  }

  function readGroup(known: FormItem, item: Json, pointer: string, place: Place): number {
    const at = pointerInto(pointer, 'item');
    const { entry } = known;
    if (entry === undefined) return readLevel(known.items ?? [], item.item, at, place);
    const before = faults.length;
    const inner: Place = { draft: { ...entry.fixed }, origins: new Map(), isEntry: true };
    const answered = readLevel(known.items ?? [], item.item, at, inner);
    if (answered > 0) requireAnswers(known, item, pointer);
    if (answered > 0 && faults.length === before) addEntry(entry.list, inner.draft, inner.origins, pointer);
    return answered;
  }

  function requireAnswers(known: FormItem, item: Json, pointer: string): void {
    const given = new Set((item.item as readonly unknown[]).map((one) => isObject(one) && one.linkId));
    for (const { linkId, text, required } of known.items ?? []) {
      if (required !== true || given.has(linkId)) continue;
      const message = `Where anything of '${known.linkId}' is answered, '${linkId}' (${text}) must be too.`;
      faults.push({ pointer, code: 'REQUIRED', message, suggestion: linkId });
    }
  }

  function readQuestion(known: FormItem, item: Json, pointer: string, place: Place): number {
    if (item.answer === undefined) return 0;
    const at = pointerInto(pointer, 'answer');
    if (!Array.isArray(item.answer) || item.answer.length === 0) {
      faults.push({
        pointer: at,
        code: 'WRONG_TYPE',
        message: 'Expected a list with an answer; leave it out for none.',
      });
      return 0;
    }
    const [, second] = item.answer;
    if (second !== undefined && known.repeats !== true) {
      const message = `'${known.linkId}' takes one answer.`;
      faults.push({ pointer: pointerInto(at, 1), code: 'ONLY_ONE', message });
      return 1;
    }
    const isSeveral = item.answer.length > 1;
    for (const [index, answer] of item.answer.entries()) {
      readOne(known, answer, pointerInto(at, index), { pointer, place, isSeveral });
    }
    return item.answer.length;
  }

  function readOne(
    known: FormItem,
    answer: unknown,
    at: string,
    { pointer, place, isSeveral }: { readonly pointer: string; readonly place: Place; readonly isSeveral: boolean },
  ): void {
    const before = faults.length;
    const { entry, property } = known;
    const read = readAnswer(known, answer, at);
    faults.push(...read.faults);
    const inner: Place = entry === undefined ? place : { draft: { ...entry.fixed }, origins: new Map(), isEntry: true };
    const isWhole = entry !== undefined && property === undefined && known.options === undefined;
    if (read.faults.length === 0 && !isWhole) {
      const sets = read.option?.sets ?? { [property ?? '']: read.value };
      setProperties(sets, known.target ?? [], read.pointer, inner);
    }
    if (isObject(answer)) readLevel(known.items ?? [], answer.item, pointerInto(at, 'item'), inner);
    if (entry === undefined || faults.length > before) return;
    if (entry.bare !== undefined) addBare(entry, entry.bare, inner.draft, read.pointer, isSeveral);
    else if (isWhole) addEntry(entry.list, read.value, new Map(), read.pointer);
    else addEntry(entry.list, inner.draft, inner.origins, pointer);
  }

  function setProperties(sets: Json, target: readonly string[], pointer: string, place: Place): void {
    const object = place.isEntry ? place.draft : objectAt(place.draft, target);
    for (const [name, value] of Object.entries(sets)) {
      if (Object.hasOwn(object, name)) {
        faults.push({ pointer, code: 'ONLY_ONE', message: `Another answer says \`${name}\` already.` });
      } else object[name] = value;
      place.origins.set(pointerTo(...(place.isEntry ? [] : target), name), pointer);
    }
  }

  /** An entry that is a text, or the answer that there is none, which cannot be one of several. */
  function addBare({ list }: EntryOf, property: string, said: Draft, pointer: string, isSeveral: boolean): void {
    const value = said[property];
    if (value !== undefined) addEntry(list, value, new Map(), pointer);
    else if (isSeveral) {
      faults.push({ pointer, code: 'ONLY_ONE', message: 'This answer means none, so it stands alone.' });
    } else listAt(list);
  }

  function listAt(list: readonly string[]): unknown[] {
    const [last = '', ...above] = [...list].reverse();
    const object = objectAt(exam.draft, above.reverse());
    object[last] ??= [];
    return object[last] as unknown[];
  }

  function addEntry(
    list: readonly string[],
    entry: unknown,
    inner: ReadonlyMap<string, string>,
    pointer: string,
  ): void {
    const entries = listAt(list);
    const at = pointerTo(...list, entries.length);
    entries.push(entry);
    exam.origins.set(at, pointer);
    for (const [name, from] of inner) exam.origins.set(`${at}${name}`, from);
  }

  function unknownLinkId(linkId: unknown, pointer: string): Fault {
    const at = pointerInto(pointer, 'linkId');
    if (typeof linkId !== 'string') {
      return { pointer: at, code: 'REQUIRED', message: 'An item has a `linkId`, a text.', suggestion: 'linkId' };
    }
    const parent = parentOf(linkId);
    if (parent !== undefined) {
      const where = parent === null ? 'at the top' : `in '${parent}'`;
      return { pointer: at, code: 'WRONG_SECTION', message: `'${linkId}' stands ${where}, not here.` };
    }
    suggestions += 1;
    const suggestion = suggestions > mostSuggestions ? undefined : nearestKey(linkId, linkIds);
    const what = mayBeEchoed(linkId) ? `No such linkId '${linkId}'.` : 'No such linkId.';
    const hint =
      suggestion === undefined ? 'The Questionnaire lists those that there are.' : `Did you mean '${suggestion}'?`;
    return {
      pointer: at,
      code: 'UNKNOWN_KEY',
      message: `${what} ${hint}`,
      ...(suggestion === undefined ? {} : { suggestion }),
    };
  }
}

function objectAt(root: Draft, steps: readonly string[]): Draft {
  return steps.reduce<Draft>((object, step) => {
    object[step] ??= {};
    return object[step] as Draft;
  }, root);
}
