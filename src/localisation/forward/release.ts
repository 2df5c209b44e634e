import type { BodySide } from '../../kernel/side.ts';
import type { Hypothesis } from '../hypothesis.ts';

/** How early reflexes and tone are let go of: the power to which the loss of descending fibres is raised. Judged. */
const earlier = 0.75;

/**
 * Descending control that the reflexes of a segment have lost, 0 to 1: more than strength loses of it, because limbs grow
 * stiff and jerks brisk before they grow weak; with what a process lets go of beyond that.
 * @param segment index of the segment; null for the motor nerves of the head
 */
export function releasedAt(hypothesis: Hypothesis, side: BodySide, segment: number | null): number {
  return 1 - (1 - commandLost(hypothesis, side, segment)) * (1 - hypothesis.process.release({ side, segment }));
}

/** The same for what only the tracts hold back: an overactive thyroid makes jerks brisk and leaves toes and tone alone. */
export function tractsReleasedAt(hypothesis: Hypothesis, side: BodySide, segment: number | null): number {
  return hypothesis.process.sparesTracts === true
    ? commandLost(hypothesis, side, segment)
    : releasedAt(hypothesis, side, segment);
}

function commandLost({ pathways }: Hypothesis, side: BodySide, segment: number | null): number {
  const command = segment === null ? pathways.faceMotor(side) : pathways.motorTo(side, segment);
  return (1 - command) ** earlier;
}
