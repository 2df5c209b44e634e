import type { ComponentChildren } from 'preact';
import { useEffect, useId, useState } from 'preact/hooks';
import { FaultList, hasFault } from './fault-list.tsx';
import { type NumberRead, readNumber } from './read-number.ts';

export type SoundNumber = Extract<NumberRead, { value: number }>;

interface NumberFieldProps {
  readonly label: string;
  readonly isLabelSeen?: boolean;
  readonly value: number | undefined;
  readonly pointer: string | undefined;
  /** What else is wrong with a number, in words; undefined for nothing. */
  readonly read?: (number: SoundNumber) => string | undefined;
  /** Gets undefined where the field was emptied. */
  readonly onTake: (number: SoundNumber | undefined) => void;
  /** What stands before the number, such as whether it is above or below it. */
  readonly before?: ComponentChildren;
  /** What stands behind the number, such as its unit. */
  readonly children?: ComponentChildren;
}

/** A number to type. What cannot be read is said below it, and what was recorded before it stands. */
export function NumberField({
  label,
  isLabelSeen = true,
  value,
  pointer,
  read,
  onTake,
  before,
  children,
}: NumberFieldProps) {
  const id = useId();
  const stated = value === undefined ? '' : String(value);
  const [typed, setTyped] = useState(stated);
  const [problem, setProblem] = useState<string>();
  const [meanings, setMeanings] = useState<readonly string[]>([]);
  const settle = (text: string): void => {
    setTyped(text);
    setProblem(undefined);
    setMeanings([]);
  };
  useEffect(() => settle(stated), [stated]);
  const take = (text: string): void => {
    if (text.trim() === '') {
      settle('');
      if (value !== undefined) onTake(undefined);
      return;
    }
    const number = readNumber(text);
    const found = 'problem' in number ? number.problem : read?.(number);
    if (found !== undefined || 'problem' in number) {
      setProblem(stated === '' ? `Not recorded. ${found}` : `${stated} stands. ${found}`);
      setMeanings(('meanings' in number && number.meanings) || []);
      return;
    }
    settle(String(number.value));
    onTake(number);
  };
  return (
    <div class="story-field number-field">
      <div class="number-row">
        {before}
        <label>
          <span class={isLabelSeen ? 'label' : 'unseen'}>{label}</span>
          <input
            type="text"
            inputMode="decimal"
            autocomplete="off"
            value={typed}
            aria-invalid={problem !== undefined || hasFault(pointer)}
            aria-describedby={id}
            onInput={({ currentTarget }) => setTyped(currentTarget.value)}
            onChange={({ currentTarget }) => take(currentTarget.value)}
          />
        </label>
        {children}
      </div>
      <FaultList id={id} pointer={pointer} problem={problem} />
      {meanings.length > 0 && (
        <p class="number-row">
          {meanings.map((meaning) => (
            <button key={meaning} type="button" class="plain" onClick={() => take(meaning)}>
              {meaning}
            </button>
          ))}
        </p>
      )}
    </div>
  );
}
