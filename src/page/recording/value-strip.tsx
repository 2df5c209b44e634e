import type { Keyed } from '../../client/generated/api-types.ts';
import { shortValue, valuesOf } from '../catalogue.ts';
import { cellKey, type NotTestedReason } from '../draft/draft.ts';
import { draft } from '../draft/draft-store.ts';
import { cellName, reasonWords } from './cell-state.ts';
import {
  clear,
  copyToOtherSide,
  nameOfCells,
  openCells,
  recordNote,
  recordNotTested,
  recordReinforced,
  recordValue,
  type Target,
} from './record.ts';

const reasons = Object.entries(reasonWords) as readonly (readonly [NotTestedReason, string])[];

/** What can be recorded of one cell, opened below its row: values, reasons for none, a note. */
export function ValueStrip(target: Target) {
  const { item, addresses, index } = target;
  const [address] = addresses;
  if (address === undefined) return null;
  const cell = draft.value.cells[cellKey(address)];
  const values = valuesOf(item);
  const isOneSide = addresses.length === 1 && address.side !== 'midline';
  return (
    <fieldset
      class="strip"
      onKeyDown={(event) => {
        if (event.key === 'Escape') closeStrip(target);
      }}
    >
      <legend>{cellName(item, addresses, index)}</legend>
      <div class="choices">
        {values === null ? (
          <BeatsField {...target} />
        ) : (
          values.map((value) => <Choice key={value.key} {...target} value={value} />)
        )}
      </div>
      <div class="choices reasons">
        <span class="choices-name" id={`reasons-${cellKey(address)}`}>
          Not tested because
        </span>
        {reasons.map(([reason, words]) => (
          <button
            type="button"
            key={reason}
            class="choice"
            aria-pressed={cell?.notTested === reason}
            aria-label={`Not tested: ${words}`}
            onClick={() => {
              recordNotTested(target, reason);
              closeStrip(target);
            }}
          >
            {words}
          </button>
        ))}
      </div>
      <div class="strip-more">
        {item.scale === 'reflex-grade' && (
          <label class="check">
            <input
              type="checkbox"
              checked={cell?.reinforced === true}
              disabled={cell?.value === undefined}
              onChange={({ currentTarget }) => recordReinforced(target, currentTarget.checked)}
            />
            With reinforcement
          </label>
        )}
        <label class="note">
          Note
          <input
            type="text"
            maxLength={2000}
            value={cell?.note ?? ''}
            onChange={({ currentTarget }) => recordNote(target, currentTarget.value.trim())}
          />
        </label>
        {isOneSide && (
          <button type="button" class="plain" disabled={cell === undefined} onClick={() => copyToOtherSide(target)}>
            Same on the {address.side === 'left' ? 'right' : 'left'}
          </button>
        )}
        <button type="button" class="plain" disabled={cell === undefined} onClick={() => clear(target)}>
          Clear
        </button>
        <button type="button" class="plain" onClick={() => closeStrip(target)}>
          Close
        </button>
      </div>
    </fieldset>
  );
}

/** Closes the strip and gives the focus back to the cell that it belongs to. */
function closeStrip({ addresses }: Target): void {
  const name = nameOfCells(addresses);
  openCells.value = undefined;
  const cells = document.querySelectorAll<HTMLElement>('[data-cells]');
  [...cells].find((cell) => cell.dataset.cells === name)?.focus({ preventScroll: true });
}

function Choice({ value, ...target }: Target & { readonly value: Keyed }) {
  const { item, addresses } = target;
  const cells = addresses.map((address) => draft.value.cells[cellKey(address)]);
  const isChosen = cells.every((cell) => cell?.value === value.key && cell.notTested === undefined);
  const isNormal = item.normal.includes(value.key);
  const short = shortValue(item, value.key);
  return (
    <button
      type="button"
      class={`choice ${isNormal ? 'for-normal' : 'for-abnormal'}`}
      aria-pressed={isChosen}
      aria-label={short === value.label ? value.label : `${short}: ${value.label}`}
      title={value.label}
      onClick={() => {
        recordValue(target, value.key);
        closeStrip(target);
      }}
    >
      {short}
    </button>
  );
}

function BeatsField(target: Target) {
  const { item, addresses } = target;
  const [address] = addresses;
  const value = address && draft.value.cells[cellKey(address)]?.value;
  const range = valuesOf(item) === null ? (item.values as { minimum: number; maximum: number }) : undefined;
  return (
    <label class="note">
      Beats
      <input
        type="number"
        inputMode="numeric"
        min={range?.minimum}
        max={range?.maximum}
        step={1}
        value={value ?? ''}
        onChange={({ currentTarget }) => {
          const beats = currentTarget.valueAsNumber;
          if (Number.isInteger(beats) && currentTarget.validity.valid) recordValue(target, beats);
        }}
      />
    </label>
  );
}
