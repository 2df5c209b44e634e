import { movementTable } from '../../anatomy/movements.ts';
import type { Item } from '../../exam/catalogue/item.ts';
import type { BodySide, Side } from '../../kernel/side.ts';
import { type MotorItem, motorItem } from '../forward/motor.ts';

/** Where an item is examined: what a finding, or a proposal to examine, says beyond the item. */
export interface ProbeTarget {
  readonly item: Item;
  readonly side: Side;
  /** Skin table and key for sensation, or body part for signs with sites. */
  readonly place?: { readonly kind: string; readonly key: string };
}

export const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);

export function motorItems(keys: readonly string[], side: BodySide): readonly MotorItem[] {
  return keys.flatMap((key) => {
    const movement = movementTable.get(key);
    return movement === undefined ? [] : [motorItem(movement, movement.paired ? side : 'midline')];
  });
}

/** The lowest segment that counts: signs of the arm are looked for in the fingers, of the leg at knee and ankle. */
export const limbSegment = { upper: 'C8', lower: 'L4' } as const;
