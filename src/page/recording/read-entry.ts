import type { Item } from '../../client/generated/api-types.ts';
import { type CatalogueIndex, valuesOf } from '../catalogue.ts';
import type { CellAddress, CellSide, NotTestedReason } from '../draft/draft.ts';
import { reasonWords } from './cell-state.ts';

/** One thing that a typed line may mean. */
export interface Reading {
  readonly item: Item;
  readonly addresses: readonly CellAddress[];
  readonly value?: string | number;
  readonly notTested?: NotTestedReason;
  readonly reinforced?: boolean;
  /** What stood after a semicolon. */
  readonly note?: string;
}

export interface Candidate {
  readonly section: string;
  readonly item: Item;
  readonly place?: NonNullable<CellAddress['place']>;
  /** What the item is called, in small letters, the words of its own name first. */
  readonly words: readonly string[];
  readonly ownWords: number;
  readonly isRoutine: boolean;
}

const sideNames: Readonly<Record<string, readonly CellSide[]>> = {
  l: ['left'],
  lt: ['left'],
  left: ['left'],
  r: ['right'],
  rt: ['right'],
  right: ['right'],
  b: ['right', 'left'],
  both: ['right', 'left'],
  bilateral: ['right', 'left'],
};

/** What else examiners call things, and the words of the catalogue for it. Common practice. */
const tradeWords: Readonly<Record<string, readonly string[]>> = {
  jerk: ['reflex'],
  jps: ['joint'],
  strength: ['power'],
  palsy: ['weakness'],
  fecal: ['faecal'],
  faecal: ['fecal'],
};

/** Everything that can be recorded, with each place where it can be, by name. */
export function candidatesOf(index: CatalogueIndex): readonly Candidate[] {
  const { dermatomes, landmarks, territories, levels } = index.catalogue.places;
  const skin: readonly NonNullable<CellAddress['place']>[] = [
    ...landmarks.map(({ key }) => ({ kind: 'site' as const, key })),
    ...dermatomes.map(({ key }) => ({ kind: 'dermatome' as const, key })),
    ...territories.map(({ key }) => ({ kind: 'territory' as const, key })),
    ...levels.map((key) => ({ kind: 'levelBelow' as const, key })),
  ];
  return index.catalogue.sections.flatMap(({ section, label, itemProperty, items }) =>
    items.flatMap((item) => {
      const places =
        itemProperty === 'modality' ? skin : (item.sites ?? []).map((key) => ({ kind: 'site' as const, key }));
      const isRoutine = index.isRoutine(item.id);
      const own = wordsOf(item.label);
      const candidate = (place?: NonNullable<CellAddress['place']>): Candidate => ({
        section,
        item,
        ...(place && { place }),
        ...namesOf(own, place === undefined ? [] : wordsOf(index.placeLabel(place.kind, place.key)), [
          ...wordsOf(item.key),
          ...(item.otherNames ?? []).flatMap(wordsOf),
          ...(place === undefined ? [] : wordsOf(place.key)),
          ...wordsOf(label),
        ]),
        isRoutine,
      });
      const needsPlace = itemProperty === 'modality' || item.siteRequired === true;
      return [...(needsPlace ? [] : [candidate()]), ...places.map(candidate)];
    }),
  );
}

/** Its label and that of its place, then what else it may be called: its keys, other names and section. */
function namesOf(
  own: readonly string[],
  place: readonly string[],
  others: readonly string[],
): Pick<Candidate, 'words' | 'ownWords'> {
  const named = [...own, ...place];
  return { words: [...named, ...others.filter((word) => !named.includes(word))], ownWords: named.length };
}

function wordsOf(text: string): readonly string[] {
  return text
    .toLowerCase()
    .split(/[^a-z0-9+]+/)
    .filter(Boolean);
}

/**
 * What a line such as "ankle dorsi left 4-", "plantar r ext" or "pin L5 both reduced" may mean, best first: beginnings of
 * words name the item and its place, `l`, `r`, `both` the side, a grade or the beginning of a value what was found, `nt` with
 * a reason that it was not tested, `reinf` that a reflex came with reinforcement; what follows a semicolon is a note. Without a
 * value the line only leads to the item.
 */
