import { ConflictError, NotFoundError } from '../kernel/errors.ts';

/**
 * Holds a correction to the version that it was written for.
 * @param current the current version of the exam; undefined when there is no such exam
 * @returns the current version
 * @throws NotFoundError for an unknown exam
 * @throws ConflictError VERSION_MISMATCH when another version is current
 */
export function requireCurrent<T extends { readonly version: number }>(current: T | undefined, expected: number): T {
  if (current === undefined) throw new NotFoundError('There is no exam with this id.');
  if (current.version !== expected) {
    throw new ConflictError(
      'VERSION_MISMATCH',
      `The exam is at version ${current.version}; If-Match named version ${expected}.`,
    );
  }
  return current;
}
