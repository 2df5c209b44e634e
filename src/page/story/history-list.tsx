import { useState } from 'preact/hooks';
import type { CatalogueIndex } from '../catalogue.ts';
import type { HistoryEntry, HistoryList } from '../draft/draft.ts';
import { change, draft } from '../draft/draft-store.ts';
import { FaultList, hasFault } from './fault-list.tsx';
import type { Row } from './find-rows.ts';
import { Finder } from './finder.tsx';
import { recordedWords, stateRow } from './record-history.ts';
import {
  type Amendment,
  amend,
  listLabels,
  presenceWords,
  relationLabels,
  withAnother,
  withList,
} from './statements.ts';

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
    <section class="history-list" aria-labelledby={`list-${list}`}>
      <h3 id={`list-${list}`} tabIndex={-1}>
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

interface StatementProps {
  readonly list: HistoryList;
  readonly at: number;
  readonly entry: HistoryEntry;
  readonly index: CatalogueIndex;
}

function Statement({ list, at, entry, index }: StatementProps) {
  const label = index.catalogue.history[list].find(({ key }) => key === entry.key)?.label ?? entry.key;
  const pointer = `/history/${list}/${at}`;
  const set = (what: string, changes: Amendment): void =>
    change(`${label}: ${what}`, (before) => withList(before, list, amend(before.history[list], at, changes)));
  const another = list === 'family' ? `${label} in another relative` : `${label} on the other side`;
  const addAnother = (): void =>
    change(another, (before) => withList(before, list, withAnother(before.history[list], at)));
  const remove = (): void => {
    change(`${label}: removed`, (before) =>
      withList(
        before,
        list,
        before.history[list].filter((_, place) => place !== at),
      ),
    );
    // The button that had the focus goes away.
    document.getElementById(`list-${list}`)?.focus();
  };
  return (
    <li class={`statement ${entry.present ? 'is-present' : 'is-absent'} ${hasFault(pointer) ? 'is-faulty' : ''}`}>
      <span class="statement-name">
        <span class="sign" aria-hidden="true">
          {entry.present ? '●' : '○'}
        </span>{' '}
        {label} <span class="soft">{presenceWords(entry.present)}</span>
      </span>
      <button
        type="button"
        class="plain remove"
        aria-label={`Remove ${label}`}
        title="Remove: not asked"
        onClick={remove}
      >
        ✕
      </button>
      <span class="statement-tools">
        {list === 'symptoms' && (
          <label>
            <span class="unseen">Side of {label}</span>
            <select
              value={entry.side ?? ''}
              onChange={({ currentTarget }) =>
                set('side', { side: (currentTarget.value || undefined) as HistoryEntry['side'] })
              }
            >
              <option value="">no side</option>
              <option value="right">right</option>
              <option value="left">left</option>
              <option value="both">both</option>
            </select>
          </label>
        )}
        {list === 'family' && entry.present && (
          <label>
            <span class="unseen">Relative with {label}</span>
            <select
              value={entry.relation ?? ''}
              onChange={({ currentTarget }) => set('relative', { relation: currentTarget.value || undefined })}
            >
              <option value="">no relative named</option>
              {Object.entries(relationLabels).map(([key, words]) => (
                <option key={key} value={key}>
                  {words}
                </option>
              ))}
            </select>
          </label>
        )}
        {(list === 'family' ? entry.relation : entry.side) !== undefined && entry.side !== 'both' && (
          <button type="button" class="plain" aria-label={another} title={another} onClick={addAnother}>
            +
          </button>
        )}
        <PresenceButtons
          label={label}
          isPresent={entry.present}
          onState={(present) => set(presenceWords(present), { present })}
        />
      </span>
      <FaultList id={`faults-${list}-${at}`} pointer={pointer} />
    </li>
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

interface PresenceButtonsProps {
  readonly label: string;
  /** Undefined where it was not asked. */
  readonly isPresent: boolean | undefined;
  readonly onState: (isPresent: boolean) => void;
}

function PresenceButtons({ label, isPresent, onState }: PresenceButtonsProps) {
  return (
    <>
      {[true, false].map((one) => (
        <button
          type="button"
          key={String(one)}
          class="plain presence"
          aria-pressed={isPresent === one}
          aria-label={`${label}: ${presenceWords(one)}`}
          onClick={() => onState(one)}
        >
          {one ? 'Present' : 'Absent'}
        </button>
      ))}
    </>
  );
}
