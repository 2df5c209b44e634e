import { allCauses } from '../../causes/table/all-causes.ts';
import { investigations } from '../../exam/catalogue/investigations.ts';
import { nearestKey } from '../../exam/faults/nearest-key.ts';
import { pointerTo } from '../../exam/faults/pointer.ts';
import { redFlagRules } from '../../workup/red-flags.ts';
import type { ExpectedAdvice } from './evaluation-case.ts';

/** A fault within one case. */
export interface Problem {
  readonly pointer: string;
  readonly message: string;
}

const keysOf = (rows: readonly { readonly key: string }[]): ReadonlySet<string> => new Set(rows.map(({ key }) => key));
const causes = { what: 'cause', keys: keysOf(allCauses) };
const redFlags = { what: 'red flag', keys: keysOf(redFlagRules) };
const tests = { what: 'test', keys: keysOf(investigations) };

const lists = {
  causes,
  redFlags,
  mayFlag: redFlags,
  undecided: redFlags,
  tests,
  notTests: tests,
} as const satisfies Record<keyof ExpectedAdvice, { readonly what: string; readonly keys: ReadonlySet<string> }>;

export const adviceProperties = Object.keys(lists) as readonly (keyof ExpectedAdvice)[];

/** `a|b` is met by either. */
export function alternativesOf(key: string): readonly string[] {
  return key.split('|');
}

/** Reads the lists of keys that a case expects beside the site; an unknown key is a problem. */
export function readAdvice(value: Readonly<Record<string, unknown>>, problems: Problem[]): ExpectedAdvice {
  const read = adviceProperties.flatMap((property) => {
    const own = value[property];
    if (own === undefined) return [];
    const { what, keys } = lists[property];
    const known = listed(own).filter((key, index): key is string => {
      if (typeof key === 'string' && alternativesOf(key).every((one) => keys.has(one))) return true;
      const pointer = Array.isArray(own) ? pointerTo('expect', property, index) : pointerTo('expect', property);
      problems.push({ pointer, message: unknownKey(what, key, keys) });
      return false;
    });
    return [[property, known] as const];
  });
  return Object.fromEntries(read);
}

/** One value, or several that are all right. */
export function listed(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [value];
}

export function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

export function unknownProperties(
  value: Readonly<Record<string, unknown>>,
  known: readonly string[],
  ...steps: readonly string[]
): Problem[] {
  return Object.keys(value)
    .filter((key) => !known.includes(key))
    .map((key) => ({ pointer: pointerTo(...steps, key), message: unknownKey('property', key, known) }));
}

export function unknownKey(what: string, key: unknown, known: Iterable<string>): string {
  const near = typeof key === 'string' ? nearestKey(key, known) : undefined;
  return `Unknown ${what} ${JSON.stringify(key)}.${near === undefined ? '' : ` Did you mean ${near}?`}`;
}
