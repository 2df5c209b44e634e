/** The one draft of this page: every change goes through here, can be undone, and is kept on the device at once. */
import { computed, signal } from '@preact/signals';
import { type Cell, type CellAddress, cellKey, type Draft, emptyDraft, type NormalStatement } from './draft.ts';
import { forgetDraft, keepDraft, keptDraft } from './kept-draft.ts';

/** How many changes can be taken back. */
const undoable = 200;

interface Step {
  readonly draft: Draft;
  /** What the change after it did, in words. */
  readonly change: string;
}

export const draft = signal<Draft>(keptDraft() ?? freshDraft());
const past = signal<readonly Step[]>([]);
const undone = signal<readonly Step[]>([]);

/** What undo would take back, in words; undefined when there is nothing. */
export const lastChange = computed(() => past.value.at(-1)?.change);
export const nextRedo = computed(() => undone.value.at(-1)?.change);

/** @param what the change in words, for the undo button and screen readers */
export function change(what: string, edit: (draft: Draft) => Draft): void {
  const before = draft.peek();
  const after = edit(before);
  if (after === before) return;
  past.value = [...past.peek().slice(1 - undoable), { draft: before, change: what }];
  undone.value = [];
  draft.value = after;
  keepDraft(after);
}

export function undo(): void {
  const step = past.peek().at(-1);
  if (step === undefined) return;
  past.value = past.peek().slice(0, -1);
  undone.value = [...undone.peek(), { draft: draft.peek(), change: step.change }];
  draft.value = step.draft;
  keepDraft(step.draft);
}

export function redo(): void {
  const step = undone.peek().at(-1);
  if (step === undefined) return;
  undone.value = undone.peek().slice(0, -1);
  past.value = [...past.peek(), { draft: draft.peek(), change: step.change }];
  draft.value = step.draft;
  keepDraft(step.draft);
}

/** Sets or clears (undefined) cells as one change. */
export function setCells(what: string, cells: readonly (readonly [CellAddress, Cell | undefined])[]): void {
  change(what, (before) => {
    const after: Record<string, Cell> = { ...before.cells };
    for (const [address, cell] of cells) {
      const key = cellKey(address);
      if (cell === undefined) delete after[key];
      else after[key] = cell;
    }
    return { ...before, cells: after };
  });
}

export function setCell(what: string, address: CellAddress, cell: Cell | undefined): void {
  setCells(what, [[address, cell]]);
}

export function isSameStatement(one: NormalStatement, other: NormalStatement): boolean {
  return (
    one.section === other.section && one.region === other.region && (one.side ?? 'both') === (other.side ?? 'both')
  );
}

/** Says of each that the rest there was normal, or takes it back. */
export function stateNormal(what: string, statements: readonly NormalStatement[], isNormal: boolean): void {
  change(what, (before) => {
    const others = before.otherwiseNormal.filter((one) => !statements.some((other) => isSameStatement(one, other)));
    return { ...before, otherwiseNormal: isNormal ? [...others, ...statements] : others };
  });
}

/** Forgets the exam here and on the device: after it was sent, or when the examiner throws it away. Cannot be undone. */
export function startAfresh(next: Draft = freshDraft()): void {
  forgetDraft();
  past.value = [];
  undone.value = [];
  draft.value = next;
}

export function freshDraft(): Draft {
  return emptyDraft(new Date(), newId);
}

/** A random UUID, version 4; `crypto.randomUUID` is missing where the page comes over plain HTTP from another machine. */
function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = ((bytes[6] ?? 0) & 0x0f) | 0x40;
  bytes[8] = ((bytes[8] ?? 0) & 0x3f) | 0x80;
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}

// Another tab of this page writes the same draft: the newest change is the one that counts.
globalThis.addEventListener?.('storage', () => {
  draft.value = keptDraft() ?? freshDraft();
});
