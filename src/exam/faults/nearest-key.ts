import { distance } from 'fastest-levenshtein';
import { keysCalled, plainKey as plain, wordsBySynonym, wordsOfKind } from './trade-synonyms.ts';

/**
 * The known key that an unknown one was most likely meant to be, or undefined when none is near. In this order:
 * another name for it in the trade; a slip of one or two letters, or the same words in another order; most of its words
 * are words of one key and no other; at most a third of the letters differ.
 * Ties in letters go to the earlier key, so the answer does not depend on anything but the list.
 */
export function nearestKey(unknown: string, known: Iterable<string>): string | undefined {
  const wanted = plain(unknown);
  // A longer text cannot be a slip of the pen for any key, and the distance is quadratic in its length.
  if (wanted === '' || wanted.length > 80) return undefined;
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
  const words = tellingWords(wanted);
  const letters = lettersOf(words);
  const akin: string[] = [];
  for (const key of keys) {
    const candidate = tellingWords(plain(key));
    const common = lettersOf(candidate.filter((word) => words.includes(word)));
    const share = (2 * common) / (letters + lettersOf(candidate));
    if (share === 1) return [key];
    if (share >= leastShared) akin.push(key);
  }
  return akin;
}

function tellingWords(key: string): readonly string[] {
  const words = key.split('-').flatMap((word) => (wordsBySynonym.get(word) ?? word).split('-'));
  const telling = words.filter((word) => !wordsOfKind.has(word));
  return telling.length === 0 ? words : telling;
}

function lettersOf(words: readonly string[]): number {
  return words.reduce((sum, { length }) => sum + length, 0);
}

function sortedWords(key: string): string {
  return key.split('-').sort().join('-');
}
