import type { Investigation, LocalisationAnswer } from '../../client/generated/api-types.ts';

const tiers = [
  [1, 'First line'],
  [2, 'Second line'],
  [3, 'Targeted'],
] as const;

const priorityWords: Readonly<Record<Investigation['priority'], string | null>> = {
  stat: 'Immediate',
  urgent: 'Urgent',
  routine: null,
};

/** Investigations that guidance proposes, by tier, and those that it finds needless here. To read, not to order from. */
export function SuggestedTests({ workup, needless }: Pick<LocalisationAnswer, 'workup' | 'needless'>) {
  if (workup.length + needless.length === 0) return null;
  return (
    <section class="tests" aria-labelledby="tests-title">
      <h3 id="tests-title">Suggested tests</h3>
      {tiers.map(([tier, title]) => {
        const rows = workup.filter((one) => one.tier === tier);
        return (
          rows.length > 0 && (
            <div key={tier}>
              <h4>{title}</h4>
              <ul>
                {rows.map(({ key, label, priority, because, source, guidance }) => (
                  <li key={key}>
                    <strong>{label}</strong>
                    {priorityWords[priority] !== null && <span class="priority"> {priorityWords[priority]}</span>}
                    <span class="because">{because}</span>
                    <SourceLine source={source} guidance={guidance} />
                  </li>
                ))}
              </ul>
            </div>
          )
        );
      })}
      {needless.length > 0 && (
        <details>
          <summary>Not needed here ({needless.length})</summary>
          <ul>
            {needless.map(({ key, label, because, source }) => (
              <li key={key}>
                <strong>{label}</strong>
                <span class="because">{because}</span>
                <SourceLine source={source} guidance={undefined} />
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}

function SourceLine({ source, guidance }: { readonly source: string; readonly guidance: string | undefined }) {
  return (
    <span class="source">
      {guidance === undefined ? (
        source
      ) : (
        <a href={guidance} rel="noreferrer external" target="_blank">
          {source}
        </a>
      )}
    </span>
  );
}
