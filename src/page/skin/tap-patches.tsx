import type { Item } from '../../client/generated/api-types.ts';
import type { CatalogueIndex } from '../catalogue.ts';
import { cellKey, type Side } from '../draft/draft.ts';
import { draft } from '../draft/draft-store.ts';
import { clear, recordValue, typedValue } from '../recording/record.ts';
import { spotRadius } from './body-drawing.tsx';
import type { BodyPatch } from './body-pictures.ts';
import { tapPlace, targetOn } from './record-on-skin.ts';
import { patchName, skinSection } from './skin-findings.ts';
import { areaOf, type Place } from './tap-meaning.ts';

/** A place that can be tapped, with all that is drawn of it in one view. */
export interface TapPlace {
  readonly place: Place;
  readonly patches: readonly BodyPatch[];
}

export const nameOfTap = ({ kind, key }: Place, side: Side): string => `${kind}:${key}|${side}`;

interface TapPatchesProps {
  readonly side: Side;
  readonly places: readonly TapPlace[];
  readonly item: Item;
  readonly value: string;
  readonly index: CatalogueIndex;
  /** Name of the one control that Tab reaches. */
  readonly reached: string;
  readonly onReach: (name: string) => void;
}

/** The controls over one half of the body: the smaller ones on top, one for each place. */
export function TapPatches({ side, places, item, value, index, reached, onReach }: TapPatchesProps) {
  const largestOf = ({ patches }: TapPlace): number => Math.max(...patches.map((patch) => areaOf(patch)));
  const sorted = [...places].sort((one, other) => largestOf(other) - largestOf(one));
  return (
    <>
      {sorted.map(({ place, patches }) => {
        const name = nameOfTap(place, side);
        const recorded = draft.value.cells[cellKey({ section: skinSection, item: item.key, place, side })]?.value;
        const current = typeof recorded === 'string' ? recorded : undefined;
        const target = targetOn(item, place, side, index);
        return (
          // biome-ignore lint/a11y/useSemanticElements: HTML has no button of the shape of a dermatome
          <g
            key={name}
            role="button"
            class="tap"
            data-tap={name}
            // In SVG the name of an attribute is taken as it is written.
            tabindex={name === reached ? 0 : -1}
            aria-pressed={current === value}
            aria-label={patchName(place, side, item, current, index)}
            onFocus={() => onReach(name)}
            onClick={(event) => tapPlace(target, value, side, othersAt(event, place, places))}
            onKeyDown={(event) => {
              if (event.ctrlKey || event.metaKey || event.altKey) return;
              if (event.key === 'Enter' || event.key === ' ') tapPlace(target, value, side, []);
              else if (event.key === 'Delete' || event.key === 'Backspace') clear(target);
              else {
                const typed = event.key.length === 1 ? typedValue(item, current, event.key.toLowerCase()) : undefined;
                if (typeof typed !== 'string') return;
                recordValue(target, typed);
              }
              event.preventDefault();
            }}
          >
            <title>{index.placeLabel(place.kind, place.key)}</title>
            {patches.map((patch) =>
              patch.path === undefined ? (
                <g key={String(patch.at)}>
                  {/* The spot that one sees is smaller than the one that takes a finger. */}
                  <circle class="reach" cx={patch.at[0]} cy={patch.at[1]} r={spotRadius * 2} />
                  <circle class="shape spot" cx={patch.at[0]} cy={patch.at[1]} r={spotRadius} />
                </g>
              ) : (
                <path key={patch.path} class="shape" d={patch.path} fill-rule="evenodd" />
              ),
            )}
          </g>
        );
      })}
    </>
  );
}

/** What else of the same view lies under a pointer. */
function othersAt(event: MouseEvent, taken: Place, places: readonly TapPlace[]): readonly Place[] {
  if (event.detail === 0) return [];
  const names = document
    .elementsFromPoint(event.clientX, event.clientY)
    .flatMap((element) => (element.classList.contains('shape') ? [element.closest('[data-tap]')] : []))
    .map((element) => element?.getAttribute('data-tap')?.split('|')[0]);
  return places
    .map(({ place }) => place)
    .filter((place) => names.includes(`${place.kind}:${place.key}`) && place.key !== taken.key);
}
