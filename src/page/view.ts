/** Which part of the page is shown: kept in the fragment of the address, so that the browser's own way back works. */
import { signal } from '@preact/signals';
import type { CellKey } from './draft/draft.ts';

export const viewKeys = ['examine', 'story', 'reasoning', 'finish', 'practice'] as const;
export type ViewKey = (typeof viewKeys)[number];

export interface View {
  readonly key: ViewKey;
  /** The part of the examination, or the exam that was sent. */
  readonly detail: string | undefined;
}

export const view = signal<View>(viewOf(location.hash));
/** The cell that the record shall show and focus next; undefined when none is asked for. */
export const wantedCell = signal<CellKey | undefined>(undefined);

export function hrefOf(key: ViewKey, detail?: string): string {
  return detail === undefined ? `#/${key}` : `#/${key}/${detail}`;
}

export function go(key: ViewKey, detail?: string): void {
  location.hash = hrefOf(key, detail);
}

export function followAddress(): void {
  globalThis.addEventListener('hashchange', () => {
    view.value = viewOf(location.hash);
  });
}

function viewOf(hash: string): View {
  const [, name, detail] = hash.split('/');
  const key = viewKeys.find((one) => one === name) ?? 'examine';
  return { key, detail };
}
