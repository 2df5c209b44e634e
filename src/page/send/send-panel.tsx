import { useEffect, useRef } from 'preact/hooks';
import { builtExam, hasContent } from '../assessment.ts';
import type { CatalogueIndex } from '../catalogue.ts';
import { draft } from '../draft/draft-store.ts';
import { needsCredential } from '../settings.ts';
import { fieldAtFault } from './about-fields.tsx';
import { downloadJson } from './download.ts';
import { FaultList } from './open-points.tsx';
import { OtherKept } from './other-kept.tsx';
import { repeatWhenBack, type SendState, sendDraft, sendState } from './send-exam.ts';

interface SendPanelProps {
  readonly index: CatalogueIndex;
  /** That the examiner has tried, so that a field that is needed is told as missing. */
  readonly onTry: () => void;
}

/** The button that sends, and what became of it. */
export function SendPanel({ index, onTry }: SendPanelProps) {
  const { status, corrects } = draft.value;
  const isWithdrawal = status === 'entered-in-error';
  const { kind } = sendState.value;
  const isSending = kind === 'sending';
  const outcome = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (kind !== 'idle' && kind !== 'sending') outcome.current?.scrollIntoView({ block: 'start' });
  }, [kind]);
  const send = (): void => {
    onTry();
    const field = fieldAtFault(draft.peek());
    if (field !== undefined) {
      document.getElementById(`field-${field}`)?.focus();
      return;
    }
    const question =
      'Withdraw this exam as entered in error? Every finding and conclusion of it is then marked as entered in error wherever it was sent.';
    if (!isWithdrawal || globalThis.confirm(question)) void sendDraft(index);
  };
  const label = isWithdrawal ? 'Withdraw the exam' : corrects !== undefined ? 'Send the correction' : 'Send the exam';
  return (
    <section class="block send" aria-labelledby="send-title">
      <h3 id="send-title">Send</h3>
      {!hasContent.value && <p>Nothing is recorded yet, so there is nothing to send.</p>}
      <p class="buttons">
        <button type="button" class="main" disabled={!hasContent.value} aria-busy={isSending} onClick={send}>
          {isSending ? 'Sending …' : label}
        </button>
        <button
          type="button"
          class="plain"
          disabled={!hasContent.value}
          onClick={() => downloadJson('neuro-exam-not-sent.json', builtExam.peek()?.exam, 'application/json')}
        >
          Download the exam as JSON
        </button>
      </p>
      <p class="hint">
        The FHIR Bundle can be downloaded once the exam is sent. Nothing of it is kept on this device after that.
      </p>
      <div ref={outcome} role="status" class="outcome">
        <Outcome state={sendState.value} index={index} send={send} />
      </div>
    </section>
  );
}

interface OutcomeProps {
  readonly state: SendState;
  readonly index: CatalogueIndex;
  readonly send: () => void;
}

function Outcome({ state, index, send }: OutcomeProps) {
  const again = (
    <button type="button" class="plain" onClick={send}>
      Send again
    </button>
  );
  switch (state.kind) {
    case 'away':
      return (
        <>
          <p>
            <strong>Not sent: the service cannot be reached.</strong> Everything is kept on this device. Sending again
            is safe: the same exam is never kept twice.
          </p>
          <p class="buttons">
            {again}
            <label class="tick">
              <input
                type="checkbox"
                checked={state.repeats}
                onChange={({ currentTarget }) => repeatWhenBack(currentTarget.checked, index)}
              />
              Send by itself when the service is back
            </label>
          </p>
          {state.repeats && (
            <p class="hint">
              As long as this page is open; a change of the record ends it, so that you send it yourself.
            </p>
          )}
        </>
      );
    case 'refused':
      return (
        <>
          <p>
            <strong>Not sent: the service does not take it as it is.</strong> Everything is still here.
          </p>
          <FaultList faults={state.faults} built={state.of} index={index} />
        </>
      );
    case 'no-key':
      return (
        <>
          <p>
            <strong>Not sent: the service asks for a key.</strong> Enter it and send again.
          </p>
          <p class="buttons">
            <button
              type="button"
              class="plain"
              onClick={() => {
                needsCredential.value = true;
              }}
            >
              Enter a key
            </button>
            {again}
          </p>
        </>
      );
    case 'not-allowed':
      return (
        <>
          <p>
            <strong>Not sent: your key does not let you send this exam.</strong> Sending takes the scope exam.c; a
            correction takes exam.r and exam.u. {state.message}
          </p>
          <p class="buttons">
            <button
              type="button"
              class="plain"
              onClick={() => {
                needsCredential.value = true;
              }}
            >
              Enter another key
            </button>
          </p>
        </>
      );
    case 'failed':
      return (
        <>
          <p>
            <strong>Not sent.</strong> {state.message} Everything is still here.
          </p>
          <p class="buttons">{again}</p>
        </>
      );
    case 'other-kept':
      return <OtherKept why={state.why} kept={state.kept} index={index} />;
    default:
      return null;
  }
}
