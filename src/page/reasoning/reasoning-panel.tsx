import { useEffect } from 'preact/hooks';
import type { LocalisationAnswer } from '../../client/generated/api-types.ts';
import { assessed, faults, hasContent, isCurrent, isReached } from '../assessment.ts';
import type { CatalogueIndex } from '../catalogue.ts';
import { SensorySection } from '../skin/sensory-section.tsx';
import { conclusionWords } from './answer-words.ts';
import { Causes } from './causes.tsx';
import { followLead, showItem } from './follow-lead.ts';
import { markedSites } from './marked-shapes.ts';
import { NeuraxisFigure } from './neuraxis-figure.tsx';
import { NextItems } from './next-items.tsx';
import { panelStateOf } from './panel-state.ts';
import { picture, wantPicture } from './picture-store.ts';
import { SiteList } from './site-list.tsx';
import { SuggestedTests } from './suggested-tests.tsx';

/** Where the lesion may be and why, what to examine next, what it may be and what would show it. */
export function ReasoningPanel({ index }: { readonly index: CatalogueIndex }) {
  useEffect(wantPicture, []);
  const state = panelStateOf({
    hasContent: hasContent.value,
    assessed: assessed.value,
    isReached: isReached.value,
    isCurrent: isCurrent.value,
    faults: faults.value,
  });
  return (
    <div class="reasoning">
      <h2 class="unseen">Where the lesion may be, and what it may be</h2>
      {state.kind === 'nothing-recorded' && (
        <p class="empty">Nothing is recorded yet. Where the lesion may be follows from the first finding on.</p>
      )}
      {state.kind === 'waiting' && <p class="empty">The record is being assessed …</p>}
      {state.kind === 'unreachable' && (
        <p class="empty">No connection to the service: nothing can be said of the site yet. What you record is kept.</p>
      )}
      {faults.value.length > 0 && <Faults />}
      {state.kind === 'answer' && (
        <>
          {state.outOfDate !== null && (
            <p class="out-of-date">
              <strong>Out of date.</strong> {state.outOfDate}
            </p>
          )}
          <Answer
            answer={state.assessed.answer}
            onFinding={(pointer) => followLead(pointer, state.assessed.built, index)}
            onItem={(item, side, place) => showItem(item, side, place, index)}
          />
          <SensorySection index={index} />
        </>
      )}
    </div>
  );
}

function Faults() {
  return (
    <div class="faults">
      <p>
        <strong>The service does not accept the record as it stands:</strong>
      </p>
      <ul>
        {faults.value.map(({ pointer, message }) => (
          <li key={`${pointer} ${message}`}>{message}</li>
        ))}
      </ul>
    </div>
  );
}

interface AnswerProps {
  readonly answer: LocalisationAnswer;
  readonly onFinding: (pointer: string) => void;
  readonly onItem: (item: string, side: 'left' | 'right' | null, place?: string) => void;
}

function Answer({ answer, onFinding, onItem }: AnswerProps) {
  const { heading, advice } = conclusionWords(answer);
  const drawn = picture.value;
  const sites = drawn === undefined ? [] : markedSites(drawn.neuraxis, answer);
  return (
    <div class="answer">
      <div class="conclusion">
        <p class="heading">{heading}</p>
        {advice !== undefined && <p>{advice}</p>}
      </div>
      <SiteList sites={answer.localisations} marked={new Set(sites.map(({ rank }) => rank))} onFinding={onFinding} />
      {drawn !== undefined && <NeuraxisFigure picture={drawn} answer={answer} sites={sites} />}
      <NextItems items={answer.nextExamination} onItem={onItem} />
      <Causes causes={answer.causes} onFinding={onFinding} />
      <SuggestedTests workup={answer.workup} needless={answer.needless} />
    </div>
  );
}
