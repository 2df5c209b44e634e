import { distance } from 'fastest-levenshtein';
import { remembered } from '../../kernel/remembered.ts';
import { joinWords } from '../../kernel/words.ts';
import { type NamedList, namedLists, otherNamesOf, rowsOf } from '../catalogue/other-names.ts';
import { keysCalled, plainKey as plain, wordsBySynonym, wordsOfKind } from './trade-synonyms.ts';

/** A longer text cannot be a slip of the pen for any key, and the distance is quadratic in its length. */
const longestKey = 80;

/**
 * The known key that an unknown one was most likely meant to be, or undefined when none is near. In this order:
 * another name for it in the trade; a slip of one or two letters, or the same words in another order; most of its words
 * are words of one key and no other; at most a third of the letters differ.
 * Ties in letters go to the earlier key, so the answer does not depend on anything but the list.
 */
export function nearestKey(unknown: string, known: Iterable<string>): string | undefined {
  const wanted = plain(unknown);
  if (wanted === '' || wanted.length > longestKey) return undefined;
  const keys = [...known];
  const synonym = keysCalled(unknown).find(({ key }) => keys.includes(key))?.key;
  if (synonym !== undefined) return synonym;
  const near = nearestByLetters(wanted, keys);
  if (near !== undefined && near.cost <= slip) return near.key;
  const akin = keysByWords(wanted, keys);
  if (akin.length === 1) return akin[0];
  // A single word that stands in several keys points to none of them.
  return akin.length > 0 && tellingWords(wanted).length === 1 ? undefined : near?.key;
}

/**
 * The one key of a list of the catalogue whose label, or what else clinicians call it, has most of the words of an unknown
 * name (`broad-based` is a broad-based ataxic gait), or undefined when there is none or more than one.
 */
export function keyWordedLike(unknown: string, list: NamedList): string | undefined {
  if (unknown.length > longestKey) return undefined;
  const key = withoutValue(plain(unknown));
  if (key === '') return undefined;
  const wanted = inWords(key);
  const named = namesOf(list);
  const same = named.find(({ names }) => names.some(({ sorted }) => sorted === wanted.sorted));
  if (same !== undefined) return same.key;
  const akin = named.filter(({ names }) => names.some((name) => sharedBy(wanted, name) >= leastShared));
  return akin.length === 1 ? akin[0]?.key : undefined;
}

/** More keys than these are no help to whoever looks for one. */
const mostNamed = 6;

/** The keys of which a general name has left the kind open (`aphasia` is expressive, receptive or global); empty where it is one key, none or too many. */
export function kindsOf(unknown: string, known: Iterable<string>): readonly string[] {
  if (unknown.length > longestKey) return [];
  const wanted = plain(unknown).split('-').filter(Boolean).map(inOurWord);
  if (wanted.length === 0) return [];
  const keys = [...known];
  if (keysCalled(unknown).some(({ key }) => keys.includes(key))) return [];
  const kinds = keys.filter((key) => {
    const words = plain(key).split('-');
    return wanted.every((word) => words.includes(word));
  });
  return kinds.length > 1 && kinds.length <= mostNamed ? kinds : [];
}

/** The keys that an unknown one may have meant: the kinds of a general name, else the nearest one, or none. */
export function keysMeant(unknown: string, known: Iterable<string>): readonly string[] {
  const keys = [...known];
  const kinds = kindsOf(unknown, keys);
  if (kinds.length > 0) return kinds;
  const near = nearestKey(unknown, keys);
  return near === undefined ? [] : [near];
}

/** The question which of these keys was meant. */
export function whichOf(keys: readonly string[]): string {
  return `Did you mean ${joinWords(
    keys.map((key) => `'${key}'`),
    'or',
  )}?`;
}

/** What each key of a list is called, taken apart by the first fault that asks for it. */
const namesOf = remembered(namedLists.length, (list: NamedList) =>
  rowsOf(list).map(({ key, label }) => ({
    key,
    names: [label, ...otherNamesOf(list, key)].map((name) => inWords(plain(name.replaceAll(/[(),;]/g, '')))),
  })),
);

/** What was found, not what was examined: a brisk jaw jerk is the jaw jerk. */
const wordsOfValue: ReadonlySet<string> = new Set([
  'absent',
  'bilateral',
  'brisk',
  'decreased',
  'diminished',
  'exaggerated',
  'increased',
  'left',
  'negative',
  'normal',
  'positive',
  'right',
  'unilateral',
]);

function withoutValue(key: string): string {
  return key
    .split('-')
    .filter((word) => !wordsOfValue.has(word))
    .join('-');
}

/** Whether a name is a key but for letters that a hand may get wrong. */
export function isSlipOf(unknown: string, key: string): boolean {
  return distance(plain(unknown), plain(key)) <= slip;
}

/** Letters that a hand may get wrong without another word being meant. */
const slip = 2;

function nearestByLetters(wanted: string, keys: readonly string[]): { key: string; cost: number } | undefined {
  const wantedWords = sortedWords(wanted);
  let best: { key: string; cost: number } | undefined;
  for (const key of keys) {
    const candidate = plain(key);
    const cost =
      candidate === wanted
        ? -1
        : Math.min(distance(wanted, candidate), 1 + distance(wantedWords, sortedWords(candidate)));
    const length = Math.max(wanted.length, candidate.length);
    // In a short code (L5, 4+) one letter makes another code: only its capitals may differ.
    const allowed = length < 4 ? 0 : Math.floor(length / 3);
    if (cost <= allowed && (best === undefined || cost < best.cost)) best = { key, cost };
  }
  return best;
}

/** Least share of the letters of both keys that lie in common words. Judged. */
const leastShared = 0.6;

/** The keys that share most of their words with the wanted one; only one where it has the very same words. */
function keysByWords(wanted: string, keys: readonly string[]): readonly string[] {
  const words = inWords(wanted);
  const akin: string[] = [];
  for (const key of keys) {
    const share = sharedBy(words, wordsOfKey(key));
    if (share === 1) return [key];
    if (share >= leastShared) akin.push(key);
  }
  return akin;
}

/** A name by its words: those that tell it from others with their letters, and all of them in order. */
interface InWords {
  readonly telling: readonly string[];
  readonly letters: number;
  readonly sorted: string;
}

function inWords(key: string): InWords {
  const telling = tellingWords(key);
  return { telling, letters: lettersOf(telling), sorted: sortedWords(key) };
}

/** More keys than any list has, so that a body of faults takes each of them apart once. */
const mostKeys = 4096;
const wordsOfKey = remembered(mostKeys, (key: string) => inWords(plain(key)));

/** Share of the letters of both that lie in words that they have in common. */
function sharedBy(wanted: InWords, candidate: InWords): number {
  const common = lettersOf(candidate.telling.filter((word) => wanted.telling.includes(word)));
  return (2 * common) / (wanted.letters + candidate.letters);
}

const inOurWord = (word: string): string => wordsBySynonym.get(word) ?? word;

function tellingWords(key: string): readonly string[] {
  const words = key.split('-').flatMap((word) => inOurWord(word).split('-'));
  const telling = words.filter((word) => !wordsOfKind.has(word));
  return telling.length === 0 ? words : telling;
}

function lettersOf(words: readonly string[]): number {
  return words.reduce((sum, { length }) => sum + length, 0);
}

function sortedWords(key: string): string {
  return key.split('-').sort().join('-');
}
