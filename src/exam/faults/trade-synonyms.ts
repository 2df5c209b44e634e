import { type NamedList, namedLists, otherNamesOf, rowsOf } from '../catalogue/other-names.ts';

/** Other names of values and places, which the catalogue lists without any. */
const furtherNames: readonly (readonly [name: string, keys: readonly string[]])[] = [
  ['allodynia', ['increased']],
  ['Babinski', ['extensor']],
  ['cogwheel', ['rigid']],
  ['cogwheel rigidity', ['rigid']],
  ['downgoing', ['flexor']],
  ['hyperaesthesia', ['increased']],
  ['hypertonia', ['spastic']],
  ['hypotonia', ['reduced']],
  ['lead-pipe rigidity', ['rigid']],
  ['peroneal nerve', ['common-fibular-nerve', 'tinel-fibular-neck']],
  ['upgoing', ['extensor']],
];

/** A key with the list of the catalogue that it stands in; without one for values and places. */
export interface NamedKey {
  readonly key: string;
  readonly list?: NamedList;
}

/**
 * Keys by their labels and by what else clinicians call them, in the form of `nameKey`. They lead to a suggestion in a fault
 * and are never taken as keys: one thing has one key. Of several keys the first that can stand in the place is meant.
 */
let keysByName: ReadonlyMap<string, readonly NamedKey[]> | undefined;

function collect(): Map<string, NamedKey[]> {
  const keys = new Map<string, NamedKey[]>();
  const add = (name: string, key: NamedKey) => {
    const known = keys.get(nameKey(name));
    if (known === undefined) keys.set(nameKey(name), [key]);
    else known.push(key);
  };
  for (const list of namedLists) {
    for (const { key, label } of rowsOf(list)) {
      add(label, { key, list });
      for (const name of otherNamesOf(list, key)) add(name, { key, list });
    }
  }
  for (const [name, named] of furtherNames) for (const key of named) add(name, { key });
  return keys;
}

/** What a name of the trade stands for, in the order of the catalogue. */
export function keysCalled(name: string): readonly NamedKey[] {
  // Made by the first fault, so that the start of the service does not wait for it.
  keysByName ??= collect();
  return keysByName.get(nameKey(name)) ?? [];
}

/** The key of one list that the trade also calls so. */
export function keyCalledIn(list: NamedList, name: string): string | undefined {
  return keysCalled(name).find((one) => one.list === list)?.key;
}

/** A name in the form of a key and in one spelling for both sides of the Atlantic. */
export function nameKey(name: string): string {
  return plainKey(name).replaceAll(/[ao]e/g, 'e').replaceAll("'", '');
}

/** Any text in the form of a key. */
export function plainKey(text: string): string {
  return text
    .trim()
    .replaceAll(/([a-z])([A-Z])/g, '$1-$2')
    .toLowerCase()
    .replaceAll(/[\s_/]+/g, '-');
}

/** Words inside longer names for which the keys have another word. */
export const wordsBySynonym: ReadonlyMap<string, string> = new Map([
  ['atrophy', 'wasting'],
  ['dysphasia', 'aphasia'],
  ['hallux', 'great-toe'],
  ['peroneal', 'fibular'],
]);

/** Words that say what kind of thing a key names; with or without them it is the same thing. */
export const wordsOfKind: ReadonlySet<string> = new Set([
  'gait',
  'jerk',
  'nerve',
  'reflex',
  'response',
  'sensation',
  'sense',
  'sign',
  'test',
  'to',
  'walking',
]);
