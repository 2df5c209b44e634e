import { useState } from 'preact/hooks';
import type { CatalogueIndex } from '../catalogue.ts';
import type { HistoryList } from '../draft/draft.ts';
import { draft } from '../draft/draft-store.ts';
import type { Row } from './find-rows.ts';
import { Finder } from './finder.tsx';
import { PresenceButtons } from './presence-buttons.tsx';
import { recordedWords, stateRow } from './record-history.ts';
import { Statement } from './statement.tsx';
import { listLabels, presenceWords } from './statements.ts';
import { elementIdOf } from './story-place.ts';

interface HistoryListProps {
  readonly list: HistoryList;
  readonly rows: readonly Row[];
  readonly index: CatalogueIndex;
}

/** One list of the history: a field to add to it, what is recorded, and the whole list to go through. */
export function HistoryListView({ list, rows, index }: HistoryListProps) {
  const [isOpen, setOpen] = useState(false);
  const entries = draft.value.history[list];
  const label = listLabels[list];
  return (
    <section class="history-list" aria-labelledby={elementIdOf(list)}>
      <h3 id={elementIdOf(list)} tabIndex={-1}>
        {label}
      </h3>
      <Finder
        label={`Add to ${label.toLowerCase()}`}
        isLabelSeen={false}
        placeholder={`Add to ${label.toLowerCase()}`}
        rows={rows}
        recordOf={recordedWords}
        onTake={({ row, side }, isPresent) => stateRow(row, isPresent, side)}
      />
      <ul class="statements">
        {entries.map((entry, at) => (
          <Statement key={at} list={list} at={at} entry={entry} index={index} />
        ))}
      </ul>
      <details onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
        <summary>
          <span class="unseen">{label}: </span>Go through the whole list ({rows.length})
        </summary>
        {isOpen && (
          <ul class="statements all">
            {rows.map((row) => (
              <RowOfAll key={row.key} row={row} />
            ))}
          </ul>
        )}
      </details>
    </section>
  );
}

function RowOfAll({ row }: { readonly row: Row }) {
  if (row.kind === 'results') return null;
  const entry = draft.value.history[row.kind].find(({ key }) => key === row.key);
  return (
    <li class="statement">
      <span class="statement-name">
        {row.label} {entry !== undefined && <span class="soft">{presenceWords(entry.present)}</span>}
      </span>
      <span class="statement-tools">
        <PresenceButtons
          label={row.label}
          isPresent={entry?.present}
          onState={(isPresent) => stateRow(row, isPresent)}
        />
      </span>
    </li>
  );
}
