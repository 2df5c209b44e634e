/** What this browser prefers, and who the service takes it for. None of it says anything about a person examined. */
import { effect, signal } from '@preact/signals';

export type Spelling = 'uk' | 'us';

export const spelling = signal<Spelling>(
  read(localStorageOf(), 'neuroexam-spelling') === 'us' || (navigator.language === 'en-US' && !isChosen())
    ? 'us'
    : 'uk',
);
/** A key or token for a service that asks for one; gone when the tab is closed. */
export const credential = signal(read(sessionStorageOf(), 'neuroexam-credential') ?? '');
/** Whether the service has refused a request for want of one. */
export const needsCredential = signal(false);

/** Takes a spelling and keeps it. */
export function chooseSpelling(chosen: Spelling): void {
  spelling.value = chosen;
  write(localStorageOf(), 'neuroexam-spelling', chosen);
}

effect(() => write(sessionStorageOf(), 'neuroexam-credential', credential.value));

function isChosen(): boolean {
  return read(localStorageOf(), 'neuroexam-spelling') !== null;
}

function localStorageOf(): Storage | undefined {
  return storage(() => globalThis.localStorage);
}

function sessionStorageOf(): Storage | undefined {
  return storage(() => globalThis.sessionStorage);
}

/** A browser may refuse the very mention of its storage. */
function storage(get: () => Storage): Storage | undefined {
  try {
    return get();
  } catch {
    return undefined;
  }
}

function read(from: Storage | undefined, name: string): string | null {
  return from?.getItem(name) ?? null;
}

function write(to: Storage | undefined, name: string, value: string): void {
  try {
    if (value === '') to?.removeItem(name);
    else to?.setItem(name, value);
  } catch {
    // A full storage loses a preference, nothing else.
  }
}
