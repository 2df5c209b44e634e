/** A side of the body. */
export type BodySide = 'left' | 'right';

/** Where an item lies: on one side, or on neither because it is a midline or whole-person item. */
export type Side = BodySide | 'midline';

export const bodySides: readonly BodySide[] = ['left', 'right'];

/** The sides that have what lies on one, or on both where it is of the midline. */
export const sidesOf = (side: Side): readonly BodySide[] => (side === 'midline' ? bodySides : [side]);

/** Whether a side that was stated is one of the two, and not the midline, both or none. */
export const isBodySide = (side: string | null | undefined): side is BodySide => side === 'left' || side === 'right';

export function opposite(side: BodySide): BodySide {
  return side === 'left' ? 'right' : 'left';
}
