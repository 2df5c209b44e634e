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
            <details key={tier} open={tier === 1}>
              <summary>
                <strong>{title}</strong> <span class="soft">({rows.length})</span>
              </summary>
              <ul>
                {rows.map((row) => (
                  <TestRow key={row.key} test={row} />
                ))}
              </ul>
            </details>
          )
        );
      })}
      {needless.length > 0 && (
        <details>
          <summary>
            <strong>Not needed here</strong> <span class="soft">({needless.length})</span>
          </summary>
          <ul>
            {needless.map((row) => (
              <TestRow key={row.key} test={row} />
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}

type ShownTest = Pick<Investigation, 'label' | 'because' | 'source' | 'guidance'> &
  Partial<Pick<Investigation, 'priority'>>;

function TestRow({ test }: { readonly test: ShownTest }) {
  const { label, because, source, guidance, priority = 'routine' } = test;
  const pressing = priorityWords[priority];
  return (
    <li class="test-row">
      {label}
      {pressing !== null && <span class="priority"> {pressing}</span>}
      <span class="because">{because}</span>
      <span class="source">
        {guidance === undefined ? (
          source
        ) : (
          <a href={guidance} rel="noreferrer external" target="_blank">
            {source}
          </a>
        )}
      </span>
    </li>
  );
}
