import { useEffect, useState } from 'preact/hooks';
import type { Item } from '../../client/generated/api-types.ts';
import { type CatalogueIndex, fullValue, isNormalValue, valuesOf } from '../catalogue.ts';
import { addressOf } from '../draft/draft.ts';
import { draft } from '../draft/draft-store.ts';
import { wantPicture } from '../reasoning/picture-store.ts';
import { wantedCell } from '../view.ts';
import { BodyMap } from './body-map.tsx';
import { type BodyPicture, type BodyView, bodyPicture } from './body-pictures.ts';
import { DrawnList } from './drawn-list.tsx';
import { ValueSwatch } from './pattern-fills.tsx';
import { takeInstead } from './record-on-skin.ts';
import {
  bothSides,
  chosenMeaning,
  chosenModality,
  chosenValue,
  chosenView,
  isEnlarged,
  lastTap,
  modalityOf,
  valueToRecord,
} from './skin-choice.ts';
import { SkinFigure } from './skin-figure.tsx';
import { patternOf, skinFindings, skinSection } from './skin-findings.ts';
import { meaningHints, meaningOf, patchesOf, type TapMeaning, tapMeanings } from './tap-meaning.ts';
import { nameOfTap } from './tap-patches.tsx';

interface SkinDrawingProps {
  readonly items: readonly Item[];
  readonly index: CatalogueIndex;
}

/** Sensation recorded by tapping a body: first what is tested, what a tap speaks of and what was found, then where. */
export function SkinDrawing({ items, index }: SkinDrawingProps) {
  useEffect(wantPicture, []);
  const picture = bodyPicture.value;
  const isWide = useIsWide();
  const item = modalityOf(items);
  useWantedCell(picture, index);
  if (item === undefined) return null;
  if (picture === undefined) {
    return <p role="status">The body is being fetched …</p>;
  }
  const meaning = chosenMeaning.value;
  const value = valueToRecord(item);
  const hint = meaningHints[meaning];
  return (
    <div class="skin-drawing">
      <Choices
        legend="Tested"
        options={items.map(({ key, label }) => ({ key, label }))}
        chosen={item.key}
        onChoose={(key) => {
          chosenModality.value = key;
          lastTap.value = undefined;
        }}
      />
      <Choices
        legend="A tap means"
        options={Object.entries(tapMeanings).map(([key, label]) => ({ key, label }))}
        chosen={meaning}
        onChoose={(key) => {
          chosenMeaning.value = key as TapMeaning;
          lastTap.value = undefined;
        }}
      />
      <ValueChoices item={item} value={value} />
      <label class="check">
        <input
          type="checkbox"
          checked={bothSides.value}
          onChange={({ currentTarget }) => {
            bothSides.value = currentTarget.checked;
          }}
        />
        Both sides at once
      </label>
      {hint !== undefined && <p class="hint">{hint}</p>}
      <BodyViews picture={picture} index={index} item={item} meaning={meaning} value={value} isWide={isWide} />
      <Instead item={item} value={value} index={index} />
      <AllModalities items={items} chosen={item} index={index} />
      <DrawnList index={index} />
    </div>
  );
}

interface ChoicesProps {
  readonly legend: string;
  readonly options: readonly { readonly key: string; readonly label: string }[];
  readonly chosen: string;
  readonly onChoose: (key: string) => void;
}

function Choices({ legend, options, chosen, onChoose }: ChoicesProps) {
  return (
    <fieldset class="choice-row">
      <legend>{legend}</legend>
      <div class="choices">
        {options.map(({ key, label }) => (
          <button key={key} type="button" aria-pressed={key === chosen} onClick={() => onChoose(key)}>
            {label}
          </button>
        ))}
      </div>
    </fieldset>
  );
}

/** The values, each with its filling: what is chosen here is drawn so. */
function ValueChoices({ item, value }: { readonly item: Item; readonly value: string }) {
  return (
    <fieldset class="choice-row">
      <legend>Found</legend>
      <div class="choices">
        {(valuesOf(item) ?? []).map(({ key }) => (
          <button
            key={key}
            type="button"
            class={isNormalValue(item, key) ? 'choice' : 'choice for-abnormal'}
            aria-pressed={key === value}
            onClick={() => {
              chosenValue.value = key;
              lastTap.value = undefined;
            }}
          >
            <ValueSwatch pattern={patternOf(item, key)} name={`value-${key}`} /> {fullValue(item, key)}
          </button>
        ))}
      </div>
    </fieldset>
  );
}

interface BodyViewsProps {
  readonly picture: BodyPicture;
  readonly index: CatalogueIndex;
  readonly item: Item;
  readonly meaning: TapMeaning;
  readonly value: string;
  readonly isWide: boolean;
}

