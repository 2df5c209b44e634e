import type { Reason } from '../../causes/ranked-cause.ts';
import type { Source } from '../../kernel/cite.ts';
import type { BedsideFacts } from '../bedside-facts.ts';

/** A story that guidance acts on before anybody has looked for the signs that usually carry the flag. */
export interface RaisingStory {
  readonly flag: string;
  /** The reasons when the story is that one; empty when not. */
  readonly check: (facts: BedsideFacts) => readonly Reason[];
  readonly source: Source;
}

export const none: readonly Reason[] = [];

/** Up to three of every group of reasons, when each group has one. */
export const each = (...groups: readonly (readonly Reason[])[]): readonly Reason[] =>
  groups.every((group) => group.length > 0) ? distinct(groups.flatMap((group) => group.slice(0, 3))) : none;

/** A finding that stands in two groups is one reason. */
const distinct = (reasons: readonly Reason[]): readonly Reason[] => [
  ...new Map(reasons.map((reason) => [`${reason.pointer} ${reason.text}`, reason])).values(),
];
