import { describeFinding, withoutComparison } from '../exam/describe.ts';
import type { Finding } from '../exam/finding.ts';
import type { Reason } from './ranked-cause.ts';

/** A fact that the exam does not hold. */
export function missing(text: string): Reason {
  return { pointer: null, text };
}

/** Of the reasons that one statement gives the last alone: a fever that a measured temperature implies is that temperature. */
export function sayingOnce(reasons: readonly Reason[]): readonly Reason[] {
  return reasons.filter(
    ({ pointer }, at) => pointer === null || reasons.findLastIndex((one) => one.pointer === pointer) === at,
  );
}

/**
 * Findings as reasons, at most `limit`. What is the same on both sides gives one reason that says so, whether it was sent
 * once or twice, and leads to the first; statements that an examiner made in passing for a whole section come after what
 * was recorded item by item.
 */
export function findingReasons(findings: readonly Finding[], limit = 6): readonly Reason[] {
  const ordered = [...findings].sort((a, b) => Number(a.origin !== 'recorded') - Number(b.origin !== 'recorded'));
  const reasons: Reason[] = [];
  const used = new Set<Finding>();
  for (const finding of ordered) {
    if (used.has(finding)) continue;
    used.add(finding);
    const twin = ordered.find((other) => !used.has(other) && isTwin(finding, other));
    if (twin !== undefined) used.add(twin);
    const text = describeFinding(finding);
    reasons.push({
      pointer: finding.pointer,
      text: twin === undefined ? text : onBothSides(text, finding.side),
      findingId: finding.id,
    });
  }
  return reasons.slice(0, limit);
}

function isTwin(a: Finding, b: Finding): boolean {
  const sides = `${a.side} ${b.side}`;
  return (
    (sides === 'left right' || sides === 'right left') &&
    a.item === b.item &&
    a.value === b.value &&
    a.place?.key === b.place?.key
  );
}

/**
 * "left knee extension 4/5" becomes "knee extension 4/5 on both sides", "no left ptosis" "no ptosis on either side", and what
 * is said of "the left eye" is said of each eye, or of neither; of a difference between two sides that is denied of either
 * nothing more is said, and where both have it nothing is compared.
 */
export function onBothSides(sided: string, side: string): string {
  const text = withoutComparison(sided);
  const difference = /^(no .*), the (?:left|right) one abnormal$/.exec(text)?.[1];
  if (difference !== undefined) return difference;
  const isDenied = /^no\b|\bdoes not\b/.test(text);
  const each = text.replace(
    new RegExp(`\\bthe ${side} (?=(?:side|half|eye|ear|arm|leg|one)\\b)`),
    isDenied ? 'either ' : 'each ',
  );
  if (each !== text) return each;
  const sides = isDenied ? 'on either side' : 'on both sides';
  const clause = text.replace(` on the ${side}`, ` ${sides}`);
  if (clause !== text) return clause;
  return `${text.replace(new RegExp(`\\b${side} `), '')} ${sides}`;
}
