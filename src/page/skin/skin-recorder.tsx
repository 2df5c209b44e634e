import { useEffect } from 'preact/hooks';
import type { CatalogueIndex } from '../catalogue.ts';
import { lazy } from '../frame/lazy.tsx';
import { partsOf } from '../recording/parts.ts';
import { wantedCell } from '../view.ts';
import { showsTable } from './skin-choice.ts';
import { skinSection } from './skin-findings.ts';
import { SkinTable } from './skin-table.tsx';

const SkinDrawing = lazy(() => import('./skin-drawing.tsx').then((part) => part.SkinDrawing));

/** Sensation as it is recorded: on the body, or modality by modality in a table. */
export function SkinRecorder({ index }: { readonly index: CatalogueIndex }) {
  const group = partsOf(index)
    .flatMap(({ groups }) => groups)
    .find(({ section }) => section === skinSection);
  const wanted = wantedCell.value;
  useEffect(() => {
    // What is asked for is shown on the body, which has every place.
    if (wanted?.startsWith(`${skinSection}/`)) showsTable.value = false;
  }, [wanted]);
  if (group === undefined) return null;
  const ways = [
    [false, 'On the body'],
    [true, 'In a table'],
  ] as const;
  return (
    <>
      <fieldset class="choice-row">
        <legend class="unseen">Way of recording</legend>
        <div class="choices">
          {ways.map(([isTable, label]) => (
            <button
              key={label}
              type="button"
              aria-pressed={showsTable.value === isTable}
              onClick={() => {
                showsTable.value = isTable;
              }}
            >
              {label}
            </button>
          ))}
        </div>
      </fieldset>
      {showsTable.value ? <SkinTable group={group} index={index} /> : <SkinDrawing items={group.items} index={index} />}
    </>
  );
}
