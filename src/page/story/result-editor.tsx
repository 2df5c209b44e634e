import { useEffect, useRef } from 'preact/hooks';
import type { ResultEntry } from '../draft/draft.ts';
import { change } from '../draft/draft-store.ts';
import { QuantityField } from './quantity-field.tsx';
import { withNote, withoutResult } from './result-entries.ts';
import { elementIdOf, storyDetail } from './story-place.ts';
import { type FieldProps, ValueField } from './value-field.tsx';

interface ResultEditorProps extends Omit<FieldProps, 'edit'> {
  readonly wanted: object | undefined;
  readonly onClose: () => void;
}

/** One result: its number and unit or its value, a note, and what the service has against it. */
export function ResultEditor({ result, entry, pointer, wanted, onClose }: ResultEditorProps) {
  const box = useRef<HTMLLIElement>(null);
  useEffect(() => {
    if (wanted !== undefined) box.current?.querySelector<HTMLElement>('input, .choice, .result-value button')?.focus();
  }, [wanted]);
  const edit = (what: string, how: (entries: readonly ResultEntry[]) => readonly ResultEntry[]): void =>
    change(`${result.label}: ${what}`, (before) => ({ ...before, results: how(before.results) }));
  const remove = (): void => {
    onClose();
    // The field that had the focus goes away.
    document.getElementById(elementIdOf('results'))?.focus();
    if (entry !== undefined) edit('removed', (entries) => withoutResult(entries, result));
  };
  return (
    <li
      ref={box}
      {...(pointer !== undefined && { id: elementIdOf(storyDetail(pointer) ?? '') })}
      tabIndex={-1}
      class="result"
      aria-label={result.label}
    >
      <div class="result-head">
        <h3>{result.label}</h3>
        <button type="button" class="plain" aria-label={`Remove ${result.label}`} onClick={remove}>
          Remove
        </button>
      </div>
      {result.kind === 'quantity' ? (
        <QuantityField result={result} entry={entry} pointer={pointer} edit={edit} onEmpty={remove} />
      ) : (
        <ValueField result={result} entry={entry} pointer={pointer} edit={edit} />
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
