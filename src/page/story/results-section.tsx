import type { CatalogueIndex } from '../catalogue.ts';
import type { ResultEntry } from '../draft/draft.ts';
import { change, draft } from '../draft/draft-store.ts';
import { FaultList } from './fault-list.tsx';
import type { Row } from './find-rows.ts';
import { Finder } from './finder.tsx';
import type { LineRead } from './read-line.ts';
import { ResultEditor } from './result-editor.tsx';
import { placeOf, resultOf, resultWords, unitInUse, withQuantity, withValue } from './result-entries.ts';

/** The result that takes the focus; another object with the same key asks for it again. */
export interface WantedResult {
  readonly key: string;
}

interface ResultsSectionProps {
  readonly index: CatalogueIndex;
  readonly rows: readonly Row[];
  /** Keys of results that were opened, whether or not they state anything yet. */
  readonly opened: readonly string[];
  readonly wanted: WantedResult | undefined;
  readonly onOpen: (key: string) => void;
  readonly onClose: (key: string) => void;
}

/** Results that came back: a field to find one by, those recorded, and those opened. */
export function ResultsSection({ index, rows, opened, wanted, onOpen, onClose }: ResultsSectionProps) {
  const { results } = index.catalogue;
  const entries = draft.value.results;
  const pending = results.filter((result) => opened.includes(result.key) && placeOf(result, entries) < 0);
  const seen = new Set<string>();
  // One list, so that a result keeps its field and the focus when its first value makes it an entry.
  const shown = [
    ...entries.map((entry, at) => ({ result: resultOf(entry, results), entry, pointer: `/results/${at}` })),
    ...pending.map((result) => ({ result, entry: undefined, pointer: undefined })),
  ].map((row) => {
    const key = row.result?.key ?? row.pointer ?? '';
    const name = seen.has(key) ? `${key} ${row.pointer}` : key;
    seen.add(key);
    return { ...row, name };
  });
  return (
    <section class="story-part" aria-labelledby="story-results">
      <h2 id="story-results" tabIndex={-1}>
        Results
      </h2>
      <Finder
        label="Add a result"
        rows={rows}
        placeholder="ck 1200, csf protein 1.2 g/L, mri cervical"
        recordOf={(row) => recordedResult(row, index)}
        onTake={(read) => takeResult(read, index, onOpen)}
      />
      <ul class="results">
        {shown.map(({ result, entry, pointer, name }) =>
          result === undefined ? (
            <li key={name} class="result">
              <span>{entry?.key ?? entry?.code?.code}</span>
              <FaultList id={`result-${name}`} pointer={pointer} />
            </li>
          ) : (
            <ResultEditor
              key={name}
              result={result}
              entry={entry}
              pointer={pointer}
              wanted={wanted?.key === result.key ? wanted : undefined}
              onClose={() => onClose(result.key)}
            />
          ),
        )}
      </ul>
    </section>
  );
}

/** What is recorded of a result, in words; empty for nothing and for a row of the history. */
export function recordedResult({ kind, key }: Row, { catalogue: { results } }: CatalogueIndex): string {
  const result = results.find((one) => one.key === key);
  if (kind !== 'results' || result === undefined) return '';
  return resultWords(result, draft.value.results[placeOf(result, draft.value.results)]);
}

/** Records a result whose number or value was typed with its name, and opens any other. @returns what was done */
export function takeResult(
  { row, number, value }: LineRead,
  { catalogue: { results } }: CatalogueIndex,
  onOpen: (key: string) => void,
): string {
  const result = results.find(({ key }) => key === row.key);
  if (result === undefined) return '';
  const state = (after: readonly ResultEntry[]): string => {
    const words = `${result.label}: ${resultWords(result, after[placeOf(result, after)])}`;
    change(words, (before) => ({ ...before, results: after }));
    return `Recorded: ${words}`;
  };
  const before = draft.peek().results;
  if (value !== undefined) return state(withValue(before, result, value.key));
  if (number !== undefined && 'value' in number) {
    return state(withQuantity(before, result, { ...number, unit: number.unit ?? unitInUse(result, before) }));
  }
  onOpen(result.key);
  return number === undefined ? '' : `Not recorded. ${number.problem}`;
}
