import { useEffect, useRef, useState } from 'preact/hooks';
import { assessed, builtExam, hasContent, isCurrent } from '../assessment.ts';
import type { CatalogueIndex } from '../catalogue.ts';
import { draft } from '../draft/draft-store.ts';
import { view } from '../view.ts';
import { AboutFields, type FieldFaults } from './about-fields.tsx';
import { OpenPoints } from './open-points.tsx';
import { fieldIn, placeAt } from './places.ts';
import { Presentation } from './presentation.tsx';
import { PrintSheet } from './print-sheet.tsx';
import { followDraftOfSending, type SendState, sendState } from './send-exam.ts';
import { SendPanel } from './send-panel.tsx';
import { followSentExam } from './sent-exam.ts';
import { SentView } from './sent-view.tsx';
import { TestList } from './test-list.tsx';

followSentExam();
followDraftOfSending();

/** What goes out: to read, to print, to choose and to send; or, under the id of an exam that was sent, that exam. */
export function FinishView({ index }: { readonly index: CatalogueIndex }) {
  const { detail } = view.value;
  return detail === undefined ? <DraftView index={index} /> : <SentView id={detail} index={index} />;
}

function DraftView({ index }: { readonly index: CatalogueIndex }) {
  const [hasTried, setTried] = useState(false);
  const title = useRef<HTMLHeadingElement>(null);
  const { corrects } = draft.value;
  useEffect(() => {
    if (corrects !== undefined) title.current?.focus();
  }, [corrects?.id]);
  const answer = assessed.value?.answer;
  return (
    <div class="finish">
      <h2 ref={title} tabIndex={-1}>
        {corrects === undefined ? 'Finish' : 'Correct an exam that was sent'}
      </h2>
      {corrects !== undefined && (
        <p>Change findings under Examine, and what is below here; then send it. What was sent stays in its history.</p>
      )}
      {hasContent.value && <OpenPoints index={index} />}
      {!hasContent.value && <p>Nothing is recorded yet.</p>}
      {answer !== undefined && (
        <>
          {!isCurrent.value && <p role="status">What follows is of an earlier state of the record.</p>}
          <Presentation answer={answer} />
          <TestList answer={answer} index={index} />
        </>
      )}
      <AboutFields faults={fieldFaults(sendState.value, index)} tellsMissing={hasTried} />
      <SendPanel index={index} onTry={() => setTried(true)} />
      <PrintSheet draft={draft.value} answer={answer} built={assessed.value?.built ?? builtExam.value} index={index} />
    </div>
  );
}

/** What the service said of fields of this view that are still as they were sent. */
function fieldFaults(state: SendState, index: CatalogueIndex): FieldFaults {
  if (state.kind !== 'refused') return {};
  const now = builtExam.value?.exam;
  return Object.fromEntries(
    state.faults.flatMap(({ pointer, message }) => {
      const place = placeAt(pointer, state.of, index);
      const field = place?.kind === 'field' ? place.field : fieldIn(message);
      const isAsSent = field !== undefined && JSON.stringify(now?.[field]) === JSON.stringify(state.of.exam[field]);
      return isAsSent ? [[field, message] as const] : [];
    }),
  );
}
