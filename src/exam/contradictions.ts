import { bodyPartTable, isLostWith } from '../anatomy/body-parts.ts';
import { skinPlace } from '../anatomy/skin-places.ts';
import type { Fault } from '../kernel/errors.ts';
import type { Side } from '../kernel/side.ts';
import { withArticle } from '../kernel/words.ts';
import { type Item, itemId } from './catalogue/item.ts';
import type { Finding } from './finding.ts';

/**
 * The findings without harmless repeats, and a fault at each place where the same item on the same side has another
 * value, or another note, than elsewhere.
 */
export function withoutRepeats(findings: readonly Finding[]): {
  readonly findings: readonly Finding[];
  readonly faults: readonly Fault[];
} {
  const kept = new Map<string, Finding>();
  const faults: Fault[] = [];
  for (const finding of findings) {
    const first = kept.get(finding.id);
    if (first === undefined) kept.set(finding.id, finding);
    else if (!saysTheSame(first, finding)) faults.push(...contradiction(first, finding));
    else if (first.note === undefined && finding.note !== undefined)
      kept.set(finding.id, { ...first, note: finding.note });
  }
  return { findings: [...kept.values()], faults };
}

function saysTheSame(a: Finding, b: Finding): boolean {
  const sameNote = a.note === undefined || b.note === undefined || a.note === b.note;
  return sameNote && hasSameValue(a, b);
}

function hasSameValue(a: Finding, b: Finding): boolean {
  return a.value === b.value && a.notTested === b.notTested && (a.reinforced ?? false) === (b.reinforced ?? false);
}

function contradiction(a: Finding, b: Finding): readonly Fault[] {
  const side = a.side === 'midline' ? '' : ` on the ${a.side}`;
  const what = hasSameValue(a, b) ? 'note' : 'value';
  const fault = (here: Finding, there: Finding): Fault => ({
    pointer: here.pointer,
    code: 'CONTRADICTION',
    message: `'${itemId(a.item)}'${side} has another ${what} at ${there.pointer}.`,
  });
  return [fault(a, b), fault(b, a)];
}

/** A part of the body that the exam says is not there. */
export interface LostPart {
  readonly part: string;
  readonly side: Side;
  readonly pointer: string;
}

/** Parts that are lost: by an amputation that was seen, or because an item was not tested for want of the limb. */
export function lostParts(findings: readonly Finding[]): readonly LostPart[] {
  const lost = new Map<string, LostPart>();
  for (const finding of findings) {
    const { side, pointer } = finding;
    const part = isAmputation(finding) || finding.notTested === 'limb-absent' ? partOf(finding) : undefined;
    if (part !== undefined && !lost.has(`${part}|${side}`)) lost.set(`${part}|${side}`, { part, side, pointer });
  }
  return [...lost.values()];
}

function isAmputation({ item, value }: Finding): boolean {
  return itemId(item) === 'inspection/amputation' && value === 'present';
}

/** The body part at which a finding was made; undefined where it is about a wider patch or the whole person. */
function partOf({ item, place }: Finding): string | undefined {
  if (place === undefined) return item.bodyPart;
  if (place.kind === 'body-part') return place.key;
  return place.kind === 'landmark' ? skinPlace('landmark', place.key)?.bodyPart : undefined;
}

/** Faults of values given for a part of the body that the same exam says is not there. */
export function limbLossFaults(findings: readonly Finding[], lost: readonly LostPart[]): readonly Fault[] {
  if (lost.length === 0) return [];
  return findings.flatMap((finding) => {
    const part = partOf(finding);
    if (part === undefined || finding.value === null || itemId(finding.item) === 'inspection/amputation') return [];
    const reason = lost.find((one) => one.side === finding.side && isLostWith(part, one.part));
    if (reason === undefined) return [];
    const name = (bodyPartTable.get(reason.part)?.label ?? reason.part).toLowerCase();
    return [
      limbAbsent(
        finding.pointer,
        `A value is given here, but the ${finding.side} ${name} is absent by ${reason.pointer}.`,
      ),
      limbAbsent(
        reason.pointer,
        `The ${finding.side} ${name} is absent here, but ${finding.pointer} gives a value for it.`,
      ),
    ];
  });
}

function limbAbsent(pointer: string, message: string): Fault {
  return { pointer, code: 'LIMB_ABSENT', message };
}

/** Whether an item cannot have been tested on a side, because what it needs is lost there. */
export function isLostItem(item: Item, side: Side, lost: readonly LostPart[]): boolean {
  const { bodyPart } = item;
  if (bodyPart === undefined) return false;
  return lost.some((one) => one.side === side && isLostWith(bodyPart, one.part));
}

/**
 * Faults of a place that is on both sides of the body, given without saying which. Only items whose side is optional
 * can have it; the schema asks the others.
 */
export function sideFaults(findings: readonly Finding[]): readonly Fault[] {
  return findings.flatMap((finding) => {
    const part = finding.place?.kind === 'body-part' ? finding.place.key : undefined;
    if (finding.side !== 'midline' || part === undefined || bodyPartTable.get(part)?.paired !== true) return [];
    return [
      {
        pointer: finding.pointer,
        code: 'REQUIRED',
        message: `There is ${withArticle(part.replaceAll('-', ' '))} on each side: add \`side\`.`,
        suggestion: 'side',
      },
    ];
  });
}
