import { useMemo, useState } from 'preact/hooks';
import type { CatalogueIndex } from '../catalogue.ts';
import type { CellAddress } from '../draft/draft.ts';
import { cellName } from '../recording/cell-state.ts';
import { candidatesOf, type Reading, readEntry } from '../recording/read-entry.ts';
import { examine } from './practice-case.ts';

const offered = 7;

/** A line to type the name of an item into; Enter examines it. A side or a place may be said with it. */
export function FindItem({ index }: { readonly index: CatalogueIndex }) {
  const [line, setLine] = useState('');
  const [chosen, setChosen] = useState(0);
  const candidates = useMemo(
    // The service is asked for one place at a time, not for all below a level.
    () => candidatesOf(index).filter(({ place }) => place?.kind !== 'levelBelow'),
    [index],
  );
  const readings = useMemo(() => readEntry(line, candidates, offered), [line, candidates]);
  const reading = readings[Math.min(chosen, readings.length - 1)];
  const take = (one: Reading): void => {
    void examine(sidesToAsk(one), index);
    setLine('');
    setChosen(0);
  };
  return (
    <search class="quick-entry">
      <label>
        <span class="label">Find an item to examine</span>
        <input
          type="text"
          role="combobox"
          aria-expanded={readings.length > 0}
          aria-controls="practice-readings"
          aria-activedescendant={reading === undefined ? undefined : `practice-reading-${readings.indexOf(reading)}`}
          aria-autocomplete="list"
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          placeholder="ankle jerk, pin L5 left, plantar"
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
      <div
        id="practice-readings"
        role="listbox"
        aria-label="Items that the line may mean"
        hidden={readings.length === 0}
      >
        {readings.map((one, at) => (
          // biome-ignore lint/a11y/useFocusableInteractive: the field keeps the focus and names the chosen one
          // biome-ignore lint/a11y/useKeyWithClickEvents: Enter in the field takes it
          <div
            key={cellName(one.item, one.addresses, index)}
            id={`practice-reading-${at}`}
            role="option"
            aria-selected={one === reading}
            onClick={() => take(one)}
          >
            {cellName(one.item, one.addresses, index)}
          </div>
        ))}
      </div>
      {line !== '' && readings.length === 0 && (
        <p class="hint">Nothing is called that. Try the beginning of its name.</p>
      )}
    </search>
  );
}

/** An item whose side may be left open is looked at on both, unless it is placed in the midline. */
function sidesToAsk({ item, addresses }: Reading): readonly CellAddress[] {
  const [first] = addresses;
  if (first === undefined || item.sides !== 'optional' || first.side !== 'midline' || first.place !== undefined) {
    return addresses;
  }
  return [
    { ...first, side: 'right' },
    { ...first, side: 'left' },
  ];
}
