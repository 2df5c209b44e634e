import { useState } from 'preact/hooks';
import type { Cause, Reason } from '../../client/generated/api-types.ts';
import { likelihoodWords, percentWords } from './answer-words.ts';

const shownFirst = 4;

interface CausesProps {
  readonly causes: readonly Cause[];
  readonly onFinding: (pointer: string) => void;
}

/** What it may be, the likeliest first, each with what speaks for it and against it. */
export function Causes({ causes, onFinding }: CausesProps) {
  const [isWhole, setWhole] = useState(false);
  if (causes.length === 0) return null;
  const shown = isWhole ? causes : causes.slice(0, shownFirst);
  return (
    <section class="causes" aria-labelledby="causes-title">
      <h3 id="causes-title">What it may be</h3>
      <ol>
        {shown.map((cause, place) => (
          <li key={cause.key}>
            <details class="cause" open={place === 0}>
              <summary>
                <span class="name">
                  <strong>{cause.label}</strong>
                </span>
                <span class="probability">
                  <span class="words">{likelihoodWords(cause.probability)}</span>
                  <progress max={100} value={Math.round(100 * cause.probability)} aria-hidden="true" />
                  <span class="percent">{percentWords(cause.probability)}</span>
                </span>
              </summary>
              <ReasonList title="For" reasons={cause.supporting} onFinding={onFinding} />
              <ReasonList title="Against" reasons={cause.against} onFinding={onFinding} />
              {cause.supporting.length + cause.against.length === 0 && (
                <p class="soft">Only the site speaks for it so far.</p>
              )}
              <p class="source">{cause.source}</p>
            </details>
          </li>
        ))}
      </ol>
      {causes.length > shownFirst && (
        <button type="button" class="plain more" aria-expanded={isWhole} onClick={() => setWhole(!isWhole)}>
          {isWhole ? 'Fewer causes' : `${causes.length - shownFirst} more causes`}
        </button>
      )}
    </section>
  );
}

interface ReasonListProps {
  readonly title: string;
  readonly reasons: readonly Reason[];
  readonly onFinding: (pointer: string) => void;
}

function ReasonList({ title, reasons, onFinding }: ReasonListProps) {
  if (reasons.length === 0) return null;
  return (
    <div class="evidence">
      <h4>{title}</h4>
      <ul>
        {reasons.map(({ finding, text }) => (
          <li key={`${finding} ${text}`}>
            {finding === null ? (
              text
            ) : (
              <button type="button" class="to-finding" onClick={() => onFinding(finding)}>
                {text}
              </button>
            )}
          </li>
        ))}
      </ul>
    </div>
  );
}
