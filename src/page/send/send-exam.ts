/** Sends the draft, and keeps it until the service has said that it has the exam. */
import { effect, signal } from '@preact/signals';
import type { Exam } from '../../client/generated/api-types.ts';
import { assessed, isCurrent } from '../assessment.ts';
import type { CatalogueIndex } from '../catalogue.ts';
import type { Draft } from '../draft/draft.ts';
import { change, draft, freshDraft, startAfresh } from '../draft/draft-store.ts';
import { type BuiltExam, examOfDraft } from '../draft/exam-of-draft.ts';
import { isPassing, NeuroexamApiError, noteRefusal, service } from '../service.ts';
import { go } from '../view.ts';
import { type KeptExam, type Known, readKept, show } from './sent-exam.ts';

export interface SendFault {
  readonly pointer: string | undefined;
  readonly message: string;
}

export type SendState =
  | { readonly kind: 'idle' | 'sending' }
  /** Out of reach or too busy; nothing is known of whether it has arrived. */
  | { readonly kind: 'away'; readonly of: Draft; readonly repeats: boolean }
  | { readonly kind: 'refused'; readonly of: BuiltExam; readonly faults: readonly SendFault[] }
  | { readonly kind: 'no-key' }
  | { readonly kind: 'not-allowed' | 'failed'; readonly message: string }
  /** Another exam, or another version of this one, is kept in its place. */
  | { readonly kind: 'other-kept'; readonly why: 'in-use' | 'overtaken'; readonly kept: KeptExam | undefined };

export const sendState = signal<SendState>({ kind: 'idle' });

/** Waits before a repeat that the examiner asked for, in ms; the last one counts from then on. */
const waitsMs = [3000, 6000, 12_000, 25_000] as const;
let repeated = 0;
let timer: ReturnType<typeof setTimeout> | undefined;

/** What became of one exam says nothing of the next one that is begun. */
export function followDraftOfSending(): void {
  let about = draft.peek().identifier.value;
  effect(() => {
    const { value } = draft.value.identifier;
    if (value === about) return;
    about = value;
    if (sendState.peek().kind === 'sending') return;
    clearTimeout(timer);
    sendState.value = { kind: 'idle' };
  });
}

export async function sendDraft(index: CatalogueIndex): Promise<void> {
  if (sendState.peek().kind === 'sending') return;
  clearTimeout(timer);
  const before = sendState.peek();
  const repeats = before.kind === 'away' && before.repeats;
  const sending = draft.peek();
  const built = examOfDraft(sending, index);
  sendState.value = { kind: 'sending' };
  try {
    const { corrects } = sending;
    const body = built.exam as unknown as Exam;
    const answer =
      corrects === undefined
        ? await service.postExam(body)
        : await service.correctExam(corrects.id, body, { ifMatch: corrects.etag });
    const id = corrects?.id ?? answer.location?.split('/').at(-1) ?? '';
    const kept = { id, etag: answer.etag ?? '', draft: sending };
    const sentAs = corrects !== undefined ? 'correction' : answer.status === 201 ? 'new' : 'repeat';
    acknowledge(kept, index, { sentAs, bundle: answer.body });
  } catch (error) {
    noteRefusal(error);
    sendState.value = await stateAfter(error, { sending, built, repeats, index });
    if (sendState.peek().kind === 'away' && repeats) repeatLater(index);
  }
}

/** Sends by itself when the service is back, as long as the page is open and the record stays as it is. */
export function repeatWhenBack(isWanted: boolean, index: CatalogueIndex): void {
  const state = sendState.peek();
  if (state.kind !== 'away') return;
  sendState.value = { ...state, repeats: isWanted };
  repeated = 0;
  clearTimeout(timer);
  if (isWanted) repeatLater(index);
}

