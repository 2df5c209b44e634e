import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { Item } from '../../client/generated/api-types.ts';
import type { CatalogueIndex, PlaceKind } from '../catalogue.ts';
import { addressOf, cellKey } from '../draft/draft.ts';
import { cellsIn, focusCell, letTabReach, neighbour } from '../recording/move-between-cells.ts';
import type { Group } from '../recording/parts.ts';
import { examine, shown } from './practice-case.ts';
import { PracticeCell } from './practice-cell.tsx';
import { cellsOfRow, type PracticeRow, placesOf, rowsOf } from './practice-rows.ts';

interface PracticeGroupProps {
  readonly group: Group;
  readonly part: string;
  readonly index: CatalogueIndex;
}

/** Items of one section in one part of the body: asked for one by one, or those that are in sight at once. */
export function PracticeGroup({ group, part, index }: PracticeGroupProps) {
  const body = useRef<HTMLDivElement>(null);
  const [isWhole, setWhole] = useState(false);
  const rows = rowsOf(group, index);
  const hasRoutine = rows.some(({ item }) => index.isRoutine(item.id));
  const known = new Set([...shown.value.keys()].map((key) => rowName(addressOf(key))));
  const isFirst = ({ section, item, place }: PracticeRow): boolean =>
    index.isRoutine(item.id) || known.has(rowName({ section, item: item.key, ...(place && { place }) }));
  const first = isWhole || !hasRoutine ? rows : rows.filter(isFirst);
  const inSight = [...first, ...extraRows(group, rows, index)];
  const left = inSight.flatMap(cellsOfRow).filter((address) => !shown.value.has(cellKey(address)));
  const hidden = rows.length - first.length;
  const title = `${group.label.toLowerCase()} of ${part.toLowerCase()}`;
  const todo = left.length === 0 ? 'All examined' : `Examine all ${left.length}`;

  useLayoutEffect(() => {
    const element = body.current;
    if (element === null) return;
    const cells = cellsIn(element);
    const current = cells.find((cell) => cell.tabIndex === 0 && cell.dataset.reached !== undefined) ?? cells[0];
    if (current !== undefined) letTabReach(current, element);
  });

  return (
    <section class="group" aria-labelledby={`practice-${group.section}`}>
      <header>
        <h4 id={`practice-${group.section}`}>{group.label}</h4>
        <button
          type="button"
          class="plain"
          disabled={left.length === 0}
          aria-label={`${todo}: ${title}`}
          onClick={() => void examine(left, index)}
        >
          {todo}
        </button>
      </header>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: keys of the buttons inside, caught on their way up */}
      <div
        class="rows"
        ref={body}
        onKeyDown={(event) => {
          const cell = event.target as HTMLElement;
          if (cell.dataset.cells === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
          const next = neighbour(cell, event.currentTarget, event.key);
          if (next === undefined) return;
          focusCell(next, event.currentTarget);
          event.preventDefault();
        }}
        onFocusIn={({ target, currentTarget }) => {
          const cell = target as HTMLElement;
          if (cell.dataset.cells === undefined) return;
          for (const other of cellsIn(currentTarget)) delete other.dataset.reached;
          cell.dataset.reached = '';
          letTabReach(cell, currentTarget);
        }}
      >
        {inSight.map((row) => (
          <Row key={`${row.item.key} ${row.place?.kind} ${row.place?.key}`} row={row} index={index} />
        ))}
      </div>
      {(hidden > 0 || isWhole) && hasRoutine && (
        <button type="button" class="plain more" aria-expanded={isWhole} onClick={() => setWhole(!isWhole)}>
          {isWhole ? `Fewer of ${group.label.toLowerCase()}` : `${hidden} more of ${group.label.toLowerCase()}`}
        </button>
      )}
      {group.items
        .filter((item) => group.section === 'sensation' || item.sites !== undefined)
        .map((item) => (
          <Elsewhere key={item.key} section={group.section} item={item} index={index} />
        ))}
    </section>
  );
}

interface RowAddress {
  readonly section: string;
  readonly item: string;
  readonly place?: { readonly kind: PlaceKind; readonly key: string };
}

function rowName({ section, item, place }: RowAddress): string {
  return `${section}/${item}|${place === undefined ? '' : `${place.kind}:${place.key}`}`;
}

/** Rows of places that were asked for besides. */
function extraRows({ section, items }: Group, rows: readonly PracticeRow[], index: CatalogueIndex) {
  const names = new Set(
    rows.map((row) => rowName({ section, item: row.item.key, ...(row.place && { place: row.place }) })),
  );
  const extra = new Map<string, PracticeRow>();
  for (const key of shown.value.keys()) {
    const address = addressOf(key);
    const item = address.section === section ? index.item(section, address.item) : undefined;
    const name = rowName(address);
    if (item === undefined || !items.includes(item) || address.place === undefined || names.has(name)) continue;
    extra.set(name, { section, item, place: address.place });
  }
  return [...extra.values()];
}

function Row({ row, index }: { readonly row: PracticeRow; readonly index: CatalogueIndex }) {
  const { item, place } = row;
  const addresses = cellsOfRow(row);
  // A part in the midline is shown without a side by an item that may have one.
  const middle = { section: row.section, item: item.key, side: 'midline' as const, ...(place && { place }) };
  const isInMiddle = item.sides === 'midline' || shown.value.has(cellKey(middle));
  const cells = isInMiddle ? [middle] : addresses;
  const label = place === undefined ? item.label : `${item.label}: ${index.placeLabel(place.kind, place.key)}`;
  return (
    <div class={`row ${isInMiddle ? 'midline' : item.sides}`}>
      <PracticeCell row={row} addresses={cells} index={index} label={label} column="row" />
      {cells.map((address) => (
        <PracticeCell key={address.side} row={row} addresses={[address]} index={index} column={address.side} />
      ))}
    </div>
  );
}

/** Asks for an item at a place that the rows do not have. */
function Elsewhere({
  section,
  item,
  index,
}: {
  readonly section: string;
  readonly item: Item;
  readonly index: CatalogueIndex;
}) {
  const groups = placesOf(section, item, index);
  return (
    <label class="note">
      {item.label} {item.siteRequired === true ? 'at' : 'elsewhere at'}
      <select
        value=""
        onChange={({ currentTarget }) => {
          const [kind, key] = currentTarget.value.split(':');
          currentTarget.value = '';
          if (kind === undefined || key === undefined) return;
          const place = { kind: kind as PlaceKind, key };
          const sides = item.sides === 'paired' ? (['right', 'left'] as const) : (['midline'] as const);
          void examine(
            sides.map((side) => ({ section, item: item.key, side, place })),
            index,
          );
        }}
      >
        <option value="">choose where …</option>
        {groups.map(({ label, kind, rows }) => (
          <optgroup key={kind} label={label}>
            {rows.map(({ key, label: words }) => (
              <option key={key} value={`${kind}:${key}`}>
                {words}
              </option>
            ))}
          </optgroup>
        ))}
      </select>
    </label>
  );
}
