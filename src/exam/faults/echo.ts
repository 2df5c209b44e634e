const keyLike = /^[A-Za-z0-9][A-Za-z0-9_+/-]{0,63}$/;

/**
 * Whether a value that the caller sent may be repeated in an answer or a log. Only short key-like tokens may: anything
 * else, and so whatever has a space in it, could be free text about a person.
 */
export function mayBeEchoed(value: unknown): value is string {
  return typeof value === 'string' && keyLike.test(value);
}

/** A property name of the caller's, fit for a pointer: a name that could be free text is replaced by its length. */
export function echoedName(name: string): string {
  return /^[A-Za-z0-9_$][A-Za-z0-9_$.+-]{0,63}$/.test(name) ? name : `(a name of ${name.length} characters)`;
}
