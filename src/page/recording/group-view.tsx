import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { CatalogueIndex } from '../catalogue.ts';
import { addressOf } from '../draft/draft.ts';
import { draft, isSameStatement, stateNormal } from '../draft/draft-store.ts';
import { wantedCell } from '../view.ts';
import { ItemRows } from './item-rows.tsx';
import { cellsIn, focusCell, handleCellKey, letTabReach } from './move-between-cells.ts';
import type { Group } from './parts.ts';

/** Items of one section: those of a routine examination and what is recorded first, the rest on demand. */
export function GroupView({ group, index }: { readonly group: Group; readonly index: CatalogueIndex }) {
  const body = useRef<HTMLDivElement>(null);
  const [isWhole, setWhole] = useState(false);
  const recorded = new Set(
    Object.keys(draft.value.cells).flatMap((key) => {
      const { section, item } = addressOf(key);
      return section === group.section ? [item] : [];
    }),
  );
  const wanted = wantedCell.value;
  // What was asked for once stays, or its row would go as soon as it has the focus.
  const asked = useRef(new Set<string>()).current;
  for (const { key } of group.items) if (wanted?.startsWith(`${group.section}/${key}|`)) asked.add(key);
  const isFirst = ({ id, key }: Group['items'][number]): boolean =>
    index.isRoutine(id) || recorded.has(key) || asked.has(key);
  const hasRoutine = group.items.some(({ id }) => index.isRoutine(id));
  const shown = isWhole || !hasRoutine ? group.items : group.items.filter(isFirst);
  const hidden = group.items.length - shown.length;

  useLayoutEffect(() => {
    const element = body.current;
    if (element === null) return;
    const cells = cellsIn(element);
    const sought = wanted === undefined ? undefined : cells.find((cell) => cell.dataset.cells === wanted);
    if (sought !== undefined) {
      focusCell(sought, element);
      sought.scrollIntoView({ block: 'center' });
      wantedCell.value = undefined;
      return;
    }
    const current = cells.find((cell) => cell.tabIndex === 0 && cell.dataset.reached !== undefined) ?? cells[0];
    if (current !== undefined) letTabReach(current, element);
  });

  const statesNormal = group.statements.every((statement) =>
    draft.value.otherwiseNormal.some((one) => isSameStatement(one, statement)),
  );
  return (
    <section class="group" aria-labelledby={`group-${group.section}`}>
      <header>
        <h3 id={`group-${group.section}`}>{group.label}</h3>
        <button
          type="button"
          class="rest-normal"
          aria-pressed={statesNormal}
          onClick={() =>
            stateNormal(
              `${group.label}: ${statesNormal ? 'no longer "rest normal"' : 'rest normal'}`,
              group.statements,
              !statesNormal,
            )
          }
        >
          <span class="sign" aria-hidden="true">
            {statesNormal ? '✓' : '○'}
          </span>{' '}
          Rest normal<span class="unseen"> in {group.label.toLowerCase()}</span>
        </button>
      </header>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: keys of the buttons inside, caught on their way up */}
      <div
        class="rows"
        ref={body}
        onKeyDown={(event) => handleCellKey(event, index)}
        onFocusIn={({ target, currentTarget }) => {
          const cell = target as HTMLElement;
          if (cell.dataset.cells === undefined) return;
          for (const other of cellsIn(currentTarget)) delete other.dataset.reached;
          cell.dataset.reached = '';
          letTabReach(cell, currentTarget);
        }}
      >
        {shown.map((item) => (
          <ItemRows key={item.key} section={group.section} item={item} index={index} />
        ))}
      </div>
      {(hidden > 0 || isWhole) && hasRoutine && (
        <button type="button" class="plain more" aria-expanded={isWhole} onClick={() => setWhole(!isWhole)}>
          {isWhole ? `Fewer of ${group.label.toLowerCase()}` : `${hidden} more of ${group.label.toLowerCase()}`}
        </button>
      )}
    </section>
  );
}
