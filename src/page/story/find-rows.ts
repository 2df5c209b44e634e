import type { CatalogueIndex } from '../catalogue.ts';
import { type HistoryList, historyLists } from '../draft/draft.ts';
import { tradeWords } from './trade-words.ts';

export type RowKind = HistoryList | 'results';

/** Something of the history, or a result, that can be looked for by typing. */
export interface Row {
  readonly kind: RowKind;
  readonly key: string;
  readonly label: string;
  /** Words of the label, then those of the key that the label has not. */
  readonly words: readonly string[];
  readonly initials: string;
  /** Words of its open codes, which often have the other country's spelling or the term of a textbook. */
  readonly codeWords: readonly string[];
}

/** Lead to the history of the family: "fh stroke". */
const familyWords = ['family', 'fh'];

/** Everything that the history can state, list by list, then every result. */
export function rowsOf({ catalogue }: CatalogueIndex): readonly Row[] {
  const rows = (kind: RowKind) =>
    (kind === 'results' ? catalogue.results : catalogue.history[kind]).map(({ key, label, codes }): Row => {
      const own = wordsOf(label);
      return {
        kind,
        key,
        label,
        words: [...new Set([...own, ...wordsOf(key), ...(kind === 'family' ? familyWords : [])])],
        initials: own.map(([first]) => first).join(''),
        codeWords: [...new Set(codes.flatMap(({ display }) => wordsOf(display)))],
      };
    });
  return [...historyLists, 'results' as const].flatMap(rows);
}

/**
 * The rows that a typed line may mean, best first: each typed word is the beginning of a word of the row's name, its
 * initials ("tia"), a word of the trade for it ("ck", "htn") or, last, a word of its open codes. British and American
 * spellings find the same. Only where nothing does, a word may have one wrong letter.
 */
export function findRows(line: string, rows: readonly Row[], limit: number): readonly Row[] {
  const tokens = wordsOf(line);
  if (tokens.length === 0) return [];
  const found = scored(rows, tokens, scoreOf);
  const all = found.length > 0 ? found : scored(rows, tokens, scoreOfMistyped);
  return all.slice(0, limit).map(({ row }) => row);
}

type Score = (token: string, row: Row) => number;

function scored(rows: readonly Row[], tokens: readonly string[], score: Score) {
  return rows
    .flatMap((row) => {
      const scores = tokens.map((token) => score(token, row));
      if (scores.some((one) => one === 0)) return [];
      // Of two names with the same words in them the shorter one is meant, and the person rather than the family.
      const total =
        scores.reduce((sum, one) => sum + one, 0) / scores.length -
        0.05 * row.words.length -
        (row.kind === 'family' ? 0.5 : 0);
      return [{ row, total }];
    })
    .sort((one, other) => other.total - one.total);
}

function scoreOf(token: string, row: Row): number {
  const exact = row.words.some((word) => fold(word) === fold(token)) ? 1 : 0;
  if (row.words.some((word) => begins(word, token))) return 3 + exact;
  if ((tradeWords[token] ?? []).some((phrase) => isNamedBy(row, phrase))) return 3.8;
  if (token.length >= 2 && token.length <= 5 && row.initials.includes(token)) {
    return row.initials === token ? 3.5 : 1.5;
  }
  return row.codeWords.some((word) => begins(word, token)) ? 1 : 0;
}

function isNamedBy(row: Row, phrase: string): boolean {
  return wordsOf(phrase).every((part) => row.words.some((word) => begins(word, part)));
}

function scoreOfMistyped(token: string, row: Row): number {
  const sound = scoreOf(token, row);
  if (sound > 0 || token.length < 5) return sound;
  return row.words.some((word) => isAlmost(fold(token), fold(word))) ? 0.5 : 0;
}

/** Whether one letter less, more, another, or two exchanged make the token the beginning of the word. */
function isAlmost(token: string, word: string): boolean {
  let same = 0;
  while (same < token.length && token[same] === word[same]) same += 1;
  const left = token.slice(same);
  const due = word.slice(same);
  const exchanged = `${left[1] ?? ''}${left[0] ?? ''}${left.slice(2)}`;
  return [due.slice(1).startsWith(left.slice(1)), due.startsWith(left.slice(1)), due.slice(1).startsWith(left)].some(
    Boolean,
  )
    ? true
    : due.startsWith(exchanged);
}

function begins(word: string, token: string): boolean {
  return word.startsWith(token) || fold(word).startsWith(fold(token));
}

/** One spelling for both sides of the Atlantic. */
function fold(word: string): string {
  return word
    .replaceAll(/[ao]e/g, 'e')
    .replaceAll('our', 'or')
    .replaceAll(/is(?=e|ing|ation)/g, 'iz')
    .replaceAll('lys', 'lyz')
    .replaceAll('ll', 'l');
}

function wordsOf(text: string): readonly string[] {
  return text
    .normalize('NFD')
    .replaceAll(/\p{Mn}/gu, '')
    .toLowerCase()
    .split(/[^a-z0-9]+/)
    .filter(Boolean);
}
