import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { type CatalogueIndex, fullValue } from '../catalogue.ts';
import { cellKey } from '../draft/draft.ts';
import { go, wantedCell } from '../view.ts';
import { cellName, reasonWords } from './cell-state.ts';
import { partsOf, partWith } from './parts.ts';
import { candidatesOf, type Reading, readEntry } from './read-entry.ts';
import { nameOfCells, recordCell } from './record.ts';

/** How many readings are offered. */
const offered = 7;

/** A line to type a finding into, or the name of an item to go to. `/` anywhere on the page leads here. */
export function QuickEntry({ index }: { readonly index: CatalogueIndex }) {
  const field = useRef<HTMLInputElement>(null);
  const [line, setLine] = useState('');
  const [chosen, setChosen] = useState(0);
  const [said, setSaid] = useState('');
  const candidates = useMemo(() => candidatesOf(index), [index]);
  const readings = useMemo(() => readEntry(line, candidates, offered), [line, candidates]);
  const reading = readings[Math.min(chosen, readings.length - 1)];

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

  const take = (one: Reading): void => {
    const { item, addresses, ...cell } = one;
    const isRecorded = cell.value !== undefined || cell.notTested !== undefined;
    if (isRecorded) recordCell({ item, addresses, index }, cell);
    else showCell(one, index);
    setSaid(isRecorded ? `Recorded: ${wordsOf(one, index)}` : '');
    setLine('');
    setChosen(0);
  };

  return (
    <search class="quick-entry">
      <label>
        <span class="label">Type a finding</span>
        <input
          ref={field}
          type="text"
          role="combobox"
          aria-expanded={readings.length > 0}
          aria-controls="readings"
          aria-activedescendant={reading === undefined ? undefined : `reading-${readings.indexOf(reading)}`}
          aria-autocomplete="list"
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          placeholder="ankle dorsi left 4, plantar r ext, pin L5 both reduced"
          value={line}
          onInput={({ currentTarget }) => {
            setLine(currentTarget.value);
            setChosen(0);
          }}
          onKeyDown={(event) => {
            if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
              const step = event.key === 'ArrowDown' ? 1 : -1;
              setChosen((chosen + step + readings.length) % Math.max(1, readings.length));
            } else if (event.key === 'Enter' && reading !== undefined) take(reading);
            else if (event.key === 'Escape') setLine('');
            else return;
            event.preventDefault();
          }}
        />
      </label>
      <div id="readings" role="listbox" aria-label="What the line may mean" hidden={readings.length === 0}>
        {readings.map((one, at) => (
          // biome-ignore lint/a11y/useFocusableInteractive: as above
          // biome-ignore lint/a11y/useKeyWithClickEvents: Enter in the field takes it
          <div
            key={nameOfCells(one.addresses)}
            id={`reading-${at}`}
            role="option"
            aria-selected={one === reading}
            onClick={() => take(one)}
          >
            {wordsOf(one, index)}
          </div>
        ))}
      </div>
      {line !== '' && readings.length === 0 && (
        <p class="hint">Nothing is called that. Try the beginning of its name.</p>
      )}
      <p class="hint" role="status">
        {said}
      </p>
    </search>
  );
}

function wordsOf({ item, addresses, value, notTested, reinforced, note }: Reading, index: CatalogueIndex): string {
  const found =
    notTested !== undefined
      ? `not tested, ${reasonWords[notTested]}`
      : value === undefined
        ? 'go there'
        : `${fullValue(item, value)}${reinforced === true ? ', with reinforcement' : ''}`;
  return `${cellName(item, addresses, index)}: ${found}${note === undefined ? '' : `; ${note}`}`;
}

/** Opens the part of the examination that an item lies in and moves the focus there. */
export function showCell({ addresses }: Pick<Reading, 'addresses'>, index: CatalogueIndex): void {
  const [first] = addresses;
  if (first === undefined) return;
  const part = partWith(partsOf(index), first.section, first.item);
  if (part === undefined) return;
  wantedCell.value = cellKey(first);
  go('examine', part.key);
}
