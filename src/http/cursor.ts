import { RequestError } from '../kernel/errors.ts';
import type { Position } from '../store/search/find-matches.ts';
import type { SealedText } from './sealed-text.ts';

/**
 * A place between two pages as text that a caller hands back and can neither read nor make: it may hold the time of an
 * examination.
 * @param about whose pages they are; the cursor leads on in the same alone
 */
export function cursorOf(position: unknown, { seal }: SealedText, about: string): string {
  return seal(JSON.stringify(position), `cursor ${about}`);
}

/** @throws RequestError BAD_REQUEST for text that `cursorOf` did not make */
export function positionOf(cursor: string, sealed: SealedText, about: string): Position {
  const found = opened(cursor, sealed, about) as { value?: unknown; key?: unknown } | null;
  const { value, key } = found ?? {};
  if (isCount(key) && (typeof value === 'number' ? Number.isFinite(value) : typeof value === 'string')) {
    return { value: value as number | string, key };
  }
  throw notOurs();
}

/** @throws RequestError BAD_REQUEST */
export function versionPositionOf(
  cursor: string,
  sealed: SealedText,
  about: string,
): { updated: number; id: string; version: number } {
  const found = opened(cursor, sealed, about) as { updated?: unknown; id?: unknown; version?: unknown } | null;
  const { updated, id, version } = found ?? {};
  if (isCount(updated) && isCount(version) && typeof id === 'string') return { updated, id, version };
  throw notOurs();
}

function opened(cursor: string, { open }: SealedText, about: string): unknown {
  const text = open(cursor, `cursor ${about}`);
  const value: unknown = text === undefined ? null : JSON.parse(text);
  return typeof value === 'object' ? value : null;
}

function notOurs(): RequestError {
  return new RequestError('BAD_REQUEST', 'The _cursor is none that a next link of this search has given.');
}

function isCount(value: unknown): value is number {
  return Number.isSafeInteger(value) && (value as number) >= 0;
}
