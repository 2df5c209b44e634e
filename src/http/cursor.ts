import { RequestError } from '../kernel/errors.ts';
import type { Position } from '../store/search/find-matches.ts';

/** A place between two pages as text that a caller hands back and need not understand. */
export function cursorOf(position: unknown): string {
  return Buffer.from(JSON.stringify(position), 'utf8').toString('base64url');
}

/** @throws RequestError BAD_REQUEST for text that `cursorOf` did not make */
export function positionOf(cursor: string): Position {
  const found = parsed(cursor) as { value?: unknown; key?: unknown } | null;
  const { value, key } = found ?? {};
  if (isCount(key) && (typeof value === 'number' ? Number.isFinite(value) : typeof value === 'string')) {
    return { value: value as number | string, key };
  }
  throw new RequestError('BAD_REQUEST', 'The _cursor is none that a next link has given.');
}

/** @throws RequestError BAD_REQUEST */
export function versionPositionOf(cursor: string): { updated: number; id: string; version: number } {
  const found = parsed(cursor) as { updated?: unknown; id?: unknown; version?: unknown } | null;
  const { updated, id, version } = found ?? {};
  if (isCount(updated) && isCount(version) && typeof id === 'string') return { updated, id, version };
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
