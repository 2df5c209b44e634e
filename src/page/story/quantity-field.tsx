import { useState } from 'preact/hooks';
import { NumberField, type SoundNumber } from './number-field.tsx';
import { offeredUnits, printedUnit, unitTyped } from './printed-unit.ts';
import type { Comparator } from './read-number.ts';
import { unitsOf, withQuantity } from './result-entries.ts';
import type { FieldProps } from './value-field.tsx';

/** As laboratories print them; empty for the number itself. */
const comparatorSigns: readonly (readonly [comparator: Comparator | '', sign: string])[] = [
  ['', '='],
  ['<', '<'],
  ['<=', '≤'],
  ['>=', '≥'],
  ['>', '>'],
];

interface QuantityFieldProps extends FieldProps {
  readonly onEmpty: () => void;
}

/** A number with its unit: one in common use, or any that is typed. */
export function QuantityField({ result, entry, pointer, edit, onEmpty }: QuantityFieldProps) {
  const units = unitsOf(result);
  const quantity = entry?.valueQuantity;
  const stated = quantity && unitTyped(quantity.code ?? quantity.unit ?? '', units);
  const [chosen, setChosen] = useState(stated ?? units[0] ?? '1');
  const [chosenSign, setChosenSign] = useState<Comparator | ''>('');
  const sign = quantity === undefined ? chosenSign : (quantity.comparator ?? '');
  const [isOther, setOther] = useState(false);
  const unit = stated ?? chosen;
  const offered = offeredUnits(units.includes(unit) ? units : [...units, unit]);
  const print = printedUnit(unit);
  const take = (value: number, comparator: Comparator | '', inUnit: string): void => {
    const measured = { value, unit: inUnit, ...(comparator && { comparator }) };
    const words = `${comparator}${value} ${printedUnit(unitTyped(inUnit, units))}`;
    edit(words.trim(), (entries) => withQuantity(entries, result, measured));
  };
  const takeUnit = (wanted: string): void => {
    setOther(false);
    setChosen(wanted);
    if (quantity !== undefined) take(quantity.value, sign, wanted);
  };
  return (
    <NumberField
      label={`${result.label}: number`}
      isLabelSeen={false}
      value={quantity?.value}
      pointer={pointer}
      before={
        <select
          aria-label={`${result.label}: above or below`}
          value={sign}
          onChange={({ currentTarget }) => {
            const wanted = currentTarget.value as Comparator | '';
            setChosenSign(wanted);
            if (quantity !== undefined) take(quantity.value, wanted, unit);
          }}
        >
          {comparatorSigns.map(([comparator, printed]) => (
            <option key={comparator} value={comparator}>
              {printed}
            </option>
          ))}
        </select>
      }
      onTake={(number: SoundNumber | undefined) => {
        if (number === undefined) onEmpty();
        else take(number.value, number.comparator ?? sign, number.unit ?? unit);
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