export function readEntry(line: string, candidates: readonly Candidate[], limit: number): readonly Reading[] {
  const semicolon = line.indexOf(';');
  const note = semicolon < 0 ? '' : line.slice(semicolon + 1).trim();
  const tokens = (semicolon < 0 ? line : line.slice(0, semicolon))
    .toLowerCase()
    .replace(/^\s*\//, '')
    .trim()
    .split(/\s+/)
    .filter(Boolean);
  if (tokens.length === 0) return [];
  const read = candidates.flatMap((candidate) => {
    const reading = readAs(tokens, candidate);
    return reading === undefined ? [] : [reading];
  });
  return read
    .sort((one, other) => other.score - one.score)
    .slice(0, limit)
    .map(({ reading }) => (note === '' ? reading : { ...reading, note }));
}

function readAs(
  tokens: readonly string[],
  candidate: Candidate,
): { readonly reading: Reading; readonly score: number } | undefined {
  const { item, section, place } = candidate;
  const unused = new Set(candidate.words.keys());
  let sides: readonly CellSide[] | undefined;
  let value: string | number | undefined;
  let notTested: NotTestedReason | undefined;
  let reinforced = false;
  let matched = 0;
  let exact = 0;
  for (const [at, token] of tokens.entries()) {
    const isLast = at === tokens.length - 1;
    if (at > 0 && sides === undefined && sideNames[token] !== undefined && item.sides !== 'midline') {
      sides = sideNames[token];
      continue;
    }
    if (at > 0 && item.scale === 'reflex-grade' && token.length > 4 && 'reinforced'.startsWith(token)) {
      reinforced = true;
      continue;
    }
    if (at > 0 && token === 'nt') {
      notTested = 'not-done';
      continue;
    }
    if (notTested !== undefined) {
      const reason = Object.entries(reasonWords).find(
        ([key, words]) => key.startsWith(token) || words.startsWith(token),
      );
      if (reason === undefined) return undefined;
      notTested = reason[0] as NotTestedReason;
      continue;
    }
    const found = at > 0 && value === undefined ? valueNamed(item, token, isLast) : undefined;
    const forms = [token, ...(tradeWords[token] ?? [])];
    const word = [...unused].find((one) => forms.some((form) => candidate.words[one]?.startsWith(form)));
    if (word !== undefined && !(found !== undefined && isLast)) {
      unused.delete(word);
      matched += word < candidate.ownWords ? 1 : 0.5;
      if (candidate.words[word] === token) exact += 1;
    } else if (found !== undefined) value = found;
    else return undefined;
  }
  if (matched === 0) return undefined;
  const wanted: readonly CellSide[] = item.sides === 'midline' ? ['midline'] : (sides ?? defaultSides(item));
  const addresses = wanted.map((side): CellAddress => ({ section, item: item.key, side, ...(place && { place }) }));
  const score =
    matched / candidate.ownWords +
    (matched >= candidate.ownWords ? 1 : 0) +
    0.3 * exact +
    (candidate.isRoutine ? 0.5 : 0) +
    (value === undefined ? 0 : 0.6);
  return {
    reading: {
      item,
      addresses,
      ...(notTested === undefined ? value !== undefined && { value } : { notTested }),
      ...(reinforced && value !== undefined && { reinforced }),
    },
    score,
  };
}

/** Without a side an item that needs one is meant on both, and one that does not has none. */
function defaultSides(item: Item): readonly CellSide[] {
  return item.sides === 'optional' ? ['midline'] : ['right', 'left'];
}

function valueNamed(item: Item, token: string, isLast: boolean): string | number | undefined {
  const values = valuesOf(item);
  if (values === null) return /^\d{1,2}$/.test(token) ? Number(token) : undefined;
  const grade =
    values.find(({ key }) => key === token) ?? values.find(({ key }) => `${key}+` === token && /^\d$/.test(key));
  if (grade !== undefined) return grade.key;
  if (!isLast && token.length < 3) return undefined;
  if (token === 'n' || token === 'normal') return item.normal[0];
  const named = values.filter(({ key, label }) => key.startsWith(token) || label.toLowerCase().startsWith(token));
  return named.length > 0 ? named[0]?.key : undefined;
}
