import { assessed, isCurrent } from '../assessment.ts';

/** Red flags above everything else, in every view of the exam. */
export function FlagStrip() {
  const flags = assessed.value?.answer.redFlags.filter(({ state }) => state === 'present') ?? [];
  return (
    <div class="flags" role="alert">
      {flags.map(({ key, label, action }) => (
        <p key={key}>
          <strong>⚑ {label}.</strong> {action}
        </p>
      ))}
      {flags.length > 0 && !isCurrent.value && <p>From an earlier state of the record.</p>}
    </div>
  );
}
