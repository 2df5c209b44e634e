import { useEffect } from 'preact/hooks';
import { isReached } from '../assessment.ts';
import { saysAnything } from '../draft/draft.ts';
import { draft, lastChange, nextRedo, redo, startAfresh, undo } from '../draft/draft-store.ts';
import { canKeep } from '../draft/kept-draft.ts';
import { chooseSpelling, spelling } from '../settings.ts';
import { go, view } from '../view.ts';

/** Name, state of the draft, undo, spelling, and the way to throw everything away. */
export function Header() {
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== 'z') return;
      // The draft is out of sight then, and practice has nothing to undo.
      if (view.peek().key === 'practice') return;
      if ((event.target as HTMLElement).closest('input[type="text"], input[type="number"], textarea') !== null) return;
      event.preventDefault();
      if (event.shiftKey) redo();
      else undo();
    };
    document.addEventListener('keydown', onKey);
    return () => document.removeEventListener('keydown', onKey);
  }, []);
  const isEmpty = !saysAnything(draft.value);
  return (
    <header class="top">
      <h1>Neurological examination</h1>
      <p class="state" role="status">
        {draft.value.corrects !== undefined && <span class="mark">Correcting an exam already sent. </span>}
        {!isReached.value && <span class="mark">The service is out of reach; what you record is kept here. </span>}
        {!canKeep.value && <span class="mark">This browser keeps nothing: a reload would lose the draft. </span>}
      </p>
      <p class="unseen" role="status">
        {lastChange.value}
      </p>
      <div class="tools">
        <button
          type="button"
          class="plain"
          disabled={lastChange.value === undefined}
          onClick={undo}
          title={lastChange.value}
        >
          Undo
        </button>
        <details class="menu">
          <summary>More</summary>
          <div class="menu-body">
            <button
              type="button"
              class="plain"
              disabled={nextRedo.value === undefined}
              onClick={redo}
              title={nextRedo.value}
            >
              Redo
            </button>
            <label class="spelling">
              Spelling
              <select
                value={spelling.value}
                onChange={({ currentTarget }) => chooseSpelling(currentTarget.value === 'us' ? 'us' : 'uk')}
              >
                <option value="uk">UK</option>
                <option value="us">US</option>
              </select>
            </label>
            <button
              type="button"
              class="plain"
              disabled={isEmpty && draft.value.corrects === undefined}
              onClick={discard}
            >
              Discard this exam
            </button>
          </div>
        </details>
      </div>
    </header>
  );
}

function discard(): void {
  const question = 'Discard this examination? It is removed from this device and cannot be brought back.';
  if (!globalThis.confirm(question)) return;
  startAfresh();
  go('examine');
}
