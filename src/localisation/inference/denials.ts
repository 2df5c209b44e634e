import { itemById } from '../../exam/catalogue/catalogue.ts';
import { type Item, itemId } from '../../exam/catalogue/item.ts';
import type { Finding } from '../../exam/finding.ts';
import { bodySides } from '../../kernel/side.ts';

/**
 * What the denial of one sign denies as well. Who writes "no facial weakness" has seen a face that moves alike on both sides
 * and means no weakness of either kind, though the item asked about is that of the whole half.
 */
const alsoDenied: ReadonlyMap<string, readonly string[]> = new Map([
  ['cranial-nerves/facial-weakness', ['cranial-nerves/lower-facial-weakness']],
]);

const sided = (item: Item, side: Finding['side']): string => `${itemId(item)}|${side}`;

function statedOf(findings: readonly Finding[]): ReadonlySet<string> {
  return new Set(findings.filter(({ value }) => value !== null).map(({ item, side }) => sided(item, side)));
}

/** Signs that a denial denies too, and that nobody stated in so many words for that side. */
export function alsoDeniedBy(
  findings: readonly Finding[],
): readonly { readonly finding: Finding; readonly item: Item }[] {
  const stated = statedOf(findings);
  return findings.flatMap((finding) => {
    const { item, abnormal, value, origin, side } = finding;
    if (abnormal || value === null || origin !== 'recorded') return [];
    return (alsoDenied.get(itemId(item)) ?? []).flatMap((key) => {
      const other = itemById.get(key);
      return other === undefined || stated.has(sided(other, side)) ? [] : [{ finding, item: other }];
    });
  });
}

/** Directions in which an eye is moved one after the other, and names that take in several of them. */
const directions = ['adduction', 'abduction', 'elevation', 'depression'].flatMap(
  (direction) => itemById.get(`cranial-nerves/eye-${direction}-weakness`) ?? [],
);
const severalDirections: ReadonlySet<string> = new Set([
  'cranial-nerves/ophthalmoplegia',
  'cranial-nerves/third-nerve-palsy',
]);

/** By side, the directions in which nobody stated an eye to move, where another was told to be weak. */
export function alsoTried(findings: readonly Finding[]): readonly { readonly finding: Finding; readonly item: Item }[] {
  const wrong = findings.filter(({ abnormal }) => abnormal);
  if (!wrong.some(({ item }) => directions.includes(item))) return [];
  const stated = statedOf(findings);
  return bodySides.flatMap((side) => {
    const isNamedAsAWhole = wrong.some(
      (one) => severalDirections.has(itemId(one.item)) && (one.side === side || one.side === 'midline'),
    );
    const finding = wrong.find((one) => one.side === side && directions.includes(one.item));
    if (finding === undefined || isNamedAsAWhole) return [];
    return directions.filter((item) => !stated.has(sided(item, side))).map((item) => ({ finding, item }));
  });
}
