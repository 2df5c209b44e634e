/** An exam that the service keeps: opened after sending, or by its id. It lives in memory only, while it is looked at. */
import { effect, signal } from '@preact/signals';
import type { Bundle, Exam, LocalisationAnswer, LocalisationRequest } from '../../client/generated/api-types.ts';
import { type CatalogueIndex, catalogueIndex } from '../catalogue.ts';
import type { Draft } from '../draft/draft.ts';
import { draftOfExam } from '../draft/draft-of-exam.ts';
import { type BuiltExam, examOfDraft } from '../draft/exam-of-draft.ts';
import { isPassing, NeuroexamApiError, noteRefusal, service } from '../service.ts';
import { credential, spelling } from '../settings.ts';
import { view } from '../view.ts';

export interface KeptExam {
  readonly id: string;
  readonly etag: string;
  readonly draft: Draft;
}

export interface SentExam extends KeptExam {
  readonly built: BuiltExam;
  /** Resources in its Bundle by type; undefined while it is asked, null when the Bundle cannot be read. */
  readonly counts: Readonly<Record<string, number>> | undefined | null;
  /** What the service makes of it; undefined while it is asked, null when it could not be. */
  readonly answer: LocalisationAnswer | undefined | null;
  /** How it was sent just now; undefined when it was opened by its id. */
  readonly sentAs: 'new' | 'repeat' | 'correction' | undefined;
}

export const sentExam = signal<SentExam | undefined>(undefined);
/** Why the exam of the address is not there to see. */
export const openingProblem = signal<{ readonly id: string; readonly message: string } | undefined>(undefined);

/** Keeps what is shown and the address together: what nobody looks at any more is forgotten. */
export function followSentExam(): void {
  effect(() => {
    const { key, detail } = view.value;
    const index = catalogueIndex.value;
    void credential.value;
    const id = key === 'finish' ? detail : undefined;
    if (sentExam.peek()?.id !== id) sentExam.value = undefined;
    if (id === undefined) openingProblem.value = undefined;
    else if (index !== undefined && sentExam.peek() === undefined) void open(id, index);
  });
}

async function open(id: string, index: CatalogueIndex): Promise<void> {
  openingProblem.value = undefined;
  try {
    const kept = await readKept(id, index);
    if (view.peek().detail === id) show(kept, index, { sentAs: undefined });
  } catch (error) {
    noteRefusal(error);
    if (view.peek().detail === id) openingProblem.value = { id, message: wordsOf(error) };
  }
}

export function openAgain(id: string): void {
  const index = catalogueIndex.peek();
  if (index !== undefined) void open(id, index);
}

/** @throws what the client throws */
export async function readKept(id: string, index: CatalogueIndex): Promise<KeptExam> {
  const { body, etag = '' } = await service.readExam(id);
  return { id, etag, draft: draftOfExam(body as Exam & Readonly<Record<string, unknown>>, index) };
}

/** What is known of an exam when it is shown; the rest is fetched then. */
export interface Known {
  readonly sentAs: SentExam['sentAs'];
  readonly bundle?: Bundle;
  readonly answer?: LocalisationAnswer | undefined;
}

/** Shows an exam that the service keeps, at once, and fetches what is not known of it yet. */
export function show(kept: KeptExam, index: CatalogueIndex, { sentAs, bundle, answer }: Known): void {
  const built = examOfDraft(kept.draft, index);
  const exam: SentExam = { ...kept, built, counts: bundle && countsOf(bundle), answer, sentAs };
  sentExam.value = exam;
  const add = (more: Partial<SentExam>): void => {
    const now = sentExam.peek();
    if (now?.id === kept.id && now.etag === kept.etag) sentExam.value = { ...now, ...more };
  };
  if (answer === undefined) void answerTo(built).then((come) => add({ answer: come }));
  if (bundle === undefined) {
    service.readExamBundle(kept.id).then(
      ({ body }) => add({ counts: countsOf(body) }),
      () => add({ counts: null }),
    );
  }
}

async function answerTo({ exam }: BuiltExam): Promise<LocalisationAnswer | null> {
  const { identifier: _identifier, subject: _subject, encounter: _encounter, performer: _performer, ...body } = exam;
  try {
    const answer = await service.localise(body as unknown as LocalisationRequest, { spelling: spelling.peek() });
    return answer.body;
  } catch {
    return null;
  }
}

function countsOf(bundle: Bundle): Readonly<Record<string, number>> {
  const counts: Record<string, number> = {};
  for (const { resource } of (bundle.entry ?? []) as readonly {
    readonly resource?: { readonly resourceType: string };
  }[]) {
    if (resource !== undefined) counts[resource.resourceType] = (counts[resource.resourceType] ?? 0) + 1;
  }
  return counts;
}

function wordsOf(error: unknown): string {
  if (isPassing(error)) return 'The service cannot be reached.';
  if (!(error instanceof NeuroexamApiError)) return 'The exam cannot be opened.';
  if (error.status === 403) return 'Your key does not let you read exams that were sent (the scope exam.r).';
  return error.message;
}
