import { effect, signal } from '@preact/signals';
import { catalogueIndex, indexCatalogue } from '../catalogue.ts';
import { service } from '../service.ts';
import { type Spelling, spelling } from '../settings.ts';

/** Whether the catalogue could not be fetched; it is asked for again by itself. */
export const catalogueIsMissing = signal(false);
const againMs = 3000;

/** Fetches the catalogue, in the spelling that is wanted, until it has come. */
export function followCatalogue(): void {
  effect(() => {
    void load(spelling.value);
  });
}

async function load(wanted: Spelling): Promise<void> {
  try {
    const { body: catalogue } = await service.readCatalogue({ spelling: wanted });
    if (wanted === spelling.peek()) catalogueIndex.value = indexCatalogue(catalogue);
    catalogueIsMissing.value = false;
  } catch {
    catalogueIsMissing.value = catalogueIndex.peek() === undefined;
    if (wanted === spelling.peek()) setTimeout(() => void load(wanted), againMs);
  }
}
