import { useRef, useState } from 'preact/hooks';
import type { ResultEntry } from '../draft/draft.ts';
import { ChoiceRow } from './choice-row.tsx';
import { FaultList } from './fault-list.tsx';
import { type Result, resultWords, withValue } from './result-entries.ts';

export interface FieldProps {
  readonly result: Result;
  readonly entry: ResultEntry | undefined;
  /** JSON Pointer of the entry; undefined while it states nothing and is not in the exam. */
  readonly pointer: string | undefined;
  readonly edit: (what: string, how: (entries: readonly ResultEntry[]) => readonly ResultEntry[]) => void;
}

/** The values to choose from; once one is chosen it stands alone, with a way back to the others. */
export function ValueField({ result, entry, pointer, edit }: FieldProps) {
  const [isOpen, setOpen] = useState(entry === undefined);
  const changer = useRef<HTMLButtonElement>(null);
  const value = entry?.value;
  const isNormal = value !== undefined && result.normal?.includes(value) === true;
  const words = resultWords(result, entry);
  return (
    <div class="result-value">
      {value !== undefined && (
        <p>
          <strong>{words}</strong>
          {isNormal && words !== 'Normal' && ' (normal)'}{' '}
          <button
            ref={changer}
            type="button"
            class="plain"
            aria-expanded={isOpen}
            aria-label={`${isOpen ? 'Close' : 'Another value'}: ${result.label}`}
            onClick={() => setOpen(!isOpen)}
          >
            {isOpen ? 'Close' : 'Another value'}
          </button>
        </p>
      )}
      {(isOpen || value === undefined) && (
        <ChoiceRow
          legend={result.label}
          isLegendSeen={false}
          choices={(result.values ?? []).map(({ key, label }) => ({
            key,
            label,
            ...(result.normal?.includes(key) && label !== 'Normal' && { hint: 'normal' }),
          }))}
          chosen={value}
          onChoose={(chosen) => {
            if (chosen === undefined) return setOpen(false);
            edit(resultWords(result, { value: chosen }), (entries) => withValue(entries, result, chosen));
            setOpen(false);
            // The button that was pressed goes away.
            requestAnimationFrame(() => changer.current?.focus());
          }}
        />
      )}
      <FaultList id={`result-${result.key}`} pointer={pointer} />
    </div>
  );
}
