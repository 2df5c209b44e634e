import { useMemo } from 'preact/hooks';
import type { CatalogueIndex } from '../catalogue.ts';
import type { CellAddress } from '../draft/draft.ts';
import { cellName } from '../recording/cell-state.ts';
import { EntryField } from '../recording/entry-field.tsx';
import { candidatesOf, type Reading } from '../recording/read-entry.ts';
import { examine } from './practice-case.ts';

/** A line to type the name of an item into; Enter examines it. A side or a place may be said with it. */
export function FindItem({ index }: { readonly index: CatalogueIndex }) {
  const candidates = useMemo(
    // The service is asked for one place at a time, not for all below a level.
    () => candidatesOf(index).filter(({ place }) => place?.kind !== 'levelBelow'),
    [index],
  );
  return (
    <search class="quick-entry">
      <EntryField
        id="practice-reading"
        label="Find an item to examine"
        listLabel="Items that the line may mean"
        placeholder="ankle jerk, pin L5 left, plantar"
        candidates={candidates}
        wordsOf={({ item, addresses }) => cellName(item, addresses, index)}
        onTake={(one) => void examine(sidesToAsk(one), index)}
      />
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
