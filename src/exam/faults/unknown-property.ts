import type { Fault } from '../../kernel/errors.ts';
import { echoedName, mayBeEchoed } from './echo.ts';
import { nearestKey } from './nearest-key.ts';
import { pointerInto } from './pointer.ts';

/** Fault of a property that the object does not take. The name is repeated only where it cannot be free text. */
export function unknownProperty(pointer: string, name: string, known: readonly string[]): Fault {
  const suggestion = nearestKey(name, known);
  const what = mayBeEchoed(name) ? `Unknown property '${name}'.` : 'Unknown property.';
  const hint = suggestion === undefined ? `Known here: ${known.join(', ')}.` : `Did you mean '${suggestion}'?`;
  return {
    pointer: pointerInto(pointer, echoedName(name)),
    code: 'UNKNOWN_PROPERTY',
    message: `${what} ${hint}`,
    ...(suggestion === undefined ? {} : { suggestion }),
  };
}
