import type { Fault } from '../../kernel/errors.ts';
import { pointerInto, pointerTo } from './pointer.ts';

/** One entry of a list in the request whose own form is right. */
export interface SoundEntry<T> {
  readonly entry: T;
  readonly index: number;
  readonly pointer: string;
}

/** The parts of a body that no fault of form is about, so that their content can be checked all the same. */
export interface SoundParts {
  /** The text of a property of the body; undefined if it is missing or faulty. */
  text(property: string): string | undefined;
  /** The sound entries of the list that these steps lead to; none if there is no such list. `T` is what the schema promises. */
  entries<T>(...steps: readonly string[]): readonly SoundEntry<T>[];
}

export function soundParts(body: unknown, formFaults: readonly Fault[]): SoundParts {
  const faulty = new Set<string>();
  for (const { pointer } of formFaults) {
    for (let end = pointer.length; end > 0; end = pointer.lastIndexOf('/', end - 1)) faulty.add(pointer.slice(0, end));
  }
  return {
    text(property) {
      const value = ownProperty(body, property);
      return typeof value === 'string' && !faulty.has(pointerTo(property)) ? value : undefined;
    },
    entries<T>(...steps: readonly string[]) {
      const list = steps.reduce(ownProperty, body);
      if (!Array.isArray(list)) return [];
      const at = pointerTo(...steps);
      return list.flatMap((entry: T, index) => {
        const pointer = pointerInto(at, index);
        return faulty.has(pointer) ? [] : [{ entry, index, pointer }];
      });
    },
  };
}

/** A property that the object itself has; inherited ones (`constructor`) are not the caller's. */
export function ownProperty(value: unknown, name: string): unknown {
  return typeof value === 'object' && value !== null && Object.hasOwn(value, name)
    ? (value as Record<string, unknown>)[name]
    : undefined;
}
