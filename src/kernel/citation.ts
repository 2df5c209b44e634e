import type { Source } from './cite.ts';
import { works } from './works.ts';

/** A source in words, as it stands in an answer: title, then the place in it. */
export function citation(source: Source): string {
  const title = works[source.work];
  return source.where === undefined ? title : `${title} (${source.where})`;
}