/** Views are shown by twos where there is room: they come from the service in pairs. */
function BodyViews({ picture, isWide, ...rest }: BodyViewsProps) {
  const { views } = picture;
  const at = Math.max(
    0,
    views.findIndex(({ key }) => key === chosenView.value),
  );
  const shown = isWide ? pairOf(views, at) : views.slice(at, at + 1);
  return (
    <>
      <fieldset class="choice-row">
        <legend class="unseen">Picture</legend>
        <div class="choices">
          {views.map(({ key, label }, rank) => (
            <button
              key={key}
              type="button"
              aria-pressed={shown.some((view) => view.key === key)}
              onClick={() => {
                chosenView.value = views[rank]?.key;
                lastTap.value = undefined;
              }}
            >
              {label}
            </button>
          ))}
          <button
            type="button"
            aria-pressed={isEnlarged.value}
            onClick={() => {
              isEnlarged.value = !isEnlarged.value;
            }}
          >
            Enlarge
          </button>
        </div>
      </fieldset>
      <div class={`body-maps ${isEnlarged.value ? 'enlarged' : ''}`}>
        {shown.map((view) => (
          <figure key={view.key}>
            <BodyMap view={view} picture={picture} {...rest} />
            <figcaption>{view.label}</figcaption>
          </figure>
        ))}
      </div>
    </>
  );
}

/** Views of the same shape that follow one another, such as front and back, are looked at together. */
function pairOf(views: readonly BodyView[], at: number): readonly BodyView[] {
  const view = views[at];
  const isLike = (other: BodyView | undefined) => other?.width === view?.width;
  if (isLike(views[at + 1])) return views.slice(at, at + 2);
  return at > 0 && isLike(views[at - 1]) ? views.slice(at - 1, at + 1) : views.slice(at, at + 1);
}

/** What else lay under the last tap. */
function Instead({
  item,
  value,
  index,
}: {
  readonly item: Item;
  readonly value: string;
  readonly index: CatalogueIndex;
}) {
  const tap = lastTap.value;
  if (tap === undefined) return null;
  return (
    <fieldset class="choice-row instead">
      <legend>Instead of {index.placeLabel(tap.taken.kind, tap.taken.key)}</legend>
      <div class="choices">
        {tap.others.map((place) => (
          <button key={place.key} type="button" class="plain" onClick={() => takeInstead(item, place, value, index)}>
            {index.placeLabel(place.kind, place.key)}
          </button>
        ))}
      </div>
    </fieldset>
  );
}

/** Every modality with something recorded, small, so that what is dissociated is seen at once. */
function AllModalities({ items, chosen, index }: SkinDrawingProps & { readonly chosen: Item }) {
  const findings = skinFindings(draft.value, index);
  const recorded = items.filter(({ key }) => findings.some(({ item }) => item.key === key));
  if (recorded.length < 2) return null;
  return (
    <section class="all-modalities" aria-labelledby="all-modalities-name">
      <h3 id="all-modalities-name">All that was tested</h3>
      <div class="figures">
        {recorded.map((item) => (
          <figure key={item.key} class="small-figure">
            <SkinFigure
              findings={findings.filter((one) => one.item === item)}
              index={index}
              name={`small-${item.key}`}
            />
            <figcaption>
              <button
                type="button"
                class="plain"
                aria-pressed={item === chosen}
                onClick={() => {
                  chosenModality.value = item.key;
                }}
              >
                {item.label}
              </button>
            </figcaption>
          </figure>
        ))}
      </div>
    </section>
  );
}

const wide = '(min-width: 48rem)';

function useIsWide(): boolean {
  const [isWide, setWide] = useState(() => matchMedia(wide).matches);
  useEffect(() => {
    const query = matchMedia(wide);
    const follow = (): void => setWide(query.matches);
    query.addEventListener('change', follow);
    return () => query.removeEventListener('change', follow);
  }, []);
  return isWide;
}

/** Turns to the place of a cell that was asked for, and focuses it. */
function useWantedCell(picture: BodyPicture | undefined, index: CatalogueIndex): void {
  const wanted = wantedCell.value;
  useEffect(() => {
    if (wanted === undefined || picture === undefined) return;
    const { section, item, place, side } = addressOf(wanted);
    const view = place && picture.views.find((one) => patchesOf(place, one, picture, index.catalogue).length > 0);
    if (section !== skinSection || place === undefined || side === 'midline' || view === undefined) return;
    chosenModality.value = item;
    chosenMeaning.value = meaningOf(place, picture);
    chosenView.value = view.key;
    wantedCell.value = undefined;
    // After the view has been drawn.
    requestAnimationFrame(() => {
      const patch = document.querySelector<SVGElement>(`[data-tap="${CSS.escape(nameOfTap(place, side))}"]`);
      patch?.focus();
      patch?.scrollIntoView({ block: 'center' });
    });
  }, [wanted, picture]);
}
