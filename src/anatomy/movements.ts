import type { Movement } from './movement.ts';
import { ankleAndFootMovements } from './movements/ankle-and-foot.ts';
import { hipAndKneeMovements } from './movements/hip-and-knee.ts';
import { type MovementRow, toMovement } from './movements/movement-row.ts';
import { neckAndTrunkMovements } from './movements/neck-and-trunk.ts';
import { shoulderAndElbowMovements } from './movements/shoulder-and-elbow.ts';
import { wristAndHandMovements } from './movements/wrist-and-hand.ts';

const rows = {
  ...neckAndTrunkMovements,
  ...shoulderAndElbowMovements,
  ...wristAndHandMovements,
  ...hipAndKneeMovements,
  ...ankleAndFootMovements,
} as const satisfies Record<string, MovementRow>;

export type MovementKey = keyof typeof rows;

export const movementKeys = Object.keys(rows) as readonly MovementKey[];

/** Every movement whose power is graded, from the neck to the toes. */
export const movements = Object.fromEntries(movementKeys.map((key) => [key, toMovement(rows[key])])) as Readonly<
  Record<MovementKey, Movement>
>;

/** The same rows for look-ups by a key from outside. */
export const movementTable: ReadonlyMap<string, Movement> = new Map(Object.entries(movements));
