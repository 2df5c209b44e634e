import type { RedFlag } from '../../client/generated/api-types.ts';
import { assessed, hasContent, isCurrent, isReached } from '../assessment.ts';
import { catalogueIndex } from '../catalogue.ts';
import { Announcer } from './announcer.tsx';
import { urgencyWords } from './answer-words.ts';
import { followLead } from './follow-lead.ts';

/** Red flags above everything else, in every view of the exam, and what could not be decided for want of examination. */
export function FlagStrip() {
  const answer = hasContent.value ? assessed.value?.answer : undefined;
  const raised = answer?.redFlags.filter(({ state }) => state === 'present') ?? [];
  const open = answer?.redFlags.filter(({ state }) => state === 'not-assessable') ?? [];
  return (
    <div class="flags">
      <Announcer answer={answer} />
      {raised.length + open.length > 0 && (
        <section aria-label="Red flags">
          {raised.map((flag) => (
            <RaisedFlag key={flag.key} flag={flag} />
          ))}
          {open.length > 0 && <OpenFlags flags={open} />}
          {raised.length > 0 && !isCurrent.value && !isReached.value && (
            <p class="flag stale">No connection to the service: red flags are from an earlier state of the record.</p>
          )}
        </section>
      )}
    </div>
  );
}

function RaisedFlag({ flag: { label, urgency, action, because, source } }: { readonly flag: RedFlag }) {
  return (
    <details class={`flag raised ${urgency}`}>
      <summary>
        <span class="urgency">
          <span aria-hidden="true">⚑ </span>
          {urgencyWords[urgency]}
        </span>{' '}
        <strong>{label}.</strong> {action} <span class="ask">Why?</span>
      </summary>
      <Reasons because={because} />
      <p class="source">{source}</p>
    </details>
  );
}

function OpenFlags({ flags }: { readonly flags: readonly RedFlag[] }) {
  return (
    <details class="flag open">
      <summary>
        <strong>Not examined, and it matters:</strong> {flags.map(({ label }) => label).join('; ')}{' '}
        <span class="ask">What is missing?</span>
      </summary>
      {flags.map(({ key, label, urgency, because, action }) => (
        <div key={key}>
          <p>
            <strong>{label}</strong> ({urgencyWords[urgency].toLowerCase()} if present)
          </p>
          <Reasons because={because} />
          <p>If present: {action}</p>
        </div>
      ))}
    </details>
  );
}

function Reasons({ because }: Pick<RedFlag, 'because'>) {
  const { value: index } = catalogueIndex;
  const built = assessed.value?.built;
  return (
    <ul class="reasons">
      {because.map(({ finding, text }) => (
        <li key={`${finding} ${text}`}>
          {finding === null || index === undefined || built === undefined ? (
            text
          ) : (
            <button type="button" class="to-finding" onClick={() => followLead(finding, built, index)}>
              {text}
            </button>
          )}
        </li>
      ))}
    </ul>
  );
}
