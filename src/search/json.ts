/** A part of a resource as JSON; resources reach the index checked, and what has another shape is passed over. */
export type Json = Readonly<Record<string, unknown>>;

export function isObject(value: unknown): value is Json {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

export function textOf(value: unknown): string | undefined {
  return typeof value === 'string' && value !== '' ? value : undefined;
}

export function listOf(value: unknown): readonly unknown[] {
  if (value === undefined || value === null) return [];
  return Array.isArray(value) ? value : [value];
}

/** Everything at the end of a path, through arrays. */
export function valuesAt(start: unknown, steps: readonly string[]): readonly unknown[] {
  let found: readonly unknown[] = [start];
  for (const step of steps) {
    const next: unknown[] = [];
    for (const value of found) {
      if (!isObject(value)) continue;
      const child = value[step];
      if (Array.isArray(child)) next.push(...child);
      else if (child !== undefined) next.push(child);
    }
    if (next.length === 0) return next;
    found = next;
  }
  return found;
}
