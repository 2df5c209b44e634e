import type { CatalogueIndex } from '../catalogue.ts';
import { showCell } from '../recording/quick-entry.tsx';
import type { Place } from './places.ts';

/** Leads to where something is recorded or mended. */
export function PlaceLink({ place, index }: { readonly place: Place; readonly index: CatalogueIndex }) {
  if (place.kind === 'view') {
    return (
      <a class="plain" href={place.href}>
        Go to: {place.label}
      </a>
    );
  }
  const goThere = (): void => {
    if (place.kind === 'cells') showCell({ addresses: place.addresses }, index);
    else document.getElementById(`field-${place.field}`)?.focus();
  };
  return (
    <button type="button" class="plain" onClick={goThere}>
      Go to: {place.label}
    </button>
  );
}
