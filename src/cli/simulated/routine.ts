import { skinPlace } from '../../anatomy/skin-places.ts';
import { itemById } from '../../exam/catalogue/catalogue.ts';
import { routineSteps } from '../../exam/catalogue/routine.ts';
import { bodySides, type Side } from '../../kernel/side.ts';
import { everyTarget } from '../../localisation/explanation/next-examination.ts';
import type { ProbeTarget } from '../../localisation/observation/probe-models.ts';

/** Every step of the routine, side by side. */
export const routine: readonly ProbeTarget[] = routineSteps.flatMap(
  ({ item: id, landmark: place }): readonly ProbeTarget[] => {
    const item = itemById.get(id);
    if (item === undefined) throw new RangeError(`the routine has an unknown item ${id}`);
    const sides: readonly Side[] = item.sides === 'midline' ? ['midline'] : bodySides;
    if (place === undefined) return sides.map((side) => ({ item, side }));
    if (skinPlace('landmark', place) === undefined) throw new RangeError(`the routine has an unknown place ${place}`);
    return sides.map((side) => ({ item, side, place: { kind: 'landmark', key: place } }));
  },
);

/** Everything that can be examined at all. */
export const everything: readonly ProbeTarget[] = [...everyTarget()];
