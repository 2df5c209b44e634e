import type { CatalogueIndex } from '../catalogue.ts';

export function StoryView(_props: { readonly index: CatalogueIndex }) {
  return <h2>History</h2>;
}
