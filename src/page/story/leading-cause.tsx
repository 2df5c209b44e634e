import { effect, signal } from '@preact/signals';
import { type Assessed, assessed, faults, hasContent, isCurrent } from '../assessment.ts';
import { hrefOf } from '../view.ts';
import { changeOfFirst } from './rank-words.ts';

/** The newest answer and the one before it, which was of another state of the draft. */
const answers = signal<{ readonly now?: Assessed; readonly before?: Assessed }>({});

effect(() => {
  const next = assessed.value;
  const { now, before } = answers.peek();
  if (next === undefined) answers.value = {};
  else if (now === undefined) answers.value = { now: next };
  else if (now.built === next.built) answers.value = { now: next, ...(before && { before }) };
  else answers.value = { now: next, before: now };
});

/** The leading cause in one line, and how it stood before the last entry: for screens without room for the reasoning. */
export function LeadingCause() {
  const { now, before } = answers.value;
  const [first] = now?.answer.causes ?? [];
  const refused = faults.value.length;
  return (
    <p class="leading-cause" role="status">
      <a href={hrefOf('reasoning')}>
        {!hasContent.value || now === undefined ? (
          'No cause is ranked yet.'
        ) : first === undefined ? (
          'No cause stands out.'
        ) : (
          <>
            1. <strong>{first.label}</strong> {Math.round(100 * first.probability)} %{' '}
            {changeOfFirst(now.answer.causes, before?.answer.causes)}
          </>
        )}
      </a>
      {refused > 0
        ? ` Not updated: ${refused === 1 ? 'an entry is' : `${refused} entries are`} not accepted.`
        : !isCurrent.value && hasContent.value && ' …'}
    </p>
  );
}
