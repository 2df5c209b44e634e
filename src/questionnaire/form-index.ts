import { canonicalBase } from '../terminology/systems.ts';
import { examForm, questionnaireId } from './exam-form.ts';
import type { FormItem } from './form-item.ts';

/** Canonical address of the published Questionnaire, without version. */
export const questionnaireUrl = `${canonicalBase}/Questionnaire/${questionnaireId}`;

/** Where an item stands: the linkId of the item above it, null at the top. */
const parents = new Map<string, string | null>();

function enter(items: readonly FormItem[], parent: string | null): void {
  for (const item of items) {
    if (parents.has(item.linkId)) throw new Error(`the form has the linkId ${item.linkId} twice`);
    parents.set(item.linkId, parent);
    enter(item.items ?? [], item.linkId);
  }
}
enter(examForm, null);

/** Every linkId of the form, in its order. */
export const linkIds: readonly string[] = [...parents.keys()];

/** The linkId that an item stands below, null at the top; undefined for a linkId that the form has not. */
export function parentOf(linkId: string): string | null | undefined {
  return parents.get(linkId);
}

const children = new Map<readonly FormItem[], ReadonlyMap<string, FormItem>>();

/** The items of one level of the form by linkId. */
export function byLinkId(items: readonly FormItem[]): ReadonlyMap<string, FormItem> {
  let found = children.get(items);
  if (found === undefined) {
    found = new Map(items.map((item) => [item.linkId, item]));
    children.set(items, found);
  }
  return found;
}
