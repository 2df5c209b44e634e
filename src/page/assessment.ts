/** What the service makes of the draft, asked anew after every change, one request at a time. */
import { computed, effect, signal } from '@preact/signals';
import type { LocalisationAnswer, LocalisationRequest } from '../client/generated/api-types.ts';
import { catalogueIndex } from './catalogue.ts';
import { saysAnything } from './draft/draft.ts';
import { draft } from './draft/draft-store.ts';
import { type BuiltExam, examOfDraft } from './draft/exam-of-draft.ts';
import { isPassing, NeuroexamApiError, noteRefusal, service } from './service.ts';
import { credential, type Spelling, spelling } from './settings.ts';

export interface Assessed {
  readonly answer: LocalisationAnswer;
  /** The exam that it answers, whose pointers it uses. */
  readonly built: BuiltExam;
  readonly spelling: Spelling;
}

export interface Fault {
  readonly pointer: string | undefined;
  readonly message: string;
}

/** The draft as the service would get it now; undefined until the catalogue has come. */
export const builtExam = computed(() => {
  const index = catalogueIndex.value;
  return index && examOfDraft(draft.value, index);
});
export const hasContent = computed(() => saysAnything(draft.value));

/** The newest answer; undefined before the first one and when nothing is recorded. */
export const assessed = signal<Assessed | undefined>(undefined);
/** Whether the service answered the last request; false also while it is away. */
export const isReached = signal(true);
/** What the service did not accept of the draft as it is; the answer is then of an earlier one. */
export const faults = signal<readonly Fault[]>([]);
/** Whether the answer is of the draft as it stands. */
export const isCurrent = computed(
  () => assessed.value?.built === builtExam.value && assessed.value?.spelling === spelling.value,
);

/** First and longest wait before a service that is away is asked again, in ms. */
const firstWaitMs = 1000;
const longestWaitMs = 15_000;
let waitMs = firstWaitMs;
let isAsking = false;
let timer: ReturnType<typeof setTimeout> | undefined;

/** Begins to follow the draft. */
export function followDraft(): void {
  effect(() => {
    void builtExam.value;
    void spelling.value;
    void credential.value;
    void ask();
  });
  globalThis.addEventListener('online', () => void ask());
}

async function ask(): Promise<void> {
  if (isAsking) return;
  clearTimeout(timer);
  const built = builtExam.peek();
  if (built === undefined) return;
  if (!hasContent.peek()) {
    assessed.value = undefined;
    faults.value = [];
    return;
  }
  isAsking = true;
  const wanted = spelling.peek();
  try {
    const {
      identifier: _identifier,
      subject: _subject,
      encounter: _encounter,
      performer: _performer,
      ...body
    } = built.exam;
    const { body: answer } = await service.localise(body as unknown as LocalisationRequest, { spelling: wanted });
    assessed.value = { answer, built, spelling: wanted };
    faults.value = [];
    isReached.value = true;
    waitMs = firstWaitMs;
  } catch (error) {
    noteRefusal(error);
    if (isPassing(error)) {
      isReached.value = false;
      timer = setTimeout(() => void ask(), waitMs);
      waitMs = Math.min(2 * waitMs, longestWaitMs);
    } else {
      isReached.value = true;
      faults.value = faultsOf(error);
    }
  } finally {
    isAsking = false;
  }
  const hasMovedOn = builtExam.peek() !== built || spelling.peek() !== wanted;
  if (hasMovedOn && isReached.peek()) void ask();
}

function faultsOf(error: unknown): readonly Fault[] {
  if (!(error instanceof NeuroexamApiError)) return [];
  if (error.faults.length === 0) return [{ pointer: undefined, message: error.message }];
  return error.faults.map(({ pointer, message }) => ({ pointer, message }));
}
