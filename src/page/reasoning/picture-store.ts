/** The pictures of the service, fetched once when they are first wanted. */
import { signal } from '@preact/signals';
import type { Picture } from '../../client/generated/api-types.ts';
import { service } from '../service.ts';

export const picture = signal<Picture | undefined>(undefined);
const againMs = 5000;
let isWanted = false;

/** Asks for the pictures until they have come. They are an aid: without them every word is still there. */
export function wantPicture(): void {
  if (isWanted) return;
  isWanted = true;
  void load();
}

async function load(): Promise<void> {
  try {
    picture.value = (await service.readPicture()).body;
  } catch {
    setTimeout(() => void load(), againMs);
  }
}
