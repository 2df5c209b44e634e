import type { Ref } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import { type Candidate, type Reading, readEntry } from './read-entry.ts';
import { nameOfCells } from './record.ts';

/** How many readings are offered. */
const offered = 7;

interface EntryFieldProps {
  /** Begins the ids of the list and its options. */
  readonly id: string;
  readonly label: string;
  readonly listLabel: string;
  readonly placeholder: string;
  readonly candidates: readonly Candidate[];
  readonly wordsOf: (reading: Reading) => string;
  readonly onTake: (reading: Reading) => void;
  readonly field?: Ref<HTMLInputElement>;
}

/** A line to type into, with a list of what it may mean; Enter or a tap takes one, and the line is ready for the next. */
export function EntryField({ id, label, listLabel, placeholder, candidates, wordsOf, onTake, field }: EntryFieldProps) {
  const [line, setLine] = useState('');
  const [chosen, setChosen] = useState(0);
  const readings = useMemo(() => readEntry(line, candidates, offered), [line, candidates]);
  const reading = readings[Math.min(chosen, readings.length - 1)];
  const type = (typed: string): void => {
    setLine(typed);
    setChosen(0);
  };
  const take = (one: Reading): void => {
    onTake(one);
    type('');
  };
  return (
    <>
      <label>
        <span class="label">{label}</span>
        <input
          {...(field !== undefined && { ref: field })}
          type="text"
          role="combobox"
          aria-expanded={readings.length > 0}
          aria-controls={`${id}s`}
          aria-activedescendant={reading === undefined ? undefined : `${id}-${readings.indexOf(reading)}`}
          aria-autocomplete="list"
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          placeholder={placeholder}
          value={line}
          onInput={({ currentTarget }) => type(currentTarget.value)}
          onKeyDown={(event) => {
            if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
              const step = event.key === 'ArrowDown' ? 1 : -1;
              setChosen((chosen + step + readings.length) % Math.max(1, readings.length));
            } else if (event.key === 'Enter' && reading !== undefined) take(reading);
            else if (event.key === 'Escape') type('');
            else return;
            event.preventDefault();
          }}
        />
      </label>
      <div id={`${id}s`} role="listbox" aria-label={listLabel} hidden={readings.length === 0}>
        {readings.map((one, at) => (
          // biome-ignore lint/a11y/useFocusableInteractive: the field keeps the focus and names the chosen one
          // biome-ignore lint/a11y/useKeyWithClickEvents: Enter in the field takes it
          <div
            key={nameOfCells(one.addresses)}
            id={`${id}-${at}`}
            role="option"
            aria-selected={one === reading}
            onClick={() => take(one)}
          >
            {wordsOf(one)}
          </div>
        ))}
      </div>
      {line !== '' && readings.length === 0 && (
        <p class="hint">Nothing is called that. Try the beginning of its name.</p>
      )}
    </>
  );
}
