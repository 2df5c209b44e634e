import { useRef, useState } from 'preact/hooks';
import type { Item } from '../../client/generated/api-types.ts';
import type { CatalogueIndex } from '../catalogue.ts';
import type { Side } from '../draft/draft.ts';
import { draft } from '../draft/draft-store.ts';
import { BodyDrawing, sidesOfView } from './body-drawing.tsx';
import type { BodyPicture, BodyView } from './body-pictures.ts';
import { skinFindings } from './skin-findings.ts';
import { placeOf, type TapMeaning, tappable } from './tap-meaning.ts';
import { nameOfTap, TapPatches, type TapPlace } from './tap-patches.tsx';

interface BodyMapProps {
  readonly view: BodyView;
  readonly picture: BodyPicture;
  readonly index: CatalogueIndex;
  readonly item: Item;
  readonly meaning: TapMeaning;
  readonly value: string;
}

/**
 * One view to tap. Tab reaches one patch of it; up and down go to the one before or after in the order of the catalogue,
 * left and right to the other side, Home and End to the first and last.
 */
export function BodyMap({ view, picture, index, item, meaning, value }: BodyMapProps) {
  const drawing = useRef<HTMLDivElement>(null);
  const [reached, setReached] = useState('');
  const places = placesOf(view, meaning, picture, index);
  const [viewersLeft, viewersRight] = sidesOfView(view);
  const names = places.flatMap(({ place }) => sidesOfView(view).map((side) => nameOfTap(place, side)));
  const findings = skinFindings(draft.value, index).filter((finding) => finding.item.key === item.key);

  const go = (at: number, side: Side | undefined): void => {
    const place = places[at]?.place;
    if (place === undefined || side === undefined) return;
    drawing.current?.querySelector<SVGElement>(`[data-tap="${CSS.escape(nameOfTap(place, side))}"]`)?.focus();
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const name = (event.target as Element).getAttribute('data-tap') ?? '';
    const at = places.findIndex(({ place }) => name.startsWith(`${place.kind}:${place.key}|`));
    const side: Side = name.endsWith('|left') ? 'left' : 'right';
    if (at < 0) return;
    if (event.key === 'ArrowDown') go(at + 1, side);
    else if (event.key === 'ArrowUp') go(at - 1, side);
    else if (event.key === 'ArrowLeft') go(at, viewersLeft);
    else if (event.key === 'ArrowRight') go(at, viewersRight);
    else if (event.key === 'Home') go(0, side);
    else if (event.key === 'End') go(places.length - 1, side);
    else return;
    event.preventDefault();
  };
  if (places.length === 0) return <p class="hint">This picture has none of these.</p>;
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: keys of the controls inside, caught on their way up
    <div ref={drawing} onKeyDown={onKeyDown} class={`body-map means-${meaning}`}>
      <BodyDrawing
        view={view}
        picture={picture}
        catalogue={index.catalogue}
        findings={findings}
        name={`map-${view.key}`}
        over={(side) => (
          <TapPatches
            side={side}
            places={places}
            item={item}
            value={value}
            index={index}
            reached={names.includes(reached) ? reached : (names[0] ?? '')}
            onReach={setReached}
          />
        )}
        letters={(meaning === 'dermatome' || meaning === 'levelBelow') && <Letters view={view} places={places} />}
      />
    </div>
  );
}

function placesOf(
  view: BodyView,
  meaning: TapMeaning,
  picture: BodyPicture,
  index: CatalogueIndex,
): readonly TapPlace[] {
  const places = new Map<string, TapPlace>();
  for (const patch of tappable(view, meaning, picture, index.catalogue)) {
    const place = placeOf(patch, meaning, picture);
    if (place === undefined) continue;
    const known = places.get(place.key);
    places.set(place.key, { place, patches: [...(known?.patches ?? []), patch] });
  }
  return [...places.values()];
}

/** The names of the segments on both halves, where there is room for them. */
function Letters({ view, places }: { readonly view: BodyView; readonly places: readonly TapPlace[] }) {
  return (
    // biome-ignore lint/a11y/noAriaHiddenOnFocusable: text of a drawing takes no focus, and the controls have names
    <g class="letters" aria-hidden="true">
      {places.flatMap(({ place, patches }) =>
        patches.flatMap(({ at: [x, y] }) =>
          [x, view.width - x].map((one) => (
            <text key={`${place.key} ${one}`} x={one} y={y + 3} text-anchor="middle">
              {place.key}
            </text>
          )),
        ),
      )}
    </g>
  );
}
