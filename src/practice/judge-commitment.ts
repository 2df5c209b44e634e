import { type PlaceKey, placeTable } from '../anatomy/places.ts';
import { type Segment, segmentIndex } from '../anatomy/segments.ts';
import { siteWords } from '../localisation/explanation/site-words.ts';
import type { Site } from '../localisation/hypothesis.ts';
import { partOfKind } from './neuraxis-parts.ts';

export interface Verdict {
  readonly grade: 'right' | 'near' | 'wrong';
  /** What of the commitment is right and what is not, as a sentence. */
  readonly because: string;
}

/** Segments by which the level of a cord lesion may be missed and still be right, or near: signs overlap. Judged. */
const cordRight = 1;
const cordNear = 3;

/** Whether a commitment names the lesion. */
export function judgeCommitment(truth: Site, committed: Site): Verdict {
  if (truth.kind === 'none' || committed.kind === 'none') return judgeHealth(truth, committed);
  if (truth.key === committed.key) return judgeSameSite(truth, committed);
  if (isOtherSide(truth, committed)) {
    return truth.kind === committed.kind && isSamePath(truth, committed)
      ? wrong(`The same path, but the lesion is on the ${truth.side} and you said ${committed.side}.`)
      : wrong(`It is ${siteWords(truth)}: another site, and the other side.`);
  }
  if (isSamePath(truth, committed)) {
    return near(`The fibres run through both, but the lesion is elsewhere on their way: ${siteWords(truth)}.`);
  }
  if (areRootsNextToEachOther(truth, committed)) return near(`Neighbouring roots: it is ${siteWords(truth)}.`);
  return partOfKind(truth.kind) === partOfKind(committed.kind)
    ? near(`The right part of the neuraxis, but it is ${siteWords(truth)}.`)
    : wrong(`It is ${siteWords(truth)}: another part of the neuraxis.`);
}

const right = (because: string): Verdict => ({ grade: 'right', because });
const near = (because: string): Verdict => ({ grade: 'near', because });
const wrong = (because: string): Verdict => ({ grade: 'wrong', because });

function judgeHealth(truth: Site, committed: Site): Verdict {
  if (truth.kind === committed.kind) return right('Nothing is damaged, as you said.');
  return truth.kind === 'none'
    ? wrong('Nothing is damaged: what was found is what people without a lesion show.')
    : wrong(`There is a lesion: ${siteWords(truth)}.`);
}

function judgeSameSite(truth: Site, committed: Site): Verdict {
  if (isOtherSide(truth, committed)) return wrong(`The right structure on the wrong side: it is on the ${truth.side}.`);
  if (truth.side !== committed.side) {
    return near(`The right structure, but ${truth.side === 'both' ? 'on both sides' : `on the ${truth.side} alone`}.`);
  }
  if (truth.level === null || committed.level === null || truth.level === committed.level) {
    return right(`It is ${siteWords(truth)}, as you said.`);
  }
  const apart = segmentsApart(truth.level, committed.level);
  if (truth.kind !== 'cord') {
    return apart <= 1
      ? near(`The neighbouring level: it is ${truth.level}.`)
      : wrong(`${apart} levels away: it is ${siteWords(truth)}.`);
  }
  if (apart <= cordRight)
    return right(`Right within a segment: it is ${truth.level}, and neighbouring levels look alike.`);
  return apart <= cordNear
    ? near(`The right part of the cord, ${apart} segments from its level: it is ${truth.level}.`)
    : wrong(`The right cut of the cord, but ${apart} segments from its level: it is ${truth.level}.`);
}

function isOtherSide(a: Site, b: Site): boolean {
  return (a.side === 'left' && b.side === 'right') || (a.side === 'right' && b.side === 'left');
}

function segmentsApart(a: Segment, b: Segment): number {
  return Math.abs(segmentIndex(a) - segmentIndex(b));
}

function areRootsNextToEachOther(a: Site, b: Site): boolean {
  if (a.kind !== 'root' || b.kind !== 'root') return false;
  const levels = ({ level, span }: Site): readonly Segment[] => span ?? (level === null ? [] : [level]);
  return levels(a).some((one) => levels(b).some((other) => segmentsApart(one, other) <= 1));
}

/** Whether the fibres of one place run on through the other: two places of a nerve, a branch and its trunk. */
function isSamePath(a: Site, b: Site): boolean {
  return placesAbove(a.key).has(b.key) || placesAbove(b.key).has(a.key);
}

/** Every place that fibres have passed before they reach one. */
function placesAbove(key: string): ReadonlySet<string> {
  const found = new Set<string>();
  const open = [key];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    const proximal = Object.hasOwn(placeTable, next) ? placeTable[next as PlaceKey].proximal : null;
    const above = proximal === null ? [] : typeof proximal === 'string' ? [proximal] : Object.values(proximal);
    for (const place of above) if (!found.has(place)) open.push(place);
    for (const place of above) found.add(place);
  }
  return found;
}
