import type { Movement } from '../movement.ts';
import { type Muscle, type MuscleKey, muscles } from '../muscles.ts';

/** A movement as its table writes it: the muscles by key with their shares, main muscle first; the shares sum to 1. */
export interface MovementRow extends Omit<Movement, 'supplies' | 'uberon'> {
  readonly muscles: Readonly<Partial<Record<MuscleKey, number>>>;
}

/** Looks up the nerve and roots of each muscle, so that a muscle is wired alike in every movement that it makes. */
export function toMovement({ muscles: shares, ...row }: MovementRow): Movement {
  const parts = Object.entries(shares).map(([key, weight]) => ({ ...wiring(key as MuscleKey), weight }));
  const main = parts[0]?.uberon;
  return {
    ...row,
    supplies: parts.map(({ label, via, roots, weight }) => ({ muscle: label, via, roots, weight })),
    ...(main && { uberon: main }),
  };
}

function wiring(key: MuscleKey): Muscle {
  return muscles[key];
}
