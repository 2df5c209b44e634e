import { RequestError } from '../kernel/errors.ts';

/** A known parameter has a value of another form than it takes. The value itself is not repeated: it may name a person. */
export function malformed(parameter: string, expected: string): RequestError {
  return new RequestError('BAD_REQUEST', `The search parameter ${parameter} expects ${expected}.`);
}
