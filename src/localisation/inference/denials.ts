import { itemById } from '../../exam/catalogue/catalogue.ts';
import { type Item, itemId } from '../../exam/catalogue/item.ts';
import type { Finding } from '../../exam/finding.ts';

/**
 * What the denial of one sign denies as well. Who writes "no facial weakness" has seen a face that moves alike on both sides
 * and means no weakness of either kind, though the item asked about is that of the whole half.
 */
const alsoDenied: ReadonlyMap<string, readonly string[]> = new Map([
  ['cranial-nerves/facial-weakness', ['cranial-nerves/lower-facial-weakness']],
]);

/** Signs that a denial denies too, and that nobody stated in so many words for that side. */
export function alsoDeniedBy(
  findings: readonly Finding[],
): readonly { readonly finding: Finding; readonly item: Item }[] {
  const sided = (item: Item, side: Finding['side']): string => `${itemId(item)}|${side}`;
  const stated = new Set(findings.filter(({ value }) => value !== null).map(({ item, side }) => sided(item, side)));
  return findings.flatMap((finding) => {
    const { item, abnormal, value, origin, side } = finding;
    if (abnormal || value === null || origin !== 'recorded') return [];
    return (alsoDenied.get(itemId(item)) ?? []).flatMap((key) => {
      const other = itemById.get(key);
      return other === undefined || stated.has(sided(other, side)) ? [] : [{ finding, item: other }];
    });
  });
}
