import { movementKeys, movements } from '../../anatomy/movements.ts';
import type { Item } from './item.ts';

/** Power of every movement of the movement table. */
export const power: readonly Item[] = movementKeys.map((key) => {
  const movement = movements[key];
  return Object.freeze({
    section: 'power',
    key,
    label: movement.label,
    sides: movement.paired ? 'paired' : 'midline',
    scale: 'mrc-power',
    bodyPart: movement.bodyPart,
    region: movement.region,
    ...(movement.hpo && { hpo: movement.hpo }),
    probe: { kind: 'movement', movement: key },
    source: movement.source,
  } satisfies Item);
});
