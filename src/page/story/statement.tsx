import type { CatalogueIndex } from '../catalogue.ts';
import type { HistoryEntry, HistoryList } from '../draft/draft.ts';
import { change } from '../draft/draft-store.ts';
import { FaultList, hasFault } from './fault-list.tsx';
import { PresenceButtons } from './presence-buttons.tsx';
import { type Amendment, amend, presenceWords, relationLabels, withAnother, withList } from './statements.ts';
import { elementIdOf } from './story-place.ts';

interface StatementProps {
  readonly list: HistoryList;
  readonly at: number;
  readonly entry: HistoryEntry;
  readonly index: CatalogueIndex;
}

/** One statement of the history: whether it is so, on which side or in whom, and what the service has against it. */
export function Statement({ list, at, entry, index }: StatementProps) {
  const label = index.catalogue.history[list].find(({ key }) => key === entry.key)?.label ?? entry.key;
  const pointer = `/history/${list}/${at}`;
  const set = (what: string, changes: Amendment): void =>
    change(`${label}: ${what}`, (before) => withList(before, list, amend(before.history[list], at, changes)));
  const another = list === 'family' ? `${label} in another relative` : `${label} on the other side`;
  const anotherSign = `+ ${list === 'family' ? 'relative' : entry.side === 'left' ? 'right' : 'left'}`;
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
    document.getElementById(elementIdOf(list))?.focus();
  };
  return (
    <li
      id={elementIdOf(`${list}.${at}`)}
      tabIndex={-1}
      class={`statement ${entry.present ? 'is-present' : 'is-absent'} ${hasFault(pointer) ? 'is-faulty' : ''}`}
    >
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
          <button
            type="button"
            class="plain"
            aria-label={`${anotherSign}: ${label}`}
            title={another}
            onClick={addAnother}
          >
            {anotherSign}
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
