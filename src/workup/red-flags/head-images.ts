import type { BedsideFacts } from '../bedside-facts.ts';

/** Images that show the brain. */
export const headImages = ['ct-head', 'mri-brain'] as const;

/** Whether an image of the head is back. */
export const isHeadSeen = ({ query }: Pick<BedsideFacts, 'query'>): boolean =>
  headImages.some((key) => query.result(key) !== undefined);

/** Whether an image of the head came to one of these values. */
export const isSeenInTheHead = ({ query }: Pick<BedsideFacts, 'query'>, values: ReadonlySet<string>): boolean =>
  headImages.some((key) => values.has(query.result(key)?.value ?? ''));
