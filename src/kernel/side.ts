/** A side of the body. */
export type BodySide = 'left' | 'right';

/** Where an item lies: on one side, or on neither because it is a midline or whole-person item. */
export type Side = BodySide | 'midline';

export const bodySides: readonly BodySide[] = ['left', 'right'];

export function opposite(side: BodySide): BodySide {
  return side === 'left' ? 'right' : 'left';
}
