import type { CatalogueIndex } from '../catalogue.ts';
import { type CellAddress, cellKey } from '../draft/draft.ts';
import { draft, setCell } from '../draft/draft-store.ts';
import { ValueSwatch } from './pattern-fills.tsx';
import { findingWords, isAbnormal, patternOf, type SkinFinding, skinFindings, skinSection } from './skin-findings.ts';

const addressOfFinding = ({ item, place, side }: SkinFinding): CellAddress => ({
  section: skinSection,
  item: item.key,
  place,
  side,
});

/** What is recorded of the skin, in words, each with a way to take it back. */
export function DrawnList({ index }: { readonly index: CatalogueIndex }) {
  const findings = skinFindings(draft.value, index);
  return (
    <section class="drawn" aria-labelledby="drawn-name">
      <h3 id="drawn-name" tabIndex={-1}>
        Recorded
      </h3>
      {findings.length === 0 && <p class="hint">Nothing yet.</p>}
      <ul>
        {findings.map((finding) => {
          const address = addressOfFinding(finding);
          const words = findingWords(finding, index);
          return (
            <li key={cellKey(address)}>
              <ValueSwatch
                pattern={patternOf(finding.item, finding.value)}
                name={`list-${cellKey(address)}`.replace(/\W/g, '-')}
              />
              <span class={isAbnormal(finding) ? 'abnormal-words' : ''}>{words}</span>
              <button
                type="button"
                class="plain"
                onClick={() => {
                  setCell(`${words}: removed`, address, undefined);
                  document.getElementById('drawn-name')?.focus();
                }}
              >
                Remove<span class="unseen"> {words}</span>
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
