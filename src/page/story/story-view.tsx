import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { CatalogueIndex } from '../catalogue.ts';
import { historyLists } from '../draft/draft.ts';
import { hrefOf, view } from '../view.ts';
import { type Row, type RowKind, rowsOf } from './find-rows.ts';
import { Finder } from './finder.tsx';
import { HistoryListView } from './history-list.tsx';
import { LeadingCause } from './leading-cause.tsx';
import { PersonAndTime } from './person-and-time.tsx';
import { recordedWords, stateRow } from './record-history.ts';
import { ResultsSection, recordedResult, takeResult } from './results-section.tsx';
import { listLabels } from './statements.ts';

/** Time, history and results. `/` leads to the field that looks through all of them. */
export function StoryView({ index }: { readonly index: CatalogueIndex }) {
  const field = useRef<HTMLInputElement>(null);
  const rows = useMemo(() => rowsOf(index), [index]);
  const rowsIn = useMemo(() => {
    const only = (wanted: RowKind) => rows.filter(({ kind }) => kind === wanted);
    return { lists: historyLists.map((list) => [list, only(list)] as const), results: only('results') };
  }, [rows]);
  const [opened, setOpened] = useState<readonly string[]>([]);
  const open = (key: string): void => setOpened([...opened.filter((one) => one !== key), key]);

  useEffect(() => {
    const onSlash = (event: KeyboardEvent): void => {
      if (event.key !== '/' || event.ctrlKey || event.metaKey || event.altKey) return;
      if ((event.target as HTMLElement).closest('input, textarea, select') !== null) return;
      event.preventDefault();
      field.current?.focus();
    };
    document.addEventListener('keydown', onSlash);
    return () => document.removeEventListener('keydown', onSlash);
  }, []);

  const wanted = view.value.detail;
  useEffect(() => {
    if (wanted !== undefined) showPart(wanted);
  }, [wanted]);

  return (
    <div class="story">
      <LeadingCause />
      <nav class="story-parts" aria-label="Parts of this view">
        <ul>
          {Object.entries(partNames).map(([key, name]) => (
            <li key={key}>
              <a class="plain" href={hrefOf('story', key)} onClick={() => showPart(key)}>
                {name}
              </a>
            </li>
          ))}
        </ul>
      </nav>
      <Finder
        label="Type anything of the history, or a result"
        rows={rows}
        field={field}
        placeholder="diabetes, no back pain, ck 1200"
        kindOf={kindOf}
        recordOf={(row) => recordedWords(row) || recordedResult(row, index)}
        onTake={(read, isPresent) =>
          read.row.kind === 'results' ? takeResult(read, index, open) : stateRow(read.row, isPresent, read.side)
        }
      />
      <p class="hint">
        Enter records as present, Shift and Enter (or “no” before it) as asked and absent; <kbd>/</kbd> leads here. What
        stands in no list was not asked.
      </p>
      <PersonAndTime />
      <section class="story-part" aria-labelledby="history-name">
        <h2 id="history-name" tabIndex={-1}>
          History
        </h2>
        <div class="history-lists">
          {rowsIn.lists.map(([list, own]) => (
            <HistoryListView key={list} list={list} rows={own} index={index} />
          ))}
        </div>
      </section>
      <ResultsSection
        index={index}
        rows={rowsIn.results}
        opened={opened}
        onOpen={open}
        onClose={(key) => setOpened(opened.filter((one) => one !== key))}
      />
    </div>
  );
}

/** By the detail of the address; the heading of each has the id that ends in `-name`. */
const partNames: Readonly<Record<string, string>> = {
  person: 'Person and time',
  history: 'History',
  results: 'Results',
};

function showPart(key: string): void {
  const heading = key in partNames ? document.getElementById(`${key}-name`) : null;
  heading?.scrollIntoView();
  heading?.focus({ preventScroll: true });
}

function kindOf({ kind }: Row): string {
  return kind === 'results' ? 'result' : listLabels[kind].toLowerCase();
}
