import { signal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { PracticePatient } from '../../client/generated/api-types.ts';
import { type CatalogueIndex, isNormalValue } from '../catalogue.ts';
import { addressOf } from '../draft/draft.ts';
import { partsOf } from '../recording/parts.ts';
import { AnswerView } from './answer-view.tsx';
import { CommitForm, countWords } from './commit-form.tsx';
import { FindItem } from './find-item.tsx';
import { NewPatient } from './new-patient.tsx';
import { answered, dismiss, failure, found, patient, said } from './practice-case.ts';
import { PracticeGroup } from './practice-group.tsx';

/** The part of the examination that is open; kept while another view is shown. */
const openPart = signal<string | undefined>(undefined);

/** Practice on simulated patients. It says throughout that they are invented, and leaves the draft of an exam alone. */
export function PracticeView({ index }: { readonly index: CatalogueIndex }) {
  return (
    <div class="practice">
      <p class="invented">
        <span aria-hidden="true">◇</span> Practice: every patient is simulated and invented.
      </p>
      <h2>Practise</h2>
      <p role="alert" class="failure">
        {failure.value}
      </p>
      <p class="unseen" role="status">
        {said.value}
      </p>
      {patient.value === undefined ? (
        <NewPatient />
      ) : (
        <>
          <Vignette patient={patient.value} />
          {answered.value === undefined ? <Bedside index={index} /> : <AnswerView {...answered.value} />}
        </>
      )}
    </div>
  );
}

function Vignette({ patient: { vignette, caution } }: { readonly patient: PracticePatient }) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus({ preventScroll: true }), []);
  return (
    <section class="vignette" aria-labelledby="vignette-name">
      <h3 id="vignette-name" ref={heading} tabIndex={-1}>
        Invented patient
      </h3>
      <p>{vignette}</p>
      <p class="soft">{caution}</p>
    </section>
  );
}

function Bedside({ index }: { readonly index: CatalogueIndex }) {
  const parts = partsOf(index);
  const part = parts.find(({ key }) => key === openPart.value) ?? parts[0];
  if (part === undefined) return null;
  return (
    <div class="bedside">
      <div class="examining">
        <button type="button" class="plain to-commit" onClick={goToCommitment}>
          Examined: {countWords(found.value.length)}. Say where the lesion is
        </button>
        <FindItem index={index} />
        <nav class="parts" aria-label="Parts of the examination">
          <ul>
            {parts.map(({ key, label }) => (
              <li key={key}>
                <button type="button" aria-pressed={key === part.key} onClick={() => (openPart.value = key)}>
                  {label}
                </button>
              </li>
            ))}
          </ul>
        </nav>
        <div class="part">
          <h3>{part.label}</h3>
          <p class="columns" aria-hidden="true">
            <span class="for-row">both sides</span>
            <span>right</span>
            <span>left</span>
          </p>
          {part.groups.map((group) => (
            <PracticeGroup key={`${part.key} ${group.section}`} group={group} part={part.label} index={index} />
          ))}
        </div>
      </div>
      <div class="committing">
        <FoundList index={index} />
        <CommitForm index={index} />
        <button type="button" class="plain" onClick={dismiss}>
          Leave this patient without an answer
        </button>
      </div>
    </div>
  );
}

/** The commitment stands below the examination where there is no room beside it. */
function goToCommitment(): void {
  document.getElementById('commit-name')?.scrollIntoView();
  document.getElementById('commit-name')?.focus({ preventScroll: true });
}

/** What was found so far, the newest first. */
function FoundList({ index }: { readonly index: CatalogueIndex }) {
  const rows = found.value.toReversed();
  return (
    <section class="found" aria-labelledby="found-name">
      <h3 id="found-name">Examined: {countWords(rows.length)}</h3>
      {rows.length === 0 && <p class="soft">Nothing yet. Each item on each side counts.</p>}
      {/* A list that scrolls must be reached by keyboard. */}
      <ul tabIndex={rows.length > 0 ? 0 : undefined} aria-label="What was found, the newest first">
        {rows.map(({ key, text, cell: { value } }) => {
          const { section, item } = addressOf(key);
          const row = index.item(section, item);
          const isNormal = row === undefined || value === undefined || isNormalValue(row, value);
          return (
            <li key={key} class={isNormal ? undefined : 'abnormal'}>
              <span aria-hidden="true">{isNormal ? '✓' : '◆'}</span>
              <span class="unseen">{isNormal ? '' : 'abnormal: '}</span> {text}
            </li>
          );
        })}
      </ul>
    </section>
  );
}
