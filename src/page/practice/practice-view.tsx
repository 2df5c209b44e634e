import type { CatalogueIndex } from '../catalogue.ts';

export function PracticeView(_props: { readonly index: CatalogueIndex }) {
  return <h2>Practise</h2>;
}
