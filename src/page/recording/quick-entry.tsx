import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { type CatalogueIndex, fullValue } from '../catalogue.ts';
import { cellKey } from '../draft/draft.ts';
import { go, wantedCell } from '../view.ts';
import { cellName, reasonWords } from './cell-state.ts';
import { EntryField } from './entry-field.tsx';
import { partsOf, partWith } from './parts.ts';
import { candidatesOf, type Reading } from './read-entry.ts';
import { recordCell } from './record.ts';

/** A line to type a finding into, or the name of an item to go to. `/` anywhere on the page leads here. */
export function QuickEntry({ index }: { readonly index: CatalogueIndex }) {
  const field = useRef<HTMLInputElement>(null);
  const [said, setSaid] = useState('');
  const candidates = useMemo(() => candidatesOf(index), [index]);

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
  };

  return (
    <search class="quick-entry">
      <EntryField
        id="reading"
        label="Type a finding"
        listLabel="What the line may mean"
        placeholder="ankle dorsi left 4, plantar r ext, pin L5 both reduced"
        candidates={candidates}
        wordsOf={(one) => wordsOf(one, index)}
        onTake={take}
        field={field}
      />
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
