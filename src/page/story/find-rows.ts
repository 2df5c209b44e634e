import type { HistoryEntry, Keyed, Result } from '../../client/generated/api-types.ts';
import type { CatalogueIndex } from '../catalogue.ts';
import { type HistoryList, historyLists } from '../draft/draft.ts';
import { tradeWords } from './trade-words.ts';

export type RowKind = HistoryList | 'results';

/** Something of the history, or a result, that can be looked for by typing. */
export interface Row {
  readonly kind: RowKind;
  readonly key: string;
  readonly label: string;
  /** Words of the label, the key and the other names, each in the spelling it has and in one for both sides of the Atlantic. */
  readonly words: readonly string[];
  readonly length: number;
  readonly initials: string;
  /** Words of its open codes, which often have the other country's spelling or the term of a textbook. */
  readonly codeWords: readonly string[];
  /** What a result that is read, not measured, may be. */
  readonly values?: readonly Value[];
}

export interface Value {
  readonly key: string;
  readonly label: string;
  readonly words: readonly string[];
}

/** Lead to the history of the family: "fh stroke". */
const familyWords = ['family', 'fh'];

/** Everything that the history can state, list by list, then every result. */
export function rowsOf({ catalogue }: CatalogueIndex): readonly Row[] {
  const rows = (kind: RowKind) =>
    (kind === 'results' ? catalogue.results : catalogue.history[kind]).map((row): Row => {
      const { key, label, otherNames = [], codes } = row;
      const { values } = row as Result | (HistoryEntry & { readonly values?: undefined });
      const own = wordsOf(label);
      return {
        kind,
        key,
        label,
        words: inBothSpellings([
          ...own,
          ...[key, ...otherNames].flatMap(wordsOf),
          ...(kind === 'family' ? familyWords : []),
        ]),
        length: own.length,
        initials: own.map(([first]) => first).join(''),
        codeWords: inBothSpellings(codes.flatMap(({ display }) => wordsOf(display))),
        ...(values && { values: values.map(readValue) }),
      };
    });
  return [...historyLists, 'results' as const].flatMap(rows);
}

function readValue(value: Keyed): Value {
  const { key, label } = value;
  return { key, label, words: inBothSpellings([...wordsOf(label), ...wordsOf(key)]) };
}

/** The value that the words name, each by the beginning of one of its words. */
export function findValue(line: string, values: readonly Value[]): Value | undefined {
  const tokens = wordsOf(line);
  if (tokens.length === 0) return undefined;
  const named = values.filter(({ words }) =>
    tokens.every((token) => words.some((word) => word.startsWith(token) || word.startsWith(fold(token)))),
  );
  return named.find(({ words }) => words.length === tokens.length) ?? named[0];
}

/** A typed word. */
interface Token {
  readonly typed: string;
  readonly folded: string;
  /** What else the trade says for it, as beginnings of words that have to be there together. */
  readonly phrases: readonly (readonly string[])[];
}

/**
 * The rows that a typed line may mean, best first: each typed word is the beginning of a word of the row's name, its
 * initials ("tia"), a word of the trade for it ("ck", "htn") or, last, a word of its open codes. British and American
 * spellings find the same. Only where nothing does, a word may have one wrong letter.
 */
export function findRows(line: string, rows: readonly Row[], limit: number): readonly Row[] {
  const tokens = wordsOf(line).map(
    (typed): Token => ({ typed, folded: fold(typed), phrases: (tradeWords[typed] ?? []).map(wordsOf) }),
  );
  if (tokens.length === 0) return [];
  const found = scored(rows, tokens, scoreOf);
  const all = found.length > 0 ? found : scored(rows, tokens, scoreOfMistyped);
  return all.slice(0, limit).map(({ row }) => row);
}

function scored(rows: readonly Row[], tokens: readonly Token[], score: (token: Token, row: Row) => number) {
  return rows
    .flatMap((row) => {
      let total = 0;
      for (const token of tokens) {
        const one = score(token, row);
        if (one === 0) return [];
        total += one / tokens.length;
      }
      // Of two names with the same words in them the shorter one is meant, and the person rather than the family.
      return [{ row, total: total - 0.05 * row.length - (row.kind === 'family' ? 0.5 : 0) }];
    })
    .sort((one, other) => other.total - one.total);
}

function scoreOf({ typed, folded, phrases }: Token, { words, initials, codeWords }: Row): number {
  if (words.includes(typed) || words.includes(folded)) return 4;
  const begins = (word: string): boolean => word.startsWith(typed) || word.startsWith(folded);
  if (words.some(begins)) return 3;
  if (phrases.some((phrase) => phrase.every((part) => words.some((word) => word.startsWith(part))))) return 3.8;
  if (typed.length >= 2 && typed.length <= 5 && initials.includes(typed)) return initials === typed ? 3.5 : 1.5;
  return codeWords.some(begins) ? 1 : 0;
}

function scoreOfMistyped(token: Token, row: Row): number {
  const sound = scoreOf(token, row);
  if (sound > 0 || token.typed.length < 5) return sound;
  return row.words.some((word) => isAlmost(token.folded, word)) ? 0.5 : 0;
}

/** Whether one letter less, more, another, or two exchanged make the token the beginning of the word. */
function isAlmost(token: string, word: string): boolean {
  let same = 0;
  while (same < token.length && token[same] === word[same]) same += 1;
  const left = token.slice(same);
  const due = word.slice(same);
  const exchanged = `${left[1] ?? ''}${left[0] ?? ''}${left.slice(2)}`;
  return (
    due.slice(1).startsWith(left.slice(1)) ||
    due.startsWith(left.slice(1)) ||
    due.slice(1).startsWith(left) ||
    due.startsWith(exchanged)
  );
}

function inBothSpellings(words: readonly string[]): readonly string[] {
  return [...new Set(words.flatMap((word) => [word, fold(word)]))];
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
