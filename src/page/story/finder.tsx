import type { RefObject } from 'preact';
import { useId, useMemo, useRef, useState } from 'preact/hooks';
import { lastChange, nextRedo, redo, undo } from '../draft/draft-store.ts';
import type { Row } from './find-rows.ts';
import { type LineRead, readLine } from './read-line.ts';

/** How many rows are offered at once. */
const offered = 7;

interface FinderProps {
  readonly label: string;
  /** False where a heading above says the same. */
  readonly isLabelSeen?: boolean;
  readonly rows: readonly Row[];
  readonly placeholder?: string;
  readonly field?: RefObject<HTMLInputElement>;
  /** Whether rows of several kinds are looked through, so that each says its own. */
  readonly kindOf?: (row: Row) => string;
  /** What is recorded of a row already, in words; empty for nothing. */
  readonly recordOf: (row: Row) => string;
  /** @returns what was done, in words */
  readonly onTake: (read: LineRead, isPresent: boolean) => string;
}

/**
 * A field to type into and what its line may mean. Enter takes the marked row as present, Shift and Enter as asked and
 * absent, which a line that begins with "no" does by itself; a tap takes either.
 */
export function Finder({ label, isLabelSeen = true, rows, placeholder, field, kindOf, recordOf, onTake }: FinderProps) {
  const id = useId();
  const own = useRef<HTMLInputElement>(null);
  const input = field ?? own;
  const [line, setLine] = useState('');
  const [chosen, setChosen] = useState(0);
  const [said, setSaid] = useState('');
  const [isOpen, setOpen] = useState(false);
  const reads = useMemo(() => readLine(line, rows, offered), [line, rows]);
  const marked = Math.min(chosen, reads.length - 1);
  const read = reads[marked];
  const isShown = isOpen && reads.length > 0;

  const take = (one: LineRead, isPresent: boolean): void => {
    setSaid(onTake(one, isPresent));
    setLine('');
    setChosen(0);
  };
  const nameOfOption = (at: number, isPresent: boolean): string => `${id}-${at}-${isPresent ? 'yes' : 'no'}`;

  return (
    <search
      class="finder"
      onFocusOut={({ currentTarget, relatedTarget }) => {
        if (!currentTarget.contains(relatedTarget as Node | null)) setOpen(false);
      }}
    >
      <label>
        <span class={isLabelSeen ? 'label' : 'unseen'}>{label}</span>
        <input
          ref={input}
          type="text"
          role="combobox"
          aria-expanded={isShown}
          aria-controls={`${id}-list`}
          aria-activedescendant={isShown && read ? nameOfOption(marked, !read.isNegated) : undefined}
          aria-autocomplete="list"
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          placeholder={placeholder}
          value={line}
          onFocus={() => setOpen(true)}
          onInput={({ currentTarget }) => {
            setLine(currentTarget.value);
            setChosen(0);
            setOpen(true);
          }}
          onKeyDown={(event) => {
            if (event.isComposing) return;
            if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
              const step = event.key === 'ArrowDown' ? 1 : -1;
              setChosen((marked + step + reads.length) % Math.max(1, reads.length));
            } else if (event.key === 'Enter' && isShown && read !== undefined)
              take(read, !(event.shiftKey || read.isNegated));
            else if (event.key === 'Escape' && line !== '') setLine('');
            // The field's own undoing has nothing to undo while it is empty.
            else if (line === '' && event.key.toLowerCase() === 'z' && (event.ctrlKey || event.metaKey)) {
              const change = event.shiftKey ? nextRedo.value : lastChange.value;
              if (event.shiftKey) redo();
              else undo();
              setSaid(change === undefined ? '' : `${event.shiftKey ? 'Redone' : 'Undone'}: ${change}`);
            } else return;
            event.preventDefault();
          }}
        />
      </label>
      <div id={`${id}-list`} role="listbox" aria-label={`${label}: what the line may mean`} hidden={!isShown}>
        {reads.map((one, at) => (
          // biome-ignore lint/a11y/useSemanticElements: a group of options, not of fields
          <div
            key={`${one.row.kind} ${one.row.key}`}
            role="group"
            aria-label={one.row.label}
            class={`found ${one === read ? 'marked' : ''}`}
          >
            <span class="found-name" aria-hidden="true">
              {one.row.label}
              {one.side !== undefined && `, ${one.side}`}
              {kindOf && <span class="soft"> {kindOf(one.row)}</span>}
              {recordOf(one.row) !== '' && <span class="soft"> · {recordOf(one.row)}</span>}
            </span>
            {(one.row.kind === 'results' ? [true] : [true, false]).map((isPresent) => (
              // biome-ignore lint/a11y/useFocusableInteractive: the focus stays in the field, which names the marked option
              // biome-ignore lint/a11y/useKeyWithClickEvents: Enter in the field takes it
              <span
                key={String(isPresent)}
                id={nameOfOption(at, isPresent)}
                role="option"
                class="found-choice"
                aria-selected={one === read && isPresent === !one.isNegated}
                aria-label={optionName(one, isPresent, recordOf(one.row))}
                // A tap leaves the focus, and so the list, in its place.
                onMouseDown={(event) => event.preventDefault()}
                onClick={() => take(one, isPresent)}
              >
                {optionWords(one, isPresent)}
              </span>
            ))}
          </div>
        ))}
      </div>
      {isOpen && line.trim() !== '' && reads.length === 0 && (
        <p class="hint">Nothing is called that. Try another word or the beginning of one.</p>
      )}
      <p class="said" role="status">
        {said}
      </p>
    </search>
  );
}

function optionWords({ row, number, value }: LineRead, isPresent: boolean): string {
  if (row.kind !== 'results') return isPresent ? 'Present' : 'Absent';
  if (value !== undefined) return value.label;
  return number !== undefined && 'value' in number
    ? `${number.comparator ?? ''}${number.value} ${number.unit ?? ''}`.trim()
    : 'Enter';
}

function optionName(read: LineRead, isPresent: boolean, recorded: string): string {
  const side = read.side === undefined ? '' : `, ${read.side}`;
  const words = read.row.kind === 'results' ? optionWords(read, true) : isPresent ? 'present' : 'asked, absent';
  return `${read.row.label}${side}: ${words}${recorded === '' ? '' : `. Recorded: ${recorded}`}`;
}
