import type { Fault } from '../../kernel/errors.ts';
import { echoedName } from './echo.ts';
import { pointerTo } from './pointer.ts';

/** No list, text, object or body beyond these is ever valid; the schemas' own limits are at or below them. */
const sizeLimits = { listEntries: 1000, textCharacters: 4000, properties: 64, values: 20_000 } as const;

/** A value still to be looked at, and the way to it; its pointer is put together only for a fault. */
interface Visit {
  readonly value: unknown;
  readonly step: string | number;
  readonly parent: Visit | null;
}

function pointerOf(visit: Visit): string {
  const steps: string[] = [];
  for (let here = visit; here.parent !== null; here = here.parent) steps.unshift(echoedName(String(here.step)));
  return pointerTo(...steps);
}

/**
 * Faults of mere size. Checked before all faults of a body are collected: collecting takes time for each wrong entry, so
 * a body that is too big is refused for that alone. Values that JSON cannot hold are let through; the schema refuses them.
 * Walks without recursion, since the depth of `body` is not known.
 */
export function sizeFaults(body: unknown): readonly Fault[] {
  const faults: Fault[] = [];
  const open: Visit[] = [{ value: body, step: '', parent: null }];
  let values = 0;
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    values++;
    if (values > sizeLimits.values) {
      return [...faults, tooLarge('', `The body holds more than ${sizeLimits.values} values.`)];
    }
    const { value } = next;
    if (typeof value === 'string') {
      if (value.length > sizeLimits.textCharacters) {
        faults.push(tooLarge(pointerOf(next), `The text is longer than ${sizeLimits.textCharacters} characters.`));
      }
    } else if (Array.isArray(value)) {
      if (value.length > sizeLimits.listEntries) {
        faults.push(tooLarge(pointerOf(next), `The list has more than ${sizeLimits.listEntries} entries.`));
      } else {
        for (const [index, entry] of value.entries()) open.push({ value: entry, step: index, parent: next });
      }
    } else if (typeof value === 'object' && value !== null) {
      const names = Object.keys(value);
      if (names.length > sizeLimits.properties) {
        faults.push(tooLarge(pointerOf(next), `The object has more than ${sizeLimits.properties} properties.`));
      } else {
        for (const name of names) {
          open.push({ value: (value as Record<string, unknown>)[name], step: name, parent: next });
        }
      }
    }
  }
  return faults.reverse();
}

function tooLarge(pointer: string, message: string): Fault {
  return { pointer, code: 'TOO_LARGE', message };
}
