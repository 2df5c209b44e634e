import type { Reflex } from '../../anatomy/reflex.ts';
import { segmentIndex } from '../../anatomy/segments.ts';
import { type BodySide, type Side, sidesOf } from '../../kernel/side.ts';
import type { Hypothesis } from '../hypothesis.ts';
import { cordIndex } from '../lesion.ts';
import { releasedAt } from './release.ts';
import { motorThrough, type Strand, sensoryThrough, strandsOf } from './strands.ts';

export interface ReflexItem {
  readonly reflex: Reflex;
  readonly side: Side;
  readonly afferent: readonly Strand[];
  readonly efferent: readonly Strand[];
}

export function reflexItem(reflex: Reflex, side: Side): ReflexItem {
  return { reflex, side, afferent: strandsOf(reflex.afferent, side), efferent: strandsOf(reflex.efferent, side) };
}

/** State of a reflex arc: how much of the volley gets round it, and how much of the descending control is lost; 0 to 1. */
export interface ArcState {
  readonly arc: number;
  readonly released: number;
}

/** How much of a volley a lesion of the middle of the cord stops on its way through the grey matter. Judged. */
const greyShare = 0.55;

/** The fibres of the arc pass beside the centre of the cord on their way to the anterior horn. */
function throughGrey({ pathways }: Hypothesis, strand: Strand): number {
  if (strand.segment === null) return 1;
  return 1 - greyShare * (pathways.damage.crossing[cordIndex(strand.side, strand.segment)] ?? 0);
}

export function arcState(hypothesis: Hypothesis, item: ReflexItem): ArcState {
  const { process } = hypothesis;
  const { lengthCm, dominantRoot } = item.reflex;
  let inward = 0;
  for (const strand of item.afferent) {
    const fibre = { side: strand.side, segment: strand.segment, lengthCm };
    inward +=
      strand.share *
      sensoryThrough(hypothesis, strand) *
      throughGrey(hypothesis, strand) *
      (process.sparesArcs === true ? 1 : 1 - process.largeFibre(fibre)) *
      (1 - process.spindle(fibre));
  }
  let outward = 0;
  for (const strand of item.efferent) {
    outward +=
      strand.share *
      motorThrough(hypothesis, strand) *
      (1 - process.motor({ side: strand.side, segment: strand.segment, lengthCm }));
  }
  const sides = sidesOf(item.side);
  const segment = dominantRoot === null ? null : segmentIndex(dominantRoot);
  const average = (lost: (side: BodySide) => number): number =>
    sides.reduce((sum, side) => sum + lost(side) / sides.length, 0);
  const extra = average((side) => process.reflex({ side, segment, lengthCm }));
  const released = average((side) => releasedAt(hypothesis, side, segment));
  const shock = average((side) => process.shock({ side, segment }));
  return { arc: inward * outward * (1 - extra) * (1 - shock), released: released * (1 - shock) };
}
