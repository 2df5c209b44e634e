import { effect, signal } from '@preact/signals';
import type { Catalogue } from '../../client/generated/api-types.ts';
import { catalogueIndex, indexCatalogue } from '../catalogue.ts';
import { spelling } from '../settings.ts';

/** Whether the catalogue could not be fetched; it is asked for again by itself. */
export const catalogueIsMissing = signal(false);
const againMs = 3000;

/** Fetches the catalogue, in the spelling that is wanted, until it has come. */
export function followCatalogue(): void {
  effect(() => {
    void load(spelling.value);
  });
}

async function load(wanted: string): Promise<void> {
  try {
    const response = await fetch(`/catalogue?spelling=${wanted}`, { headers: { Accept: 'application/json' } });
    if (!response.ok) throw new Error(`The service answered ${response.status}.`);
    const catalogue = (await response.json()) as Catalogue;
    if (wanted === spelling.peek()) catalogueIndex.value = indexCatalogue(catalogue);
    catalogueIsMissing.value = false;
  } catch {
    catalogueIsMissing.value = catalogueIndex.peek() === undefined;
    if (wanted === spelling.peek()) setTimeout(() => void load(wanted), againMs);
  }
}
