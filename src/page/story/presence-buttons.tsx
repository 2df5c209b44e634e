import { presenceWords } from './statements.ts';

interface PresenceButtonsProps {
  readonly label: string;
  /** Undefined where it was not asked. */
  readonly isPresent: boolean | undefined;
  readonly onState: (isPresent: boolean) => void;
}

/** Present, or asked and absent. */
export function PresenceButtons({ label, isPresent, onState }: PresenceButtonsProps) {
  return (
    <>
      {[true, false].map((one) => (
        <button
          type="button"
          key={String(one)}
          class="plain presence"
          aria-pressed={isPresent === one}
          aria-label={`${label}: ${presenceWords(one)}`}
          onClick={() => onState(one)}
        >
          {one ? 'Present' : 'Absent'}
        </button>
      ))}
    </>
  );
}
