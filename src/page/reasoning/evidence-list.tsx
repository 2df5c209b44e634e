import { useState } from 'preact/hooks';
import type { Evidence } from '../../client/generated/api-types.ts';
import { strengthOf } from './answer-words.ts';

interface EvidenceListProps {
  readonly title: string;
  readonly evidence: readonly Evidence[];
  readonly onFinding: (pointer: string) => void;
  /** Whether the strength of each is worth saying: what is unexplained has none for the site. */
  readonly hasStrength?: boolean;
}

const shownFirst = 5;

/** Findings about one site, the weightiest first, each a way to its place in the record. */
export function EvidenceList({ title, evidence, onFinding, hasStrength = true }: EvidenceListProps) {
  const [isWhole, setWhole] = useState(false);
  const shown = isWhole ? evidence : evidence.slice(0, shownFirst);
  if (evidence.length === 0) return null;
  return (
    <div class="evidence">
      <h4>
        {title} <span class="soft">({evidence.length})</span>
      </h4>
      <ul>
        {shown.map((one) => (
          <li key={`${one.finding} ${one.side} ${one.text}`}>
            <button type="button" class="to-finding" onClick={() => onFinding(one.finding)}>
              {one.text}
            </button>{' '}
            {hasStrength && <Strength of={one} />}
            <span class="because">{one.because}</span>
          </li>
        ))}
      </ul>
      {evidence.length > shownFirst && (
        <button type="button" class="plain more" aria-expanded={isWhole} onClick={() => setWhole(!isWhole)}>
          {isWhole ? 'Fewer' : `${evidence.length - shownFirst} more`}
        </button>
      )}
    </div>
  );
}

function Strength({ of }: { readonly of: Evidence }) {
  const { sign, words } = strengthOf(of);
  return (
    <span class="strength" title={words}>
      <span aria-hidden="true">{sign}</span>
      <span class="unseen">{words}</span>
    </span>
  );
}
