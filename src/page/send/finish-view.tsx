import type { CatalogueIndex } from '../catalogue.ts';

export function FinishView(_props: { readonly index: CatalogueIndex }) {
  return <h2>Finish</h2>;
}
