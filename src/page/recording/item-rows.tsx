import { useState } from 'preact/hooks';
import type { Item } from '../../client/generated/api-types.ts';
import type { CatalogueIndex, PlaceKind } from '../catalogue.ts';
import { addressOf, type CellAddress, type CellSide } from '../draft/draft.ts';
import { draft } from '../draft/draft-store.ts';
import { CellButton } from './cell-button.tsx';
import { nameOfCells, openCells } from './record.ts';
import { ValueStrip } from './value-strip.tsx';

interface ItemProps {
  readonly section: string;
  readonly item: Item;
  readonly index: CatalogueIndex;
}

type Place = NonNullable<CellAddress['place']>;

/** One examinable item: a row for each place at which it is recorded, or one row where it needs none. */
export function ItemRows({ section, item, index }: ItemProps) {
  const [added, setAdded] = useState<readonly Place[]>([]);
  if (item.sites === undefined) return <ItemRow section={section} item={item} index={index} />;
  const recorded = recordedPlaces(section, item.key);
  const places = [...added, ...recorded.filter(({ key }) => !added.some((one) => one.key === key))];
  const add = (key: string): void => {
    if (key !== '' && !places.some((place) => place.key === key)) setAdded([...added, { kind: 'site', key }]);
  };
  return (
    <>
      {item.siteRequired !== true && <ItemRow section={section} item={item} index={index} />}
      {places.map((place) => (
        <ItemRow key={place.key} section={section} item={item} index={index} place={place} />
      ))}
      <div class="row add-place">
        <label>
          <span>{item.siteRequired === true ? `${item.label} at` : `${item.label}, elsewhere at`}</span>
          <select
            value=""
            onChange={({ currentTarget }) => {
              add(currentTarget.value);
              currentTarget.value = '';
            }}
          >
            <option value="">choose where …</option>
            {item.sites.map((site) => (
              <option key={site} value={site}>
                {index.placeLabel('site', site)}
              </option>
            ))}
          </select>
        </label>
      </div>
    </>
  );
}

function recordedPlaces(section: string, item: string): readonly Place[] {
  const places = new Map<string, Place>();
  for (const key of Object.keys(draft.value.cells)) {
    const address = addressOf(key);
    if (address.section === section && address.item === item && address.place !== undefined) {
      places.set(address.place.key, address.place);
    }
  }
  return [...places.values()];
}

interface ItemRowProps extends ItemProps {
  readonly place?: { readonly kind: PlaceKind; readonly key: string };
}

/** The name of the item, which records both sides at once, and a cell for each side that it has. */
export function ItemRow({ section, item, index, place }: ItemRowProps) {
  const at = (side: CellSide): CellAddress => ({ section, item: item.key, side, ...(place && { place }) });
  // What has no side, or one that may be left open, is recorded by the name of its row.
  const whole = item.sides === 'paired' ? [at('right'), at('left')] : [at('midline')];
  const cells = item.sides === 'midline' ? [] : [[at('right')], [at('left')]];
  const row = `${section}/${item.key}|${place?.key ?? ''}`;
  const label = place === undefined ? item.label : `${item.label}: ${index.placeLabel(place.kind, place.key)}`;
  const opened = [whole, ...cells].find((addresses) => nameOfCells(addresses) === openCells.value);
  return (
    <div class={`row ${item.sides}`}>
      <CellButton
        item={item}
        index={index}
        addresses={whole}
        label={label}
        showsValue={item.sides !== 'paired'}
        row={row}
        column="row"
      />
      {cells.map((addresses) => (
        <CellButton
          key={addresses[0]?.side}
          item={item}
          index={index}
          addresses={addresses}
          row={row}
          column={addresses[0]?.side ?? 'midline'}
        />
      ))}
      {opened !== undefined && <ValueStrip item={item} index={index} addresses={opened} />}
    </div>
  );
}
