import { pointerSteps, pointerTo } from './pointer.ts';

const keyLike = /^[A-Za-z0-9][A-Za-z0-9_+/-]{0,63}$/;

/** A capitalised word or three digits in a row: names of people, their numbers and dates have them, keys have not. */
const personLike = /(^|[^A-Za-z])[A-Z][a-z]|\d{3}/;

/**
 * Whether a value that the caller sent may be repeated in an answer or a log. Only short key-like tokens may: anything
 * else, and so whatever has a space in it, could be free text about a person.
 */
export function mayBeEchoed(value: unknown): value is string {
  return typeof value === 'string' && keyLike.test(value) && !personLike.test(value);
}

/** A property name of the caller's, fit for a pointer: a name that could be free text is replaced by its length. */
export function echoedName(name: string): string {
  const isName = /^[A-Za-z0-9_$][A-Za-z0-9_$.+-]{0,63}$/.test(name) && !personLike.test(name);
  return isName ? name : `(a name of ${name.length} characters)`;
}

/** A pointer whose steps are places in lists or names as `echoedName` gives them. */
export function echoedPointer(pointer: string): string {
  const isFit = (step: string) => /^\d{1,5}$|^\(a name of \d+ characters\)$/.test(step);
  return pointerTo(...pointerSteps(pointer).map((step) => (isFit(step) ? step : echoedName(step))));
}