function repeatLater(index: CatalogueIndex): void {
  const waitMs = waitsMs[Math.min(repeated, waitsMs.length - 1)];
  repeated += 1;
  timer = setTimeout(() => {
    const state = sendState.peek();
    if (state.kind !== 'away' || !state.repeats) return;
    if (state.of === draft.peek()) void sendDraft(index);
    else sendState.value = { kind: 'idle' };
  }, waitMs);
}

/** Nothing of an exam that has arrived stays on the device; what was changed while it was under way is its correction. */
function acknowledge({ id, etag, draft: sent }: KeptExam, index: CatalogueIndex, known: Known): void {
  const { offeredTests: _offered, corrects: _corrects, ...own } = sent;
  const current = assessed.peek();
  const answer = isCurrent.peek() && draft.peek() === sent ? current?.answer : undefined;
  show({ id, etag, draft: own }, index, { ...known, answer });
  sendState.value = { kind: 'idle' };
  go('finish', id);
  if (draft.peek() === sent) startAfresh();
  else if (draft.peek().identifier.value === sent.identifier.value) {
    change('Sent; changed since', (now) => ({ ...now, corrects: { id, etag }, status: 'amended' }));
  }
}

interface Attempt {
  readonly sending: Draft;
  readonly built: BuiltExam;
  readonly repeats: boolean;
  readonly index: CatalogueIndex;
}

async function stateAfter(error: unknown, { sending, built, repeats, index }: Attempt): Promise<SendState> {
  if (isPassing(error)) return { kind: 'away', of: sending, repeats };
  if (!(error instanceof NeuroexamApiError)) return { kind: 'failed', message: String(error) };
  const { status, message, faults } = error;
  if (status === 401) return { kind: 'no-key' };
  if (status === 403) return { kind: 'not-allowed', message };
  if (status === 409 || status === 412) {
    const id = sending.corrects?.id ?? error.location?.split('/').at(-1);
    const kept = id === undefined ? undefined : await readKept(id, index).catch(() => undefined);
    // The answer to an earlier sending was lost on its way.
    if (kept !== undefined && isSameExam(kept.draft, sending, index)) {
      acknowledge({ ...kept, draft: sending }, index, { sentAs: 'repeat' });
      return { kind: 'idle' };
    }
    return { kind: 'other-kept', why: status === 409 ? 'in-use' : 'overtaken', kept };
  }
  if (status === 400 || status === 422 || status === 413) {
    return { kind: 'refused', of: built, faults: faults.length > 0 ? faults : [{ pointer: undefined, message }] };
  }
  return { kind: 'failed', message };
}

export function isSameExam(one: Draft, other: Draft, index: CatalogueIndex): boolean {
  return JSON.stringify(examOfDraft(one, index).exam) === JSON.stringify(examOfDraft(other, index).exam);
}

/** Opens an exam that is kept, to be changed and sent as its next version. */
export function beginCorrection({ id, etag, draft: kept }: KeptExam, offered: readonly string[] | undefined): void {
  sendState.value = { kind: 'idle' };
  startAfresh({
    ...kept,
    status: 'amended',
    corrects: { id, etag },
    ...(kept.requests !== undefined && offered !== undefined && { offeredTests: offered }),
  });
  go('finish');
}

/** Takes the version that is kept as the one that the draft goes in place of, since the examiner has seen both. */
export function placeOver({ id, etag }: KeptExam, index: CatalogueIndex): void {
  change('To be sent as a correction', (before) => ({
    ...before,
    corrects: { id, etag },
    status: before.status === 'entered-in-error' ? before.status : 'amended',
  }));
  void sendDraft(index);
}

/** The same record as another exam, under an identifier of its own. */
export function sendAsNew(index: CatalogueIndex): void {
  change('To be sent as a new exam', ({ corrects: _corrects, ...before }) => ({
    ...before,
    identifier: freshDraft().identifier,
    status: before.status === 'preliminary' ? 'preliminary' : 'final',
  }));
  void sendDraft(index);
}

export function beginNew(): void {
  sendState.value = { kind: 'idle' };
  go('examine');
}
