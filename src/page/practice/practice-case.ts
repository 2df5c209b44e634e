/**
 * The practice patient that is being examined: kept in memory alone, apart from the draft of an exam, so that neither touches
 * the other.
 */
import { computed, signal } from '@preact/signals';
import type {
  PracticeAnswer,
  PracticeCommitment,
  PracticePatient,
  PracticeSites,
  PracticeWish,
} from '../../client/generated/api-types.ts';
import type { CatalogueIndex } from '../catalogue.ts';
import { type Cell, type CellAddress, type CellKey, cellKey } from '../draft/draft.ts';
import { cellsOf } from '../draft/draft-of-exam.ts';
import { NeuroexamApiError, noteRefusal, service } from '../service.ts';
import { askedItem } from './asked-item.ts';

/** What the service said of one item on one side. */
export type Shown =
  | { readonly cell: Cell; readonly text: string }
  | { readonly because: string; readonly text: string };

export interface Answered {
  readonly answer: PracticeAnswer;
  /** The findings in the order in which they were shown. */
  readonly found: readonly string[];
}

export const sites = signal<PracticeSites | undefined>(undefined);
export const patient = signal<PracticePatient | undefined>(undefined);
/** In the order in which they were asked for. */
export const shown = signal<ReadonlyMap<CellKey, Shown>>(new Map());
export const asking = signal<ReadonlySet<CellKey>>(new Set());
export const answered = signal<Answered | undefined>(undefined);
/** What goes on, for who does not see it; and what went wrong, for everybody. */
export const said = signal('');
export const failure = signal<string | undefined>(undefined);
export const isWaiting = signal(false);

/** Items of which something was found. */
export const found = computed(() =>
  [...shown.value].flatMap(([key, one]) => ('cell' in one ? [{ key, text: one.text, cell: one.cell }] : [])),
);

/** Most items that the service takes at once. */
const atOnce = 100;
const readOutAtMost = 6;

export async function fetchSites(): Promise<void> {
  if (sites.peek() !== undefined) return;
  await attempt(async () => {
    sites.value = (await service.listPracticeSites()).body;
  });
}

export async function admit(wish: PracticeWish): Promise<void> {
  await waited(async () => {
    const { body } = await service.admitPracticePatient(wish);
    patient.value = body;
    shown.value = new Map();
    asking.value = new Set();
    answered.value = undefined;
    said.value = 'A new simulated patient is here.';
  });
}

/** Lets go of the patient, with or without an answer. */
export function dismiss(): void {
  patient.value = undefined;
  shown.value = new Map();
  answered.value = undefined;
  failure.value = undefined;
}

/** Asks for items that have not been asked for yet. */
export async function examine(addresses: readonly CellAddress[], index: CatalogueIndex): Promise<void> {
  const here = patient.peek()?.patient;
  if (here === undefined || answered.peek() !== undefined) return;
  const isNew = (address: CellAddress): boolean =>
    !shown.peek().has(cellKey(address)) && !asking.peek().has(cellKey(address));
  const wanted = addresses.filter(isNew);
  for (let from = 0; from < wanted.length; from += atOnce) {
    await examineSome(here, wanted.slice(from, from + atOnce), index);
  }
}

async function examineSome(here: string, wanted: readonly CellAddress[], index: CatalogueIndex): Promise<void> {
  const keys = wanted.map(cellKey);
  asking.value = new Set([...asking.peek(), ...keys]);
  await attempt(async () => {
    const items = wanted.map((address) => askedItem(address, index));
    const { body } = await service.examinePracticePatient({ patient: here, items });
    if (patient.peek()?.patient !== here) return;
    const all = new Map(shown.peek());
    for (const { section, finding, text } of body.shown) {
      for (const [key, cell] of cellsOf(section, finding, index)) all.set(key, { cell, text });
    }
    for (const { pointer, text, because } of body.unanswered) {
      const key = keys[Number(pointer.slice('/items/'.length))];
      if (key !== undefined) all.set(key, { because, text });
    }
    shown.value = all;
    said.value = spoken([
      ...body.shown.map((one) => one.text),
      ...body.unanswered.map((one) => `${one.text}: cannot be said`),
    ]);
  });
  const left = new Set(asking.peek());
  for (const key of keys) left.delete(key);
  asking.value = left;
}

/** Findings as they are read out; of many at once the first few, since all of them stand in the list. */
function spoken(texts: readonly string[]): string {
  const more = texts.length - readOutAtMost;
  return `${texts.slice(0, readOutAtMost).join('; ')}${more > 0 ? `; and ${more} more` : ''}`;
}

export async function commit(commitment: PracticeCommitment['commitment'], index: CatalogueIndex): Promise<void> {
  const here = patient.peek()?.patient;
  if (here === undefined) return;
  const asked = found.peek();
  await waited(async () => {
    const examined = asked.map(({ key }) => askedItem(key, index));
    const { body } = await service.answerPracticeCommitment({ patient: here, examined, commitment });
    answered.value = { answer: body, found: asked.map(({ text }) => text) };
  });
}

async function waited(work: () => Promise<void>): Promise<void> {
  if (isWaiting.peek()) return;
  isWaiting.value = true;
  await attempt(work);
  isWaiting.value = false;
}

async function attempt(work: () => Promise<void>): Promise<void> {
  failure.value = undefined;
  try {
    await work();
  } catch (error) {
    noteRefusal(error);
    failure.value = wordsOf(error);
  }
}

function wordsOf(error: unknown): string {
  if (!(error instanceof NeuroexamApiError)) return 'The service cannot be reached. Try again in a moment.';
  const [first] = error.faults;
  return first === undefined ? error.message : first.message;
}
