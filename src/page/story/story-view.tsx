import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { faults } from '../assessment.ts';
import type { CatalogueIndex } from '../catalogue.ts';
import { historyLists } from '../draft/draft.ts';
import { hrefOf, view } from '../view.ts';
import { faultsWithin } from './faults-at.ts';
import { type Row, type RowKind, rowsOf } from './find-rows.ts';
import { Finder } from './finder.tsx';
import { HistoryListView } from './history-list.tsx';
import { keepBelowFlags } from './keep-below-flags.ts';
import { LeadingCause } from './leading-cause.tsx';
import { PersonAndTime } from './person-and-time.tsx';
import { recordedWords, stateRow } from './record-history.ts';
import { ResultsSection, recordedResult, takeResult, type WantedResult } from './results-section.tsx';
import { listLabels } from './statements.ts';
import { showStoryPlace } from './story-place.ts';

/** Time, history and results. `/` leads to the field that looks through all of them. */
export function StoryView({ index }: { readonly index: CatalogueIndex }) {
  const field = useRef<HTMLInputElement>(null);
  const rows = useMemo(() => rowsOf(index), [index]);
  const rowsIn = useMemo(() => {
    const only = (wanted: RowKind) => rows.filter(({ kind }) => kind === wanted);
    return { lists: historyLists.map((list) => [list, only(list)] as const), results: only('results') };
  }, [rows]);
  const [opened, setOpened] = useState<readonly string[]>([]);
  const [wantedResult, setWantedResult] = useState<WantedResult>();
  const open = (key: string): void => {
    setOpened([...opened.filter((one) => one !== key), key]);
    setWantedResult({ key });
  };

  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      const isInField = (event.target as HTMLElement).closest('input, textarea, select') !== null;
      // A line that Escape has cleared keeps the focus until the next Escape.
      if (event.key === 'Escape' && isInField && !event.defaultPrevented) (event.target as HTMLElement).blur();
      if (event.key !== '/' || event.ctrlKey || event.metaKey || event.altKey) return;
      if (isInField) return;
      event.preventDefault();
      field.current?.focus();
    };
    document.addEventListener('keydown', onKey);
    return () => document.removeEventListener('keydown', onKey);
  }, []);

  const box = useRef<HTMLDivElement>(null);
  useEffect(() => keepBelowFlags(box.current), []);
  const wanted = view.value.detail;
  useEffect(() => {
    if (wanted !== undefined) showStoryPlace(wanted);
  }, [wanted]);

  return (
    <div ref={box} class="story">
      <LeadingCause />
      <nav class="story-parts" aria-label="Parts of this view">
        <ul>
          {parts.map(({ key, name, pointers }) => (
            <li key={key}>
              <a class="plain" href={hrefOf('story', key)} onClick={() => showStoryPlace(key)}>
                {name}
                <FaultCount pointers={pointers} />
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
        Enter records as present, Shift and Enter (or “no” before it) as asked and absent; <kbd>/</kbd> leads here,
        Escape out of a field. What stands in no list was not asked.
      </p>
      <PersonAndTime />
      <section class="story-part" aria-labelledby="story-history">
        <h2 id="story-history" tabIndex={-1}>
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
        wanted={wantedResult}
        onOpen={open}
        onClose={(key) => setOpened(opened.filter((one) => one !== key))}
      />
    </div>
  );
}

/** The parts of the view by the detail of the address; each has its heading as place. */
const parts: readonly { readonly key: string; readonly name: string; readonly pointers: readonly string[] }[] = [
  { key: 'person', name: 'Person and time', pointers: ['/person', '/examinedAt', '/history/onset', '/history/course'] },
  { key: 'history', name: 'History', pointers: historyLists.map((list) => `/history/${list}`) },
  { key: 'results', name: 'Results', pointers: ['/results'] },
];

function FaultCount({ pointers }: { readonly pointers: readonly string[] }) {
  const count = pointers.flatMap((pointer) => faultsWithin(faults.value, pointer)).length;
  return count === 0 ? null : <span class="fault-count"> ▲ {count} not accepted</span>;
}

function kindOf({ kind }: Row): string {
  return kind === 'results' ? 'result' : listLabels[kind].toLowerCase();
}
