import { historyLists } from '../draft/draft.ts';

/**
 * The detail of the address that leads to what a pointer of the exam is about: a part of the view (`person`), or one entry
 * of it (`symptoms.2`, `results.0`); undefined for what has no place in this view.
 * @param pointer JSON Pointer into the exam
 */
export function storyDetail(pointer: string): string | undefined {
  const [, top = '', second = '', third] = pointer.split('/');
  if (top === 'person' || top === 'examinedAt') return 'person';
  if (top === 'results') return second === '' ? 'results' : `results.${second}`;
  if (top !== 'history') return undefined;
  if (!historyLists.some((list) => list === second)) return second === '' ? 'history' : 'person';
  return third === undefined ? second : `${second}.${third}`;
}

/** The id of the element that such a detail leads to. */
export function elementIdOf(detail: string): string {
  return `story-${detail}`;
}

/** Scrolls to what the detail names and gives it the focus, where it is there. */
export function showStoryPlace(detail: string): void {
  const place = document.getElementById(elementIdOf(detail));
  place?.scrollIntoView();
  place?.focus({ preventScroll: true });
}
