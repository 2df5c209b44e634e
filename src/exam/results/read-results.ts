import type { Fault } from '../../kernel/errors.ts';
import { joinWords } from '../../kernel/words.ts';
import {
  type CodedResult,
  type QuantityResult,
  type ResultRow,
  resultByKey,
  resultByLoinc,
  resultRows,
} from '../catalogue/results.ts';
import type { InvestigationResult } from '../exam.ts';
import { mayBeEchoed } from '../faults/echo.ts';
import { nearestKey } from '../faults/nearest-key.ts';
import { pointerInto } from '../faults/pointer.ts';
import type { SoundEntry } from '../faults/sound-parts.ts';
import type { QuantityValue, ResultEntry } from '../request.ts';
import { canonicalValue, takesOnlyItsOwnUnits, unitsTaken } from './canonical-quantity.ts';

interface ResultsRead {
  readonly results: readonly InvestigationResult[];
  readonly faults: readonly Fault[];
}

type ValueRead =
  | { readonly value: Pick<InvestigationResult, 'quantity' | 'comparator' | 'value'> }
  | { readonly fault: Fault };

const ranks: ReadonlyMap<string, number> = new Map(resultRows.map((row, rank) => [row.key, rank]));

/**
 * Results in catalogue order, each number in the unit of its row. Faults: a code and a key that disagree, a value of the
 * wrong kind, a unit of the wrong kind, a number that no living person has, and the same result twice with two values.
 */
export function readResults(entries: readonly SoundEntry<ResultEntry>[]): ResultsRead {
  const kept = new Map<string, InvestigationResult>();
  const faults: Fault[] = [];
  for (const { entry, pointer } of entries) {
    const row = rowOf(entry, pointer, faults);
    if (row === undefined) continue;
    const read = row.kind === 'quantity' ? measured(row, entry, pointer) : coded(row, entry, pointer);
    if ('fault' in read) {
      faults.push(read.fault);
      continue;
    }
    const note = entry.note === undefined ? {} : { note: entry.note };
    const result: InvestigationResult = { key: row.key, label: row.label, ...read.value, ...note, pointer };
    const first = kept.get(row.key);
    if (first === undefined) kept.set(row.key, result);
    else if (!saysTheSame(first, result)) faults.push(contradiction(first, result), contradiction(result, first));
    else if (first.note === undefined) kept.set(row.key, { ...first, ...note });
  }
  const results = [...kept.values()].sort((a, b) => (ranks.get(a.key) ?? 0) - (ranks.get(b.key) ?? 0));
  return { results, faults };
}

function rowOf(entry: ResultEntry, pointer: string, faults: Fault[]): ResultRow | undefined {
  const byCode = entry.code === undefined ? undefined : resultByLoinc.get(entry.code.code);
  const byKey = entry.key === undefined ? undefined : resultByKey.get(entry.key);
  if (byCode !== undefined && byKey !== undefined && byCode !== byKey) {
    faults.push({
      pointer: pointerInto(pointer, 'key'),
      code: 'CONTRADICTION',
      message: `The code of this result is that of '${byCode.key}', not of '${byKey.key}'.`,
      suggestion: byCode.key,
    });
    return undefined;
  }
  return byCode ?? byKey;
}

function measured(row: QuantityResult, { valueQuantity }: ResultEntry, pointer: string): ValueRead {
  const units = joinWords(unitsTaken(row), 'or');
  if (valueQuantity === undefined) {
    const message = `'${row.key}' is measured: give \`valueQuantity\` with its unit, such as ${units}.`;
    return { fault: { pointer: pointerInto(pointer, 'value'), code: 'WRONG_VALUE_PROPERTY', message } };
  }
  const at = pointerInto(pointer, 'valueQuantity');
  const value = canonicalValue(row, valueQuantity.value, unitOf(valueQuantity));
  if (value === null) {
    const property = valueQuantity.code === undefined ? 'unit' : 'code';
    const others = takesOnlyItsOwnUnits(row) ? '' : ', or another of the same kind';
    const message = `Not a UCUM unit for '${row.key}': write ${units}${others}.`;
    return { fault: { pointer: pointerInto(at, property), code: 'UNIT', message, suggestion: row.unit } };
  }
  const [low, high] = row.plausible;
  if (value < low || value > high) {
    const message = `'${row.key}' lies between ${low} and ${high} ${row.unit} in anybody: is the unit right?`;
    return { fault: { pointer: pointerInto(at, 'value'), code: 'OUT_OF_RANGE', message } };
  }
  const { comparator } = valueQuantity;
  return { value: { quantity: { value, unit: row.unit }, ...(comparator === undefined ? {} : { comparator }) } };
}

/** The unit as UCUM code; a unit in print is taken as one when no code is sent. */
function unitOf({ code, unit }: QuantityValue): string {
  return code ?? unit ?? '';
}

function coded(row: CodedResult, { value }: ResultEntry, pointer: string): ValueRead {
  const keys = row.values.map((grade) => grade.key);
  if (value === undefined) {
    const message = `'${row.key}' has no number: give \`value\`: ${joinWords(keys, 'or')}.`;
    return { fault: { pointer: pointerInto(pointer, 'valueQuantity'), code: 'WRONG_VALUE_PROPERTY', message } };
  }
  if (keys.includes(value)) return { value: { value } };
  const suggestion = nearestKey(value, keys);
  const unknown = mayBeEchoed(value) ? `'${row.key}' has no value '${value}'.` : `Unknown value of '${row.key}'.`;
  const hint = suggestion === undefined ? `Expected ${joinWords(keys, 'or')}.` : `Did you mean '${suggestion}'?`;
  return {
    fault: {
      pointer: pointerInto(pointer, 'value'),
      code: 'UNKNOWN_KEY',
      message: `${unknown} ${hint}`,
      ...(suggestion === undefined ? {} : { suggestion }),
    },
  };
}

function saysTheSame(a: InvestigationResult, b: InvestigationResult): boolean {
  const sameNote = a.note === undefined || b.note === undefined || a.note === b.note;
  return sameNote && a.value === b.value && a.quantity?.value === b.quantity?.value && a.comparator === b.comparator;
}

function contradiction(here: InvestigationResult, there: InvestigationResult): Fault {
  return {
    pointer: here.pointer,
    code: 'CONTRADICTION',
    message: `'${here.key}' has another value or note at ${there.pointer}.`,
  };
}
