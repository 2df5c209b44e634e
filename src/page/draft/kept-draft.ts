/**
 * Where the draft outlives a reload: the storage of this browser for this address. It holds one examination until that is
 * sent or thrown away, and nothing else.
 */
import { signal } from '@preact/signals';
import type { Draft } from './draft.ts';

const name = 'neuroexam-draft';
/** Changes with the shape of a draft; a draft of another shape cannot be read. */
const shape = 1;

/** False where the browser refuses to keep anything, so that the examiner can be told. */
export const canKeep = signal(true);

export function keepDraft(draft: Draft): void {
  try {
    localStorage.setItem(name, JSON.stringify({ shape, draft }));
    canKeep.value = true;
  } catch {
    canKeep.value = false;
  }
}

export function keptDraft(): Draft | undefined {
  try {
    const kept = JSON.parse(localStorage.getItem(name) ?? 'null') as { shape: number; draft: Draft } | null;
    return kept?.shape === shape ? kept.draft : undefined;
  } catch {
    return undefined;
  }
}

export function forgetDraft(): void {
  try {
    localStorage.removeItem(name);
  } catch {
    // A browser that kept nothing has nothing to forget.
  }
}
