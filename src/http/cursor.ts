import { RequestError } from '../kernel/errors.ts';
import type { Sort } from '../search/query.ts';
import type { Position } from '../store/search/find-matches.ts';

/** A place between two pages as text that a caller hands back and need not understand. */
export function cursorOf(position: unknown): string {
  return Buffer.from(JSON.stringify(position), 'utf8').toString('base64url');
}

/** Ids of resources. Source: HL7 FHIR R4, datatype `id`. */
const idForm = /^[A-Za-z0-9.-]{1,64}$/;

/** Greatest number of a version and of a key that the columns of the store can be compared with. */
const mostVersions = 2 ** 31 - 1;
const greatestKey = 2 ** 52;

/**
 * @param sortedBy what the page is in the order of; a cursor of another order is none
 * @throws RequestError BAD_REQUEST for text that `cursorOf` did not make
 */
export function positionOf(cursor: string, sortedBy: Sort['by']): Position {
  const found = parsed(cursor) as { value?: unknown; key?: unknown } | null;
  const { value, key } = found ?? {};
  const fits = sortedBy === '_id' ? typeof value === 'string' && idForm.test(value) : Number.isSafeInteger(value);
  if (isCount(key) && key <= greatestKey && fits) return { value: value as number | string, key };
  throw new RequestError('BAD_REQUEST', 'The _cursor is none that a next link has given.');
}

/** @throws RequestError BAD_REQUEST */
export function versionPositionOf(cursor: string): { updated: number; id: string; version: number } {
  const found = parsed(cursor) as { updated?: unknown; id?: unknown; version?: unknown } | null;
  const { updated, id, version } = found ?? {};
  const isId = typeof id === 'string' && idForm.test(id);
  if (isCount(updated) && isCount(version) && version <= mostVersions && isId) return { updated, id, version };
  throw new RequestError('BAD_REQUEST', 'The _cursor is none that a next link has given.');
}

function parsed(cursor: string): unknown {
  try {
    const value: unknown = JSON.parse(Buffer.from(cursor, 'base64url').toString('utf8'));
    return typeof value === 'object' ? value : null;
  } catch {
    return null;
  }
}

function isCount(value: unknown): value is number {
  return Number.isSafeInteger(value) && (value as number) >= 0;
}
