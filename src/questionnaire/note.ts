import type { FormItem } from './form-item.ts';

/** Longest note in characters; the schema of the exam has the same limit. */
const noteLength = 2000;

/** A free text about what its item says. */
export function note(linkId: string): FormItem {
  return { linkId: `${linkId}.note`, text: 'Note', type: 'text', property: 'note', maxLength: noteLength };
}
