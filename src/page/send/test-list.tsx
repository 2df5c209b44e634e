import { useState } from 'preact/hooks';
import type { LocalisationAnswer } from '../../client/generated/api-types.ts';
import type { CatalogueIndex } from '../catalogue.ts';
import { change, draft } from '../draft/draft-store.ts';
import { furtherTests, type TestRow, testRows, withTest } from './chosen-tests.ts';
import { sentence } from './sentence.ts';

const tierLabels = { 1: 'First', 2: 'Next', 3: 'Later, if those do not tell' } as const;
export const priorityWords = { stat: 'at once', urgent: 'urgent', routine: 'routine' } as const;

interface TestListProps {
  readonly answer: LocalisationAnswer;
  readonly index: CatalogueIndex;
}

/** What is proposed with the exam: all that is suggested, unless the examiner leaves something out or adds to it. */
export function TestList({ answer, index }: TestListProps) {
  const rows = testRows(draft.value, answer.workup, index);
  const choose = (key: string, label: string, isChosen: boolean): void =>
    change(`${label}: ${isChosen ? 'proposed' : 'left out'}`, (before) =>
      withTest(before, answer.workup, key, isChosen),
    );
  const added = rows.filter(({ isNew }) => isNew);
  const besides = rows.filter(({ suggestion }) => suggestion === undefined);
  return (
    <section class="block propose" aria-labelledby="propose-title">
      <h3 id="propose-title" tabIndex={-1}>
        Tests to propose
      </h3>
      <p class="hint" id="field-requests" tabIndex={-1}>
        Each one that is ticked is sent as a proposal, not as an order.
      </p>
      {added.length > 0 && (
        <p class="new">
          ◆ {added.length} suggested since you chose, and not ticked.{' '}
          <button
            type="button"
            class="plain"
            onClick={() =>
              change('New tests: proposed', (before) =>
                added.reduce((now, { key }) => withTest(now, answer.workup, key, true), before),
              )
            }
          >
            Tick {added.length === 1 ? 'it' : 'them all'}
          </button>
        </p>
      )}
      {rows.length === 0 && <p>None is suggested as the record stands.</p>}
      {([1, 2, 3] as const).map((tier) => {
        const ofTier = rows.filter(({ suggestion }) => suggestion?.tier === tier);
        return (
          ofTier.length > 0 && (
            <fieldset key={tier}>
              <legend>{tierLabels[tier]}</legend>
              <ul>
                {ofTier.map((row) => (
                  <TestItem key={row.key} row={row} choose={choose} />
                ))}
              </ul>
            </fieldset>
          )
        );
      })}
      {besides.length > 0 && (
        <fieldset>
          <legend>Not suggested as the record stands</legend>
          <ul>
            {besides.map((row) => (
              <TestItem key={row.key} row={row} choose={choose} />
            ))}
          </ul>
        </fieldset>
      )}
      <AddTest rows={rows} index={index} choose={choose} />
      {answer.needless.length > 0 && (
        <div class="needless">
          <h4>Not needed here</h4>
          <ul>
            {answer.needless.map(({ key, label, because, source }) => (
              <li key={key}>
                <strong>{label}.</strong> {sentence(because)} <span class="source">{source}</span>
              </li>
            ))}
          </ul>
        </div>
      )}
    </section>
  );
}

type Choose = (key: string, label: string, isChosen: boolean) => void;

function TestItem({ row, choose }: { readonly row: TestRow; readonly choose: Choose }) {
  const { key, label, isChosen, isNew, suggestion } = row;
  return (
    <li class="test">
      <label>
        <input
          type="checkbox"
          checked={isChosen}
          aria-describedby={`why-${key}`}
          onChange={({ currentTarget }) => choose(key, label, currentTarget.checked)}
        />
        <span>
          <strong>{label}</strong>
          {suggestion && <span class={`priority ${suggestion.priority}`}> {priorityWords[suggestion.priority]}</span>}
        </span>
      </label>
      <p id={`why-${key}`} class="why">
        {suggestion === undefined ? (
          'You ask for it; the service does not suggest it, or not any more. It stays until you untick it.'
        ) : (
          <>
            {sentence(suggestion.because)} <span class="source">{suggestion.source}</span>
          </>
        )}
      </p>
      {isNew && (
        <p class="new">
          ◆ New since you chose.{' '}
          <button type="button" class="plain" onClick={() => choose(key, label, false)}>
            Leave it out
          </button>
        </p>
      )}
    </li>
  );
}

function AddTest({
  rows,
  index,
  choose,
}: {
  readonly rows: readonly TestRow[];
  readonly index: CatalogueIndex;
  readonly choose: Choose;
}) {
  const [typed, setTyped] = useState('');
  const [said, setSaid] = useState('');
  const further = furtherTests(rows, index);
  const wanted = typed.trim().toLowerCase();
  const fitting = further.filter(({ label }) => label.toLowerCase().includes(wanted));
  const one =
    fitting.find(({ label }) => label.toLowerCase() === wanted) ?? (fitting.length === 1 ? fitting[0] : undefined);
  return (
    <form
      class="add-test"
      onSubmit={(event) => {
        event.preventDefault();
        if (wanted === '') return;
        if (one === undefined) {
          setSaid(
            fitting.length === 0
              ? 'No investigation is called that.'
              : `${fitting.length} are called that: choose one.`,
          );
          return;
        }
        choose(one.key, one.label, true);
        setSaid(`Added: ${one.label}.`);
        setTyped('');
      }}
    >
      <label for="add-test">Add another test</label>
      <div class="line">
        <input
          id="add-test"
          type="text"
          list="further-tests"
          autocomplete="off"
          value={typed}
          onInput={({ currentTarget }) => {
            setTyped(currentTarget.value);
            setSaid('');
          }}
        />
        <button type="submit" class="plain">
          Add
        </button>
      </div>
      <datalist id="further-tests">
        {further.map(({ key, label }) => (
          <option key={key} value={label} />
        ))}
      </datalist>
      <p class="hint" role="status">
        {said}
      </p>
    </form>
  );
}
