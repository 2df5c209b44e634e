import type { Request } from 'express';
import { RequestError } from '../kernel/errors.ts';

/**
 * The query parameters of a request, each at most once.
 * @param known names that the endpoint understands; any other is refused by name, so that no wish is dropped silently
 * @throws RequestError BAD_REQUEST
 */
export function readQuery<Name extends string>(req: Request, known: readonly Name[]): ReadonlyMap<Name, string> {
  const values = new Map<Name, string>();
  for (const [key, value] of Object.entries(req.query)) {
    const name = known.find((candidate) => candidate === key);
    if (name === undefined) {
      const offer = known.length === 0 ? 'This path takes no query parameters.' : `Known here: ${known.join(', ')}.`;
      throw new RequestError('BAD_REQUEST', `There is an unknown query parameter. ${offer}`);
    }
    if (typeof value !== 'string') throw new RequestError('BAD_REQUEST', `The query parameter ${name} is there twice.`);
    values.set(name, value);
  }
  return values;
}

/**
 * A query parameter with a closed list of values.
 * @throws RequestError BAD_REQUEST for any other value
 */
export function oneOf<Value extends string>(name: string, value: string, allowed: readonly Value[]): Value {
  const found = allowed.find((candidate) => candidate === value);
  if (found === undefined) throw new RequestError('BAD_REQUEST', `${name} must be one of: ${allowed.join(', ')}.`);
  return found;
}

/** A query parameter that counts from 1. @throws RequestError BAD_REQUEST */
export function positiveInteger(name: string, value: string): number {
  if (!/^[1-9]\d{0,8}$/.test(value)) throw new RequestError('BAD_REQUEST', `${name} must be a whole number from 1.`);
  return Number(value);
}
