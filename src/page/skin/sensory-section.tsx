import type { CatalogueIndex } from '../catalogue.ts';
import { draft } from '../draft/draft-store.ts';
import { lazy } from '../frame/lazy.tsx';
import { isAbnormal, skinFindings } from './skin-findings.ts';

const SensoryFindings = lazy(() => import('./sensory-findings.tsx').then((part) => part.SensoryFindings));

/** Abnormal sensation on a body, beside the reasoning; nothing where there is none. */
export function SensorySection({ index }: { readonly index: CatalogueIndex }) {
  if (!skinFindings(draft.value, index).some(isAbnormal)) return null;
  return (
    <section aria-labelledby="sensory-section-name">
      <h3 id="sensory-section-name">Abnormal sensation</h3>
      <SensoryFindings index={index} />
    </section>
  );
}
