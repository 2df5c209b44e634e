import { assessed, hasContent } from '../assessment.ts';
import type { CatalogueIndex } from '../catalogue.ts';

/** Where the lesion may be and why. */
export function ReasoningPanel(_props: { readonly index: CatalogueIndex }) {
  if (!hasContent.value) return <p>Nothing is recorded yet.</p>;
  const answer = assessed.value?.answer;
  return (
    <ol>
      {answer?.localisations.slice(0, 5).map(({ site, side, label, probability }) => (
        <li key={`${site} ${side}`}>
          {label} {side} {Math.round(100 * probability)} %
        </li>
      ))}
    </ol>
  );
}
