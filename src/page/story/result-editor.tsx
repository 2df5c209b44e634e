import { useEffect, useRef, useState } from 'preact/hooks';
import type { ResultEntry } from '../draft/draft.ts';
import { change } from '../draft/draft-store.ts';
import { ChoiceRow } from './choice-row.tsx';
import { FaultList } from './fault-list.tsx';
import { NumberField, type SoundNumber } from './number-field.tsx';
import { offeredUnits, printedUnit, unitTyped } from './printed-unit.ts';
import type { Comparator } from './read-number.ts';
import {
  type Result,
  resultWords,
  unitsOf,
  withNote,
  withoutResult,
  withQuantity,
  withValue,
} from './result-entries.ts';

interface ResultEditorProps {
  readonly result: Result;
  readonly entry: ResultEntry | undefined;
  /** JSON Pointer of the entry; undefined while it states nothing and is not in the exam. */
  readonly pointer: string | undefined;
  readonly isWanted: boolean;
  readonly onClose: () => void;
}

/** One result: its number and unit or its value, a note, and what the service has against it. */
export function ResultEditor({ result, entry, pointer, isWanted, onClose }: ResultEditorProps) {
  const box = useRef<HTMLLIElement>(null);
  useEffect(() => {
    if (isWanted) box.current?.querySelector<HTMLElement>('input, button')?.focus();
  }, [isWanted]);
  const edit = (what: string, how: (entries: readonly ResultEntry[]) => readonly ResultEntry[]): void =>
    change(`${result.label}: ${what}`, (before) => ({ ...before, results: how(before.results) }));
  const remove = (): void => {
    onClose();
    // The field that had the focus goes away.
    document.getElementById('results-name')?.focus();
    if (entry !== undefined) edit('removed', (entries) => withoutResult(entries, result));
  };
  return (
    <li ref={box} class="result" aria-label={result.label}>
      <div class="result-head">
        <h3>{result.label}</h3>
        <button type="button" class="plain" aria-label={`Remove ${result.label}`} onClick={remove}>
          Remove
        </button>
      </div>
      {result.kind === 'quantity' ? (
        <QuantityField result={result} entry={entry} pointer={pointer} edit={edit} onEmpty={remove} />
      ) : (
        <>
          <ChoiceRow
            legend={result.label}
            isLegendSeen={false}
            choices={(result.values ?? []).map(({ key, label }) => ({
              key,
              label,
              ...(result.normal?.includes(key) && label !== 'Normal' && { hint: 'normal' }),
            }))}
            chosen={entry?.value}
            onChoose={(value) =>
              value === undefined
                ? edit('taken back', (entries) => withoutResult(entries, result))
                : edit(resultWords(result, { value }), (entries) => withValue(entries, result, value))
            }
          />
          <FaultList id={`result-${result.key}`} pointer={pointer} />
        </>
      )}
      {entry !== undefined && (
        <label class="note">
          Note
          <input
            type="text"
            maxLength={2000}
            value={entry.note ?? ''}
            onChange={({ currentTarget: { value } }) => edit('note', (entries) => withNote(entries, result, value))}
          />
        </label>
      )}
    </li>
  );
}

interface QuantityFieldProps extends Pick<ResultEditorProps, 'result' | 'entry' | 'pointer'> {
  readonly edit: (what: string, how: (entries: readonly ResultEntry[]) => readonly ResultEntry[]) => void;
  readonly onEmpty: () => void;
}

function QuantityField({ result, entry, pointer, edit, onEmpty }: QuantityFieldProps) {
  const units = unitsOf(result);
  const quantity = entry?.valueQuantity;
  const stated = quantity && unitTyped(quantity.code ?? quantity.unit ?? '', units);
  const [chosen, setChosen] = useState(stated ?? units[0] ?? '1');
  const [isOther, setOther] = useState(false);
  const unit = stated ?? chosen;
  const offered = offeredUnits(units.includes(unit) ? units : [...units, unit]);
  const print = printedUnit(unit);
  const take = (value: number, comparator: Comparator | undefined, inUnit: string): void => {
    const measured = { value, unit: inUnit, ...(comparator && { comparator }) };
    const words = `${comparator ?? ''}${value} ${printedUnit(unitTyped(inUnit, units))}`;
    edit(words.trim(), (entries) => withQuantity(entries, result, measured));
  };
  const takeUnit = (wanted: string): void => {
    setOther(false);
    setChosen(wanted);
    if (quantity !== undefined) take(quantity.value, quantity.comparator, wanted);
  };
  return (
    <NumberField
      label={`${result.label}: number`}
      isLabelSeen={false}
      value={quantity?.value}
      comparator={quantity?.comparator}
      pointer={pointer}
      onTake={(number: SoundNumber | undefined) => {
        if (number === undefined) onEmpty();
        else take(number.value, number.comparator, number.unit ?? unit);
      }}
    >
      {isOther ? (
        <input
          type="text"
          class="unit"
          aria-label={`${result.label}: unit`}
          placeholder="UCUM code"
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          onChange={({ currentTarget: { value } }) =>
            takeUnit(value.trim() === '' ? unit : unitTyped(value.trim(), units))
          }
        />
      ) : (
        <select
          class="unit"
          aria-label={`${result.label}: unit`}
          value={offered.find((one) => one.print === print)?.code}
          onChange={({ currentTarget: { value } }) => {
            if (value === 'other') setOther(true);
            else takeUnit(value);
          }}
        >
          {offered.map((one) => (
            <option key={one.code} value={one.code}>
              {one.print === '' ? 'no unit' : one.print}
            </option>
          ))}
          <option value="other">another unit …</option>
        </select>
      )}
    </NumberField>
  );
}
