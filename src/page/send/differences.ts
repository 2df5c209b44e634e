/** Where two records of one examination differ, in words, so that a reader can choose. */
import { type CatalogueIndex, fullValue } from '../catalogue.ts';
import { addressOf, type Cell, type Draft } from '../draft/draft.ts';
import { cellName, reasonWords } from '../recording/cell-state.ts';

export interface Difference {
  readonly what: string;
  readonly kept: string;
  readonly mine: string;
}

const nothing = 'not recorded';

export function differencesOf(kept: Draft, mine: Draft, index: CatalogueIndex): readonly Difference[] {
  const keys = [...new Set([...Object.keys(kept.cells), ...Object.keys(mine.cells)])];
  const cells = keys.flatMap((key) => {
    const address = addressOf(key);
    const item = index.item(address.section, address.item);
    if (item === undefined) return [];
    const words = (cell: Cell | undefined): string => cellWords(item, cell);
    const [there, here] = [words(kept.cells[key]), words(mine.cells[key])];
    return there === here ? [] : [{ what: cellName(item, [address], index), kept: there, mine: here }];
  });
  const others = otherParts.flatMap(({ what, of, words }) =>
    JSON.stringify(of(kept)) === JSON.stringify(of(mine)) ? [] : [{ what, kept: words(kept), mine: words(mine) }],
  );
  return [...cells, ...others];
}

function cellWords(item: Parameters<typeof fullValue>[0], cell: Cell | undefined): string {
  if (cell === undefined) return nothing;
  const state =
    cell.notTested !== undefined
      ? `not tested: ${reasonWords[cell.notTested]}`
      : cell.value === undefined
        ? nothing
        : fullValue(item, cell.value);
  return [state, cell.reinforced === true ? 'with reinforcement' : '', cell.note ?? ''].filter(Boolean).join('; ');
}

interface OtherPart {
  readonly what: string;
  readonly of: (draft: Draft) => unknown;
  readonly words: (draft: Draft) => string;
}

function part(what: string, of: (draft: Draft) => unknown, words?: (draft: Draft) => string): OtherPart {
  return { what, of, words: words ?? ((draft) => wordsOf(of(draft))) };
}

function wordsOf(value: unknown): string {
  if (value === undefined || value === '') return nothing;
  if (Array.isArray(value)) return value.length === 1 ? 'one entry' : `${value.length} entries`;
  if (typeof value === 'object' && value !== null) {
    const stated = Object.values(value).filter((one) => typeof one !== 'object');
    return stated.length === 0 ? nothing : stated.join(', ');
  }
  return String(value);
}

const otherParts: readonly OtherPart[] = [
  part('Status', ({ status }) => status),
  part('Person examined', ({ subject, carried }) => subject || carried?.subject),
  part('Stay or visit', ({ encounter, carried }) => encounter || carried?.encounter),
  part('Examiner', ({ performer, carried }) => performer || carried?.performer),
  part('Examined at', ({ examinedAt }) => examinedAt),
  part('Age and sex', ({ person }) => person),
  part('Onset and course', ({ onset, course }) => ({ ...onset, course })),
  part('History', ({ history }) => Object.values(history).flat()),
  part(
    'Coma scale',
    ({ comaScale, comaNote }) => ({ ...comaScale, comaNote }),
    ({ comaScale }) =>
      Object.entries(comaScale)
        .map(([key, state]) => `${key} ${'score' in state ? state.score : reasonWords[state.notTested]}`)
        .join(', ') || nothing,
  ),
  part(
    'The rest was normal',
    ({ otherwiseNormal }) => otherwiseNormal,
    ({ otherwiseNormal }) =>
      otherwiseNormal
        .map(({ section, region, side }) => [section, region, side].filter(Boolean).join(' '))
        .join('; ') || nothing,
  ),
  part('Results', ({ results }) => results),
  part(
    'Tests asked for',
    ({ requests }) => requests,
    ({ requests }) => requests?.join(', ') ?? 'all that are suggested',
  ),
];
