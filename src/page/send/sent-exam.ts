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
  /** Resources in its Bundle by type; undefined when the Bundle may not be read. */
  readonly counts: Readonly<Record<string, number>> | undefined;
  /** What the service makes of it; undefined when it could not be asked. */
  readonly answer: LocalisationAnswer | undefined;
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
    const opened = await seen(await readKept(id, index), index, undefined);
    if (view.peek().detail === id) sentExam.value = opened;
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

/** @param bundle the Bundle, when it has come already */
export async function seen(
  kept: KeptExam,
  index: CatalogueIndex,
  sentAs: SentExam['sentAs'],
  bundle?: Bundle,
): Promise<SentExam> {
  const built = examOfDraft(kept.draft, index);
  const [counts, answer] = await Promise.all([
    bundle === undefined
      ? service.readExamBundle(kept.id).then(
          ({ body }) => countsOf(body),
          () => undefined,
        )
      : countsOf(bundle),
    answerTo(built),
  ]);
  return { ...kept, built, counts, answer, sentAs };
}

async function answerTo({ exam }: BuiltExam): Promise<LocalisationAnswer | undefined> {
  const { identifier: _identifier, subject: _subject, encounter: _encounter, performer: _performer, ...body } = exam;
  try {
    const answer = await service.localise(body as unknown as LocalisationRequest, { spelling: spelling.peek() });
    return answer.body;
  } catch {
    return undefined;
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
