import type { Movement } from '../../anatomy/movement.ts';
import type { Side } from '../../kernel/side.ts';
import type { Hypothesis } from '../hypothesis.ts';
import { motorThrough, type Strand, strandsOf } from './strands.ts';

/** Loss of power of a movement under a hypothesis, by where the break is. All are fractions, 0 to 1. */
export interface MotorDeficit {
  /** Anterior horn, root, plexus, nerve, junction or muscle. */
  readonly lower: number;
  /** Above the anterior horn, as this movement shows it. */
  readonly upper: number;
  readonly total: number;
}

/** A movement on one side with its strands worked out once. */
export interface MotorItem {
  readonly movement: Movement;
  readonly side: Side;
  readonly strands: readonly Strand[];
}

export function motorItem(movement: Movement, side: Side): MotorItem {
  return { movement, side, strands: strandsOf(movement.supplies, side) };
}

export function motorDeficit(hypothesis: Hypothesis, item: MotorItem): MotorDeficit {
  let through = 0;
  let commanded = 0;
  for (const strand of item.strands) {
    const unit = {
      side: strand.side,
      segment: strand.segment,
      lengthCm: item.movement.lengthCm,
      group: item.movement.group,
    };
    through += strand.share * motorThrough(hypothesis, strand) * (1 - hypothesis.process.motor(unit));
    commanded +=
      strand.share * (strand.segment === null ? 1 : hypothesis.pathways.motorTo(strand.side, strand.segment));
  }
  const lower = 1 - through;
  const lost = 1 - commanded;
  const upper = lost * pyramidalShare(lost, item.movement.pyramidalWeight);
  return { lower, upper, total: 1 - (1 - lower) * (1 - upper) };
}

/** How late the pyramidal pattern gives way: the power to which the loss is raised. Judged. */
const patternLastsTo = 8;

/**
 * The pyramidal pattern, in which some movements keep strength, is what is left of descending control that still acts on
 * them. Where nearly none gets through nothing is kept: a complete lesion paralyses flexors and extensors alike.
 */
function pyramidalShare(lost: number, weight: number): number {
  return weight + (1 - weight) * lost ** patternLastsTo;
}
