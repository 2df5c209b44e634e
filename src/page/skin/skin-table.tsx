import { useState } from 'preact/hooks';
import type { CatalogueIndex, PlaceKind } from '../catalogue.ts';
import { addressOf, cellKey } from '../draft/draft.ts';
import { draft } from '../draft/draft-store.ts';
import { ItemRow } from '../recording/item-rows.tsx';
import { handleCellKey } from '../recording/move-between-cells.ts';
import type { Group } from '../recording/parts.ts';

type Place = { readonly kind: PlaceKind; readonly key: string };

/** The places at which a routine examination tests each modality, those recorded besides, and a way to add another. */
export function SkinTable({ group, index }: { readonly group: Group; readonly index: CatalogueIndex }) {
  return (
    <>
      {group.items.map((item) => (
        <SkinRows key={item.key} modality={item.key} group={group} index={index} />
      ))}
    </>
  );
}

interface SkinRowsProps {
  readonly modality: string;
  readonly group: Group;
  readonly index: CatalogueIndex;
}

function SkinRows({ modality, group, index }: SkinRowsProps) {
  const [added, setAdded] = useState<readonly Place[]>([]);
  const item = index.item(group.section, modality);
  if (item === undefined) return null;
  const { dermatomes, landmarks, territories, levels } = index.catalogue.places;
  const routine: readonly Place[] = index.catalogue.routine.flatMap((step) =>
    step.item === item.id && step.landmark !== undefined ? [{ kind: 'site' as const, key: step.landmark }] : [],
  );
  const recorded = Object.keys(draft.value.cells)
    .map(addressOf)
    .flatMap(({ section, item: key, place }) =>
      section === group.section && key === modality && place ? [place] : [],
    );
  const places = new Map([...routine, ...recorded, ...added].map((place) => [`${place.kind}:${place.key}`, place]));
  const add = (kind: PlaceKind, key: string): void => setAdded([...added, { kind, key }]);
  return (
    <section class="group" aria-labelledby={`modality-${modality}`}>
      <header>
        <h3 id={`modality-${modality}`}>{item.label}</h3>
      </header>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: keys of the buttons inside, caught on their way up */}
      <div class="rows" onKeyDown={(event) => handleCellKey(event, index)}>
        {[...places].map(([name, place]) => (
          <ItemRow key={name} section={group.section} item={item} index={index} place={place} />
        ))}
      </div>
      <label class="note">
        {item.label} elsewhere
        <select
          value=""
          onChange={({ currentTarget }) => {
            const { section, place } = addressOf(currentTarget.value);
            if (section !== '' && place !== undefined) add(place.kind, place.key);
            currentTarget.value = '';
          }}
        >
          <option value="">choose where …</option>
          {(
            [
              ['Places', 'site', landmarks],
              ['Dermatomes', 'dermatome', dermatomes],
              ['Territories of nerves', 'territory', territories],
              ['Everything below a level', 'levelBelow', levels.map((key) => ({ key, label: `below ${key}` }))],
            ] as const
          ).map(([label, kind, rows]) => (
            <optgroup key={kind} label={label}>
              {rows.map(({ key, label: words }) => (
                <option
                  key={key}
                  value={cellKey({ section: group.section, item: modality, place: { kind, key }, side: 'midline' })}
                >
                  {words}
                </option>
              ))}
            </optgroup>
          ))}
        </select>
      </label>
    </section>
  );
}
