import { useRef, useState } from 'preact/hooks';
import type { LocalisationAnswer } from '../../client/generated/api-types.ts';
import { type CopyOutcome, copyText } from './copy-text.ts';

const said: Readonly<Record<CopyOutcome, string>> = {
  copied: 'Copied.',
  selected: 'Selected: copy it with Ctrl+C, ⌘C or the menu of the selection.',
};

/** The examination in prose, with its caution, to read, copy or print. */
export function Presentation({ answer }: { readonly answer: LocalisationAnswer }) {
  const shown = useRef<HTMLDivElement>(null);
  const [outcome, setOutcome] = useState<{ readonly of: string; readonly is: CopyOutcome }>();
  const text = presentationWithCaution(answer);
  return (
    <section class="block presentation" aria-labelledby="presentation-title">
      <h3 id="presentation-title">Presentation</h3>
      <div ref={shown} class="prose">
        {text.split(/\n{2,}/).map((paragraph) => (
          <p key={paragraph} class={paragraph === answer.caution ? 'soft' : undefined}>
            {paragraph}
          </p>
        ))}
      </div>
      <p class="buttons">
        <button
          type="button"
          class="plain"
          onClick={async () => {
            if (shown.current !== null) setOutcome({ of: text, is: await copyText(text, shown.current) });
          }}
        >
          Copy the presentation
        </button>
        <button type="button" class="plain" onClick={() => globalThis.print()}>
          Print on one page
        </button>
        <span role="status">{outcome?.of === text && said[outcome.is]}</span>
      </p>
    </section>
  );
}

/** The prose never goes anywhere without the caution. */
export function presentationWithCaution({ presentation, caution }: LocalisationAnswer): string {
  return presentation.includes(caution) ? presentation : `${presentation}\n\n${caution}`;
}
