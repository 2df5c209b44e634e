import { distance } from 'fastest-levenshtein';

/**
 * The known key that an unknown one was most likely meant to be, or undefined when none is near.
 * Near means: at most a third of the letters differ, or the words are the same in another order or number.
 * Ties go to the earlier key, so the answer does not depend on anything but the list.
 */
export function nearestKey(unknown: string, known: Iterable<string>): string | undefined {
  const wanted = plain(unknown);
  // A longer text cannot be a slip of the pen for any key, and the distance is quadratic in its length.
  if (wanted === '' || wanted.length > 80) return undefined;
  const wantedWords = sortedWords(wanted);
  let best: string | undefined;
  let bestCost = Number.POSITIVE_INFINITY;
  for (const key of known) {
    const candidate = plain(key);
    const cost =
      candidate === wanted
        ? -1
        : Math.min(distance(wanted, candidate), 1 + distance(wantedWords, sortedWords(candidate)));
    const length = Math.max(wanted.length, candidate.length);
    // In a short code (L5, 4+) one letter makes another code: only its capitals may differ.
    const allowed = length < 4 ? 0 : Math.floor(length / 3);
    if (cost <= allowed && cost < bestCost) {
      best = key;
      bestCost = cost;
    }
  }
  return best;
}

function plain(key: string): string {
  return key
    .trim()
    .replaceAll(/([a-z])([A-Z])/g, '$1-$2')
    .toLowerCase()
    .replaceAll(/[\s_/]+/g, '-');
}

function sortedWords(key: string): string {
  return key.split('-').sort().join('-');
}
