import type { CatalogueIndex } from '../catalogue.ts';
import { partsOf } from '../recording/parts.ts';
import { SkinTable } from './skin-table.tsx';

/** Sensation as it is recorded: modality by modality, on the body and in a table. */
export function SkinRecorder({ index }: { readonly index: CatalogueIndex }) {
  const group = partsOf(index)
    .flatMap(({ groups }) => groups)
    .find(({ section }) => section === 'sensation');
  return group === undefined ? null : <SkinTable group={group} index={index} />;
}
