import type { ComponentChildren } from 'preact';

interface ChoiceRowProps<Key extends string> {
  readonly legend: string;
  readonly choices: readonly { readonly key: Key; readonly label: ComponentChildren; readonly hint?: string }[];
  readonly chosen: Key | undefined;
  /** Gets undefined where the chosen one is pressed again. */
  readonly onChoose: (key: Key | undefined) => void;
  readonly isLegendSeen?: boolean;
}

/** One of a few, or none: a second press takes the choice back, which a group of radio buttons cannot. */
export function ChoiceRow<Key extends string>({
  legend,
  choices,
  chosen,
  onChoose,
  isLegendSeen = true,
}: ChoiceRowProps<Key>) {
  return (
    <fieldset class="choice-row">
      <legend class={isLegendSeen ? '' : 'unseen'}>{legend}</legend>
      <div class="choices">
        {choices.map(({ key, label, hint }) => (
          <button
            type="button"
            key={key}
            class="choice"
            aria-pressed={key === chosen}
            onClick={() => onChoose(key === chosen ? undefined : key)}
          >
            <span>{label}</span>
            {hint !== undefined && <span class="choice-hint"> {hint}</span>}
          </button>
        ))}
      </div>
    </fieldset>
  );
}
