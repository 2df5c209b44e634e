import { echoedName } from '../exam/faults/echo.ts';
import { nearestKey } from '../exam/faults/nearest-key.ts';
import { pointerInto } from '../exam/faults/pointer.ts';
import type { Fault } from '../kernel/errors.ts';

export type Json = Readonly<Record<string, unknown>>;

export function isObject(value: unknown): value is Json {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** A fault for each element that is not taken here. Extensions are taken and say nothing: FHIR lets those be ignored. */
export function unknownElements(object: Json, known: readonly string[], pointer: string): readonly Fault[] {
  return Object.keys(object)
    .filter((name) => !known.includes(name))
    .map((name) => {
      const suggestion = nearestKey(name, known);
      const hint = suggestion === undefined ? `Taken here: ${known.join(', ')}.` : `Did you mean '${suggestion}'?`;
      return {
        pointer: pointerInto(pointer, echoedName(name)),
        code: 'UNKNOWN_PROPERTY',
        message: `An examination has no place for this element. ${hint}`,
        ...(suggestion === undefined ? {} : { suggestion }),
      };
    });
}
