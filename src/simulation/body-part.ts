import { skinPlace } from '../anatomy/skin-places.ts';
import type { ProbeTarget } from '../localisation/observation/probe-models.ts';

/** Part of the body at which an item is examined: its region on its side. */
export function partOf({ item, side, place }: ProbeTarget): string {
  const skin = place?.kind === 'landmark' || place?.kind === 'dermatome' ? skinPlace(place.kind, place.key) : undefined;
  return `${skin?.region ?? item.region} ${side}`;
}
